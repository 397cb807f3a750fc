//! Values, sensitivities, uncertainties.

use std::collections::BTreeMap;

use nalgebra::{DMatrix, DVector, Vector3};

use super::definitions::{Ask, Setting};
use super::geometry::Geometry;
use super::inputs::{Facts, Inputs, Origin};
use super::undetermined::Undetermined;
use crate::geom::{Camera, Carrier, Pose, Vehicle, World, deg};
use crate::pose::{Scene, Source};
use crate::quantity::{Estimate, combine};
use crate::setup::ReferenceLine;

/// A reading that enters as an observation.
#[derive(Debug, Clone)]
pub struct UsedReading {
    /// What was read.
    pub ask: Ask,
    /// The reading.
    pub value: f64,
    /// 1 sigma.
    pub u: f64,
    /// Its index in the job file.
    pub index: usize,
}

/// The answer to one [`Ask`].
#[derive(Debug, Clone)]
pub struct Answer {
    /// Value, standard uncertainty, effective degrees of freedom.
    pub estimate: Estimate,
    /// Contribution of each origin to the standard uncertainty, largest first.
    pub contributions: Vec<(Origin, f64)>,
}

/// A carrier's pose in the vehicle frame with its standard uncertainties.
#[derive(Debug, Clone)]
pub struct CarrierPose {
    /// The pose.
    pub vehicle_from_carrier: Pose<Vehicle, Carrier>,
    /// Of the origin along the vehicle's axes, mm.
    pub u_position_mm: [f64; 3],
    /// About the carrier's axes, degrees.
    pub u_rotation_deg: [f64; 3],
}

/// Everything that was asked.
#[derive(Debug, Clone)]
pub struct Measurement {
    /// The answers, in the order of the asks.
    pub answers: Vec<Result<Answer, Undetermined>>,
    /// Carriers in the vehicle frame, by index in the kit.
    pub carriers: Vec<Option<CarrierPose>>,
    /// Photos in the vehicle frame, by index in the problem.
    pub photos: Vec<Option<Pose<Vehicle, Camera>>>,
}

/// Measures everything that is asked. `line` gives the frame of the carriers'
/// poses. Readings are taken in as observations, one after the other.
pub fn measure(
    facts: &Facts,
    scene: &Scene,
    line: ReferenceLine,
    asks: &[Ask],
    readings: &[UsedReading],
) -> Measurement {
    let mut inputs = Inputs::new(facts, scene);
    let freedom = scene.degrees_of_freedom;
    for reading in readings {
        take_in(facts, &mut inputs, reading);
    }
    let rows = Derivatives::new(facts, &inputs, asks, line);
    let answers = rows
        .values
        .iter()
        .zip(&rows.gradients)
        .map(|(value, gradient)| value.map(|v| answer(v, gradient, &inputs, freedom)))
        .collect();
    Measurement { answers, carriers: rows.carriers(&inputs), photos: rows.photos(scene) }
}

/// How each answer changes with the carriers' steps of the adjustment: six rows
/// for each carrier in the kit's order, mm and rad; a column for each ask, zero
/// where it is undetermined.
pub fn gradients(facts: &Facts, scene: &Scene, asks: &[Ask]) -> DMatrix<f64> {
    let inputs = Inputs::new(facts, scene);
    let rows = Derivatives::new(facts, &inputs, asks, ReferenceLine::RearAxleNormal);
    let steps = 6 * facts.kit.carriers.len();
    DMatrix::from_fn(steps, asks.len(), |r, c| if rows.values[c].is_ok() { rows.gradients[c][r] } else { 0.0 })
}

/// By how much the second answer of each pair is more than the first: what both have in common (the vehicle, the
/// floor, where the markers sit on the stand) takes no part in its uncertainty.
pub fn differences(
    facts: &Facts,
    scene: &Scene,
    pairs: &[(Ask, Ask)],
    readings: &[UsedReading],
) -> Vec<Result<Answer, Undetermined>> {
    let mut inputs = Inputs::new(facts, scene);
    for reading in readings {
        take_in(facts, &mut inputs, reading);
    }
    let asks: Vec<Ask> = pairs.iter().flat_map(|(first, second)| [first.clone(), second.clone()]).collect();
    let rows = Derivatives::new(facts, &inputs, &asks, ReferenceLine::RearAxleNormal);
    let one = |i: usize| {
        let (first, second) = (rows.values[2 * i]?, rows.values[2 * i + 1]?);
        let gradient = &rows.gradients[2 * i + 1] - &rows.gradients[2 * i];
        Ok(answer(second - first, &gradient, &inputs, scene.degrees_of_freedom))
    };
    (0..pairs.len()).map(one).collect()
}

/// Updates the vector by one observation (the linear update of least squares;
/// its independent sources stay separate columns).
fn take_in(facts: &Facts, inputs: &mut Inputs, reading: &UsedReading) {
    // Twice: the second round starts where the first one ended, so that the
    // linearisation is taken at the improved point.
    let (before, factor) = (inputs.mean.clone(), inputs.factor.clone());
    for _ in 0..2 {
        let rows = Derivatives::new(facts, inputs, std::slice::from_ref(&reading.ask), ReferenceLine::RearAxleNormal);
        let (Some(Ok(value)), Some(gradient)) = (rows.values.first(), rows.gradients.first()) else { return };
        let spread = factor.tr_mul(gradient);
        let variance = spread.norm_squared() + reading.u * reading.u;
        let gain = &factor * &spread / variance;
        let innovation = reading.value - value + gradient.dot(&(&inputs.mean - &before));
        inputs.mean = &before + &gain * innovation;
        let mut updated = &factor - &gain * spread.transpose();
        updated = updated.insert_column(factor.ncols(), 0.0);
        updated.set_column(factor.ncols(), &(&gain * reading.u));
        inputs.factor = updated;
    }
    inputs.origins.push(Origin::Reading(reading.index));
}

