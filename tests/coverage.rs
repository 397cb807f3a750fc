//! Stated 95 % intervals hold the truth 95 % of the time: thousands of sampled
//! jobs in which every error that the files admit to is drawn at random.

#![cfg(test)]

mod common;

use baywitness::folder::Vehicle;
use baywitness::geom::{Attitude, Carrier, Pose};
use baywitness::measure::{Ask, Facts, measure};
use baywitness::pose::{Options, adjust};
use baywitness::quantity::Quantity;
use baywitness::setup::{Decision, DecisionRule, From, Limits, ReferenceLine, Setup};
use common::{Bay, Sample, sample};
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
        datums: Vec::new(),
        prerequisites: Vec::new(),
        checks: Vec::new(),
        waived: Vec::new(),
        limits: Limits::default(),
    }
}

fn vehicle() -> Vehicle {
    Vehicle {
        description: None,
        vin: None,
        wheelbase_mm: None,
        nose_from_rear_axle_mm: None,
        floor_below_hub_mm: None,
        u_wheelbase_mm: 3.0,
        u_nose_from_rear_axle_mm: 3.0,
        u_floor_below_hub_mm: 3.0,
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
    let (setup, vehicle) = (sheet(line), vehicle());
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

/// Runs `n` samples and checks each quantity's coverage against the bounds.
fn coverage(name: &str, bay: &Bay, line: ReferenceLine, n: u64) {
    let results: Vec<_> = (0..n).into_par_iter().map(|seed| one(bay, line, 1000 + seed)).collect();
    for (i, quantity) in QUANTITIES.iter().enumerate() {
        let held = results.iter().filter(|r| r[i].1).count() as f64 / n as f64;
        let rms = (results.iter().map(|r| r[i].0.powi(2)).sum::<f64>() / n as f64).sqrt();
        println!("{name}: {} holds {:.3}, RMS(error/u) {rms:.3}", quantity.name(), held);
        // 93 to 97 % at 2000 samples; fewer samples widen the band by their own noise.
        let slack = 0.02 * (2000.0 / n as f64).sqrt();
        assert!((held - 0.95).abs() <= slack, "{name}: {} holds {held}", quantity.name());
    }
}

#[test]
fn two_photos_with_plates_on_four_wheels() {
    coverage("four plates", &Bay::default(), ReferenceLine::Centreline, 400);
}

#[test]
fn two_photos_with_two_plates() {
    let bay = Bay { front_plates: false, ..Bay::default() };
    coverage("two plates", &bay, ReferenceLine::RearAxleNormal, 400);
}
