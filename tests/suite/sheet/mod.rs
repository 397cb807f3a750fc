//! Printed sheets, judged from outside: pages as poppler draws them, fonts as `pdffonts`
//! lists them, markers as the AprilTag library finds them. What is not installed is skipped
//! with a message, unless `BAYWITNESS_REFERENCE=required`.
#![cfg(test)]

mod library;
mod support;

use std::path::Path;

use baywitness::detect::find_markers;
use baywitness::marker::{Board, BoardKind, Dictionary, Kit, KitFile};
use baywitness::sheet::{self, Options, Paper, Place};
use support::{Grey, Tag, april_tags, demo_kit, have, luma, print, run, scratch};

/// Marker edges stand this near to where they belong, mm.
const EDGE_MM: f64 = 0.03;

fn demo_board() -> Board {
    Board {
        kind: BoardKind::Markers { columns: 7, rows: 5, first_id: 100, size_mm: 26.0, gap_mm: 9.0 },
        u_scale_relative: 0.0005,
    }
}

fn options(paper: Paper) -> Options {
    Options { paper, ..Options::default() }
}

#[test]
fn the_same_input_gives_the_same_bytes() {
    for paper in Paper::ALL {
        let print = || sheet::pdf_for_kit(&demo_kit(), &options(paper)).unwrap();
        assert_eq!(print(), print());
    }
    let print = || sheet::pdf_for_board(&demo_board(), &options(Paper::A4)).unwrap();
    assert_eq!(print(), print());
}

#[test]
fn sizes_and_spacings_on_the_pages_are_the_kits() {
    let kit = demo_kit();
    for paper in Paper::ALL {
        let places = sheet::places_for_kit(&kit, &options(paper)).unwrap();
        assert_eq!(places.len(), kit.carriers.iter().map(|c| c.markers.len()).sum::<usize>());
        for place in &places {
            let (_, marker) = kit.marker(place.id).unwrap();
            assert!((0..2).all(|axis| (place.size_mm[axis] - marker.size_mm[axis]).abs() < 1e-9));
        }
        // Markers 10 and 11 share a sheet where it is long enough: 120 mm apart, 10 above.
        let of = |id| places.iter().find(|place| place.id == id).copied().unwrap();
        let [upper, lower] = [of(10), of(11)];
        if paper == Paper::Letter {
            assert_eq!(upper.page + 1, lower.page);
            continue;
        }
        assert_eq!(upper.page, lower.page);
        assert!((lower.centre_mm[1] - upper.centre_mm[1] - 120.0).abs() < 1e-9);
        assert!((lower.centre_mm[0] - upper.centre_mm[0]).abs() < 1e-9);
    }
}

/// Every edge between cells, as poppler draws it at 600 dpi.
#[test]
fn edges_stand_where_they_belong() {
    if !have("pdftoppm") {
        return;
    }
    let (dir, _kept) = scratch("edges");
    let pdf = print(&dir, "kit", &sheet::pdf_for_kit(&demo_kit(), &options(Paper::A4)).unwrap());
    let places = sheet::places_for_kit(&demo_kit(), &options(Paper::A4)).unwrap();
    let mut worst: f64 = 0.0;
    let mut checked = 0;
    for id in [0, 10, 11, 12, 30, 40] {
        let place = places.iter().find(|place| place.id == id).unwrap();
        let page = Grey::page(&pdf, &dir, place.page, 600);
        let (edges, off) = worst_edge(&page, place);
        (checked, worst) = (checked + edges, worst.max(off));
    }
    println!("{checked} edges, the worst off by {worst:.4} mm");
    assert!(checked > 400, "{checked}");
    assert!(worst < EDGE_MM, "{worst}");
}

