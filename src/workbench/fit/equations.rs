//! What the elements of the board in one photo contribute to the equations.

use nalgebra::{DMatrix, Vector2};

use super::eye::{Eye, Placed};
use super::seen::Seen;
use super::state::{CENTRE, EDGE, FLEX, FOCAL, PHOTO, Spread, TURN};
use super::target::{MOVES, OWN};
use crate::num::add;
use crate::pose::EDGE_SIDE_PX;

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

/// One photo's equations at a state.
pub(super) struct Linearization<'a> {
    pub(super) eye: Eye<'a>,
    pub(super) spread: &'a Spread,
    pub(super) rigid_board: bool,
}

impl Linearization<'_> {
    /// The equations of the elements whose weight is not zero. `None` where the state puts a point out of
    /// the lens's sight.
    pub(super) fn rows(&self, weights: &[f64]) -> Option<Rows> {
        let Eye { target, photo, lens, .. } = &self.eye;
        let p = lens.model.parameters();
        let common = if self.rigid_board { p } else { p + MOVES - OWN };
        let counting = || photo.seen.iter().zip(weights).filter(|(_, w)| **w > 0.0);
        let count = counting().map(|(s, _)| 2 * s.points.len()).sum();
        let mut rows = Rows { columns: DMatrix::zeros(PHOTO + common + 1 + OWN, count), common, elements: Vec::new() };
        let mut first = 0;
        for (seen, weight) in counting() {
            let count = 2 * seen.points.len();
            for row in 0..seen.points.len() {
                self.point(&mut rows, first + 2 * row, seen, row)?;
            }
            whiten(&mut rows.columns, first, &seen.whitener, weight.sqrt());
            if !self.rigid_board {
                rows.elements.push(Element { own: p + target.columns(seen.spot)[MOVES - OWN], first, count });
            }
            first += count;
        }
        Some(rows)
    }

    /// The two equations of one point, in pixels.
    fn point(&self, rows: &mut Rows, at: usize, seen: &Seen, row: usize) -> Option<()> {
        let (Eye { target, photo, own, lens, .. }, spread) = (&self.eye, self.spread);
        let p = lens.model.parameters();
        let Placed { on_board, moment, in_camera } = self.eye.place(seen, row);
        let projection = lens.project(&in_camera)?;
        let outward = seen.outward[row];
        let miss = self.eye.miss(seen, row, &projection.pixel);
        // Turns during the read-out are far below a degree: what they do to the other derivatives is left out.
        let through = [0, 1].map(|axis| projection.d_point.row(axis).transpose());
        let [x, y, z] = self.eye.axes;
        let by_point = through.map(|row| x * row.x + y * row.y + z * row.z);
        let from_centre = projection.pixel - Vector2::from(lens.centre_px);
        let by_focal = from_centre * (spread.focal_relative / (1.0 + own.focal_relative));
        let by_edge = outward * photo.u_edge_offset_px;
        let by_size = outward * (photo.u_edge_by_size_px * EDGE_SIDE_PX / seen.side_px);
        let (by_moves, by_flexes) = target.moves(seen.spot, seen.points[row], &by_point);
        let bends = rows.common - p;
        for axis in 0..2 {
            let mut column = rows.columns.column_mut(at + axis);
            let (photo, rest) = column.as_mut_slice().split_at_mut(PHOTO);
            let (of_lens, rest) = rest.split_at_mut(p);
            let (of_board, rest) = rest.split_at_mut(bends);
            let (found, of_spot) = rest.split_at_mut(1);
            let by_turn = in_camera.cross(&through[axis]) * (moment * spread.turn_rad);
            photo[..3].copy_from_slice(by_point[axis].as_slice());
            photo[3..6].copy_from_slice(on_board.coords.cross(&by_point[axis]).as_slice());
            photo[TURN..FLEX].copy_from_slice(by_turn.as_slice());
            photo[FOCAL] = by_focal[axis];
            photo[CENTRE + axis] = spread.centre_px;
            photo[EDGE] = by_edge[axis];
            photo[EDGE + 1] = by_size[axis];
            photo[FLEX..].iter_mut().zip(&by_flexes).for_each(|(into, by)| *into = by[axis] * spread.flex_mm);
            of_lens.iter_mut().enumerate().for_each(|(i, into)| *into = projection.d_lens[(axis, i)]);
            of_lens[axis] *= 1.0 + own.focal_relative;
            of_board.iter_mut().zip(&by_moves).for_each(|(into, by)| *into = by[axis]);
            found[0] = miss[axis];
            of_spot.iter_mut().zip(&by_moves[MOVES - OWN..]).for_each(|(into, by)| *into = by[axis]);
        }
        Some(())
    }
}

/// Multiplies an element's equations by a lower triangular matrix and a factor.
fn whiten(columns: &mut DMatrix<f64>, first: usize, whitener: &DMatrix<f64>, factor: f64) {
    let n = columns.nrows();
    // From the last on, so that those before are still as they were.
    for i in (0..whitener.nrows()).rev() {
        let (before, rest) = columns.as_mut_slice()[n * first..].split_at_mut(n * i);
        let here = &mut rest[..n];
        here.iter_mut().for_each(|x| *x *= factor * whitener[(i, i)]);
        for (k, column) in before.chunks_exact(n).enumerate() {
            add(here, factor * whitener[(i, k)], column);
        }
    }
}
