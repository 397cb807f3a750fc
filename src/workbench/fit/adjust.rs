//! All photos at once: lens, board, poses and how photos differ, with the
//! sizes of noise and of the photo-to-photo differences from the photos themselves.

use rayon::prelude::*;

use super::adjustment::{Adjustment, Misfit};
use super::equations::Linearization;
use super::eye::Eye;
use super::normal::{Covariance, Normal, PhotoNormal};
use super::seen::{BoardPhoto, Seen};
use super::spreads::Mixing;
use super::state::{CENTRE, EDGE, FOCAL, PHOTO, Spread, State};
use super::target::Target;
use super::trust::trust;

/// Beyond this many sigmas (root mean square over its coordinates) an element
/// weighs less (Huber 1964).
const HUBER: f64 = 2.0;
/// Beyond this many it does not count at all.
const GROSS: f64 = 6.0;
/// What photos are taken to differ by before they say so themselves.
pub(super) const FIRST_SPREAD: Spread = Spread { focal_relative: 3e-3, centre_px: 5.0, turn_rad: 3e-4, flex_mm: 0.05 };
/// Plain steps of the photo-to-photo sigmas close the gap by a third or less
/// where few photos say anything of them; over-relaxed ones by more, but may swing: for the first rounds only.
const FASTER: f64 = 1.5;
/// Rounds after which weights stay as they are, so that the rest converges.
const WEIGHINGS: usize = 4;
/// Rounds after these.
const ROUNDS: usize = 40;
/// Noise and spreads that change by less than this, relative, are settled.
const SETTLED: f64 = 1e-3;
/// First damping of the steps, far from the solution and near it: damping holds back what photos say little of.
pub(super) const FAR: f64 = 1e-4;
pub(super) const NEAR: f64 = 1e-10;
/// A step is the last that makes the misfit smaller by less than this part: where weights and sizes change
/// anyway, and where the solution counts (the next step, of a method that squares its distance, is nothing).
pub(super) const ROUGHLY: f64 = 1e-3;
pub(super) const CLOSELY: f64 = 1e-5;

impl<'a> Adjustment<'a> {
    pub(super) fn new(target: &'a Target, photos: Vec<&'a BoardPhoto>, state: State) -> Self {
        let ones: Vec<Vec<f64>> = photos.iter().map(|p| vec![1.0; p.seen.len()]).collect();
        Adjustment {
            target,
            photos,
            state,
            spread: FIRST_SPREAD,
            noise: 1.0,
            weights: ones.clone(),
            trust: ones,
            held: [false; 9],
            rigid_board: false,
        }
    }

    fn shared(&self) -> usize {
        self.state.lens.model.parameters() + if self.rigid_board { 0 } else { self.target.unknowns() }
    }

    fn normal(&self) -> Option<Normal> {
        let p = self.state.lens.model.parameters();
        let precision = 1.0 / (self.noise * self.noise);
        let one = |j: usize| {
            let own = &self.state.photos[j];
            let linear = Linearization { eye: self.eye(j), spread: &self.spread, rigid_board: self.rigid_board };
            let weights: Vec<f64> =
                self.weights[j].iter().zip(&self.trust[j]).map(|(weight, trust)| weight * trust * precision).collect();
            let mut photo = PhotoNormal::new(&linear.rows(&weights)?, self.shared());
            let values = own.in_sigmas(&self.spread);
            for column in FOCAL..PHOTO {
                photo.prior(column, values[column]);
            }
            Some(photo)
        };
        let photos = (0..self.photos.len()).into_par_iter().map(one).collect::<Option<Vec<_>>>()?;
        let mut normal = Normal::new(self.shared(), photos);
        for (i, value) in self.state.shape.iter().enumerate().take(self.shared() - p) {
            normal.prior_shared(p + i, *value);
        }
        for column in (0..p).filter(|c| self.held[*c]) {
            normal.hold(column);
        }
        Some(normal)
    }

