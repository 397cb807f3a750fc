//! Stated 95 % intervals hold the truth 95 % of the time: thousands of sampled
//! jobs in which every error that the files admit to is drawn at random.
//!
//! `BAYWITNESS_COVERAGE_SAMPLES` says how many jobs the two main cases draw
//! (default 200; 2000 is what the limits of 93 to 97 % are made for); the
//! others draw a third.

#![cfg(test)]

mod common;

use baywitness::folder::Vehicle;
use baywitness::geom::{Attitude, Carrier, Pose};
use baywitness::measure::{Ask, Facts, measure};
use baywitness::pose::{Options, adjust};
use baywitness::quantity::Quantity;
use baywitness::setup::{Decision, DecisionRule, From, Limits, ReferenceLine, Setup};
use common::{Bay, HUB_MM, Noise, Sample, sample};
use nalgebra::Vector3;
use rayon::prelude::*;

pub(crate) fn sheet(line: ReferenceLine) -> Setup {
    Setup {
        name: "sampled".into(),
        title: "Sampled".into(),
        source: "Invented.".into(),
        reference_line: line,
        decision: Decision { rule: DecisionRule::Guarded, conformance_probability: 0.95 },
        procedure: None,
        steps: Vec::new(),
        datums: Vec::new(),
        prerequisites: Vec::new(),
        checks: Vec::new(),
        waived: Vec::new(),
        limits: Limits::default(),
    }
}

/// 1 sigma of the typed hub height, mm.
const U_HUB_MM: f64 = 1.0;

/// The typed sizes; the hub's height is wrong by its stated uncertainty.
fn vehicle(seed: u64) -> Vehicle {
    Vehicle {
        description: None,
        vin: None,
        wheelbase_mm: None,
        nose_from_rear_axle_mm: None,
        floor_below_hub_mm: Some(HUB_MM + U_HUB_MM * Noise::new(seed ^ 0x5eed_0000).normal()),
        u_wheelbase_mm: 3.0,
        u_nose_from_rear_axle_mm: 3.0,
        u_floor_below_hub_mm: U_HUB_MM,
    }
}

const QUANTITIES: [Quantity; 6] =
    [Quantity::Yaw, Quantity::LateralOffset, Quantity::Distance, Quantity::Height, Quantity::Pitch, Quantity::Roll];

/// The true values, by hand: the floor is z = 0.
fn truth(job: &Sample, line: ReferenceLine) -> [f64; 6] {
    let at = |name: &str| job.bodies[job.carrier(name)];
    let flat = |v: Vector3<f64>| Vector3::new(v.x, v.y, 0.0).normalize();
    let heading = |p: Pose<_, Carrier>| flat(p.direction(&Vector3::x()));
    let (left, right) = (at("rear-left"), at("rear-right"));
    let rear = (left.origin_mm() + right.origin_mm()) / 2.0;
    let d = match line {
        ReferenceLine::RearAxleNormal => flat(left.origin_mm() - right.origin_mm()).cross(&Vector3::z()),
        ReferenceLine::ThrustLine => flat(heading(left) + heading(right)),
        ReferenceLine::Centreline => flat((at("front-left").origin_mm() + at("front-right").origin_mm()) / 2.0 - rear),
    };
    let stand = at("stand");
    let y = Vector3::z().cross(&d);
    let a = stand.origin_mm() - rear;
    let turned = Attitude { yaw_deg: -d.y.atan2(d.x).to_degrees(), ..Default::default() }.rotation() * stand.rotation();
    let attitude = Attitude::from_rotation(&turned);
    [attitude.yaw_deg, a.dot(&y), a.dot(&d), stand.origin_mm().z, attitude.pitch_deg, attitude.roll_deg]
}

/// Errors over standard uncertainties, and whether the interval held, for each quantity.
fn one(bay: &Bay, line: ReferenceLine, seed: u64) -> [(f64, bool); 6] {
    let job = sample(bay, seed);
    let scene = adjust(&job.problem(), &Options::default()).unwrap();
    let (setup, vehicle) = (sheet(line), vehicle(seed));
    let asks: Vec<Ask> =
        QUANTITIES.iter().map(|q| Ask { quantity: *q, from: Some(From::RearAxle), target: 0, line }).collect();
    let facts = Facts { rig: &job.rig, setup: &setup, vehicle: &vehicle };
    let measured = measure(&facts, &scene, line, &asks, &[]);
    let truth = truth(&job, line);
    std::array::from_fn(|i| {
        let e = measured.answers[i].as_ref().unwrap().estimate;
        let miss = e.value - truth[i];
        (miss / e.standard_uncertainty, miss.abs() <= e.expanded_uncertainty())
    })
}

/// An error of so many standard uncertainties is no chance in 20,000 jobs of
/// six quantities (normal: 6e-8 each).
const GROSS: f64 = 5.5;

/// How many jobs a main case draws.
fn samples() -> u64 {
    match std::env::var("BAYWITNESS_COVERAGE_SAMPLES") {
        Ok(n) => n.parse().expect("BAYWITNESS_COVERAGE_SAMPLES is a number"),
        Err(_) => 200,
    }
}

