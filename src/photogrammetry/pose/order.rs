//! Which unknowns are eliminated first (Schur complement): each photo's own, or
//! what belongs to one marker alone (its place, turn and size).
//!
//! Either kind has a block for itself in the normal equations, since an equation
//! is of one marker in one photo. What is left is one dense system; the kind
//! that leaves the smaller one goes first: a few photos of many sheets leave
//! their markers out, a survey's many photos leave the photos out.

use nalgebra::DMatrix;

use super::columns::PHOTO;
use super::residual::Equations;

/// Where an unknown stands: in one of the blocks that go first, or in the rest.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Place {
    pub(super) block: Option<usize>,
    pub(super) at: usize,
}

/// The order of all unknowns.
#[derive(Debug, Clone, Default)]
pub(super) struct Order {
    /// By photo, where the first of its unknowns stands; the others follow it.
    photos: Vec<Place>,
    /// By shared column.
    shared: Vec<Place>,
    /// Number of unknowns of each block that goes first.
    pub(super) blocks: Vec<usize>,
    /// Number of all others.
    pub(super) rest: usize,
}

/// Columns of some equations, each with its unknown's place within its block or the rest.
pub(super) type Own<'e> = Vec<(usize, &'e [f64])>;

impl Order {
    /// `marker` has for each shared column the marker that it belongs to alone, if it does.
    pub(super) fn new(photos: usize, marker: &[Option<u32>]) -> Self {
        let of_markers = marker.iter().flatten().count();
        if of_markers <= PHOTO * photos {
            let first = |b| Place { block: Some(b), at: 0 };
            let rest = |at| Place { block: None, at };
            return Order {
                photos: (0..photos).map(first).collect(),
                shared: (0..marker.len()).map(rest).collect(),
                blocks: vec![PHOTO; photos],
                rest: marker.len(),
            };
        }
        let mut order = Order {
            photos: (0..photos).map(|b| Place { block: None, at: PHOTO * b }).collect(),
            rest: PHOTO * photos,
            ..Order::default()
        };
        let mut seen: Vec<u32> = Vec::new();
        for of in marker {
            let place = match of {
                None => {
                    order.rest += 1;
                    Place { block: None, at: order.rest - 1 }
                }
                Some(id) => {
                    let block = seen.iter().position(|s| s == id).unwrap_or_else(|| {
                        seen.push(*id);
                        order.blocks.push(0);
                        seen.len() - 1
                    });
                    order.blocks[block] += 1;
                    Place { block: Some(block), at: order.blocks[block] - 1 }
                }
            };
            order.shared.push(place);
        }
        order
    }

    pub(super) fn photos(&self) -> usize {
        self.photos.len()
    }

    pub(super) fn shared(&self) -> usize {
        self.shared.len()
    }

    /// Where a photo's unknown stands.
    pub(super) fn of_photo(&self, photo: usize, unknown: usize) -> Place {
        let first = self.photos[photo];
        Place { block: first.block, at: first.at + unknown }
    }

    /// Where a shared column's unknown stands.
    pub(super) fn of_shared(&self, column: usize) -> Place {
        self.shared[column]
    }

    /// Places of an equation's unknowns: its photo's, then those of its shared columns.
    fn places<'e>(&'e self, e: &'e Equations) -> impl Iterator<Item = Place> + 'e {
        (0..PHOTO).map(|i| self.of_photo(e.block, i)).chain(e.shared.iter().map(|c| self.shared[*c]))
    }

    /// An equation's columns: the block that it touches, the columns that belong to it, and all others.
    pub(super) fn split<'e>(&self, e: &'e Equations) -> (Option<usize>, Own<'e>, Own<'e>) {
        let rows = e.residual.len();
        let (mut block, mut own, mut rest) = (None, Own::new(), Own::with_capacity(PHOTO + e.shared.len()));
        if rows == 0 {
            return (block, own, rest);
        }
        let columns = e.by_photo.as_slice().chunks_exact(rows).chain(e.by_shared.as_slice().chunks_exact(rows));
        for (place, column) in self.places(e).zip(columns) {
            if place.block.is_some() {
                block = place.block;
                own.push((place.at, column));
            } else {
                rest.push((place.at, column));
            }
        }
        (block, own, rest)
    }
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
        for (place, (from, i)) in order.places(e).zip(rows) {
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_smaller_rest_decides_what_goes_first() {
        // Ten markers with six columns each, two of one carrier, and one for all.
        let marker: Vec<Option<u32>> =
            [None, None].into_iter().chain((0..60).map(|c| Some(c / 6))).chain([None]).collect();
        let few = Order::new(2, &marker);
        assert_eq!((few.blocks.as_slice(), few.rest), (&[6; 10][..], 2 * PHOTO + 3));
        assert_eq!(few.of_shared(62), Place { block: None, at: 2 * PHOTO + 2 });
        assert_eq!(few.of_shared(9), Place { block: Some(1), at: 1 });
        assert_eq!(few.of_photo(1, 3), Place { block: None, at: PHOTO + 3 });
        let many = Order::new(5, &marker);
        assert_eq!((many.blocks.as_slice(), many.rest), (&[PHOTO; 5][..], 63));
        assert_eq!(many.of_photo(4, 3), Place { block: Some(4), at: 3 });
    }
}
