//! The values of all unknowns.

use nalgebra::{DVector, Point3, UnitQuaternion, Vector3};

use super::columns::{Columns, wider};
use super::unknowns::{NUISANCE, OF_STATION, TURN};
use super::views::{EDGE_SIDE_PX, Problem, View};
use crate::camera::Lens;
use crate::geom::{Camera, Carrier, Pose, World};

/// One photo's unknowns. All but the pose are in units of their prior's
/// standard uncertainty, so that every prior is a standard normal variate.
#[derive(Debug, Clone)]
pub(super) struct PhotoState {
    pub(super) camera_from_world: Pose<Camera, World>,
    /// Focal factor, principal point u and v, edge offset, its size dependence, turns while rows were read.
    pub(super) nuisance: [f64; NUISANCE],
}

/// All unknowns.
#[derive(Debug, Clone)]
pub(super) struct State {
    /// In the order of [`Columns::photos`].
    pub(super) photos: Vec<PhotoState>,
    /// In the kit's order.
    pub(super) carriers: Vec<Option<Pose<World, Carrier>>>,
    /// Shared unknowns by column; those of carriers stay zero (their poses move instead).
    pub(super) shared: DVector<f64>,
}

impl State {
    /// One photo's unknowns with a prior, with what it has in common with others of its station.
    pub(super) fn of_photo(&self, columns: &Columns, block: usize) -> [f64; NUISANCE] {
        let mut all = self.photos[block].nuisance;
        if let Some(start) = columns.stations[block] {
            for (x, common) in all.iter_mut().zip(self.shared.rows(start, OF_STATION).iter()) {
                *x += common;
            }
        }
        all
    }

    /// The lens of one photo.
    pub(super) fn lens(&self, problem: &Problem, columns: &Columns, block: usize) -> Lens {
        let camera = problem.photos[columns.photos[block]].camera;
        let profile = problem.cameras[camera];
        let mut lens = profile.lens;
        let modes = &columns.cameras[camera];
        let change = modes.factor() * self.shared.rows(modes.start, modes.rank());
        let n = lens.model.coefficients();
        for i in 0..2 {
            lens.focal_px[i] += change[i];
            lens.centre_px[i] += change[2 + i];
        }
        for i in 0..n {
            lens.distortion[i] += change[4 + i];
        }
        let [focal, u, v, ..] = self.of_photo(columns, block);
        let per_photo = &profile.per_photo;
        for f in &mut lens.focal_px {
            *f *= 1.0 + per_photo.u_focal_relative * focal;
        }
        lens.centre_px[0] += per_photo.u_centre_px * u;
        lens.centre_px[1] += per_photo.u_centre_px * v;
        lens
    }

    /// How far black edges lie outwards in one photo, px.
    pub(super) fn edge_offset_px(&self, columns: &Columns, block: usize) -> f64 {
        columns.u_edge_px[block] * self.of_photo(columns, block)[3]
    }

    /// How far the black edges of a marker of a given side lie outwards, px.
    pub(super) fn edge_of_px(&self, columns: &Columns, block: usize, side_px: f64) -> f64 {
        let by_size = columns.u_edge_by_size_px[block] * self.of_photo(columns, block)[4];
        self.edge_offset_px(columns, block) + by_size * EDGE_SIDE_PX / side_px
    }

    /// How the camera is turned at a moment of the read-out ([`crate::camera::Profile::moment`])
    /// against its middle, which is what the photo's pose is of.
    pub(super) fn turned(&self, columns: &Columns, block: usize, moment: f64) -> UnitQuaternion<f64> {
        let [x, y, z] = [0, 1, 2].map(|axis| self.photos[block].nuisance[TURN + axis]);
        UnitQuaternion::from_scaled_axis(Vector3::new(x, y, z) * (columns.u_turn_rad[block] * moment))
    }

    /// A marker's corners in its carrier's frame with the present layout, mm,
    /// and the arms from its centre.
    pub(super) fn corners_mm(
        &self,
        problem: &Problem,
        columns: &Columns,
        view: &View,
    ) -> [(Point3<f64>, Vector3<f64>); 4] {
        let marker = &problem.kit.carriers[view.carrier].markers[view.marker];
        let (mut shift, mut turn, mut stretch, mut aspect) = (Vector3::zeros(), Vector3::zeros(), 0.0, 0.0);
        for mode in columns.modes(view) {
            let x = self.shared[mode.column];
            shift += mode.centre_mm * x;
            turn += mode.turn_rad * x;
            stretch += mode.stretch * x;
            aspect += mode.aspect * x;
        }
        marker.corners_mm().map(|corner| {
            let arm = corner.coords - marker.centre_mm;
            let deformed = arm * (1.0 + stretch) + wider(marker, &arm) * aspect + turn.cross(&arm);
            (Point3::from(marker.centre_mm + shift + deformed), arm)
        })
    }

    /// Moves every unknown by a step: photo blocks, then shared columns.
    pub(super) fn moved(&self, columns: &Columns, photo_steps: &[DVector<f64>], shared_step: &DVector<f64>) -> State {
        let mut next = self.clone();
        for (photo, step) in next.photos.iter_mut().zip(photo_steps) {
            photo.camera_from_world = photo.camera_from_world.moved(&step.fixed_rows::<6>(0).into_owned());
            for i in 0..NUISANCE {
                photo.nuisance[i] += step[6 + i];
            }
        }
        for (carrier, free) in next.carriers.iter_mut().zip(&columns.carriers) {
            if let Some(pose) = carrier {
                let mut step = nalgebra::Vector6::zeros();
                for (axis, column) in free {
                    step[*axis] = shared_step[*column];
                }
                *pose = pose.moved(&step);
            }
        }
        for column in &columns.nuisance {
            next.shared[*column] += shared_step[*column];
        }
        next
    }
}
