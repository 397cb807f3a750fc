//! What sharpening does at corners.
//!
//! Sharpening takes the grey of a pixel's surroundings off its own. Along a straight edge what it
//! adds is a function of the pixel's grey, which the edge profile holds. At a corner it is not: the
//! surroundings of an acute black corner are whiter than those of a straight edge of the same grey,
//! and without allowance for that the corner seems to lie farther out (by .1 px at 40 degrees in
//! strongly sharpened photos). So the surroundings are looked at: with P the white share under
//! the edges' blur, Q that under a wider one, z and y their normal quantiles and w the ratio of the blurs,
//!
//! c (Phi((z - m) / w) - Phi(y - m / w) + a_0 B)
//!
//! is added to the profile, with one strength c for the photo; m is where the profile has its middle
//! (a tone curve moves the edges that are then sharpened). Along straight edges y = z / w, and nothing is
//! added: corners alone determine c. B is how much more steeply P runs than along a straight edge: a tone
//! curve comes between the blurs, and what it does there goes with its bend (a_0) and the square of the slope.

#![allow(clippy::needless_range_loop, reason = "loops over the same place of many arrays, as the compiler likes them")]

use super::gaussian::{cumulated, density};
use super::lanes::{BATCH, Lane};
use super::pattern::Pattern;
use super::profile::{Bend, QUANTILES, quantile};
use super::shade::{Geometry, Shade, cells, correlated, lines};
use super::shared::Common;

/// How far sharpening looks around, px: a blur of about one pixel is usual (common practice, no source);
/// what another one does differently goes into the strength.
const REACH_PX: f64 = 1.2;
/// Quantile beyond which the white share says too little of where a pixel lies.
const END: f32 = 3.3;

/// A photo's sharpening at one marker.
pub(super) struct Halo {
    strength: f32,
    /// The surroundings' blur in units of the edges' blur.
    wider: f32,
    /// Where an edge's middle seems to lie, in units of the surroundings' blur.
    middle: f32,
    /// The bend of the tone curve.
    bend: f32,
}

impl Halo {
    /// For a marker with such blur, px.
    pub(super) fn new(common: &Common, sigma: f64) -> Self {
        let wider = sigma.hypot(REACH_PX) / sigma;
        Halo {
            strength: common.sharpening as f32,
            wider: wider as f32,
            middle: (common.profile.middle() / wider) as f32,
            bend: common.profile.0[0] as f32,
        }
    }

    /// Adds what sharpening does to grey levels beyond their profile; its derivative by the strength.
    #[inline(always)]
    pub(super) fn add(&self, pattern: &Pattern, g: &Geometry, shade: &Shade, bent: &mut Bend) -> Lane {
        let mut beyond = self.beyond(&self.surroundings(pattern, g), &bent.quantile);
        for k in 0..BATCH {
            let (x, y) = (shade.x[k] * g.sx[k], shade.y[k] * g.sy[k]);
            // The first function of the profile is the slope of P along a straight edge.
            let straight = bent.by_shape[0][k];
            let steeper = x * x + y * y + 2.0 * g.rho[k] * x * y - straight * straight;
            let within = if bent.quantile[k].abs() > END { 0.0 } else { 1.0 };
            beyond[k] = within * (beyond[k] + self.bend * steeper);
            bent.value[k] += self.strength * beyond[k];
        }
        beyond
    }

    /// How much darker the surroundings (given by their white share) are than those of a straight edge of the
    /// same grey (given by its quantile).
    #[inline(always)]
    fn beyond(&self, shares: &Lane, quantiles: &Lane) -> Lane {
        let table = &QUANTILES;
        let narrower = 1.0 / self.wider;
        let mut beyond = [0.0; BATCH];
        for k in 0..BATCH {
            beyond[k] = quantile(table, shares[k]);
        }
        for k in 0..BATCH {
            let (wide, edge) = (beyond[k] - self.middle, quantiles[k] * narrower - self.middle);
            beyond[k] = cumulated(edge, density(edge)) - cumulated(wide, density(wide));
        }
        beyond
    }

