//! How well a fitted lens knows where it projects, over the whole frame.
//!
//! A camera in use finds its own pose, so a turn of the camera cannot be told
//! from the same shift of all pixels: it is taken out, as for points far away.

use nalgebra::{DMatrix, DVector, Matrix2, Vector2};

use crate::camera::Lens;

/// Columns and rows of the grid of positions.
pub const GRID: [usize; 2] = [25, 19];

/// What a photo in use finds for itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum TakenOut {
    /// The camera's direction.
    Turn,
    /// Direction, focal length and centre.
    TurnFocalCentre,
}

/// Derivatives of the projection by the lens, the turn taken out, over a grid.
#[derive(Debug, Clone)]
pub(super) struct Field {
    places: Vec<Place>,
}

#[derive(Debug, Clone)]
struct Place {
    pixel: Vector2<f64>,
    /// `None` where the lens shows no ray.
    by_lens: Option<DMatrix<f64>>,
}

/// One position of the frame.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FieldPoint {
    /// Where, px.
    pub pixel: [f64; 2],
    /// Standard uncertainty of the projection in its worse direction, px;
    /// `None` where the lens shows no ray.
    pub u_px: Option<f64>,
}

impl Field {
    pub(super) fn new(lens: &Lens, size_px: [u32; 2], taken_out: TakenOut) -> Self {
        let p = lens.model.parameters();
        let at = |i: usize, axis: usize| i as f64 / (GRID[axis] - 1) as f64 * f64::from(size_px[axis] - 1);
        let mut places = Vec::new();
        let mut turns: Vec<Option<DMatrix<f64>>> = Vec::new();
        for row in 0..GRID[1] {
            for column in 0..GRID[0] {
                let pixel = Vector2::new(at(column, 0), at(row, 1));
                let found = lens.ray(&pixel).and_then(|ray| Some((ray, lens.project(&ray)?)));
                turns.push(found.as_ref().map(|(ray, q)| {
                    let turn = -q.d_point * ray.cross_matrix();
                    let focal = q.pixel - Vector2::from(lens.centre_px);
                    let mut all = DMatrix::zeros(2, if taken_out == TakenOut::Turn { 3 } else { 6 });
                    all.view_mut((0, 0), (2, 3)).copy_from(&turn);
                    if taken_out == TakenOut::TurnFocalCentre {
                        all.view_mut((0, 3), (2, 1)).copy_from(&focal);
                        all.view_mut((0, 4), (2, 2)).fill_with_identity();
                    }
                    all
                }));
                let by_lens = found.map(|(_, q)| DMatrix::from_fn(2, p, |i, j| q.d_lens[(i, j)]));
                places.push(Place { pixel, by_lens });
            }
        }
        let mut field = Field { places };
        field.take_out(&turns, p);
        field
    }

    /// Takes the turn that explains most of each parameter's effect out of it.
    fn take_out(&mut self, turns: &[Option<DMatrix<f64>>], parameters: usize) {
        let Some(n) = turns.iter().flatten().map(DMatrix::ncols).next() else { return };
        let mut normal = DMatrix::zeros(n, n);
        let mut right = DMatrix::zeros(n, parameters);
        for (place, turn) in self.places.iter().zip(turns) {
            if let (Some(by_lens), Some(turn)) = (&place.by_lens, turn) {
                normal += turn.transpose() * turn;
                right += turn.transpose() * by_lens;
            }
        }
        let Some(cholesky) = normal.cholesky() else { return };
        let follows = cholesky.solve(&right);
        for (place, turn) in self.places.iter_mut().zip(turns) {
            if let (Some(by_lens), Some(turn)) = (&mut place.by_lens, turn) {
                *by_lens -= turn * &follows;
            }
        }
    }

    /// Uncertainties of the projection for a covariance of the lens.
    pub(super) fn uncertainties(&self, covariance: &DMatrix<f64>) -> Vec<FieldPoint> {
        let one = |place: &Place| {
            let u_px = place.by_lens.as_ref().map(|j| {
                let c = j * covariance * j.transpose();
                let c = Matrix2::new(c[(0, 0)], c[(0, 1)], c[(1, 0)], c[(1, 1)]);
                c.symmetric_eigenvalues().max().max(0.0).sqrt()
            });
            FieldPoint { pixel: [place.pixel.x, place.pixel.y], u_px }
        };
        self.places.iter().map(one).collect()
    }

    /// How far the projection moves at most, px, for a difference of lens parameters.
    pub(super) fn largest_move_px(&self, difference: &DVector<f64>) -> f64 {
        let moves = self.places.iter().filter_map(|p| p.by_lens.as_ref()).map(|j| (j * difference).norm());
        moves.fold(0.0, f64::max)
    }
}
