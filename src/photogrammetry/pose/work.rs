//! The adjustment at work: its unknowns, and how they settle.

use super::columns::Columns;
use super::link::Start;
use super::normal::{Normal, Step, normal};
use super::residual::{Equations, equations};
use super::state::{PhotoState, State};
use super::station::stations;
use super::unknowns::{NUISANCE, PHOTO};
use super::views::{Problem, View};
use crate::camera::Lens;
use crate::cores;
use crate::num::median;

/// What an adjustment assumes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Options {
    /// Floor sheets lie on one plane; false: each lies as it is seen.
    pub one_floor: bool,
    /// Wrong corners are searched for and left out.
    pub drop_corners: bool,
}

impl Default for Options {
    fn default() -> Self {
        Options { one_floor: true, drop_corners: true }
    }
}

/// An adjustment in progress: the question, the unknowns and their values.
#[derive(Debug, Clone)]
pub(super) struct Work<'a> {
    pub(super) problem: Problem<'a>,
    pub(super) columns: Columns,
    pub(super) state: State,
    /// Variance of unit weight of the image residuals.
    pub(super) variance: f64,
    /// Redundancy of the image residuals.
    pub(super) redundancy: f64,
    /// Whether the floor sheets define the x-y plane.
    pub(super) flat: bool,
    /// Covariance of all photos' turns that comes on top since their size is not known, in their units.
    pub(super) turns_besides: Option<nalgebra::DMatrix<f64>>,
}

/// Everything linearised at one state.
pub(super) struct Linearized {
    pub(super) equations: Vec<Equations>,
    pub(super) normal: Normal,
}

/// A step that gains less than this (in units of squared sigmas) is the last.
const SETTLED: f64 = 1e-7;
/// Likewise of a first solution, which only has to be near.
const NEAR: f64 = 1e-3;

impl<'a> Work<'a> {
    pub(super) fn new(problem: &Problem<'a>, start: &Start, options: &Options) -> Self {
        let photos: Vec<usize> = (0..problem.photos.len()).filter(|j| start.photos[*j].is_some()).collect();
        let placed: Vec<bool> = start.carriers.iter().map(Option::is_some).collect();
        let flat = start.on_floor && options.one_floor;
        let columns = Columns::new(problem, photos.clone(), &placed, flat, None);
        let photos = photos
            .iter()
            .filter_map(|j| Some(PhotoState { camera_from_world: start.photos[*j]?, nuisance: [0.0; NUISANCE] }))
            .collect();
        let shared = nalgebra::DVector::zeros(columns.shared);
        let state = State { photos, carriers: start.carriers.clone(), shared };
        let mut problem = problem.clone();
        // A carrier that nothing placed is as one that nobody sees: its markers take no part, and the rest settles without.
        for view in problem.photos.iter_mut().flat_map(|photo| &mut photo.views).filter(|v| !placed[v.carrier]) {
            view.valid = [false; 4];
        }
        Work { problem, columns, state, variance: 1.0, redundancy: 0.0, flat, turns_besides: None }
    }

    /// From poses alone, which a rough start needs, to all unknowns.
    pub(super) fn refine_unknowns(&mut self) {
        let placed: Vec<bool> = self.state.carriers.iter().map(Option::is_some).collect();
        let photos = self.columns.photos.clone();
        let camera = |j: &usize| self.problem.photos[*j].camera;
        let taken: Vec<_> =
            photos.iter().map(camera).zip(self.state.photos.iter().map(|p| p.camera_from_world)).collect();
        let stations = stations(&taken);
        self.columns = Columns::new(&self.problem, photos, &placed, self.flat, Some(&stations));
        self.state.shared = nalgebra::DVector::zeros(self.columns.shared);
    }

    /// The equations at a state; `None` where it puts a marker out of sight.
    pub(super) fn equations(&self, state: &State) -> Option<Vec<Equations>> {
        let mut views = Vec::new();
        for (block, j) in self.columns.photos.iter().enumerate() {
            let lens = state.lens(&self.problem, &self.columns, block);
            views.extend(self.problem.photos[*j].views.iter().map(|view| (block, lens, view)));
        }
        let one = |(block, lens, view): &(usize, Lens, &View)| match state.carriers[view.carrier] {
            Some(_) => equations(&self.problem, &self.columns, state, lens, *block, view),
            None => Some(Equations::none(*block)),
        };
        cores::map(&views, one).into_iter().collect()
    }

    pub(super) fn prior_cost(&self, state: &State) -> f64 {
        let photos: f64 = state.photos.iter().flat_map(|p| p.nuisance).map(|x| x * x).sum();
        photos + self.columns.nuisance.iter().map(|c| state.shared[*c].powi(2)).sum::<f64>()
    }

