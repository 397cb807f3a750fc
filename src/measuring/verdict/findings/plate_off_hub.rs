//! A wheel plate does not sit on its wheel's hub: the axles lie to each other as no vehicle's do.

use super::plate_not_seated::{MOST_TOTAL_TOE_DEG, OF_TARGET_AND_FLOOR, total_toe};
use super::{Case, Finding, Rule, Touches, plates_swapped};
use crate::marker::Role;
use crate::num::ONE_SIDED_95;
use crate::quantity::Quantity;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "plate-off-hub", codes: &["plate-not-seated"], touches: Touches::AllBut(OF_TARGET_AND_FLOOR), find };

/// No road-worthy vehicle's rear wheels point farther aside, degrees (common practice, no source).
const MOST_THRUST_DEG: f64 = 1.0;
/// Plates that point farther aside than this are not on their own wheels: another finding's, degrees.
const NOT_ASIDE_DEG: f64 = 45.0;
/// No road vehicle's axles differ by more in width between the hubs, mm (common practice, no source).
const MOST_TRACK_DIFFERENCE_MM: f64 = 100.0;

fn find(case: &Case) -> Vec<Finding> {
    let message = match (thrust(case), track_difference(case)) {
        (_, Some((rear, front, u))) if (rear - front).abs() - ONE_SIDED_95 * u > MOST_TRACK_DIFFERENCE_MM => {
            phrase!("findings-plate-off-hub-track", rear = figure(rear, 0), front = figure(front, 0))
        }
        (Some(degrees), _) => phrase!("findings-plate-off-hub-thrust", degrees = figure(degrees, 1)),
        _ => return Vec::new(),
    };
    if !(plates_swapped::RULE.find)(case).is_empty() {
        return Vec::new();
    }
    let finding = Finding::new("plate-not-seated", Level::Stop, message);
    let on_floor = case.scene.is_some_and(|s| s.on_floor);
    // Without sheets the plates are the floor too.
    vec![if on_floor { finding } else { finding.touching(Touches::Everything) }]
}

/// The thrust angle where it is none: a plate that is not flush is told from its axle's total toe.
fn thrust(case: &Case) -> Option<f64> {
    let angle = case.measured(Quantity::ThrustAngle)?;
    let (least, size) = (MOST_THRUST_DEG + ONE_SIDED_95 * angle.standard_uncertainty, angle.value.abs());
    let flush = |(total, u, _): (f64, f64, Role)| total.abs() - ONE_SIDED_95 * u <= MOST_TOTAL_TOE_DEG;
    let flush = total_toe(case, Role::RearLeftWheel, Role::RearRightWheel).is_none_or(flush);
    (flush && size > least && size < NOT_ASIDE_DEG).then_some(size)
}

/// Rear and front track and the standard uncertainty of their difference, mm.
fn track_difference(case: &Case) -> Option<(f64, f64, f64)> {
    let rear = case.measured(Quantity::RearTrack)?;
    let (front, u) = front_track(case)?;
    Some((rear.value, front, rear.standard_uncertainty.hypot(u)))
}

/// Between the front hub datums, and its standard uncertainty, mm.
pub(super) fn front_track(case: &Case) -> Option<(f64, f64)> {
    let hub = |role| {
        let pose = case.placed(role)?;
        Some((pose.vehicle_from_carrier.origin_mm(), pose.u_position_mm[1]))
    };
    let ((left, ul), (right, ur)) = (hub(Role::FrontLeftWheel)?, hub(Role::FrontRightWheel)?);
    Some(((left - right).norm(), ul.hypot(ur)))
}

/// What a plate must be off its hub by to the side to be found with probability .95 by the tracks alone, mm.
pub(super) fn may_differ_mm(case: &Case) -> Option<f64> {
    track_difference(case).map(|(_, _, u)| MOST_TRACK_DIFFERENCE_MM + 2.0 * ONE_SIDED_95 * u)
}
