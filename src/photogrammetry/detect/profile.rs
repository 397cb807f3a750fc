//! How grey levels run across an edge: the edge profile of a photo.
//!
//! A camera blurs light, bends it by a tone curve and sharpens the outcome; none of that is
//! known. With P the white share of the blurred pattern and z its normal quantile (a straight
//! edge's distance in units of the blur), grey levels run from black to white as
//!
//! E(z) = Phi(z) + phi(z) sum a_k He_k(z) / sqrt(k!),  k = 0 to 6,
//!
//! a Gram-Charlier series (H. Cramer, Mathematical Methods of Statistics, 1946, section 17.6).
//! Any tone curve is a function of P and so of z, exactly, at corners too; sharpening is so along
//! straight edges (`halo` has the rest). k = 0 moves the edge (black shrinks under a tone curve:
//! a_0 > 0), k = 1 is a change of blur along straight edges and told from blur by corners, odd ones
//! hold the overshoot of sharpening.

use std::sync::LazyLock;

use super::gaussian::{cumulated, density};
use super::lanes::{BATCH, Lane};

/// Number of shape parameters.
pub(super) const SHAPE: usize = 7;
const ORDERS: [usize; SHAPE] = [0, 1, 2, 3, 4, 5, 6];
/// 1 / sqrt(k!) for each order.
const NORM: [f32; SHAPE] =
    [1.0, 1.0, std::f32::consts::FRAC_1_SQRT_2, 0.408_248_3, 0.204_124_1, 0.091_287_1, 0.037_267_8];
/// Quantile beyond which black is black and white is white.
const END: f32 = 3.6;

/// The shape of a photo's edges.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Profile(pub(super) [f64; SHAPE]);

/// The profile at the pixels of a batch.
pub(super) struct Bend {
    /// 0 for black, 1 for white; beyond them where sharpening overshoots.
    pub(super) value: Lane,
    /// Normal quantile of the white share.
    pub(super) quantile: Lane,
    /// d value / d white share.
    pub(super) slope: Lane,
    /// d value / d shape.
    pub(super) by_shape: [Lane; SHAPE],
}

/// Grey (0 black to 1 white) of white shares.
#[inline(always)]
pub(super) fn bend(shape: &[f32; SHAPE], shares: &Lane) -> Bend {
    const NONE: Lane = [0.0; BATCH];
    let mut z = NONE;
    let table: &[f32; SHARES + 2] = &QUANTILES;
    for k in 0..BATCH {
        z[k] = quantile(table, shares[k]);
    }
    let mut bend = Bend { value: NONE, quantile: z, slope: NONE, by_shape: [NONE; SHAPE] };
    for k in 0..BATCH {
        // Black is black and white is white farther out.
        let within = if z[k].abs() > END { 0.0 } else { 1.0 };
        let d = density(z[k]) * within;
        let he = hermite(z[k]);
        let (mut value, mut slope) = (shares[k], 0.0);
        for (n, order) in ORDERS.iter().enumerate() {
            let basis = d * NORM[n] * he[*order];
            bend.by_shape[n][k] = basis;
            value += shape[n] * basis;
            slope += shape[n] * NORM[n] * he[order + 1];
        }
        bend.value[k] = value;
        bend.slope[k] = 1.0 - within * slope;
    }
    bend
}

impl Profile {
    /// Before anything is known of a photo: a mild tone curve.
    pub(super) const TYPICAL: Profile = Profile([0.25, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0]);
    /// How far photos differ from that (1 sigma of every parameter).
    pub(super) const SPREAD: f64 = 0.3;

    /// Where the profile crosses the middle between black and white, in units of the blur, white side positive.
    pub(super) fn middle(&self) -> f64 {
        let (mut low, mut high) = (-2.0, 2.0);
        for _ in 0..40 {
            let z = (low + high) / 2.0;
            if self.grey(z) < 0.5 { low = z } else { high = z }
        }
        (low + high) / 2.0
    }

