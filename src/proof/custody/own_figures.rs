//! What follows from a record's own figures, whoever measured them: from a value, its uncertainty, the limits and the
//! rule a check's verdict and all that it says in numbers, from checks and findings the job's verdict.

use super::compared::{AGREE, AGREE_SHARE, AGREE_U, difference, part, shown};
use crate::quantity::Estimate;
use crate::record::{CheckRecord, JobRecord, Level, Verdict};
use crate::setup::{Decision, DecisionRule};
use crate::verdict::{Decided, Tolerance, decide};
use crate::words::{Language, Phrase, Value, phrase};

/// What stands in a record and does not follow from its own figures. `now` is the same job measured again, which knows
/// the limits, and what may be withheld where a figure alone would state it. Of a record by another version of the
/// program (`older`), which may have known less, only what it has.
pub(super) fn contradictions(recorded: &JobRecord, now: &JobRecord, decision: &Decision, older: bool) -> Vec<Phrase> {
    let mut found = Vec::new();
    let held = recorded.findings.iter().any(|f| f.level <= Level::Stop);
    for (n, (a, b)) in pairs(recorded, now).enumerate() {
        let mut own = Own { check: a, older, found: Vec::new() };
        // Nobody is told to move anything by what is not decided with all readings.
        own.figures(b, decision, held || n >= recorded.checks.len());
        own.verdict(b, decision);
        own.budget();
        found.extend(own.found);
    }
    let mut differ = |what: Value, a: Value, b: Value| found.push(difference(what, a, b));
    let of_checks = Verdict::of_checks(recorded.checks.iter().map(|c| c.verdict));
    let whole = of_checks.limited_by(recorded.findings.iter().map(|f| f.level));
    // Where nothing could be measured at all, checks that a reading decides have their verdict all the same.
    let nothing = recorded.verdict == Verdict::Retake && now.verdict == Verdict::Retake;
    if recorded.verdict != whole && !nothing && (claims(recorded.verdict) || !older) {
        differ(part("verdict"), recorded.verdict.name().into(), whole.name().into());
    }
    if !older {
        let said = recorded.reason_phrase.as_ref().map_or_else(String::new, |why| why.say(Language::English));
        // What is within is said without figures, so that both say it alike.
        let within = [recorded.verdict, now.verdict] == [Verdict::Within; 2];
        let due = if within { now.reason.clone() } else { said.clone() };
        if recorded.reason != due || said != due {
            differ(part("reason"), (&recorded.reason).into(), due.into());
        }
    }
    found
}

/// The checks of two records that have the same ones, also those without readings where both have them.
pub(super) fn pairs<'a>(
    a: &'a JobRecord,
    b: &'a JobRecord,
) -> impl Iterator<Item = (&'a CheckRecord, &'a CheckRecord)> {
    let without = a.checks_without_readings.iter().flatten().zip(b.checks_without_readings.iter().flatten());
    a.checks.iter().zip(&b.checks).chain(without)
}

/// A verdict that states something; the others only withhold.
pub(super) fn claims(verdict: Verdict) -> bool {
    matches!(verdict, Verdict::Within | Verdict::Outside)
}

/// A check's value as it was recorded.
pub(super) fn estimate(check: &CheckRecord) -> Option<Estimate> {
    let (value, standard_uncertainty) = check.value.zip(check.standard_uncertainty)?;
    Some(stated(value, standard_uncertainty, check.degrees_of_freedom))
}

/// A value as a record states it.
pub(super) fn stated(value: f64, standard_uncertainty: f64, degrees_of_freedom: Option<f64>) -> Estimate {
    Estimate { value, standard_uncertainty, degrees_of_freedom: degrees_of_freedom.unwrap_or(f64::INFINITY) }
}

/// One check beside what follows from its own figures.
struct Own<'a> {
    check: &'a CheckRecord,
    older: bool,
    found: Vec<Phrase>,
}

