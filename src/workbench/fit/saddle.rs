//! Saddle points of brightness: where four squares of a chessboard meet.

use nalgebra::{Matrix2, Vector2};

/// Samples on the ring that tells a saddle from an edge.
const RING: usize = 32;
/// Radius of the ring, px.
const RING_PX: f64 = 5.0;
/// Part of the strongest response that a saddle must have.
const LEAST_RESPONSE: f32 = 0.02;

/// A grey picture in floating point.
#[derive(Debug, Clone)]
pub(super) struct Grey {
    pub(super) width: usize,
    pub(super) height: usize,
    pub(super) pixels: Vec<f32>,
}

impl Grey {
    fn at(&self, u: usize, v: usize) -> f32 {
        self.pixels[v * self.width + u]
    }

    /// Bilinear value; the border goes on outside.
    pub(super) fn value(&self, u: f64, v: f64) -> f64 {
        let u = u.clamp(0.0, (self.width - 1) as f64 - 1e-6);
        let v = v.clamp(0.0, (self.height - 1) as f64 - 1e-6);
        let (i, j) = (u as usize, v as usize);
        let (a, b) = (u - i as f64, v - j as f64);
        let right = (i + 1).min(self.width - 1);
        let below = (j + 1).min(self.height - 1);
        let top = f64::from(self.at(i, j)) * (1.0 - a) + f64::from(self.at(right, j)) * a;
        let bottom = f64::from(self.at(i, below)) * (1.0 - a) + f64::from(self.at(right, below)) * a;
        top * (1.0 - b) + bottom * b
    }

    /// Half the size, each pixel the mean of four. Pixel centre (u, v) of the
    /// result lies at (2 u + 0.5, 2 v + 0.5) here.
    pub(super) fn halved(&self) -> Grey {
        let (width, height) = (self.width / 2, self.height / 2);
        let mut pixels = Vec::with_capacity(width * height);
        for v in 0..height {
            for u in 0..width {
                let sum = self.at(2 * u, 2 * v)
                    + self.at(2 * u + 1, 2 * v)
                    + self.at(2 * u, 2 * v + 1)
                    + self.at(2 * u + 1, 2 * v + 1);
                pixels.push(sum / 4.0);
            }
        }
        Grey { width, height, pixels }
    }

    /// Blurred twice with 1 2 3 2 1 in both directions (sigma about 1.7 px).
    fn blurred(&self) -> Grey {
        let mut out = self.clone();
        for _ in 0..2 {
            out = out.smoothed(1, 0).smoothed(0, 1);
        }
        out
    }

    /// With 1 2 3 2 1 along the rows (1, 0) or the columns (0, 1); the border goes on outside.
    fn smoothed(&self, du: usize, dv: usize) -> Grey {
        const WEIGHTS: [f32; 5] = [1.0 / 9.0, 2.0 / 9.0, 3.0 / 9.0, 2.0 / 9.0, 1.0 / 9.0];
        let (width, height) = (self.width, self.height);
        let row = |v: usize| &self.pixels[v * width..(v + 1) * width];
        let mut pixels = vec![0.0; self.pixels.len()];
        // Whole rows at a time, without a question at each pixel.
        for (v, out) in pixels.chunks_exact_mut(width).enumerate() {
            for (k, w) in WEIGHTS.iter().enumerate() {
                let from = row((v + k * dv).saturating_sub(2 * dv).min(height - 1));
                let shift = k * du;
                let (first, last) = (2 * du - shift.min(2 * du), width - shift.saturating_sub(2 * du));
                for o in &mut out[..first] {
                    *o += w * from[0];
                }
                let start = first + shift - 2 * du;
                for (o, f) in out[first..last].iter_mut().zip(&from[start..]) {
                    *o += w * f;
                }
                for o in &mut out[last..] {
                    *o += w * from[width - 1];
                }
            }
        }
        Grey { width, height, pixels }
    }
}

