//! The floor sheets do not lie in one plane.

use super::{Case, Explanation, Finding, Open, Rule, Touches};
use crate::geom::deg;
use crate::marker::Role;
use crate::num::ONE_SIDED_95;
use crate::pose::Extra;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "floor-not-level", codes: &["floor-not-level"], touches: Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("floor-not-level", Level::Stop)];

pub(super) const LEAST_MM: f64 = 2.0;
pub(super) const LEAST_DEG: f64 = 0.15;

fn find(case: &Case) -> Vec<Finding> {
    let by_sheets = between_sheets(case);
    if by_sheets.is_empty() { below_wheels(case).into_iter().chain(uneven(case)).collect() } else { by_sheets }
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
    let (typed, off, u) = against_typed(case)?;
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

/// The rear hubs' height as typed, how much higher they are over the sheets' plane, and its standard uncertainty, mm.
fn against_typed(case: &Case) -> Option<(f64, f64, f64)> {
    let typed = case.job.vehicle.floor_below_hub_mm?;
    let u_typed = case.job.vehicle.u_floor_below_hub_mm;
    if !case.scene?.on_floor {
        return None;
    }
    let ((left, ul), (right, ur)) = (hub_height(case, Role::RearLeftWheel)?, hub_height(case, Role::RearRightWheel)?);
    Some((typed, f64::midpoint(left, right) - typed, f64::midpoint(ul, ur).hypot(u_typed)))
}

/// From how much on a floor that rises between the wheels and the sheets is found, with probability .95, mm.
pub(super) fn detectable_below_wheels_mm(case: &Case) -> Option<f64> {
    let (_, _, u) = against_typed(case)?;
    Some((SIGMAS * u).max(LEAST_MM) + ONE_SIDED_95 * u)
}

/// A hub's height over the plane of the sheets and its standard uncertainty, mm.
type Height = (f64, f64);

fn hub_height(case: &Case, role: Role) -> Option<Height> {
    let pose = case.placed(role)?;
    Some((pose.vehicle_from_carrier.origin_mm().z, pose.u_position_mm[2]))
}

/// Wheels that do not stand alike on the plane of the sheets: the worst pair.
fn uneven(case: &Case) -> Option<Finding> {
    case.scene.filter(|s| s.on_floor)?;
    let mean = |[(a, ua), (b, ub)]: [Height; 2]| (f64::midpoint(a, b), ua.hypot(ub) / 2.0);
    let of = |left, right| Some([hub_height(case, left)?, hub_height(case, right)?]);
    let rear = of(Role::RearLeftWheel, Role::RearRightWheel);
    let front = of(Role::FrontLeftWheel, Role::FrontRightWheel);
    let ends = rear.zip(front).map(|(rear, front)| [mean(front), mean(rear)]);
    let pairs = [
        (["rear_left", "rear_right"], rear, UNEVEN_MM),
        (["front_left", "front_right"], front, UNEVEN_MM),
        (["front", "rear"], ends, UNLIKE_MM),
    ];
    let beyond = |(names, pair, most): ([&'static str; 2], Option<[Height; 2]>, f64)| {
        let [(a, ua), (b, ub)] = pair?;
        let over = (a - b).abs() - most - 2.0 * ua.hypot(ub);
        (over > 0.0).then_some((over, names[usize::from(a > b)], (a - b).abs()))
    };
    let (_, lower, mm) = pairs.into_iter().filter_map(beyond).max_by(|a, b| a.0.total_cmp(&b.0))?;
    let message = phrase!("findings-wheels-uneven", lower = lower, mm = figure(mm, 0));
    Some(Finding::new("floor-not-level", Level::Warn, message))
}

/// Both hubs of an axle are as high on one plane, and rear and front ones nearly, mm (common practice, no source).
const UNEVEN_MM: f64 = 15.0;
const UNLIKE_MM: f64 = 40.0;

/// Four standard uncertainties: chance below 1e-4.
const SIGMAS: f64 = 4.0;
