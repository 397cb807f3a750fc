//! Every quantity of the formats page, straight from the placed bodies.
//!
//! Written apart from the measuring rooms on purpose: these formulas judge them.

use std::collections::BTreeMap;

use nalgebra::{Point3, Vector3};

use crate::geom::{Attitude, Carrier, Pose, World, deg};
use crate::marker::{Kit, Role};
use crate::quantity::Quantity as Q;
use crate::setup::{From, ReferenceLine, Setup};
use crate::synth::place::{Line, PlacedCarrier, Placement, Vehicle, datum_mm};

/// True values under the names that results use.
pub type Quantities = BTreeMap<String, f64>;

/// All true values against a reference line.
pub fn measured(placement: &Placement, kit: &Kit, setup: &Setup, line: ReferenceLine) -> Quantities {
    let vehicle = &placement.vehicle;
    let mut all = Quantities::new();
    let targets: Vec<&PlacedCarrier> =
        placement.carriers.iter().filter(|c| kit.carriers[c.index].role == Role::Target).collect();
    let pose_of = |name: &str| placement.carriers.iter().find(|c| kit.carriers[c.index].name == name).map(|c| c.pose);
    for target in &targets {
        let suffix = match targets.len() {
            1 => String::new(),
            _ => format!("@{}", kit.carriers[target.index].name),
        };
        let mut put = |name: &str, value: f64| all.insert(format!("{name}{suffix}"), value);
        against_line(&target.pose, vehicle, &vehicle.line(line), &mut put);
        against_datums(&target.pose, vehicle, setup, &vehicle.line(line), &pose_of, &mut put);
    }
    of_vehicle(vehicle, &vehicle.line(line), &mut |q, v| {
        all.insert(q.name().to_owned(), v);
    });
    for (role, quantity) in [
        (Role::RearLeftWheel, Q::PlatePlumbLeft),
        (Role::RearRightWheel, Q::PlatePlumbRight),
        (Role::FrontLeftWheel, Q::PlatePlumbFrontLeft),
        (Role::FrontRightWheel, Q::PlatePlumbFrontRight),
    ] {
        if let Some(plate) = placement.with_role(kit, role) {
            all.insert(quantity.name().to_owned(), plumb_deg(&plate.pose));
        }
    }
    arch_heights(placement, kit, &mut all);
    all
}

/// How high the body's arch edges are above the wheels' centres, from where the
/// vehicle itself is: a mark that seats askew changes no truth.
fn arch_heights(placement: &Placement, kit: &Kit, all: &mut Quantities) {
    let arches = [Q::ArchHeightRearLeft, Q::ArchHeightRearRight, Q::ArchHeightFrontLeft, Q::ArchHeightFrontRight];
    let mut heights = Vec::new();
    for (wheel, quantity) in arches.into_iter().enumerate() {
        let Some(role) = Role::of_arch_height(quantity) else { continue };
        if placement.with_role(kit, role).is_some() {
            let height = placement.vehicle.arches_mm[wheel] - placement.vehicle.wheels[wheel].hub_mm.z;
            all.insert(quantity.name().to_owned(), height);
            heights.push(height);
        }
    }
    if let [rear_left, rear_right, front_left, front_right] = heights.as_slice() {
        let (rear, front) = ((rear_left + rear_right) / 2.0, (front_left + front_right) / 2.0);
        let between = placement.vehicle.front_mm() - placement.vehicle.rear_mm();
        all.insert(Q::RideHeight.name().to_owned(), (rear + front) / 2.0);
        all.insert(Q::BodyPitch.name().to_owned(), deg(((rear - front) / between.x.hypot(between.y)).atan()));
    }
}

