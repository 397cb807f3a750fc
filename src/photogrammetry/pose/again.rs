//! Carriers that the first solution got wrong are placed again.
//!
//! A flat carrier seen from afar has two poses that fit one photo almost
//! equally well. While photos are linked one by one the wrong one can win, and
//! a robust solution then gives its corners no weight: nothing pulls it back.
//! Once the photos stand, its other poses are tried against all of them.

use super::link::Start;
use super::work::Work;

/// A carrier whose misfit exceeds this many robust widths is placed again: its
/// corners weigh less than a hundredth there.
const LEFT_ASIDE: f64 = 3.0;
/// The share of the misfit that another pose must save to be taken.
const SAVED: f64 = 0.02;

impl Work<'_> {
    /// Tries the other poses of each carrier that the solution leaves aside.
    pub(super) fn place_again(&mut self, start: &Start) {
        for (k, poses) in start.alternatives.iter().enumerate() {
            if self.columns.carriers[k].len() < 6 || !self.leaves_aside(k) {
                continue;
            }
            for pose in poses {
                let mut other = self.clone();
                other.state.carriers[k] = Some(*pose);
                let Some(()) = other.settle_robustly() else { continue };
                let width = self.robust_width();
                if let (Some(a), Some(b)) = (self.robust_cost(width), other.robust_cost(width))
                    && b < a * (1.0 - SAVED)
                {
                    *self = other;
                }
            }
        }
    }

    fn robust_width(&self) -> f64 {
        4.0 * self.variance.sqrt()
    }

    /// Whether a photo's view of a carrier as a whole has next to no weight.
    fn leaves_aside(&self, k: usize) -> bool {
        let Some(equations) = self.equations(&self.state) else { return true };
        let limit = LEFT_ASIDE * self.robust_width();
        let views = self.columns.photos.iter().flat_map(|j| self.problem.photos[*j].views.iter());
        views.zip(&equations).any(|(view, e)| view.carrier == k && e.misfit() > limit)
    }

    /// Geman-McClure cost of all views.
    fn robust_cost(&self, width: f64) -> Option<f64> {
        let bounded = |m: f64| m * m / (1.0 + (m / width).powi(2));
        Some(self.equations(&self.state)?.iter().map(|e| bounded(e.misfit())).sum())
    }
}
