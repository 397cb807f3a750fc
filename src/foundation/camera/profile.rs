//! Camera files: `camera/1`.

use nalgebra::{DMatrix, Vector2};

use super::lens::Lens;
use super::read_out::{ReadOut, moment_of_read_out};

/// A calibrated camera: lens, pixel grid, how well it is known and how one
/// photo differs from the next.
#[derive(Debug, Clone, PartialEq)]
pub struct Profile {
    /// Name in records.
    pub name: String,
    /// The mean lens.
    pub lens: Lens,
    /// Width and height of the stored pixel grid.
    pub image_size_px: [u32; 2],
    /// Corner noise found when the camera was fitted, px (1 sigma).
    pub u_noise_px: Option<f64>,
    /// Covariance over focal, centre and distortion, in the order of
    /// [`super::Projection::d_lens`]; as many rows as the model has parameters.
    pub covariance: Option<DMatrix<f64>>,
    /// Photo to photo variation.
    pub per_photo: PerPhoto,
    /// How rows are read one after another.
    pub read_out: ReadOut,
    /// What a photo's EXIF must say for the profile to apply.
    pub exif: Option<ExifMatch>,
}

/// How one photo differs from the next (focus breathing, stabilisation), 1 sigma.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PerPhoto {
    /// Relative change of the focal length.
    pub u_focal_relative: f64,
    /// Shift of the principal point per coordinate, px.
    pub u_centre_px: f64,
}

/// EXIF values that pick a profile; absent ones match anything.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ExifMatch {
    /// Camera maker, without regard to case and outer blanks.
    pub make: Option<String>,
    /// Camera model, likewise.
    pub model: Option<String>,
    /// Focal length, mm; equal to within 2 %.
    pub focal_length_mm: Option<f64>,
}

impl Profile {
    /// [`moment_of_read_out`] of this camera's pictures.
    pub fn moment(&self, pixel: &Vector2<f64>) -> f64 {
        moment_of_read_out(self.image_size_px, pixel)
    }
}
