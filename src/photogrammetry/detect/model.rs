//! One marker as the camera should show it: geometry, light, blur; and its pixels.

use nalgebra::{Matrix3, SMatrix, SVector, Vector2, Vector3};

use super::gain::{Gain, without_shoulder};
use super::halo::Halo;
use super::homography::{CORNERS, Homography};
use super::pattern::Pattern;
use super::profile::SHAPE;
use super::shadow::Shadow;
use super::shared::{Common, LENS, SHARED};
use crate::photo::Luma;

/// Parameters of a marker: 8 of the homography, 6 of the light, 3 of the blur, its own edge offset.
pub(super) const LOCAL: usize = 18;
/// All of them.
pub(super) const ALL: usize = LOCAL + SHARED;
/// Where the light's parameters begin among a marker's own.
pub(super) const LIGHT: usize = 8;

/// A pixel that takes part.
#[derive(Debug, Clone, Copy)]
pub(super) struct Pixel {
    pub(super) u: u16,
    pub(super) v: u16,
    /// Display levels, 0 to 255; other than whole where a shadow was evened out.
    pub(super) grey: f32,
}

/// A marker under adjustment.
#[derive(Debug, Clone)]
pub(super) struct Model {
    pattern: Pattern,
    /// Image point about which everything is expressed, and the unit of lengths, px.
    pub(super) origin: Vector2<f64>,
    pub(super) unit: f64,
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
    pub(super) shadow: Option<Shadow>,
    /// Where the photo's maker changed the light from place to place.
    pub(super) gain: Option<Gain>,
}

/// What stays the same from pixel to pixel, in single precision.
pub(super) struct Fixed {
    /// The middle, px.
    pub(super) origin: [f64; 2],
    pub(super) unit: f32,
    pub(super) from_axis: [f32; 2],
    pub(super) radius: f32,
    pub(super) lens: [f32; LENS],
    /// Rows of the map from units around the origin to (-1..1)^2.
    pub(super) inverse: [f32; 9],
    pub(super) h: [f32; 8],
    pub(super) light: [f32; 6],
    pub(super) blur: [f32; 3],
    /// The photo's edge profile with the marker's own offset.
    pub(super) shape: [f32; SHAPE],
    pub(super) halo: Option<Halo>,
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
            shadow: None,
            gain: None,
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

    /// From (-1..1)^2 to units around the origin.
    pub(super) fn matrix(&self) -> Matrix3<f64> {
        let h = &self.h;
        Matrix3::new(h[0], h[1], h[2], h[3], h[4], h[5], h[6], h[7], 1.0)
    }

    /// Last row of the homography, but for its last element, 1.
    pub(super) fn perspective(&self) -> [f32; 2] {
        [self.h[6] as f32, self.h[7] as f32]
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

    /// Least and greatest coordinates of the pixels that take part.
    pub(super) fn extent(&self) -> ([u16; 2], [u16; 2]) {
        self.pixels.iter().fold(([u16::MAX; 2], [0; 2]), |(low, high), p| {
            ([low[0].min(p.u), low[1].min(p.v)], [high[0].max(p.u), high[1].max(p.v)])
        })
    }

    /// Standard deviation of the blur, px.
    pub(super) fn sigma(&self) -> f64 {
        ((self.blur[0] + self.blur[2]) / 2.0).max(0.0).sqrt()
    }

    pub(super) fn pattern(&self) -> &Pattern {
        &self.pattern
    }

    /// `None` where the homography has no inverse.
    pub(super) fn fixed(&self, common: &Common) -> Option<Fixed> {
        let inverse = self.matrix().try_inverse()?;
        let mut shape = common.profile.0.map(|a| a as f32);
        shape[0] += self.offset as f32;
        Some(Fixed {
            origin: self.origin.into(),
            unit: self.unit as f32,
            from_axis: [self.from_axis.x as f32, self.from_axis.y as f32],
            radius: self.radius as f32,
            lens: common.lens.map(|l| l as f32),
            inverse: std::array::from_fn(|i| inverse[(i / 3, i % 3)] as f32),
            h: self.h.map(|h| h as f32),
            light: self.light.map(|l| l as f32),
            blur: self.blur.map(|b| b as f32),
            shape,
            halo: common.sharpened.then(|| Halo::new(common, self.sigma())),
        })
    }

    /// From now on each patch has a gain of its own with such a spread.
    pub(super) fn free_gain(&mut self, spread: f32) {
        let (black, white) = (self.light[0], self.light[0] + self.light[3]);
        let level = without_shoulder(black);
        let scale = (without_shoulder(white) - level) / (white - black);
        self.light[0] = level;
        self.light[1..].iter_mut().for_each(|l| *l *= scale);
        self.gain = Some(Gain { spread, held: [self.light[0], self.light[3]] });
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
}
