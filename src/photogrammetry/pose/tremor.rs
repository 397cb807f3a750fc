//! How unsteady the hand was that took a job's photos.
//!
//! A sensor reads its rows one after another while the hand turns. How far is an unknown of each photo
//! (three angles); how large such turns are is found from all photos of the job together, so that photos
//! from a tripod or a steady hand lose next to nothing (empirical Bayes; Efron and Morris 1973). What few
//! photos don't say of it is averaged over: the variance that is used is its mean over all sizes that
//! the turns found leave possible, up to what the camera file states, and what the answer changes by
//! between these sizes is part of its uncertainty. Before the photos it is as likely as not that nothing
//! turns at all, and if something does, each order of magnitude is as likely as the next (Jeffreys 1946;
//! a point beside a spread: Mitchell and Beauchamp, Bayesian variable selection in linear regression, 1988).
//! Next to nothing can't be had: two photos hardly tell a still hand from one that turns by 0.3 deg/s, and
//! the likelier stillness is taken to be, the narrower yaw is from still photos and the oftener it is wrong
//! from such a hand. docs/honesty.md has the figures for other choices.

use nalgebra::{DMatrix, DVector};

use super::unknowns::{NUISANCE, PHOTO, TURN};
use super::work::{Linearized, Work};

/// Sizes that are tried, from [`LEAST`] of what the camera file states to all of it.
const SIZES: usize = 200;
/// A turn of which photos say less than this share is not counted.
const UNSEEN: f64 = 1e-9;
/// A hundredth of what a hand does is nothing that photos show.
const LEAST: f64 = 1e-2;
/// How likely it is, before the photos, that nothing turns: a tripod, a table, a sensor that is read all at once.
const STILL: f64 = 0.5;

impl Work<'_> {
    /// Takes the turns for as large as the photos show them at the present state, which then has to settle anew.
    /// False where no photo has any.
    /// `presumed`: how far they turn about each axis, in units of what the camera file states, where nobody has taken a photo.
    pub(super) fn weigh_tremor(&mut self, presumed: Option<f64>) -> Option<bool> {
        if self.columns.u_turn_rad.iter().all(|u| *u <= 0.0) {
            return Some(false);
        }
        let sizes = self.sizes(presumed)?;
        let share = sizes.share.sqrt();
        for u in &mut self.columns.u_turn_rad {
            *u *= share;
        }
        for photo in &mut self.state.photos {
            for x in &mut photo.nuisance[TURN..TURN + 3] {
                *x /= share;
            }
        }
        self.turns_besides = Some(sizes.besides / sizes.share);
        Some(true)
    }

    fn sizes(&self, presumed: Option<f64>) -> Option<Sizes> {
        let covariance = self.linearized()?.normal.of_photos(PHOTO - NUISANCE + TURN, 3);
        let found = self.state.photos.iter().flat_map(|p| p.nuisance[TURN..TURN + 3].iter().copied());
        let found = DVector::from_iterator(covariance.nrows(), found);
        let eigen = covariance.symmetric_eigen();
        let found = eigen.eigenvectors.tr_mul(&found);
        // What photos alone say along each axis: the prior's share is taken out of what was found with it.
        let axes: Vec<Axis> = (0..found.len())
            .map(|i| {
                let left = eigen.eigenvalues[i].clamp(UNSEEN, 1.0);
                let seen = 1.0 / left - 1.0;
                let pull = presumed.map_or(found[i] / left, |turn| turn * seen);
                if seen < UNSEEN { Axis::default() } else { Axis { seen, pull } }
            })
            .collect();
        let Sizes { share, besides } = sizes(&axes);
        Some(Sizes { share, besides: &eigen.eigenvectors * besides * eigen.eigenvectors.transpose() })
    }

    /// What comes on top of the carriers' covariance since the turns' size is not known: columns whose
    /// product with their transpose it is. `carriers` are the rows of the inverse for the turns, by photo.
    pub(super) fn of_unknown_tremor(&self, linear: &Linearized, carriers: &[DMatrix<f64>]) -> Option<DMatrix<f64>> {
        let besides = self.turns_besides.as_ref()?;
        let covariance = linear.normal.of_photos(PHOTO - NUISANCE + TURN, 3);
        let mut across = DMatrix::zeros(covariance.nrows(), carriers.first()?.ncols());
        for (b, rows) in carriers.iter().enumerate() {
            across.rows_mut(3 * b, 3).copy_from(&rows.rows(PHOTO - NUISANCE + TURN, 3));
        }
        // How the answer follows the turns is a matter of the photos, not of the turns' size.
        let follows = covariance.cholesky()?.solve(&across);
        let eigen = besides.clone().symmetric_eigen();
        let mut columns = follows.tr_mul(&eigen.eigenvectors);
        for (mut column, value) in columns.column_iter_mut().zip(&eigen.eigenvalues) {
            column *= value.max(0.0).sqrt();
        }
        Some(columns)
    }
}

