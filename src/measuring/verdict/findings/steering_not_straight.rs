//! The front wheels do not point straight ahead.

use super::{Case, Explanation, Finding, Rule};
use crate::quantity::{Estimate, Quantity};
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["steering-not-straight"],
    title: "Steering not straight",
    rationale: "Procedures want the wheels straight ahead: a turned wheel shifts the vehicle on its tyres and the steering angle enters many calibrations.",
    method: "Mean heading of the front plates against the centreline: beyond what half a degree (common practice, no source) can read \
             in 95 % of all cases, and beyond 3.3 standard uncertainties (chance below 1e-3). Needs plates on all four wheels.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "steering-not-straight",
    level: Level::Warn,
    title: "Steering not straight",
    meaning: "The front wheels point to one side of the centreline.",
    cause: "The steering wheel was turned when the vehicle was parked, or moved when somebody got out; or it is not centred when it drives straight.",
    look: "The steering wheel's spokes, and the gap between front tyre and wing on either side.",
    remedy: "Roll the vehicle straight for a few metres, centre the steering, check the stand again and take the photos again.",
}];

/// Wheels that point this far aside are turned, degrees (common practice, no source).
const TURNED_DEG: f64 = 0.5;
/// Standard uncertainties: one-sided .95, and two-sided 1e-3.
const ONE_SIDED: f64 = 1.645;
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
    (TURNED_DEG - ONE_SIDED * u).max(NEVER_BY_CHANCE * u)
}

/// The size that is found with probability .95, degrees.
pub(super) fn detectable(angle: &Estimate) -> f64 {
    threshold(angle) + ONE_SIDED * angle.standard_uncertainty
}
