//! A marker's printed pattern.

use crate::marker::{CELLS, Dictionary};

/// Cells on either side of the code with its border, and along a side with them, in the copy that is
/// read without looking where it ends.
pub(super) const PAD: usize = 4;
pub(super) const PADDED: usize = CELLS + 2 * PAD;

/// White (1) and black (0) cells, row by row.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Pattern {
    cells: Box<[f32; PADDED * PADDED]>,
    others: Box<[u8; PADDED * PADDED]>,
}

impl Pattern {
    /// The upright pattern of an id.
    pub(super) fn new(dictionary: &Dictionary, id: u32) -> Self {
        let mut cells = Box::new([1.0; PADDED * PADDED]);
        for row in 0..CELLS {
            for column in 0..CELLS {
                let white = dictionary.is_white(id, column, row);
                cells[(row + PAD) * PADDED + column + PAD] = if white { 1.0 } else { 0.0 };
            }
        }
        let mut others = Box::new([0; PADDED * PADDED]);
        for row in 1..PADDED - 1 {
            for column in 1..PADDED - 1 {
                let at = row * PADDED + column;
                let differs = |other: usize| u8::from((cells[other] > 0.5) != (cells[at] > 0.5));
                others[at] =
                    differs(at - 1) | differs(at + 1) << 1 | differs(at - PADDED) << 2 | differs(at + PADDED) << 3;
            }
        }
        Pattern { cells, others }
    }

    /// Which neighbours of a padded cell are of the other colour: left, right, up, down, lowest bit first.
    pub(super) fn others(&self, cell: u8) -> u8 {
        self.others[usize::from(cell)]
    }

    /// Cells with white ones all around, row by row; `PAD` before the code's border.
    pub(super) fn padded(&self) -> &[f32; PADDED * PADDED] {
        &self.cells
    }
}

/// Padded index of the cell at a coordinate, and where in it; all beyond the margin counts as margin.
#[inline(always)]
pub(super) fn cell_at(t: f64) -> (f64, f64) {
    let padded = t + PAD as f64;
    let index = padded.floor().clamp(PAD as f64 - 1.0, (PAD + CELLS) as f64);
    (index, padded - index)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_padded_copy_is_the_pattern_with_white_around() {
        let pattern = Pattern::new(Dictionary::tag36h11(), 5);
        for row in 0..PADDED {
            for column in 0..PADDED {
                let inside = (PAD..PAD + CELLS).contains(&row) && (PAD..PAD + CELLS).contains(&column);
                let white = !inside || Dictionary::tag36h11().is_white(5, column - PAD, row - PAD);
                assert_eq!(pattern.padded()[row * PADDED + column] > 0.5, white, "{column} {row}");
            }
        }
    }
}