/// Runs `n` samples and checks each quantity's coverage against the bounds.
fn coverage(name: &str, bay: &Bay, line: ReferenceLine, n: u64) {
    let start = std::time::Instant::now();
    let results: Vec<_> = (0..n).into_par_iter().map(|seed| one(bay, line, 1000 + seed)).collect();
    println!("{name}: {n} jobs in {:.1} s", start.elapsed().as_secs_f64());
    let mut wrong = Vec::new();
    // One job in thousands that is wholly wrong hides in a share of intervals.
    for (seed, errors) in results.iter().enumerate() {
        if errors.iter().any(|(error, _)| error.abs() > GROSS) {
            wrong.push(format!("seed {} is off by {:.1?} u", 1000 + seed, errors.map(|e| e.0)));
        }
    }
    for (i, quantity) in QUANTITIES.iter().enumerate() {
        let held = results.iter().filter(|r| r[i].1).count() as f64 / n as f64;
        let rms = (results.iter().map(|r| r[i].0.powi(2)).sum::<f64>() / n as f64).sqrt();
        println!("{name}: {} holds {held:.3}, RMS(error/u) {rms:.3}", quantity.name());
        // 93 to 97 % at 2000 samples: four standard deviations of the count.
        // Fewer samples widen the band by their own noise.
        let slack = 0.02 * (2000.0 / n as f64).max(1.0).sqrt();
        if (held - 0.95).abs() > slack {
            wrong.push(format!("{} holds {held:.3}", quantity.name()));
        }
    }
    assert!(wrong.is_empty(), "{name}: {wrong:?}");
}

#[test]
fn two_photos_with_plates_on_four_wheels() {
    coverage("four plates", &Bay::default(), ReferenceLine::Centreline, samples());
}

#[test]
fn two_photos_with_two_plates() {
    let bay = Bay { front_plates: false, ..Bay::default() };
    coverage("two plates", &bay, ReferenceLine::RearAxleNormal, samples());
}

#[test]
fn two_plates_against_the_thrust_line() {
    let bay = Bay { front_plates: false, ..Bay::default() };
    coverage("thrust line", &bay, ReferenceLine::ThrustLine, samples() / 3);
}

#[test]
fn four_plates_without_floor_sheets() {
    let bay = Bay { floor_sheets: false, ..Bay::default() };
    coverage("four plates, no sheets", &bay, ReferenceLine::Centreline, samples() / 3);
}

#[test]
fn two_plates_without_floor_sheets() {
    let bay = Bay { floor_sheets: false, front_plates: false, ..Bay::default() };
    coverage("two plates, no sheets", &bay, ReferenceLine::RearAxleNormal, samples() / 3);
}

#[test]
fn four_photos() {
    let bay = Bay { four_photos: true, ..Bay::default() };
    coverage("four photos", &bay, ReferenceLine::Centreline, samples() / 3);
}

#[test]
fn through_a_wide_lens() {
    let bay = Bay { kannala_brandt: true, ..Bay::default() };
    coverage("Kannala-Brandt", &bay, ReferenceLine::Centreline, samples() / 3);
}

#[test]
fn plates_that_seat_to_half_a_millimetre() {
    let bay = Bay { u_seating_mm: 0.5, u_seating_deg: 0.1, ..Bay::default() };
    coverage("seating", &bay, ReferenceLine::Centreline, samples() / 3);
    let bay = Bay { front_plates: false, ..bay };
    coverage("seating, thrust line", &bay, ReferenceLine::ThrustLine, samples() / 3);
}

#[test]
fn one_corner_wrong_by_a_pixel() {
    let bay = Bay { wrong_corner: true, ..Bay::default() };
    coverage("wrong corner", &bay, ReferenceLine::Centreline, samples() / 3);
}

/// Few markers leave few degrees of freedom.
#[test]
fn two_markers_on_each_carrier() {
    let bay = Bay { most_markers: 2, ..Bay::default() };
    coverage("two markers", &bay, ReferenceLine::Centreline, samples() / 3);
}

#[test]
fn a_coarse_layout_and_scale() {
    let bay = Bay { u_layout_mm: 0.5, u_scale: 2e-3, ..Bay::default() };
    coverage("coarse layout", &bay, ReferenceLine::Centreline, samples() / 3);
}

/// Jobs in which a plate's other pose wins while photos are linked, so that
/// the first solution leaves the plate's corners aside.
#[test]
fn plates_that_start_turned_over_are_placed_again() {
    let no_sheets = Bay { floor_sheets: false, ..Bay::default() };
    let seating = Bay { u_seating_mm: 0.5, u_seating_deg: 0.1, ..Bay::default() };
    for (bay, seed) in [(&no_sheets, 1875), (&seating, 1460), (&seating, 2997)] {
        let errors = one(bay, ReferenceLine::Centreline, seed);
        assert!(errors.iter().all(|(error, _)| error.abs() < GROSS), "seed {seed}: {errors:?}");
        let job = sample(bay, seed);
        let scene = adjust(&job.problem(), &Options::default()).unwrap();
        let used = scene.photos.iter().flatten().flat_map(|p| &p.views).flat_map(|v| v.used);
        assert!(used.filter(|used| !used).count() <= 1, "seed {seed}: good corners were left out");
    }
}
