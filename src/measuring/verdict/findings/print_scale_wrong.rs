//! Markers were printed at another size than the kit file says.

use super::{Case, Explanation, Finding, Rule, Touches};
use crate::pose::Extra;
use crate::quantity::rounded;
use crate::verdict::Level;

pub(super) const RULE: Rule =
    Rule { name: "print-scale-wrong", codes: &["print-scale-wrong"], touches: Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("print-scale-wrong", Level::Stop)];

/// Smaller than what paper does with the weather is of no interest, relative.
pub(super) const LEAST: f64 = 0.003;

fn find(case: &Case) -> Vec<Finding> {
    let Some(suspect) = case.culprit(|e| matches!(e, Extra::Scale { .. })) else { return Vec::new() };
    let Extra::Scale { carriers } = &suspect.extra else { return Vec::new() };
    let factor = suspect.test.estimate[0];
    if factor.abs() < LEAST {
        return Vec::new();
    }
    let by = format!("{} % {}", rounded(100.0 * factor.abs(), 1), if factor < 0.0 { "smaller" } else { "larger" });
    let remedy = "Measure the black square of one with a ruler and enter what you read, or print again at 100 %.";
    let rivals = case.rivals();
    let finding = |message| Finding::new("print-scale-wrong", Level::Stop, message).leaving(case.open());
    if let [one] = carriers.as_slice() {
        let name = &case.kit.carriers[*one].name;
        let message = format!("The markers on {name} look {by} than the kit file says. {remedy}{rivals}");
        return vec![finding(message).on_carrier(name)];
    }
    vec![finding(format!(
        "All markers look {by} than the kit file says, against their spacing on the carriers. {remedy}{rivals}"
    ))]
}
