//! Markers were printed at another size than the kit file says.

use super::{Case, Explanation, Finding, Rule, Touches};
use crate::pose::Extra;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "print-scale-wrong", codes: &["print-scale-wrong"], touches: Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("print-scale-wrong", Level::Stop)];

/// Less than what paper does with the weather is of no interest, relative: on all carriers alike, and on one against the others,
/// where it moves what that one marks.
pub(super) const LEAST: f64 = 0.003;
pub(super) const LEAST_OF_ONE: f64 = 0.0015;

fn find(case: &Case) -> Vec<Finding> {
    let Some(suspect) = case.culprit(|e| matches!(e, Extra::Scale { .. })) else { return Vec::new() };
    let Extra::Scale { carriers } = &suspect.extra else { return Vec::new() };
    let factor = suspect.test.estimate[0];
    let least = if carriers.len() == 1 { LEAST_OF_ONE } else { LEAST };
    if factor.abs() < least {
        return Vec::new();
    }
    let (size, percent) = (if factor < 0.0 { "smaller" } else { "larger" }, figure(100.0 * factor.abs(), 1));
    let finding =
        |message| Finding::new("print-scale-wrong", Level::Stop, case.with_rivals(message)).leaving(case.open());
    if let [one] = carriers.as_slice() {
        let message = phrase!("findings-print-scale", size = size, percent = percent, body = case.body(*one));
        return vec![finding(message).on_carrier(&case.kit.carriers[*one].name)];
    }
    vec![finding(phrase!("findings-print-scales", size = size, percent = percent))]
}
