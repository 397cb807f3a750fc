//! What `plan` predicts, against what `verify` states and against its own promises.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

use std::time::Instant;

use crate::planned::{QUANTITIES, STANCES, compare, compare_as_developed, number};
use baywitness::camera::Profile;
use baywitness::folder::{Kind, Models, Vehicle};
use baywitness::job::{PlanOptions, Reach, Wanted, plan};
use baywitness::marker::{Kit, KitFile};
use baywitness::record::PlanRecord;
use baywitness::setup::Setup;
use baywitness::synth::Preset;

fn text(kind: Kind, name: &str) -> String {
    Models::embedded().open(&[kind], name).unwrap().text().unwrap().to_owned()
}

fn kit(name: &str) -> Kit {
    KitFile::from_toml(&text(Kind::Kit, name), name).unwrap().kit
}

fn made(kit: &Kit, setup: &str, options: &PlanOptions) -> PlanRecord {
    let setup = Setup::from_toml(&text(Kind::Setup, setup), setup).unwrap();
    let camera = Profile::from_toml(&text(Kind::Camera, "demo-phone"), "camera").unwrap();
    plan(Wanted { kit, setup: &setup, camera: &camera, vehicle: &Vehicle::default() }, options)
}

fn u(plan: &PlanRecord, quantity: &str) -> f64 {
    plan.predicted.iter().find(|p| p.quantity == quantity).unwrap().expanded_uncertainty.unwrap()
}

/// One stance and seed here, all six below; single jobs scatter about their median.
#[test]
fn rendered_photos_state_what_was_predicted() {
    let table = compare(&STANCES[1], 0.4, 0..1);
    for (quantity, (predicted, stated)) in QUANTITIES.iter().zip(&table) {
        println!("{quantity}: predicted {predicted:.4}, stated {stated:.4}");
        let ratio = predicted / stated;
        assert!((0.75..1.33).contains(&ratio), "{quantity}: predicted {predicted}, stated {stated}");
    }
}

/// The closing table: medians over seeds agree within 10 %. `STANCE_SEEDS` (1)
/// and `STANCE_SCALE` (0.5 of the sample camera) change its cost.
#[test]
#[ignore = "renders fifteen photos for each seed"]
fn six_stances_state_what_was_predicted() {
    let (seeds, scale) = (number("STANCE_SEEDS", 1.0) as u64, number("STANCE_SCALE", 0.5));
    println!("U (95 %), predicted / median stated of {seeds} seeds, pictures at {scale}: {QUANTITIES:?}");
    let mut ratios = Vec::new();
    for stance in STANCES {
        let mut line = format!("{:26}", stance.name);
        for (predicted, stated) in compare(stance, scale, 0..seeds) {
            line.push_str(&format!(" | {predicted:.3} / {stated:.3} = {:.2}", predicted / stated));
            ratios.push(predicted / stated);
        }
        println!("{line}");
    }
    ratios.sort_by(f64::total_cmp);
    let median = ratios[ratios.len() / 2];
    println!("median {median:.3}, from {:.3} to {:.3}", ratios[0], ratios[ratios.len() - 1]);
    assert!((0.9..1.1).contains(&median));
}

/// What is predicted from the corner noise of two earlier jobs by the same phone, and what the next ones state.
#[test]
#[ignore = "three minutes: cargo test --test suite plan::phones -- --ignored --nocapture"]
fn phones_state_what_their_earlier_jobs_let_expect() {
    let (seeds, scale) = (number("STANCE_SEEDS", 3.0) as u64, number("STANCE_SCALE", 0.6));
    println!("U (95 %), predicted / median stated of {seeds} seeds, pictures at {scale}: {QUANTITIES:?}");
    let mut wrong = Vec::new();
    for preset in Preset::ALL {
        let mut line = format!("{:8}", preset.name());
        for (predicted, stated) in compare_as_developed(&STANCES[1], scale, preset, 0..2, 2..2 + seeds) {
            line.push_str(&format!(" | {predicted:.3} / {stated:.3} = {:.2}", predicted / stated));
            if !(0.75..1.33).contains(&(predicted / stated)) {
                wrong.push(format!("{}: {predicted} / {stated}", preset.name()));
            }
        }
        println!("{line}");
    }
    assert!(wrong.is_empty(), "{wrong:?}");
}

