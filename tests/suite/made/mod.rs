//! Pictures that were made or mended: the mark of rendered photos, copied noise, markers that were put in.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

mod rates;

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use baywitness::detect::find_markers;
use baywitness::folder::Models;
use baywitness::job::{Options, verify};
use baywitness::marker::Dictionary;
use baywitness::photo::{Kind, Luma, Mark, Photo, decode, read};
use baywitness::record::{JobRecord, Verdict};
use baywitness::report::{TextOptions, text};
use baywitness::synth::{InsidesSpec, Preset, Scene};

use crate::staged;

fn judged(folder: &Path) -> JobRecord {
    verify(folder, &Options::new(Models::embedded())).unwrap()
}

/// A picture saved again, without its record.
fn saved_again(luma: &Luma, quality: u8) -> Vec<u8> {
    let mut bytes = Vec::new();
    let [width, height] = [luma.width(), luma.height()].map(|side| side as u16);
    jpeg_encoder::Encoder::new(&mut bytes, quality)
        .encode(luma.pixels(), width, height, jpeg_encoder::ColorType::Luma)
        .unwrap();
    bytes
}

/// Half the size, each pixel the mean of four.
fn halved(luma: &Luma) -> Luma {
    let (width, height) = (luma.width() / 2, luma.height() / 2);
    let mean = |i: usize| {
        let (u, v) = (2 * (i % width), 2 * (i / width));
        let four = [(u, v), (u + 1, v), (u, v + 1), (u + 1, v + 1)].map(|(u, v)| u16::from(luma.at(u, v)));
        (four.iter().sum::<u16>() / 4) as u8
    };
    Luma::new(width, height, (0..width * height).map(mean).collect()).unwrap()
}

/// Rolled about a place that is not quite the middle, between pixels.
fn rolled(luma: &Luma, degrees: f64) -> Luma {
    let (sin, cos) = degrees.to_radians().sin_cos();
    let [width, height] = [luma.width(), luma.height()];
    let middle = [0.48 * width as f64, 0.52 * height as f64];
    let grey = |i: usize| {
        let (x, y) = ((i % width) as f64 - middle[0], (i / width) as f64 - middle[1]);
        let [u, v] = [middle[0] + cos * x - sin * y, middle[1] + sin * x + cos * y];
        let (u, v) = (u.clamp(0.0, width as f64 - 1.001), v.clamp(0.0, height as f64 - 1.001));
        let at = |du: usize, dv: usize| f64::from(luma.at(u as usize + du, v as usize + dv));
        let (s, t) = (u.fract(), v.fract());
        ((at(0, 0) * (1.0 - s) + at(1, 0) * s) * (1.0 - t) + (at(0, 1) * (1.0 - s) + at(1, 1) * s) * t).round() as u8
    };
    Luma::new(width, height, (0..width * height).map(grey).collect()).unwrap()
}

