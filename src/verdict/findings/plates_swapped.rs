//! Wheel plates on the wrong wheel or upside down.

use nalgebra::Vector3;

use super::{Case, Finding, Rule};
use crate::marker::Role;
use crate::verdict::Level;

pub(super) const RULE: Rule = Rule {
    codes: &["plates-swapped"],
    title: "Plates swapped or upside down",
    rationale: "Each plate knows which side of the vehicle it belongs to; on the other wheel left and right are exchanged.",
    method: "The left plate must be on the left of the line from the rear wheels to the stand, and every plate's up must \
             point up. Exact; no false alarms.",
    find,
};

fn find(case: &Case) -> Vec<Finding> {
    let Some(scene) = case.scene else { return Vec::new() };
    let pose = |role: Role| case.rig.with_role(role).find_map(|k| scene.carriers[k]);
    let Some(stand) = pose(Role::Target) else { return Vec::new() };
    let up = if scene.on_floor { Vector3::z() } else { stand.direction(&Vector3::z()) };
    let mut found = Vec::new();
    for (left, right, axle) in
        [(Role::RearLeftWheel, Role::RearRightWheel, "rear"), (Role::FrontLeftWheel, Role::FrontRightWheel, "front")]
    {
        let (Some(l), Some(r)) = (pose(left), pose(right)) else { continue };
        let ahead = stand.origin_mm() - (l.origin_mm() + r.origin_mm()) / 2.0;
        let to_left = up.cross(&ahead);
        if (l.origin_mm() - r.origin_mm()).dot(&to_left) < 0.0 {
            let message = format!(
                "The {axle} wheel plates are swapped: the left one is on the right wheel. Put each on its own wheel, the right way up, and take the photos again."
            );
            found.push(Finding::new("plates-swapped", Level::Void, message));
        }
    }
    if found.is_empty() {
        found.extend(upside_down(case, scene, &up));
    }
    found
}

fn upside_down(case: &Case, scene: &crate::pose::Scene, up: &Vector3<f64>) -> Vec<Finding> {
    let carriers = case.rig.carriers.iter().enumerate();
    carriers
        .filter(|(_, c)| c.role.is_wheel() || c.role == Role::Target)
        .filter(|(k, _)| scene.carriers[*k].is_some_and(|p| p.direction(&Vector3::z()).dot(up) < 0.0))
        .map(|(_, c)| {
            let message = format!("{} is upside down. Turn it the right way up and take the photos again.", c.name);
            let code = if c.role == Role::Target { "stand-not-level" } else { "plate-not-seated" };
            Finding::new(code, Level::Void, message).on_carrier(&c.name)
        })
        .collect()
}
