//! What the technician attests.

use super::{Case, Explanation, Finding, Rule, Touches};
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    name: "prerequisites",
    codes: &["prerequisite-not-met", "record-incomplete"],
    touches: Touches::MovesOnly,
    find,
};

pub(super) const EXPLAIN: &[Explanation] =
    &[Explanation::of("prerequisite-not-met", Level::Stop), Explanation::of("record-incomplete", Level::Warn)];

fn find(case: &Case) -> Vec<Finding> {
    let mut found = Vec::new();
    let answer = |id: &str| case.job.prerequisites.get(id);
    for p in &case.setup.prerequisites {
        if answer(&p.id) == Some(&serde_json::Value::Bool(false)) {
            let message = phrase!("findings-prerequisite-not-met", text = &p.text);
            found.push(Finding::new("prerequisite-not-met", Level::Stop, message));
        }
    }
    let open: Vec<&str> = case
        .setup
        .prerequisites
        .iter()
        .filter(|p| p.required && answer(&p.id).is_none())
        .map(|p| p.text.as_str())
        .collect();
    if !open.is_empty() {
        let message = phrase!("findings-not-answered", texts = open.join("; "));
        found.push(Finding::new("record-incomplete", Level::Warn, message));
    }
    found
}
