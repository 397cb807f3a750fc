//! What is wrong in each job of a drill, drawn from its seed.

use rand::rngs::ChaCha8Rng;
use rand::seq::SliceRandom;
use rand::{RngExt, SeedableRng};

use crate::record::DrillAnswer;
use crate::synth::{Preset, StandError};
use crate::words::{Phrase, phrase};

/// How hard a level is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Level {
    /// Its number, from 1.
    pub number: u8,
    /// Mistakes of a job, fewest and most.
    pub mistakes: [usize; 2],
    /// Their size, tolerances.
    pub size: [f64; 2],
    /// What phones its photos may come from.
    pub phones: &'static [Preset],
    /// Share of jobs in which nothing is wrong.
    pub right: f64,
}

impl Level {
    /// In words.
    pub fn words(&self) -> Phrase {
        match self.number {
            1 => phrase!("training-level-1"),
            2 => phrase!("training-level-2"),
            3 => phrase!("training-level-3"),
            4 => phrase!("training-level-4"),
            _ => phrase!("training-level-5"),
        }
    }
}

/// Phones that hardly touch a picture, and what others do to it.
const EASY: &[Preset] = &[Preset::Plain, Preset::Phone];
const ANY: &[Preset] = &[Preset::Phone, Preset::Hdr, Preset::Rolling, Preset::Halo, Preset::Night];

/// The levels.
pub const LEVELS: [Level; 5] = [
    Level { number: 1, phones: EASY, mistakes: [1, 1], size: [5.0, 9.0], right: 0.0 },
    Level { number: 2, phones: EASY, mistakes: [1, 1], size: [2.5, 5.0], right: 0.1 },
    Level { number: 3, phones: ANY, mistakes: [1, 1], size: [1.5, 3.0], right: 0.2 },
    Level { number: 4, phones: ANY, mistakes: [1, 2], size: [1.5, 4.0], right: 0.15 },
    Level { number: 5, phones: ANY, mistakes: [1, 3], size: [1.4, 3.0], right: 0.2 },
];

/// Tolerances of the drill's set-up sheet: distance, centring, height (mm), squareness, tilt, level (degrees).
pub(super) const TOLERANCES: [f64; 6] = [10.0, 6.0, 6.0, 0.3, 0.5, 0.5];

/// The finding and the way to move that mends a deviation, by quantity and sign.
const NAMES: [[(&str, &str); 2]; 6] = [
    [("stand-too-near", "away"), ("stand-too-far", "towards")],
    [("stand-off-centre", "left"), ("stand-off-centre", "right")],
    [("stand-too-low", "raise"), ("stand-too-high", "lower")],
    [("stand-turned", "left-end-towards"), ("stand-turned", "left-end-away")],
    [("stand-tilted", "top-away"), ("stand-tilted", "top-towards")],
    [("stand-not-level", "right-end-lower"), ("stand-not-level", "right-end-raise")],
];

/// Codes that may be answered.
pub(super) fn codes() -> Vec<&'static str> {
    let mut codes: Vec<&str> = NAMES.iter().flatten().map(|n| n.0).collect();
    codes.dedup();
    codes.push("none");
    codes
}

/// Ways to move that may be answered.
pub(super) fn ways() -> Vec<&'static str> {
    NAMES.iter().flatten().map(|n| n.1).collect()
}

/// How near an answered size must be: a quarter of it, and never less than the instruments show.
pub(super) fn room(code: &str, size: f64) -> f64 {
    let degrees = ["stand-turned", "stand-tilted", "stand-not-level"].contains(&code);
    (0.25 * size).max(if degrees { 0.15 } else { 3.0 })
}

/// What a job's phone does inside; of a draw of its own, so that the deviations stay what they are.
pub(super) fn phone(level: &Level, seed: u64, job: usize) -> Preset {
    let mut rng = ChaCha8Rng::seed_from_u64(!seed.wrapping_mul(0x9e37_79b9).wrapping_add(job as u64));
    level.phones[rng.random_range(0..level.phones.len())]
}

/// One job's hidden deviation.
pub(super) fn draw(level: &Level, seed: u64, job: usize, name: &str) -> (StandError, Vec<DrillAnswer>) {
    let mut rng = ChaCha8Rng::seed_from_u64(seed.wrapping_mul(0x9e37_79b9).wrapping_add(job as u64));
    let mut quantities: Vec<usize> = (0..6).collect();
    quantities.shuffle(&mut rng);
    let count = if rng.random_range(0.0..1.0) < level.right {
        0
    } else {
        rng.random_range(level.mistakes[0]..=level.mistakes[1])
    };
    // What is not wrong is off by a careful hand's amount.
    let mut off = TOLERANCES.map(|t| t * rng.random_range(-0.25..0.25));
    let mut answers = Vec::new();
    for q in &quantities[..count] {
        let sign = if rng.random_range(0.0..1.0) < 0.5 { -1.0 } else { 1.0 };
        off[*q] = sign * TOLERANCES[*q] * rng.random_range(level.size[0]..level.size[1]);
        let (code, way) = NAMES[*q][usize::from(sign > 0.0)];
        answers.push(DrillAnswer {
            job: name.to_owned(),
            finding: code.to_owned(),
            way: way.to_owned(),
            size: Some(off[*q].abs()),
        });
    }
    (StandError::from(off), answers)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn levels_get_harder_and_a_seed_repeats_itself() {
        for level in &LEVELS {
            let of = |seed| (0..200).map(|job| draw(level, seed, job, "D").1).collect::<Vec<_>>();
            assert_eq!(of(5), of(5));
            assert_ne!(of(5), of(6));
            let all = of(7);
            assert!(all.iter().all(|a| a.len() <= level.mistakes[1]));
            let right = all.iter().filter(|a| a.is_empty()).count() as f64 / 200.0;
            let phones: Vec<_> = (0..200).map(|job| phone(level, 7, job)).collect();
            assert!(level.phones.iter().all(|p| phones.contains(p)) && phones.iter().all(|p| level.phones.contains(p)));
            assert_eq!(phones, (0..200).map(|job| phone(level, 7, job)).collect::<Vec<_>>());
            // Four standard deviations of a share of 200.
            assert!((right - level.right).abs() < 0.12, "{right} for {}", level.right);
        }
    }

    // Positive yaw brings the left end nearer, positive roll lowers the right end (ISO 8855).
    #[test]
    fn ways_mend_what_is_wrong() {
        let of = |q: usize, positive: bool| NAMES[q][usize::from(positive)].1;
        assert_eq!(of(3, true), "left-end-away");
        assert_eq!(of(5, true), "right-end-raise");
        assert_eq!(of(1, true), "right");
        assert_eq!(of(0, false), "away");
    }
}
