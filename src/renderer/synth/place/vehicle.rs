//! Where the vehicle's hub datums, wheels and nose really are.

use nalgebra::{Point3, Rotation2, UnitQuaternion, Vector2, Vector3};

use crate::geom::{Carrier, Pose, World, rad};
use crate::marker::Role;
use crate::setup::ReferenceLine;
use crate::synth::scene::VehicleSpec;

/// One wheel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wheel {
    /// Hub datum in the design frame, mm.
    pub hub_mm: Point3<f64>,
    /// Direction of travel against the design centreline, left positive, rad.
    pub heading_rad: f64,
    /// Turn about the direction of travel, right side down positive, rad.
    pub roll_rad: f64,
    /// The plate's turn about the axle, top forward positive, rad.
    pub plumb_rad: f64,
    /// On the vehicle's left.
    pub left: bool,
}

/// The vehicle as it stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Vehicle {
    /// Rear left, rear right, front left, front right.
    pub wheels: [Wheel; 4],
    /// The nose, mm.
    pub nose_mm: Point3<f64>,
    /// Wheel-arch edges above the floor, as the wheels, mm: the body hangs where
    /// the scene says, whatever lies below one of the wheels.
    pub arches_mm: [f64; 4],
    /// How far it has rolled forward from the design position, mm.
    pub rolled_mm: f64,
}

/// A horizontal line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Line {
    /// The point of the floor below the midpoint of the rear hub datums, mm.
    pub origin_mm: Point3<f64>,
    /// Direction against the design centreline, left positive, rad.
    pub heading_rad: f64,
}

impl Line {
    /// Unit direction.
    pub fn direction(&self) -> Vector3<f64> {
        Vector3::new(self.heading_rad.cos(), self.heading_rad.sin(), 0.0)
    }

    /// Unit vector to the left.
    pub fn left(&self) -> Vector3<f64> {
        Vector3::new(-self.heading_rad.sin(), self.heading_rad.cos(), 0.0)
    }
}

impl Wheel {
    /// The wheel's own pose: y along the spin axis, x horizontal.
    pub fn pose(&self) -> Pose<World, Carrier> {
        Pose::new(self.turn(0.0), self.hub_mm.coords)
    }

    /// The pose of a plate that sits perfectly: turned about the axle only.
    ///
    /// The formats' order `Rz(heading) Ry(plumb) Rx(roll)`: its yaw is the wheel's
    /// heading. A plate that turns about a cambered axle would differ by plumb
    /// times camber, 0.01 degrees at 0.3 and 2.
    pub fn plate_pose(&self) -> Pose<World, Carrier> {
        Pose::new(self.turn(self.plumb_rad), self.hub_mm.coords)
    }

    fn turn(&self, plumb_rad: f64) -> UnitQuaternion<f64> {
        let about = |axis: Vector3<f64>, angle: f64| UnitQuaternion::from_scaled_axis(axis * angle);
        about(Vector3::z(), self.heading_rad) * about(Vector3::y(), plumb_rad) * about(Vector3::x(), self.roll_rad)
    }

    /// Camber, top outward positive, rad.
    pub fn camber_rad(&self) -> f64 {
        if self.left { -self.roll_rad } else { self.roll_rad }
    }
}

/// Position of a wheel role in [`Vehicle::wheels`].
pub(crate) fn wheel_index(role: Role) -> Option<usize> {
    match role {
        Role::RearLeftWheel => Some(0),
        Role::RearRightWheel => Some(1),
        Role::FrontLeftWheel => Some(2),
        Role::FrontRightWheel => Some(3),
        _ => None,
    }
}

