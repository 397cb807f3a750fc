//! One least-squares adjustment over all photos, carriers and what is known
//! of cameras, layout and sizes (bundle adjustment with priors; Triggs et al.
//! 2000, and Foerstner and Wrobel 2016 for variance components).

use super::link::{Start, link, link_from, near};
use super::scene::Scene;
use super::snoop;
use super::views::Problem;
use super::work::{Options, Work};
use super::{Error, Unsettled};
use crate::geom::{Camera, Carrier, Pose, World};

/// Solves for all poses. Photos that share no carrier with the others and
/// carriers that nobody sees are left out; the scene says so.
///
/// # Errors
/// [`Error::NothingSeen`] and [`Error::NotSettled`].
pub fn adjust(problem: &Problem, options: &Options) -> Result<Scene, Error> {
    let photos = problem.photos.len();
    let start = link(problem).ok_or(Error::NothingSeen { photos })?;
    solve(problem, &start, options)
}

/// Likewise with one photo as the first to which the others are linked: where
/// flat bodies allow two poses, another first photo may decide otherwise.
///
/// # Errors
/// [`Error::NothingSeen`] and [`Error::NotSettled`].
pub fn adjust_from(problem: &Problem, first: usize, options: &Options) -> Result<Scene, Error> {
    let start = link_from(problem, first).ok_or(Error::NothingSeen { photos: problem.photos.len() })?;
    solve(problem, &start, options)
}

/// Likewise from known first poses of photos and carriers, such as those of
/// an adjustment with more photos. What hangs together with the first photo
/// takes part.
///
/// # Errors
/// [`Error::NothingSeen`] and [`Error::NotSettled`].
pub fn adjust_near(
    problem: &Problem,
    photos: Vec<Option<Pose<Camera, World>>>,
    carriers: Vec<Option<Pose<World, Carrier>>>,
    options: &Options,
) -> Result<Scene, Error> {
    let start = near(problem, photos, carriers).ok_or(Error::NothingSeen { photos: problem.photos.len() })?;
    solve(problem, &start, options)
}

fn solve(problem: &Problem, start: &Start, options: &Options) -> Result<Scene, Error> {
    let photos = problem.photos.len();
    let mut work = Work::new(problem, start, options);
    work.settle_robustly().ok_or(Error::NotSettled { photos, why: Unsettled::FirstSolution })?;
    work.place_again(start);
    if options.drop_corners {
        snoop::drop_gross(&mut work);
    }
    work.refine_unknowns();
    work.settle().ok_or(Error::NotSettled { photos, why: Unsettled::Singular })?;
    if options.drop_corners {
        snoop::drop_worst(&mut work);
    }
    work.steady().ok_or(Error::NotSettled { photos, why: Unsettled::Singular })?;
    let ambiguous = work.try_second_solutions(start);
    work.into_scene(ambiguous).ok_or(Error::NotSettled { photos, why: Unsettled::NoCovariance })
}

impl<'a> Work<'a> {
    /// Settles with the hand as unsteady as the photos show it. Where the model does not fit at all, each
    /// new variance of unit weight would let priors pull harder: it is estimated once.
    fn steady(&mut self) -> Option<()> {
        if self.weigh_tremor(None)? {
            let now = self.equations(&self.state)?;
            let weights = vec![1.0; now.len()];
            self.converge(now, &weights)?;
            self.estimate_variance()?;
        }
        Some(())
    }

    /// Tries the other solution of each flat carrier; keeps the better one.
    /// Says which carriers remain not proven between two.
    fn try_second_solutions(&mut self, start: &Start) -> Vec<bool> {
        let mut ambiguous = vec![false; self.state.carriers.len()];
        for (k, second) in start.second.iter().enumerate() {
            let (Some(second), false) = (second, self.columns.carriers[k].len() < 6) else { continue };
            let mut other = self.clone();
            other.state.carriers[k] = Some(*second);
            let Some(()) = other.settle() else { continue };
            let turned = match (&self.state.carriers[k], &other.state.carriers[k]) {
                (Some(a), Some(b)) => a.rotation().angle_to(&b.rotation()) > DISTINCT_RAD,
                _ => false,
            };
            if !turned {
                continue;
            }
            let (Some(a), Some(b)) = (self.total_cost(), other.total_cost()) else { continue };
            // In units of the noise that is there, not of what the detector hopes for.
            ambiguous[k] = (a - b).abs() < AMBIGUOUS * self.variance.min(other.variance);
            if b < a {
                *self = other;
            }
        }
        ambiguous
    }

    /// Cost at one common variance, so that two solutions can be compared.
    fn total_cost(&self) -> Option<f64> {
        let equations = self.equations(&self.state)?;
        let image: f64 = equations.iter().map(|e| e.residual.norm_squared()).sum();
        Some(image + self.prior_cost(&self.state))
    }
}

/// Two solutions of a flat carrier farther apart than this are two, rad.
const DISTINCT_RAD: f64 = 0.01;
/// A difference in cost below which two solutions are both possible: the
/// likelihood ratio of one in two thousand.
const AMBIGUOUS: f64 = 15.0;