/// Number of edges between black and white neighbours, and the largest deviation, mm.
fn worst_edge(page: &Grey, place: &Place) -> (usize, f64) {
    let dictionary = Dictionary::tag36h11();
    let black = |column: i32, row: i32| {
        let inside = (0..8).contains(&column) && (0..8).contains(&row);
        inside && !dictionary.is_white(place.id, column as usize, row as usize)
    };
    let cell = place.size_mm.map(|size| size / 8.0);
    let corner = [0, 1].map(|axis| place.centre_mm[axis] - 0.5 * place.size_mm[axis]);
    let (mut count, mut worst) = (0, 0.0f64);
    for row in 0..8 {
        for column in -1..8 {
            let edge = |i: i32, axis: usize| corner[axis] + f64::from(i) * cell[axis];
            let middle = |i: i32, axis: usize| edge(i, axis) + 0.5 * cell[axis];
            // Upright edges between (column, row) and its right neighbour; lying ones likewise, indices swapped.
            if black(column, row) != black(column + 1, row) {
                let at = [edge(column + 1, 0), middle(row, 1)];
                let found = page.upright_edge(at, cell, black(column, row));
                (count, worst) = (count + 1, worst.max((found - at[0]).abs()));
            }
            if black(row, column) != black(row, column + 1) {
                let at = [middle(row, 0), edge(column + 1, 1)];
                let found = page.lying_edge(at, cell, black(row, column));
                (count, worst) = (count + 1, worst.max((found - at[1]).abs()));
            }
        }
    }
    (count, worst)
}

#[test]
fn rulers_measure_what_they_say() {
    if !have("pdftoppm") {
        return;
    }
    let (dir, _kept) = scratch("rulers");
    let pdf = print(&dir, "kit", &sheet::pdf_for_kit(&demo_kit(), &options(Paper::A4)).unwrap());
    let page = Grey::page(&pdf, &dir, 1, 600);
    // The cover's rulers: 22 mm above the lower edge from (210 - 160) / 2, and 6.5 mm from the left from (297 - 160) / 2.
    let ends = [25.0, 185.0].map(|x| page.dark_line_x([x, 297.0 - 22.0 + 3.5]));
    assert!((ends[1] - ends[0] - 160.0).abs() < EDGE_MM, "{ends:?}");
    let ends = [68.5, 228.5].map(|y| page.dark_line_y([6.5 + 3.5, y]));
    assert!((ends[1] - ends[0] - 160.0).abs() < EDGE_MM, "{ends:?}");
}

/// Dots per inch at which pages are searched for markers.
const SEARCH_DPI: f64 = 60.0;

fn kit(text: &str) -> Kit {
    KitFile::from_toml(text, "kit").unwrap().kit
}

/// Kits and papers whose pages are searched.
fn kits() -> Vec<(&'static str, Kit, Paper)> {
    vec![
        ("demo-letter", demo_kit(), Paper::Letter),
        ("bay-a4", kit(include_str!("../../../models/kits/bay-a4.toml")), Paper::A4),
        ("bay-a3", kit(include_str!("../../../models/kits/bay-a3.toml")), Paper::A3),
    ]
}

/// Prints a kit and draws its pages; returns the pictures in order.
fn draw_pages(dir: &Path, name: &str, kit: &Kit, paper: Paper) -> Vec<String> {
    let pdf = print(dir, name, &sheet::pdf_for_kit(kit, &options(paper)).unwrap());
    run("pdftoppm", &["-r", &SEARCH_DPI.to_string(), "-gray", &pdf, &format!("{}/{name}", dir.display())]);
    pictures(dir, name)
}

/// Each marker was found once, on its page, upright and where it belongs.
fn assert_found(name: &str, kit: &Kit, paper: Paper, found: &[Tag]) {
    let places = sheet::places_for_kit(kit, &options(paper)).unwrap();
    let wanted: Vec<(usize, u32)> = places.iter().map(|place| (place.page, place.id)).collect();
    let mut ids: Vec<(usize, u32)> = found.iter().map(|tag| (tag.picture + 1, tag.id)).collect();
    ids.sort_unstable();
    assert_eq!(ids, wanted, "{name}");
    for tag in found {
        let place = places.iter().find(|place| place.id == tag.id).unwrap();
        assert_eq!(tag.hamming, 0);
        for (corner, signs) in tag.corners_px.iter().zip([[-0.5, -0.5], [0.5, -0.5], [0.5, 0.5], [-0.5, 0.5]]) {
            for axis in 0..2 {
                let true_mm = place.centre_mm[axis] + signs[axis] * place.size_mm[axis];
                let found_mm = (corner[axis] + 0.5) * 25.4 / SEARCH_DPI;
                assert!((found_mm - true_mm).abs() < 0.3, "{name}, id {}: {found_mm} for {true_mm}", tag.id);
            }
        }
    }
}

