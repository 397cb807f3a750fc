//! Where the stand is: what the set-up sheet wants plus the scene's error.

use nalgebra::{Point3, UnitQuaternion, Vector3};

use super::vehicle::{Line, Vehicle};
use crate::geom::{Attitude, Carrier, Pose, World, deg, rad};
use crate::quantity::Quantity;
use crate::setup::{Check, From, ReferenceLine, Setup};
use crate::synth::scene::{FloorSpec, StandError, StandSpec};

/// The stand's wanted place by the sheet's nominal values.
#[derive(Debug, Clone, Copy)]
struct Wanted {
    aim_mm: Point3<f64>,
    attitude: Attitude,
    line: Line,
}

/// What is wanted of a target, and by how much it is missed.
pub(crate) struct Asked<'a> {
    /// The target's name in the kit.
    pub(crate) carrier: &'a str,
    /// The step, where the sheet has several.
    pub(crate) step: Option<&'a str>,
    /// The deviation.
    pub(crate) error: StandError,
}

fn check<'a>(setup: &'a Setup, quantity: Quantity, asked: &Asked) -> Option<&'a Check> {
    setup.checks.iter().find(|c| {
        c.quantity == quantity
            && c.target.as_deref().is_none_or(|t| t == asked.carrier)
            && c.step.as_deref().is_none_or(|s| Some(s) == asked.step)
    })
}

/// The datum of a check in the design frame.
pub(crate) fn datum_mm(
    setup: &Setup,
    vehicle: &Vehicle,
    from: &From,
    pose_of: impl Fn(&str) -> Option<Pose<World, Carrier>>,
) -> Option<Point3<f64>> {
    match from {
        From::Nose => Some(vehicle.nose_mm),
        From::FrontAxle => Some(vehicle.front_mm()),
        From::RearAxle => Some(vehicle.rear_mm()),
        From::Datum(name) => {
            let datum = setup.datums.iter().find(|d| d.name == *name)?;
            pose_of(&datum.carrier).map(|pose| pose.point(&Point3::from(datum.offset_mm)))
        }
    }
}

fn wanted(
    spec: &StandSpec,
    setup: &Setup,
    vehicle: &Vehicle,
    asked: &Asked,
    pose_of: impl Fn(&str) -> Option<Pose<World, Carrier>> + Copy,
) -> Wanted {
    let find = |quantity| check(setup, quantity, asked);
    let nominal = |quantity| find(quantity).map_or(0.0, |c| c.nominal);
    let line_of = |c: Option<&Check>| {
        let which: ReferenceLine = c.and_then(|c| c.reference_line).unwrap_or(setup.reference_line);
        vehicle.line(which)
    };
    let line = line_of(find(Quantity::LateralOffset));
    let distance = find(Quantity::Distance);
    let from = distance.and_then(|c| c.from.clone()).unwrap_or(From::Nose);
    let from_mm = datum_mm(setup, vehicle, &from, pose_of).unwrap_or(vehicle.nose_mm);
    let mut along =
        distance.map_or(spec.distance_mm, |c| c.nominal) + (from_mm - line.origin_mm).dot(&line.direction());
    if let (None, Some(range)) = (distance, find(Quantity::Range)) {
        let from = range.from.clone().unwrap_or(From::Nose);
        let from_mm = datum_mm(setup, vehicle, &from, pose_of).unwrap_or(vehicle.nose_mm) - line.origin_mm;
        let across = nominal(Quantity::LateralOffset) - from_mm.dot(&line.left());
        along = from_mm.dot(&line.direction()) + (range.nominal.powi(2) - across.powi(2)).max(0.0).sqrt();
    }
    let height = match (find(Quantity::Height), find(Quantity::HeightFromNose)) {
        (Some(c), _) => c.nominal,
        (None, Some(c)) => {
            let from = c.from.clone().unwrap_or(From::Nose);
            datum_mm(setup, vehicle, &from, pose_of).unwrap_or(vehicle.nose_mm).z + c.nominal
        }
        (None, None) => spec.height_mm,
    };
    let mut aim_mm = line.origin_mm + line.direction() * along + line.left() * nominal(Quantity::LateralOffset);
    aim_mm.z = height;
    let attitude = Attitude {
        yaw_deg: deg(line_of(find(Quantity::Yaw)).heading_rad) + nominal(Quantity::Yaw),
        pitch_deg: nominal(Quantity::Pitch),
        roll_deg: nominal(Quantity::Roll),
    };
    Wanted { aim_mm, attitude, line }
}

/// The stand's true pose.
pub(crate) fn stand_pose(
    spec: &StandSpec,
    setup: &Setup,
    vehicle: &Vehicle,
    floor: &FloorSpec,
    asked: &Asked,
    pose_of: impl Fn(&str) -> Option<Pose<World, Carrier>> + Copy,
) -> Pose<World, Carrier> {
    let Wanted { aim_mm, attitude, line } = wanted(spec, setup, vehicle, asked, pose_of);
    let error = &asked.error;
    let mut aim_mm = aim_mm + line.direction() * error.distance_mm + line.left() * error.lateral_mm;
    aim_mm.z += error.height_mm;
    let attitude = Attitude {
        yaw_deg: attitude.yaw_deg + error.yaw_deg,
        pitch_deg: attitude.pitch_deg + error.pitch_deg,
        roll_deg: attitude.roll_deg + error.roll_deg,
    };
    let upright = Pose::new(attitude.rotation(), aim_mm.coords);
    on_floor(floor, &upright)
}

/// The pose of a body that was set up as if the floor were flat, standing on
/// the floor as it is: beyond the hinge both turn with the slope.
pub(crate) fn on_floor(floor: &FloorSpec, flat: &Pose<World, Carrier>) -> Pose<World, Carrier> {
    let origin = flat.origin_mm();
    let beyond = origin.x - floor.slope_from_x_mm;
    if floor.slope_deg.abs() < 1e-12 || beyond <= 0.0 {
        return *flat;
    }
    let rise = UnitQuaternion::from_scaled_axis(Vector3::y() * -rad(floor.slope_deg));
    let hinge = Vector3::new(floor.slope_from_x_mm, origin.y, 0.0);
    Pose::new(rise * flat.rotation(), hinge + rise * (origin - hinge))
}

/// Height of the floor at a place, mm.
pub(crate) fn floor_height_mm(floor: &FloorSpec, x_mm: f64) -> f64 {
    (x_mm - floor.slope_from_x_mm).max(0.0) * rad(floor.slope_deg).tan()
}
