//! A marker's printed pattern.

use crate::marker::{CELLS, Dictionary};

/// Cells on either side of the code with its border, and along a side with them, in the copy that is
/// read without looking where it ends.
pub(super) const PAD: usize = 4;
pub(super) const PADDED: usize = CELLS + 2 * PAD;

/// White (1) and black (0) cells, row by row.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Pattern(Box<[f32; PADDED * PADDED]>);

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
        Pattern(cells)
    }

    /// Whether a place lies within a reach (cells) of an edge between black and white.
    pub(super) fn is_near_edge(&self, x: f64, y: f64, reach_x: f64, reach_y: f64) -> bool {
        let (column, row) = (cell_index(x), cell_index(y));
        let differs = |c: usize, r: usize| (self.0[r * PADDED + c] - self.0[row * PADDED + column]).abs() > 0.5;
        let within = |t: f64, index: usize| t + PAD as f64 - index as f64;
        let (left, up) = (within(x, column), within(y, row));
        left < reach_x && differs(column - 1, row)
            || 1.0 - left < reach_x && differs(column + 1, row)
            || up < reach_y && differs(column, row - 1)
            || 1.0 - up < reach_y && differs(column, row + 1)
    }

    /// Cells with white ones all around, row by row; `PAD` before the code's border.
    pub(super) fn padded(&self) -> &[f32; PADDED * PADDED] {
        &self.0
    }
}

/// Padded index of the cell at a coordinate; all beyond the margin counts as margin.
fn cell_index(t: f64) -> usize {
    ((t + PAD as f64) as usize).clamp(PAD - 1, PAD + CELLS)
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