/// What the photos alone say of the turns along one axis, in units of what the camera file states.
#[derive(Debug, Clone, Copy, Default)]
struct Axis {
    /// Weight, the inverse of a variance.
    seen: f64,
    /// That times the turn that they show.
    pull: f64,
}

/// The turns' variance as a share of the stated one.
struct Sizes {
    /// Its mean.
    share: f64,
    /// What the turns' covariance is over all possible sizes, more than with the mean one.
    besides: DMatrix<f64>,
}

/// Averages over all sizes, each as likely as the turns found make it.
fn sizes(axes: &[Axis]) -> Sizes {
    let of_a_hand = (0..SIZES).map(|i| LEAST.powf(2.0 * (i as f64 + 0.5) / SIZES as f64));
    let (shares, prior): (Vec<f64>, Vec<f64>) =
        of_a_hand.map(|share| (share, (1.0 - STILL) / SIZES as f64)).chain([(0.0, STILL)]).unzip();
    let log_likelihood = |share: f64| -> f64 {
        let of = |a: &Axis| share * a.pull * a.pull / (1.0 + share * a.seen) - (share * a.seen).ln_1p();
        0.5 * axes.iter().map(of).sum::<f64>()
    };
    let logs: Vec<f64> = shares.iter().map(|s| log_likelihood(*s)).collect();
    let most = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let weights: Vec<f64> = logs.iter().zip(&prior).map(|(log, prior)| prior * (log - most).exp()).collect();
    let weights = DVector::from_vec(weights);
    let weights = &weights / weights.sum();
    let mean = |of: &dyn Fn(f64) -> f64| shares.iter().zip(&weights).map(|(s, w)| w * of(*s)).sum::<f64>();
    let share = mean(&|s| s);
    let left = |a: &Axis, s: f64| s / (1.0 + s * a.seen);
    // The turns at each size against those at the mean one.
    let off = DMatrix::from_fn(axes.len(), shares.len(), |i, k| {
        (left(&axes[i], shares[k]) - left(&axes[i], share)) * axes[i].pull * weights[k].sqrt()
    });
    let mut besides = &off * off.transpose();
    for (i, a) in axes.iter().enumerate() {
        besides[(i, i)] += mean(&|s| left(a, s)) - left(a, share);
    }
    Sizes { share, besides }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn turned(by: f64, count: usize, seen: f64) -> Vec<Axis> {
        (0..count).map(|i| Axis { seen, pull: seen * if i % 2 == 0 { by } else { -by } }).collect()
    }

    #[test]
    fn many_turns_that_are_well_seen_tell_their_size() {
        let found = sizes(&turned(0.3, 300, 1e6));
        assert!((found.share / 0.09 - 1.0).abs() < 0.05, "{}", found.share);
        assert!(found.besides.amax() < 1e-9);
    }

    /// The mean over sizes is that of the law of total variance: no less than the mean turn's own.
    #[test]
    fn a_few_turns_that_are_hardly_seen_leave_their_size_open() {
        let still = sizes(&turned(0.0, 6, 40.0));
        let moved = sizes(&turned(0.3, 6, 40.0));
        assert!(still.share < 0.02 && moved.share > 2.0 * still.share, "{} {}", still.share, moved.share);
        assert!(moved.besides[(0, 0)] > still.besides[(0, 0)]);
        assert!(sizes(&[]).share > 0.0);
    }
}
