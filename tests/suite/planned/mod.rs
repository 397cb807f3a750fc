//! Stances, predicted and rendered.
#![allow(dead_code, reason = "each user takes its own part")]
#![allow(clippy::unwrap_used, reason = "test support: a panic is the message")]

use crate::staged;
use std::ops::Range;

use baywitness::folder::{Models, Vehicle};
use baywitness::job::{self, PlanOptions, Reach, Wanted, plan};
use baywitness::record::JobRecord;
use baywitness::synth::{InsidesSpec, PhotoSpec, Preset, Scene};

/// Where photos are taken from, vehicle frame of the sample's bay, mm.
pub(crate) struct Stance {
    pub(crate) name: &'static str,
    pub(crate) from_mm: &'static [[f64; 3]],
}

/// Stances of two to four photos, from good to poor.
pub(crate) const STANCES: &[Stance] = &[
    Stance { name: "two, front quarters", from_mm: &[[7250.0, 2800.0, 1640.0], [7180.0, -2750.0, 1690.0]] },
    Stance { name: "two, in a 4 m bay", from_mm: &[[6600.0, 1700.0, 1500.0], [6600.0, -1700.0, 1500.0]] },
    Stance { name: "two, near, low", from_mm: &[[6000.0, 1500.0, 1200.0], [6100.0, -1600.0, 1250.0]] },
    Stance { name: "two, far", from_mm: &[[9000.0, 1600.0, 1750.0], [8900.0, -1700.0, 1700.0]] },
    Stance {
        name: "three, one ahead",
        from_mm: &[[6900.0, 1700.0, 1500.0], [6900.0, -1700.0, 1500.0], [8800.0, 200.0, 1750.0]],
    },
    Stance {
        name: "four, quarters and wide",
        from_mm: &[
            [7250.0, 2800.0, 1640.0],
            [7180.0, -2750.0, 1690.0],
            [5600.0, 3300.0, 1500.0],
            [5700.0, -3300.0, 1550.0],
        ],
    },
];

/// What is compared.
pub(crate) const QUANTITIES: [&str; 5] = ["distance", "lateral_offset", "height", "yaw", "pitch"];

/// Expanded uncertainties of a stance, predicted and the median stated on
/// rendered photos, in the order of [`QUANTITIES`]; not a number where nothing is determined.
pub(crate) fn compare(stance: &Stance, scale: f64, seeds: Range<u64>) -> Vec<(f64, f64)> {
    compare_as_developed(stance, scale, Preset::Plain, 0..0, seeds)
}

/// The same of photos as a phone develops them, the prediction knowing the corner noise of earlier jobs by it.
pub(crate) fn compare_as_developed(
    stance: &Stance,
    scale: f64,
    preset: Preset,
    earlier: Range<u64>,
    seeds: Range<u64>,
) -> Vec<(f64, f64)> {
    let mut scene = staged::scene(scale);
    scene.spec.job.remove("reading");
    scene.spec.insides = InsidesSpec::preset(preset);
    let predicted = |noise_ratio, turn_ratio| {
        plan(
            Wanted { kit: &scene.kit, setup: &scene.setup, camera: &scene.camera, vehicle: &vehicle(&scene) },
            &PlanOptions {
                photos: None,
                from_mm: stance.from_mm.to_vec(),
                reach: Reach::default(),
                noise_ratio,
                turn_ratio,
                after_move: false,
            },
        )
    };
    let stations = predicted(None, None).stations;
    let photo = |(i, s): (usize, &baywitness::record::PlannedStation)| {
        PhotoSpec::new(&format!("{i}.jpg"), s.position_mm, s.look_at_mm)
    };
    let photos = Some(stations.iter().enumerate().map(photo).collect());
    let mut there = scene.clone();
    there.spec.photo = photos;
    let job = |seed: u64| verified(&there.clone().with_seed(100 + seed));
    let before: Vec<_> = earlier.flat_map(|seed| job(seed).photos).collect();
    let noise = before.iter().filter_map(|p| p.noise_ratio).collect();
    let turns = before.iter().filter_map(|p| p.turn_ratio).collect();
    let predicted = predicted(median(noise), median(turns));
    let stated: Vec<Vec<f64>> = seeds.map(|seed| stated(&job(seed))).collect();
    QUANTITIES
        .iter()
        .enumerate()
        .map(|(q, name)| {
            let expected = predicted.predicted.iter().find(|p| p.quantity == *name).unwrap();
            let all = stated.iter().map(|s| s[q]).collect::<Vec<f64>>();
            (expected.expanded_uncertainty.unwrap_or(f64::NAN), median(all).unwrap())
        })
        .collect()
}

fn median(mut all: Vec<f64>) -> Option<f64> {
    all.sort_by(f64::total_cmp);
    all.get(all.len() / 2).copied()
}

pub(crate) fn vehicle(scene: &Scene) -> Vehicle {
    let spec = &scene.spec.vehicle;
    Vehicle {
        wheelbase_mm: Some(spec.wheelbase_mm),
        nose_from_rear_axle_mm: Some(spec.nose_mm[0]),
        floor_below_hub_mm: Some(spec.hub_height_mm),
        ..Vehicle::default()
    }
}

fn verified(scene: &Scene) -> JobRecord {
    let folder = tempfile::tempdir().unwrap();
    scene.stage(folder.path(), &mut |_| ()).unwrap();
    job::verify(folder.path(), &job::Options::new(Models::embedded())).unwrap()
}

fn stated(record: &JobRecord) -> Vec<f64> {
    let of = |q: &&str| {
        let check = record.checks.iter().find(|c| c.quantity == **q).unwrap();
        check.expanded_uncertainty.unwrap_or(f64::NAN)
    };
    QUANTITIES.iter().map(of).collect()
}

/// A number from the environment.
pub(crate) fn number(name: &str, default: f64) -> f64 {
    std::env::var(name).ok().and_then(|v| v.parse().ok()).unwrap_or(default)
}
