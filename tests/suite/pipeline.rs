//! From a rendered bay to a verdict: the measurement against the renderer's
//! truth, which is computed by formulas of its own.

#![cfg(test)]

use crate::staged::scene;
use baywitness::folder::Models;
use baywitness::job;
use baywitness::record::{CheckRecord, JobRecord, Verdict};
use baywitness::setup::ReferenceLine;
use baywitness::synth::{PhotoSpec, Scene, StandError, Truth};

/// Size of the pictures against the sample camera's.
const SCALE: f64 = 0.4;
/// Farther from the truth than this many standard uncertainties is wrong:
/// one in 16,000 for each quantity.
const MOST_SIGMAS: f64 = 4.0;
/// Quantities of every bay here.
const QUANTITIES: [&str; 10] = [
    "yaw",
    "lateral_offset",
    "distance_from_nose",
    "distance_from_rear_axle",
    "height",
    "pitch",
    "roll",
    "side_range_difference",
    "rear_track",
    "height_from_nose",
];

/// Stages and verifies a scene; every quantity must agree with the truth, and
/// no check may say the opposite of it.
fn verify(name: &str, scene: &Scene) -> JobRecord {
    let folder = tempfile::tempdir().unwrap();
    let start = std::time::Instant::now();
    let truth = scene.stage(folder.path(), &mut |_| ()).unwrap();
    let staged = start.elapsed();
    let record = job::verify(folder.path(), &job::Options::new(Models::embedded())).unwrap();
    let verified = start.elapsed() - staged;
    println!(
        "{name}: staged in {staged:.1?}, verified in {verified:.1?}: {} ({})",
        record.verdict.words(),
        record.reason
    );
    for finding in &record.findings {
        println!("  {} {:?}: {}", finding.code, finding.level, finding.message);
    }
    compare(name, &record, &truth);
    record
}

fn compare(name: &str, record: &JobRecord, truth: &Truth) {
    let mut wrong = Vec::new();
    for key in QUANTITIES {
        let found = record.measured.get(key).unwrap_or_else(|| panic!("{name}: {key} was not measured"));
        let value = truth.measured[key];
        let sigmas = (found.value - value) / found.standard_uncertainty;
        println!(
            "  {key}: {:.3}, truth {value:.3}, u {:.3}, {sigmas:+.1} sigmas",
            found.value, found.standard_uncertainty
        );
        if sigmas.abs() > MOST_SIGMAS {
            wrong.push(format!("{key} is {sigmas:+.1} sigmas off"));
        }
    }
    for check in &record.checks {
        let key = check.from.as_ref().map_or(check.quantity.clone(), |f| format!("{}_from_{f}", check.quantity));
        let value = truth.measured[&key];
        let inside = check.lower.is_none_or(|l| value >= l) && check.upper.is_none_or(|u| value <= u);
        let opposite = if inside { Verdict::Outside } else { Verdict::Within };
        if check.verdict == opposite {
            wrong.push(format!("{key} is told {:?}, the truth is {value:.3}", check.verdict));
        }
    }
    assert!(wrong.is_empty(), "{name}: {wrong:?}");
}

fn check<'a>(record: &'a JobRecord, quantity: &str) -> &'a CheckRecord {
    record.checks.iter().find(|c| c.quantity == quantity).unwrap()
}

fn codes(record: &JobRecord) -> Vec<&str> {
    record.findings.iter().map(|f| f.code.as_str()).collect()
}

