//! A surveyed kit and everything that speaks for or against it.

use nalgebra::Vector3;

use super::length::{Length, LengthCheck};
use crate::marker::Kit;
use crate::words::Phrase;

/// The comparison of two halves.
#[derive(Debug, Clone, PartialEq)]
pub struct Halves {
    /// Photos in each half.
    pub photos: [usize; 2],
    /// Markers that both halves place.
    pub markers: usize,
    /// Squared difference of both shapes over its stated covariance, divided
    /// by the number of independent coordinates: about 1 when all is well.
    pub ratio: f64,
    /// Above this the halves disagree (95 % quantile).
    pub limit: f64,
    /// Root mean square difference of a centre's coordinate, mm.
    pub rms_mm: f64,
    /// Largest difference of a centre, mm, and the marker's id.
    pub largest_mm: (f64, u32),
}

impl Halves {
    /// Whether the halves agree within what is stated.
    pub fn agree(&self) -> bool {
        self.ratio <= self.limit
    }
}

/// One thing to say about a survey.
#[derive(Debug, Clone, PartialEq)]
pub struct Advice {
    /// Whether it rules out using the surveyed kit.
    pub forbids: bool,
    /// What is wrong and what to do.
    pub said: Phrase,
}

/// What is wanted.
#[derive(Debug, Clone, Default)]
pub struct Options {
    /// Measured lengths.
    pub lengths: Vec<Length>,
    /// Carriers may have moved against each other between photos: each is
    /// surveyed by itself.
    pub apart: bool,
    /// The cameras are the one that was named, not candidates to choose from.
    pub camera_named: bool,
}

/// A surveyed kit and everything that speaks for or against it.
#[derive(Debug, Clone)]
pub struct Survey {
    /// The kit with markers where they were found and their joint covariance.
    pub kit: Kit,
    /// What became of each surveyed carrier.
    pub carriers: Vec<CarrierSurvey>,
    /// What was not surveyed.
    pub left_out: Vec<LeftOut>,
    /// Every length against the others.
    pub lengths: Vec<LengthCheck>,
    /// Whether the scale is that of lengths.
    pub measured_scale: bool,
    /// Printed sizes over stated ones, minus one, on average; standard uncertainty.
    pub print_scale: [f64; 2],
    /// Standard uncertainty of the common factor that the kit file states.
    pub u_stated_scale: f64,
    /// Found 1 sigma of the kit file's places per coordinate, mm.
    pub u_found_mm: f64,
    /// The photos.
    pub photos: Vec<PhotoSurvey>,
    /// Noise found over noise that the detector states.
    pub noise_factor: f64,
    /// Observations minus unknowns that they determine.
    pub degrees_of_freedom: f64,
    /// Two halves of the photos against each other.
    pub halves: Option<Halves>,
    /// What to say about it.
    pub advice: Vec<Advice>,
}

impl Survey {
    /// Whether the surveyed kit may be used.
    pub fn fit_for_use(&self) -> bool {
        !self.advice.iter().any(|a| a.forbids)
    }

    /// All surveyed markers.
    pub fn markers(&self) -> impl Iterator<Item = &MarkerSurvey> {
        self.carriers.iter().flat_map(|c| &c.markers)
    }
}

/// One carrier after the survey.
#[derive(Debug, Clone)]
pub struct CarrierSurvey {
    /// Its name.
    pub name: String,
    /// Its index in the kit.
    pub carrier: usize,
    /// Its surveyed markers.
    pub markers: Vec<MarkerSurvey>,
}

/// One marker after the survey; axes of its carrier.
#[derive(Debug, Clone)]
pub struct MarkerSurvey {
    /// Its id.
    pub id: u32,
    /// Photos that show it.
    pub photos: usize,
    /// Where the file had its centre, mm.
    pub stated_mm: Vector3<f64>,
    /// Found minus stated centre, mm.
    pub moved_mm: Vector3<f64>,
    /// Standard uncertainty of that against the carrier's other markers, mm.
    pub u_shape_mm: Vector3<f64>,
    /// 1 sigma of the file's centre against the carrier's other markers, mm.
    pub u_stated_mm: Vector3<f64>,
    /// Standard uncertainty of the centre in the carrier's frame, mm.
    pub u_centre_mm: Vector3<f64>,
    /// Found minus stated rotation, rad.
    pub turned_rad: Vector3<f64>,
    /// Standard uncertainty of that, rad.
    pub u_turned_rad: Vector3<f64>,
    /// Found over stated size, minus one, and its standard uncertainty.
    pub stretch: [f64; 2],
}

/// Something that was not surveyed.
#[derive(Debug, Clone, PartialEq)]
pub struct LeftOut {
    /// Carrier, marker or photo.
    pub what: Phrase,
    /// Why.
    pub why: Phrase,
}

/// One photo of a survey.
#[derive(Debug, Clone, PartialEq)]
pub struct PhotoSurvey {
    /// Its path.
    pub file: String,
    /// Markers used.
    pub markers: usize,
    /// Root mean square residual per coordinate, px; `None`: took no part.
    pub rms_px: Option<f64>,
}
