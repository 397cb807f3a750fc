//! The normal equations of one marker, and what is left of them for the common parameters (Schur complement).

use nalgebra::{SMatrix, SVector};

use super::legendre::{TERMS, Terms};
use super::model::{ALL, LIGHT, LOCAL, Model};
use super::shared::SHARED;

/// How far blur differs from a round one (1 sigma, px^2).
const BLUR_SPREAD: f64 = 0.3;

/// How far a marker's edges are offset from the photo's (1 sigma, units of the profile).
const OFFSET_SPREAD: f64 = 0.06;
/// Its place among a marker's own parameters.
pub(super) const OFFSET: usize = 17;

/// Normal equations of one marker.
pub(super) struct Normal {
    pub(super) matrix: SMatrix<f64, ALL, ALL>,
    pub(super) right: SVector<f64, ALL>,
    /// Robust standard deviation of the residuals, grey levels.
    pub(super) noise: f64,
    /// Share of pixels that the model does not explain.
    pub(super) misfit: f64,
    /// How the gain seems to spread from patch to patch, and how many patches say so, where it was looked for.
    pub(super) gain: Option<(f32, usize)>,
    /// Those of a warp's terms, where it was looked for.
    pub(super) sums: Option<Box<Sums>>,
}

/// Products of the derivatives by a warp's terms: with each other, with all parameters', with the residuals.
pub(super) struct Sums {
    pub(super) own: SMatrix<f64, TERMS, TERMS>,
    pub(super) mixed: SMatrix<f64, TERMS, ALL>,
    pub(super) right: Terms,
}

/// A reduced marker: what is left for the common parameters.
pub(super) struct Reduced {
    /// Covariance of the marker's own parameters, the common ones known.
    pub(super) inverse: SMatrix<f64, LOCAL, LOCAL>,
    pub(super) mixed: SMatrix<f64, LOCAL, SHARED>,
    /// As in the normal equations.
    pub(super) noise: f64,
    pub(super) misfit: f64,
    pub(super) right: SVector<f64, LOCAL>,
}

/// Takes a marker's own parameters out of its normal equations.
pub(super) fn reduce(model: &Model, normal: &Normal) -> Option<Reduced> {
    let mut own = normal.matrix.fixed_view::<LOCAL, LOCAL>(0, 0).into_owned();
    let mut right = normal.right.fixed_rows::<LOCAL>(0).into_owned();
    // Round blur unless the pixels say otherwise.
    let weight = BLUR_SPREAD.powi(-2);
    let (uu, uv, vv) = (14, 15, 16);
    let difference = model.blur[0] - model.blur[2];
    own[(uu, uu)] += weight;
    own[(vv, vv)] += weight;
    own[(uu, vv)] -= weight;
    own[(vv, uu)] -= weight;
    right[uu] -= weight * difference;
    right[vv] += weight * difference;
    own[(uv, uv)] += 4.0 * weight;
    right[uv] -= 4.0 * weight * model.blur[1];
    for (k, weight, pull) in model.gain.iter().flat_map(|gain| gain.prior(&model.light)) {
        own[(LIGHT + k, LIGHT + k)] += weight;
        right[LIGHT + k] += pull;
    }
    own[(OFFSET, OFFSET)] += OFFSET_SPREAD.powi(-2);
    right[OFFSET] -= model.offset * OFFSET_SPREAD.powi(-2);
    let inverse = own.cholesky()?.inverse();
    Some(Reduced {
        inverse,
        mixed: normal.matrix.fixed_view::<LOCAL, SHARED>(0, LOCAL).into_owned(),
        noise: normal.noise,
        misfit: normal.misfit,
        right,
    })
}

impl Reduced {
    /// Moves a marker's parameters as the common ones' step has it.
    pub(super) fn step(&self, model: &mut Model, shared: &SVector<f64, SHARED>) {
        let own = self.inverse * (self.right - self.mixed * shared);
        model.step(&own);
    }

    /// How the marker's own parameters follow the common ones.
    pub(super) fn by_shared(&self) -> SMatrix<f64, LOCAL, SHARED> {
        -self.inverse * self.mixed
    }
}
