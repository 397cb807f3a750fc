//! What would come out with less or other input: one step from the settled
//! equations, not a new adjustment. The solution is where it is because of all
//! equations; without some of them it moves by one Gauss-Newton step, which is
//! the whole way as long as it is short against the scene.

use nalgebra::{DMatrix, DVector, Vector2};

use super::normal::{Normal, normal};
use super::residual::Equations;
use super::scene::{Owner, Scene};
use super::views::Problem;

/// What is left out of an adjustment.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LeftOut {
    /// Nothing: the scene as it is.
    Nothing,
    /// All markers of a carrier, by index in the kit.
    Carrier(usize),
    /// A photo, by index in the problem.
    Photo(usize),
}

/// What that does to some linear functions of the carriers' steps.
#[derive(Debug, Clone)]
pub struct Influence {
    /// Change of each function.
    pub change: DVector<f64>,
    /// Variance of each function without what was left out, photos and priors only.
    pub variance: DVector<f64>,
}

/// Not zero, so that what nothing else determines stays where it is.
const NEXT_TO_NOTHING: f64 = 1e-6;

impl Scene {
    /// Leaves something out. `gradients` has a column for each function, six
    /// rows for each carrier in the kit's order. `None` where the rest determines nothing.
    pub fn without(&self, left_out: LeftOut, gradients: &DMatrix<f64>) -> Option<Influence> {
        let solved = &self.linear;
        let out = |owner: &Owner| match left_out {
            LeftOut::Nothing => false,
            LeftOut::Carrier(k) => owner.carrier == k,
            LeftOut::Photo(j) => owner.photo == j,
        };
        let weights: Vec<f64> = solved.owners.iter().map(|o| if out(o) { NEXT_TO_NOTHING } else { 1.0 }).collect();
        let rest = normal(&solved.columns, &solved.state, &solved.equations, &weights, self.variance, 0.0)?;
        let by_shared = self.by_shared(gradients);
        let variance = rest.quadratic_of_shared(&by_shared).diagonal();
        Some(Influence { change: by_shared.tr_mul(&rest.solve().shared), variance })
    }

    /// How the functions change when every corner is where `by` says, px: photo
    /// and corner in, displacement out.
    pub fn displaced(
        &self,
        problem: &Problem,
        gradients: &DMatrix<f64>,
        by: &dyn Fn(usize, &Vector2<f64>) -> Vector2<f64>,
    ) -> Option<DVector<f64>> {
        let solved = &self.linear;
        let mut state = solved.state.clone();
        // The priors are met already: only the displacement pulls.
        state.shared.fill(0.0);
        for photo in &mut state.photos {
            photo.nuisance.fill(0.0);
        }
        let mut equations: Vec<Equations> = solved.equations.clone();
        let views =
            solved.columns.photos.iter().flat_map(|j| (0..problem.photos[*j].views.len()).map(move |v| (*j, v)));
        for (e, (j, v)) in equations.iter_mut().zip(views) {
            let used = self.photos[j].as_ref()?.views.get(v)?.used;
            let corners = &problem.photos[j].views[v].corners_px;
            let shifts: Vec<f64> = (0..4)
                .filter(|i| used[*i])
                .flat_map(|i| {
                    let d = by(j, &corners[i]);
                    [d.x, d.y]
                })
                .collect();
            let px = DMatrix::from_column_slice(shifts.len(), 1, &shifts);
            e.residual = e.whitened(&px).column(0).into_owned();
        }
        let weights = vec![1.0; equations.len()];
        let shifted: Normal = normal(&solved.columns, &state, &equations, &weights, self.variance, 0.0)?;
        Some(self.by_shared(gradients).tr_mul(&shifted.solve().shared))
    }

    /// Gradients over the adjustment's shared columns.
    fn by_shared(&self, gradients: &DMatrix<f64>) -> DMatrix<f64> {
        let columns = &self.linear.columns;
        let mut by_shared = DMatrix::zeros(columns.shared, gradients.ncols());
        for (k, free) in columns.carriers.iter().enumerate() {
            for (axis, column) in free {
                by_shared.row_mut(*column).copy_from(&gradients.row(6 * k + axis));
            }
        }
        by_shared
    }
}
