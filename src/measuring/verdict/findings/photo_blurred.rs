//! A photo is blurred.

use super::{Case, Explanation, Finding, Rule};
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "photo-blurred", codes: &["photo-blurred"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("photo-blurred", Level::Warn)];

const BLURRED_PX: f64 = 1.8;
const SUSPICIOUS_PX: f64 = 1.2;

fn find(case: &Case) -> Vec<Finding> {
    let mut found: Vec<Finding> = case.photos.iter().filter_map(without_markers).collect();
    let blur = |p: &super::PhotoFacts| p.sightings.blur_px;
    let seen = || case.photos.iter().filter(|p| !p.sightings.markers.is_empty());
    let sharpest = seen().map(blur).fold(f64::INFINITY, f64::min);
    let by_markers =
        seen().filter(|p| blur(p) > BLURRED_PX || (blur(p) > SUSPICIOUS_PX && blur(p) > 2.0 * sharpest)).map(|p| {
            let message = phrase!("findings-blurred", photo = p.file, px = figure(blur(p), 1));
            Finding::new("photo-blurred", Level::Warn, message).in_photo(p.file)
        });
    found.extend(by_markers);
    found
}

/// So blurred that no marker was found.
fn without_markers(photo: &super::PhotoFacts) -> Option<Finding> {
    photo.clearness.filter(|c| photo.sightings.markers.is_empty() && !c.is_dark() && c.is_blurred())?;
    let message = phrase!("findings-blurred-no-marker", photo = photo.file);
    Some(Finding::new("photo-blurred", Level::Warn, message).in_photo(photo.file))
}
