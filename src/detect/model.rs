//! One marker as the camera should show it: geometry, light, blur; and its pixels.

use nalgebra::{Matrix2, Matrix3, SMatrix, SVector, Vector2, Vector3};

use super::homography::{CORNERS, Homography};
use super::pattern::{CellBlur, Pattern};
use super::profile::{Profile, SHAPE};
use crate::photo::Luma;

/// Parameters of a marker: 8 of the homography, 6 of the light, 3 of the blur, its own edge offset.
pub(super) const LOCAL: usize = 18;
/// Parameters of a photo: edge profile and lens.
pub(super) const SHARED: usize = SHAPE + LENS;
/// All of them.
pub(super) const ALL: usize = LOCAL + SHARED;
/// Radial terms that bend straight lines within a marker.
pub(super) const LENS: usize = 3;

/// Length of the edges of a code and its border, sides of the marker, times two.
const EDGES: f64 = 26.0;

/// What a photo's markers have in common.
#[derive(Debug, Clone)]
pub(super) struct Common {
    pub(super) profile: Profile,
    pub(super) lens: [f64; LENS],
}

/// A pixel that takes part.
#[derive(Debug, Clone, Copy)]
pub(super) struct Pixel {
    pub(super) u: f64,
    pub(super) v: f64,
    pub(super) grey: u8,
}

/// A marker under adjustment.
#[derive(Debug, Clone)]
pub(super) struct Model {
    pattern: Pattern,
    /// Image point about which everything is expressed, and the unit of lengths, px.
    origin: Vector2<f64>,
    unit: f64,
    /// Where the origin lies from the photo's centre, in half diagonals; the half diagonal in px.
    from_axis: Vector2<f64>,
    radius: f64,
    /// Rows of the homography from (-1..1)^2 to units around the origin; the last element is 1.
    h: [f64; 8],
    /// Grey level of black at the centre and its slopes, then of white minus black.
    pub(super) light: [f64; 6],
    /// Covariance of the blur, px^2: uu, uv, vv.
    pub(super) blur: [f64; 3],
    /// What its edge profile's first parameter differs by from the photo's.
    pub(super) offset: f64,
    /// How far the last step wanted to carry a corner, px.
    pub(super) moved: f64,
    pub(super) pixels: Vec<Pixel>,
}

/// The model at one pixel.
pub(super) struct Prediction {
    /// Grey level, 0 to 255.
    pub(super) grey: f64,
    /// d grey / d parameters: the marker's, the profile's, the lens's.
    pub(super) derivatives: [f64; ALL],
}

/// What stays the same from pixel to pixel.
pub(super) struct Prepared {
    inverse: Matrix3<f64>,
    blur: Matrix2<f64>,
}

impl Model {
    /// Starts from corners and grey levels of black and white.
    pub(super) fn new(photo: &Luma, pattern: Pattern, corners: &[Vector2<f64>; 4], greys: (f64, f64)) -> Option<Self> {
        let origin = (corners[0] + corners[1] + corners[2] + corners[3]) / 4.0;
        let unit = corners.iter().map(|c| (c - origin).norm()).sum::<f64>() / 4.0;
        let middle = Vector2::new(photo.width() as f64 - 1.0, photo.height() as f64 - 1.0) / 2.0;
        let radius = middle.norm();
        let (black, white) = greys;
        let mut model = Model {
            pattern,
            origin,
            unit,
            from_axis: (origin - middle) / radius,
            radius,
            h: [0.0; 8],
            light: [black, 0.0, 0.0, white - black, 0.0, 0.0],
            blur: [0.8, 0.0, 0.8],
            offset: 0.0,
            moved: f64::INFINITY,
            pixels: Vec::new(),
        };
        model.set_corners(corners)?;
        Some(model)
    }

    /// Puts the homography through four points (the lens terms apart).
    fn set_corners(&mut self, corners: &[Vector2<f64>; 4]) -> Option<()> {
        let photo_from_cell = Homography::from_corners(corners)?.photo_from_cell;
        let cell_from_unit = Matrix3::new(4.0, 0.0, 4.0, 0.0, 4.0, 4.0, 0.0, 0.0, 1.0);
        let (o, s) = (self.origin, 1.0 / self.unit);
        let unit_from_photo = Matrix3::new(s, 0.0, -o.x * s, 0.0, s, -o.y * s, 0.0, 0.0, 1.0);
        let m = unit_from_photo * photo_from_cell * cell_from_unit;
        let m = m / m[(2, 2)];
        self.h = [m[(0, 0)], m[(0, 1)], m[(0, 2)], m[(1, 0)], m[(1, 1)], m[(1, 2)], m[(2, 0)], m[(2, 1)]];
        self.h.iter().all(|x| x.is_finite()).then_some(())
    }

