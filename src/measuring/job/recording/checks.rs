//! A decided check as the record keeps it, with its uncertainty budget.

use std::collections::BTreeMap;

use super::parts::Parts;
use crate::measure;
use crate::pose::Source;
use crate::record::{BudgetLine, CheckRecord, OtherwiseRecord};
use crate::setup::Check;
use crate::verdict::{Checked, Otherwise, body};
use crate::words::{Language, Phrase, phrase};

pub(in crate::job) fn finite(x: f64) -> Option<f64> {
    x.is_finite().then_some(x)
}

pub(in crate::job) fn checks(parts: &Parts, checked: &[Checked]) -> Vec<CheckRecord> {
    parts.folder.setup.checks.iter().zip(checked).map(|(check, c)| check_record(parts, check, c)).collect()
}

fn check_record(parts: &Parts, check: &Check, c: &Checked) -> CheckRecord {
    let estimate = c.answer.as_ref().map(|a| a.estimate);
    let by_reading = check.is_decided_by_reading(&parts.folder.kit);
    CheckRecord {
        quantity: check.quantity.name().into(),
        from: check.from.as_ref().map(|f| f.name().to_owned()),
        target: check.target.clone(),
        step: check.step.clone(),
        reference_line: c.line.name().into(),
        unit: check.quantity.unit().symbol().into(),
        nominal: check.nominal,
        lower: check.lower,
        upper: check.upper,
        tolerance_basis: check.tolerance_basis.clone(),
        in_inches: check.in_inches,
        evidence: if by_reading { "reading" } else { "photos" }.into(),
        value: estimate.map(|e| e.value),
        standard_uncertainty: estimate.map(|e| e.standard_uncertainty),
        degrees_of_freedom: estimate.and_then(|e| finite(e.degrees_of_freedom)),
        coverage_factor: estimate.map(|e| e.coverage_factor()),
        expanded_uncertainty: estimate.map(|e| e.expanded_uncertainty()),
        conformance_probability: c.decided.filter(|_| c.untrusted.is_empty()).map(|d| d.conformance_probability),
        verdict: c.verdict,
        can_decide: c.decided.is_some_and(|d| d.can_decide),
        grade: c.decided.filter(|_| c.untrusted.is_empty()).and_then(|d| d.grade).map(|g| g.words().to_owned()),
        move_by: c.move_by,
        correction: c.correction.say(Language::English),
        correction_phrase: Some(c.correction.clone()),
        reason: c.reason.as_ref().map(|r| r.say(Language::English)),
        reason_phrase: c.reason.clone(),
        untrusted: c.untrusted.iter().map(|code| (*code).to_owned()).collect(),
        otherwise: c.otherwise.iter().map(otherwise).collect(),
        budget: c.answer.as_ref().map(|a| budget(parts, a)).unwrap_or_default(),
    }
}

fn otherwise(o: &Otherwise) -> OtherwiseRecord {
    OtherwiseRecord {
        assuming: o.assuming.say(Language::English),
        assuming_phrase: Some(o.assuming.clone()),
        value: o.estimate.map(|e| e.value),
        expanded_uncertainty: o.estimate.map(|e| e.expanded_uncertainty()),
        verdict: o.verdict,
    }
}

/// Contributions by source, those of one kind together, largest first.
fn budget(parts: &Parts, answer: &measure::Answer) -> Vec<BudgetLine> {
    let mut by_name: BTreeMap<String, (Phrase, f64)> = BTreeMap::new();
    for (origin, u) in &answer.contributions {
        let phrase = origin_words(parts, origin);
        by_name.entry(phrase.say(Language::English)).or_insert((phrase, 0.0)).1 += u * u;
    }
    let total: f64 = by_name.values().map(|(_, v)| v).sum();
    let mut lines: Vec<BudgetLine> = by_name
        .into_iter()
        .filter(|(_, (_, v))| *v > 1e-6 * total)
        .map(|(source, (phrase, v))| BudgetLine {
            source,
            source_phrase: Some(phrase),
            standard_uncertainty: v.sqrt(),
            share: v / total,
        })
        .collect();
    // Shares that differ by rounding alone stand in the order of their names, on every machine.
    lines.sort_by_key(|line| std::cmp::Reverse((line.share * 1e6).round() as u64));
    lines
}

fn origin_words(parts: &Parts, origin: &measure::Origin) -> Phrase {
    use measure::Origin as O;
    match origin {
        O::Photos(Source::Image) => phrase!("verdict-budget-corners"),
        O::Photos(Source::Calibration(_)) => phrase!("verdict-budget-calibration"),
        O::Photos(Source::Focal(_)) => phrase!("verdict-budget-focal"),
        O::Photos(Source::Centre(_)) => phrase!("verdict-budget-centre"),
        O::Photos(Source::Edge(_)) => phrase!("verdict-budget-edge"),
        O::Photos(Source::Turn(_)) => phrase!("verdict-budget-turn"),
        O::Photos(Source::Layout) => phrase!("verdict-budget-layout"),
        O::Photos(Source::Scale) => phrase!("verdict-budget-scale"),
        O::SeatingOffset(k) | O::SeatingAngle(k) => {
            phrase!("verdict-budget-seating", body = body(&parts.folder.kit, *k))
        }
        O::Wheelbase => phrase!("verdict-budget-wheelbase"),
        O::NoseFromRearAxle => phrase!("verdict-budget-nose"),
        O::FloorBelowHub => phrase!("verdict-budget-hub-height"),
        O::Datum(i) => phrase!("verdict-budget-datum", datum = &parts.folder.setup.datums[*i].name),
        O::Reading(i) => phrase!("verdict-budget-reading", quantity = parts.folder.job.readings[*i].quantity.phrase()),
    }
}
