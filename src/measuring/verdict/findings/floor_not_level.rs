//! The floor sheets do not lie in one plane.

use super::{Case, Explanation, Finding, Open, Rule, Touches};
use crate::geom::deg;
use crate::marker::Role;
use crate::pose::Extra;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["floor-not-level"],
    title: "Floor not one plane",
    rationale: "Height, tilt and level refer to the floor. Where it bends between vehicle and stand there is no such plane.",
    method: "Score test: height and tilt of one sheet, or of all sheets beyond a kink across the vehicle's line. Best explanation of all \
             suspects, chance below 1e-4, more than 2 mm or 0.15 deg. Also the rear hubs' height over the \
             sheets' plane against the typed one, beyond four standard uncertainties and 2 mm (chance 6e-5). A floor that is one tilted \
             plane is no misfit, and three sheets always lie in one plane.",
    touches: Touches::Everything,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "floor-not-level",
    level: Level::Stop,
    title: "Floor not one plane",
    meaning: "The floor bends between vehicle and stand, or a sheet does not lie flat on it.",
    cause: "A drain, a ramp, a joint between slabs, a curled or propped-up sheet; or the typed hub height is wrong.",
    look: "Lay a straight edge or a water level across the bay; press down the corners of the sheet.",
    remedy: "Flatten the sheet; if the floor is at fault, use a bay that is level.",
}];

pub(super) const LEAST_MM: f64 = 2.0;
pub(super) const LEAST_DEG: f64 = 0.15;

fn find(case: &Case) -> Vec<Finding> {
    let by_sheets = between_sheets(case);
    if by_sheets.is_empty() { below_wheels(case).into_iter().collect() } else { by_sheets }
}

fn between_sheets(case: &Case) -> Vec<Finding> {
    let Some(suspect) = case.culprit(|e| matches!(e, Extra::OffFloor { .. })) else { return Vec::new() };
    let Extra::OffFloor { carriers, .. } = &suspect.extra else { return Vec::new() };
    let (mm, degrees) = (suspect.test.estimate[0].abs(), deg(suspect.test.estimate.rows(1, 2).norm()));
    if mm < LEAST_MM && degrees < LEAST_DEG {
        return Vec::new();
    }
    let (mm, degrees) = (figure(mm, 0), figure(degrees, 2));
    let finding =
        |message| Finding::new("floor-not-level", Level::Stop, case.with_rivals(message)).leaving(case.open());
    if let [one] = carriers.as_slice() {
        let message = phrase!("findings-floor-sheet", body = case.body_first(*one), mm = mm, degrees = degrees);
        return vec![finding(message).on_carrier(&case.kit.carriers[*one].name)];
    }
    let sheets = case.own_names(carriers);
    vec![finding(phrase!("findings-floor-bends", sheets = sheets, mm = mm, degrees = degrees))]
}

/// The wheels' own height over the plane of the sheets: sheets on two slopes
/// can lie in one plane, but then that plane does not pass below the wheels.
fn below_wheels(case: &Case) -> Option<Finding> {
    let typed = case.job.vehicle.floor_below_hub_mm?;
    let u_typed = case.job.vehicle.u_floor_below_hub_mm;
    if !case.scene?.on_floor {
        return None;
    }
    let height = |role| {
        let k = case.kit.with_role(role).next()?;
        let pose = case.measurement?.carriers[k].as_ref()?;
        Some((pose.vehicle_from_carrier.origin_mm().z, pose.u_position_mm[2]))
    };
    let ((left, ul), (right, ur)) = (height(Role::RearLeftWheel)?, height(Role::RearRightWheel)?);
    let off = f64::midpoint(left, right) - typed;
    let u = f64::midpoint(ul, ur).hypot(u_typed);
    if off.abs() < LEAST_MM || off.abs() < SIGMAS * u {
        return None;
    }
    let message = phrase!(
        "findings-floor-below-wheels",
        way = if off < 0.0 { "higher" } else { "lower" },
        mm = figure(off.abs(), 1),
        typed = figure(typed, 0)
    );
    // The sheets' plane is the floor, or the one below the rear wheels is.
    let open = vec![Open::AsMeasured, Open::OffFloor(case.sheets())];
    Some(Finding::new("floor-not-level", Level::Stop, message).leaving(open))
}

/// Four standard uncertainties: chance below 1e-4.
const SIGMAS: f64 = 4.0;