    /// White share of the pattern under the surroundings' blur.
    #[inline(always)]
    fn surroundings(&self, pattern: &Pattern, g: &Geometry) -> Lane {
        let wider = |lane: &Lane| lane.map(|s| s * self.wider);
        let (sx, sy) = (wider(&g.sx), wider(&g.sy));
        let widest = sx.iter().chain(&sy).fold(0.0f32, |a, b| a.max(*b));
        if widest < 0.16 {
            share::<1, 2>(pattern, [&g.x, &g.y], [&sx, &sy], &g.rho)
        } else if widest < 0.48 {
            share::<3, 4>(pattern, [&g.x, &g.y], [&sx, &sy], &g.rho)
        } else {
            share::<5, 6>(pattern, [&g.x, &g.y], [&sx, &sy], &g.rho)
        }
    }
}

/// White share under a blur, without derivatives.
#[inline(always)]
fn share<const N: usize, const M: usize>(
    pattern: &Pattern,
    [x, y]: [&Lane; 2],
    [sx, sy]: [&Lane; 2],
    rho: &Lane,
) -> Lane {
    const NONE: Lane = [0.0; BATCH];
    let (across, down) = (lines::<N>(x, sx), lines::<N>(y, sy));
    let cells = cells::<M>(pattern, &across.first, &down.first);
    let (mut share, mut r0, mut jumps0) = (NONE, NONE, [NONE; N]);
    for row in 0..M {
        let (mut r, mut jumps) = (cells[row][0], [NONE; N]);
        for k in 0..BATCH {
            for i in 0..N {
                let jump = cells[row][i + 1][k] - cells[row][i][k];
                r[k] += jump * across.beyond[i][k];
                jumps[i][k] = jump;
            }
        }
        if row == 0 {
            share = r;
        } else {
            let line = row - 1;
            for k in 0..BATCH {
                share[k] += (r[k] - r0[k]) * down.beyond[line][k];
            }
            for i in 0..N {
                for k in 0..BATCH {
                    let density = down.density[line][k] * (sx[k] * sy[k] * rho[k]);
                    let jump = (jumps[i][k] - jumps0[i][k]) * across.density[i][k] * density;
                    share[k] += jump * correlated(rho[k], across.t[i][k], down.t[line][k]);
                }
            }
        }
        (r0, jumps0) = (r, jumps);
    }
    share
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::marker::Dictionary;

    /// W. F. Sheppard (Phil. Trans. R. Soc. A 192, 1899): a quarter of a correlated normal distribution holds
    /// 1/4 + asin(correlation) / 2 pi.
    #[test]
    fn white_share_at_a_corner_is_sheppards() {
        let pattern = Pattern::new(Dictionary::tag36h11(), 0);
        let lane = |x: f32| [x; BATCH];
        let (sx, sy) = (lane(0.1), lane(0.1));
        for rho in [-0.6f32, -0.3, 0.0, 0.4, 0.6] {
            // The outer corner of the black border: all but one quarter is white.
            let share = share::<1, 2>(&pattern, [&lane(-1.0), &lane(-1.0)], [&sx, &sy], &lane(rho));
            let true_share = 0.75 - f64::from(rho).asin() / std::f64::consts::TAU;
            assert!((f64::from(share[7]) - true_share).abs() < 2e-3, "{rho}: {} {true_share}", share[7]);
        }
    }

    #[test]
    fn along_a_straight_edge_nothing_is_added() {
        let halo = Halo { strength: 0.5, wider: 1.9, middle: -0.2, bend: 0.3 };
        for z in [-3.0f32, -1.5, -0.2, 0.7, 2.4] {
            let y = z / 1.9;
            let shares = [cumulated(y, density(y)); BATCH];
            let beyond = halo.beyond(&shares, &[z; BATCH]);
            assert!(beyond[3].abs() < 1e-4, "{z}: {}", beyond[3]);
        }
    }
}
