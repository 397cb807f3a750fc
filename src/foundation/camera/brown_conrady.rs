//! Radial and tangential distortion after Brown (1971), coefficients in
//! OpenCV's order `k1 k2 p1 p2 k3`.

use nalgebra::{Matrix2, SMatrix, Vector2};

use super::{
    distorted::Distorted,
    fold::{first_zero, stays_positive},
};

/// Squared radius of the widest ray that the inverse looks at: 84 degrees off the axis.
const WIDEST_R2: f64 = 100.0;

/// Distorts a point of the plane z = 1. `None` where the radial function no
/// longer grows with the radius: there the model shows two rays at one pixel.
#[inline]
pub(super) fn distort(p: &Vector2<f64>, k: &[f64; 5]) -> Option<Distorted> {
    let [k1, k2, p1, p2, k3] = *k;
    let (x, y) = (p.x, p.y);
    let r2 = x * x + y * y;
    let radial = 1.0 + r2 * (k1 + r2 * (k2 + r2 * k3));
    let slope = k1 + r2 * (2.0 * k2 + r2 * 3.0 * k3);
    if !radial.is_finite() || !stays_positive(&radial_slope(k), r2) {
        return None;
    }
    let point = Vector2::new(
        x * radial + 2.0 * p1 * x * y + p2 * (r2 + 2.0 * x * x),
        y * radial + p1 * (r2 + 2.0 * y * y) + 2.0 * p2 * x * y,
    );
    let cross = 2.0 * x * y * slope + 2.0 * p1 * x + 2.0 * p2 * y;
    let d_undistorted = Matrix2::new(
        radial + 2.0 * x * x * slope + 2.0 * p1 * y + 6.0 * p2 * x,
        cross,
        cross,
        radial + 2.0 * y * y * slope + 6.0 * p1 * y + 2.0 * p2 * x,
    );
    let (r4, r6) = (r2 * r2, r2 * r2 * r2);
    let d_coefficients = SMatrix::<f64, 2, 5>::from_row_slice(&[
        x * r2,
        x * r4,
        2.0 * x * y,
        r2 + 2.0 * x * x,
        x * r6,
        y * r2,
        y * r4,
        r2 + 2.0 * y * y,
        2.0 * x * y,
        y * r6,
    ]);
    Some(Distorted { point, d_undistorted, d_coefficients })
}

/// Coefficients of the radius's slope by the radius, `1 + 3 k1 s + 5 k2 s^2 + 7
/// k3 s^3` with s the squared radius.
fn radial_slope(k: &[f64; 5]) -> [f64; 3] {
    [3.0 * k[0], 5.0 * k[1], 7.0 * k[4]]
}

/// The undistorted point of the plane z = 1. `None` where no ray reaches it.
pub(super) fn undistort(distorted: &Vector2<f64>, k: &[f64; 5]) -> Option<Vector2<f64>> {
    newton(distorted, *distorted, k).or_else(|| newton(distorted, start_within(distorted, k), k))
}

/// Newton's method with halved steps where a whole one does not come nearer.
fn newton(wanted: &Vector2<f64>, start: Vector2<f64>, k: &[f64; 5]) -> Option<Vector2<f64>> {
    let mut p = start;
    let mut here = distort(&p, k)?;
    for _ in 0..50 {
        let miss = wanted - here.point;
        let mut step = here.d_undistorted.try_inverse()? * miss;
        let settled = step.norm() < 1e-14 * (1.0 + p.norm());
        let next = (0..30).find_map(|_| {
            let there = distort(&(p + step), k).filter(|d| settled || (wanted - d.point).norm() < miss.norm());
            if there.is_none() {
                step *= 0.5;
            }
            there
        });
        // No step comes nearer: either the last digit is reached or the way is blocked.
        let Some(next) = next else { break };
        p += step;
        here = next;
        if settled {
            break;
        }
    }
    ((here.point - wanted).norm() < 1e-12).then_some(p)
}

/// A point whose radius the model bends to that of `distorted`, tangential
/// terms left out: a start for the inverse where the plain one fails.
fn start_within(distorted: &Vector2<f64>, k: &[f64; 5]) -> Vector2<f64> {
    let wanted = distorted.norm();
    let bent = |r: f64| r * (1.0 + r * r * (k[0] + r * r * (k[1] + r * r * k[4])));
    let (mut low, mut high) = (0.0, first_zero(&radial_slope(k), WIDEST_R2).unwrap_or(WIDEST_R2).sqrt());
    for _ in 0..60 {
        let middle = f64::midpoint(low, high);
        if bent(middle) < wanted { low = middle } else { high = middle }
    }
    distorted * (low / wanted.max(f64::MIN_POSITIVE))
}