/// Angles, offset, height and side ranges of a target.
fn against_line(
    target: &Pose<World, Carrier>,
    vehicle: &Vehicle,
    line: &Line,
    put: &mut impl FnMut(&str, f64) -> Option<f64>,
) {
    let aim = Point3::from(target.origin_mm());
    let attitude = Attitude::from_rotation(&target.rotation());
    put(Q::Yaw.name(), wrapped_deg(attitude.yaw_deg - deg(line.heading_rad)));
    put(Q::Pitch.name(), attitude.pitch_deg);
    put(Q::Roll.name(), attitude.roll_deg);
    put(Q::LateralOffset.name(), (aim - line.origin_mm).dot(&line.left()));
    put(Q::Height.name(), aim.z);
    let face = target.direction(&Vector3::x());
    let range = |wheel: usize| (aim - vehicle.wheels[wheel].hub_mm).dot(&face) / line.direction().dot(&face);
    put(Q::SideRangeLeft.name(), range(0));
    put(Q::SideRangeRight.name(), range(1));
    put(Q::SideRangeDifference.name(), range(0) - range(1));
}

/// Distances and offsets of a target from the points that they are measured from.
fn against_datums(
    target: &Pose<World, Carrier>,
    vehicle: &Vehicle,
    setup: &Setup,
    line: &Line,
    pose_of: &dyn Fn(&str) -> Option<Pose<World, Carrier>>,
    put: &mut impl FnMut(&str, f64) -> Option<f64>,
) {
    let aim = Point3::from(target.origin_mm());
    let named = setup.datums.iter().map(|d| From::Datum(d.name.clone()));
    for from in [From::Nose, From::FrontAxle, From::RearAxle].into_iter().chain(named) {
        let Some(datum) = datum_mm(setup, vehicle, &from, pose_of) else { continue };
        let d = aim - datum;
        put(&format!("{}_from_{}", Q::Distance.name(), from.name()), d.dot(&line.direction()));
        put(&format!("{}_from_{}", Q::Range.name(), from.name()), d.x.hypot(d.y));
        if matches!(from, From::Nose | From::Datum(_)) {
            let suffix = if from == From::Nose { String::new() } else { format!("@{}", from.name()) };
            put(&format!("{}{suffix}", Q::LateralFromNose.name()), d.dot(&line.left()));
            put(&format!("{}{suffix}", Q::HeightFromNose.name()), d.z);
        }
    }
}

/// Toes, cambers, track, wheelbase.
fn of_vehicle(vehicle: &Vehicle, line: &Line, put: &mut impl FnMut(Q, f64)) {
    let centreline = vehicle.line(ReferenceLine::Centreline).heading_rad;
    let heading = |wheel: usize| deg(vehicle.wheels[wheel].heading_rad - centreline);
    put(Q::RearToeLeft, -heading(0));
    put(Q::RearToeRight, heading(1));
    put(Q::FrontToeLeft, -heading(2));
    put(Q::FrontToeRight, heading(3));
    put(Q::ThrustAngle, 0.5 * (heading(1) + heading(0)));
    put(Q::SteeringAngle, 0.5 * (heading(2) + heading(3)));
    for (wheel, quantity) in
        [Q::CamberLeft, Q::CamberRight, Q::CamberFrontLeft, Q::CamberFrontRight].into_iter().enumerate()
    {
        put(quantity, deg(vehicle.wheels[wheel].camber_rad()));
    }
    let hub = |wheel: usize| vehicle.wheels[wheel].hub_mm;
    put(Q::RearTrack, (hub(0) - hub(1)).norm());
    let between = vehicle.front_mm() - vehicle.rear_mm();
    put(Q::Wheelbase, between.x.hypot(between.y));
    put(Q::Setback, (hub(2) - hub(3)).dot(&line.direction()));
}

/// Turn of a plate's z axis about the plate's own y direction, top forward positive.
fn plumb_deg(plate: &Pose<World, Carrier>) -> f64 {
    Attitude::from_rotation(&plate.rotation()).pitch_deg
}

fn wrapped_deg(angle: f64) -> f64 {
    (angle + 180.0).rem_euclid(360.0) - 180.0
}
