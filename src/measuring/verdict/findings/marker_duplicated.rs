//! One code appears twice in a photo: the job takes it into account in none ([`crate::pose::doubled`]).

use super::{Case, Explanation, Finding, Rule};
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "marker-duplicated", codes: &["marker-duplicated"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("marker-duplicated", Level::Warn)];

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
