//! A check is outside: which misplacement of the stand that is.

use super::{Case, Explanation, Finding, Rule};
use crate::quantity::Quantity;
use crate::verdict::{Level, Verdict};

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
                None => format!("The {} is outside; {}.", check.quantity.trade_name(), c.correction),
            };
            Some((check.quantity.move_order(), Finding::new(code, Level::Warn, message)))
        })
        .collect();
    found.sort_by_key(|(order, _)| *order);
    let mut codes = std::collections::BTreeSet::new();
    found.into_iter().map(|(_, f)| f).filter(|f| codes.insert((f.code, f.message.clone()))).collect()
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
