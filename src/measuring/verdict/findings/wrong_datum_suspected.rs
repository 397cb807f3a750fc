//! A figure that is far off fits a well-known mistake.

use super::{Case, Explanation, Finding, Rule, hypotheses};
use crate::verdict::words::{amount, either};
use crate::verdict::{Level, Verdict};
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "wrong-datum-suspected", codes: &["wrong-datum-suspected"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("wrong-datum-suspected", Level::Warn)];

/// What is said of a reading.
pub(super) const OF_READING: &str = "findings-reading-far-off";

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
    let say = |x: f64| amount(x.abs(), check.quantity.unit(), [1, 2]);
    let (quantity, off, rest, mistake) = (check.quantity.phrase(), say(off), say(best.rest), best.words.clone());
    let message = match either(others.iter().take(2).map(|h| h.words.clone()).collect()) {
        None => phrase!("findings-far-off", quantity = quantity, off = off, rest = rest, mistake = mistake),
        Some(others) => phrase!(
            "findings-far-off-or",
            quantity = quantity,
            off = off,
            rest = rest,
            mistake = mistake,
            others = others
        ),
    };
    Some(Finding::new("wrong-datum-suspected", Level::Warn, message))
}

fn of_reading(case: &Case, compared: &super::Compared) -> Option<Finding> {
    let photo = compared.photo.filter(|_| compared.is_excluded())?;
    let reading = &compared.reading;
    let room = photo.expanded_uncertainty() + 2.0 * reading.u;
    let off = reading.value - photo.value;
    let mistake = hypotheses::of_reading(case, reading, photo.value)
        .into_iter()
        .filter(|h| h.rest.abs() <= room && h.rest.abs() < 0.25 * off.abs())
        .min_by(|a, b| a.rest.abs().total_cmp(&b.rest.abs()))?
        .words;
    let (quantity, read) = (reading.quantity.phrase(), amount(reading.value, reading.quantity.unit(), [2, 2]));
    let message = phrase!("findings-reading-far-off", quantity = quantity, read = read, mistake = mistake);
    Some(Finding::new("wrong-datum-suspected", Level::Warn, message))
}
