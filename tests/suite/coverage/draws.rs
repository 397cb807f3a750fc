//! Sampled jobs: errors over what was stated.

use baywitness::folder::Vehicle;
use baywitness::geom::{Attitude, Carrier, Pose};
use baywitness::measure::{Ask, Facts, measure};
use baywitness::pose::{Options, adjust};
use baywitness::quantity::Quantity;
use baywitness::setup::{From, ReferenceLine};
use nalgebra::Vector3;
use rayon::prelude::*;

use super::conditions::Condition;
use super::poses::{self, Step};
use crate::sampled_bay::{At, Bay, HUB_MM, Noise, Sample, sample, sheet};

pub(crate) const QUANTITIES: [Quantity; 6] =
    [Quantity::Yaw, Quantity::LateralOffset, Quantity::Distance, Quantity::Height, Quantity::Pitch, Quantity::Roll];

/// One quantity of one job.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Drawn {
    /// Error over standard uncertainty.
    pub(crate) error_over_u: f64,
    /// Stated standard uncertainty, mm or deg.
    pub(crate) u: f64,
    pub(crate) degrees_of_freedom: f64,
    /// Whether the 95 % interval holds the truth.
    pub(crate) held: bool,
}

/// One job.
pub(crate) struct Draw {
    pub(crate) quantities: [Drawn; 6],
    /// By carrier of [`poses::others`]: its pose against the stand.
    pub(crate) steps: Vec<Step>,
    /// Of the image.
    pub(crate) degrees_of_freedom: f64,
}

pub(crate) fn draw(condition: &Condition, n: u64) -> Vec<Draw> {
    let bay = (condition.bay)();
    (0..n).into_par_iter().map(|seed| one(&bay, condition.line, 1000 + seed)).collect()
}

pub(crate) fn one(bay: &Bay, line: ReferenceLine, seed: u64) -> Draw {
    of(bay, &sample(bay, seed), line, seed)
}

/// Of a sampled job to which something was done.
pub(crate) fn of(bay: &Bay, job: &Sample, line: ReferenceLine, seed: u64) -> Draw {
    let scene = adjust(&job.problem(), &Options::default()).unwrap();
    let (setup, vehicle) = (sheet(line), vehicle(seed));
    let asks: Vec<Ask> =
        QUANTITIES.iter().map(|q| Ask { quantity: *q, from: Some(From::RearAxle), target: 0, line }).collect();
    let facts = Facts { kit: &job.kit, setup: &setup, vehicle: &vehicle };
    let measured = measure(&facts, &scene, line, &asks, &[]);
    let truth = truth(job, line);
    let quantities = std::array::from_fn(|i| {
        let e = measured.answers[i].as_ref().unwrap().estimate;
        let miss = e.value - truth[i];
        Drawn {
            error_over_u: miss / e.standard_uncertainty,
            u: e.standard_uncertainty,
            degrees_of_freedom: e.degrees_of_freedom,
            held: miss.abs() <= e.expanded_uncertainty(),
        }
    });
    Draw { quantities, steps: poses::steps(bay, job, &scene), degrees_of_freedom: scene.degrees_of_freedom }
}

/// 1 sigma of the typed hub height, mm.
const U_HUB_MM: f64 = 1.0;

/// The typed sizes; the hub's height is wrong by its stated uncertainty.
pub(crate) fn vehicle(seed: u64) -> Vehicle {
    Vehicle {
        description: None,
        vin: None,
        wheelbase_mm: None,
        nose_from_rear_axle_mm: None,
        floor_below_hub_mm: Some(HUB_MM + U_HUB_MM * Noise::new(seed ^ 0x5eed_0000).normal()),
        u_wheelbase_mm: 3.0,
        u_nose_from_rear_axle_mm: 3.0,
        u_floor_below_hub_mm: U_HUB_MM,
        ..Vehicle::default()
    }
}

/// The true values, by hand: the floor is z = 0.
fn truth(job: &Sample, line: ReferenceLine) -> [f64; 6] {
    truth_of(job, &job.bodies[job.carrier("stand")], line)
}

/// Likewise of a stand that stands elsewhere.
pub(crate) fn truth_of(job: &Sample, stand: &At, line: ReferenceLine) -> [f64; 6] {
    let at = |name: &str| job.bodies[job.carrier(name)];
    let flat = |v: Vector3<f64>| Vector3::new(v.x, v.y, 0.0).normalize();
    let heading = |p: Pose<_, Carrier>| flat(p.direction(&Vector3::x()));
    let (left, right) = (at("rear-left"), at("rear-right"));
    let rear = (left.origin_mm() + right.origin_mm()) / 2.0;
    let d = match line {
        ReferenceLine::RearAxleNormal => flat(left.origin_mm() - right.origin_mm()).cross(&Vector3::z()),
        ReferenceLine::ThrustLine => flat(heading(left) + heading(right)),
        ReferenceLine::Centreline => flat((at("front-left").origin_mm() + at("front-right").origin_mm()) / 2.0 - rear),
    };
    let y = Vector3::z().cross(&d);
    let a = stand.origin_mm() - rear;
    let turned = Attitude { yaw_deg: -d.y.atan2(d.x).to_degrees(), ..Default::default() }.rotation() * stand.rotation();
    let attitude = Attitude::from_rotation(&turned);
    [attitude.yaw_deg, a.dot(&y), a.dot(&d), stand.origin_mm().z, attitude.pitch_deg, attitude.roll_deg]
}
