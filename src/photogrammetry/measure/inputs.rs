//! The vector of everything uncertain, with its joint covariance by source.

use nalgebra::{DMatrix, DVector, Vector6};

use crate::folder::Vehicle;
use crate::geom::{Carrier, Pose, World, rad};
use crate::marker::Kit;
use crate::pose::{Scene, Source};
use crate::setup::Setup;

/// What is known besides the photos.
#[derive(Debug, Clone, Copy)]
pub struct Facts<'a> {
    /// The marker kit.
    pub kit: &'a Kit,
    /// The set-up sheet (for its datums and reference line).
    pub setup: &'a Setup,
    /// What was typed about the vehicle.
    pub vehicle: &'a Vehicle,
}

/// Where a part of a quantity's uncertainty comes from.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Origin {
    /// From the adjustment.
    Photos(Source),
    /// How a carrier sits on what it marks, mm.
    SeatingOffset(usize),
    /// How a carrier sits on what it marks, angles.
    SeatingAngle(usize),
    /// The typed wheelbase.
    Wheelbase,
    /// The typed nose position.
    NoseFromRearAxle,
    /// The typed hub height.
    FloorBelowHub,
    /// A datum's offset on its carrier.
    Datum(usize),
    /// A reading that was used.
    Reading(usize),
}

/// The vector: where each part starts, its value and its uncertainty.
#[derive(Debug, Clone)]
pub(super) struct Inputs {
    carriers: Vec<Option<Pose<World, Carrier>>>,
    /// Zero, until readings move it.
    pub(super) mean: DVector<f64>,
    /// Covariance = factor * factor'.
    pub(super) factor: DMatrix<f64>,
    /// Source of each of the factor's columns.
    pub(super) origins: Vec<Origin>,
    wheelbase_mm: Option<f64>,
    nose_from_rear_axle_mm: Option<f64>,
    floor_below_hub_mm: Option<f64>,
    datum_offsets_mm: Vec<[f64; 3]>,
    pub(super) on_floor: bool,
}

/// The bodies and typed values at one point of the vector.
#[derive(Debug, Clone)]
pub(super) struct Bodies {
    /// What each carrier marks: wheel, target, nose.
    pub(super) bodies: Vec<Option<Pose<World, Carrier>>>,
    pub(super) wheelbase_mm: Option<f64>,
    pub(super) nose_from_rear_axle_mm: Option<f64>,
    pub(super) floor_below_hub_mm: Option<f64>,
    pub(super) datum_offsets_mm: Vec<[f64; 3]>,
    pub(super) on_floor: bool,
}

const TYPED: usize = 3;

impl Inputs {
    pub(super) fn new(facts: &Facts, scene: &Scene) -> Self {
        let n = facts.kit.carriers.len();
        let datums = &facts.setup.datums;
        let size = 12 * n + TYPED + 3 * datums.len();
        let mut columns: Vec<(Origin, DVector<f64>)> = Vec::new();
        for (c, source) in scene.sources.iter().enumerate() {
            let mut column = DVector::zeros(size);
            column.rows_mut(0, 6 * n).copy_from(&scene.factor.column(c));
            columns.push((Origin::Photos(*source), column));
        }
        let mut alone = |origin: Origin, row: usize, u: f64| {
            if u > 0.0 {
                let mut column = DVector::zeros(size);
                column[row] = u;
                columns.push((origin, column));
            }
        };
        for (k, carrier) in facts.kit.carriers.iter().enumerate() {
            for axis in 0..3 {
                alone(Origin::SeatingOffset(k), 6 * n + 6 * k + axis, carrier.u_seating_mm);
                alone(Origin::SeatingAngle(k), 6 * n + 6 * k + 3 + axis, rad(carrier.u_seating_deg[axis]));
            }
        }
        alone(Origin::Wheelbase, 12 * n, facts.vehicle.u_wheelbase_mm);
        alone(Origin::NoseFromRearAxle, 12 * n + 1, facts.vehicle.u_nose_from_rear_axle_mm);
        alone(Origin::FloorBelowHub, 12 * n + 2, facts.vehicle.u_floor_below_hub_mm);
        for (i, datum) in datums.iter().enumerate() {
            for axis in 0..3 {
                alone(Origin::Datum(i), 12 * n + TYPED + 3 * i + axis, datum.u_mm);
            }
        }
        let mut factor = DMatrix::zeros(size, columns.len());
        for (c, (_, column)) in columns.iter().enumerate() {
            factor.set_column(c, column);
        }
        Inputs {
            carriers: (0..n).map(|k| scene.carriers[k].filter(|_| scene.knows(k))).collect(),
            mean: DVector::zeros(size),
            factor,
            origins: columns.into_iter().map(|c| c.0).collect(),
            wheelbase_mm: facts.vehicle.wheelbase_mm,
            nose_from_rear_axle_mm: facts.vehicle.nose_from_rear_axle_mm,
            floor_below_hub_mm: facts.vehicle.floor_below_hub_mm,
            datum_offsets_mm: datums.iter().map(|d| d.offset_mm).collect(),
            on_floor: scene.on_floor,
        }
    }

    /// Rows whose value has an influence at all.
    pub(super) fn uncertain_rows(&self) -> Vec<usize> {
        (0..self.mean.len()).filter(|r| self.factor.row(*r).iter().any(|x| x.abs() > 0.0)).collect()
    }

    /// A step that is small against curvature and large against rounding: mm or rad.
    pub(super) fn difference_step(&self, row: usize) -> f64 {
        let n = self.carriers.len();
        if row < 12 * n && row % 6 >= 3 { 1e-6 } else { 1e-2 }
    }

    /// The bodies at `mean + change`.
    pub(super) fn at(&self, change: &DVector<f64>) -> Bodies {
        let n = self.carriers.len();
        let v = &self.mean + change;
        let step = |start: usize| -> Vector6<f64> { v.fixed_rows::<6>(start).into_owned() };
        Bodies {
            bodies: self
                .carriers
                .iter()
                .enumerate()
                .map(|(k, pose)| pose.map(|p| p.moved(&step(6 * k)).moved(&step(6 * n + 6 * k))))
                .collect(),
            wheelbase_mm: self.wheelbase_mm.map(|w| w + v[12 * n]),
            nose_from_rear_axle_mm: self.nose_from_rear_axle_mm.map(|w| w + v[12 * n + 1]),
            floor_below_hub_mm: self.floor_below_hub_mm.map(|w| w + v[12 * n + 2]),
            datum_offsets_mm: self
                .datum_offsets_mm
                .iter()
                .enumerate()
                .map(|(i, o)| std::array::from_fn(|a| o[a] + v[12 * n + TYPED + 3 * i + a]))
                .collect(),
            on_floor: self.on_floor,
        }
    }
}
