//! What a distortion model makes of a point.

use nalgebra::{Matrix2, SMatrix, Vector2};

/// A point on the plane z = 1 after distortion, with derivatives by the
/// undistorted point and by the coefficients.
pub(super) struct Distorted {
    pub(super) point: Vector2<f64>,
    pub(super) d_undistorted: Matrix2<f64>,
    pub(super) d_coefficients: SMatrix<f64, 2, 5>,
}
