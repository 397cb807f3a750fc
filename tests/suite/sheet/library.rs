//! Every page of every kit and board of the library on every paper: what is
//! printed is what the files say, found by two detectors, with its fonts, the
//! same bytes each time.

use std::path::Path;

use baywitness::detect::find_markers;
use baywitness::marker::{Board, Dictionary, Kit};
use baywitness::sheet::{self, Error, Paper, Place};

use super::support::{Grey, Tag, april_tags, have, luma, print, run, scratch};
use super::{EDGE_MM, SEARCH_DPI, kit, options, pictures, worst_edge};

/// Something to print.
enum Print {
    Kit(Box<Kit>),
    Board(Board),
}

impl Print {
    fn pdf(&self, paper: Paper) -> Result<Vec<u8>, Error> {
        match self {
            Print::Kit(kit) => sheet::pdf_for_kit(kit, &options(paper)),
            Print::Board(board) => sheet::pdf_for_board(board, &options(paper)),
        }
    }

    fn places(&self, paper: Paper) -> Vec<Place> {
        let places = match self {
            Print::Kit(kit) => sheet::places_for_kit(kit, &options(paper)),
            Print::Board(board) => sheet::places_for_board(board, &options(paper)),
        };
        places.unwrap()
    }
}

/// All of `models/kits` and `models/boards`: a file that is added is tried too.
fn library() -> Vec<(String, Print)> {
    let models = Path::new(env!("CARGO_MANIFEST_DIR")).join("models");
    let mut all = Vec::new();
    for (folder, is_kit) in [("kits", true), ("boards", false)] {
        let mut files: Vec<_> = std::fs::read_dir(models.join(folder)).unwrap().map(|f| f.unwrap().path()).collect();
        files.sort();
        for file in files {
            let text = std::fs::read_to_string(&file).unwrap();
            let name = file.file_stem().unwrap().to_string_lossy().into_owned();
            let print = if is_kit {
                Print::Kit(Box::new(kit(&text)))
            } else {
                Print::Board(Board::from_toml(&text, &name).unwrap())
            };
            all.push((name, print));
        }
    }
    all
}

/// Each marker once, on its page, without a wrong bit, upright and in its place.
fn assert_found(name: &str, places: &[Place], found: &[Tag]) {
    let mut wanted: Vec<(usize, u32)> = places.iter().map(|place| (place.page, place.id)).collect();
    let mut ids: Vec<(usize, u32)> = found.iter().map(|tag| (tag.picture + 1, tag.id)).collect();
    wanted.sort_unstable();
    ids.sort_unstable();
    assert_eq!(ids, wanted, "{name}");
    for tag in found {
        let place = places.iter().find(|place| place.id == tag.id).unwrap();
        assert_eq!(tag.hamming, 0, "{name}, id {}", tag.id);
        for (corner, signs) in tag.corners_px.iter().zip([[-0.5, -0.5], [0.5, -0.5], [0.5, 0.5], [-0.5, 0.5]]) {
            for axis in 0..2 {
                let true_mm = place.centre_mm[axis] + signs[axis] * place.size_mm[axis];
                let found_mm = (corner[axis] + 0.5) * 25.4 / SEARCH_DPI;
                assert!((found_mm - true_mm).abs() < 0.3, "{name}, id {}: {found_mm} for {true_mm}", tag.id);
            }
        }
    }
}

fn found_by_us(pages: &[String]) -> Vec<Tag> {
    let mut found = Vec::new();
    for (picture, file) in pages.iter().enumerate() {
        for marker in find_markers(&luma(file), Dictionary::tag36h11()).markers {
            let corners_px = marker.corners_px.map(|corner| [corner.x, corner.y]);
            found.push(Tag { picture, id: marker.id, hamming: marker.wrong_bits, corners_px });
        }
    }
    found
}

/// Runs over the library's prints; what is too large for a paper is refused with a remedy.
fn for_each_print(mut look: impl FnMut(&str, &Print, Paper, &[u8])) {
    let mut refused = Vec::new();
    for (name, what) in library() {
        for paper in Paper::ALL {
            match what.pdf(paper) {
                Ok(pdf) => look(&format!("{name}-{}", paper.name()), &what, paper, &pdf),
                Err(error) => {
                    assert!(error.to_string().contains("--paper a3"), "{error}");
                    refused.push(format!("{name} on {}", paper.name()));
                }
            }
        }
    }
    println!("too large: {}", refused.join(", "));
    assert!(refused.iter().all(|r| r.contains("a3 on ") && !r.ends_with("on a3")), "{refused:?}");
}

#[test]
#[ignore = "half a minute: some five hundred pages"]
fn every_marker_on_every_page_is_found_by_both_detectors() {
    if !have("pdftoppm") || !have("pdffonts") {
        return;
    }
    let (dir, _kept) = scratch("library");
    let (mut markers, mut pages_seen) = (0, 0);
    for_each_print(|name, what, paper, pdf| {
        assert_eq!(what.pdf(paper).unwrap(), pdf, "{name}: two runs differ");
        let file = print(&dir, name, pdf);
        for row in run("pdffonts", &[&file]).lines().skip(2) {
            assert!(row.contains("NotoSans") && row.contains(" yes yes yes "), "{name}: {row}");
        }
        run("pdftoppm", &["-r", &SEARCH_DPI.to_string(), "-gray", &file, &format!("{}/{name}", dir.display())]);
        let pages = pictures(&dir, name);
        let places = what.places(paper);
        assert_found(name, &places, &found_by_us(&pages));
        if let Some(found) = april_tags(&pages) {
            assert_found(name, &places, &found);
        }
        markers += places.len();
        pages_seen += pages.len();
    });
    println!("{markers} markers on {pages_seen} pages");
}

#[test]
#[ignore = "some minutes: pages at 600 dpi"]
fn every_edge_of_every_marker_stands_where_it_belongs() {
    if !have("pdftoppm") {
        return;
    }
    let (dir, _kept) = scratch("edges-of-all");
    let (mut edges, mut worst) = (0, 0.0_f64);
    for_each_print(|name, what, paper, pdf| {
        let file = print(&dir, name, pdf);
        let places = what.places(paper);
        let mut pages: Vec<usize> = places.iter().map(|p| p.page).collect();
        pages.dedup();
        for number in pages {
            let page = Grey::page(&file, &dir, number, 600);
            for place in places.iter().filter(|p| p.page == number) {
                let (count, off) = worst_edge(&page, place);
                assert!(off < EDGE_MM, "{name}, id {}: {off} mm", place.id);
                edges += count;
                worst = worst.max(off);
            }
        }
    });
    println!("{edges} edges, the worst off by {worst:.4} mm");
    assert!(edges > 10_000, "{edges}");
}
