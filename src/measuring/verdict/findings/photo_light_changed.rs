//! The phone changed a photo's light from place to place.

use super::{Case, Explanation, Finding, PhotoFacts, Rule};
use crate::detect::expected_covariance;
use crate::num::median;
use crate::verdict::words::figure;
use crate::verdict::{Level, Verdict};
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["photo-light-changed"],
    title: "Light changed by the phone",
    rationale: "Phones lift the dark and lower the bright from place to place (HDR, tone mapping). What runs up to an edge then bends \
                what shows where the edge lies, so corners are known less well than in a plainly developed photo.",
    method: "Each marker of 60 px or more is parted into patches of 7 px; of all of the photo's patches the gain's logarithm spreads by more \
             than .02 beyond what noise explains (strongly changed photos of known truth show .05 to .09). Gains of finer grain, and \
             photos whose markers are all smaller, are not seen. A warning where a check is not_proven, else a note. It lowers nothing by itself: the \
             uncertainties have it in them.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "photo-light-changed",
    level: Level::Warn,
    title: "Light changed by the phone",
    meaning: "The phone has made dark parts lighter and bright parts darker, so that the markers' edges are known less well.",
    cause: "HDR, night mode, scene optimisation or a filter, or strong light beside deep shade, which makes phones do that.",
    look: "Enlarge a marker: white is brighter, and black darker, close to the edges than in the middle of the squares.",
    remedy: "Turn HDR, night mode and scene optimisation off, or take a raw picture and develop it plainly; light the bay more evenly; \
             take one more photo, or go nearer.",
}];

fn find(case: &Case) -> Vec<Finding> {
    let not_proven = case.checks.iter().any(|c| c.verdict == Verdict::NotProven);
    let level = if not_proven { Level::Warn } else { Level::Note };
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
