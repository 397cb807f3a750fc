//! What moved between the photos from before and those from after the calibration.

use baywitness::job::compare;
use baywitness::marker::Role;
use rayon::prelude::*;

use super::bench::{bay, samples};
use super::campaign::{interval, least};
use super::planted::{At, on_wheel, shifted, stepped};
use crate::sampled_bay::{Flaw, Noise, Sample, flawed, sample};

/// The first two of four photos are from before.
const STATES: [Option<usize>; 4] = [Some(0), Some(0), Some(1), Some(1)];

/// Whether the stand, and whether the vehicle is said to have moved.
fn moved(sample: &Sample) -> (bool, bool) {
    let changes = |c: &baywitness::marker::Carrier| c.role == Role::Target || c.role.is_on_vehicle();
    let moves = compare(&sample.problem(), &STATES, changes).unwrap();
    let proven = |stand: bool| moves.iter().any(|m| m.is_stand == stand && m.is_proven());
    (proven(true), proven(false))
}

fn after(seed: u64, place: &(dyn Fn(&str, At, f64) -> At + Sync)) -> Sample {
    let angle = std::f64::consts::TAU * Noise::new(seed ^ 0x9a5e).uniform();
    let place = |photo: usize, name: &str, pose: At| if photo >= 2 { place(name, pose, angle) } else { pose };
    flawed(&bay(), seed, &Flaw { place: &place, ..Flaw::default() })
}

fn pushed(seed: u64) -> Sample {
    after(seed, &|name, pose, angle| {
        if name == "stand" { shifted(pose, [5.0 * angle.cos(), 5.0 * angle.sin(), 0.0]) } else { pose }
    })
}

fn turned(seed: u64) -> Sample {
    after(seed, &|name, pose, angle| {
        if name == "stand" { stepped(pose, [0.0; 3], [0.0, 0.0, 0.2 * angle.sin().signum()]) } else { pose }
    })
}

/// The plates turn with their wheels.
fn rolled(seed: u64) -> Sample {
    after(seed, &|name, pose, angle| {
        let mm = 5.0 * angle.sin().signum();
        let turn = [0.0, (mm / 310.0_f64).to_degrees(), 0.0];
        if on_wheel(name) { stepped(shifted(pose, [mm, 0.0, 0.0]), [0.0; 3], turn) } else { pose }
    })
}

/// A flaw's name, how it is drawn, and whether it is of the stand.
type Move = (&'static str, fn(u64) -> Sample, bool);

const MOVES: [Move; 3] = [
    ("stand pushed 5 mm between phases", pushed, true),
    ("stand turned 0.2 deg between phases", turned, true),
    ("vehicle rolled 5 mm between phases", rolled, false),
];

pub(crate) fn table(n: u64) -> Vec<String> {
    let mut short = Vec::new();
    for (what, make, of_stand) in MOVES {
        let one = |seed: u64| {
            let (stand, vehicle) = moved(&make(72_000 + seed));
            usize::from(if of_stand { stand } else { vehicle })
        };
        let hits: usize = (0..n).into_par_iter().map(one).sum();
        let (low, high) = interval(hits, n as usize);
        println!("{what:63} {hits:4} of {n:3}  {low:.3} to {high:.3}");
        if hits < least(n as usize) {
            short.push(format!("{what}: {hits} of {n}"));
        }
    }
    let plain = |seed: u64| {
        let (stand, vehicle) = moved(&sample(&bay(), 73_000 + seed));
        usize::from(stand || vehicle)
    };
    let wrong: usize = (0..n).into_par_iter().map(plain).sum();
    println!("said to have moved between phases in {wrong} of {n} plain jobs");
    // Two tests of a chance of 1e-4.
    if wrong > 1 {
        short.push(format!("moved between phases in {wrong} of {n} plain jobs"));
    }
    short
}

#[test]
fn what_moves_between_phases_is_found() {
    let short = table(samples(2));
    assert!(short.is_empty(), "{short:?}");
}
