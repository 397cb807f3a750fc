//! Which unknowns are eliminated first (Schur complement): each photo's own, or
//! what belongs to one marker alone (its place, turn and size).
//!
//! Either kind has a block for itself in the normal equations, since an equation
//! is of one marker in one photo. What is left is one dense system; the kind
//! that leaves the smaller one goes first: a few photos of many sheets leave
//! their markers out, a survey's many photos leave the photos out.

use super::unknowns::PHOTO;

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
