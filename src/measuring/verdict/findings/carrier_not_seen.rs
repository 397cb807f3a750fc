//! A carrier of the kit is in no photo, or its pose stayed open.

use super::{Case, Explanation, Finding, Rule};
use crate::marker::Role;
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["carrier-not-seen"],
    title: "Not seen",
    rationale: "What no photo shows is not part of the proof.",
    method: "No photo that is linked to the others shows two usable corners of the carrier, or a flat carrier fits two \
             poses equally well. Exact; no false alarms.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "carrier-not-seen",
    level: Level::Warn,
    title: "Not seen",
    meaning: "A part of the marker kit is in no usable photo, or only so that two positions fit it equally well.",
    cause: "It stood behind something, outside the picture, too far away, or edge on.",
    look: "Open the photos: are at least two markers of it whole, sharp and larger than a thumbnail?",
    remedy: "Take one more photo that shows it together with two other parts of the kit.",
}];

fn find(case: &Case) -> Vec<Finding> {
    let carriers = case.kit.carriers.iter().enumerate().filter(|(_, c)| c.role != Role::Card);
    carriers
        .filter_map(|(k, c)| {
            let message = match case.scene {
                Some(scene) if scene.carriers[k].is_some() && !scene.ambiguous[k] => return None,
                Some(scene) if scene.carriers[k].is_some() => {
                    phrase!("findings-two-poses", body = case.body_first(k))
                }
                _ => phrase!("findings-not-seen", body = case.body_first(k)),
            };
            Some(Finding::new("carrier-not-seen", Level::Warn, message).on_carrier(&c.name))
        })
        .collect()
}
