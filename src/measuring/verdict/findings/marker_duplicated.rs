//! One code appears twice in a photo.

use super::{Case, Explanation, Finding, Rule};
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["marker-duplicated"],
    title: "One code twice",
    rationale: "Nobody can tell which of two equal markers belongs to the kit; both are left out.",
    method: "Two sightings of one id of the kit in one photo. Exact; a spare print that lies about is enough to cause it.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "marker-duplicated",
    level: Level::Warn,
    title: "One code twice",
    meaning: "The same code appears twice in one photo; neither was used.",
    cause: "A spare print lies in the bay, a mirror or a glossy panel shows a marker, or two kits with the same codes are about.",
    look: "Look for a second sheet with that number in the photo, also in windows and on paint.",
    remedy: "Remove or cover the spare print and take the photo again.",
}];

fn find(case: &Case) -> Vec<Finding> {
    let mut found = Vec::new();
    for photo in case.photos {
        let mut ids: Vec<u32> = photo.sightings.markers.iter().map(|m| m.id).collect();
        ids.sort_unstable();
        ids.dedup();
        for id in ids {
            let count = photo.sightings.markers.iter().filter(|m| m.id == id).count();
            if count > 1 && case.kit.marker(id).is_some() {
                let marker = id.to_string();
                let message = phrase!("findings-marker-duplicated", marker = marker, count = count, photo = photo.file);
                found.push(Finding::new("marker-duplicated", Level::Warn, message).in_photo(photo.file));
            }
        }
    }
    found
}
