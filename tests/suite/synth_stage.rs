//! Staging a job: files, records, repeatability, wrong scenes.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

use std::fs;
use std::path::Path;

use crate::synth_support::sample;
use baywitness::folder::{JobFolder, Models};
use exif::{In, Tag};

#[test]
fn a_staged_job_is_whole_and_its_photos_carry_their_record() {
    let folder = tempfile::tempdir().unwrap();
    let mut scene = sample("good").with_scale(0.1);
    let mut photos = scene.photos();
    photos[1].orientation = 6;
    photos[1].digital_zoom = 1.5;
    photos[1].resized = 0.5;
    scene.spec.photo = Some(photos);
    scene.stage(folder.path(), &mut |_| {}).unwrap();
    let job = JobFolder::open(folder.path(), &Models::standard(None).unwrap()).unwrap();
    assert_eq!(job.photos.len(), 2);
    let bytes = fs::read(folder.path().join("photos/b.jpg")).unwrap();
    let read = exif::Reader::new().read_from_container(&mut std::io::Cursor::new(&bytes)).unwrap();
    let text = |tag| read.get_field(tag, In::PRIMARY).unwrap().display_value().to_string();
    assert_eq!(text(Tag::Model), "\"Invented Phone 11M\"");
    assert_eq!(text(Tag::DateTimeOriginal), "2026-02-03 10:41:37");
    assert_eq!(text(Tag::OffsetTimeOriginal), "\"+01:00\"");
    assert_eq!(text(Tag::Orientation), "row 0 at right and column 0 at top");
    assert_eq!(text(Tag::DigitalZoomRatio), "1.5");
    // 36 mm * 2870 px / 3840 px = 26.9 mm, times 1.5.
    assert_eq!(text(Tag::FocalLengthIn35mmFilm), "40");
    assert_eq!(text(Tag::PixelXDimension), "384");
    let decoded = baywitness::photo::read(&folder.path().join("photos/b.jpg")).unwrap();
    assert_eq!((decoded.width, decoded.height), (192, 144));
    let truth: serde_json::Value =
        serde_json::from_slice(&fs::read(folder.path().join("truth.json")).unwrap()).unwrap();
    assert_eq!(truth["format"], "truth/1");
    assert_eq!(truth["photos"][0]["file"], "photos/a.jpg");
    assert!(truth["photos"][0]["markers"].as_array().unwrap().len() > 20);
    assert!(truth["measured"]["yaw"].as_f64().unwrap().abs() < 0.1);
}

#[test]
fn the_same_seed_renders_the_same_bytes_whatever_the_threads() {
    let scene = sample("wrong").with_scale(0.08);
    let pool = |n: usize| rayon::ThreadPoolBuilder::new().num_threads(n).build().unwrap();
    let one = pool(1).install(|| scene.render_photo(0).unwrap());
    let two = pool(2).install(|| scene.render_photo(0).unwrap());
    assert!(one == two);
    let other = scene.with_seed(99).render_photo(0).unwrap();
    assert!(one != other);
}

fn wrong_scene(change: impl Fn(String) -> String) -> String {
    let folder = tempfile::tempdir().unwrap();
    for name in ["kit.toml", "setup.toml", "camera.toml"] {
        fs::copy(Path::new("samples/scenes").join(name), folder.path().join(name)).unwrap();
    }
    let path = folder.path().join("scene.toml");
    fs::write(&path, change(fs::read_to_string("samples/scenes/good.toml").unwrap())).unwrap();
    baywitness::synth::Scene::read(&path).unwrap_err().to_string()
}

#[test]
fn wrong_scenes_are_refused_with_key_and_line() {
    let cases: [(&str, &str, &str); 14] = [
        ("yaw_deg = 0.02", "yaw_deg = nan", "stand.error"),
        ("[vehicle]", "[vehicle]\nwheelbase_mm = -2.0", "vehicle.wheelbase_mm"),
        ("file = \"b.jpg\"", "file = \"a.jpg\"", "photo[1].file"),
        ("file = \"b.jpg\"", "file = \"../b.jpg\"", "photo[1].file"),
        ("tilt_deg = 0.6", "orientation = 5", "photo[0].orientation"),
        ("tilt_deg = 0.6", "tlit_deg = 0.6", "did you mean `tilt_deg`"),
        ("[job]", "[[carrier]]\nname = \"rear-lfet\"\n[job]", "did you mean `rear-left`"),
        ("[vehicle]", "[insides]\npreset = \"nigth\"\n[vehicle]", "did you mean `night`"),
        ("[vehicle]", "[insides]\nhalo = 1.0\n[vehicle]", "`halo`"),
        ("[vehicle]", "[insides]\nnoise = \"much\"\n[vehicle]", "expected a number, or two"),
        ("[vehicle]", "[insides]\nframes = [6, 2]\n[vehicle]", "insides.frames"),
        ("[vehicle]", "[insides]\njpeg_quality = 101\n[vehicle]", "insides.jpeg_quality"),
        ("tilt_deg = 0.6", "turn_deg_s = [0.0, 400.0, 0.0]", "photo[0].turn_deg_s"),
        ("kit = \"kit.toml\"", "kit = \"none.toml\"", "none.toml"),
    ];
    for (from, to, named) in cases {
        let message = wrong_scene(|text| text.replacen(from, to, 1));
        assert!(message.contains(named), "{to}: {message}");
        assert!(message.contains("line") || named == "none.toml", "{to}: {message}");
    }
}