    fn cost(&self, state: &State, equations: &[Equations], weights: &[f64]) -> f64 {
        let image: f64 = equations.iter().zip(weights).map(|(e, w)| w * e.residual.norm_squared()).sum();
        image / self.variance + self.prior_cost(state)
    }

    /// Levenberg-Marquardt with weights that shrink what does not fit, the
    /// measure of which shrinks with the fit.
    pub(super) fn settle_robustly(&mut self) -> Option<()> {
        for _ in 0..30 {
            let now = self.equations(&self.state)?;
            let misfits: Vec<f64> = now.iter().map(Equations::misfit).collect();
            let of_rows = now.iter().zip(&misfits).filter(|(e, _)| !e.residual.is_empty()).map(|(_, m)| *m);
            let width = (2.0 * median(of_rows).unwrap_or(0.0)).max(4.0);
            let weights: Vec<f64> = misfits.iter().map(|m| (1.0 + (m / width).powi(2)).powi(-2)).collect();
            self.variance = (width * width / 16.0).max(1.0);
            if self.descend(now, &weights, 2, NEAR)?.0 && width <= 4.0 {
                break;
            }
        }
        Some(())
    }

    /// A few damped steps with given weights from the equations at the present
    /// state; true once nothing is left to gain, and the equations there.
    fn descend(
        &mut self,
        mut now: Vec<Equations>,
        weights: &[f64],
        steps: usize,
        settled: f64,
    ) -> Option<(bool, Vec<Equations>)> {
        let mut damping = 1e-6;
        for _ in 0..steps {
            let current = self.cost(&self.state, &now, weights);
            loop {
                let normal = normal(&self.columns, &self.state, &now, weights, self.variance, damping);
                let trial = normal.and_then(|normal| {
                    let Step { photos, shared, gain } = normal.solve();
                    let state = self.state.moved(&self.columns, &photos, &shared);
                    let equations = self.equations(&state)?;
                    Some((gain, self.cost(&state, &equations, weights), state, equations))
                });
                match trial {
                    Some((gain, _, state, equations)) if gain < settled => {
                        self.state = state;
                        return Some((true, equations));
                    }
                    Some((_, cost, state, equations)) if cost <= current => {
                        self.state = state;
                        now = equations;
                        damping *= 0.1;
                        break;
                    }
                    _ if damping > 1e6 => return Some((true, now)),
                    _ => damping = (damping * 10.0).max(1e-6),
                }
            }
        }
        Some((false, now))
    }

    /// Full convergence with unit weights and an estimated variance of unit weight.
    pub(super) fn settle(&mut self) -> Option<()> {
        let count = self.columns.photos.iter().map(|j| self.problem.photos[*j].views.len()).sum();
        let weights = vec![1.0; count];
        let mut now = self.equations(&self.state)?;
        for _ in 0..4 {
            now = self.converge(now, &weights)?;
            let before = self.variance;
            self.estimate_variance()?;
            if (self.variance / before - 1.0).abs() < 0.01 {
                break;
            }
        }
        Some(())
    }

    /// Convergence at the present variance of unit weight.
    pub(super) fn converge(&mut self, mut now: Vec<Equations>, weights: &[f64]) -> Option<Vec<Equations>> {
        for _ in 0..8 {
            let (settled, then) = self.descend(now, weights, 4, SETTLED)?;
            now = then;
            if settled {
                break;
            }
        }
        Some(now)
    }

    /// Variance component of the image: residuals over their redundancy.
    pub(super) fn estimate_variance(&mut self) -> Option<()> {
        let linear = self.linearized()?;
        let squares: f64 = linear.equations.iter().map(|e| e.residual.norm_squared()).sum();
        self.redundancy = self.redundancy_of(&linear);
        // The factor only widens. Residuals smaller than the detector states do
        // not prove it wrong: what all corners of a marker or a photo have in
        // common shows in no residual. And where next to nothing is left over,
        // residuals say nothing.
        self.variance = if self.redundancy >= 1.0 { (squares / self.redundancy).max(1.0) } else { 1.0 };
        Some(())
    }

    /// What the image has over what it must determine: unknowns that priors
    /// determine cost it less than one observation.
    pub(super) fn redundancy_of(&self, linear: &Linearized) -> f64 {
        let count: usize = linear.equations.iter().map(|e| e.residual.len()).sum();
        let unknowns = PHOTO * self.columns.photos.len() + self.columns.shared;
        count as f64 - (unknowns as f64 - linear.normal.prior_trace())
    }

    /// The normal equations at the present state with unit weights.
    pub(super) fn linearized(&self) -> Option<Linearized> {
        let equations = self.equations(&self.state)?;
        let weights = vec![1.0; equations.len()];
        let normal = normal(&self.columns, &self.state, &equations, &weights, self.variance, 0.0)?;
        Some(Linearized { equations, normal })
    }
}
