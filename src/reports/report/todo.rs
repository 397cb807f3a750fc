//! What the technician does now, in the order in which a stand is set.

use super::figures::Measured;
use super::label::{Label, sentence};
use crate::quantity::Quantity;
use crate::record::{CheckRecord, FindingRecord, JobRecord, Level, Verdict};

/// Findings that only repeat a check's correction.
const SAID_BY_A_CHECK: [&str; 8] = [
    "stand-turned",
    "stand-off-centre",
    "stand-too-near",
    "stand-too-far",
    "stand-too-high",
    "stand-too-low",
    "stand-tilted",
    "stand-not-level",
];

/// Whether a finding only says again what a check's correction says.
pub fn repeats_a_check(finding: &FindingRecord) -> bool {
    SAID_BY_A_CHECK.contains(&finding.code.as_str())
}

/// Why a step is on the list.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    /// A finding that holds up the verdict.
    Clear,
    /// A check is outside: move the stand.
    Move,
    /// A check is not proven.
    Prove,
    /// A check has no value.
    Measure,
    /// Afterwards.
    Close,
}

/// One step.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Step {
    pub(super) kind: Kind,
    pub(super) title: String,
    pub(super) words: String,
}

/// Whether a finding says that the figures are not to be trusted.
pub(super) fn figures_are_void(record: &JobRecord) -> bool {
    record.findings.iter().any(|f| f.level == Level::Void)
}

/// How many of the figures can be trusted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Trust {
    All,
    Some,
    None,
}

/// What the findings leave of the figures.
pub(super) fn trust(record: &JobRecord) -> Trust {
    let doubtful = record.checks.iter().filter(|c| !c.untrusted.is_empty()).count();
    match () {
        () if figures_are_void(record) => Trust::None,
        () if doubtful == 0 => Trust::All,
        () if record.checks.iter().all(|c| c.value.is_none() || !c.untrusted.is_empty()) => Trust::None,
        () => Trust::Some,
    }
}

/// Whether a check is outside and no move is ordered for it, because a finding comes first.
pub fn move_is_held(check: &CheckRecord) -> bool {
    check.verdict == Verdict::Outside && check.value.is_some() && check.move_by.is_none()
}

/// Whether nothing is moved before a finding is settled.
fn moves_are_held(record: &JobRecord) -> bool {
    record.checks.iter().any(|c| move_is_held(c) || !c.untrusted.is_empty())
}

/// All steps. Where the figures are void nothing is moved by them.
pub(super) fn steps(record: &JobRecord) -> Vec<Step> {
    let mut steps: Vec<Step> = record.findings.iter().filter(|f| holds_up(f)).map(clear).collect();
    if !figures_are_void(record) {
        // What a finding spoils is said by the finding.
        let sound = |c: &&CheckRecord| !move_is_held(c) && c.untrusted.is_empty();
        let mut checks: Vec<&CheckRecord> = record.checks.iter().filter(sound).collect();
        checks.sort_by_key(|check| rank(&check.quantity));
        steps.extend(checks.iter().filter(|c| c.verdict == Verdict::Outside).map(|c| moving(c)));
        steps.extend(checks.iter().filter(|c| c.verdict == Verdict::NotProven).map(|c| proving(c)));
        steps.extend(checks.iter().filter(|c| c.verdict == Verdict::Retake).map(|c| measuring(c)));
    }
    let mut steps = joined(steps);
    steps.push(close(record, &steps));
    steps
}

fn holds_up(finding: &FindingRecord) -> bool {
    matches!(finding.level, Level::Void | Level::Stop) && !repeats_a_check(finding)
}

fn clear(finding: &FindingRecord) -> Step {
    let title = match finding.level {
        Level::Void => "Clear up first",
        _ => "Settle",
    };
    Step { kind: Kind::Clear, title: title.into(), words: finding.message.clone() }
}

/// Level, tilt, square, centre, distance, height; then everything else.
fn rank(quantity: &str) -> u8 {
    Quantity::from_name(quantity).map_or(u8::MAX, Quantity::move_order)
}

/// Checks that lack the same thing are one step.
fn joined(steps: Vec<Step>) -> Vec<Step> {
    let mut all: Vec<Step> = Vec::new();
    for step in steps {
        match all.iter_mut().find(|s| s.kind == step.kind && s.words == step.words) {
            Some(same) => same.title = format!("{}, {}", same.title, step.title.to_lowercase()),
            None => all.push(step),
        }
    }
    all
}

fn title(check: &CheckRecord) -> String {
    let word = match rank(&check.quantity) {
        0 => "Level".to_owned(),
        1 => "Tilt".to_owned(),
        2 => "Square".to_owned(),
        3 => "Centre".to_owned(),
        4 => "Distance".to_owned(),
        5 => "Height".to_owned(),
        _ => sentence(&Label::new(&check.quantity, check.from.as_deref()).trade),
    };
    let extras = Label::of_check(check).extras();
    if extras.is_empty() { word } else { format!("{word} ({})", extras.join(", ")) }
}

fn moving(check: &CheckRecord) -> Step {
    let words = if check.correction.is_empty() { measured_words(check) } else { check.correction.clone() };
    Step { kind: Kind::Move, title: title(check), words: sentence(&words) }
}

fn measured_words(check: &CheckRecord) -> String {
    let label = Label::of_check(check);
    match Measured::of_check(check, label.quantity) {
        Some(m) => format!("measured {}", m.long()),
        None => "outside tolerance".into(),
    }
}

fn proving(check: &CheckRecord) -> Step {
    let fallback = if check.can_decide {
        "not proven: take more photos from further apart, or move the value nearer to the required one"
    } else {
        "these photos and this kit cannot prove so small a tolerance: the uncertainty is too large for it, wherever the stand is"
    };
    let words = check.reason.as_deref().unwrap_or(fallback);
    Step { kind: Kind::Prove, title: title(check), words: sentence(words) }
}

fn measuring(check: &CheckRecord) -> Step {
    let words = check.reason.as_deref().unwrap_or("the photos do not determine it: take them again");
    Step { kind: Kind::Measure, title: title(check), words: sentence(words) }
}

/// Once something was moved.
const CORRECTED: &str = "Take one photo of the stand there, with plates and floor sheets: it is measured with those before; a second one proves it.";

fn close(record: &JobRecord, before: &[Step]) -> Step {
    let (title, words) = if figures_are_void(record) {
        ("Then", "Take the photos again. Do not move the stand by the figures of this report: they can't be trusted.")
    } else if moves_are_held(record) {
        (
            "Then",
            "Take the photos again. Do not move the stand by the figures of this report: what has to be settled comes first.",
        )
    } else if before.iter().any(|s| s.kind == Kind::Move) {
        ("Then", CORRECTED)
    } else if record.verdict == Verdict::Within {
        ("Nothing to move", "Keep this report with the job.")
    } else {
        match record.verdict {
            Verdict::Retake => ("Then", "Take the photos again and verify the job again."),
            _ => ("Then", "Verify the job again."),
        }
    };
    Step { kind: Kind::Close, title: title.into(), words: words.into() }
}
