//! The same lens told by the other model: how far two formulas that fit one
//! lens differ between and beyond the places where it was fitted.

use nalgebra::{DMatrix, DVector, Vector2};

use super::{Lens, LensModel};

/// Radii at which the two are matched.
const RADII: usize = 40;

/// A radial curve of the other model through a lens's own.
#[derive(Debug, Clone, PartialEq)]
pub struct OtherModel {
    centre_px: [f64; 2],
    focal_px: f64,
    /// Coefficients of the odd powers of angle (or of the tangent), px.
    coefficients: Vec<f64>,
    /// The other model's.
    model: LensModel,
    own: Lens,
    rms_px: f64,
}

impl OtherModel {
    /// Fits the other model's focal length and radial coefficients to a lens
    /// over a whole picture, every part of its area with the same weight.
    /// `None` where the picture reaches beyond the lens.
    pub fn of(lens: &Lens, image_size_px: [u32; 2]) -> Option<OtherModel> {
        let centre = Vector2::from(lens.centre_px);
        let [w, h] = image_size_px.map(f64::from);
        let corners = [[0.0, 0.0], [w, 0.0], [0.0, h], [w, h]];
        let reach = corners.iter().map(|c| (Vector2::from(*c) - centre).norm()).fold(0.0, f64::max);
        let model = match lens.model {
            LensModel::BrownConrady => LensModel::KannalaBrandt,
            LensModel::KannalaBrandt => LensModel::BrownConrady,
        };
        let terms = if model == LensModel::KannalaBrandt { 5 } else { 4 };
        let mut rows = Vec::new();
        let mut wanted = Vec::new();
        for i in 1..=RADII {
            let radius = reach * i as f64 / RADII as f64;
            let Some(tangent) = tangent(lens, radius) else { break };
            let x = if model == LensModel::KannalaBrandt { tangent.atan() } else { tangent };
            let weight = radius.sqrt();
            rows.extend((0..terms).map(|k| weight * x.powi(2 * k + 1)));
            wanted.push(weight * radius);
        }
        if wanted.len() < RADII / 2 {
            return None;
        }
        let a = DMatrix::from_row_slice(wanted.len(), terms as usize, &rows);
        let wanted = DVector::from_vec(wanted);
        let solved = a.clone().svd(true, true).solve(&wanted, 1e-12).ok()?;
        let weights: f64 = (1..=wanted.len()).map(|i| reach * i as f64 / RADII as f64).sum();
        let rms_px = ((&a * &solved - &wanted).norm_squared() / weights).sqrt();
        Some(OtherModel {
            centre_px: lens.centre_px,
            focal_px: solved[0],
            coefficients: solved.iter().copied().collect(),
            model,
            own: *lens,
            rms_px,
        })
    }

    /// The other model's focal length, px.
    pub fn focal_px(&self) -> f64 {
        self.focal_px
    }

    /// How far the two differ over the picture, root mean square, px: more than a
    /// camera fit's noise, and the fit would have told that the other is wrong.
    pub fn rms_px(&self) -> f64 {
        self.rms_px
    }

    /// Where the other model sees what the lens sees at a pixel, less that
    /// pixel; along the radius, zero where the lens has no ray.
    pub fn difference_px(&self, pixel: &Vector2<f64>) -> Vector2<f64> {
        let arm = pixel - Vector2::from(self.centre_px);
        let radius = arm.norm();
        let Some(tangent) = tangent(&self.own, radius) else { return Vector2::zeros() };
        let x = if self.model == LensModel::KannalaBrandt { tangent.atan() } else { tangent };
        let other: f64 = self.coefficients.iter().enumerate().map(|(k, c)| c * x.powi(2 * k as i32 + 1)).sum();
        if radius > 0.0 { arm * ((other - radius) / radius) } else { Vector2::zeros() }
    }
}

/// Tangent of the angle at which a lens sees a point at some distance from its
/// centre, px, by its radial terms alone.
fn tangent(lens: &Lens, radius_px: f64) -> Option<f64> {
    let mut radial = *lens;
    radial.focal_px = [(lens.focal_px[0] + lens.focal_px[1]) / 2.0; 2];
    radial.centre_px = [0.0; 2];
    if radial.model == LensModel::BrownConrady {
        radial.distortion[2] = 0.0;
        radial.distortion[3] = 0.0;
    }
    Some(radial.ray(&Vector2::new(radius_px, 0.0))?.x)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn two_models_of_one_phone_lens_differ_by_hundredths_of_a_pixel() {
        let lens = Lens {
            model: LensModel::BrownConrady,
            focal_px: [3050.0, 3049.0],
            centre_px: [2015.0, 1508.0],
            distortion: [0.08, -0.2, 0.0004, -0.0002, 0.11],
        };
        let other = OtherModel::of(&lens, [4032, 3024]).unwrap();
        assert!(other.rms_px() < 0.1, "{}", other.rms_px());
        for u in (0..4032).step_by(500) {
            for v in (0..3024).step_by(500) {
                let d = other.difference_px(&Vector2::new(f64::from(u), f64::from(v))).norm();
                assert!(d < 0.2, "{d} px at {u}, {v}");
            }
        }
    }

    #[test]
    fn a_plain_lens_is_the_same_in_both() {
        // tan x by five odd powers of x up to 40 deg: the fifth-order series leaves parts in a hundred thousand.
        let lens =
            Lens { model: LensModel::BrownConrady, focal_px: [1000.0; 2], centre_px: [500.0; 2], distortion: [0.0; 5] };
        let other = OtherModel::of(&lens, [1000, 1000]).unwrap();
        assert!((other.focal_px() / 1000.0 - 1.0).abs() < 1e-3, "{}", other.focal_px());
        assert!(other.difference_px(&Vector2::new(900.0, 500.0)).norm() < 0.05);
    }
}
