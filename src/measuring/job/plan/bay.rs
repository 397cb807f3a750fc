//! The bay as the set-up sheet wants it: where each carrier will be and what
//! hides it. Vehicle frame: the floor is z = 0, every reference line the x axis.

use nalgebra::{Point3, UnitQuaternion, Vector3};

use crate::folder::Vehicle;
use crate::geom::{Attitude, Carrier, Pose, World, rad};
use crate::job::opening::Doubles;
use crate::marker::{self, Kit, Role};
use crate::quantity::Quantity;
use crate::setup::{Check, From, Setup};

/// Sizes of the vehicle, mm: typed ones where there are, else a middling car's.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Sizes {
    pub(super) wheelbase: f64,
    pub(super) track: f64,
    pub(super) hub_height: f64,
    pub(super) nose: f64,
    pub(super) nose_height: f64,
    pub(super) half_width: f64,
    pub(super) height: f64,
    pub(super) overhang: f64,
}

impl Sizes {
    pub(super) fn of(vehicle: &Vehicle) -> Self {
        Sizes {
            wheelbase: vehicle.wheelbase_mm.unwrap_or(2640.0),
            track: 1695.0,
            hub_height: vehicle.floor_below_hub_mm.unwrap_or(321.0),
            nose: vehicle.nose_from_rear_axle_mm.unwrap_or(3490.0),
            nose_height: 520.0,
            half_width: 890.0,
            height: 1490.0,
            overhang: 780.0,
        }
    }

    /// The typed sizes for the measurement, each there.
    pub(super) fn typed(&self, vehicle: &Vehicle) -> Vehicle {
        Vehicle {
            wheelbase_mm: Some(self.wheelbase),
            nose_from_rear_axle_mm: Some(self.nose),
            floor_below_hub_mm: Some(self.hub_height),
            ..vehicle.clone()
        }
    }

    /// An arch mark where the sheet wants the body, else where a middling car has it.
    fn arch(&self, setup: &Setup, role: Role) -> Pose<World, Carrier> {
        let wanted = setup.checks.iter().find(|c| Role::of_arch_height(c.quantity) == Some(role)).map(|c| c.nominal);
        let front = matches!(role, Role::FrontLeftArch | Role::FrontRightArch);
        let left = matches!(role, Role::FrontLeftArch | Role::RearLeftArch);
        let above = self.hub_height + wanted.unwrap_or(377.0);
        at(if front { self.wheelbase } else { 0.0 }, if left { self.half_width } else { -self.half_width }, above)
    }

    /// Boxes of the body, corners in the vehicle frame.
    pub(super) fn boxes(&self) -> Vec<Slab> {
        let (w, h) = (self.half_width, self.height);
        let upright = |x: [f64; 2], half: f64, z: [f64; 2]| Slab {
            pose: Pose::identity(),
            low: Point3::new(x[0], -half, z[0]),
            high: Point3::new(x[1], half, z[1]),
        };
        let mut boxes = vec![
            upright([-self.overhang, self.nose - 420.0], 0.985 * w, [0.16 * h, 0.61 * h]),
            upright([self.nose - 420.0, self.nose - 110.0], 0.84 * w, [0.16 * h, 0.52 * h]),
            upright([-0.1 * self.wheelbase, 0.62 * self.wheelbase], 0.8 * w, [0.61 * h, 0.97 * h]),
        ];
        // Tyres, below the body's sides.
        for x in [0.0, self.wheelbase] {
            for side in [-1.0, 1.0] {
                let (a, b) = (side * (w - 200.0), side * (w - 15.0));
                boxes.push(Slab {
                    pose: Pose::identity(),
                    low: Point3::new(x - self.hub_height, a.min(b), 0.0),
                    high: Point3::new(x + self.hub_height, a.max(b), 2.0 * self.hub_height),
                });
            }
        }
        boxes
    }
}

/// A box in its own frame, which hides what is behind it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Slab {
    pub(super) pose: Pose<World, Carrier>,
    pub(super) low: Point3<f64>,
    pub(super) high: Point3<f64>,
}

impl Slab {
    /// Whether it cuts the straight line between two points.
    pub(super) fn cuts(&self, from: &Point3<f64>, to: &Point3<f64>) -> bool {
        let inverse = self.pose.inverse();
        let (a, b) = (inverse.point(from), inverse.point(to));
        let (mut enter, mut leave) = (0.0f64, 1.0f64);
        for i in 0..3 {
            let d = b[i] - a[i];
            if d.abs() < 1e-9 {
                if a[i] < self.low[i] || a[i] > self.high[i] {
                    return false;
                }
                continue;
            }
            let (s, t) = ((self.low[i] - a[i]) / d, (self.high[i] - a[i]) / d);
            enter = enter.max(s.min(t));
            leave = leave.min(s.max(t));
        }
        enter < leave
    }
}

/// Everything as wanted.
#[derive(Debug, Clone)]
pub(super) struct ExpectedBay {
    pub(super) sizes: Sizes,
    /// By carrier of the kit; `None` for cards, which are no part of the geometry.
    pub(super) carriers: Vec<Option<Pose<World, Carrier>>>,
}

/// Where floor sheets lie best: about the space between vehicle and stand; x before the nose, y, turn.
const SHEETS: [[f64; 3]; 8] = [
    [810.0, 1250.0, 4.0],
    [760.0, -1300.0, -7.0],
    [2210.0, 900.0, 12.0],
    [2260.0, -950.0, -3.0],
    [-790.0, 1750.0, 9.0],
    [-840.0, -1800.0, 5.0],
    [3400.0, 500.0, 0.0],
    [3400.0, -500.0, 0.0],
];

