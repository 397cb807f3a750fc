//! The vehicle in the world: hubs, floor, reference lines, frame.

use nalgebra::{Matrix3, Point3, Vector3};

use super::inputs::{Bodies, Facts};
use super::undetermined::Undetermined;
use crate::geom::{Carrier, Plane, Pose, Vehicle, World, rad};
use crate::marker::Role;
use crate::setup::{From, ReferenceLine};

/// The vehicle's geometry at one point of the input vector.
pub(super) struct Geometry<'a> {
    pub(super) facts: &'a Facts<'a>,
    pub(super) bodies: &'a Bodies,
    pub(super) floor: Result<Floor, Undetermined>,
}

/// The floor and whether its height is known.
#[derive(Debug, Clone, Copy)]
pub(super) struct Floor {
    pub(super) plane: Plane,
    pub(super) height_known: bool,
}

impl<'a> Geometry<'a> {
    pub(super) fn new(facts: &'a Facts<'a>, bodies: &'a Bodies) -> Self {
        let mut geometry = Geometry { facts, bodies, floor: Err(Undetermined::NoFloor) };
        geometry.floor = geometry.find_floor();
        geometry
    }

    /// Pose of the one body with a role.
    pub(super) fn body(&self, role: Role) -> Result<Pose<World, Carrier>, Undetermined> {
        let mut with_role = self.facts.kit.with_role(role);
        with_role.find_map(|k| self.bodies.bodies[k]).ok_or(Undetermined::NotSeen(role))
    }

    pub(super) fn hub(&self, role: Role) -> Result<Point3<f64>, Undetermined> {
        Ok(Point3::from(self.body(role)?.origin_mm()))
    }

    /// Midpoint of the rear hub datums.
    pub(super) fn rear(&self) -> Result<Point3<f64>, Undetermined> {
        Ok(nalgebra::center(&self.hub(Role::RearLeftWheel)?, &self.hub(Role::RearRightWheel)?))
    }

    /// Midpoint of the front hub datums.
    pub(super) fn front(&self) -> Result<Point3<f64>, Undetermined> {
        Ok(nalgebra::center(&self.hub(Role::FrontLeftWheel)?, &self.hub(Role::FrontRightWheel)?))
    }

    /// The floor: the sheets' plane, else square to plumb plates and below
    /// the rear hubs by the typed height.
    fn find_floor(&self) -> Result<Floor, Undetermined> {
        if self.bodies.on_floor {
            return Ok(Floor { plane: Plane::through(&Point3::origin(), &Vector3::z()), height_known: true });
        }
        let (left, right) = (self.hub(Role::RearLeftWheel)?, self.hub(Role::RearRightWheel)?);
        let across = (left - right).normalize();
        // A plate is plumb about the axle only: camber is normal, so its lean
        // along the axle is ignored and the hubs' line is taken as level.
        let wheels = [Role::RearLeftWheel, Role::RearRightWheel, Role::FrontLeftWheel, Role::FrontRightWheel];
        let up = wheels
            .iter()
            .filter_map(|r| self.body(*r).ok())
            .fold(Vector3::zeros(), |s, b| s + b.direction(&Vector3::z()));
        let normal = (up - across * across.dot(&up)).normalize();
        let below = self.bodies.floor_below_hub_mm;
        let foot = nalgebra::center(&left, &right) - normal * below.unwrap_or(0.0);
        Ok(Floor { plane: Plane::through(&foot, &normal), height_known: below.is_some() })
    }

    /// Direction of a reference line, a horizontal unit vector.
    pub(super) fn line(&self, line: ReferenceLine) -> Result<Vector3<f64>, Undetermined> {
        let floor = self.floor?.plane;
        let direction = match line {
            ReferenceLine::RearAxleNormal => {
                let across = self.hub(Role::RearLeftWheel)? - self.hub(Role::RearRightWheel)?;
                floor.along(&across).cross(&floor.normal)
            }
            ReferenceLine::ThrustLine => {
                let heading = |role| -> Result<Vector3<f64>, Undetermined> { self.heading(role) };
                heading(Role::RearLeftWheel)? + heading(Role::RearRightWheel)?
            }
            ReferenceLine::Centreline => {
                let ahead = match self.front() {
                    Ok(front) => front,
                    Err(_) => self.centreline_nose().ok_or(Undetermined::NoCentreline)?,
                };
                floor.along(&(ahead - self.rear()?))
            }
        };
        Ok(direction.normalize())
    }

