//! The phone changed a photo's light from place to place.

use super::{Case, Explanation, Finding, PhotoFacts, Rule};
use crate::detect::expected_covariance;
use crate::num::median;
use crate::quantity::rounded;
use crate::verdict::{Level, Verdict};

pub(super) const RULE: Rule =
    Rule { name: "photo-light-changed", codes: &["photo-light-changed"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("photo-light-changed", Level::Warn)];

fn find(case: &Case) -> Vec<Finding> {
    let not_proven = case.checks.iter().any(|c| c.verdict == Verdict::NotProven);
    let level = if not_proven { Level::Warn } else { Level::Note };
    let one = |photo: &PhotoFacts| {
        photo.sightings.gain_spread?;
        let (stated, plain) = corner_noise(photo)?;
        let message = format!(
            "In {} the phone changed the light from place to place: corners are known to {} px, in a plainly developed photo it would be {} px. \
             Turn HDR, night mode and scene optimisation off, or develop a raw picture plainly, and take it again.",
            photo.file,
            rounded(stated, 3),
            rounded(plain, 3)
        );
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
