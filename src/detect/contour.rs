//! Outlines of dark regions: threshold by the local mean, then border following
//! (Moore neighbourhood; S. Suzuki and K. Abe, "Topological structural analysis of
//! digitized binary images by border following", CVGIP 30, 1985, for the idea of
//! starting each border once).

use super::pyramid::{Level, TILE};

/// Side of the blocks that share a threshold, px.
const BLOCK: usize = 4;
/// A pixel is dark if it is this much darker than the mean of the 12x12 pixels around its block.
const MARGIN: u16 = 5;
/// Longest outline followed, px: larger squares are found on a coarser level.
const LONGEST: usize = 700;
/// Steps to the eight neighbours, clockwise from east.
const STEPS: [(isize, isize); 8] = [(1, 0), (1, 1), (0, 1), (-1, 1), (-1, 0), (-1, -1), (0, -1), (1, -1)];

/// Which pixels of a level are dark against their surroundings.
pub(super) struct Darkness<'a> {
    level: &'a Level<'a>,
    columns: usize,
    rows: usize,
    thresholds: Vec<u8>,
}

impl<'a> Darkness<'a> {
    /// `quarter` is the level two halvings below: its pixels are the blocks' means.
    pub(super) fn new(level: &'a Level<'a>, quarter: &Level<'_>, active: &[bool]) -> Self {
        let (columns, rows) = (quarter.width, quarter.height);
        let tiles = level.width.div_ceil(TILE);
        let mut thresholds = vec![0u8; columns * rows];
        for r in 0..rows {
            let near = [quarter.row(r.saturating_sub(1)), quarter.row(r), quarter.row((r + 1).min(rows - 1))];
            for c in 0..columns {
                if active[(r * BLOCK / TILE) * tiles + c * BLOCK / TILE] {
                    let sides = [c.saturating_sub(1), c, (c + 1).min(columns - 1)];
                    let sum: u16 = near.iter().flat_map(|row| sides.map(|s| u16::from(row[s]))).sum();
                    thresholds[r * columns + c] = (sum / 9).saturating_sub(MARGIN) as u8;
                }
            }
        }
        Darkness { level, columns, rows, thresholds }
    }

    fn dark(&self, u: isize, v: isize) -> bool {
        let (Ok(u), Ok(v)) = (usize::try_from(u), usize::try_from(v)) else { return false };
        let (c, r) = (u / BLOCK, v / BLOCK);
        c < self.columns
            && r < self.rows
            && self.level.pixels()[v * self.level.width + u] < self.thresholds[r * self.columns + c]
    }

    /// Follows every outline of a dark region once and shows it as pixels in clockwise order.
    pub(super) fn outlines(&self, mut found: impl FnMut(&[(i32, i32)])) {
        let (width, height) = (self.columns * BLOCK, self.rows * BLOCK);
        let mut visited = vec![0u64; (width * height).div_ceil(64)];
        let mut outline = Vec::with_capacity(LONGEST);
        let mut dark = vec![0u8; width];
        for v in 0..height {
            let thresholds = &self.thresholds[v / BLOCK * self.columns..(v / BLOCK + 1) * self.columns];
            let row = self.level.row(v);
            for ((d, p), t) in dark.chunks_exact_mut(BLOCK).zip(row.chunks_exact(BLOCK)).zip(thresholds) {
                for (d, p) in d.iter_mut().zip(p) {
                    *d = u8::from(p < t);
                }
            }
            let mut before = 0;
            for (chunk, cells) in dark.chunks(8).enumerate() {
                if cells.iter().all(|d| *d == 0) {
                    before = 0;
                    continue;
                }
                for (i, d) in cells.iter().enumerate() {
                    let u = chunk * 8 + i;
                    let index = v * width + u;
                    if *d == 1 && before == 0 && visited[index / 64] >> (index % 64) & 1 == 0 {
                        self.follow(u, v, width, &mut visited, &mut outline);
                        if outline.len() < LONGEST {
                            found(&outline);
                        }
                    }
                    before = *d;
                }
            }
        }
    }

    fn follow(&self, u: usize, v: usize, width: usize, visited: &mut [u64], outline: &mut Vec<(i32, i32)>) {
        outline.clear();
        let start = (u as isize, v as isize);
        let (mut at, mut heading) = (start, 0usize);
        let mut first = None;
        while outline.len() < LONGEST {
            let index = at.1 as usize * width + at.0 as usize;
            visited[index / 64] |= 1 << (index % 64);
            outline.push((at.0 as i32, at.1 as i32));
            // Look clockwise, from the left of where we came from.
            let turn =
                (0..8).map(|k| (heading + 6 + k) % 8).find(|d| self.dark(at.0 + STEPS[*d].0, at.1 + STEPS[*d].1));
            let Some(turn) = turn else { return };
            if at == start {
                match first {
                    None => first = Some(turn),
                    Some(f) if f == turn => {
                        outline.pop();
                        return;
                    }
                    Some(_) => {}
                }
            }
            heading = turn;
            at = (at.0 + STEPS[turn].0, at.1 + STEPS[turn].1);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::pyramid::{active_tiles, pyramid};
    use super::*;
    use crate::photo::Luma;

    #[test]
    fn follows_a_dark_square_once_around() {
        let dark = |u: usize, v: usize| (20..31).contains(&u) && (24..40).contains(&v);
        let pixels = (0..64 * 64).map(|i| if dark(i % 64, i / 64) { 30 } else { 200 }).collect();
        let photo = Luma::new(64, 64, pixels).unwrap();
        let levels = pyramid(&photo);
        let active = active_tiles(&levels[0], 30);
        let mut seen = Vec::new();
        Darkness::new(&levels[0], &levels[2], &active).outlines(|o| seen.push(o.to_vec()));
        let outer: Vec<_> = seen.iter().filter(|o| o.contains(&(20, 24))).collect();
        assert_eq!(outer.len(), 1);
        // 11 x 16 pixels have a border of 2 * (11 + 16) - 4.
        assert_eq!(outer[0].len(), 50);
        assert!(outer[0].contains(&(30, 39)));
    }
}