    /// Horizontal direction of a wheel plate's x axis.
    pub(super) fn heading(&self, role: Role) -> Result<Vector3<f64>, Undetermined> {
        Ok(self.floor?.plane.along(&self.body(role)?.direction(&Vector3::x())).normalize())
    }

    fn centreline_nose(&self) -> Option<Point3<f64>> {
        let kit = self.facts.kit;
        let on_line = |k: &usize| kit.carriers[*k].on_centreline;
        let k = kit.with_role(Role::Nose).filter(on_line).find(|k| self.bodies.bodies[*k].is_some())?;
        self.bodies.bodies[k].map(|b| Point3::from(b.origin_mm()))
    }

    /// The point that a distance starts from.
    pub(super) fn datum(&self, from: &From, d: &Vector3<f64>) -> Result<Point3<f64>, Undetermined> {
        match from {
            From::RearAxle => self.rear(),
            From::FrontAxle => self.front().or_else(|_| {
                let wheelbase = self.bodies.wheelbase_mm.ok_or(Undetermined::NoWheelbase)?;
                Ok(self.rear()? + d * wheelbase)
            }),
            From::Nose => self.seen_nose().or_else(|_| {
                let ahead = self.bodies.nose_from_rear_axle_mm.ok_or(Undetermined::NoNose)?;
                Ok(self.rear()? + d * ahead)
            }),
            From::Datum(name) => self.named_datum(name),
        }
    }

    /// The nose mark.
    pub(super) fn seen_nose(&self) -> Result<Point3<f64>, Undetermined> {
        self.hub(Role::Nose)
    }

    /// A datum of the set-up sheet on its carrier.
    pub(super) fn named_datum(&self, name: &str) -> Result<Point3<f64>, Undetermined> {
        let datums = &self.facts.setup.datums;
        let at = datums.iter().position(|d| d.name == name).ok_or(Undetermined::NoDatum)?;
        let carriers = &self.facts.kit.carriers;
        let k = carriers.iter().position(|c| c.name == datums[at].carrier).ok_or(Undetermined::NoDatum)?;
        let body = self.bodies.bodies[k].ok_or(Undetermined::NotSeen(carriers[k].role))?;
        let offset_mm = Vector3::from(self.bodies.datum_offsets_mm[at]);
        if self.astray_mm(carriers[k].role, &body, &offset_mm) > MOST_ASTRAY_MM.max(2.0 * datums[at].u_mm) {
            return Err(Undetermined::Leans(carriers[k].role));
        }
        Ok(body.point(&Point3::from(self.bodies.datum_offsets_mm[at])))
    }

    /// How far a datum beside a mark on the vehicle's body goes astray with the mark's lean, mm: its offset is along the vehicle's
    /// axes, and paper on a sloping bumper is not.
    fn astray_mm(&self, role: Role, body: &Pose<World, Carrier>, offset_mm: &Vector3<f64>) -> f64 {
        let on_body = role.is_on_vehicle() && !role.is_wheel();
        let Some(vehicle) = self.world_from_vehicle(ReferenceLine::RearAxleNormal).ok().filter(|_| on_body) else {
            return 0.0;
        };
        let lean = vehicle.rotation().inverse() * body.rotation();
        if lean.angle() < rad(LEAST_LEAN_DEG) { 0.0 } else { (lean * offset_mm - offset_mm).norm() }
    }

    /// The vehicle frame along a reference line.
    pub(super) fn world_from_vehicle(&self, line: ReferenceLine) -> Result<Pose<World, Vehicle>, Undetermined> {
        let floor = self.floor?.plane;
        let (x, z) = (self.line(line)?, floor.normal.into_inner());
        let origin = floor.foot_of(&self.rear()?);
        Ok(Pose::from_matrix(Matrix3::from_columns(&[x, z.cross(&x), z]), origin.coords))
    }
}

/// A mark's lean that is no scatter of its four corners, degrees, and how far a datum may be off by it, mm (common practice, no source).
const LEAST_LEAN_DEG: f64 = 1.5;
const MOST_ASTRAY_MM: f64 = 2.0;