    fn matrix(&self) -> Matrix3<f64> {
        let h = &self.h;
        Matrix3::new(h[0], h[1], h[2], h[3], h[4], h[5], h[6], h[7], 1.0)
    }

    /// What the lens terms add to a place, after their value and slope at the origin are taken
    /// off: displacement by each of r^2, r^4 and r^6.
    fn bend(&self, p: Vector2<f64>) -> [Vector2<f64>; LENS] {
        let (a, d) = (self.from_axis, (p - self.origin) / self.radius);
        let (s, ad, dd) = (a.norm_squared(), a.dot(&d), d.norm_squared());
        let grown = s + 2.0 * ad + dd;
        let (mut power, mut grown_power) = (1.0, 1.0);
        std::array::from_fn(|k| {
            // r^2n times the place, for n = k + 1: all of it, less value and slope at the origin.
            let slope_along = 2.0 * (k + 1) as f64 * power * ad;
            power *= s;
            grown_power *= grown;
            ((a + d) * grown_power - (a + d) * power - a * slope_along) * self.radius
        })
    }

    fn bent(&self, p: Vector2<f64>, lens: &[f64; LENS]) -> Vector2<f64> {
        self.bend(p).iter().zip(lens).map(|(b, l)| b * *l).sum()
    }

    /// The corners in the photo.
    pub(super) fn corners(&self, lens: &[f64; LENS]) -> [Vector2<f64>; 4] {
        let m = self.matrix();
        CORNERS.map(|(x, y)| {
            let p = m * Vector3::new((x - 4.0) / 4.0, (y - 4.0) / 4.0, 1.0);
            let p = self.origin + Vector2::new(p.x, p.y) * (self.unit / p.z);
            // Pixels go straight to p - bend(p); the way back is found by repetition.
            (0..4).fold(p, |bent, _| p + self.bent(bent, lens))
        })
    }

    /// d corners / d homography parameters.
    pub(super) fn corners_by_h(&self) -> SMatrix<f64, 8, 8> {
        let m = self.matrix();
        let mut j = SMatrix::zeros();
        for (k, (x, y)) in CORNERS.iter().enumerate() {
            let (x, y) = ((x - 4.0) / 4.0, (y - 4.0) / 4.0);
            let p = m * Vector3::new(x, y, 1.0);
            let s = self.unit / p.z;
            let (u, v) = (p.x / p.z, p.y / p.z);
            let rows = [[x, y, 1.0, 0.0, 0.0, 0.0, -x * u, -y * u], [0.0, 0.0, 0.0, x, y, 1.0, -x * v, -y * v]];
            for (i, row) in rows.iter().enumerate() {
                for (c, value) in row.iter().enumerate() {
                    j[(2 * k + i, c)] = s * value;
                }
            }
        }
        j
    }

    /// d corners / d lens terms.
    pub(super) fn corners_by_lens(&self, lens: &[f64; LENS]) -> SMatrix<f64, 8, LENS> {
        let mut j = SMatrix::zeros();
        for (k, c) in self.corners(lens).iter().enumerate() {
            for (i, d) in self.bend(*c).iter().enumerate() {
                j[(2 * k, i)] = d.x;
                j[(2 * k + 1, i)] = d.y;
            }
        }
        j
    }

    /// Root of the area, px.
    pub(super) fn side(&self) -> f64 {
        self.unit * std::f64::consts::SQRT_2
    }

    /// Cell coordinates of a pixel.
    pub(super) fn cell_of(&self, prepared: &Prepared, common: &Common, pixel: &Pixel) -> (f64, f64) {
        let p = Vector2::new(pixel.u, pixel.v);
        let (x, y, _) = self.locate(prepared, p - self.bent(p, &common.lens));
        (4.0 * x + 4.0, 4.0 * y + 4.0)
    }

    /// Standard deviation of the blur, px.
    pub(super) fn sigma(&self) -> f64 {
        ((self.blur[0] + self.blur[2]) / 2.0).max(0.0).sqrt()
    }