    /// Grey (0 black to 1 white) at a quantile.
    fn grey(&self, z: f64) -> f64 {
        let z = z as f32;
        let (d, he) = (density(z), hermite(z));
        let moved =
            self.0.iter().zip(ORDERS.iter().zip(NORM)).map(|(a, (order, norm))| a * f64::from(norm * he[*order]));
        f64::from(cumulated(z, d)) + f64::from(d) * moved.sum::<f64>()
    }
}

/// Probabilists' Hermite polynomials of orders 0 to 7.
#[inline(always)]
fn hermite(z: f32) -> [f32; 8] {
    let mut he = [1.0; 8];
    he[1] = z;
    for k in 1..7 {
        he[k + 1] = z * he[k] - k as f32 * he[k - 1];
    }
    he
}

pub(super) const SHARES: usize = 4096;

pub(super) static QUANTILES: LazyLock<Box<[f32; SHARES + 2]>> = LazyLock::new(|| {
    let at = |i: usize| (i as f64 / SHARES as f64).clamp(1e-5, 1.0 - 1e-5);
    let value = |i: usize| -std::f64::consts::SQRT_2 * statrs::function::erf::erfc_inv(2.0 * at(i));
    Box::new(std::array::from_fn(|i| value(i) as f32))
});

/// Inverse of the cumulated normal distribution, from a table (within 0.02 from 0.0005 to 0.9995).
#[inline(always)]
pub(super) fn quantile(table: &[f32; SHARES + 2], share: f32) -> f32 {
    let t = share.clamp(0.0, 1.0) * SHARES as f32;
    // Never beyond the table, also where a share is no number.
    let i = (t as u32).min(SHARES as u32) as usize;
    table[i] + (table[i + 1] - table[i]) * (t - i as f32)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn derivatives_agree_with_differences() {
        let shape = [0.3, 0.08, -0.1, 0.05, 0.02, -0.03, 0.01];
        let at = |shape: &[f32; SHAPE], share: f32| {
            let b = bend(shape, &[share; BATCH]);
            (b.value[5], b.slope[5], b.by_shape.map(|lane| lane[5]))
        };
        for share in [0.02, 0.1, 0.35, 0.8, 0.99] {
            let (value, slope, by_shape) = at(&shape, share);
            let h = 1e-3;
            let numeric = (at(&shape, share + h).0 - at(&shape, share - h).0) / (2.0 * h);
            assert!((numeric - slope).abs() < 0.05 * slope.abs(), "{share}: {numeric} {slope}");
            for k in 0..SHAPE {
                let mut other = shape;
                other[k] += 0.1;
                assert!(((at(&other, share).0 - value) / 0.1 - by_shape[k]).abs() < 1e-5);
            }
        }
    }

    /// The sRGB curve (IEC 61966-2-1) over a dark-to-light step of 1.5 to 45 % light, blurred.
    #[test]
    fn holds_a_blurred_edge_seen_through_srgb() {
        let srgb =
            |light: f64| if light <= 0.003_130_8 { 12.92 * light } else { 1.055 * light.powf(1.0 / 2.4) - 0.055 };
        let (black, white) = (srgb(0.015), srgb(0.45));
        let share = |z: f64| 0.5 * statrs::function::erf::erfc(-z / std::f64::consts::SQRT_2);
        let grey = |z: f64| (srgb(0.015 + 0.435 * share(z)) - black) / (white - black);
        // Least squares by projection: the basis is not orthogonal under equal weights, so iterate.
        let mut profile = Profile([0.0; SHAPE]);
        let places: Vec<f64> = (-64..=64).map(|i| f64::from(i) / 20.0).collect();
        for _ in 0..2000 {
            for k in 0..SHAPE {
                let (mut dot, mut norm) = (0.0, 0.0);
                for z in &places {
                    let d = density(*z as f32) * NORM[k] * hermite(*z as f32)[ORDERS[k]];
                    dot += f64::from(d) * (grey(*z) - profile.grey(*z));
                    norm += f64::from(d * d);
                }
                profile.0[k] += dot / norm;
            }
        }
        for z in places {
            let error = profile.grey(z) - grey(z);
            assert!(error.abs() < 0.03, "{z}: {error}");
        }
        assert!(profile.middle() < -0.4);
    }
}
