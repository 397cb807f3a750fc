//! Finding markers in a photo, one file per step.

mod busy;
mod candidates;
mod contour;
mod decode;
mod edge;
mod expected;
mod fit;
mod gain;
mod gaussian;
mod grain;
mod halo;
mod history;
mod homography;
mod lanes;
mod legendre;
mod model;
mod normal;
mod patches;
mod pattern;
mod pixels;
mod profile;
mod pyramid;
mod quad;
mod refine;
mod residuals;
mod robust;
mod rows;
mod shade;
mod shadow;
mod shared;
mod sighting;
mod squares;
mod threshold;
mod warp;

pub use expected::{U_EDGE_OFFSET_PX, expected_covariance};
pub use grain::{Grain, Products};
pub use history::{Coefficients, Earlier, Share};
pub use sighting::{Sighting, Sightings};

use crate::cores;
use crate::marker::Dictionary;
use crate::photo::Luma;

/// Finds the markers of a dictionary in a photo.
pub fn find_markers(photo: &Luma, dictionary: &Dictionary) -> Sightings {
    let _one = cores::UnderWay::begin();
    let levels = pyramid::pyramid(photo);
    refine::refine(photo, candidates::search(&levels, dictionary), dictionary)
}
