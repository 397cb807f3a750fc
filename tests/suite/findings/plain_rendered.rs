//! Plain jobs as rendered photos, through the detector: no finding, and errors
//! of the size that is stated.

use baywitness::folder::Models;
use baywitness::job;
use baywitness::record::{FindingRecord, JobRecord, Level};
use baywitness::synth::{Scene, StandError};
use rayon::prelude::*;

use super::bench::samples;
use super::plain::BUDGET;
use crate::sampled_bay::Noise;
use crate::staged::scene;

const SCALE: f64 = 0.4;

const QUANTITIES: [&str; 7] =
    ["distance_from_nose", "distance_from_rear_axle", "lateral_offset", "height", "yaw", "pitch", "roll"];

/// The sample's bay with a stand that is set by hand and photos taken by hand:
/// kit errors, focal lengths, light and noise are drawn by the renderer.
fn plain(seed: u64) -> Scene {
    let mut noise = Noise::new(seed ^ 0x91a1_0000);
    let mut scene = scene(SCALE);
    scene.spec.seed = 5000 + seed;
    let mut draw = |sigma: f64| sigma * noise.normal();
    scene.spec.stand.error = StandError {
        distance_mm: draw(3.0),
        lateral_mm: draw(1.0),
        height_mm: draw(1.0),
        yaw_deg: draw(0.02),
        pitch_deg: draw(0.1),
        roll_deg: draw(0.1),
    };
    let mut photos = scene.photos();
    for photo in &mut photos {
        photo.eye_mm = photo.eye_mm.map(|x| x + draw(120.0));
        photo.tilt_deg = draw(1.0);
    }
    scene.spec.photo = Some(photos);
    scene
}

/// The record, and each quantity's error over its standard uncertainty.
fn verified(seed: u64) -> (JobRecord, Vec<Option<f64>>) {
    let folder = tempfile::tempdir().unwrap();
    plain(seed).stage(folder.path(), &mut |_| ()).unwrap();
    let record = job::verify(folder.path(), &job::Options::new(Models::embedded())).unwrap();
    let truth: serde_json::Value =
        serde_json::from_str(&std::fs::read_to_string(folder.path().join("truth.json")).unwrap()).unwrap();
    let error = |key: &&str| {
        let (measured, truth) = (record.measured.get(*key)?, truth["measured"][*key].as_f64()?);
        Some((measured.value - truth) / measured.standard_uncertainty)
    };
    let errors = QUANTITIES.iter().map(error).collect();
    (record, errors)
}

fn run(n: u64) {
    let all: Vec<_> = (0..n).into_par_iter().map(verified).collect();
    let mut alarms = 0;
    for (seed, (record, errors)) in all.iter().enumerate() {
        // That photos are too few for a tolerance is no fault of theirs; the sample's reading is a fixed figure.
        let apart = ["weak-geometry", "reading-disagrees"];
        let repeats_a_check = |code: &str| code.starts_with("stand-") && code != "stand-moved-between-photos";
        let wrong = |f: &&FindingRecord| {
            f.level != Level::Note && !apart.contains(&f.code.as_str()) && !repeats_a_check(&f.code)
        };
        alarms += usize::from(record.findings.iter().any(|f| wrong(&f)));
        for f in &record.findings {
            println!("   {seed}: {} {}", f.code, f.message);
        }
        assert!(errors.iter().flatten().all(|e| e.abs() < 6.0), "seed {seed}: {errors:.1?}");
    }
    println!("{alarms} of {n} rendered plain jobs have a finding");
    for (i, name) in QUANTITIES.iter().enumerate() {
        let z: Vec<f64> = all.iter().filter_map(|(_, e)| e[i]).collect();
        let rms = (z.iter().map(|z| z * z).sum::<f64>() / z.len() as f64).sqrt();
        let held = z.iter().filter(|z| z.abs() <= 1.96).count();
        println!("{name:26} RMS(error/u) {rms:.2}, {held} of {} within 1.96 u", z.len());
        // Four standard deviations of such a root mean square.
        let most = 1.15 * (1.0 + 4.0 / (2.0 * z.len() as f64).sqrt());
        assert!(rms < most, "{name}: {rms}");
    }
    let n = n as f64;
    assert!(alarms as f64 <= n * BUDGET + 3.0 * (n * BUDGET * (1.0 - BUDGET)).sqrt(), "{alarms} of {n}");
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn rendered_plain_bays_raise_no_alarm() {
    run(samples(2));
}

#[test]
#[ignore = "some five minutes: sixty rendered jobs"]
fn sixty_rendered_plain_bays_raise_no_alarm() {
    run(60);
}
