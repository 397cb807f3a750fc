//! The detector beside OpenCV's aruco and the AprilTag library on the very same rendered files:
//! `cargo bench --bench detector`. The peers run where `BAYWITNESS_PYTHON` (default `python3`)
//! has opencv-python-headless and pupil-apriltags; else their rows are left out.
//! `BENCH_QUICK=1` leaves out most of the photos. Takes some twenty minutes of one core.
//! `BENCH_ONLY=time` compares processor time with OpenCV's reading alone, run in turn, a minute or two;
//! `BENCH_PHOTOS=FOLDER` then takes the JPEG files of a folder instead of rendered ones.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "a bench that prints a table")]

mod bound;
mod peers;
mod photos;
mod tables;
mod time;

use std::path::Path;
use std::process::Command;

use baywitness::detect::find_markers;
use baywitness::marker::Dictionary;
use baywitness::photo;

#[path = "../../tests/suite/detect_support/mod.rs"]
mod detect_support;

use detect_support::render::Camera;
use peers::Outcome;
use photos::{Group, Shot};

/// Names a photo for a process of its own, which prints its CPU time, s, and peak memory, kB.
const ALONE: &str = "BENCH_ALONE";

fn main() {
    if let Some(file) = std::env::var_os(ALONE) {
        let photo = photo::read(Path::new(&file)).unwrap();
        let found = find_markers(&photo.luma, Dictionary::tag36h11()).markers.len();
        println!("{} {} {found}", cpu(), peak_kb());
        return;
    }
    let folder = tempfile::tempdir().unwrap();
    let quick = std::env::var_os("BENCH_QUICK").is_some();
    if std::env::var_os("BENCH_ONLY").is_some_and(|what| what == "time") {
        time::compare(folder.path(), quick);
        return;
    }
    for (title, camera) in [("no tone curve", Camera::Linear), ("phone: tone curve, sharpening", Camera::Phone)] {
        let shots = photos::render_all(folder.path(), camera, quick, |_| true);
        let (read, mut outcomes) = peers::run(&shots).unwrap_or_default();
        let (own, sightings) = ours(&shots);
        outcomes.push(own);
        println!("\n## {title}: {} photos", shots.len());
        tables::by_size_and_tilt(&shots, &outcomes);
        tables::bounds(&shots, &outcomes, camera);
        tables::uncertainty(&shots, &sightings);
        tables::false_ones(&shots, &outcomes);
        tables::speed(&shots, &outcomes, &read, &alone(&shots));
    }
}

/// CPU time of this thread, s.
pub(crate) fn cpu() -> f64 {
    let text = std::fs::read_to_string("/proc/thread-self/schedstat").unwrap_or_default();
    text.split(' ').next().and_then(|s| s.parse::<f64>().ok()).unwrap_or(f64::NAN) * 1e-9
}

/// Peak resident memory of this process, kB.
fn peak_kb() -> f64 {
    let text = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = text.lines().find(|l| l.starts_with("VmHWM")).unwrap_or_default();
    line.split_whitespace().nth(1).and_then(|s| s.parse().ok()).unwrap_or(f64::NAN)
}

fn ours(shots: &[Shot]) -> (Outcome, Vec<baywitness::detect::Sightings>) {
    let mut seconds = Vec::new();
    let mut all = Vec::new();
    for shot in shots {
        let start = cpu();
        let photo = photo::read(&shot.file).unwrap();
        all.push(find_markers(&photo.luma, Dictionary::tag36h11()));
        seconds.push(cpu() - start);
    }
    let found = all.iter().map(|s| s.markers.iter().map(|m| (m.id, m.corners_px)).collect()).collect();
    (Outcome { name: "baywitness".to_owned(), seconds, found }, all)
}

/// CPU time, s, and peak memory, kB, of a process that reads one large photo.
fn alone(shots: &[Shot]) -> Vec<Option<(f64, f64)>> {
    let run = |shot: &Shot| {
        if !matches!(shot.group, Group::Speed | Group::Other(_)) {
            return None;
        }
        let output = Command::new(std::env::current_exe().ok()?).env(ALONE, &shot.file).output().ok()?;
        let text = String::from_utf8_lossy(&output.stdout).into_owned();
        let mut numbers = text.split_whitespace().map(|w| w.parse().unwrap_or(f64::NAN));
        Some((numbers.next()?, numbers.next()?))
    };
    shots.iter().map(run).collect()
}
