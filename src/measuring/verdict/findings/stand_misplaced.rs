//! A check is outside: which misplacement of the stand that is.

use super::{Case, Explanation, Finding, Rule};
use crate::quantity::Quantity;
use crate::verdict::{Level, Verdict};
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
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
    title: "Stand misplaced",
    rationale: "The sensor learns the stand's position as the vehicle's: its error is the stand's error.",
    method: "A check that is outside by the sheet's decision rule; its rate of false alarms is the rule's.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[
    Explanation {
        code: "stand-turned",
        level: Level::Warn,
        title: "Stand turned",
        meaning: "The stand is not square to the reference line.",
        cause: "One end was pushed when it was moved, it was squared to the bumper or a wall, or to the centreline where the thrust line counts.",
        look: "Measure from both ends of the stand to the same point on either side of the vehicle.",
        remedy: "Turn the stand by the amount the report gives, then photograph again.",
    },
    Explanation {
        code: "stand-off-centre",
        level: Level::Warn,
        title: "Stand off centre",
        meaning: "The aim point is to one side of where it should be.",
        cause: "It was centred by eye, on the emblem, on the number plate, or the sensor's own offset was left out or taken to the wrong side.",
        look: "Hang a plumb line from the emblem and from the aim point and sight along the vehicle's middle.",
        remedy: "Move the stand sideways by the amount the report gives, keep it square, then photograph again.",
    },
    Explanation {
        code: "stand-too-near",
        level: Level::Warn,
        title: "Stand too near",
        meaning: "The distance from the datum to the target face is too small.",
        cause: "It was measured from another point of the vehicle, or to the stand's foot or mast instead of the face.",
        look: "Drop a plumb line from the datum and from the target face and measure on the floor.",
        remedy: "Move the stand away by the amount the report gives, then photograph again.",
    },
    Explanation {
        code: "stand-too-far",
        level: Level::Warn,
        title: "Stand too far",
        meaning: "The distance from the datum to the target face is too large.",
        cause: "It was measured from another point of the vehicle, or along a tape that was not straight.",
        look: "Drop a plumb line from the datum and from the target face and measure on the floor.",
        remedy: "Move the stand towards the vehicle by the amount the report gives, then photograph again.",
    },
    Explanation {
        code: "stand-too-high",
        level: Level::Warn,
        title: "Target too high",
        meaning: "The aim point is above where it should be.",
        cause: "The scale on the mast was read at another edge, or the height of another vehicle was left.",
        look: "Measure from the floor to the aim point with a rule held upright.",
        remedy: "Lower the target by the amount the report gives, then photograph again.",
    },
    Explanation {
        code: "stand-too-low",
        level: Level::Warn,
        title: "Target too low",
        meaning: "The aim point is below where it should be.",
        cause: "The scale on the mast was read at another edge, or the height of another vehicle was left.",
        look: "Measure from the floor to the aim point with a rule held upright.",
        remedy: "Raise the target by the amount the report gives, then photograph again.",
    },
    Explanation {
        code: "stand-tilted",
        level: Level::Warn,
        title: "Target tilted",
        meaning: "The target face leans forward or back.",
        cause: "The feet were not levelled, the tilt of another step was left, or it was tilted the wrong way.",
        look: "Hold a spirit level or an angle gauge upright against the face.",
        remedy: "Tilt the target as the report says, then photograph again.",
    },
    Explanation {
        code: "stand-not-level",
        level: Level::Warn,
        title: "Target not level",
        meaning: "One end of the target is lower than the other, or the target is upside down (then nothing is measured: void).",
        cause: "A foot stands in a joint of the floor, or was not levelled.",
        look: "Lay a spirit level on the beam.",
        remedy: "Level the stand at its feet, then photograph again.",
    },
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
