//! A fitted camera and everything that speaks for or against it.

use super::coverage::Coverage;
use super::field::FieldPoint;
use super::halves::Halves;
use super::reject::Rejected;
use crate::camera::Profile;
use crate::words::Phrase;

/// One thing to say about a fit.
#[derive(Debug, Clone, PartialEq)]
pub struct Advice {
    /// Whether it rules out using the camera.
    pub forbids: bool,
    /// What is wrong and what to do.
    pub said: Phrase,
}

/// A fitted camera and everything that speaks for or against it.
#[derive(Debug, Clone, PartialEq)]
pub struct CameraFit {
    /// The camera.
    pub profile: Profile,
    /// Standard uncertainties of the lens's parameters, in the covariance's order.
    pub u_parameters: Vec<f64>,
    /// Root mean square of the residuals per coordinate, px.
    pub rms_px: f64,
    /// Noise found over noise that the detector states.
    pub noise_factor: f64,
    /// Observations minus unknowns that they determine.
    pub degrees_of_freedom: f64,
    /// Degrees of freedom of the two photo-to-photo sigmas.
    pub per_photo_degrees: [f64; 2],
    /// Photos that took part.
    pub photos: Vec<FittedPhoto>,
    /// Photos that did not.
    pub rejected: Vec<Rejected>,
    /// Found bend of the board, peak to valley, mm.
    pub bend_mm: f64,
    /// How differently the board bent from photo to photo, 1 sigma of each bow, mm.
    pub flex_mm: f64,
    /// How far the camera turned about each axis while its rows were read (1 sigma), deg.
    pub turn_deg: f64,
    /// Where the board was seen.
    pub coverage: Coverage,
    /// Uncertainty of the projection over the frame.
    pub field: Vec<FieldPoint>,
    /// Likewise, focal length and centre taken out too: a photo finds its own.
    pub shape_field: Vec<FieldPoint>,
    /// Two halves of the photos against each other.
    pub halves: Option<Halves>,
    /// Residuals: where and found minus predicted, px.
    pub residuals_px: Vec<([f64; 2], [f64; 2])>,
    /// What to say about it.
    pub advice: Vec<Advice>,
}

/// One photo that took part.
#[derive(Debug, Clone, PartialEq)]
pub struct FittedPhoto {
    /// Its path.
    pub file: String,
    /// Points that were found, of how many the board has.
    pub points: [usize; 2],
    /// Root mean square of its residuals per coordinate, px.
    pub rms_px: f64,
    /// Relative difference of its focal length from the mean.
    pub focal_relative: f64,
    /// Shift of its centre from the mean, px.
    pub centre_px: [f64; 2],
}

impl CameraFit {
    /// Whether the camera may be used.
    pub fn fit_for_use(&self) -> bool {
        !self.advice.iter().any(|a| a.forbids)
    }

    /// The larger relative standard uncertainty of the two focal lengths.
    pub fn u_focal_relative(&self) -> f64 {
        let f = self.profile.lens.focal_px;
        (self.u_parameters[0] / f[0]).max(self.u_parameters[1] / f[1])
    }
}