    pub(super) fn prepare(&self) -> Option<Prepared> {
        let blur = Matrix2::new(self.blur[0], self.blur[1], self.blur[1], self.blur[2]);
        Some(Prepared { inverse: self.matrix().try_inverse()?, blur })
    }

    /// Cell coordinates of a pixel and their derivatives (rows x, y; columns u, v).
    fn locate(&self, prepared: &Prepared, q: Vector2<f64>) -> (f64, f64, Matrix2<f64>) {
        let n = (q - self.origin) / self.unit;
        let g = &prepared.inverse;
        let p = g * Vector3::new(n.x, n.y, 1.0);
        let (x, y) = (p.x / p.z, p.y / p.z);
        let s = 4.0 / (p.z * self.unit);
        let j = Matrix2::new(
            (g[(0, 0)] - x * g[(2, 0)]) * s,
            (g[(0, 1)] - x * g[(2, 1)]) * s,
            (g[(1, 0)] - y * g[(2, 0)]) * s,
            (g[(1, 1)] - y * g[(2, 1)]) * s,
        );
        (x, y, j)
    }

    /// The grey level at a pixel and how it depends on everything.
    pub(super) fn predict(&self, prepared: &Prepared, common: &Common, pixel: &Pixel) -> Prediction {
        let p = Vector2::new(pixel.u, pixel.v);
        let bow_by_lens = self.bend(p);
        let q = p - bow_by_lens.iter().zip(&common.lens).map(|(b, l)| b * *l).sum::<Vector2<f64>>();
        let (x, y, j) = self.locate(prepared, q);
        let s = j * prepared.blur * j.transpose();
        let (sx, sy) = (s[(0, 0)].sqrt(), s[(1, 1)].sqrt());
        let blur = CellBlur { x: sx, y: sy, correlation: s[(0, 1)] / (sx * sy) };
        let shade = self.pattern.shade(4.0 * x + 4.0, 4.0 * y + 4.0, blur);
        let contrast = self.light[3] + self.light[4] * x + self.light[5] * y;
        let black = self.light[0] + self.light[1] * x + self.light[2] * y;
        let bend = common.profile.moved(self.offset).bend(shade.value);
        let scale = contrast * bend.slope;
        let gradient = j.transpose() * Vector2::new(shade.x, shade.y) * scale;
        let bow = j.transpose() * Matrix2::new(shade.xx, shade.xy, shade.xy, shade.yy) * j * scale;
        let w = self.h[6] * x + self.h[7] * y + 1.0;
        let (a, b) = (-gradient.x * self.unit / w, -gradient.y * self.unit / w);
        let c = gradient.dot(&(q - self.origin)) / w;
        let (e, t) = (bend.value, bend.by_shape.map(|t| t * contrast));
        let derivatives = [
            a * x,
            a * y,
            a,
            b * x,
            b * y,
            b,
            c * x,
            c * y,
            1.0,
            x,
            y,
            e,
            x * e,
            y * e,
            0.5 * bow[(0, 0)],
            bow[(0, 1)],
            0.5 * bow[(1, 1)],
            t[0],
            t[0],
            t[1],
            t[2],
            t[3],
            t[4],
            t[5],
            -gradient.dot(&bow_by_lens[0]),
            -gradient.dot(&bow_by_lens[1]),
            -gradient.dot(&bow_by_lens[2]),
        ];
        Prediction { grey: black + contrast * e, derivatives }
    }

    /// Moves the parameters, within reason.
    pub(super) fn step(&mut self, delta: &SVector<f64, LOCAL>) {
        let moved = self.corners_by_h() * delta.fixed_rows::<8>(0);
        let most = moved.amax();
        self.moved = most;
        let limit = (0.08 * self.unit).max(0.4);
        let scale = if most > limit { limit / most } else { 1.0 };
        for (h, d) in self.h.iter_mut().zip(delta.iter()) {
            *h += d * scale;
        }
        for (l, d) in self.light.iter_mut().zip(delta.iter().skip(8)) {
            *l += d * scale;
        }
        let before = self.blur;
        for (k, (b, d)) in self.blur.iter_mut().zip(delta.iter().skip(14)).enumerate() {
            *b = if k == 1 { *b + d } else { (*b + d).clamp(before[k] * 0.5, before[k] * 2.0).clamp(0.05, 50.0) };
        }
        self.offset += delta[17].clamp(-0.1, 0.1);
        let limit = 0.9 * (self.blur[0] * self.blur[2]).sqrt();
        self.blur[1] = self.blur[1].clamp(-limit, limit);
    }

