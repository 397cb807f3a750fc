//! A figure that is far off fits a well-known mistake.

use super::{Case, Explanation, Finding, Rule, hypotheses};
use crate::quantity::{Unit, rounded};
use crate::verdict::{Level, Verdict};

pub(super) const RULE: Rule =
    Rule { name: "wrong-datum-suspected", codes: &["wrong-datum-suspected"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("wrong-datum-suspected", Level::Warn)];

/// A deviation below this many tolerances is a matter of care, not of a mix-up.
const FAR: f64 = 2.0;

fn find(case: &Case) -> Vec<Finding> {
    let mut found: Vec<Finding> = case
        .setup
        .checks
        .iter()
        .zip(case.checks)
        .filter(|(_, c)| c.verdict == Verdict::Outside)
        .filter_map(|(check, c)| of_check(case, check, c))
        .collect();
    found.extend(case.readings.iter().filter_map(|r| of_reading(case, r)));
    found
}

fn of_check(case: &Case, check: &crate::setup::Check, checked: &crate::verdict::Checked) -> Option<Finding> {
    let estimate = checked.answer.as_ref()?.estimate;
    let off = estimate.value - check.nominal;
    let tolerance = match (check.lower, check.upper) {
        (Some(l), Some(u)) => (u - l) / 2.0,
        _ => 0.0,
    };
    if off.abs() <= FAR * tolerance {
        return None;
    }
    let room = estimate.expanded_uncertainty() + tolerance / 2.0;
    let mut fits: Vec<_> = hypotheses::of_check(case, check, checked.line, &estimate)
        .into_iter()
        .filter(|h| h.rest.abs() <= room + h.slack && h.rest.abs() < 0.25 * off.abs())
        .collect();
    // What needs no slack and leaves least comes first.
    fits.sort_by(|a, b| {
        (a.slack, a.rest.abs()).partial_cmp(&(b.slack, b.rest.abs())).unwrap_or(std::cmp::Ordering::Equal)
    });
    let (best, others) = fits.split_first()?;
    let digits = if check.quantity.unit() == Unit::Degree { 2 } else { 1 };
    let unit = check.quantity.unit().symbol();
    let also: Vec<&str> = others.iter().take(2).map(|h| h.words.as_str()).collect();
    let also = if also.is_empty() { String::new() } else { format!(" Or: {}.", also.join("; or: ")) };
    let message = format!(
        "{} is {} {unit} off, and fits to {} {unit} if {}.{also} Check it on the sheet and at the vehicle; nothing was corrected for it.",
        check.quantity.trade_name(),
        rounded(off.abs(), digits),
        rounded(best.rest.abs(), digits),
        best.words
    );
    Some(Finding::new("wrong-datum-suspected", Level::Warn, message))
}

fn of_reading(case: &Case, reading: &super::Compared) -> Option<Finding> {
    let photo = reading.photo.filter(|_| reading.normalized_error.is_some_and(|e| e.abs() > 1.0))?;
    let room = photo.expanded_uncertainty() + 2.0 * reading.u;
    let off = reading.value - photo.value;
    let words = hypotheses::of_reading(case, reading)
        .into_iter()
        .filter(|h| h.rest.abs() <= room && h.rest.abs() < 0.25 * off.abs())
        .min_by(|a, b| a.rest.abs().total_cmp(&b.rest.abs()))?
        .words;
    let unit = reading.quantity.unit().symbol();
    let message = format!(
        "The reading of {} {unit} for {} fits the photos if {words}. Read again; nothing was corrected for it.",
        rounded(reading.value, 2),
        reading.quantity.trade_name()
    );
    Some(Finding::new("wrong-datum-suspected", Level::Warn, message))
}
