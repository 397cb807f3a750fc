//! Markers were printed at another size than the kit file says.

use super::suspects::{LEVEL, Suspect};
use super::{Case, Explanation, Finding, Rule, Touches};
use crate::num::normal_quantile;
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

/// What careful printing and corners of small markers found alike a hundredth of a pixel outward or inward in all photos look
/// like, relative: photos that only tell this much more surely are no sign of a fault of one carrier's.
pub(super) const CAREFUL: f64 = 0.0005;

fn find(case: &Case) -> Vec<Finding> {
    let Some(suspect) = case.culprit(|e| matches!(e, Extra::Scale { .. })) else { return Vec::new() };
    let Extra::Scale { carriers } = &suspect.extra else { return Vec::new() };
    let factor = suspect.test.estimate[0];
    let least = if carriers.len() == 1 { surely_beyond_careful(suspect) } else { LEAST };
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

/// The size from which one carrier's prints are unlikely to be as careful work leaves them.
fn surely_beyond_careful(suspect: &Suspect) -> f64 {
    let u = suspect.test.covariance[(0, 0)].max(0.0).sqrt();
    LEAST_OF_ONE.max(CAREFUL + normal_quantile(1.0 - LEVEL / 2.0) * u)
}
