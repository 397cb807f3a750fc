//! A wheel plate sits askew on its wheel.

use super::something_moved::{about, amount, how_far};
use super::suspects::LEVEL;
use super::{Case, Explanation, Finding, Open, Rule, Touches};
use crate::geom::Attitude;
use crate::marker::Role;
use crate::num::ONE_SIDED_95;
use crate::pose::Extra;
use crate::quantity::Quantity;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    name: "plate-not-seated",
    codes: &["plate-not-seated"],
    touches: Touches::AllBut(OF_TARGET_AND_FLOOR),
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("plate-not-seated", Level::Stop)];

/// No axle of a road-worthy vehicle has more total toe, degrees.
pub(super) const MOST_TOTAL_TOE_DEG: f64 = 0.55;

/// Where one plate is not flush, the axle's total toe is unknown by this, 1 sigma.
pub(crate) const U_TOTAL_TOE_DEG: f64 = MOST_TOTAL_TOE_DEG / 2.0;

/// Of a target against the sheets' plane: no plate has a part in it.
pub(super) const OF_TARGET_AND_FLOOR: &[Quantity] =
    &[Quantity::Height, Quantity::HeightFromNose, Quantity::Pitch, Quantity::Roll];

/// Axles by their plates.
pub(super) const AXLES: [(Role, Role, &str); 2] =
    [(Role::RearLeftWheel, Role::RearRightWheel, "rear"), (Role::FrontLeftWheel, Role::FrontRightWheel, "front")];

fn find(case: &Case) -> Vec<Finding> {
    let mut found: Vec<Finding> = slipped(case).into_iter().collect();
    let on_floor = case.scene.is_some_and(|s| s.on_floor);
    for (left, right, axle) in AXLES {
        let Some((total, u, role)) = total_toe(case, left, right) else { continue };
        if total.abs() - ONE_SIDED_95 * u <= MOST_TOTAL_TOE_DEG {
            continue;
        }
        let Some(k) = case.kit.with_role(role).next() else { continue };
        let (degrees, body) = (figure(total.abs(), 1), case.body(k));
        let message = phrase!("findings-plate-not-flush", axle = axle, degrees = degrees, body = body);
        let open = [(left, total), (right, -total)].into_iter().filter_map(|(role, turn_deg)| {
            Some(Open::NotFlush { carrier: case.kit.with_role(role).next()?, turn_deg })
        });
        let name = &case.kit.carriers[k].name;
        let finding = Finding::new("plate-not-seated", Level::Stop, message).on_carrier(name);
        let finding = finding.leaving(open.collect());
        // Without sheets the plates are the floor too.
        found.push(if on_floor { finding } else { finding.touching(Touches::Everything) });
    }
    found
}

/// A plate that sat differently in some photos.
fn slipped(case: &Case) -> Option<Finding> {
    let suspect = case.suspects.first().filter(|s| s.chance < LEVEL)?;
    let Extra::CarrierMoved { carrier, photos } = &suspect.extra else { return None };
    let body = &case.kit.carriers[*carrier];
    let step = how_far(amount(suspect).filter(|_| body.role.is_wheel())?);
    let (first, files) = (case.body_first(*carrier), case.files(photos));
    let message = case.with_rivals(phrase!("findings-plate-moved", body = first, photos = files, step = step));
    let finding = Finding::new("plate-not-seated", Level::Stop, message).on_carrier(&body.name).leaving(case.open());
    // A body that is in two places pulls at the photos, and they at everything.
    Some(about(finding.touching(Touches::Everything), case, photos))
}

/// Difference of two plates' headings, its standard uncertainty and the plate
/// that is farther from the reference line, degrees.
pub(super) fn total_toe(case: &Case, left: Role, right: Role) -> Option<(f64, f64, Role)> {
    let ((l, ul), (r, ur)) = (heading(case, left)?, heading(case, right)?);
    // Plates on each other's wheels may point backwards: 359.8 degrees apart is 0.2.
    let total = (r - l + 180.0).rem_euclid(360.0) - 180.0;
    Some((total, ul.hypot(ur), if l.abs() > r.abs() { left } else { right }))
}

/// Heading of a plate against the reference line and its standard uncertainty, degrees.
fn heading(case: &Case, role: Role) -> Option<(f64, f64)> {
    let k = case.kit.with_role(role).next()?;
    let pose = case.placed(role)?;
    let yaw = Attitude::from_rotation(&pose.vehicle_from_carrier.rotation()).yaw_deg;
    let seating = case.kit.carriers[k].u_seating_deg[2];
    // Seating is what is tested here: it is no excuse, the rest is.
    Some((yaw, (pose.u_rotation_deg[2].powi(2) - seating.powi(2)).max(0.0).sqrt()))
}
