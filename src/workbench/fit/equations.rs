//! What the elements of the board in one photo contribute to the equations.

use nalgebra::{DMatrix, DVector, SMatrix, SVector, Vector2};

use super::seen::{BoardPhoto, Seen};
use super::state::{CENTRE, EDGE, FLEX, FOCAL, PHOTO, PhotoState, Spread, State, TURN};
use super::target::{MOVES, OWN, Target};
use crate::camera::{Lens, moment_of_read_out};
use crate::pose::EDGE_SIDE_PX;

/// Coordinates of an element: no more than four points.
const MOST: usize = 8;

/// Linearised, whitened, weighted equations of one photo.
pub(super) struct Rows {
    /// A column for each equation: by the photo's unknowns, by the shared unknowns that move every element
    /// (the lens's parameters, then the board's stretches and bends unless it is taken as rigid), found
    /// minus predicted, by the element's own [`OWN`].
    pub(super) columns: DMatrix<f64>,
    /// Shared unknowns that move every element.
    pub(super) common: usize,
    /// Elements with unknowns of their own; none of a rigid board.
    pub(super) elements: Vec<Element>,
}

/// The equations of one element.
pub(super) struct Element {
    /// Where its own unknowns stand among the shared ones.
    pub(super) own: usize,
    /// Its first equation, and how many it has.
    pub(super) first: usize,
    pub(super) count: usize,
}

/// Found minus predicted, px, the first coordinates of as many as the element has. `None` out of the lens's sight.
fn misses(
    target: &Target,
    photo: &BoardPhoto,
    seen: &Seen,
    state: &State,
    own: &PhotoState,
    lens: &Lens,
) -> Option<SVector<f64, MOST>> {
    let edge_px = edge_px(photo, seen, own);
    let mut misses = SVector::<f64, MOST>::zeros();
    for (row, &point) in seen.points.iter().enumerate() {
        let on_board = target.place_in(seen.spot, point, &state.shape, &own.flex_mm);
        let moment = moment_of_read_out(photo.size_px, &seen.found_px[row]);
        let pixel = lens.project(&own.point(&on_board, moment))?.pixel;
        let miss = seen.found_px[row] - pixel - seen.outward[row] * edge_px;
        misses.fixed_rows_mut::<2>(2 * row).copy_from(&miss);
    }
    Some(misses)
}

/// Found minus predicted, px. `None` out of the lens's sight.
pub(super) fn residual_px(
    target: &Target,
    photo: &BoardPhoto,
    seen: &Seen,
    state: &State,
    own: &PhotoState,
    lens: &Lens,
) -> Option<DVector<f64>> {
    let misses = misses(target, photo, seen, state, own, lens)?;
    Some(DVector::from_column_slice(&misses.as_slice()[..2 * seen.points.len()]))
}

/// Mean square of the whitened residual. `None` out of the lens's sight.
pub(super) fn mean_square(
    target: &Target,
    photo: &BoardPhoto,
    seen: &Seen,
    state: &State,
    own: &PhotoState,
    lens: &Lens,
) -> Option<f64> {
    let misses = misses(target, photo, seen, state, own, lens)?;
    let n = 2 * seen.points.len();
    let whitened = |i: usize| (0..=i).map(|k| seen.whitener[(i, k)] * misses[k]).sum::<f64>();
    Some((0..n).map(|i| whitened(i).powi(2)).sum::<f64>() / n as f64)
}

fn edge_px(photo: &BoardPhoto, seen: &Seen, own: &PhotoState) -> f64 {
    photo.u_edge_offset_px * own.edge[0] + photo.u_edge_by_size_px * own.edge[1] * EDGE_SIDE_PX / seen.side_px
}

/// One photo's equations at a state.
pub(super) struct Linearization<'a> {
    pub(super) target: &'a Target,
    pub(super) photo: &'a BoardPhoto,
    pub(super) state: &'a State,
    pub(super) own: &'a PhotoState,
    pub(super) spread: &'a Spread,
    pub(super) rigid_board: bool,
}

