//! Radial and tangential distortion after Brown (1971), coefficients in
//! OpenCV's order `k1 k2 p1 p2 k3`.

use nalgebra::{Matrix2, SMatrix, Vector2};

use super::lens::Distorted;

/// Distorts a point of the plane z = 1. `None` where the radial function no
/// longer grows with the radius: there the model shows two rays at one pixel.
pub(super) fn distort(p: &Vector2<f64>, k: &[f64; 5]) -> Option<Distorted> {
    let [k1, k2, p1, p2, k3] = *k;
    let (x, y) = (p.x, p.y);
    let r2 = x * x + y * y;
    let radial = 1.0 + r2 * (k1 + r2 * (k2 + r2 * k3));
    let slope = k1 + r2 * (2.0 * k2 + r2 * 3.0 * k3);
    if !radial.is_finite() || radial + 2.0 * r2 * slope <= 0.0 || folds_within(r2, k1, k2, k3) {
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

/// Whether the radial slope `1 + 3 k1 s + 5 k2 s^2 + 7 k3 s^3` reaches zero
/// for some squared radius `s` below `r2`, although it is positive at `r2`.
fn folds_within(r2: f64, k1: f64, k2: f64, k3: f64) -> bool {
    const STEPS: usize = 8;
    (1..STEPS).any(|i| {
        let s = r2 * i as f64 / STEPS as f64;
        1.0 + s * (3.0 * k1 + s * (5.0 * k2 + s * 7.0 * k3)) <= 0.0
    })
}
