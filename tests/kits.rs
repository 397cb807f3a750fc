//! The kits of the library reach the accuracy that their files state: many sampled jobs
//! through the same adjustment and budget as `verify`.

mod kit_bay;

use baywitness::folder::Vehicle;
use baywitness::marker::{Rig, RigFile};
use baywitness::measure::{Ask, Facts, measure};
use baywitness::pose::{Options, adjust};
use baywitness::quantity::Quantity;
use baywitness::setup::{Decision, DecisionRule, From, Limits, ReferenceLine, Setup};
use kit_bay::{Station, sample};
use rayon::prelude::*;

/// In a bay 4 m wide: before the stand, to either side.
const TWO: [Station; 2] = [[[7400.0, 1800.0, 1600.0], [3000.0, 300.0, 450.0]], [[7400.0, -1800.0, 1600.0], [3000.0, -300.0, 450.0]]];
/// The same and two nearer ones.
const FOUR: [Station; 4] = [TWO[0], TWO[1], [[6000.0, 1900.0, 1500.0], [3300.0, 150.0, 450.0]], [[6000.0, -1900.0, 1500.0], [3300.0, -150.0, 450.0]]];

const ASKED: [(Quantity, ReferenceLine); 7] = [
    (Quantity::Yaw, ReferenceLine::Centreline),
    (Quantity::LateralOffset, ReferenceLine::Centreline),
    (Quantity::Yaw, ReferenceLine::ThrustLine),
    (Quantity::Distance, ReferenceLine::Centreline),
    (Quantity::Height, ReferenceLine::Centreline),
    (Quantity::Pitch, ReferenceLine::Centreline),
    (Quantity::Roll, ReferenceLine::Centreline),
];

fn sheet() -> Setup {
    Setup {
        name: "sampled".into(),
        title: "Sampled".into(),
        source: "Invented.".into(),
        reference_line: ReferenceLine::Centreline,
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

/// Median expanded uncertainty of each quantity over sampled jobs; infinite where it is not determined.
fn medians(rig: &Rig, stations: &[Station]) -> [f64; 7] {
    const SEEDS: u64 = 24;
    let one = |seed: u64| -> [f64; 7] {
        let job = sample(rig, stations, seed);
        let scene = adjust(&job.problem(), &Options::default()).unwrap();
        let asks = ASKED.map(|(quantity, line)| Ask { quantity, from: Some(From::RearAxle), target: 0, line });
        let (setup, vehicle) = (sheet(), vehicle());
        let facts = Facts { rig: &job.rig, setup: &setup, vehicle: &vehicle };
        let measured = measure(&facts, &scene, ReferenceLine::Centreline, &asks, &[]);
        std::array::from_fn(|i| {
            measured.answers[i].as_ref().map_or(f64::INFINITY, |answer| answer.estimate.expanded_uncertainty())
        })
    };
    let all: Vec<[f64; 7]> = (0..SEEDS).into_par_iter().map(one).collect();
    std::array::from_fn(|i| {
        let mut values: Vec<f64> = all.iter().map(|row| row[i]).collect();
        values.sort_by(f64::total_cmp);
        values[values.len() / 2]
    })
}

#[test]
fn study() {
    for path in std::env::var("KITS").unwrap().split(',') {
        let mut rig = RigFile::from_toml(&std::fs::read_to_string(path).unwrap(), path).unwrap().rig;
        for (name, stations) in [("two", &TWO[..]), ("four", &FOUR[..])] {
            let job = sample(&rig, stations, 1);
            let seen: Vec<String> =
                rig.carriers.iter().map(|c| format!("{} {:?}", c.name, job.seen(&c.name))).collect();
            for seating in [true, false] {
                let mut r = rig.clone();
                if !seating { for c in &mut r.carriers { c.u_seating_mm = 0.0; c.u_seating_deg = [0.0; 3]; } }
                for layout in [0.3, 0.1] {
                r.u_layout_mm = layout;
                let [a, b, c, d, e, f, g] = medians(&r, stations);
                println!("{path} {name} seating {seating} layout {layout}: yaw/c {a:.4} lat/c {b:.2} yaw/t {c:.3} dist {d:.2} height {e:.2} pitch {f:.3} roll {g:.3}");
                }
            }
            println!("   {}", seen.join(", "));
        }
        rig.name.clear();
    }
}