    /// Each element's mean squared whitened residual at a state, trust included. `None` out of sight.
    fn squares(&self, state: &State) -> Option<Vec<Vec<f64>>> {
        let one = |j: usize| {
            let photo = self.photos[j];
            let eye = Eye::new(self.target, photo, state, &state.photos[j]);
            let weighted = |(k, seen): (usize, &Seen)| {
                let mean = eye.mean_square(seen).map(|m| self.trust[j][k] * m);
                // An element that is out may be out of sight.
                mean.or((self.weights[j][k] <= 0.0).then_some(f64::INFINITY))
            };
            photo.seen.iter().enumerate().map(weighted).collect::<Option<Vec<f64>>>()
        };
        (0..self.photos.len()).into_par_iter().map(one).collect()
    }

    /// What the adjustment makes small.
    fn cost(&self, state: &State) -> Option<f64> {
        let mut cost = self.misfit(state)?.sum / (self.noise * self.noise);
        cost += state.shape.iter().map(|x| x * x).sum::<f64>();
        cost += state.photos.iter().map(|p| p.in_sigmas(&self.spread).norm_squared()).sum::<f64>();
        cost.is_finite().then_some(cost)
    }

    pub(super) fn misfit(&self, state: &State) -> Option<Misfit> {
        let squares = self.squares(state)?;
        let mut misfit = Misfit { sum: 0.0, rows: 0.0 };
        for (j, photo) in self.photos.iter().enumerate() {
            for (k, seen) in photo.seen.iter().enumerate().filter(|(k, _)| self.weights[j][*k] > 0.0) {
                let rows = 2.0 * seen.points.len() as f64;
                misfit.sum += self.weights[j][k] * rows * squares[j][k];
                misfit.rows += self.weights[j][k] * rows;
            }
        }
        Some(misfit)
    }

    /// Levenberg-Marquardt with the weights as they are, so large a first damping and so small a last gain.
    /// `None` where it fails.
    pub(super) fn settle(&mut self, most: usize, mut damping: f64, enough: f64) -> Option<()> {
        let mut cost = self.cost(&self.state)?;
        for _ in 0..most {
            let normal = self.normal()?;
            let (next, next_cost) = loop {
                let trial = normal.factor(damping).map(|factor| factor.solve()).and_then(|step| {
                    let next = self.state.moved(&step.shared, &step.photos, &self.spread);
                    let cost = self.cost(&next)?;
                    Some((next, cost))
                });
                match trial {
                    Some((next, c)) if c <= cost * (1.0 + 1e-12) => break (next, c),
                    _ if damping > 1e8 => return Some(()),
                    _ => damping *= 10.0,
                }
            };
            let gain = (cost - next_cost) / cost.max(1e-30);
            self.state = next;
            cost = next_cost;
            damping = (damping * 0.1).max(1e-12);
            if gain < enough {
                break;
            }
        }
        Some(())
    }

    /// Weights of all elements from their present misfits.
    pub(super) fn reweigh(&mut self) -> Option<()> {
        let squares = self.squares(&self.state)?;
        let mut all: Vec<f64> = squares.iter().flatten().copied().filter(|s| s.is_finite()).collect();
        all.sort_by(f64::total_cmp);
        // The median of chi squared over its degrees of freedom is near 1.
        let typical = all.get(all.len() / 2)?.max(1e-4).sqrt();
        let weigh = |square: &f64| {
            let ratio = square.sqrt() / typical;
            if ratio.is_nan() || ratio > GROSS { 0.0 } else { (HUBER / ratio.max(1e-9)).min(1.0) }
        };
        self.weights = squares.iter().map(|photo| photo.iter().map(weigh).collect()).collect();
        Some(())
    }

    pub(super) fn covariance(&self) -> Option<Covariance> {
        Some(self.normal()?.factor(0.0)?.covariance(self.state.lens.model.parameters()))
    }

