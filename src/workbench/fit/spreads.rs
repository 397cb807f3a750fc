//! The sizes of noise and of what differs from photo to photo, from the photos
//! themselves: restricted maximum likelihood (Patterson and Thompson 1971).

use std::collections::VecDeque;
use std::ops::Range;

use nalgebra::{DMatrix, DVector, SVector};

use super::adjustment::Adjustment;
use super::normal::Covariance;
use super::state::{CENTRE, EDGE, FLEX, FOCAL, PHOTO, Spread, TURN};

/// No photo repeats another better than this.
const LEAST: Spread = Spread { focal_relative: 2e-5, centre_px: 0.05, turn_rad: 1e-6, flex_mm: 0.002 };
/// The smallest noise.
const LEAST_NOISE: f64 = 1e-3;
/// Of each spread, the photos' unknowns that have it.
const GROUPS: [Range<usize>; 4] = [FOCAL..CENTRE, CENTRE..EDGE, TURN..FLEX, FLEX..PHOTO];
/// Spreads that photos determine by less than this share can't be told from none.
const HARDLY: f64 = 0.02;
/// One round changes a size by no more than this factor.
const MOST: f64 = 5.0;
/// Rounds that the mixing remembers: as many as there are sizes.
const REMEMBERED: usize = 5;
/// Directions of which the remembered rounds say less than this share of the best known one are not extrapolated.
const UNSEEN: f64 = 1e-4;

/// Logarithms of the sizes: focal length, centre, turn, flex, noise.
pub(super) type Sizes = SVector<f64, 5>;

impl Spread {
    fn all(&self) -> [f64; 4] {
        [self.focal_relative, self.centre_px, self.turn_rad, self.flex_mm]
    }
}

/// One step of Harville's iteration (1977).
pub(super) struct Improved {
    pub(super) sizes: Sizes,
    /// How much it changes what photos say anything of, as logarithms.
    pub(super) change: f64,
}

impl Adjustment<'_> {
    pub(super) fn sizes(&self) -> Sizes {
        let [a, b, c, d] = self.spread.all();
        Sizes::from([a, b, c, d, self.noise].map(f64::ln))
    }

    /// Takes over sizes, none below the least.
    pub(super) fn set_sizes(&mut self, sizes: &Sizes) {
        let least = LEAST.all();
        let [focal_relative, centre_px, turn_rad, flex_mm] = std::array::from_fn(|i| sizes[i].exp().max(least[i]));
        self.spread = Spread { focal_relative, centre_px, turn_rad, flex_mm };
        self.noise = sizes[4].exp().max(LEAST_NOISE);
    }

    /// What the state and its covariance say of the sizes. `faster` is the power to which the
    /// spreads' steps are taken.
    pub(super) fn improved(&self, covariance: &Covariance, faster: f64) -> Option<Improved> {
        let before = self.sizes();
        let misfit = self.misfit(&self.state)?;
        let degrees = (misfit.rows - self.determined(covariance)).max(1.0);
        let mut sizes = before;
        sizes[4] = (misfit.sum / degrees).sqrt().max(LEAST_NOISE).ln();
        let mut change = (sizes[4] - before[4]).abs();
        for (i, (columns, least)) in GROUPS.into_iter().zip(LEAST.all()).enumerate() {
            let (mut found, mut determined) = (0.0, 1e-9);
            for (photo, c) in self.state.photos.iter().zip(&covariance.photos) {
                let values = photo.in_sigmas(&self.spread);
                for k in columns.clone() {
                    found += values[k] * values[k];
                    determined += 1.0 - c[k];
                }
            }
            let ratio = (found / determined).sqrt().powf(faster).clamp(1.0 / MOST, MOST);
            sizes[i] = (before[i] + ratio.ln()).max(least.ln());
            let share = determined / (HARDLY * (columns.len() * self.photos.len()) as f64);
            change = change.max((sizes[i] - before[i]).abs() * f64::min(share, 1.0));
        }
        Some(Improved { sizes, change })
    }
}

/// Extrapolates an iteration from its last rounds (Anderson 1965, type II), so that what photos say
/// little of does not creep, and what swings to and fro settles.
#[derive(Debug, Default)]
pub(super) struct Mixing {
    /// Where the last rounds began and what they changed.
    rounds: VecDeque<(Sizes, Sizes)>,
}

impl Mixing {
    /// Where to go from `before` when the plain iteration goes to `after`.
    pub(super) fn next(&mut self, before: &Sizes, after: &Sizes) -> Sizes {
        let change = after - before;
        let mut next = *after;
        if !self.rounds.is_empty() {
            let rounds = self.rounds.len();
            let changes = DMatrix::from_fn(5, rounds, |i, k| change[i] - self.rounds[k].1[i]);
            let moves = DMatrix::from_fn(5, rounds, |i, k| after[i] - self.rounds[k].0[i] - self.rounds[k].1[i]);
            let svd = changes.svd(true, true);
            let least = UNSEEN * svd.singular_values.max();
            let right = DVector::from_column_slice(change.as_slice());
            if let Ok(parts) = svd.solve(&right, least) {
                let away = moves * parts;
                next -= Sizes::from_column_slice(away.as_slice());
            }
        }
        self.rounds.push_front((*before, change));
        self.rounds.truncate(REMEMBERED);
        let most = MOST.ln();
        let step = (next - before).map(|s| s.clamp(-most, most));
        if step.iter().all(|s| s.is_finite()) { before + step } else { *after }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A linear iteration that creeps in two directions and swings in another ends where its fixed point is.
    #[test]
    fn mixing_finds_the_fixed_point_of_a_slow_iteration() {
        let slow = [0.97, 0.9, -0.95, 0.5, 0.1];
        let goal = Sizes::from([0.3, -0.2, 0.5, 0.1, -0.4]);
        let plain = |x: &Sizes| Sizes::from_fn(|i, _| goal[i] + slow[i] * (x[i] - goal[i]));
        let mut here = Sizes::zeros();
        let mut mixing = Mixing::default();
        for _ in 0..9 {
            here = mixing.next(&here, &plain(&here));
        }
        assert!((here - goal).amax() < 1e-3, "{here}");
    }
}
