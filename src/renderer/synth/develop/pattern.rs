//! The sensor's own pattern: no two pixels answer the same light quite alike.

use crate::synth::scene::Insides;
use crate::synth::trace::{mix, normal_pair};

/// Photo response non-uniformity: pixel by pixel the light is multiplied by
/// `1 + K`, K normal with standard deviation `insides.pattern` (Chen, Fridrich,
/// Goljan and Lukas, Determining image origin and integrity using sensor noise,
/// 2008, equation 1; its size is the PRNU of EMVA 1288). K is the sensor's: the
/// same for every photo of `insides.sensor`, another for any other number.
///
/// Merged frames are moved onto the first by what the hand has moved meanwhile,
/// and carry the pattern along: each adds its share from another place.
#[derive(Debug)]
pub(super) struct Pattern {
    strength: f32,
    seed: u64,
    /// Where each merged frame's pattern lies, px; the first stays.
    frames: Vec<[i64; 2]>,
}

/// Keeps a sensor's numbers apart from all other draws.
const PURPOSE: u64 = 0x5052_4e55;

impl Pattern {
    /// The pattern of one photo; `counter` starts the random numbers of its frames.
    pub(super) fn of(insides: &Insides, counter: u64) -> Option<Pattern> {
        let drift = |frame: u32| match frame {
            0 => [0, 0],
            n => normal_pair(mix(counter ^ mix(PURPOSE.wrapping_add(u64::from(n)))))
                .map(|x| (f64::from(x) * insides.frame_drift_px).round() as i64),
        };
        (insides.pattern > 0.0).then(|| Pattern {
            strength: insides.pattern as f32,
            seed: mix(mix(PURPOSE) ^ insides.sensor),
            frames: (0..insides.frames).map(drift).collect(),
        })
    }

    /// What a pixel's light is multiplied by, red, green and blue.
    pub(super) fn gain(&self, u: usize, v: usize) -> [f32; 3] {
        let mut sum = [0.0; 3];
        for [du, dv] in &self.frames {
            let place = ((v as i64 + dv) as u64) << 32 | ((u as i64 + du) as u64 & 0xFFFF_FFFF);
            let base = mix(self.seed ^ mix(place));
            let ([red, green], [blue, _]) = (normal_pair(base), normal_pair(base ^ 0x5555));
            [red, green, blue].iter().zip(&mut sum).for_each(|(k, s)| *s += k);
        }
        sum.map(|s| 1.0 + self.strength * s / self.frames.len() as f32)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pattern(sensor: u64, frames: u32) -> Pattern {
        let insides = Insides { pattern: 0.01, sensor, frames, frame_drift_px: 9.0, ..Insides::default() };
        Pattern::of(&insides, 3).unwrap()
    }

    #[test]
    fn a_pattern_is_the_sensors_and_has_its_strength() {
        let gains = |p: &Pattern| -> Vec<f64> {
            (0..40_000).flat_map(|i| p.gain(i % 200, i / 200)).map(|g| f64::from(g) - 1.0).collect()
        };
        let (a, b) = (gains(&pattern(1, 1)), gains(&pattern(2, 1)));
        let product = |x: &[f64], y: &[f64]| x.iter().zip(y).map(|(x, y)| x * y).sum::<f64>() / x.len() as f64;
        assert_eq!(a, gains(&pattern(1, 1)));
        // 120,000 draws: four standard errors are 0.8 % of the deviation and 1.2 % of its square.
        assert!((product(&a, &a).sqrt() / 0.01 - 1.0).abs() < 0.01);
        assert!(product(&a, &b).abs() < 0.012e-4, "{}", product(&a, &b));
        // Of four frames that drift apart the first one's share is left, a quarter of it.
        let merged = product(&a, &gains(&pattern(1, 4)));
        assert!((merged / 0.25e-4 - 1.0).abs() < 0.08, "{merged}");
        assert!(Pattern::of(&Insides::default(), 3).is_none());
    }
}
