//! A carrier of the kit is in no photo, or its pose stayed open.

use super::{Case, Explanation, Finding, Rule};
use crate::marker::Role;
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "carrier-not-seen", codes: &["carrier-not-seen"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("carrier-not-seen", Level::Warn)];

fn find(case: &Case) -> Vec<Finding> {
    // Where nothing could be measured, the verdict's reason says why: all carriers by name would hide it.
    let Some(scene) = case.scene else { return Vec::new() };
    let carriers = case.kit.carriers.iter().enumerate().filter(|(_, c)| c.role != Role::Card);
    carriers
        .filter_map(|(k, c)| {
            let message = match scene.carriers[k] {
                Some(_) if !scene.ambiguous[k] => return None,
                Some(_) => phrase!("findings-two-poses", body = case.body_first(k)),
                None => phrase!("findings-not-seen", body = case.body_first(k)),
            };
            Some(Finding::new("carrier-not-seen", Level::Warn, message).on_carrier(&c.name))
        })
        .collect()
}
