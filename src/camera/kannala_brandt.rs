//! Equidistant model with a polynomial in the angle, after Kannala and Brandt
//! (2006), coefficients `k1 k2 k3 k4` as OpenCV's `fisheye` has them.

use nalgebra::{Matrix2, SMatrix, Vector2};

use super::lens::Distorted;

/// Distorts a point of the plane z = 1. `None` where the radius no longer
/// grows with the angle.
pub(super) fn distort(p: &Vector2<f64>, k: &[f64; 5]) -> Option<Distorted> {
    let [k1, k2, k3, k4, _] = *k;
    let r = p.norm();
    let theta = r.atan();
    let t2 = theta * theta;
    let bent = theta * (1.0 + t2 * (k1 + t2 * (k2 + t2 * (k3 + t2 * k4))));
    let slope = 1.0 + t2 * (3.0 * k1 + t2 * (5.0 * k2 + t2 * (7.0 * k3 + t2 * 9.0 * k4)));
    if !bent.is_finite() || slope <= 0.0 || folds_within(t2, k) {
        return None;
    }
    if r < 1e-8 {
        // theta_d / r -> 1 at the axis; every other term vanishes with r^2.
        return Some(Distorted { point: *p, d_undistorted: Matrix2::identity(), d_coefficients: SMatrix::zeros() });
    }
    let scale = bent / r;
    let d_scale = (slope / (1.0 + r * r) - scale) / r;
    let d_undistorted = Matrix2::identity() * scale + p * p.transpose() * (d_scale / r);
    let mut d_coefficients = SMatrix::<f64, 2, 5>::zeros();
    let mut power = theta;
    for i in 0..4 {
        power *= t2;
        d_coefficients.set_column(i, &(p * (power / r)));
    }
    Some(Distorted { point: p * scale, d_undistorted, d_coefficients })
}

/// First guess of the undistorted point: the equidistant model without
/// coefficients.
pub(super) fn start(distorted: &Vector2<f64>) -> Vector2<f64> {
    let theta = distorted.norm();
    if theta < 1e-9 {
        return *distorted;
    }
    distorted * (theta.min(1.5).tan() / theta)
}

/// Whether the radius stops growing for some angle below the one asked for.
fn folds_within(t2: f64, k: &[f64; 5]) -> bool {
    const STEPS: usize = 8;
    (1..STEPS).any(|i| {
        let s = t2 * i as f64 / STEPS as f64;
        1.0 + s * (3.0 * k[0] + s * (5.0 * k[1] + s * (7.0 * k[2] + s * 9.0 * k[3]))) <= 0.0
    })
}
