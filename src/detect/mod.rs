//! Finding markers in a photo, one file per step.

mod busy;
mod candidates;
mod contour;
mod decode;
mod edge;
mod fit;
mod gaussian;
mod homography;
mod model;
mod pattern;
mod pixels;
mod profile;
mod pyramid;
mod quad;
mod refine;
mod residuals;
mod rows;
mod sighting;
mod squares;

pub use sighting::{Sighting, Sightings};

use crate::marker::Dictionary;
use crate::photo::Luma;

/// Finds the markers of a dictionary in a photo.
pub fn find_markers(photo: &Luma, dictionary: &Dictionary) -> Sightings {
    let levels = pyramid::pyramid(photo);
    refine::refine(photo, candidates::search(&levels, dictionary), dictionary)
}
pub fn try_read(photo: &Luma, quad: &[nalgebra::Vector2<f64>; 4], dictionary: &Dictionary) -> (bool, bool, bool) {
    let levels = pyramid::pyramid(photo);
    let r = decode::read(&levels[0], quad, dictionary);
    let ok = r.is_ok();
    let framed = r.as_ref().err().is_none_or(|e| e.framed);
    let fit = r.ok().map(|r| !refine::refine(photo, vec![r], dictionary).markers.is_empty()).unwrap_or(false);
    (ok, framed, fit)
}
