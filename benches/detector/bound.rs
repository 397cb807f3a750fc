//! The Cramer-Rao bound of a marker's corners: pattern, light, blur and noise known, every pixel used.

use baywitness::marker::Dictionary;
use nalgebra::{Matrix3, SMatrix, SVector, Vector2, Vector3};

/// Step along edges, px, and standard deviations at which a blurred edge ends.
const STEP_PX: f64 = 0.125;
const END: f64 = 4.0;

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

/// How the blurred pattern (black 0, white 1) around a marker changes with its corners' coordinates.
struct Sensitivity {
    corner: (i32, i32),
    columns: usize,
    by_corners: Vec<SVector<f64, 8>>,
}

impl Sensitivity {
    fn new(corners: &[Vector2<f64>; 4], blur: f64) -> Self {
        let (low, high) = corners.iter().fold((corners[0], corners[0]), |(low, high), c| (low.inf(c), high.sup(c)));
        let rim = END * blur + 2.0;
        let (low, high) = (low.map(|x| (x - rim).floor() as i32), high.map(|x| (x + rim).ceil() as i32));
        let (columns, rows) = ((high.x - low.x + 1) as usize, (high.y - low.y + 1) as usize);
        Sensitivity { corner: (low.x, low.y), columns, by_corners: vec![SVector::zeros(); columns * rows] }
    }

    /// An element of an edge moves: the grey around changes by the blur's density there.
    fn add(&mut self, at: Vector2<f64>, blur: f64, moved: &SVector<f64, 8>) {
        let reach = (END * blur).ceil() as i32;
        let (u0, v0) = (at.x.round() as i32, at.y.round() as i32);
        for v in v0 - reach..=v0 + reach {
            for u in u0 - reach..=u0 + reach {
                let d2 = (f64::from(u) - at.x).powi(2) + (f64::from(v) - at.y).powi(2);
                let density = (-0.5 * d2 / (blur * blur)).exp() / (std::f64::consts::TAU * blur * blur);
                let index = (v - self.corner.1) as usize * self.columns + (u - self.corner.0) as usize;
                self.by_corners[index] += moved * density;
            }
        }
    }
}

/// Root mean square of the corner coordinates' least standard deviations, px.
pub(crate) fn bound(id: u32, corners: &[Vector2<f64>; 4], contrast: f64, blur: f64, noise: f64) -> Option<f64> {
    const STEP: f64 = 1e-4;
    let h = map(corners)?;
    let mut moved = [Matrix3::zeros(); 8];
    for (k, m) in moved.iter_mut().enumerate() {
        let mut other = *corners;
        other[k / 2][k % 2] += STEP;
        *m = map(&other)?;
    }
    let mut sensitivity = Sensitivity::new(corners, blur);
    // An edge with white on its one side counts up, on its other side down.
    let mut edge = |from: (f64, f64), to: (f64, f64), sign: f64| {
        let (a, b) = (project(&h, from.0, from.1), project(&h, to.0, to.1));
        let along = (b - a).normalize();
        let count = ((b - a).norm() / STEP_PX).ceil();
        for i in 0..count as usize {
            let t = (i as f64 + 0.5) / count;
            let (x, y) = (from.0 + (to.0 - from.0) * t, from.1 + (to.1 - from.1) * t);
            let at = project(&h, x, y);
            let length = (b - a).norm() / count;
            let across = SVector::<f64, 8>::from_fn(|k, _| ((project(&moved[k], x, y) - at) / STEP).perp(&along));
            sensitivity.add(at, blur, &(across * (sign * length)));
        }
    };
    let dictionary = Dictionary::tag36h11();
    let white = |c: i32, r: i32| {
        !(0..8).contains(&c) || !(0..8).contains(&r) || dictionary.is_white(id, c as usize, r as usize)
    };
    let sign = |first: bool| if first { 1.0 } else { -1.0 };
    for r in -1..8 {
        for c in -1..8 {
            let (x, y) = (f64::from(c + 1), f64::from(r + 1));
            if white(c, r) != white(c + 1, r) {
                edge((x, y - 1.0), (x, y), sign(white(c, r)));
            }
            if white(c, r) != white(c, r + 1) {
                edge((x, y), (x - 1.0, y), sign(white(c, r)));
            }
        }
    }
    let information: SMatrix<f64, 8, 8> = sensitivity.by_corners.iter().map(|s| s * s.transpose()).sum();
    let information = information * (contrast / noise).powi(2);
    Some((information.try_inverse()?.trace() / 8.0).sqrt())
}
