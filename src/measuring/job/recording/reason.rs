//! The verdict of a job in one sentence.

use super::parts::Parts;
use crate::record::Verdict;
use crate::setup::{Check, Decision, DecisionRule};
use crate::verdict::{Checked, Level, sentences};
use crate::words::{Figure, Phrase, phrase};

/// One sentence for people.
pub(in crate::job) fn reason(parts: &Parts, verdict: Verdict) -> Phrase {
    if let Some(why) = parts.why_no_scene {
        return phrase!("verdict-why-nothing", reason = why.clone());
    }
    if let Some(f) = parts.findings.iter().find(|f| f.level == Level::Void) {
        return f.message.clone();
    }
    match verdict {
        Verdict::Within => why_within(parts),
        Verdict::Outside => why_outside(parts),
        Verdict::Retake => match of_verdict(parts, verdict).next() {
            Some((check, c)) => phrase!("verdict-why-retake", quantity = check.quantity.phrase(), reason = why(c)),
            None => phrase!("verdict-why-retake-bare"),
        },
        Verdict::NotProven => {
            if let Some(f) = parts.findings.iter().find(|f| f.level == Level::Stop) {
                return f.message.clone();
            }
            match of_verdict(parts, verdict).next() {
                Some((check, c)) => {
                    phrase!("verdict-why-not-proven", quantity = check.quantity.phrase(), reason = why(c))
                }
                None => phrase!("verdict-why-no-checks"),
            }
        }
    }
}

fn of_verdict<'a>(parts: &'a Parts, verdict: Verdict) -> impl Iterator<Item = (&'a Check, &'a Checked)> {
    parts.folder.setup.checks.iter().zip(parts.checks).filter(move |(_, c)| c.verdict == verdict)
}

/// What is within by its measured value alone is not proven to be.
fn why_within(parts: &Parts) -> Phrase {
    let decision = &parts.folder.setup.decision;
    match decision.rule {
        DecisionRule::Simple => phrase!("verdict-why-within-simple", checks = parts.checks.len()),
        _ if decision.is_likely_only() => {
            phrase!("verdict-why-within-likely", checks = parts.checks.len(), least = least(decision))
        }
        _ => phrase!("verdict-why-within", checks = parts.checks.len()),
    }
}

/// The probability that the rule asks for, in percent.
fn least(decision: &Decision) -> Figure {
    Figure::plain(decision.conformance_probability * 100.0)
}

fn why(checked: &Checked) -> Phrase {
    checked.reason.clone().unwrap_or_else(|| phrase!("verdict-no-value"))
}

fn why_outside(parts: &Parts) -> Phrase {
    let mut outside: Vec<_> = of_verdict(parts, Verdict::Outside).collect();
    outside.sort_by_key(|(check, _)| check.quantity.move_order());
    let names: Vec<Phrase> = outside.iter().map(|(check, _)| check.quantity.phrase()).collect();
    // What is outside by its measured value alone is not proven to be either.
    let decision = &parts.folder.setup.decision;
    let simple = decision.rule == DecisionRule::Simple;
    let proven = !simple && !decision.is_likely_only();
    let outside = |names| match () {
        () if simple => phrase!("verdict-why-outside-simple", quantities = names),
        () if proven => phrase!("verdict-why-outside", quantities = names),
        () => phrase!("verdict-why-outside-likely", quantities = names, least = least(decision)),
    };
    // Outside in any case, but the finding comes first: nothing is moved before it is settled.
    match parts.findings.iter().find(|f| f.level == Level::Stop && f.holds_moves()) {
        Some(f) if f.spoils_any() && proven => {
            sentences(f.message.clone(), [phrase!("verdict-why-outside-anyway", quantities = names)])
        }
        Some(f) => sentences(f.message.clone(), [outside(names)]),
        None => outside(names),
    }
}
