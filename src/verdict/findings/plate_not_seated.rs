//! A wheel plate sits askew on its wheel.

use super::{Case, Finding, Rule};
use crate::geom::Attitude;
use crate::marker::Role;
use crate::quantity::rounded;
use crate::verdict::Level;

pub(super) const RULE: Rule = Rule {
    codes: &["plate-not-seated"],
    title: "Plate not seated",
    rationale: "A plate that is not flush with its wheel points elsewhere than the wheel: thrust line and toe follow the plate.",
    method: "Difference of the two headings of an axle's plates (total toe), which is small on any road vehicle: beyond \
             0.7 deg (common practice, no source) with .95 probability. Both plates askew by the same angle are not seen.",
    find,
};

/// No axle of a road-worthy vehicle has more total toe, degrees.
const MOST_TOTAL_TOE_DEG: f64 = 0.7;

fn find(case: &Case) -> Vec<Finding> {
    let mut found = Vec::new();
    for (left, right, axle) in
        [(Role::RearLeftWheel, Role::RearRightWheel, "rear"), (Role::FrontLeftWheel, Role::FrontRightWheel, "front")]
    {
        let (Some((l, ul)), Some((r, ur))) = (heading(case, left), heading(case, right)) else { continue };
        let total = r - l;
        let u = ul.hypot(ur);
        if total.abs() - 1.645 * u <= MOST_TOTAL_TOE_DEG {
            continue;
        }
        // The one that is farther from the reference line is the likelier.
        let role = if l.abs() > r.abs() { left } else { right };
        let Some(carrier) = case.rig.carriers.iter().find(|c| c.role == role) else { continue };
        let message = format!(
            "The headings of the {axle} wheel plates differ by {} deg, more than toe can be: {} is probably not flush with its wheel. Seat it again and take the photos again.",
            rounded(total.abs(), 1),
            carrier.name
        );
        found.push(Finding::new("plate-not-seated", Level::Stop, message).on_carrier(&carrier.name));
    }
    found
}

/// Heading of a plate against the reference line and its standard uncertainty, degrees.
fn heading(case: &Case, role: Role) -> Option<(f64, f64)> {
    let measurement = case.measurement?;
    let k = case.rig.with_role(role).next()?;
    let pose = measurement.carriers[k].as_ref()?;
    let yaw = Attitude::from_rotation(&pose.vehicle_from_carrier.rotation()).yaw_deg;
    let seating = case.rig.carriers[k].u_seating_deg[2];
    // Seating is what is tested here: it is no excuse, the rest is.
    Some((yaw, (pose.u_rotation_deg[2].powi(2) - seating.powi(2)).max(0.0).sqrt()))
}
