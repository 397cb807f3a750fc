//! What each quantity is, as formulas over the geometry.

use nalgebra::{Point3, Vector3};

use super::geometry::Geometry;
use super::undetermined::Undetermined;
use crate::geom::{Attitude, Carrier, Pose, Vehicle, World, deg};
use crate::marker::Role;
use crate::quantity::Quantity;
use crate::setup::{From, ReferenceLine};

/// One question: a quantity with what it depends on.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Ask {
    /// Which quantity.
    pub quantity: Quantity,
    /// The datum of a distance, range or nose quantity; nose where absent.
    pub from: Option<From>,
    /// Index of the target in the kit.
    pub target: usize,
    /// Against which line.
    pub line: ReferenceLine,
}

/// Everything that the formulas share, once per point of the vector.
pub(super) struct Setting<'a> {
    pub(super) geometry: Geometry<'a>,
    frames: [Result<Pose<World, Vehicle>, Undetermined>; 3],
}

impl<'a> Setting<'a> {
    pub(super) fn new(geometry: Geometry<'a>) -> Self {
        let frames = ReferenceLine::ALL.map(|l| geometry.world_from_vehicle(l));
        Setting { geometry, frames }
    }

    pub(super) fn frame(&self, line: ReferenceLine) -> Result<Pose<World, Vehicle>, Undetermined> {
        self.frames[line as usize]
    }

    /// The value of one quantity, mm or degrees.
    pub(super) fn value(&self, ask: &Ask) -> Result<f64, Undetermined> {
        let value = self.formula(ask)?;
        if value.is_finite() { Ok(value) } else { Err(Undetermined::Degenerate) }
    }

    fn formula(&self, ask: &Ask) -> Result<f64, Undetermined> {
        use Quantity as Q;
        match ask.quantity {
            Q::RearToeLeft => Ok(-self.heading_deg(Role::RearLeftWheel)?),
            Q::RearToeRight => self.heading_deg(Role::RearRightWheel),
            Q::FrontToeLeft => Ok(-self.heading_deg(Role::FrontLeftWheel)?),
            Q::FrontToeRight => self.heading_deg(Role::FrontRightWheel),
            Q::ThrustAngle => {
                Ok((self.heading_deg(Role::RearLeftWheel)? + self.heading_deg(Role::RearRightWheel)?) / 2.0)
            }
            Q::SteeringAngle => {
                Ok((self.heading_deg(Role::FrontLeftWheel)? + self.heading_deg(Role::FrontRightWheel)?) / 2.0)
            }
            Q::PlatePlumbLeft => self.plumb_deg(Role::RearLeftWheel),
            Q::PlatePlumbRight => self.plumb_deg(Role::RearRightWheel),
            Q::PlatePlumbFrontLeft => self.plumb_deg(Role::FrontLeftWheel),
            Q::PlatePlumbFrontRight => self.plumb_deg(Role::FrontRightWheel),
            Q::CamberLeft => Ok(-self.lean_deg(Role::RearLeftWheel)?),
            Q::CamberRight => self.lean_deg(Role::RearRightWheel),
            Q::CamberFrontLeft => Ok(-self.lean_deg(Role::FrontLeftWheel)?),
            Q::CamberFrontRight => self.lean_deg(Role::FrontRightWheel),
            Q::RearTrack => {
                let g = &self.geometry;
                Ok((g.hub(Role::RearLeftWheel)? - g.hub(Role::RearRightWheel)?).norm())
            }
            Q::Wheelbase => {
                let g = &self.geometry;
                Ok(g.floor?.plane.along(&(g.front()? - g.rear()?)).norm())
            }
            Q::Setback => {
                let g = &self.geometry;
                let d = g.line(ask.line)?;
                Ok((g.hub(Role::FrontLeftWheel)? - g.hub(Role::FrontRightWheel)?).dot(&d))
            }
            Q::RideHeight => Ok((self.arch(Role::RearLeftArch)?
                + self.arch(Role::RearRightArch)?
                + self.arch(Role::FrontLeftArch)?
                + self.arch(Role::FrontRightArch)?)
                / 4.0),
            Q::BodyPitch => {
                let front = f64::midpoint(self.arch(Role::FrontLeftArch)?, self.arch(Role::FrontRightArch)?);
                let rear = f64::midpoint(self.arch(Role::RearLeftArch)?, self.arch(Role::RearRightArch)?);
                let g = &self.geometry;
                Ok(deg((rear - front).atan2(g.floor?.plane.along(&(g.front()? - g.rear()?)).norm())))
            }
            q if Role::of_arch_height(q).is_some() => {
                self.arch(Role::of_arch_height(q).ok_or(Undetermined::ReadingOnly)?)
            }
            _ if ask.quantity.is_reading_only() => Err(Undetermined::ReadingOnly),
            _ => self.of_target(ask),
        }
    }