/// The kits of the library reach what their files promise: two photos and four
/// plates, squareness to .05 deg and centring to 2 mm against the centreline.
#[test]
fn two_photos_and_four_plates_are_enough_for_a_third_of_usual_tolerances() {
    enough(&["bay-a4"]);
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn so_they_are_with_every_kit_of_the_library() {
    enough(&["bay-a3", "demo-bay"]);
}

fn enough(kits: &[&str]) {
    for name in kits {
        let start = Instant::now();
        let two = made(&kit(name), "radar-plate", &PlanOptions { photos: Some(2), ..PlanOptions::default() });
        let four = made(&kit(name), "radar-plate", &PlanOptions { photos: Some(4), ..PlanOptions::default() });
        println!(
            "{name}: two {:.3} deg {:.2} mm, four {:.3} deg {:.2} mm, {:.1?}",
            u(&two, "yaw"),
            u(&two, "lateral_offset"),
            u(&four, "yaw"),
            u(&four, "lateral_offset"),
            start.elapsed()
        );
        assert!(u(&two, "yaw") < 0.05 && u(&two, "lateral_offset") < 2.0, "{name}");
        // .025 before sheets could be askew and hands unsteady.
        assert!(u(&four, "yaw") < 0.028, "{name}: {}", u(&four, "yaw"));
    }
}

/// Corners three times as noisy: by what earlier photos showed, or by what the camera's fit found.
#[test]
fn a_noisy_phone_is_promised_less() {
    let (kit, setup) = (kit("bay-a4"), "radar-plate");
    let usual = made(&kit, setup, &PlanOptions { photos: Some(2), ..PlanOptions::default() });
    let from_mm: Vec<[f64; 3]> = usual.stations.iter().map(|s| s.position_mm).collect();
    let there = |noise_ratio| PlanOptions { from_mm: from_mm.clone(), noise_ratio, ..PlanOptions::default() };
    let (plain, noisy) = (made(&kit, setup, &there(None)), made(&kit, setup, &there(Some(3.0))));
    assert_eq!((plain.noise_ratio, noisy.noise_ratio), (Some(1.0), Some(3.0)));
    let grown = u(&noisy, "distance") / u(&plain, "distance");
    // Not three times: holders, prints and the camera have their share, which is not noise.
    assert!((1.15..3.0).contains(&grown), "{grown}");
    let mut camera = Profile::from_toml(&text(Kind::Camera, "demo-phone"), "camera").unwrap();
    let [width, height] = camera.image_size_px.map(f64::from);
    // 4032 x 3024 are 5040 px across and have .0105 px.
    camera.u_noise_px = Some(3.0 * 0.0105 * (5040.0 / width.hypot(height)).sqrt());
    let sheet = Setup::from_toml(&text(Kind::Setup, setup), setup).unwrap();
    let fitted = plan(Wanted { kit: &kit, setup: &sheet, camera: &camera, vehicle: &Vehicle::default() }, &there(None));
    assert!((u(&fitted, "distance") / u(&noisy, "distance") - 1.0).abs() < 1e-6);
}

#[test]
fn places_are_within_the_bay_and_clear_of_posts() {
    let reach = Reach { width_mm: 4000.0, ahead_mm: 4500.0, posts_mm: vec![[5600.0, 1200.0]] };
    let plan = made(
        &kit("bay-a4"),
        "radar-plate",
        &PlanOptions { photos: Some(4), from_mm: Vec::new(), reach, ..PlanOptions::default() },
    );
    assert_eq!(plan.stations.len(), 4);
    for s in &plan.stations {
        let [x, y, z] = s.position_mm;
        assert!(y.abs() <= 1700.0 && x <= 3490.0 + 4500.0 && (1200.0..=1800.0).contains(&z), "{s:?}");
        assert!((x - 5600.0).hypot(y - 1200.0) >= 300.0, "{s:?} stands in the post");
        assert!(s.sees.iter().any(|n| n == "stand"), "{s:?}");
    }
}

#[test]
fn what_no_photo_decides_is_said_with_a_remedy() {
    let mut without_front = kit("bay-a4");
    without_front.carriers.retain(|c| !c.name.starts_with("front"));
    let plan = made(&without_front, "radar-plate", &PlanOptions { photos: Some(2), ..PlanOptions::default() });
    let yaw = plan.predicted.iter().find(|p| p.quantity == "yaw").unwrap();
    assert!(!yaw.can_decide && yaw.expanded_uncertainty.is_none(), "{yaw:?}");
    assert!(plan.advice.iter().any(|a| a.starts_with("squareness") && a.contains("plates")), "{:?}", plan.advice);
}

/// More photos never make a prediction worse.
#[test]
fn another_photo_only_helps() {
    let from = [[6600.0, 1700.0, 1500.0], [6600.0, -1700.0, 1500.0], [8000.0, 300.0, 1700.0]];
    let of = |n: usize| {
        let options = PlanOptions { from_mm: from[..n].to_vec(), ..PlanOptions::default() };
        made(&kit("bay-a4"), "radar-plate", &options)
    };
    let (two, three) = (of(2), of(3));
    for q in ["distance", "lateral_offset", "height", "yaw", "pitch", "roll"] {
        assert!(u(&three, q) <= u(&two, q) * 1.0001, "{q}: {} then {}", u(&two, q), u(&three, q));
    }
}
