//! The Cramer-Rao bound of a marker's corners: blur, light and noise known, all edges between its cells used.

use baywitness::marker::Dictionary;
use nalgebra::{Matrix3, SMatrix, SVector, Vector2, Vector3};

/// Where a point of the pattern (0 to 8 along both axes) lies, for corners in order.
fn map(corners: &[Vector2<f64>; 4]) -> Option<Matrix3<f64>> {
    const ENDS: [(f64, f64); 4] = [(0.0, 0.0), (8.0, 0.0), (8.0, 8.0), (0.0, 8.0)];
    let (mut a, mut b) = (SMatrix::<f64, 8, 8>::zeros(), SVector::<f64, 8>::zeros());
    for (k, ((x, y), c)) in ENDS.iter().zip(corners).enumerate() {
        a.set_row(2 * k, &[*x, *y, 1.0, 0.0, 0.0, 0.0, -c.x * x, -c.x * y].into());
        a.set_row(2 * k + 1, &[0.0, 0.0, 0.0, *x, *y, 1.0, -c.y * x, -c.y * y].into());
        (b[2 * k], b[2 * k + 1]) = (c.x, c.y);
    }
    let h = a.lu().solve(&b)?;
    Some(Matrix3::new(h[0], h[1], h[2], h[3], h[4], h[5], h[6], h[7], 1.0))
}

fn project(h: &Matrix3<f64>, x: f64, y: f64) -> Vector2<f64> {
    let p = h * Vector3::new(x, y, 1.0);
    Vector2::new(p.x, p.y) / p.z
}

/// Root mean square of the corner coordinates' least standard deviations, px. Over each element of an
/// edge, the information on its place across is contrast^2 / (2 sqrt(pi) blur noise^2) per px.
pub(crate) fn bound(id: u32, corners: &[Vector2<f64>; 4], contrast: f64, blur: f64, noise: f64) -> Option<f64> {
    const STEP: f64 = 1e-4;
    let h = map(corners)?;
    let mut moved = [Matrix3::zeros(); 8];
    for (k, m) in moved.iter_mut().enumerate() {
        let mut other = *corners;
        other[k / 2][k % 2] += STEP;
        *m = map(&other)?;
    }
    let per_px = contrast * contrast / (2.0 * std::f64::consts::PI.sqrt() * blur * noise * noise);
    let mut information = SMatrix::<f64, 8, 8>::zeros();
    let mut add = |from: (f64, f64), to: (f64, f64)| {
        let (a, b) = (project(&h, from.0, from.1), project(&h, to.0, to.1));
        let (length, along) = ((b - a).norm(), (b - a).normalize());
        let (x, y) = ((from.0 + to.0) / 2.0, (from.1 + to.1) / 2.0);
        let at = project(&h, x, y);
        let across = SVector::<f64, 8>::from_fn(|k, _| ((project(&moved[k], x, y) - at) / STEP).perp(&along));
        information += across * across.transpose() * (per_px * length);
    };
    let dictionary = Dictionary::tag36h11();
    let white = |c: i32, r: i32| {
        !(0..8).contains(&c) || !(0..8).contains(&r) || dictionary.is_white(id, c as usize, r as usize)
    };
    for r in -1..8 {
        for c in -1..8 {
            let (x, y) = (f64::from(c + 1), f64::from(r + 1));
            if white(c, r) != white(c + 1, r) {
                add((x, y - 1.0), (x, y));
            }
            if white(c, r) != white(c, r + 1) {
                add((x - 1.0, y), (x, y));
            }
        }
    }
    Some((information.try_inverse()?.trace() / 8.0).sqrt())
}
