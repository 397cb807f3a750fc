//! Smooth displacements of a print: a printer's feed that wavers, paper that stretched while the glue was wet.

use std::f64::consts::TAU;

/// How many waves are laid over each other.
const COUNT: usize = 4;
/// Shortest and longest of them, sides of the marker.
const LENGTHS: [f64; 2] = [0.7, 2.5];

/// One wave.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
struct Wave {
    /// Phase by place, radians for a side along right and up, and at the lower left corner.
    by_place: [f64; 2],
    phase: f64,
    /// How far it carries the print along right and up, mm.
    reach_mm: [f64; 2],
}

/// Waves in a print; none by default.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Waves([Wave; COUNT]);

impl Waves {
    /// Waves that displace each point by so much (1 sigma along each axis, mm), from even numbers (0 to 1) and
    /// normal ones, by index.
    pub(crate) fn drawn(sigma_mm: f64, even: impl Fn(u64) -> f64, normal: impl Fn(u64) -> f64) -> Self {
        let wave = |i: usize| {
            let first = 5 * i as u64;
            let length = LENGTHS[0] * (LENGTHS[1] / LENGTHS[0]).powf(even(first));
            let (sin, cos) = (TAU * even(first + 1)).sin_cos();
            // The mean square of a wave is half that of its height.
            let height = |k: u64| sigma_mm * (2.0 / COUNT as f64).sqrt() * normal(first + k);
            Wave {
                by_place: [cos, sin].map(|d| TAU * d / length),
                phase: TAU * even(first + 2),
                reach_mm: [height(3), height(4)],
            }
        };
        Waves(std::array::from_fn(wave))
    }

    /// Whether there are none.
    pub(crate) fn is_still(&self) -> bool {
        self.0.iter().flat_map(|w| w.reach_mm).all(|reach| reach == 0.0)
    }

    /// How far the print is off its place, mm, at a place in sides from the marker's lower left corner.
    pub(crate) fn at(&self, place: [f64; 2]) -> [f64; 2] {
        let mut sum = [0.0; 2];
        for wave in &self.0 {
            let swing = (wave.by_place[0] * place[0] + wave.by_place[1] * place[1] + wave.phase).sin();
            sum = [0, 1].map(|k| sum[k] + swing * wave.reach_mm[k]);
        }
        sum
    }
}
