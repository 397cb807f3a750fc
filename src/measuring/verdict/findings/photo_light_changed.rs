//! The phone changed a photo's light from place to place.

use super::{Case, Explanation, Finding, PhotoFacts, Rule};
use crate::detect::expected_covariance;
use crate::num::median;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "photo-light-changed", codes: &["photo-light-changed"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("photo-light-changed", Level::Warn)];

fn find(case: &Case) -> Vec<Finding> {
    let level = case.level_of_lost_precision();
    let one = |photo: &PhotoFacts| {
        photo.sightings.gain_spread?;
        let (stated, plain) = corner_noise(photo)?;
        let (stated, plain) = (figure(stated, 3), figure(plain, 3));
        let message = phrase!("findings-light-changed", photo = photo.file, stated = stated, plain = plain);
        Some(Finding::new("photo-light-changed", level, message).in_photo(photo.file))
    };
    case.photos.iter().filter_map(one).collect()
}

/// Median standard uncertainty of the photo's corners, px: as stated, and as expected of a plain photo.
fn corner_noise(photo: &PhotoFacts) -> Option<(f64, f64)> {
    let markers = || photo.sightings.markers.iter();
    let stated = median(markers().map(crate::detect::Sighting::u_corner_px))?;
    let plain = markers().filter_map(|m| Some((expected_covariance(&m.corners_px)?.trace() / 8.0).sqrt()));
    Some((stated, median(plain)?))
}
