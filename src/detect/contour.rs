//! Outlines of dark regions: threshold by the local mean, then border following
//! (Moore neighbourhood; S. Suzuki and K. Abe, "Topological structural analysis of
//! digitized binary images by border following", CVGIP 30, 1985, for the idea of
//! starting each border once).

use super::pyramid::{Level, TILE};

/// Side of the blocks that share a threshold, px.
const BLOCK: usize = 4;
/// When a pixel counts as dark.
#[derive(Debug, Clone, Copy)]
pub(super) struct Rule {
    /// It is darker than the mean of the 12x12 pixels around its block by this share of the contrast around ...
    share: f32,
    /// ... within these limits in grey levels.
    limits: (f32, f32),
    /// Least contrast around, grey levels.
    contrast: u8,
}

/// For edges against margins that are the lightest thing around.
pub(super) const AGAINST_MARGIN: Rule = Rule { share: 0.15, limits: (5.0, 14.0), contrast: 1 };
/// For margins that are darker than what surrounds them: black only.
pub(super) const AGAINST_GREY: Rule = Rule { share: 0.25, limits: (15.0, 90.0), contrast: 60 };
/// The same where bright things are near.
pub(super) const AGAINST_BRIGHT: Rule = Rule { share: 0.42, limits: (30.0, 110.0), contrast: 80 };

/// Longest outline followed, px: larger squares are found on a coarser level.
const LONGEST: usize = 480;

/// Fewest dark pixels of 8x4 below the start of an outline that is followed.
const LEAST_DARK: u64 = 8;

const DARK: u8 = 1;
const VISITED: u8 = 2;
/// On an outline that is too long: whoever comes here is on the same one.
const TOO_LONG: u8 = 4;

/// Which pixels of a level are dark against their surroundings, with an outer rim of light ones.
pub(super) struct Darkness {
    /// Pixels in a row, rim included.
    stride: usize,
    marks: Vec<u8>,
    /// Runs of tiles that are looked at: row of tiles, first and one past the last tile.
    runs: Vec<(usize, usize, usize)>,
}

impl Darkness {
    /// `contrast` is that of each tile, 0 where nothing is to be looked for.
    pub(super) fn new(level: &Level<'_>, means: &Means, contrast: &[u8], rule: Rule) -> Self {
        let stride = means.columns * BLOCK + 2;
        let mut marks = vec![0u8; stride * (means.rows * BLOCK + 2)];
        let runs = runs(contrast, level.width.div_ceil(TILE), (means.columns / 2, means.rows / 2), rule.contrast);
        let offsets: [u8; 256] =
            std::array::from_fn(|c| (rule.share * c as f32).clamp(rule.limits.0, rule.limits.1) as u8);
        let mut thresholds = vec![0u8; means.columns * BLOCK];
        for (row, first, end) in &runs {
            let contrasts = &contrast[row * level.width.div_ceil(TILE)..];
            for r in [2 * row, 2 * row + 1] {
                let row_means = &means.values[r * means.columns..(r + 1) * means.columns];
                for c in 2 * first..2 * end {
                    let threshold = row_means[c].saturating_sub(offsets[usize::from(contrasts[c / 2])]);
                    thresholds[c * BLOCK..(c + 1) * BLOCK].fill(threshold);
                }
                let (from, to) = (first * TILE, end * TILE);
                for v in r * BLOCK..(r + 1) * BLOCK {
                    let start = (v + 1) * stride + 1;
                    let pixels = &level.row(v)[from..to];
                    for ((m, p), t) in marks[start + from..start + to].iter_mut().zip(pixels).zip(&thresholds[from..to])
                    {
                        *m = u8::from(p < t);
                    }
                }
            }
        }
        Darkness { stride, marks, runs }
    }

