//! The board in one photo as a state has it: from printed points to pixels.

use nalgebra::{DVector, Point3, Vector2, Vector3};

use super::seen::{BoardPhoto, Seen};
use super::state::{PhotoState, State};
use super::target::{Shape, Target};
use crate::camera::{Lens, moment_of_read_out};
use crate::num::add;
use crate::pose::EDGE_SIDE_PX;

/// Coordinates of an element: no more than four points.
const MOST: usize = 8;

/// One photo at one state.
pub(super) struct Eye<'a> {
    pub(super) target: &'a Target,
    pub(super) photo: &'a BoardPhoto,
    pub(super) own: &'a PhotoState,
    /// As it was in this photo.
    pub(super) lens: Lens,
    /// The camera's axes on the board.
    pub(super) axes: [Vector3<f64>; 3],
    origin_mm: Vector3<f64>,
    shape: Shape<'a>,
}

/// A point of the board before the camera.
pub(super) struct Placed {
    pub(super) on_board: Point3<f64>,
    /// When its row was read; the middle of the read-out is 0.
    pub(super) moment: f64,
    /// At that moment, mm.
    pub(super) in_camera: Vector3<f64>,
}

impl<'a> Eye<'a> {
    pub(super) fn new(target: &'a Target, photo: &'a BoardPhoto, state: &'a State, own: &'a PhotoState) -> Self {
        let rotation = own.camera_from_board.matrix();
        Eye {
            target,
            photo,
            own,
            lens: own.lens(&state.lens),
            axes: [0, 1, 2].map(|i| rotation.row(i).transpose()),
            origin_mm: own.camera_from_board.origin_mm(),
            shape: target.shape(&state.shape, &own.flex_mm),
        }
    }

    /// Where an element's point stands before the camera when its row is read.
    pub(super) fn place(&self, seen: &Seen, row: usize) -> Placed {
        let on_board = self.shape.place(seen.spot, seen.points[row]);
        let moment = moment_of_read_out(self.photo.size_px, &seen.found_px[row]);
        let still = |i: usize| self.axes[i].dot(&on_board.coords) + self.origin_mm[i];
        let in_camera = turned(&(self.own.turn_rad * moment), &Vector3::new(still(0), still(1), still(2)));
        Placed { on_board, moment, in_camera }
    }

    /// Found minus predicted, px.
    pub(super) fn miss(&self, seen: &Seen, row: usize, predicted: &Vector2<f64>) -> Vector2<f64> {
        let (photo, own) = (self.photo, self.own);
        let edge_px =
            photo.u_edge_offset_px * own.edge[0] + photo.u_edge_by_size_px * own.edge[1] * EDGE_SIDE_PX / seen.side_px;
        seen.found_px[row] - predicted - seen.outward[row] * edge_px
    }

    /// Of an element, the first coordinates of as many as it has. `None` out of the lens's sight.
    fn misses(&self, seen: &Seen) -> Option<[f64; MOST]> {
        let mut misses = [0.0; MOST];
        for row in 0..seen.points.len() {
            let miss = self.miss(seen, row, &self.lens.pixel(&self.place(seen, row).in_camera)?);
            misses[2 * row..2 * row + 2].copy_from_slice(miss.as_slice());
        }
        Some(misses)
    }

    /// Found minus predicted, px. `None` out of the lens's sight.
    pub(super) fn residual_px(&self, seen: &Seen) -> Option<DVector<f64>> {
        Some(DVector::from_column_slice(&self.misses(seen)?[..2 * seen.points.len()]))
    }

    /// Mean square of the whitened residual. `None` out of the lens's sight.
    pub(super) fn mean_square(&self, seen: &Seen) -> Option<f64> {
        let misses = self.misses(seen)?;
        let n = 2 * seen.points.len();
        let mut sum = 0.0;
        // Column by column of the whitener, as it lies.
        let mut whitened = [0.0; MOST];
        for (k, column) in seen.whitener.as_slice().chunks_exact(n).enumerate() {
            add(&mut whitened[k..n], misses[k], &column[k..]);
            sum += whitened[k] * whitened[k];
        }
        Some(sum / n as f64)
    }
}

/// A vector after a turn about an axis by its length, rad (Rodrigues). Hands turn by so little while rows are
/// read that three terms of sine and cosine hold all digits.
fn turned(turn: &Vector3<f64>, v: &Vector3<f64>) -> Vector3<f64> {
    const SMALL: f64 = 1e-4;
    let square = turn.norm_squared();
    let (by_sine, by_cosine) = if square < SMALL {
        (1.0 - square / 6.0 * (1.0 - square / 20.0), 0.5 - square / 24.0 * (1.0 - square / 30.0))
    } else {
        let angle = square.sqrt();
        (angle.sin() / angle, (1.0 - angle.cos()) / square)
    };
    let across = turn.cross(v);
    v + across * by_sine + turn.cross(&across) * by_cosine
}

#[cfg(test)]
mod tests {
    use nalgebra::Rotation3;

    use super::*;

    #[test]
    fn a_turn_is_the_rotation_matrix_s() {
        let v = Vector3::new(300.0, -200.0, 1500.0);
        for angle in [0.0, 1e-9, 1e-4, 9.9e-3, 1.01e-2, 0.3, 2.0] {
            let turn = Vector3::new(0.6, -0.64, 0.48) * angle;
            assert!((turned(&turn, &v) - Rotation3::new(turn) * v).amax() < 1e-12 * v.norm(), "{angle}");
        }
    }
}
