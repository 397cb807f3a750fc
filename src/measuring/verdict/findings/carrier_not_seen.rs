//! A carrier of the kit is in no photo, or its pose stayed open.

use super::{Case, Explanation, Finding, Rule};
use crate::marker::Role;
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "carrier-not-seen", codes: &["carrier-not-seen"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("carrier-not-seen", Level::Warn)];

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
