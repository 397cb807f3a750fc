//! Markers of another kit stand in the photos.

use std::collections::BTreeMap;

use super::{Case, Explanation, Finding, Rule};
use crate::folder::CARD_IDS;
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["markers-of-another-kit"],
    title: "Markers of another kit",
    rationale: "Two kits in one picture invite the wrong kit file, or show a bay that is not the job's.",
    method: "Ids that are neither in the job's kit nor kept for job cards: at least two of them read without a corrected bit, \
             each in two photos or three in one. A board for fitting cameras on the wall, or a neighbour's kit, looks the \
             same; a misread marker (below 1e-6 for a photo) would have to come twice.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "markers-of-another-kit",
    level: Level::Warn,
    title: "Markers of another kit",
    meaning: "The photos show markers that the job's kit does not have. They were left out, and nothing is wrong with what was measured by the others.",
    cause: "A second kit or a camera board stands in the bay, or the job names another kit than the one that was used.",
    look: "Find the numbers of the message in the photos and on the kits' cover sheets.",
    remedy: "Name the kit that was used in the job; clear other kits away, so that nobody takes one holder for another.",
}];

/// Ids that no chance brings.
const LEAST_IDS: usize = 2;
const IN_ONE_PHOTO: usize = 3;

fn find(case: &Case) -> Vec<Finding> {
    let [first, last] = CARD_IDS;
    let foreign = |id: u32| case.kit.marker(id).is_none() && !(first..=last).contains(&id);
    let mut photos_of: BTreeMap<u32, Vec<usize>> = BTreeMap::new();
    for (j, photo) in case.photos.iter().enumerate() {
        for marker in photo.sightings.markers.iter().filter(|m| m.wrong_bits == 0 && foreign(m.id)) {
            let photos = photos_of.entry(marker.id).or_default();
            if photos.last() != Some(&j) {
                photos.push(j);
            }
        }
    }
    let often: Vec<u32> = photos_of.iter().filter(|(_, photos)| photos.len() > 1).map(|(id, _)| *id).collect();
    let of_photo = |j: usize| photos_of.values().filter(|photos| photos.contains(&j)).count();
    let most = (0..case.photos.len()).max_by_key(|j| (of_photo(*j), std::cmp::Reverse(*j)));
    let Some(most) = most.filter(|j| often.len() >= LEAST_IDS || of_photo(*j) >= IN_ONE_PHOTO) else {
        return Vec::new();
    };
    let ids: Vec<String> = photos_of.keys().map(u32::to_string).collect();
    let file = case.photos[most].file;
    let message = phrase!("findings-other-kit", ids = ids.join(", "), kit = &case.kit.name, photo = file);
    vec![Finding::new("markers-of-another-kit", Level::Warn, message).in_photo(file)]
}