/// Combines the contributions (GUM 5.1, 5.2) and the degrees of freedom
/// (Welch-Satterthwaite, GUM G.4.1): only image noise was estimated from a
/// sample, everything else counts as known.
fn answer(value: f64, gradient: &DVector<f64>, inputs: &Inputs, freedom: f64) -> Answer {
    let spread = inputs.factor.tr_mul(gradient);
    let mut by_origin: BTreeMap<Origin, f64> = BTreeMap::new();
    for (origin, s) in inputs.origins.iter().zip(spread.iter()) {
        *by_origin.entry(origin.clone()).or_default() += s * s;
    }
    let estimate = combine(
        value,
        by_origin.iter().map(|(origin, variance)| {
            let from_sample = *origin == Origin::Photos(Source::Image);
            (variance.sqrt(), if from_sample { freedom } else { f64::INFINITY })
        }),
    );
    let mut contributions: Vec<(Origin, f64)> = by_origin.into_iter().map(|(o, v)| (o, v.sqrt())).collect();
    contributions.sort_by(|a, b| b.1.total_cmp(&a.1));
    Answer { estimate, contributions }
}

/// Values and central differences of everything at once.
struct Derivatives {
    values: Vec<Result<f64, Undetermined>>,
    gradients: Vec<DVector<f64>>,
    frame: Option<Pose<World, Vehicle>>,
    poses: Vec<Option<Pose<Vehicle, Carrier>>>,
    /// By carrier: derivative of position (vehicle axes) and rotation (own axes).
    pose_gradients: Vec<DMatrix<f64>>,
}

/// What one evaluation yields.
struct Point {
    values: Vec<Result<f64, Undetermined>>,
    frame: Option<Pose<World, Vehicle>>,
    poses: Vec<Option<Pose<Vehicle, Carrier>>>,
}

fn evaluate(facts: &Facts, inputs: &Inputs, change: &DVector<f64>, asks: &[Ask], line: ReferenceLine) -> Point {
    let bodies = inputs.at(change);
    let setting = Setting::new(Geometry::new(facts, &bodies));
    // The poses are for drawings: where the wanted line is missing, another does.
    let lines = [line, ReferenceLine::RearAxleNormal];
    let frame = lines.iter().find_map(|l| setting.frame(*l).ok());
    let poses = bodies.bodies.iter().map(|b| Some(frame?.inverse() * (*b)?)).collect();
    Point { values: asks.iter().map(|a| setting.value(a)).collect(), frame, poses }
}

impl Derivatives {
    fn new(facts: &Facts, inputs: &Inputs, asks: &[Ask], line: ReferenceLine) -> Self {
        let size = inputs.mean.len();
        let centre = evaluate(facts, inputs, &DVector::zeros(size), asks, line);
        let mut gradients = vec![DVector::zeros(size); asks.len()];
        let mut pose_gradients = vec![DMatrix::zeros(6, size); centre.poses.len()];
        for row in inputs.uncertain_rows() {
            let h = inputs.difference_step(row);
            let side = |sign: f64| {
                let mut change = DVector::zeros(size);
                change[row] = sign * h;
                evaluate(facts, inputs, &change, asks, line)
            };
            let (ahead, behind) = (side(1.0), side(-1.0));
            for (i, gradient) in gradients.iter_mut().enumerate() {
                if let (Ok(a), Ok(b)) = (ahead.values[i], behind.values[i]) {
                    gradient[row] = (a - b) / (2.0 * h);
                }
            }
            for (k, gradient) in pose_gradients.iter_mut().enumerate() {
                let (Some(a), Some(b)) = (ahead.poses[k], behind.poses[k]) else { continue };
                let position = (a.origin_mm() - b.origin_mm()) / (2.0 * h);
                let turn: Vector3<f64> = b.step_to(&a).fixed_rows::<3>(3) / (2.0 * h);
                gradient.view_mut((0, row), (3, 1)).copy_from(&position);
                gradient.view_mut((3, row), (3, 1)).copy_from(&turn);
            }
        }
        Derivatives { values: centre.values, gradients, frame: centre.frame, poses: centre.poses, pose_gradients }
    }

    fn carriers(&self, inputs: &Inputs) -> Vec<Option<CarrierPose>> {
        self.poses
            .iter()
            .zip(&self.pose_gradients)
            .map(|(pose, gradient)| {
                let u = gradient * &inputs.factor;
                let u = |i: usize| u.row(i).norm();
                pose.map(|vehicle_from_carrier| CarrierPose {
                    vehicle_from_carrier,
                    u_position_mm: std::array::from_fn(u),
                    u_rotation_deg: std::array::from_fn(|i| deg(u(3 + i))),
                })
            })
            .collect()
    }

    fn photos(&self, scene: &Scene) -> Vec<Option<Pose<Vehicle, Camera>>> {
        scene.photos.iter().map(|p| Some(self.frame?.inverse() * p.as_ref()?.camera_from_world.inverse())).collect()
    }
}