    /// Takes some `most` pixels near edges, and a few flat ones for the light.
    pub(super) fn choose_pixels(&mut self, photo: &Luma, lens: &[f64; LENS], most: f64) -> Option<()> {
        let corners = self.corners(lens);
        let prepared = self.prepare()?;
        let grown = corners.map(|c| c + (c - self.origin) * 0.25);
        let low = grown[0].inf(&grown[1]).inf(&grown[2].inf(&grown[3]));
        let high = grown[0].sup(&grown[1]).sup(&grown[2].sup(&grown[3]));
        let inside = |x: f64, most: usize| x.clamp(0.0, most as f64 - 1.0) as usize;
        let (u0, u1) = (inside(low.x, photo.width()), inside(high.x + 1.0, photo.width()));
        let (v0, v1) = (inside(low.y, photo.height()), inside(high.y + 1.0, photo.height()));
        let sigma = self.sigma();
        let straight = lens.iter().all(|l| l.abs() < 1e-12);
        let (reach, steep) = (2.6 * sigma + 0.5, 1.4 * sigma + 0.3);
        // About the share of pixels near edges; a lattice thins larger markers evenly.
        let area = super::quad::area(&corners).abs();
        let near = area * ((reach + steep) / 2.0 * EDGES / area.sqrt()).min(1.0);
        let stride = ((near / most).round() as usize).max(1);
        let shift = lattice_shift(stride);
        // Cells to a pixel, along x and y: the most of any corner.
        let scales =
            corners.map(|c| self.locate(&prepared, c).2).map(|j| Vector2::new(j.row(0).norm(), j.row(1).norm()));
        let scale = scales[0].sup(&scales[1]).sup(&scales[2].sup(&scales[3]));
        // What lies beyond the margin must not shine through.
        let margin = scale.map(|s| (1.0 - 2.0 * sigma * s).clamp(0.35, 0.8));
        let (near, steep) = (scale * reach, scale * steep);
        self.pixels.clear();
        for v in v0..=v1 {
            let row = photo.row(v);
            let first = u0 + (stride - (u0 + v * shift) % stride) % stride;
            for u in (first..=u1).step_by(stride) {
                let p = Vector2::new(u as f64, v as f64);
                let q = if straight { p } else { p - self.bent(p, lens) };
                let n = (q - self.origin) / self.unit;
                let at = prepared.inverse * Vector3::new(n.x, n.y, 1.0);
                let (cx, cy) = (4.0 * at.x / at.z + 4.0, 4.0 * at.y / at.z + 4.0);
                let beyond = |c: f64, margin: f64| c < -margin || c > 8.0 + margin;
                if beyond(cx, margin.x) || beyond(cy, margin.y) {
                    continue;
                }
                // Where grey levels run steeply there is most to learn.
                let turn = u / stride + 3 * v;
                if self.pattern.is_near_edge(cx, cy, steep.x, steep.y)
                    || turn.is_multiple_of(2) && self.pattern.is_near_edge(cx, cy, near.x, near.y)
                    || turn.is_multiple_of(7)
                {
                    self.pixels.push(Pixel { u: u as f64, v: v as f64, grey: row[u] });
                }
            }
        }
        (self.pixels.len() >= 60).then_some(())
    }
}

/// Shift of the lattice of thinned pixels from row to row: near the golden section of the stride,
/// and without a common divisor, so that every column has its turn.
fn lattice_shift(stride: usize) -> usize {
    let common = |mut a: usize, mut b: usize| {
        while b > 0 {
            (a, b) = (b, a % b);
        }
        a
    };
    let wanted = (0.382 * stride as f64).round() as usize;
    (wanted..wanted + stride).find(|s| common(*s, stride) == 1).unwrap_or(1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn thinned_pixels_lie_in_every_column() {
        for stride in 1..60 {
            let shift = lattice_shift(stride);
            let columns: std::collections::BTreeSet<_> = (0..stride).map(|v| v * shift % stride).collect();
            assert_eq!(columns.len(), stride, "{stride}: {shift}");
        }
    }
}