    /// A part of a level under one threshold; outlines count from its first corner.
    pub(super) fn within(level: &Level<'_>, (u0, v0): (usize, usize), (u1, v1): (usize, usize)) -> Self {
        let (columns, rows) = ((u1 - u0).div_ceil(TILE), (v1 - v0).div_ceil(TILE));
        let stride = columns * TILE + 2;
        let mut marks = vec![0u8; stride * (rows * TILE + 2)];
        let threshold = threshold((v0..v1).map(|v| &level.row(v)[u0..u1]));
        for v in v0..v1 {
            let start = (v - v0 + 1) * stride + 1;
            for (m, p) in marks[start..].iter_mut().zip(&level.row(v)[u0..u1]) {
                *m = u8::from(*p < threshold);
            }
        }
        Darkness { stride, marks, runs: (0..rows).map(|r| (r, 0, columns)).collect() }
    }

    /// Follows every outline of a dark region once and shows it as pixels in clockwise order.
    pub(super) fn outlines(&mut self, mut found: impl FnMut(&[(i32, i32)])) {
        let mut outline = Vec::with_capacity(LONGEST);
        let runs = std::mem::take(&mut self.runs);
        // Row by row over all runs of a row of tiles, so that an outline's topmost pixel comes first.
        for row in runs.chunk_by(|a, b| a.0 == b.0) {
            for v in row[0].0 * TILE..(row[0].0 + 1) * TILE {
                for (_, first, end) in row {
                    let start = (v + 1) * self.stride + 1;
                    for word in (start + first * TILE..start + end * TILE).step_by(8) {
                        if !self.starts_in(word) {
                            continue;
                        }
                        for index in word..word + 8 {
                            // The left end of a dark run that no outline has passed yet.
                            let starts =
                                self.marks[index] == DARK && self.marks[index - 1] == 0 && !self.is_speck(index);
                            if starts && self.follow(index, &mut outline) {
                                found(&outline);
                            }
                        }
                    }
                }
            }
        }
    }

    /// Whether one of eight pixels is dark, not visited and right of a light one: all eight at once.
    fn starts_in(&self, start: usize) -> bool {
        const ONES: u64 = 0x0101_0101_0101_0101;
        let Some((bytes, _)) = self.marks[start..].split_first_chunk::<8>() else { return false };
        let word = u64::from_le_bytes(*bytes);
        let set = (word | word >> 1) & ONES;
        let left = set << 8 | u64::from(self.marks[start - 1] != 0);
        word & !(word >> 1) & !left & ONES != 0
    }

    /// Whether hardly anything is dark in the 8x4 pixels below a start: noise, not worth following.
    fn is_speck(&self, start: usize) -> bool {
        const ONES: u64 = 0x0101_0101_0101_0101;
        let count = |row: usize| {
            let from = start + row * self.stride - 3;
            let bytes = self.marks.get(from..).and_then(|m| m.split_first_chunk::<8>());
            bytes.map_or(0, |(b, _)| {
                let word = u64::from_le_bytes(*b);
                // The sum of eight bytes that are 0 or 1.
                ((word | word >> 1) & ONES).wrapping_mul(ONES) >> 56
            })
        };
        count(0) + count(1) + count(2) + count(3) < LEAST_DARK
    }

    /// Follows an outline from its start; false where it is too long.
    fn follow(&mut self, start: usize, outline: &mut Vec<(i32, i32)>) -> bool {
        let s = self.stride as isize;
        // Clockwise from east, in the marks and in pixels.
        let steps = [1, s + 1, s, s - 1, -1, -s - 1, -s, 1 - s];
        outline.clear();
        let (mut at, mut heading) = (start, 0usize);
        let mut place = ((start % self.stride) as i32 - 1, (start / self.stride) as i32 - 1);
        let mut first = None;
        while outline.len() < LONGEST && self.marks[at] & TOO_LONG == 0 {
            self.marks[at] |= VISITED;
            outline.push(place);
            // Look clockwise, from the left of where we came from.
            let mut turn = (heading + 6) % 8;
            let mut tries = 0;
            while self.marks[at.wrapping_add_signed(steps[turn])] == 0 {
                turn = (turn + 1) % 8;
                tries += 1;
                if tries == 8 {
                    return true;
                }
            }
            if at == start {
                match first {
                    None => first = Some(turn),
                    Some(f) if f == turn => {
                        outline.pop();
                        return true;
                    }
                    Some(_) => {}
                }
            }
            heading = turn;
            at = at.wrapping_add_signed(steps[turn]);
            place = (place.0 + STEPS[turn].0, place.1 + STEPS[turn].1);
        }
        for (u, v) in outline.iter() {
            self.marks[(*v + 1) as usize * self.stride + (*u + 1) as usize] |= TOO_LONG;
        }
        false
    }
}