    /// Unknowns that the observations, not the priors, determine.
    pub(super) fn determined(&self, covariance: &Covariance) -> f64 {
        let p = self.state.lens.model.parameters();
        let free = self.held[..p].iter().filter(|h| !**h).count() + 6 * self.photos.len();
        let shape: f64 = covariance.shape.iter().map(|variance| 1.0 - variance).sum();
        let own: f64 = covariance.photos.iter().map(|c| (FOCAL..PHOTO).map(|i| 1.0 - c[i]).sum::<f64>()).sum();
        free as f64 + shape + own
    }

    /// Weights of all elements, in a few rounds that also bring noise and spreads near. By how much,
    /// relative, the last of them changed the noise.
    pub(super) fn weigh(&mut self) -> Option<f64> {
        let mut moved = 0.0;
        self.settle(30, FAR, ROUGHLY)?;
        for _ in 0..WEIGHINGS {
            let (covariance, _) = self.undamped_step()?;
            let improved = self.improved(&covariance, FASTER)?;
            let before = self.noise;
            self.set_sizes(&improved.sizes);
            moved = (self.noise / before).ln().abs();
            self.trust = trust(self);
            self.reweigh()?;
        }
        Some(moved)
    }

    /// Adjusts, weights being what they are, until estimates, noise and spreads agree with each other.
    pub(super) fn converge(&mut self) -> Option<Covariance> {
        let mut mixing = Mixing::default();
        let mut last = None;
        for _ in 0..ROUNDS {
            let (covariance, gain) = self.undamped_step()?;
            let before = self.sizes();
            let improved = self.improved(&covariance, 1.0)?;
            if improved.change < SETTLED {
                last = (gain < CLOSELY).then_some(covariance);
                break;
            }
            self.set_sizes(&mixing.next(&before, &improved.sizes));
        }
        if last.is_none() {
            self.settle(10, NEAR, CLOSELY)?;
            last = self.covariance();
        }
        last
    }

    /// A step from near the solution, the covariance before it, both from the same equations, and by which part
    /// it made the misfit smaller.
    fn undamped_step(&mut self) -> Option<(Covariance, f64)> {
        let normal = self.normal()?;
        let factor = normal.factor(0.0)?;
        let step = factor.solve();
        let next = self.state.moved(&step.shared, &step.photos, &self.spread);
        let before = self.cost(&self.state)?;
        match self.cost(&next) {
            Some(after) if after <= before * (1.0 + 1e-9) => {
                self.state = next;
                let covariance = factor.covariance(self.state.lens.model.parameters());
                Some((covariance, (before - after) / before.max(1e-30)))
            }
            _ => {
                self.settle(2, FAR, CLOSELY)?;
                Some((self.covariance()?, 1.0))
            }
        }
    }

    /// Effective number of photos that say something of the focal length's
    /// spread, and of coordinates that say something of the centre's.
    pub(super) fn spread_degrees(&self, covariance: &Covariance) -> [f64; 2] {
        let sum = |columns: std::ops::Range<usize>| {
            covariance.photos.iter().map(|c| columns.clone().map(|i| 1.0 - c[i]).sum::<f64>()).sum()
        };
        [sum(FOCAL..CENTRE), sum(CENTRE..EDGE)]
    }

    /// One photo as it is now.
    pub(super) fn eye(&self, photo: usize) -> Eye<'_> {
        Eye::new(self.target, self.photos[photo], &self.state, &self.state.photos[photo])
    }

    /// Root mean square of one photo's whitened residuals.
    pub(super) fn photo_misfit(&self, photo: usize) -> f64 {
        let (mut sum, mut rows) = (0.0, 0.0);
        let eye = self.eye(photo);
        for (k, seen) in self.photos[photo].seen.iter().enumerate() {
            if let Some(mean) = eye.mean_square(seen) {
                let of_element = 2.0 * seen.points.len() as f64;
                sum += self.trust[photo][k] * mean * of_element;
                rows += of_element;
            }
        }
        (sum / f64::max(rows, 1.0)).sqrt()
    }
}
