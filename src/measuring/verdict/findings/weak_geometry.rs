//! The photos cannot prove a tolerance of the sheet.

use super::{Case, Explanation, Finding, Rule};
use crate::verdict::sensitivity::{Assumption, Sensitivity};
use crate::verdict::words::amount;
use crate::verdict::{Level, more_evidence};
use crate::words::{Phrase, phrase};

pub(super) const RULE: Rule = Rule {
    codes: &["weak-geometry"],
    title: "Too weak to prove",
    rationale: "Where the uncertainty is larger than the tolerance allows, no position of the stand could be proven.",
    method: "A check that no value could pass at this uncertainty (JCGM 106): exact. And a check whose value changes by more than \
             its expanded uncertainty, a tenth of its tolerance and four standard deviations of such a change when one photo, one carrier or the form of the lens \
             model is left out (chance 6e-5 for each).",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "weak-geometry",
    level: Level::Warn,
    title: "Too weak to prove",
    meaning: "With these photos no position of the stand could be proven to be within a tolerance, or the answer depends on one photo or one carrier more than its uncertainty admits.",
    cause: "Too few photos, all from one side, plates on two wheels only, or small and distant markers.",
    look: "The report's table of uncertainty shows what the largest part comes from.",
    remedy: "Add photos from wider apart that show both leaves of the plates; where only two wheels bear plates, put plates on all four.",
}];

/// Standard deviations of a change that are no chance.
const SIGMAS: f64 = 4.0;

/// Changes below this share of the tolerance decide nothing.
const OF_TOLERANCE: f64 = 0.1;
/// Likewise by the form of the lens model, which has no uncertainty to compare with.
const OF_TOLERANCE_BY_MODEL: f64 = 0.25;

fn find(case: &Case) -> Vec<Finding> {
    cannot_prove(case).into_iter().chain(hangs_on_one(case)).collect()
}

fn cannot_prove(case: &Case) -> Option<Finding> {
    let names: Vec<Phrase> = case
        .setup
        .checks
        .iter()
        .zip(case.checks)
        .filter(|(_, c)| c.decided.is_some_and(|d| !d.can_decide))
        .map(|(check, _)| check.quantity.phrase())
        .collect();
    if names.is_empty() {
        return None;
    }
    let more = more_evidence(case.kit, case.scene);
    let message = phrase!("findings-cannot-prove", quantities = names, more = more);
    Some(Finding::new("weak-geometry", Level::Warn, message))
}

/// The check that changes most, where one does.
fn hangs_on_one(case: &Case) -> Option<Finding> {
    let (_, expanded, s) =
        case.sensitivity.iter().filter_map(|s| excess(case, s)).max_by(|a, b| a.0.total_cmp(&b.0))?;
    let of = case.setup.checks.get(s.ask)?.quantity;
    let say = |x: f64| amount(x, of.unit(), [1, 2]);
    let way = if s.change > 0.0 { "larger" } else { "smaller" };
    let (quantity, change, uncertainty) = (of.phrase(), say(s.change.abs()), say(expanded));
    let message = match s.assumption {
        Assumption::WithoutCarrier(k) => phrase!(
            "findings-hangs-on-body",
            way = way,
            quantity = quantity,
            body = case.body(k),
            change = change,
            uncertainty = uncertainty
        ),
        Assumption::WithoutPhoto(j) => phrase!(
            "findings-hangs-on-photo",
            way = way,
            quantity = quantity,
            photo = case.photos[j].file,
            change = change,
            uncertainty = uncertainty
        ),
        Assumption::OtherLensModel => phrase!(
            "findings-hangs-on-lens",
            way = way,
            quantity = quantity,
            change = change,
            uncertainty = uncertainty
        ),
    };
    let finding = Finding::new("weak-geometry", Level::Warn, message);
    Some(match s.assumption {
        Assumption::WithoutCarrier(k) => finding.on_carrier(&case.kit.carriers[k].name),
        Assumption::WithoutPhoto(j) => finding.in_photo(case.photos[j].file),
        Assumption::OtherLensModel => finding,
    })
}

/// A change over the expanded uncertainty, that uncertainty, and the change;
/// `None` where it is no larger than it may be.
fn excess<'a>(case: &Case, s: &'a Sensitivity) -> Option<(f64, f64, &'a Sensitivity)> {
    let expanded = case.checks.get(s.ask)?.answer.as_ref()?.estimate.expanded_uncertainty();
    let excess = s.change.abs() / expanded;
    let check = case.setup.checks.get(s.ask)?;
    let of_tolerance = match (check.lower, check.upper) {
        (Some(l), Some(u)) if u > l => 2.0 * s.change.abs() / (u - l),
        _ => 1.0,
    };
    let least = if s.assumption == Assumption::OtherLensModel { OF_TOLERANCE_BY_MODEL } else { OF_TOLERANCE };
    (excess > 1.0 && of_tolerance > least && s.change.abs() > SIGMAS * s.u_change).then_some((excess, expanded, s))
}
