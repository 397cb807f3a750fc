//! A check is outside: which misplacement of the stand that is.

use super::{Case, Explanation, Finding, Rule};
use crate::quantity::Quantity;
use crate::verdict::{Level, Verdict};
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    name: "stand-misplaced",
    codes: &[
        "stand-turned",
        "stand-off-centre",
        "stand-too-near",
        "stand-too-far",
        "stand-too-high",
        "stand-too-low",
        "stand-tilted",
        "stand-not-level",
    ],
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[
    Explanation::of("stand-turned", Level::Warn),
    Explanation::of("stand-off-centre", Level::Warn),
    Explanation::of("stand-too-near", Level::Warn),
    Explanation::of("stand-too-far", Level::Warn),
    Explanation::of("stand-too-high", Level::Warn),
    Explanation::of("stand-too-low", Level::Warn),
    Explanation::of("stand-tilted", Level::Warn),
    Explanation::of("stand-not-level", Level::Warn),
];

fn find(case: &Case) -> Vec<Finding> {
    let mut found: Vec<(u8, Finding)> = case
        .setup
        .checks
        .iter()
        .zip(case.checks)
        .filter(|(_, c)| c.verdict == Verdict::Outside)
        .filter_map(|(check, c)| {
            let code = code(check.quantity, check.nominal - c.answer.as_ref()?.estimate.value)?;
            let message = match c.move_by {
                Some(_) => c.correction.clone(),
                None => {
                    let held = c.correction.clone();
                    phrase!("findings-outside-held", quantity = check.quantity.phrase(), correction = held)
                }
            };
            Some((check.quantity.move_order(), Finding::new(code, Level::Warn, message)))
        })
        .collect();
    found.sort_by_key(|(order, _)| *order);
    let mut all: Vec<Finding> = Vec::new();
    for (_, finding) in found {
        if !all.iter().any(|f| f.code == finding.code && f.message == finding.message) {
            all.push(finding);
        }
    }
    all
}

fn code(quantity: Quantity, move_by: f64) -> Option<&'static str> {
    use Quantity as Q;
    let near = move_by > 0.0;
    Some(match quantity {
        Q::Yaw | Q::SideRangeDifference => "stand-turned",
        Q::LateralOffset | Q::LateralFromNose => "stand-off-centre",
        Q::Distance | Q::Range | Q::SideRangeLeft | Q::SideRangeRight if near => "stand-too-near",
        Q::Distance | Q::Range | Q::SideRangeLeft | Q::SideRangeRight => "stand-too-far",
        Q::Height | Q::HeightFromNose if near => "stand-too-low",
        Q::Height | Q::HeightFromNose => "stand-too-high",
        Q::Pitch | Q::TargetTiltGravity => "stand-tilted",
        Q::Roll | Q::TargetLevelGravity => "stand-not-level",
        _ => return None,
    })
}
