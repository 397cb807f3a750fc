//! A figure that is far off fits a well-known mistake.

use super::{Case, Explanation, Finding, Rule, hypotheses};
use crate::verdict::words::{amount, either};
use crate::verdict::{Level, Verdict};
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["wrong-datum-suspected"],
    title: "Wrong datum, side, sign, step or unit suspected",
    rationale: "A stand that is off by exactly a known mistake was set with care, to the wrong figure: naming the mistake saves measuring everything again.",
    method: "A check that is outside by more than twice its tolerance is tried against the other datums (nose, axles, the sheet's own), the other \
             reference lines, the thrust angle with the wrong sign, the other side, the reversed sign, the nominal of another step, zero, inches for mm, exchanged digits, the \
             complement of an angle, another plane of the stand, its edge for its centre. Named where the rest is below the expanded uncertainty plus half the tolerance, \
             and below a quarter of the deviation; never applied. By chance a deviation of some 100 mm fits one of them in some 10 % of all cases: it is a hint.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "wrong-datum-suspected",
    level: Level::Warn,
    title: "Wrong datum suspected",
    meaning: "A value that is far off would be right if it had been measured from another point, to the other side, with another sign or unit, or for another step.",
    cause: "Measured from the emblem, bumper or axle instead of the datum, to the mast instead of the face, to the panel's edge instead of its centre; the offset taken to the wrong side; digits exchanged; the sheet read in the wrong column.",
    look: "Read the sheet's line again, aloud, with a finger on the vehicle at the point that it names.",
    remedy: "Set the stand by the right point, sign and unit; the report's figures are not changed by the suspicion.",
}];

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

fn of_reading(case: &Case, reading: &super::Compared) -> Option<Finding> {
    let photo = reading.photo.filter(|_| reading.normalized_error.is_some_and(|e| e.abs() > 1.0))?;
    let room = photo.expanded_uncertainty() + 2.0 * reading.u;
    let off = reading.value - photo.value;
    let mistake = hypotheses::of_reading(case, reading)
        .into_iter()
        .filter(|h| h.rest.abs() <= room && h.rest.abs() < 0.25 * off.abs())
        .min_by(|a, b| a.rest.abs().total_cmp(&b.rest.abs()))?
        .words;
    let (quantity, read) = (reading.quantity.phrase(), amount(reading.value, reading.quantity.unit(), [2, 2]));
    let message = phrase!("findings-reading-far-off", quantity = quantity, read = read, mistake = mistake);
    Some(Finding::new("wrong-datum-suspected", Level::Warn, message))
}
