//! What the technician does now, in the order in which a stand is set.

use super::figures::Measured;
use super::label::{Label, sentence};
use crate::quantity::Quantity;
use crate::record::{CheckRecord, FindingRecord, JobRecord, Level, Verdict, body_told, told};
use crate::verdict::findings::explanation;
use crate::words::{Language, say};

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
    /// Which way the stand goes: the quantity, and whether it is to become larger.
    pub(super) way: Option<(Quantity, bool)>,
    /// The finding that it is: its name, marker holder and photo, and last its code.
    pub(super) about: Vec<String>,
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
pub(super) fn steps(record: &JobRecord, language: Language) -> Vec<Step> {
    let mut steps: Vec<Step> =
        record.findings.iter().filter(|f| is_a_step(f)).map(|f| clear(record, f, language)).collect();
    if !figures_are_void(record) {
        // What a finding spoils is said by the finding.
        let sound = |c: &&CheckRecord| !move_is_held(c) && c.untrusted.is_empty();
        let mut checks: Vec<&CheckRecord> = record.checks.iter().filter(sound).collect();
        checks.sort_by_key(|check| rank(&check.quantity));
        let of = |verdict: Verdict| checks.iter().filter(move |c| c.verdict == verdict);
        steps.extend(of(Verdict::Outside).map(|c| moving(c, language)));
        steps.extend(of(Verdict::NotProven).map(|c| proving(c, language)));
        steps.extend(of(Verdict::Retake).map(|c| measuring(c, language)));
    }
    let mut steps = joined(steps);
    steps.push(close(record, &steps, language));
    for step in &mut steps {
        step.title = sentence(&step.title);
    }
    steps
}

/// Whether a finding stands among the steps, whole.
fn is_a_step(finding: &FindingRecord) -> bool {
    matches!(finding.level, Level::Void | Level::Stop) && !repeats_a_check(finding)
}

/// Whether all that is to be settled may be settled at the keyboard, so that no photo is asked for.
fn is_settled_by_typing(record: &JobRecord) -> bool {
    let typed = |f: &FindingRecord| f.code == "vehicle-sizes-disagree";
    record.findings.iter().filter(|f| is_a_step(f)).all(typed)
}

/// Whether what is to be done already says all that a finding says: it is one
/// of the steps, or the moves of the checks are.
pub(super) fn is_said_by_steps(record: &JobRecord, finding: &FindingRecord) -> bool {
    let moves = !figures_are_void(record) && !moves_are_held(record);
    let ordered = |c: &CheckRecord| c.verdict == Verdict::Outside && c.move_by.is_some();
    is_a_step(finding) || repeats_a_check(finding) && moves && record.checks.iter().any(ordered)
}

/// A finding's name, marker holder and photo, and last its code, by which `explain` and other languages know it.
pub(super) fn about(record: &JobRecord, finding: &FindingRecord, language: Language) -> Vec<String> {
    let name = explanation(&finding.code).map(|e| e.title(language));
    let holder = finding.carrier.as_ref().map(|name| body_told(record, name, language));
    [name, holder, finding.photo.clone(), Some(finding.code.clone())].into_iter().flatten().collect()
}

/// What a finding says.
pub(super) fn message(finding: &FindingRecord, language: Language) -> String {
    told(finding.message_phrase.as_ref(), &finding.message, language)
}

fn clear(record: &JobRecord, finding: &FindingRecord, language: Language) -> Step {
    let title = match finding.level {
        Level::Void => say!(language, "report-clear-first"),
        _ => say!(language, "report-settle"),
    };
    Step {
        kind: Kind::Clear,
        title,
        words: message(finding, language),
        way: None,
        about: about(record, finding, language),
    }
}

/// Level, tilt, square, centre, distance, height; then everything else.
fn rank(quantity: &str) -> u8 {
    Quantity::from_name(quantity).map_or(u8::MAX, Quantity::move_order)
}

/// Checks that lack the same thing are one step, and so are findings that say the same; each title stands there once.
fn joined(steps: Vec<Step>) -> Vec<Step> {
    let mut all: Vec<(Step, Vec<String>)> = Vec::new();
    for step in steps {
        match all.iter_mut().find(|(s, _)| s.kind == step.kind && s.words == step.words) {
            Some((_, titles)) if titles.contains(&step.title) => {}
            Some((_, titles)) => titles.push(step.title),
            None => all.push((step.clone(), vec![step.title])),
        }
    }
    all.into_iter().map(|(step, titles)| Step { title: titles.join(", "), ..step }).collect()
}