impl Own<'_> {
    fn decided(&self, now: &CheckRecord, decision: &Decision) -> Option<Decided> {
        let own = estimate(self.check)?;
        let tolerance = Tolerance { nominal: now.nominal, lower: now.lower, upper: now.upper };
        let decided = decide(decision, tolerance, &own);
        let inside = now.lower.is_none_or(|l| own.value >= l) && now.upper.is_none_or(|u| own.value <= u);
        let open = self.older && decided.verdict == Verdict::NotProven;
        match decision.rule {
            // Simple acceptance once had no limit of the uncertainty.
            DecisionRule::Simple if open && self.check.can_decide => {
                let verdict = if inside { Verdict::Within } else { Verdict::Outside };
                return Some(Decided { verdict, can_decide: true, ..decided });
            }
            // A guarded rule that asks for less than a proof had none either.
            DecisionRule::Guarded if open && self.check.can_decide && decision.is_likely_only() => {
                let (within, wanted) = (decided.conformance_probability, decision.conformance_probability);
                let verdict = match () {
                    () if within >= wanted => Verdict::Within,
                    () if !inside && 1.0 - within >= wanted => Verdict::Outside,
                    () => Verdict::NotProven,
                };
                return Some(Decided { verdict, can_decide: true, ..decided });
            }
            // And binary once called outside what was not proven to be.
            DecisionRule::Binary if open && !inside => return Some(Decided { verdict: Verdict::Outside, ..decided }),
            _ => {}
        }
        Some(decided)
    }

    fn differ(&mut self, a: Value, b: Value) {
        self.found.push(difference((&self.check.quantity).into(), a, b));
    }

    fn number(&mut self, recorded: Option<f64>, follows: Option<f64>) {
        let share = if self.older { AGREE_U } else { AGREE_SHARE };
        let same = match (recorded, follows) {
            (None, _) if self.older => true,
            (Some(a), Some(b)) => (a - b).abs() <= AGREE.max(share * b.abs()),
            (a, b) => a.is_none() && b.is_none(),
        };
        if !same {
            self.differ(shown(recorded), shown(follows));
        }
    }

    /// Whatever is a function of value, uncertainty and limits.
    fn figures(&mut self, now: &CheckRecord, decision: &Decision, held: bool) {
        let check = self.check;
        let own = estimate(check);
        let decided = self.decided(now, decision);
        // What a finding forbids to trust says nothing of how likely it is.
        let trusted = decided.filter(|_| check.untrusted.is_empty());
        self.number(check.coverage_factor, own.map(|e| e.coverage_factor()));
        self.number(check.expanded_uncertainty, own.map(|e| e.expanded_uncertainty()));
        self.number(check.conformance_probability, trusted.map(|d| d.conformance_probability));
        if check.move_by.is_some() || !held {
            self.number(check.move_by, own.map(|e| check.nominal - e.value));
        }
        let can_decide = decided.is_some_and(|d| d.can_decide);
        if check.can_decide != can_decide {
            self.differ(check.can_decide.to_string().into(), can_decide.to_string().into());
        }
        let grade = trusted.and_then(|d| d.grade).map(|g| g.words());
        if check.grade.as_deref() != grade && (check.grade.is_some() || !self.older) {
            let said = |grade: Option<&str>| grade.map_or_else(|| phrase!("evidence-nothing").into(), Value::from);
            self.differ(said(check.grade.as_deref()), said(grade));
        }
    }

    /// Values that lie at a limit may be decided otherwise by masked photos; the recorded ones decide as they did. More
    /// than that may be withheld: too few photos were taken after a move.
    fn verdict(&mut self, now: &CheckRecord, decision: &Decision) {
        let check = self.check;
        let decided = self.decided(now, decision).map_or(Verdict::Retake, |d| d.verdict);
        let trusted = check.untrusted.is_empty();
        let right = match check.verdict {
            Verdict::Within => trusted && decided == Verdict::Within,
            Verdict::Outside => decided == Verdict::Outside && (trusted || self.older || otherwise_outside(check)),
            Verdict::NotProven if decided == Verdict::Within => true,
            other => !trusted || other == decided || other == now.verdict || self.older,
        };
        if !right {
            let due = if trusted || decided != Verdict::Within { decided } else { Verdict::NotProven };
            self.differ(check.verdict.name().into(), due.name().into());
        }
    }

    /// The lines of a budget make up the uncertainty, and their shares the whole.
    fn budget(&mut self) {
        let check = self.check;
        let Some(own) = estimate(check).filter(|e| !self.older && e.standard_uncertainty > 0.0) else { return };
        let sum: f64 = check.budget.iter().map(|line| line.standard_uncertainty.powi(2)).sum();
        let u = own.standard_uncertainty;
        let as_large = (sum.sqrt() - u).abs() <= AGREE * u;
        let shares = check.budget.iter().all(|l| (l.share - l.standard_uncertainty.powi(2) / sum).abs() <= AGREE);
        if !as_large || !shares {
            self.found.push(difference(part("budget"), shown(Some(sum.sqrt())), shown(Some(u))));
        }
    }
}

/// Outside although a finding spoils its figure: it would be under all that the finding leaves open.
fn otherwise_outside(check: &CheckRecord) -> bool {
    !check.otherwise.is_empty() && check.otherwise.iter().all(|o| o.verdict == Verdict::Outside)
}
