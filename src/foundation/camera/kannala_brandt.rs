//! Equidistant model with a polynomial in the angle, after Kannala and Brandt
//! (2006), coefficients `k1 k2 k3 k4` as OpenCV's `fisheye` has them.

use nalgebra::{Matrix2, SMatrix, Vector2};

use super::{
    distorted::Distorted,
    fold::{first_zero, stays_positive},
};

/// The widest angle off the axis that a point before the camera can have.
const WIDEST: f64 = std::f64::consts::FRAC_PI_2;

/// Distorts a point of the plane z = 1. `None` where the radius no longer
/// grows with the angle.
#[inline]
pub(super) fn distort(p: &Vector2<f64>, k: &[f64; 5]) -> Option<Distorted> {
    let [k1, k2, k3, k4, _] = *k;
    let r = p.norm();
    let theta = r.atan();
    let t2 = theta * theta;
    let bent = theta * (1.0 + t2 * (k1 + t2 * (k2 + t2 * (k3 + t2 * k4))));
    let slope = 1.0 + t2 * (3.0 * k1 + t2 * (5.0 * k2 + t2 * (7.0 * k3 + t2 * 9.0 * k4)));
    if !bent.is_finite() || !stays_positive(&radial_slope(k), t2) {
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

/// Coefficients of the radius's slope by the angle, in powers of the squared angle.
fn radial_slope(k: &[f64; 5]) -> [f64; 4] {
    [3.0 * k[0], 5.0 * k[1], 7.0 * k[2], 9.0 * k[3]]
}

/// The undistorted point of the plane z = 1. `None` where no ray before the
/// camera reaches it: Newton's method on the angle, kept in its bracket.
pub(super) fn undistort(distorted: &Vector2<f64>, k: &[f64; 5]) -> Option<Vector2<f64>> {
    let wanted = distorted.norm();
    if wanted < 1e-12 {
        return Some(*distorted);
    }
    let slope = radial_slope(k);
    let bent = |t: f64, t2: f64| t * (1.0 + t2 * (k[0] + t2 * (k[1] + t2 * (k[2] + t2 * k[3]))));
    let (mut low, mut high) = (0.0, first_zero(&slope, WIDEST * WIDEST).map_or(WIDEST, f64::sqrt));
    if bent(high, high * high) < wanted {
        return None;
    }
    let mut angle = wanted.min(high);
    for _ in 0..100 {
        let t2 = angle * angle;
        let excess = bent(angle, t2) - wanted;
        if excess > 0.0 {
            high = angle
        } else {
            low = angle
        }
        let rise = 1.0 + t2 * (slope[0] + t2 * (slope[1] + t2 * (slope[2] + t2 * slope[3])));
        let next = angle - excess / rise;
        let next = if next > low && next < high { next } else { f64::midpoint(low, high) };
        if (next - angle).abs() <= 1e-15 * angle {
            break;
        }
        angle = next;
    }
    Some(distorted * (angle.tan() / wanted))
}