impl ExpectedBay {
    /// The kit's carriers, a target for each step of the sheet.
    pub(super) fn new(steps: &Doubles, setup: &Setup, sizes: Sizes) -> Self {
        let kit = &steps.kit;
        let mut bay = ExpectedBay { sizes, carriers: vec![None; kit.carriers.len()] };
        let mut sheets = SHEETS.iter().cycle();
        for (k, carrier) in kit.carriers.iter().enumerate() {
            bay.carriers[k] = match carrier.role {
                Role::RearLeftWheel => Some(at(0.0, sizes.track / 2.0, sizes.hub_height)),
                Role::RearRightWheel => Some(at(0.0, -sizes.track / 2.0, sizes.hub_height)),
                Role::FrontLeftWheel => Some(at(sizes.wheelbase, sizes.track / 2.0, sizes.hub_height)),
                Role::FrontRightWheel => Some(at(sizes.wheelbase, -sizes.track / 2.0, sizes.hub_height)),
                Role::Nose => Some(at(sizes.nose, 0.0, sizes.nose_height)),
                Role::Floor => sheets.next().map(|[x, y, turn_deg]| {
                    let turn = UnitQuaternion::from_scaled_axis(Vector3::z() * rad(*turn_deg));
                    Pose::new(turn, Vector3::new(sizes.nose + x, *y, 0.0))
                }),
                arch if arch.is_arch() => Some(sizes.arch(setup, arch)),
                _ => None,
            };
        }
        for k in kit.with_role(Role::Target) {
            let (base, state) = steps.origin(k);
            let step = setup.steps.get(state).map(String::as_str);
            bay.carriers[k] = Some(bay.target(kit, setup, &kit.carriers[base], step));
        }
        bay
    }

    /// The target where its checks want it.
    fn target(&self, kit: &Kit, setup: &Setup, target: &marker::Carrier, step: Option<&str>) -> Pose<World, Carrier> {
        let find = |quantity| {
            setup.checks.iter().find(|c: &&Check| {
                c.quantity == quantity
                    && c.target.as_deref().is_none_or(|t| t == target.name)
                    && c.step.as_deref().is_none_or(|s| Some(s) == step)
            })
        };
        let nominal = |q| find(q).map(|c| c.nominal);
        let from = |c: &Check| self.datum(kit, setup, c.from.as_ref().unwrap_or(&From::Nose));
        let beyond_nose = Point3::new(self.sizes.nose, 0.0, self.sizes.nose_height);
        let y = match (nominal(Quantity::LateralOffset), find(Quantity::LateralFromNose)) {
            (Some(y), _) => y,
            (None, Some(c)) => from(c).y + c.nominal,
            (None, None) => 0.0,
        };
        let x = match (find(Quantity::Distance), find(Quantity::Range)) {
            (Some(c), _) => from(c).x + c.nominal,
            (None, Some(c)) => from(c).x + (c.nominal.powi(2) - (y - from(c).y).powi(2)).max(0.0).sqrt(),
            (None, None) => beyond_nose.x + 1500.0,
        };
        let z = match (nominal(Quantity::Height), find(Quantity::HeightFromNose)) {
            (Some(z), _) => z,
            (None, Some(c)) => from(c).z + c.nominal,
            (None, None) if target.lies_flat() => 0.0,
            (None, None) => 850.0,
        };
        let angle = |q| nominal(q).unwrap_or(0.0);
        let attitude = Attitude {
            yaw_deg: angle(Quantity::Yaw),
            pitch_deg: angle(Quantity::Pitch),
            roll_deg: angle(Quantity::Roll),
        };
        Pose::new(attitude.rotation(), Vector3::new(x, y, z))
    }

    fn datum(&self, kit: &Kit, setup: &Setup, from: &From) -> Point3<f64> {
        let s = &self.sizes;
        match from {
            From::Nose => Point3::new(s.nose, 0.0, s.nose_height),
            From::FrontAxle => Point3::new(s.wheelbase, 0.0, s.hub_height),
            From::RearAxle => Point3::new(0.0, 0.0, s.hub_height),
            From::Datum(name) => {
                let datum = setup.datums.iter().find(|d| d.name == *name);
                let on = datum.and_then(|d| {
                    let k = kit.carriers.iter().position(|c| c.name == d.carrier)?;
                    Some(self.carriers[k]?.point(&Point3::from(d.offset_mm)))
                });
                on.unwrap_or(Point3::new(s.nose, 0.0, s.nose_height))
            }
        }
    }
}

fn at(x: f64, y: f64, z: f64) -> Pose<World, Carrier> {
    Pose::new(UnitQuaternion::identity(), Vector3::new(x, y, z))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_box_hides_what_is_behind_it_only() {
        let slab =
            Slab { pose: at(0.0, 0.0, 0.0), low: Point3::new(-1.0, -1.0, -1.0), high: Point3::new(1.0, 1.0, 1.0) };
        let eye = Point3::new(10.0, 0.0, 0.0);
        assert!(slab.cuts(&eye, &Point3::new(-5.0, 0.0, 0.0)));
        assert!(!slab.cuts(&eye, &Point3::new(1.5, 0.0, 0.0)), "before the box");
        assert!(!slab.cuts(&eye, &Point3::new(-5.0, 6.0, 0.0)), "beside the box");
    }
}
