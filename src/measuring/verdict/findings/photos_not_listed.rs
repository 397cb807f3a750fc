//! Photos that lie in the job's folder and take no part, since the job lists others.

use super::{Case, Finding, Rule, Touches};
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "photos-not-listed", codes: &["record-incomplete"], touches: Touches::Nothing, find };

/// So many are named, the others counted.
const MOST_NAMED: usize = 6;

fn find(case: &Case) -> Vec<Finding> {
    if case.unlisted.is_empty() {
        return Vec::new();
    }
    let named: Vec<&str> = case.unlisted.iter().take(MOST_NAMED).map(|photo| photo.name.as_str()).collect();
    let more = case.unlisted.len() - named.len();
    let message = phrase!("findings-photos-not-listed", photos = named.join(", "), more = more);
    vec![Finding::new("record-incomplete", Level::Warn, message)]
}
