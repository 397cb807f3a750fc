//! The markers of a carrier were printed at another size than the rig file says.

use super::{Case, Finding, Rule};
use crate::pose::Extra;
use crate::quantity::rounded;
use crate::verdict::Level;

pub(super) const RULE: Rule = Rule {
    codes: &["print-scale-wrong"],
    title: "Printed at another size",
    rationale: "A print at 97 % makes its carrier seem 3 % farther away.",
    method: "Score test: one factor on the sizes of all markers of a carrier. Sees a carrier that differs from the others; \
             a factor common to all prints is told from the camera's focal length only by the marker spacing. \
             Best explanation of all suspects, chance below 1e-4, more than 0.3 %.",
    find,
};

const LEAST: f64 = 0.003;

fn find(case: &Case) -> Vec<Finding> {
    let Some(suspect) = case.culprit(|e| matches!(e, Extra::CarrierScale { .. })) else { return Vec::new() };
    let Extra::CarrierScale { carrier } = suspect.extra else { return Vec::new() };
    let factor = suspect.test.estimate[0];
    if factor.abs() < LEAST {
        return Vec::new();
    }
    let name = &case.rig.carriers[carrier].name;
    let message = format!(
        "The markers on {name} look {} % {} than the rig file says. Measure the black square of one with a ruler and enter what you read, or print again at 100 %.",
        rounded(100.0 * factor.abs(), 1),
        if factor < 0.0 { "smaller" } else { "larger" }
    );
    vec![Finding::new("print-scale-wrong", Level::Stop, message).on_carrier(name)]
}