fn title(check: &CheckRecord, language: Language) -> String {
    const MOVES: [&str; 6] = ["level", "tilt", "square", "centre", "distance", "height"];
    let label = Label::of_check(check, language);
    let title = match MOVES.get(usize::from(rank(&check.quantity))) {
        Some(name) => say!(language, "report-move", name = *name),
        None => label.trade.clone(),
    };
    let extras = label.extras();
    if extras.is_empty() {
        title
    } else {
        say!(language, "report-with-extras", title = title, extras = extras.join(", "))
    }
}

fn moving(check: &CheckRecord, language: Language) -> Step {
    let words = if check.correction.is_empty() {
        measured_words(check, language)
    } else {
        told(check.correction_phrase.as_ref(), &check.correction, language)
    };
    let way = Quantity::from_name(&check.quantity).zip(check.move_by.map(|by| by > 0.0));
    Step { kind: Kind::Move, title: title(check, language), words: sentence(&words), way, about: Vec::new() }
}

fn measured_words(check: &CheckRecord, language: Language) -> String {
    match Measured::of_check(check, Quantity::from_name(&check.quantity), language) {
        Some(m) => say!(language, "report-measured", value = m.long()),
        None => Verdict::Outside.phrase().say(language),
    }
}

/// Why a check is open, in the record's words.
pub(super) fn reason(check: &CheckRecord, language: Language) -> Option<String> {
    check.reason.as_ref().map(|reason| told(check.reason_phrase.as_ref(), reason, language))
}

fn proving(check: &CheckRecord, language: Language) -> Step {
    let words = reason(check, language).unwrap_or_else(|| match check.can_decide {
        true => say!(language, "report-prove-more"),
        false => say!(language, "report-prove-never"),
    });
    Step { kind: Kind::Prove, title: title(check, language), words: sentence(&words), way: None, about: Vec::new() }
}

fn measuring(check: &CheckRecord, language: Language) -> Step {
    let words = reason(check, language).unwrap_or_else(|| say!(language, "report-measure-again"));
    Step { kind: Kind::Measure, title: title(check, language), words: sentence(&words), way: None, about: Vec::new() }
}

fn close(record: &JobRecord, before: &[Step], language: Language) -> Step {
    let nothing = record.verdict == Verdict::Within && !figures_are_void(record) && !moves_are_held(record);
    let words = if figures_are_void(record) {
        say!(language, "report-close-void")
    } else if moves_are_held(record) && is_settled_by_typing(record) {
        say!(language, "report-close-held-typed")
    } else if moves_are_held(record) {
        say!(language, "report-close-held")
    } else if before.iter().any(|s| s.kind == Kind::Move) {
        say!(language, "report-close-moved")
    } else if nothing {
        say!(language, "report-keep-report")
    } else if record.verdict == Verdict::Retake {
        say!(language, "report-close-retake")
    } else {
        say!(language, "report-close-verify")
    };
    let moved = before.iter().any(|s| s.kind == Kind::Move);
    let title = match nothing && !moved {
        true => say!(language, "report-nothing-to-move"),
        false => say!(language, "report-then"),
    };
    Step { kind: Kind::Close, title, words, way: None, about: Vec::new() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_several_findings_or_checks_say_alike_is_one_step_with_each_title_once() {
        let step = |kind, title: &str, words: &str| Step {
            kind,
            title: title.to_owned(),
            words: words.to_owned(),
            way: None,
            about: Vec::new(),
        };
        let clear = |words| step(Kind::Clear, "settle", words);
        let prove = |title| step(Kind::Prove, title, "more photos");
        let five = std::iter::repeat_n(clear("the reading contradicts"), 5);
        let steps = five.chain([clear("another finding"), prove("tilt"), prove("square"), prove("tilt")]).collect();
        let found = joined(steps);
        let titles: Vec<&str> = found.iter().map(|s| s.title.as_str()).collect();
        assert_eq!(titles, ["settle", "settle", "tilt, square"]);
    }
}