/// A stand wrong in one way: that check is outside and told so, the others are within.
fn wrong_in(record: &JobRecord, quantity: &str, code: &str, words: &[&str]) {
    assert_eq!(record.verdict, Verdict::Outside);
    for c in &record.checks {
        assert_eq!(c.verdict == Verdict::Outside, c.quantity == quantity, "{}: {:?}", c.quantity, c.verdict);
    }
    let told = &check(record, quantity).correction;
    for w in words {
        assert!(told.contains(w), "{told:?} should say {w:?}");
    }
    let finding = record.findings.iter().find(|f| f.code == code);
    let finding = finding.unwrap_or_else(|| panic!("no {code} among {:?}", codes(record)));
    for w in words {
        assert!(finding.message.contains(w), "{:?} should say {w:?}", finding.message);
    }
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_stand_in_its_place_is_within() {
    let mut s = scene(SCALE);
    s.spec.stand.error = StandError { distance_mm: 1.8, lateral_mm: -0.7, height_mm: 0.6, ..StandError::default() };
    let record = verify("good", &s);
    assert_eq!(record.verdict, Verdict::Within, "{:?}", codes(&record));
    assert!(record.checks.iter().all(|c| c.verdict == Verdict::Within && c.can_decide));
}

/// Turned to the left: the end on the vehicle's left has come nearer to the vehicle.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_turned_stand_is_turned_back() {
    let mut s = scene(SCALE);
    s.spec.stand.error.yaw_deg = 0.8;
    let record = verify("turned", &s);
    let words = ["Turn the stand", "vehicle's left", "away from the vehicle", "vehicle's right", "towards it"];
    wrong_in(&record, "yaw", "stand-turned", &words);
    let moved = check(&record, "yaw").move_by.unwrap();
    assert!((moved + 0.8).abs() < 0.1, "{moved}");
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_stand_too_near_is_moved_away() {
    let mut s = scene(SCALE);
    s.spec.stand.error.distance_mm = -22.0;
    let record = verify("too near", &s);
    wrong_in(&record, "distance", "stand-too-near", &["away from the vehicle"]);
    let told = &check(&record, "distance").correction;
    assert!((20..=24).any(|mm| told.contains(&format!("{mm} mm"))), "{told}");
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn two_plates_are_enough() {
    let mut s = scene(SCALE);
    s.kit.carriers.retain(|c| !c.name.starts_with("front"));
    s.setup.reference_line = ReferenceLine::RearAxleNormal;
    s.spec.vehicle.rear_axle_skew_deg = 0.04;
    let record = verify("two plates", &s);
    assert!(matches!(record.verdict, Verdict::Within | Verdict::NotProven), "{}", record.verdict.words());
    // The axle normal of two plates is several times less sharp than the line
    // of four: that must show in the uncertainty, not in a wrong answer.
    assert!(check(&record, "yaw").standard_uncertainty.unwrap() > 0.02);
}

/// The floor then comes from plumb plates and the typed height of the hubs.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_floor_without_sheets_comes_from_plates_and_hub_height() {
    let mut s = scene(SCALE);
    s.kit.carriers.retain(|c| !c.name.starts_with("floor"));
    (s.spec.vehicle.rear_plumb_deg, s.spec.vehicle.front_plumb_deg) = ([0.0; 2], [0.0; 2]);
    let mut vehicle = toml::Table::new();
    vehicle.insert("floor_below_hub_mm".into(), s.spec.vehicle.hub_height_mm.into());
    vehicle.insert("u_floor_below_hub_mm".into(), 0.5.into());
    s.spec.job.insert("vehicle".into(), vehicle.into());
    let record = verify("no sheets", &s);
    assert!(matches!(record.verdict, Verdict::Within | Verdict::NotProven), "{}", record.verdict.words());
    assert!(check(&record, "height").standard_uncertainty.unwrap() > 0.4);
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn three_photos_one_of_them_held_upright() {
    let mut s = scene(SCALE);
    let mut photos = s.photos();
    let nose = s.spec.vehicle.nose_mm[0];
    let mut upright = PhotoSpec::new("c.jpg", [nose + 5200.0, 300.0, 1500.0], [nose + 200.0, 0.0, 600.0]);
    upright.orientation = 6;
    photos.push(upright);
    s.spec.photo = Some(photos);
    let record = verify("three photos", &s);
    assert_eq!(record.verdict, Verdict::Within, "{:?}", codes(&record));
    let upright = &record.photos[2];
    assert_eq!((upright.orientation, upright.unused_because.as_deref()), (6, None));
    // The stored grid is the camera's own: wider than high, whatever people see.
    assert!(upright.width_px > upright.height_px);
    assert!(upright.markers.iter().any(|m| m.used));
}