impl Linearization<'_> {
    /// The equations of the elements whose weight is not zero. `None` where the state puts a point out of
    /// the lens's sight.
    pub(super) fn rows(&self, weights: &[f64]) -> Option<Rows> {
        let p = self.state.lens.model.parameters();
        let common = if self.rigid_board { p } else { p + MOVES - OWN };
        let counting = || self.photo.seen.iter().zip(weights).filter(|(_, w)| **w > 0.0);
        let count = counting().map(|(s, _)| 2 * s.points.len()).sum();
        let mut rows = Rows { columns: DMatrix::zeros(PHOTO + common + 1 + OWN, count), common, elements: Vec::new() };
        let lens = self.own.lens(&self.state.lens);
        let mut first = 0;
        for (seen, weight) in counting() {
            let count = 2 * seen.points.len();
            for row in 0..seen.points.len() {
                self.point(&mut rows, first + 2 * row, seen, row, &lens)?;
            }
            whiten(&mut rows.columns, first, &seen.whitener, weight.sqrt());
            if !self.rigid_board {
                rows.elements.push(Element { own: p + self.target.columns(seen.spot)[MOVES - OWN], first, count });
            }
            first += count;
        }
        Some(rows)
    }

    /// The two equations of one point, in pixels.
    fn point(&self, rows: &mut Rows, at: usize, seen: &Seen, row: usize, lens: &Lens) -> Option<()> {
        let (photo, own, spread) = (self.photo, self.own, self.spread);
        let p = lens.model.parameters();
        let point = seen.points[row];
        let on_board = self.target.place_in(seen.spot, point, &self.state.shape, &own.flex_mm);
        let moment = moment_of_read_out(photo.size_px, &seen.found_px[row]);
        let in_camera = own.point(&on_board, moment);
        let projection = lens.project(&in_camera)?;
        let outward = seen.outward[row];
        let miss = seen.found_px[row] - projection.pixel - outward * edge_px(photo, seen, own);
        // Turns during the read-out are far below a degree: what they do to the other derivatives is left out.
        let by_point = projection.d_point * own.camera_from_board.matrix();
        let mut by_photo = SMatrix::<f64, 2, PHOTO>::zeros();
        by_photo.fixed_view_mut::<2, 3>(0, 0).copy_from(&by_point);
        by_photo.fixed_view_mut::<2, 3>(0, 3).copy_from(&(-by_point * on_board.coords.cross_matrix()));
        let from_centre = projection.pixel - Vector2::from(lens.centre_px);
        by_photo.set_column(FOCAL, &(from_centre * (spread.focal_relative / (1.0 + own.focal_relative))));
        by_photo[(0, CENTRE)] = spread.centre_px;
        by_photo[(1, CENTRE + 1)] = spread.centre_px;
        by_photo.set_column(EDGE, &(outward * photo.u_edge_offset_px));
        by_photo.set_column(EDGE + 1, &(outward * (photo.u_edge_by_size_px * EDGE_SIDE_PX / seen.side_px)));
        let by_turn = -projection.d_point * in_camera.cross_matrix() * (moment * spread.turn_rad);
        by_photo.fixed_view_mut::<2, 3>(0, TURN).copy_from(&by_turn);
        let ways = self.target.ways(seen.spot, point);
        for (i, way) in ways.flexes.iter().enumerate() {
            by_photo.set_column(FLEX + i, &(by_point * way * spread.flex_mm));
        }
        let mut by_lens = projection.d_lens;
        for axis in 0..2 {
            by_lens[(axis, axis)] *= 1.0 + own.focal_relative;
        }
        let by_moves = ways.moves.map(|way| by_point * way);
        let bends = rows.common - p;
        for axis in 0..2 {
            let mut column = rows.columns.column_mut(at + axis);
            let (photo, rest) = column.as_mut_slice().split_at_mut(PHOTO);
            let (of_lens, rest) = rest.split_at_mut(p);
            let (of_board, rest) = rest.split_at_mut(bends);
            let (found, of_spot) = rest.split_at_mut(1);
            photo.iter_mut().enumerate().for_each(|(i, into)| *into = by_photo[(axis, i)]);
            of_lens.iter_mut().enumerate().for_each(|(i, into)| *into = by_lens[(axis, i)]);
            of_board.iter_mut().zip(&by_moves).for_each(|(into, by)| *into = by[axis]);
            found[0] = miss[axis];
            of_spot.iter_mut().zip(&by_moves[MOVES - OWN..]).for_each(|(into, by)| *into = by[axis]);
        }
        Some(())
    }
}

/// Multiplies an element's equations by a lower triangular matrix and a factor.
fn whiten(columns: &mut DMatrix<f64>, first: usize, whitener: &DMatrix<f64>, factor: f64) {
    // From the last on, so that those before are still as they were.
    for i in (0..whitener.nrows()).rev() {
        let (before, mut here) = columns.columns_range_pair_mut(first..first + i, first + i);
        here *= factor * whitener[(i, i)];
        for k in 0..i {
            here.axpy(factor * whitener[(i, k)], &before.column(k), 1.0);
        }
    }
}