/// Steps to the eight neighbours, clockwise from east.
const STEPS: [(i32, i32); 8] = [(1, 0), (1, 1), (0, 1), (-1, 1), (-1, 0), (-1, -1), (0, -1), (1, -1)];

/// Runs of neighbouring tiles with enough contrast, within so many columns and rows of whole tiles.
fn runs(contrast: &[u8], tiles: usize, (columns, rows): (usize, usize), least: u8) -> Vec<(usize, usize, usize)> {
    let mut runs = Vec::new();
    for (r, row) in contrast.chunks_exact(tiles).enumerate().take(rows) {
        let mut c = 0;
        while c < columns {
            let first = c;
            while c < columns && row[c] >= least.max(1) {
                c += 1;
            }
            if c > first {
                runs.push((r, first, c));
            }
            c += 1;
        }
    }
    runs
}

/// The grey level that parts dark from light best: most variance between the two (N. Otsu, "A
/// threshold selection method from gray-level histograms", IEEE Trans. SMC 9, 1979).
fn threshold<'a>(rows: impl Iterator<Item = &'a [u8]>) -> u8 {
    let mut counts = [0u32; 256];
    rows.flatten().for_each(|p| counts[usize::from(*p)] += 1);
    let all: f64 = counts.iter().map(|n| f64::from(*n)).sum();
    let total: f64 = counts.iter().enumerate().map(|(grey, n)| grey as f64 * f64::from(*n)).sum();
    let (mut best, mut most) = (128, 0.0);
    let (mut n, mut sum) = (0.0, 0.0);
    for (grey, count) in counts.iter().enumerate() {
        n += f64::from(*count);
        sum += f64::from(*count) * grey as f64;
        let apart = sum / n - (total - sum) / (all - n);
        let between = n * (all - n) * apart * apart;
        if between > most {
            (best, most) = (grey + 1, between);
        }
    }
    best.min(255) as u8
}

/// Mean grey of the 3x3 blocks around each block of a level.
pub(super) struct Means {
    columns: usize,
    rows: usize,
    values: Vec<u8>,
}

impl Means {
    /// `quarter` is the level two halvings below: its pixels are the blocks' means.
    pub(super) fn new(quarter: &Level<'_>) -> Self {
        let (columns, rows) = (quarter.width, quarter.height);
        let mut values = vec![0u8; columns * rows];
        // Sums of three rows, the outermost columns repeated.
        let mut sums = vec![0u16; columns + 2];
        for (r, out) in values.chunks_exact_mut(columns).enumerate() {
            let near = [quarter.row(r.saturating_sub(1)), quarter.row(r), quarter.row((r + 1).min(rows - 1))];
            for (((s, a), b), c) in sums[1..=columns].iter_mut().zip(near[0]).zip(near[1]).zip(near[2]) {
                *s = u16::from(*a) + u16::from(*b) + u16::from(*c);
            }
            sums[0] = sums[1];
            sums[columns + 1] = sums[columns];
            for ((o, s), (t, u)) in out.iter_mut().zip(&sums).zip(sums[1..].iter().zip(&sums[2..])) {
                *o = ((s + t + u) / 9) as u8;
            }
        }
        Means { columns, rows, values }
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
        Darkness::new(&levels[0], &Means::new(&levels[2]), &active, AGAINST_MARGIN).outlines(|o| seen.push(o.to_vec()));
        let outer: Vec<_> = seen.iter().filter(|o| o.contains(&(20, 24))).collect();
        assert_eq!(outer.len(), 1);
        // 11 x 16 pixels have a border of 2 * (11 + 16) - 4.
        assert_eq!(outer[0].len(), 50);
        assert!(outer[0].contains(&(30, 39)));
    }
}
