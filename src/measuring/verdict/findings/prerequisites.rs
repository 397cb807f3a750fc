//! What the technician attests.

use super::{Case, Explanation, Finding, Rule, Touches};
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["prerequisite-not-met", "record-incomplete"],
    title: "Prerequisites",
    rationale: "The sheet says what must be so before the geometry means anything: tyres, load, steering, settled suspension.",
    method: "The job's answers against the sheet's list: `false` stops, no answer to a required one makes the record \
             incomplete. Photos can't check an attestation.",
    touches: Touches::MovesOnly,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[
    Explanation {
        code: "prerequisite-not-met",
        level: Level::Stop,
        title: "Prerequisite not met",
        meaning: "The technician states that something which the sheet asks for is not so.",
        cause: "Tyres, load, fuel, suspension or steering were not as the procedure wants them.",
        look: "Go through the sheet's list at the vehicle.",
        remedy: "Put it right, wait until the suspension has settled, and take the photos again.",
    },
    Explanation {
        code: "record-incomplete",
        level: Level::Warn,
        title: "Record incomplete",
        meaning: "The sheet asks for an answer that the job does not give.",
        cause: "A question of the job was skipped.",
        look: "The report lists what was asked and what was answered.",
        remedy: "Answer in the job's [prerequisites], as it was when the photos were taken.",
    },
];

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
