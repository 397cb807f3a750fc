//! The front wheels do not point straight ahead.

use super::{Case, Explanation, Finding, Rule};
use crate::num::ONE_SIDED_95;
use crate::quantity::{Estimate, Quantity};
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "steering-not-straight", codes: &["steering-not-straight"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("steering-not-straight", Level::Warn)];

/// Wheels that point this far aside are turned, degrees (common practice, no source).
const TURNED_DEG: f64 = 0.5;
const NEVER_BY_CHANCE: f64 = 3.3;

fn find(case: &Case) -> Vec<Finding> {
    let Some(angle) = case.measured(Quantity::SteeringAngle) else { return Vec::new() };
    if angle.value.abs() < threshold(&angle) {
        return Vec::new();
    }
    let way = if angle.value > 0.0 { "left" } else { "right" };
    let message = phrase!("findings-steering", way = way, degrees = figure(angle.value.abs(), 2));
    vec![Finding::new("steering-not-straight", Level::Warn, message)]
}

/// From here on the wheels count as turned, degrees: half a degree is found with
/// .95, but nothing that could be chance.
fn threshold(angle: &Estimate) -> f64 {
    let u = angle.standard_uncertainty;
    (TURNED_DEG - ONE_SIDED_95 * u).max(NEVER_BY_CHANCE * u)
}

/// The size that is found with probability .95, degrees.
pub(super) fn detectable(angle: &Estimate) -> f64 {
    threshold(angle) + ONE_SIDED_95 * angle.standard_uncertainty
}
