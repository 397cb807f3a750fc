//! The photos cannot prove a tolerance of the sheet.

use super::{Case, Finding, Rule};
use crate::verdict::Level;

pub(super) const RULE: Rule = Rule {
    codes: &["weak-geometry"],
    title: "Too weak to prove",
    rationale: "Where the uncertainty is larger than the tolerance allows, no position of the stand could be proven.",
    method: "A check that no value could pass at this uncertainty (JCGM 106). Exact; no false alarms.",
    find,
};

fn find(case: &Case) -> Vec<Finding> {
    let names: Vec<&str> = case
        .setup
        .checks
        .iter()
        .zip(case.checks)
        .filter(|(_, c)| c.decided.is_some_and(|d| !d.can_decide))
        .map(|(check, _)| check.quantity.trade_name())
        .collect();
    if names.is_empty() {
        return Vec::new();
    }
    let message = format!(
        "These photos cannot prove the tolerance of {}. Add photos from wider apart, or plates on all four wheels; this is no fault of the stand.",
        names.join(", ")
    );
    vec![Finding::new("weak-geometry", Level::Warn, message)]
}
