//! One check of the sheet: its value, decision and move.

use super::correction::{StandSize, correction};
use super::decision::{Decided, Tolerance, decide, least_half_width};
use super::ladder::Verdict;
use super::undetermined::why_undetermined;
use super::words::plus_minus;
use crate::marker::{Kit, Role};
use crate::measure::{Answer, Undetermined};
use crate::pose::Scene;
use crate::quantity::{Estimate, Unit, rounded, with_uncertainty};
use crate::setup::{Check, Decision, DecisionRule, ReferenceLine};
use crate::words::{Phrase, phrase};

/// A decided check.
#[derive(Debug, Clone)]
pub struct Checked {
    /// The line it refers to.
    pub line: ReferenceLine,
    /// Value and uncertainty, where there is one.
    pub answer: Option<Answer>,
    /// The decision, where there is a value.
    pub decided: Option<Decided>,
    /// The verdict.
    pub verdict: Verdict,
    /// Nominal minus value, mm or degrees.
    pub move_by: Option<f64>,
    /// What to do, in words.
    pub correction: Phrase,
    /// Why there is no value or no decision.
    pub reason: Option<Phrase>,
    /// Codes of the findings that forbid to trust its figure.
    pub untrusted: Vec<&'static str>,
    /// Where it is outside and not trusted: its value under each explanation that is open.
    pub otherwise: Vec<Otherwise>,
}

/// Decides one check. `more` says what would bring its uncertainty down ([`more_evidence`]).
pub fn check(
    check: &Check,
    line: ReferenceLine,
    decision: &Decision,
    answer: Result<Answer, Undetermined>,
    stand: &StandSize,
    more: &Phrase,
) -> Checked {
    let answer = match answer {
        Ok(answer) => answer,
        Err(why) => {
            return Checked {
                line,
                answer: None,
                decided: None,
                verdict: Verdict::Retake,
                move_by: None,
                correction: phrase!("moves-not-measured"),
                reason: Some(why_undetermined(&why)),
                untrusted: Vec::new(),
                otherwise: Vec::new(),
            };
        }
    };
    let decided = decide(decision, check, &answer.estimate);
    let move_by = check.nominal - answer.estimate.value;
    let correction = match decided.verdict {
        Verdict::Outside => correction(check.quantity, move_by, stand),
        Verdict::Within => phrase!("moves-none-needed"),
        _ => phrase!("moves-not-decided"),
    };
    let reason = (decided.verdict == Verdict::NotProven)
        .then(|| why_not_proven(check, decision, &decided, &answer.estimate, more));
    Checked {
        line,
        verdict: decided.verdict,
        move_by: Some(move_by),
        correction,
        reason,
        decided: Some(decided),
        answer: Some(answer),
        untrusted: Vec::new(),
        otherwise: Vec::new(),
    }
}

/// What would bring uncertainties down that is not there yet.
pub fn more_evidence(kit: &Kit, scene: Option<&Scene>) -> Phrase {
    let wheels: Vec<usize> = (0..kit.carriers.len()).filter(|k| kit.carriers[*k].role.is_wheel()).collect();
    let roles: std::collections::BTreeSet<Role> = wheels.iter().map(|k| kit.carriers[*k].role).collect();
    let seen = |k: &usize| scene.is_some_and(|s| s.carriers[*k].is_some());
    match () {
        () if roles.len() < WHEELS => phrase!("advice-more-or-plates"),
        () if wheels.iter().all(seen) => phrase!("advice-more-wider"),
        () => phrase!("advice-more-with-plates"),
    }
}

const WHEELS: usize = 4;

fn why_not_proven(check: &Check, decision: &Decision, decided: &Decided, estimate: &Estimate, more: &Phrase) -> Phrase {
    let unit = check.quantity.unit();
    let (_, expanded) = with_uncertainty(estimate.value, estimate.expanded_uncertainty());
    let uncertainty = plus_minus(&expanded, unit);
    if !decided.can_decide {
        let half = Tolerance::from(check).half_width();
        let needed = match decision.rule {
            DecisionRule::Guarded if !decision.is_likely_only() => {
                let k = least_half_width(decision.conformance_probability, estimate.degrees_of_freedom);
                half / k * estimate.coverage_factor()
            }
            _ => half,
        };
        let digits = if unit == Unit::Degree { 2 } else { 1 };
        let needed = plus_minus(&rounded(needed, digits), unit);
        if decision.rule == DecisionRule::Simple {
            return phrase!("advice-too-unsure", uncertainty = uncertainty, tolerance = needed, more = more.clone());
        }
        if decision.is_likely_only() {
            return phrase!(
                "advice-too-unsure-likely",
                uncertainty = uncertainty,
                tolerance = needed,
                more = more.clone()
            );
        }
        return phrase!("advice-too-small", uncertainty = uncertainty, needed = needed, more = more.clone());
    }
    phrase!("advice-too-near", uncertainty = uncertainty)
}

/// A check's value under one explanation of what is wrong.
#[derive(Debug, Clone, PartialEq)]
pub struct Otherwise {
    /// The explanation: "with the rear left wheel plate not flush with its wheel".
    pub assuming: Phrase,
    /// The value; `None` where the photos then don't determine it.
    pub estimate: Option<Estimate>,
    /// What it would be.
    pub verdict: Verdict,
}
