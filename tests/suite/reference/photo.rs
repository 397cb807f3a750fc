//! Decoded photos, as they are and written anew as progressive files, against OpenCV's grey reading, and the time of both.

use std::{fs, path::PathBuf, time::Instant};

use baywitness::photo;
use serde_json::json;

use super::harness::answer;

/// Bay and real photos where the shared folder is at hand, else the samples'.
fn photos() -> Vec<PathBuf> {
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR"));
    let shared = root.join("../shared/photos");
    [
        "bay/jobs/good1/photos/a.jpg",
        "bay/jobs/four1/photos/a.jpg",
        "real/room/IMG_1380.JPG",
        "real/chessboard/left01.jpg",
    ]
    .iter()
    .map(|name| shared.join(name))
    .chain([root.join("samples/good/photos/a.jpg")])
    .filter(|path| path.is_file())
    .collect()
}

#[test]
fn grey_levels_and_time_compare_with_opencv_s() {
    const RUNS: usize = 7;
    let photos = photos();
    if photos.is_empty() {
        println!("skipped: neither shared photos nor samples are here");
        return;
    }
    let folder = tempfile::tempdir().unwrap();
    let input = json!({ "photos": photos, "out": folder.path(), "runs": RUNS });
    let Some(answer) = answer("photo.py", &["cv2"], &input) else { return };
    let progressive = (0..photos.len()).map(|index| folder.path().join(format!("{index}.jpg")));
    for (index, path) in photos.iter().cloned().chain(progressive).enumerate() {
        let path = path.as_path();
        let mut fastest = f64::INFINITY;
        for _ in 0..RUNS {
            let start = Instant::now();
            photo::read(path).unwrap();
            fastest = fastest.min(1000.0 * start.elapsed().as_secs_f64());
        }
        let theirs = answer["photos"][index]["ms"].as_array().unwrap();
        let theirs = theirs.iter().map(|ms| ms.as_f64().unwrap()).fold(f64::INFINITY, f64::min);
        let ours = photo::read(path).unwrap();
        let grey = fs::read(folder.path().join(format!("{index}.raw"))).unwrap();
        assert_eq!(grey.len(), ours.luma.pixels().len(), "{}", path.display());
        let (mut most, mut different) = (0, 0_usize);
        for (a, b) in ours.luma.pixels().iter().zip(&grey) {
            most = most.max(a.abs_diff(*b));
            different += usize::from(a != b);
        }
        let share = different as f64 / grey.len() as f64;
        println!(
            "{}: {fastest:.1} ms, OpenCV {theirs:.1} ms; levels differ by {most} at most, {share:.4} of them",
            path.display()
        );
        // Two inverse cosine transforms within T.83's accuracy may round a level apart.
        assert!(most <= 2 && share < 0.02, "{}", path.display());
    }
}
