//! Poses and sizes of bodies that bear one marker each, with their joint
//! covariance: what a survey asks of an adjustment.

use nalgebra::{DMatrix, DVector};

use super::scene::Scene;

/// Values for each body: its step ([`crate::geom::Pose::moved`]: mm, rad) and
/// the relative size of its first marker.
pub const BODY: usize = 7;

/// Sizes of a scene's carriers and their covariance with the poses.
#[derive(Debug, Clone)]
pub struct Bodies {
    /// Found size over stated size minus one, of each carrier's first marker.
    pub stretch: Vec<f64>,
    /// Joint covariance of steps (mm, rad) and relative sizes, [`BODY`] rows
    /// for each carrier in the kit's order; zero for carriers not placed and
    /// for the steps of the one that holds the frame.
    pub covariance: DMatrix<f64>,
    /// How they move with one standard uncertainty of the common factor of all
    /// sizes; zero where there is none.
    pub by_scale: DVector<f64>,
}

impl Scene {
    /// What the photos say of a camera's lens: change of its nine parameters
    /// (in the order of [`crate::camera::Projection::d_lens`]) and their
    /// covariance, starting from the profile's own as a prior.
    pub fn calibration(&self, camera: usize) -> (DVector<f64>, DMatrix<f64>) {
        let solved = &self.linear;
        let modes = &solved.columns.cameras[camera];
        let (start, rank) = (modes.start, modes.rank());
        let change = modes.factor() * solved.state.shared.rows(start, rank);
        let unit = DMatrix::from_fn(solved.columns.shared, rank, |i, j| f64::from(u8::from(i == start + j)));
        let inverse = solved.normal.of_shared(&unit).shared.rows(start, rank).into_owned();
        let covariance = modes.factor() * inverse * modes.factor().transpose();
        (change, (&covariance + covariance.transpose()) * 0.5)
    }

    /// Poses and sizes together. The adjustment must have been made of a kit
    /// whose carriers bear one marker each; of others, the first one's size.
    pub fn bodies(&self) -> Bodies {
        let solved = &self.linear;
        let columns = &solved.columns;
        let count = self.carriers.len();
        // From the shared unknowns to steps and sizes.
        let mut of_shared = DMatrix::zeros(BODY * count, columns.shared);
        for (k, free) in columns.carriers.iter().enumerate() {
            for (axis, column) in free {
                of_shared[(BODY * k + axis, *column)] = 1.0;
            }
            for mode in columns.of_marker(k, 0) {
                of_shared[(BODY * k + BODY - 1, mode.column)] += mode.stretch;
            }
        }
        let stretch =
            (0..count).map(|k| of_shared.row(BODY * k + BODY - 1).transpose().dot(&solved.state.shared)).collect();
        let covariance = solved.normal.quadratic_of_shared(&of_shared.transpose());
        let unit = DMatrix::from_fn(columns.shared, 1, |i, _| f64::from(u8::from(Some(i) == columns.common_scale)));
        let by_scale = (&of_shared * solved.normal.of_shared(&unit).shared).column(0).into_owned();
        Bodies { stretch, covariance: (&covariance + covariance.transpose()) * 0.5, by_scale }
    }
}
