//! Corners of real photos against each other: what three detectors' corners are off by where nothing about the markers is
//! assumed, and whether ours are off by what they state. Skipped where photos and adjustment (`../shared`) are absent.

use std::path::Path;

use baywitness::job::photo_markers;
use serde_json::json;

use super::harness::answer;

/// The room's focal length as its source states it, px, and its photos' size.
const FOCAL_PX: f64 = 765.0;
const SIZE_PX: [u32; 2] = [816, 612];
/// What corners may be off by, in units of what they state: one, less what prints show alike in all photos (corners are free
/// and take that up), and some standard errors of so few redundant coordinates (an eighth each).
const RATIO: std::ops::Range<f64> = 0.6..1.5;

#[test]
#[ignore = "three minutes: cargo test --test suite reference::closure -- --ignored --nocapture"]
fn corners_of_real_photos_agree_as_they_state() {
    let shared = Path::new(env!("CARGO_MANIFEST_DIR")).join("../shared");
    let (room, tool) = (shared.join("photos/real/room"), shared.join("tools"));
    if !room.is_dir() || !tool.join("free_corners.py").is_file() {
        println!("skipped: {} has no photos, or no adjustment", shared.display());
        return;
    }
    let photos: Vec<_> = (1368..=1385).map(|n| room.join(format!("IMG_{n}.JPG"))).collect();
    let detected: Vec<_> = photos.iter().map(|p| photo_markers(p).unwrap()).collect();
    let input = json!({
        "tool": tool, "focal_px": FOCAL_PX, "size_px": SIZE_PX, "photos": photos, "detected": detected,
    });
    let Some(answer) = answer("closure.py", &["cv2", "scipy", "pupil_apriltags"], &input) else { return };
    let of = |who: &str, what: &str| answer[who][what].as_f64().unwrap();
    for who in ["baywitness", "apriltag", "opencv"] {
        println!("{who:10} {:.4} px, {} redundant coordinates", of(who, "rms"), of(who, "redundancy"));
    }
    println!("baywitness: {:.2} times what its corners state", of("baywitness", "ratio"));
    assert!(RATIO.contains(&of("baywitness", "ratio")), "{answer}");
    assert!(["apriltag", "opencv"].iter().all(|who| of("baywitness", "rms") < of(who, "rms")), "{answer}");
}
