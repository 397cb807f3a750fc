//! A photo is blurred.

use super::{Case, Explanation, Finding, Rule};
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["photo-blurred"],
    title: "Blurred",
    rationale: "Blur costs accuracy, and the blur of a moving hand is not the same in all directions, so it shifts edges.",
    method: "Median blur of the photo's markers, as fitted: above 1.8 px, or above 1.2 px and twice that of the sharpest photo. \
             Where no marker was found: of each rise of 40 levels within 32 px the share that lies within 4 px; half of them have less than .5, \
             across or down the picture, and such rises stand in twenty of its 64 parts or more. A plain wall or one soft shadow is not \
             called blurred: it has too few.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "photo-blurred",
    level: Level::Warn,
    title: "Blurred",
    meaning: "The markers' edges are too soft to be measured well.",
    cause: "The hand moved, the light was low, the lens was dirty, or the focus was on something near.",
    look: "Enlarge a marker on the phone: its small squares must have crisp edges.",
    remedy: "Wipe the lens, rest the elbows, use more light, tap on the stand to focus, and take it again.",
}];

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