/// Saddle points to about a pixel, strongest first.
pub(super) fn saddles(picture: &Grey, most: usize) -> Vec<Vector2<f64>> {
    const MARGIN: usize = 6;
    if picture.width < 4 * MARGIN || picture.height < 4 * MARGIN {
        return Vec::new();
    }
    let smooth = picture.blurred();
    let response = response(&smooth);
    let strongest = response.iter().copied().fold(0.0_f32, f32::max);
    let at = |u: usize, v: usize| response[v * picture.width + u];
    let mut found: Vec<(f32, Vector2<f64>)> = Vec::new();
    let least = (LEAST_RESPONSE * strongest).max(f32::MIN_POSITIVE);
    for v in MARGIN..picture.height - MARGIN {
        let row = &response[v * picture.width..(v + 1) * picture.width];
        for (u, &here) in row.iter().enumerate().take(picture.width - MARGIN).skip(MARGIN) {
            // Most pixels are weak, most others lower than a neighbour.
            if here < least || here < row[u - 1] || here < row[u + 1] {
                continue;
            }
            let highest = (v - 3..=v + 3).all(|j| (u - 3..=u + 3).all(|i| at(i, j) < here || (i, j) == (u, v)));
            let place = Vector2::new(u as f64, v as f64);
            if highest && is_saddle(&smooth, &place) {
                found.push((here, place));
            }
        }
    }
    found.sort_by(|a, b| b.0.total_cmp(&a.0));
    found.into_iter().take(most).map(|(_, place)| place).collect()
}

/// Minus the determinant of the second derivatives: positive at a saddle.
fn response(p: &Grey) -> Vec<f32> {
    let width = p.width;
    let mut all = vec![0.0; p.pixels.len()];
    let row = |v: usize| &p.pixels[v * width..(v + 1) * width];
    for v in 1..p.height - 1 {
        let out = &mut all[v * width + 1..(v + 1) * width - 1];
        let near = row(v - 1).windows(3).zip(row(v).windows(3)).zip(row(v + 1).windows(3));
        for (out, ((above, here), below)) in out.iter_mut().zip(near) {
            let uu = here[2] - 2.0 * here[1] + here[0];
            let vv = below[1] - 2.0 * here[1] + above[1];
            let uv = (below[2] - below[0] - above[2] + above[0]) / 4.0;
            *out = uv * uv - uu * vv;
        }
    }
    all
}

/// Around a chessboard corner brightness changes four times, and opposite
/// places are alike.
fn is_saddle(p: &Grey, at: &Vector2<f64>) -> bool {
    let angle = |k: usize| k as f64 / RING as f64 * std::f64::consts::TAU;
    let ring: Vec<f64> =
        (0..RING).map(|k| p.value(at.x + RING_PX * angle(k).cos(), at.y + RING_PX * angle(k).sin())).collect();
    let mean = ring.iter().sum::<f64>() / RING as f64;
    let changes = (0..RING).filter(|k| (ring[*k] > mean) != (ring[(k + 1) % RING] > mean)).count();
    let alike: f64 = (0..RING).map(|k| (ring[k] - mean) * (ring[(k + RING / 2) % RING] - mean)).sum();
    let all: f64 = ring.iter().map(|r| (r - mean) * (r - mean)).sum();
    changes == 4 && alike > 0.5 * all
}

/// The point that all gradients around it are normal to the way to (Förstner
/// and Gülch 1987), within `radius` px. `None` where it runs away or there is none.
pub(super) fn refined(p: &Grey, start: &Vector2<f64>, radius: usize) -> Option<Vector2<f64>> {
    let r = radius as isize;
    let mut here = *start;
    for _ in 0..30 {
        let (mut normal, mut right) = (Matrix2::zeros(), Vector2::zeros());
        for j in -r..=r {
            for i in -r..=r {
                let (u, v) = (here.x + i as f64, here.y + j as f64);
                let gradient =
                    Vector2::new(p.value(u + 1.0, v) - p.value(u - 1.0, v), p.value(u, v + 1.0) - p.value(u, v - 1.0));
                let weight = (-((i * i + j * j) as f64) / (r * r) as f64).exp();
                let square = gradient * gradient.transpose() * weight;
                normal += square;
                right += square * Vector2::new(i as f64, j as f64);
            }
        }
        let step = normal.try_inverse()? * right;
        here += step;
        if !step.norm().is_finite() || (here - start).norm() > radius as f64 {
            return None;
        }
        if step.norm() < 1e-3 {
            return Some(here);
        }
    }
    None
}