#[test]
fn the_april_tag_library_finds_every_marker_on_every_page_upright() {
    if !have("pdftoppm") {
        return;
    }
    let (dir, _kept) = scratch("tags");
    for (name, kit, paper) in kits() {
        let Some(found) = april_tags(&draw_pages(&dir, name, &kit, paper)) else { return };
        assert_found(name, &kit, paper, &found);
    }
}

#[test]
fn our_detector_finds_every_marker_on_every_page_upright() {
    if !have("pdftoppm") {
        return;
    }
    let (dir, _kept) = scratch("own");
    for (name, kit, paper) in kits() {
        let mut found = Vec::new();
        for (picture, file) in draw_pages(&dir, name, &kit, paper).iter().enumerate() {
            for marker in find_markers(&luma(file), Dictionary::tag36h11()).markers {
                let corners_px = marker.corners_px.map(|corner| [corner.x, corner.y]);
                found.push(Tag { picture, id: marker.id, hamming: marker.wrong_bits, corners_px });
            }
        }
        assert_found(name, &kit, paper, &found);
    }
}

#[test]
fn the_april_tag_library_finds_a_whole_board_upright() {
    if !have("pdftoppm") {
        return;
    }
    let (dir, _kept) = scratch("board");
    let pdf = print(&dir, "board", &sheet::pdf_for_board(&demo_board(), &options(Paper::A4)).unwrap());
    run("pdftoppm", &["-r", "100", "-gray", &pdf, &format!("{}/board", dir.display())]);
    let Some(found) = april_tags(&pictures(&dir, "board")) else { return };
    assert_eq!(found.iter().map(|tag| tag.id).collect::<Vec<_>>(), (100..135).collect::<Vec<_>>());
    // Ids run left to right, then top to bottom; spacing 35 mm.
    for tag in &found {
        let steps = [f64::from((tag.id - 100) % 7), f64::from((tag.id - 100) / 7)];
        for (axis, step) in steps.into_iter().enumerate() {
            let from_first = (tag.corners_px[0][axis] - found[0].corners_px[0][axis]) * 25.4 / 100.0;
            assert!((from_first - 35.0 * step).abs() < 0.3, "id {}", tag.id);
        }
    }
}

#[test]
fn fonts_are_embedded_and_the_words_can_be_read() {
    let (dir, _kept) = scratch("fonts");
    let pdf = print(&dir, "kit", &sheet::pdf_for_kit(&demo_kit(), &options(Paper::A4)).unwrap());
    if have("pdffonts") {
        let fonts = run("pdffonts", &[&pdf]);
        let rows: Vec<&str> = fonts.lines().skip(2).collect();
        assert!(!rows.is_empty());
        for row in rows {
            assert!(row.contains("NotoSans") && row.contains(" yes yes yes "), "{row}");
        }
    }
    if have("pdftotext") {
        let text = run("pdftotext", &["-layout", &pdf, "-"]);
        for words in ["rear-left · id 10 and 11", "measure this: 160.0 mm", "UP = forward", "x 126.0 y 139.0 z 0.0"] {
            let squeezed = text.split_whitespace().collect::<Vec<_>>().join(" ");
            assert!(squeezed.contains(words), "{words}");
        }
    }
    if have("qpdf") {
        assert!(run("qpdf", &["--check", &pdf]).contains("No syntax or stream encoding errors found"));
    }
}

fn pictures(dir: &Path, stem: &str) -> Vec<String> {
    let mut names: Vec<String> = std::fs::read_dir(dir)
        .unwrap()
        .map(|entry| entry.unwrap().path().display().to_string())
        .filter(|name| name.ends_with(".pgm") && name.contains(&format!("/{stem}-")))
        .collect();
    names.sort();
    names
}
