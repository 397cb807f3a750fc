//! The detector beside OpenCV's aruco and the AprilTag library on the very same rendered files:
//! `cargo bench --bench detector`. The peers run where `BAYWITNESS_PYTHON` (default `python3`)
//! has opencv-python-headless and pupil-apriltags; else their rows are left out.
//! `BENCH_QUICK=1` renders a quarter of the photos.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "a bench that prints a table")]

use std::path::{Path, PathBuf};
use std::process::Command;

use baywitness::detect::find_markers;
use baywitness::marker::Dictionary;
use baywitness::photo;
use nalgebra::Vector2;

#[path = "../tests/detect_support/mod.rs"]
mod detect_support;

use detect_support::TrueMarker;
use detect_support::render::{Camera, Kind, render};

/// Sides without foreshortening, px, that the table shows.
const SIDES: [f64; 6] = [16.0, 20.0, 25.0, 45.0, 100.0, 200.0];
const WIDTH: usize = 4032;
const HEIGHT: usize = 3024;
/// Markers in a photo.
const MARKERS: usize = 25;

/// One method's findings: ids and corners for each file, and the CPU time.
struct Outcome {
    name: String,
    seconds: f64,
    found: Vec<Vec<(u32, [Vector2<f64>; 4])>>,
}

fn main() {
    let folder = tempfile::tempdir().unwrap();
    for (title, camera) in [("no tone curve", Camera::Linear), ("phone: tone curve, sharpening", Camera::Phone)] {
        let (files, truth) = render_all(folder.path(), camera);
        let (read, mut outcomes) = peers(&files).unwrap_or_default();
        outcomes.push(ours(&files));
        let marks: usize = truth.iter().map(|t| t.1.len()).sum();
        println!("\n{title}: {} photos of {WIDTH}x{HEIGHT} px, {marks} markers", files.len());
        table(read, &outcomes, &truth);
    }
}

fn render_all(folder: &Path, camera: Camera) -> (Vec<PathBuf>, Vec<(f64, Vec<TrueMarker>)>) {
    let rounds = if std::env::var_os("BENCH_QUICK").is_some() { 1 } else { 4 };
    let mut files = Vec::new();
    let mut truth = Vec::new();
    for round in 0..rounds {
        for (i, side) in SIDES.iter().enumerate() {
            let kind = Kind { side: (*side, *side), camera, most: MARKERS, ..Kind::default() };
            let rendered = render(&kind, WIDTH, HEIGHT, 7000 + 100 * round + i as u64);
            let file = folder.join(format!("{camera:?}-{round}-{side}.jpg"));
            std::fs::write(&file, &rendered.jpeg).unwrap();
            files.push(file);
            truth.push((*side, rendered.markers));
        }
    }
    (files, truth)
}

/// CPU time of this thread, s.
fn cpu() -> f64 {
    let text = std::fs::read_to_string("/proc/thread-self/schedstat").unwrap_or_default();
    text.split(' ').next().and_then(|s| s.parse::<f64>().ok()).unwrap_or(f64::NAN) * 1e-9
}

fn ours(files: &[PathBuf]) -> Outcome {
    let mut seconds = 0.0;
    let mut found = Vec::new();
    for file in files {
        let start = cpu();
        let photo = photo::read(file).unwrap();
        let sightings = find_markers(&photo.luma, Dictionary::tag36h11());
        seconds += cpu() - start;
        found.push(sightings.markers.iter().map(|m| (m.id, m.corners_px)).collect());
    }
    Outcome { name: "baywitness".to_owned(), seconds, found }
}

fn peers(files: &[PathBuf]) -> Option<(f64, Vec<Outcome>)> {
    let python = std::env::var("BAYWITNESS_PYTHON").unwrap_or_else(|_| "python3".to_owned());
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("benches/peers.py");
    let output = Command::new(python).arg(script).args(files).output().ok()?;
    if !output.status.success() {
        let complaint = String::from_utf8_lossy(&output.stderr);
        println!("peers left out ({}): {}", output.status, complaint.lines().last().unwrap_or_default());
        return None;
    }
    let json: serde_json::Value = serde_json::from_slice(&output.stdout).ok()?;
    let read = json["read_s"].as_f64()?;
    let outcomes = json["seconds"].as_object()?.iter().map(|(name, seconds)| Outcome {
        name: name.clone(),
        seconds: seconds.as_f64().unwrap_or(f64::NAN),
        found: json["found"][name]
            .as_array()
            .unwrap()
            .iter()
            .map(|f| f.as_array().unwrap().iter().map(marker).collect())
            .collect(),
    });
    Some((read, outcomes.collect()))
}

fn marker(value: &serde_json::Value) -> (u32, [Vector2<f64>; 4]) {
    let corner = |k: usize| Vector2::new(value[1][k][0].as_f64().unwrap(), value[1][k][1].as_f64().unwrap());
    (value[0].as_u64().unwrap() as u32, [corner(0), corner(1), corner(2), corner(3)])
}

fn middle(corners: &[Vector2<f64>; 4]) -> Vector2<f64> {
    corners.iter().sum::<Vector2<f64>>() / 4.0
}

fn table(read: f64, outcomes: &[Outcome], truth: &[(f64, Vec<TrueMarker>)]) {
    let sides: Vec<String> = SIDES.iter().map(|s| s.to_string()).collect();
    println!("| | CPU x read | recall at {} px | corner RMS px at the same | worst px | false |", sides.join("/"));
    println!("|---|---|---|---|---|---|");
    for outcome in outcomes {
        let mut counts = [(0usize, 0usize, 0.0f64); SIDES.len()];
        let (mut strays, mut worst) = (0, 0.0f64);
        for ((side, markers), found) in truth.iter().zip(&outcome.found) {
            let bin = SIDES.iter().position(|s| s >= side).unwrap();
            let fits = |f: &(u32, [Vector2<f64>; 4]), m: &TrueMarker| {
                f.0 == m.id && (middle(&f.1) - middle(&m.corners)).norm() < 5.0
            };
            strays += found.iter().filter(|f| !markers.iter().any(|m| fits(f, m))).count();
            for m in markers {
                counts[bin].0 += 1;
                if let Some(hit) = found.iter().find(|f| fits(f, m)) {
                    counts[bin].1 += 1;
                    for (a, b) in hit.1.iter().zip(&m.corners) {
                        counts[bin].2 += (a - b).norm_squared() / 8.0;
                        worst = worst.max((a - b).norm());
                    }
                }
            }
        }
        let recall: Vec<_> = counts.iter().map(|c| format!("{:.2}", c.1 as f64 / c.0 as f64)).collect();
        let rms: Vec<_> = counts.iter().map(|c| format!("{:.3}", (c.2 / c.1 as f64).sqrt())).collect();
        let ratio = if read > 0.0 { format!("{:.1}", outcome.seconds / read) } else { "-".to_owned() };
        println!("| {} | {ratio} | {} | {} | {worst:.2} | {strays} |", outcome.name, recall.join("/"), rms.join("/"));
    }
}