impl Vehicle {
    /// The vehicle of a scene, rolled forward by so much.
    pub fn of(spec: &VehicleSpec, rolled_mm: f64) -> Self {
        let axle = |x: f64, track: f64, skew_deg: f64, shift: f64, left: bool| {
            let half = if left { 0.5 * track } else { -0.5 * track };
            let arm = Rotation2::new(rad(skew_deg)) * Vector2::new(0.0, half);
            Point3::new(x + rolled_mm + arm.x, shift + arm.y, spec.hub_height_mm)
        };
        let wheel = |rear: bool, left: bool| {
            let side = usize::from(!left);
            let (toe, camber, plumb) = match rear {
                true => (spec.rear_toe_deg, spec.rear_camber_deg, spec.rear_plumb_deg),
                false => (spec.front_toe_deg, spec.front_camber_deg, spec.front_plumb_deg),
            };
            let mut hub_mm = match rear {
                true => axle(0.0, spec.rear_track_mm, spec.rear_axle_skew_deg, spec.rear_axle_shift_mm, left),
                false => axle(
                    spec.wheelbase_mm,
                    spec.front_track_mm,
                    spec.front_axle_skew_deg,
                    spec.front_axle_shift_mm,
                    left,
                ),
            };
            hub_mm.z += spec.raised_mm[side + if rear { 0 } else { 2 }];
            let steered = if rear { spec.thrust_deg } else { spec.steering_deg };
            let heading = if left { steered - toe[side] } else { steered + toe[side] };
            Wheel {
                hub_mm,
                heading_rad: rad(heading),
                roll_rad: rad(if left { -camber[side] } else { camber[side] }),
                plumb_rad: rad(plumb[side]),
                left,
            }
        };
        let offset = Vector3::from(spec.nose_offset_mm);
        Vehicle {
            wheels: [wheel(true, true), wheel(true, false), wheel(false, true), wheel(false, false)],
            nose_mm: Point3::new(spec.nose_mm[0] + rolled_mm, 0.0, spec.nose_mm[1]) + offset,
            arches_mm: spec.arch_heights_mm.map(|above| spec.hub_height_mm + above),
            rolled_mm,
        }
    }

    /// Midpoint of the rear hub datums.
    pub fn rear_mm(&self) -> Point3<f64> {
        nalgebra::center(&self.wheels[0].hub_mm, &self.wheels[1].hub_mm)
    }

    /// Midpoint of the front hub datums.
    pub fn front_mm(&self) -> Point3<f64> {
        nalgebra::center(&self.wheels[2].hub_mm, &self.wheels[3].hub_mm)
    }

    /// A reference line, as the formats define it: from the hub datums and
    /// the wheels' directions, not from the design.
    pub fn line(&self, which: ReferenceLine) -> Line {
        let rear = self.rear_mm();
        let heading_rad = match which {
            ReferenceLine::RearAxleNormal => {
                let across = self.wheels[0].hub_mm - self.wheels[1].hub_mm;
                (-across.x).atan2(across.y)
            }
            ReferenceLine::ThrustLine => 0.5 * (self.wheels[0].heading_rad + self.wheels[1].heading_rad),
            ReferenceLine::Centreline => {
                let along = self.front_mm() - rear;
                along.y.atan2(along.x)
            }
        };
        Line { origin_mm: Point3::new(rear.x, rear.y, 0.0), heading_rad }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::geom::deg;

    #[test]
    fn skew_thrust_and_shift_turn_their_own_line_only() {
        let plain = VehicleSpec { rear_toe_deg: [0.1, 0.1], ..VehicleSpec::default() };
        let heading = |spec: &VehicleSpec, line| deg(Vehicle::of(spec, 0.0).line(line).heading_rad);
        let skewed = VehicleSpec { rear_axle_skew_deg: 0.2, ..plain.clone() };
        assert!((heading(&skewed, ReferenceLine::RearAxleNormal) - 0.2).abs() < 1e-9);
        assert!(heading(&skewed, ReferenceLine::ThrustLine).abs() < 1e-9);
        let steered = VehicleSpec { thrust_deg: -0.1, ..plain.clone() };
        assert!((heading(&steered, ReferenceLine::ThrustLine) + 0.1).abs() < 1e-9);
        // A front axle 4.6077 mm to the left at 2640 mm: atan(4.6077 / 2640) = 0.1 deg.
        let shifted = VehicleSpec { front_axle_shift_mm: 4.607_674, ..plain };
        assert!((heading(&shifted, ReferenceLine::Centreline) - 0.1).abs() < 1e-6);
    }

    #[test]
    fn negative_camber_leans_the_tops_inwards_and_toe_in_turns_the_fronts_inwards() {
        let spec = VehicleSpec {
            rear_camber_deg: [-2.0, -2.0],
            rear_toe_deg: [1.0, 1.0],
            rear_plumb_deg: [3.0, 3.0],
            ..VehicleSpec::default()
        };
        let v = Vehicle::of(&spec, 0.0);
        let top = |i: usize| v.wheels[i].pose().direction(&Vector3::z());
        assert!(top(0).y < 0.0 && top(1).y > 0.0);
        let ahead = |i: usize| v.wheels[i].pose().direction(&Vector3::x());
        assert!(ahead(0).y < 0.0 && ahead(1).y > 0.0);
        assert!(v.wheels[0].plate_pose().direction(&Vector3::z()).x > 0.0, "plumb positive: top forward");
    }
}
