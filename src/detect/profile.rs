//! How grey levels run across an edge: the edge profile of a photo.
//!
//! A camera blurs light, bends it by a tone curve and sharpens the outcome; none of that is
//! known. With P the white share of the blurred pattern and z its normal quantile (a straight
//! edge's distance in units of the blur), grey levels run from black to white as
//!
//! E(z) = Phi(z) + phi(z) sum a_k He_k(z) / sqrt(k!),  k = 0, 2, 3, 4, 5, 6,
//!
//! a Gram-Charlier series (H. Cramer, Mathematical Methods of Statistics, 1946, section 17.6).
//! Any tone curve is a function of P and so of z, exactly, at corners too; sharpening is so along
//! straight edges. k = 0 moves the edge (black shrinks under a tone curve: a_0 > 0), k = 1 is a
//! change of blur and left to it, odd ones hold the overshoot of sharpening.

use super::pattern::{normal, quantile};

/// Number of shape parameters.
pub(super) const SHAPE: usize = 6;
const ORDERS: [usize; SHAPE] = [0, 2, 3, 4, 5, 6];
/// 1 / sqrt(k!) for each order.
const NORM: [f64; SHAPE] = [1.0, std::f64::consts::FRAC_1_SQRT_2, 0.408_248_3, 0.204_124_1, 0.091_287_1, 0.037_267_8];
/// Quantile beyond which black is black and white is white.
const END: f64 = 3.6;

/// The shape of a photo's edges.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Profile(pub(super) [f64; SHAPE]);

/// The profile at one place.
#[derive(Debug, Clone, Copy)]
pub(super) struct Bend {
    /// 0 for black, 1 for white; beyond them where sharpening overshoots.
    pub(super) value: f64,
    /// d value / d white share.
    pub(super) slope: f64,
    /// d value / d shape.
    pub(super) by_shape: [f64; SHAPE],
}

impl Profile {
    /// Before anything is known of a photo: a mild tone curve.
    pub(super) const TYPICAL: Profile = Profile([0.25, 0.0, 0.0, 0.0, 0.0, 0.0]);
    /// How far photos differ from that (1 sigma of every parameter).
    pub(super) const SPREAD: f64 = 0.3;

    /// The same profile with its edge moved.
    pub(super) fn moved(&self, offset: f64) -> Profile {
        let mut shape = self.0;
        shape[0] += offset;
        Profile(shape)
    }

    /// Grey (0 black to 1 white) of a white share.
    pub(super) fn bend(&self, share: f64) -> Bend {
        let z = quantile(share);
        if z.abs() > END {
            return Bend { value: share, slope: 1.0, by_shape: [0.0; SHAPE] };
        }
        let density = normal(z).1;
        let he = hermite(z);
        let mut bend = Bend { value: share, slope: 1.0, by_shape: [0.0; SHAPE] };
        for (k, order) in ORDERS.iter().enumerate() {
            let basis = density * NORM[k] * he[*order];
            bend.by_shape[k] = basis;
            bend.value += self.0[k] * basis;
            bend.slope -= self.0[k] * NORM[k] * he[order + 1];
        }
        bend
    }

    /// Where the profile crosses the middle between black and white, in units of the blur, white side positive.
    pub(super) fn middle(&self) -> f64 {
        let (mut low, mut high) = (-2.0, 2.0);
        for _ in 0..40 {
            let z = (low + high) / 2.0;
            if self.bend(normal(z).0).value < 0.5 { low = z } else { high = z }
        }
        (low + high) / 2.0
    }
}

/// Probabilists' Hermite polynomials of orders 0 to 7.
fn hermite(z: f64) -> [f64; 8] {
    let mut he = [1.0; 8];
    he[1] = z;
    for k in 1..7 {
        he[k + 1] = z * he[k] - k as f64 * he[k - 1];
    }
    he
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn derivatives_agree_with_differences() {
        let profile = Profile([0.3, -0.1, 0.05, 0.02, -0.03, 0.01]);
        for share in [0.002, 0.1, 0.35, 0.8, 0.99] {
            let b = profile.bend(share);
            let h = 1e-4;
            let numeric = (profile.bend(share + h).value - profile.bend(share - h).value) / (2.0 * h);
            assert!((numeric - b.slope).abs() < 0.03, "{share}: {numeric} {}", b.slope);
            for k in 0..SHAPE {
                let mut other = profile;
                other.0[k] += h;
                assert!(((other.bend(share).value - b.value) / h - b.by_shape[k]).abs() < 1e-6);
            }
        }
    }

    /// The sRGB curve (IEC 61966-2-1) over a dark-to-light step of 1.5 to 45 % light, blurred.
    #[test]
    fn holds_a_blurred_edge_seen_through_srgb() {
        let srgb =
            |light: f64| if light <= 0.003_130_8 { 12.92 * light } else { 1.055 * light.powf(1.0 / 2.4) - 0.055 };
        let (black, white) = (srgb(0.015), srgb(0.45));
        let grey = |z: f64| (srgb(0.015 + 0.435 * normal(z).0) - black) / (white - black);
        // Least squares by projection: the basis is not orthogonal under equal weights, so iterate.
        let mut profile = Profile([0.0; SHAPE]);
        let places: Vec<f64> = (-64..=64).map(|i| f64::from(i) / 20.0).collect();
        for _ in 0..2000 {
            for k in 0..SHAPE {
                let (mut dot, mut norm) = (0.0, 0.0);
                for z in &places {
                    let b = profile.bend(normal(*z).0);
                    dot += b.by_shape[k] * (grey(*z) - b.value);
                    norm += b.by_shape[k] * b.by_shape[k];
                }
                profile.0[k] += dot / norm;
            }
        }
        for z in places {
            let error = profile.bend(normal(z).0).value - grey(z);
            assert!(error.abs() < 0.03, "{z}: {error}");
        }
        assert!(profile.middle() < -0.4);
    }
}
