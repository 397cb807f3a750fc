//! Equations and right-hand sides in the order of elimination.

use nalgebra::DMatrix;

use super::order::{Order, Place};
use super::residual::Equations;
use super::unknowns::PHOTO;

/// Columns of some equations, each with its unknown's place within its block or the rest.
pub(super) type Own = Vec<(usize, Column)>;

/// As many rows as a marker has coordinates; zeros for corners that are not used.
pub(super) type Column = [f64; 8];

/// Filled up with zeros.
pub(super) fn column(rows: &[f64]) -> Column {
    let mut column = [0.0; 8];
    column[..rows.len()].copy_from_slice(rows);
    column
}

/// Places of an equation's unknowns: its photo's, then those of its shared columns.
fn places<'e>(order: &'e Order, e: &'e Equations) -> impl Iterator<Item = Place> + 'e {
    (0..PHOTO).map(|i| order.of_photo(e.block, i)).chain(e.shared.iter().map(|c| order.of_shared(*c)))
}

/// An equation's columns: the block that it touches, the columns that belong to it, and all others.
pub(super) fn split(order: &Order, e: &Equations) -> (Option<usize>, Own, Own) {
    let rows = e.residual.len();
    let (mut block, mut own, mut rest) = (None, Own::new(), Own::with_capacity(PHOTO + e.shared.len()));
    if rows == 0 {
        return (block, own, rest);
    }
    let columns = e.by_photo.as_slice().chunks_exact(rows).chain(e.by_shared.as_slice().chunks_exact(rows));
    for (place, rows) in places(order, e).zip(columns) {
        if place.block.is_some() {
            block = place.block;
            own.push((place.at, column(rows)));
        } else {
            rest.push((place.at, column(rows)));
        }
    }
    (block, own, rest)
}

/// Right-hand sides of the normal equations, or their solutions.
#[derive(Debug, Clone)]
pub(super) struct Sides {
    /// `None`: zero.
    pub(super) blocks: Vec<Option<DMatrix<f64>>>,
    pub(super) rest: DMatrix<f64>,
    sizes: Vec<usize>,
}

impl Sides {
    /// Zeros.
    pub(super) fn zeros(order: &Order, columns: usize) -> Self {
        Sides {
            blocks: vec![None; order.blocks.len()],
            rest: DMatrix::zeros(order.rest, columns),
            sizes: order.blocks.clone(),
        }
    }

    pub(super) fn columns(&self) -> usize {
        self.rest.ncols()
    }

    /// The element of one unknown.
    pub(super) fn at(&mut self, place: Place, column: usize) -> &mut f64 {
        match place.block {
            Some(b) => {
                let (size, columns) = (self.sizes[b], self.rest.ncols());
                &mut self.blocks[b].get_or_insert_with(|| DMatrix::zeros(size, columns))[(place.at, column)]
            }
            None => &mut self.rest[(place.at, column)],
        }
    }

    pub(super) fn get(&self, place: Place, column: usize) -> f64 {
        match place.block {
            Some(b) => self.blocks[b].as_ref().map_or(0.0, |own| own[(place.at, column)]),
            None => self.rest[(place.at, column)],
        }
    }

    /// Adds `A' a` of one view's equations.
    pub(super) fn add(&mut self, order: &Order, e: &Equations, a: &DMatrix<f64>) {
        let (photo, shared) = (e.by_photo.tr_mul(a), e.by_shared.tr_mul(a));
        let rows = (0..PHOTO).map(|i| (&photo, i)).chain((0..e.shared.len()).map(|i| (&shared, i)));
        for (place, (from, i)) in places(order, e).zip(rows) {
            for column in 0..a.ncols() {
                *self.at(place, column) += from[(i, column)];
            }
        }
    }

    /// The rows of the shared columns.
    pub(super) fn shared(&self, order: &Order) -> DMatrix<f64> {
        DMatrix::from_fn(order.shared(), self.columns(), |r, c| self.get(order.of_shared(r), c))
    }

    /// The rows of a photo.
    pub(super) fn photo(&self, order: &Order, photo: usize) -> DMatrix<f64> {
        DMatrix::from_fn(PHOTO, self.columns(), |r, c| self.get(order.of_photo(photo, r), c))
    }
}
