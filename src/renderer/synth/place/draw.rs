//! Hidden errors drawn from the scene's seed. Each has a counter of its own,
//! so that a change to one part of a scene leaves all other draws as they were.

use nalgebra::Vector3;

use crate::synth::trace::mix;

/// What a number is drawn for.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Purpose {
    /// Marker centres; the index is the marker's id.
    Layout = 1,
    /// The kit's common scale.
    Scale = 2,
    /// Seating; the index is the carrier's position in the kit.
    Seating = 3,
    /// Focal length; the index is the photo's position.
    Focal = 4,
    /// Principal point, likewise.
    Centre = 5,
    /// Lens parameters from the camera file's covariance.
    Lens = 6,
    /// Clutter.
    Clutter = 7,
    /// Sensor noise, likewise.
    Sensor = 8,
    /// Strengths of the phone's insides.
    Insides = 9,
    /// Hand and stabiliser; the index is the photo's position.
    Hand = 10,
    /// Registration of merged frames, likewise.
    Frames = 11,
    /// Corners in the print; the index is the marker's id.
    Print = 12,
    /// Waves in the print, likewise.
    Wave = 13,
}

/// A counter for a purpose and an index.
pub(crate) fn counter(seed: u64, purpose: Purpose, index: u64) -> u64 {
    mix(mix(seed).wrapping_add((purpose as u64) << 48).wrapping_add(index << 16))
}

/// The `n`-th standard normal number of a purpose and an index (Box and Muller 1958).
pub(crate) fn normal(seed: u64, purpose: Purpose, index: u64, n: u64) -> f64 {
    let base = counter(seed, purpose, index).wrapping_add(2 * n);
    let u = uniform_of(mix(base));
    let v = uniform_of(mix(base + 1));
    (-2.0 * u.ln()).sqrt() * (std::f64::consts::TAU * v).cos()
}

/// The `n`-th number between 0 and 1.
pub(crate) fn uniform(seed: u64, purpose: Purpose, index: u64, n: u64) -> f64 {
    uniform_of(mix(counter(seed, purpose, index).wrapping_add(n)))
}

fn uniform_of(bits: u64) -> f64 {
    ((bits >> 11) as f64 + 0.5) / (1u64 << 53) as f64
}

/// Three numbers from `first` on, scaled.
pub(crate) fn normal3(seed: u64, purpose: Purpose, index: u64, first: u64, sigma: [f64; 3]) -> Vector3<f64> {
    Vector3::from_fn(|i, _| sigma[i] * normal(seed, purpose, index, first + i as u64))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn draws_are_standard_normal_and_unrelated() {
        let n = 40_000u64;
        let draw = |purpose| (0..n).map(|i| normal(9, purpose, i, 0)).collect::<Vec<f64>>();
        let (a, b) = (draw(Purpose::Layout), draw(Purpose::Seating));
        let mean = |v: &[f64]| v.iter().sum::<f64>() / n as f64;
        let product: Vec<f64> = a.iter().zip(&b).map(|(x, y)| x * y).collect();
        let square: Vec<f64> = a.iter().map(|x| x * x).collect();
        // Standard errors 0.005, 0.005 and 0.007; four of them each.
        assert!(mean(&a).abs() < 0.02 && mean(&product).abs() < 0.02);
        assert!((mean(&square) - 1.0).abs() < 0.03);
    }
}
