//! The unknowns of a fit and one step of them.

use nalgebra::{DVector, SVector, Vector3, Vector6};

use super::target::FLEXES;
use crate::camera::Lens;
use crate::geom::{Camera, Carrier, Pose};

/// Unknowns of one photo: pose (6), focal length, centre (2), edge offset, edge offset by size, how the
/// camera turned while rows were read (3), how the board flexed; those after the pose in units of their prior sigma.
pub(super) const PHOTO: usize = FLEX + FLEXES;
/// Where the focal length stands among them.
pub(super) const FOCAL: usize = 6;
/// Where the centre's two coordinates start.
pub(super) const CENTRE: usize = 7;
/// Where the two edge offsets start.
pub(super) const EDGE: usize = 9;

/// Where the turn during the read-out starts.
pub(super) const TURN: usize = 11;
/// Where the board's flexes start.
pub(super) const FLEX: usize = 14;

/// How one photo differs from the next, 1 sigma.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Spread {
    pub(super) focal_relative: f64,
    pub(super) centre_px: f64,
    /// How far the camera turns about each axis from the first row to the last, rad.
    pub(super) turn_rad: f64,
    /// A hand-held board bends differently each time, mm for each low bend.
    pub(super) flex_mm: f64,
}

/// All unknowns.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct State {
    /// The mean lens.
    pub(super) lens: Lens,
    /// The board's shape, in units of prior sigmas.
    pub(super) shape: Vec<f64>,
    /// Each photo's own.
    pub(super) photos: Vec<PhotoState>,
}

/// One photo's unknowns.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct PhotoState {
    pub(super) camera_from_board: Pose<Camera, Carrier>,
    /// Relative change of the focal length.
    pub(super) focal_relative: f64,
    /// Shift of the centre, px.
    pub(super) centre_px: [f64; 2],
    /// Edge offset and edge offset by size, in units of prior sigmas.
    pub(super) edge: [f64; 2],
    /// How the camera turned from the first row to the last, rad.
    pub(super) turn_rad: Vector3<f64>,
    /// Bend of the board in this photo besides its common one, mm.
    pub(super) flex_mm: [f64; FLEXES],
}

impl PhotoState {
    /// The lens as it was in this photo.
    pub(super) fn lens(&self, mean: &Lens) -> Lens {
        let mut lens = *mean;
        for axis in 0..2 {
            lens.focal_px[axis] *= 1.0 + self.focal_relative;
            lens.centre_px[axis] += self.centre_px[axis];
        }
        lens
    }

    /// The unknowns with a prior, in units of their sigmas; the pose has none.
    pub(super) fn in_sigmas(&self, spread: &Spread) -> SVector<f64, PHOTO> {
        let mut values = SVector::<f64, PHOTO>::zeros();
        values[FOCAL] = self.focal_relative / spread.focal_relative;
        values[CENTRE] = self.centre_px[0] / spread.centre_px;
        values[CENTRE + 1] = self.centre_px[1] / spread.centre_px;
        values[EDGE] = self.edge[0];
        values[EDGE + 1] = self.edge[1];
        values.fixed_rows_mut::<3>(TURN).copy_from(&(self.turn_rad / spread.turn_rad));
        for i in 0..FLEXES {
            values[FLEX + i] = self.flex_mm[i] / spread.flex_mm;
        }
        values
    }

    fn moved(&self, step: &SVector<f64, PHOTO>, spread: &Spread) -> Self {
        let pose: Vector6<f64> = step.fixed_rows::<6>(0).into_owned();
        PhotoState {
            camera_from_board: self.camera_from_board.moved(&pose),
            focal_relative: self.focal_relative + step[FOCAL] * spread.focal_relative,
            centre_px: [0, 1].map(|i| self.centre_px[i] + step[CENTRE + i] * spread.centre_px),
            edge: [0, 1].map(|i| self.edge[i] + step[EDGE + i]),
            turn_rad: self.turn_rad + step.fixed_rows::<3>(TURN) * spread.turn_rad,
            flex_mm: std::array::from_fn(|i| self.flex_mm[i] + step[FLEX + i] * spread.flex_mm),
        }
    }
}

impl State {
    /// The state after a step: lens parameters, then the board's shape; and each photo's.
    pub(super) fn moved(&self, shared: &DVector<f64>, photos: &[SVector<f64, PHOTO>], spread: &Spread) -> Self {
        let p = self.lens.model.parameters();
        let mut parameters = parameters(&self.lens);
        for (value, step) in parameters.iter_mut().zip(shared.iter().take(p)) {
            *value += step;
        }
        State {
            lens: with_parameters(&self.lens, &parameters),
            // A step of a rigid board has none for its shape.
            shape: self.shape.iter().enumerate().map(|(i, s)| s + shared.get(p + i).copied().unwrap_or(0.0)).collect(),
            photos: self.photos.iter().zip(photos).map(|(photo, step)| photo.moved(step, spread)).collect(),
        }
    }
}

/// A lens's parameters in the order of camera files; unused ones are zero.
pub(super) fn parameters(lens: &Lens) -> [f64; 9] {
    let mut all = [0.0; 9];
    all[..2].copy_from_slice(&lens.focal_px);
    all[2..4].copy_from_slice(&lens.centre_px);
    all[4..].copy_from_slice(&lens.distortion);
    all
}

/// The lens with other parameters.
pub(super) fn with_parameters(lens: &Lens, all: &[f64; 9]) -> Lens {
    let mut distortion = [0.0; 5];
    distortion.copy_from_slice(&all[4..]);
    Lens { model: lens.model, focal_px: [all[0], all[1]], centre_px: [all[2], all[3]], distortion }
}
