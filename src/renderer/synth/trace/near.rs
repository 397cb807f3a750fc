//! Where in a picture light has to be exact: all of it, or about some places only.
//!
//! Coverage is counted in thousands of pictures, and hardly a tenth of a bay's pixels lie near a marker.

use std::ops::Range;

/// Side of a tile, px; its rays share a list of facets.
pub(super) const TILE: usize = 16;

/// Tiles of a picture that are wanted exactly.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Near {
    wanted: Vec<bool>,
    columns: usize,
    width: usize,
}

impl Near {
    /// All of a picture.
    pub(crate) fn all(size_px: [u32; 2]) -> Self {
        let [width, height] = size_px.map(|s| s as usize);
        let columns = width.div_ceil(TILE);
        Near { wanted: vec![true; columns * height.div_ceil(TILE)], columns, width }
    }

    /// What lies within rectangles (left, top, right, bottom; px).
    pub(crate) fn within(size_px: [u32; 2], rectangles: impl Iterator<Item = [f64; 4]>) -> Self {
        let mut near = Near::all(size_px);
        near.wanted.fill(false);
        let rows = near.wanted.len() / near.columns.max(1);
        let tile = |x: f64, n: usize| ((x / TILE as f64).floor().max(0.0) as usize).min(n.saturating_sub(1));
        for [left, top, right, bottom] in rectangles {
            for row in tile(top, rows)..=tile(bottom, rows) {
                let from = row * near.columns;
                let (first, last) = (tile(left, near.columns), tile(right, near.columns));
                near.wanted[from + first..=from + last].fill(true);
            }
        }
        near
    }

    /// Whether a tile is wanted.
    pub(super) fn wants(&self, band: usize, column: usize) -> bool {
        column < self.columns && self.wanted.get(band * self.columns + column).copied().unwrap_or(false)
    }

    /// Whether a wanted tile comes so near to a pixel.
    pub(super) fn wants_about(&self, u: usize, v: usize, reach: usize) -> bool {
        let tiles = |x: usize| x.saturating_sub(reach) / TILE..=(x + reach) / TILE;
        // Nodes beyond the picture's last tile serve that one.
        let (last_row, last) =
            ((self.wanted.len() / self.columns.max(1)).saturating_sub(1), self.columns.saturating_sub(1));
        tiles(v).any(|row| tiles(u).any(|column| self.wants(row.min(last_row), column.min(last))))
    }

    /// Columns of pixels of a band that are wanted.
    pub(super) fn runs(&self, band: usize) -> Vec<Range<usize>> {
        self.of(band, true)
    }

    /// The others.
    pub(super) fn drafts(&self, band: usize) -> Vec<Range<usize>> {
        self.of(band, false)
    }

    fn of(&self, band: usize, wanted: bool) -> Vec<Range<usize>> {
        let mut runs: Vec<Range<usize>> = Vec::new();
        for column in (0..self.columns).filter(|c| self.wants(band, *c) == wanted) {
            let (start, end) = (column * TILE, ((column + 1) * TILE).min(self.width));
            match runs.last_mut() {
                Some(run) if run.end == start => run.end = end,
                _ => runs.push(start..end),
            }
        }
        runs
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_column_is_either_wanted_or_a_draft() {
        let near = Near::within([100, 40], [[20.0, 0.0, 33.0, 10.0], [90.0, 0.0, 140.0, 5.0]].into_iter());
        assert_eq!((near.runs(0), near.drafts(0)), (vec![16..48, 80..100], vec![0..16, 48..80]));
        let whole = 0..100;
        assert_eq!((near.runs(1), near.drafts(1)), (vec![], Vec::from([whole])));
        assert_eq!(Near::all([100, 40]).runs(2), vec![0..100]);
        assert!(near.wants_about(50, 3, 6) && !near.wants_about(60, 3, 6) && near.wants_about(40, 20, 6));
    }
}
