//! The floor sheets do not lie in one plane.

use super::{Case, Finding, Rule};
use crate::geom::deg;
use crate::pose::Extra;
use crate::quantity::rounded;
use crate::verdict::Level;

pub(super) const RULE: Rule = Rule {
    codes: &["floor-not-level"],
    title: "Floor not one plane",
    rationale: "Height, tilt and level refer to the floor. Where it bends between vehicle and stand there is no such plane.",
    method: "Score test: one sheet's own height and tilt. Best explanation of all suspects, chance below 1e-4, more than \
             2 mm or 0.15 deg. Sees bends between the sheets only; a floor that is one tilted plane is no misfit.",
    find,
};

const LEAST_MM: f64 = 2.0;
const LEAST_DEG: f64 = 0.15;

fn find(case: &Case) -> Vec<Finding> {
    let Some(suspect) = case.culprit(|e| matches!(e, Extra::SheetOffFloor { .. })) else { return Vec::new() };
    let Extra::SheetOffFloor { carrier } = suspect.extra else { return Vec::new() };
    let (mm, degrees) = (suspect.test.estimate[0].abs(), deg(suspect.test.estimate.rows(1, 2).norm()));
    if mm < LEAST_MM && degrees < LEAST_DEG {
        return Vec::new();
    }
    let name = &case.rig.carriers[carrier].name;
    let message = format!(
        "{name} does not lie in the plane of the other floor sheets (about {} mm and {} deg off): the floor slopes or bends there, or the sheet is curled. Flatten the sheet; if the floor is at fault, use a bay that is level.",
        rounded(mm, 0),
        rounded(degrees, 2)
    );
    vec![Finding::new("floor-not-level", Level::Stop, message).on_carrier(name)]
}