fn of(bytes: &[u8]) -> Photo {
    let photo = decode(bytes, "a.jpg").unwrap();
    assert_eq!(photo.kind, Kind::Jpeg);
    photo
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn rendered_photos_say_so_and_given_for_real_ones_they_are_named() {
    let (plain, marked) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let scene = staged::scene(0.4);
    scene.stage(plain.path(), &mut |_| ()).unwrap();
    scene.clone().saying_rendered().stage(marked.path(), &mut |_| ()).unwrap();
    for name in ["a.jpg", "b.jpg"] {
        let [without, with] = [&plain, &marked].map(|f| read(&f.path().join("photos").join(name)).unwrap());
        assert_eq!((without.traces.rendered, &with.traces.rendered[..]), (vec![], &[Mark::Record, Mark::Picture][..]));
        // Saved again, half as large, and rolled, which leaves all that is measured as it was: the pixels still say so.
        let changed = [
            ("whole", with.luma.clone()),
            ("half", halved(&with.luma)),
            ("rolled by 1 degree", rolled(&with.luma, 1.0)),
            ("rolled by 12 degrees", rolled(&with.luma, -12.0)),
        ];
        for (what, picture) in changed {
            let again = of(&saved_again(&picture, 70));
            assert_eq!(again.traces.rendered, [Mark::Picture], "{name} {what}");
        }
        // Corners are where they would be without the mark.
        let found = |luma: &Luma| -> BTreeMap<u32, _> {
            let all = find_markers(luma, Dictionary::tag36h11()).markers;
            all.into_iter().map(|m| (m.id, (m.corners_px, m.u_corner_px()))).collect()
        };
        let (a, b) = (found(&without.luma), found(&with.luma));
        assert!(a.keys().eq(b.keys()) && a.len() > 15);
        let ratio = |id: &u32| {
            let farthest = a[id].0.iter().zip(&b[id].0).map(|(p, q)| (p - q).norm()).fold(0.0, f64::max);
            farthest / a[id].1
        };
        let most = a.keys().map(ratio).fold(0.0, f64::max);
        println!("{name}: corners move by {most:.4} of their uncertainty at most");
        assert!(most < 0.1, "{name}: {most}");
    }
    a_sample_and_a_pretender(marked.path());
}

/// The job that says what it is, and the same without saying it, its photos' records removed.
fn a_sample_and_a_pretender(folder: &Path) {
    let sample = judged(folder);
    assert!(sample.context.rendered && sample.is_rendered(), "{:?}", sample.findings);
    assert!(text(&sample, &TextOptions::default()).starts_with("RENDERED"));
    assert_eq!((sample.verdict, sample.findings.iter().any(|f| f.code == "photo-rendered")), (Verdict::Within, false));
    let job = folder.join("job.toml");
    let says = std::fs::read_to_string(&job).unwrap();
    assert!(says.contains("rendered = true\n"));
    std::fs::write(&job, says.replace("rendered = true\n", "")).unwrap();
    for name in ["a.jpg", "b.jpg"] {
        let path = folder.join("photos").join(name);
        std::fs::write(&path, saved_again(&read(&path).unwrap().luma, 92)).unwrap();
    }
    let pretended = judged(folder);
    let named: Vec<&str> =
        pretended.findings.iter().filter(|f| f.code == "photo-rendered").filter_map(|f| f.photo.as_deref()).collect();
    assert_eq!((pretended.verdict, named), (Verdict::NotProven, vec!["photos/a.jpg", "photos/b.jpg"]));
    assert!(pretended.photos.iter().all(|p| p.rendered == ["picture"]) && !pretended.context.rendered);
    assert!(text(&pretended, &TextOptions::default()).starts_with("RENDERED"));
}

fn shared(below: &str) -> Option<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../shared/photos").join(below);
    if !folder.is_dir() {
        println!("skipped: no {}", folder.display());
    }
    folder.is_dir().then_some(folder)
}

fn pictures(folder: &Path) -> Vec<PathBuf> {
    let entries = std::fs::read_dir(folder).unwrap().map(|e| e.unwrap().path());
    entries.filter(|p| p.extension().is_some_and(|e| e.eq_ignore_ascii_case("jpg"))).collect()
}

#[test]
fn real_photos_bear_no_mark() {
    for below in ["real/room", "real/apriltag_test", "real/chessboard"] {
        for path in shared(below).map_or_else(Vec::new, |folder| pictures(&folder)) {
            assert_eq!(read(&path).unwrap().traces.rendered, [], "{}", path.display());
        }
    }
}

/// What another renderer made, as nine phones develop it too: nothing of it is called made or mended.
#[test]
#[ignore = "minutes: cargo test --test suite made:: -- --ignored --nocapture"]
fn photos_of_another_renderer_raise_no_doubt() {
    let mut jobs = 0;
    for below in ["bay/jobs", "phone/jobs"] {
        let Some(folder) = shared(below) else { continue };
        for entry in std::fs::read_dir(folder).unwrap().map(|e| e.unwrap().path()) {
            if entry.join("job.toml").is_file() {
                jobs += 1;
                assert_no_doubt(&entry.display().to_string(), &judged(&entry));
            }
        }
    }
    println!("{jobs} jobs");
}

fn assert_no_doubt(what: &str, record: &JobRecord) {
    let doubts = ["photo-rendered", "noise-repeated", "markers-without-noise"];
    let raised: Vec<_> = record.findings.iter().filter(|f| doubts.contains(&f.code.as_str())).collect();
    assert!(raised.is_empty(), "{what}: {raised:?}");
}

/// A tripod's photos before and after a move show the same prints from the same place, each with its own noise.
#[test]
#[ignore = "minutes: cargo test --test suite made:: -- --ignored --nocapture"]
fn photos_of_a_tripod_have_noise_of_their_own_and_a_copy_has_not() {
    let file: PathBuf =
        [env!("CARGO_MANIFEST_DIR"), "samples", "scenes", "mistakes", "noise-repeated.toml"].iter().collect();
    for preset in Preset::ALL {
        let mut scene = Scene::read(&file).unwrap();
        scene.spec.insides = InsidesSpec::preset(preset);
        let staged = |scene: &Scene| {
            let folder = tempfile::tempdir().unwrap();
            scene.stage(folder.path(), &mut |_| ()).unwrap();
            judged(folder.path())
        };
        let copied = staged(&scene).findings.iter().any(|f| f.code == "noise-repeated");
        println!("{}: a copy is {}", preset.name(), if copied { "named" } else { "not seen" });
        for photo in scene.spec.photo.iter_mut().flatten() {
            photo.forged.noise_of = None;
        }
        assert_no_doubt(preset.name(), &staged(&scene));
    }
}