    fn of_target(&self, ask: &Ask) -> Result<f64, Undetermined> {
        use Quantity as Q;
        let g = &self.geometry;
        let target = g.bodies.bodies[ask.target].ok_or(Undetermined::NotSeen(Role::Target))?;
        let aim = Point3::from(target.origin_mm());
        let world_from_vehicle = self.frame(ask.line)?;
        let d = world_from_vehicle.direction(&Vector3::x());
        let in_vehicle = world_from_vehicle.inverse() * target;
        let attitude = Attitude::from_rotation(&in_vehicle.rotation());
        let from = ask.from.clone().unwrap_or(From::Nose);
        match ask.quantity {
            Q::Distance => Ok((aim - g.datum(&from, &d)?).dot(&d)),
            Q::Range => Ok(g.floor?.plane.along(&(aim - g.datum(&from, &d)?)).norm()),
            Q::LateralOffset => Ok(in_vehicle.origin_mm().y),
            Q::LateralFromNose => Ok(self.beyond_mark(&aim, &ask.from, &world_from_vehicle)?.y),
            Q::Height => {
                let floor = g.floor?;
                if floor.height_known { Ok(floor.plane.height_of_mm(&aim)) } else { Err(Undetermined::NoFloorHeight) }
            }
            Q::HeightFromNose => Ok(self.beyond_mark(&aim, &ask.from, &world_from_vehicle)?.z),
            Q::Yaw => Ok(attitude.yaw_deg),
            Q::Pitch => Ok(attitude.pitch_deg),
            Q::Roll => Ok(attitude.roll_deg),
            Q::SideRangeLeft => self.side_range(Role::RearLeftWheel, &target, &d),
            Q::SideRangeRight => self.side_range(Role::RearRightWheel, &target, &d),
            Q::SideRangeDifference => {
                let left = self.side_range(Role::RearLeftWheel, &target, &d)?;
                Ok(left - self.side_range(Role::RearRightWheel, &target, &d)?)
            }
            _ => Err(Undetermined::Degenerate),
        }
    }

    /// The aim point from the nose mark or a datum, in the vehicle's axes.
    fn beyond_mark(
        &self,
        aim: &Point3<f64>,
        from: &Option<From>,
        world_from_vehicle: &Pose<World, Vehicle>,
    ) -> Result<Vector3<f64>, Undetermined> {
        let mark = match from {
            Some(From::Datum(name)) => self.geometry.named_datum(name)?,
            _ => self.geometry.seen_nose()?,
        };
        Ok(world_from_vehicle.inverse().direction(&(aim - mark)))
    }

    fn side_range(&self, hub: Role, target: &Pose<World, Carrier>, d: &Vector3<f64>) -> Result<f64, Undetermined> {
        let n = target.direction(&Vector3::x());
        let hub = self.geometry.hub(hub)?;
        Ok((Point3::from(target.origin_mm()) - hub).dot(&n) / d.dot(&n))
    }

    /// Height of an arch's edge above its wheel's centre.
    fn arch(&self, role: Role) -> Result<f64, Undetermined> {
        let g = &self.geometry;
        let wheel = role.arch_wheel().ok_or(Undetermined::NotSeen(role))?;
        Ok((g.hub(role)? - g.hub(wheel)?).dot(&g.floor?.plane.normal))
    }

    /// Heading of a plate against the centreline, left positive.
    fn heading_deg(&self, role: Role) -> Result<f64, Undetermined> {
        let g = &self.geometry;
        let (line, heading) = (g.line(ReferenceLine::Centreline)?, g.heading(role)?);
        Ok(deg(line.cross(&heading).dot(&g.floor?.plane.normal).atan2(line.dot(&heading))))
    }

    /// Lean of a plate's z axis in the plane of its heading, top forward positive.
    fn plumb_deg(&self, role: Role) -> Result<f64, Undetermined> {
        self.needs_sheets()?;
        let g = &self.geometry;
        let z = g.body(role)?.direction(&Vector3::z());
        Ok(deg(z.dot(&g.heading(role)?).atan2(z.dot(&g.floor?.plane.normal))))
    }

    /// Rotation of a plate about its heading, right side down positive.
    fn lean_deg(&self, role: Role) -> Result<f64, Undetermined> {
        self.needs_sheets()?;
        let g = &self.geometry;
        let up = g.floor?.plane.normal;
        let left = up.cross(&g.heading(role)?);
        let y = g.body(role)?.direction(&Vector3::y());
        Ok(deg(y.dot(&up).atan2(y.dot(&left))))
    }

    fn needs_sheets(&self) -> Result<(), Undetermined> {
        if self.geometry.bodies.on_floor { Ok(()) } else { Err(Undetermined::PlatesAreTheFloor) }
    }
}
