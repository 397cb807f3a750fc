//! Markers were printed at another size than the kit file says.

use super::{Case, Explanation, Finding, Rule, Touches};
use crate::pose::Extra;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["print-scale-wrong"],
    title: "Printed at another size",
    rationale: "A print at 97 % makes its carrier seem 3 % farther away.",
    method: "Score test of one factor on the sizes of all markers of a carrier, and of one on all markers. The factor on all \
             is told from the camera's focal length by the spacing of the markers on one carrier alone; where that is not enough \
             the rival is named. Best explanation of all suspects, chance below 1e-4, more than 0.3 %. Not seen: a carrier of one \
             marker whose distance nothing else fixes.",
    touches: Touches::Everything,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "print-scale-wrong",
    level: Level::Stop,
    title: "Printed at another size",
    meaning: "Markers do not have the size that the kit file states, against their spacing.",
    cause: "The printer scaled the page to fit its margins, or sheets of another kit were mounted.",
    look: "Measure the black square of one marker with a steel ruler, in both directions; the print's own check ruler must be true.",
    remedy: "Print again at 100 % (no fit to page), or enter the measured size in the kit file.",
}];

/// Smaller than what paper does with the weather is of no interest, relative.
pub(super) const LEAST: f64 = 0.003;

fn find(case: &Case) -> Vec<Finding> {
    let Some(suspect) = case.culprit(|e| matches!(e, Extra::Scale { .. })) else { return Vec::new() };
    let Extra::Scale { carriers } = &suspect.extra else { return Vec::new() };
    let factor = suspect.test.estimate[0];
    if factor.abs() < LEAST {
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
