//! Marks on the wheel arches: how the body hangs over its wheels.

use baywitness::folder::{Kind, Models};
use baywitness::marker::KitFile;
use baywitness::record::{JobRecord, Verdict};
use baywitness::setup::Setup;
use baywitness::synth::Scene;

use super::{staged, verify};

/// The bay with marks on the arches, photographed from both front quarters.
fn marked(arch_heights_mm: [f64; 4]) -> Scene {
    // Marks of 80 mm, seven metres away: they need more of the camera than the stand does.
    let mut scene = staged::scene(0.62);
    scene.spec.job.remove("reading");
    let read = |kind, name: &str| Models::embedded().open(&[kind], name).unwrap().text().unwrap().to_owned();
    let (kit, setup) = ("bay-a4-arches", "camera-board-ride-height");
    scene.kit = KitFile::from_toml(&read(Kind::Kit, kit), kit).unwrap().kit;
    scene.setup = Setup::from_toml(&read(Kind::Setup, setup), setup).unwrap();
    scene.spec.vehicle.arch_heights_mm = arch_heights_mm;
    scene
}

/// Rear left, rear right, front left, front right: what the sheet wants.
const WANTED: [f64; 4] = [372.0, 372.0, 380.0, 380.0];

fn sigmas(record: &JobRecord, key: &str, truth: f64) -> f64 {
    let found = record.measured.get(key).unwrap_or_else(|| panic!("{key} was not measured"));
    let sigmas = (found.value - truth) / found.standard_uncertainty;
    println!("{key}: {:.3} u {:.3}, truly {truth:.3}", found.value, found.standard_uncertainty);
    sigmas.abs()
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it; tests/suite/kits.rs samples the same"]
fn a_body_that_hangs_low_in_front_is_outside_there_and_points_down() {
    let scene = marked([372.0, 372.0, 362.0, 364.0]);
    let truth = scene.truth();
    let record = verify(&scene);
    for key in
        ["arch_height_front_left", "arch_height_front_right", "arch_height_rear_left", "ride_height", "body_pitch"]
    {
        assert!(sigmas(&record, key, truth.measured[key]) < 3.5, "{key}");
    }
    let verdict = |quantity: &str| record.checks.iter().find(|c| c.quantity == quantity).unwrap().verdict;
    assert_eq!(verdict("arch_height_front_left"), Verdict::Outside);
    assert_eq!(verdict("arch_height_rear_left"), Verdict::Within);
    let body = record.ride_height.unwrap();
    // 17 mm over the wheelbase of 2,640 mm, and half of that lower on average.
    assert!((body.pitch_deg - 0.369).abs() < 3.0 * body.u_pitch_deg, "{body:?}");
    assert!((body.height_mm + 8.5).abs() < 3.0 * body.u_height_mm, "{body:?}");
    assert!(body.words[1].contains("down"), "{:?}", body.words);
}

/// Without marks the job's readings decide, as the sheet's words say.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_kit_without_marks_leaves_the_arches_to_readings() {
    let mut scene = marked(WANTED);
    let without = Models::embedded().open(&[Kind::Kit], "bay-a4").unwrap().text().unwrap().to_owned();
    scene.camera = staged::scene(super::SCALE).camera;
    scene.kit = KitFile::from_toml(&without, "bay-a4").unwrap().kit;
    let record = verify(&scene);
    let arch = record.checks.iter().find(|c| c.quantity == "arch_height_front_left").unwrap();
    assert_eq!((arch.evidence.as_str(), arch.verdict, arch.value), ("reading", Verdict::Retake, None));
    assert!(!record.measured.contains_key("ride_height"));
}
