//! Outlines of dark regions: threshold by the local mean, then border following
//! (Moore neighbourhood; S. Suzuki and K. Abe, "Topological structural analysis of
//! digitized binary images by border following", CVGIP 30, 1985, for the idea of
//! starting each border once).

use std::ops::Range;

use multiversion::multiversion;

use super::pyramid::{Level, TILE};
use super::threshold::threshold;

/// Side of the blocks that share a threshold, px.
const BLOCK: usize = 4;
/// When a pixel counts as dark.
#[derive(Debug, Clone, Copy)]
pub(super) enum Rule {
    /// It is darker than the mean of the 12x12 pixels around its block by a share of the contrast
    /// around, within limits in grey levels; where that contrast is at least so much.
    BelowMean { share: f32, limits: (f32, f32), contrast: u8 },
    /// It is lighter than the darkest pixel around by at most a share of the contrast around, or so much.
    NearDarkest { share: f32, least: u8 },
}

/// For edges against margins that are the lightest thing around.
pub(super) const AGAINST_MARGIN: Rule = Rule::BelowMean { share: 0.15, limits: (5.0, 14.0), contrast: 1 };
/// For margins that are darker than what surrounds them: black only.
pub(super) const AGAINST_GREY: Rule = Rule::BelowMean { share: 0.25, limits: (15.0, 90.0), contrast: 60 };
/// The same for markers of little contrast, or with bright things near.
pub(super) const DARKEST: Rule = Rule::NearDarkest { share: 0.0, least: 26 };
/// For borders so narrow that blur makes them grey.
pub(super) const HALFWAY: Rule = Rule::NearDarkest { share: 0.45, least: 26 };

/// What is around each tile of a level.
pub(super) struct Surroundings<'a> {
    pub(super) means: &'a Means,
    /// Contrast, 0 where nothing is to be looked for, and the darkest pixel.
    pub(super) contrast: &'a [u8],
    pub(super) darkest: &'a [u8],
}

impl Surroundings<'_> {
    /// The thresholds of some tiles of a row of blocks, from a tile on: a byte for each pixel of a row.
    fn thresholds(&self, rule: Rule, (row, first, tiles): (usize, usize, usize), out: &mut [u64]) {
        let tile = row / 2 * tiles + first;
        let (contrast, darkest) = (&self.contrast[tile..tile + out.len()], &self.darkest[tile..tile + out.len()]);
        match rule {
            Rule::BelowMean { share, limits, .. } => {
                let block = row * self.means.columns + 2 * first;
                let (means, _) = self.means.values[block..block + 2 * out.len()].as_chunks::<2>();
                for ((out, means), c) in out.iter_mut().zip(means).zip(contrast) {
                    let offset = (share * f32::from(*c)).clamp(limits.0, limits.1) as u8;
                    let [l, r] = means.map(|m| u64::from(m.saturating_sub(offset)));
                    *out = (l * (EACH & 0xffff_ffff)) | ((r * (EACH & 0xffff_ffff)) << 32);
                }
            }
            Rule::NearDarkest { share, least } => {
                for ((out, d), c) in out.iter_mut().zip(darkest).zip(contrast) {
                    *out = EACH * u64::from(d.saturating_add(((share * f32::from(*c)) as u8).max(least)));
                }
            }
        }
    }
}

/// Longest outline followed, px: larger squares are found on a coarser level.
const LONGEST: usize = 480;

/// Fewest dark pixels of 8x4 below the start of an outline that is followed.
const LEAST_DARK: u32 = 8;

/// Pixels of a level that are dark against their surroundings, a bit each, eight bytes for the rows of a tile, with a rim of
/// light tiles: what belongs to one outline lies close together in memory. Pixels count from the rim's corner.
#[derive(Default)]
pub(super) struct Darkness {
    /// Bytes in a row of tiles.
    pitch: usize,
    dark: Vec<u8>,
    /// Dark pixels that an outline has passed.
    passed: Vec<u8>,
    /// On an outline that is too long: whoever comes here is on the same one.
    too_long: Vec<u8>,
    /// Bytes of it that are set.
    long_ones: Vec<usize>,
    /// Runs of tiles that are looked at: row of tiles, first and one past the last tile. What lies
    /// outside of them is light.
    runs: Vec<(usize, usize, usize)>,
}

impl Darkness {
    /// Takes up a level; the pixels of the one before are forgotten, their memory is not.
    pub(super) fn start(&mut self, means: &Means) {
        self.clear(true);
        self.runs.clear();
        self.resize(means.columns.div_ceil(2), means.rows.div_ceil(TILE / BLOCK));
    }

    fn resize(&mut self, columns: usize, rows: usize) {
        self.pitch = TILE * (columns + 2);
        let count = self.pitch * (rows + 2);
        for bits in [&mut self.dark, &mut self.passed, &mut self.too_long] {
            if bits.len() < count {
                // Zeroed by the system, and only where it is touched.
                *bits = vec![0; count];
            }
        }
    }

    /// The bytes of a run of tiles.
    fn bytes(pitch: usize, (row, first, end): (usize, usize, usize)) -> Range<usize> {
        let start = (row + 1) * pitch;
        start + TILE * (first + 1)..start + TILE * (end + 1)
    }

    /// Forgets which pixels were passed and, where that is wanted, which are dark.
    fn clear(&mut self, with_dark: bool) {
        for run in &self.runs {
            let bytes = Self::bytes(self.pitch, *run);
            self.passed[bytes.clone()].fill(0);
            if with_dark {
                self.dark[bytes].fill(0);
            }
        }
        self.long_ones.drain(..).for_each(|byte| self.too_long[byte] = 0);
    }

    /// Marks the dark pixels.
    pub(super) fn mark(&mut self, level: &Level<'_>, around: &Surroundings<'_>, rule: Rule) {
        let tiles = level.width.div_ceil(TILE);
        let least = if let Rule::BelowMean { contrast, .. } = rule { contrast } else { 1 };
        let runs = runs(around.contrast, tiles, (around.means.columns / 2, around.means.rows / 2), least);
        // The same tiles are written anew.
        self.clear(runs != self.runs);
        self.runs = runs;
        let mut thresholds = vec![0u64; tiles];
        for (row, first, end) in &self.runs {
            let thresholds = &mut thresholds[*first..*end];
            let (bytes, _) = self.dark[Self::bytes(self.pitch, (*row, *first, *end))].as_chunks_mut::<TILE>();
            for v in 0..TILE {
                if v % BLOCK == 0 {
                    around.thresholds(rule, (2 * row + v / BLOCK, *first, tiles), thresholds);
                }
                let (pixels, _) = level.row(row * TILE + v)[first * TILE..end * TILE].as_chunks::<TILE>();
                for ((bytes, pixels), threshold) in bytes.iter_mut().zip(pixels).zip(&*thresholds) {
                    bytes[v] = gather(less(u64::from_le_bytes(*pixels), *threshold));
                }
            }
        }
    }

    /// A part of a level under one threshold; outlines count from its first corner.
    pub(super) fn within(level: &Level<'_>, (u0, v0): (usize, usize), (u1, v1): (usize, usize)) -> Self {
        let (columns, rows) = ((u1 - u0).div_ceil(TILE), (v1 - v0).div_ceil(TILE));
        let mut darkness = Darkness::default();
        darkness.resize(columns, rows);
        let threshold = threshold((v0..v1).map(|v| &level.row(v)[u0..u1]));
        for v in v0..v1 {
            let start = darkness.byte(TILE, v - v0 + TILE);
            let bytes = darkness.dark[start..].iter_mut().step_by(TILE);
            for (byte, pixels) in bytes.zip(level.row(v)[u0..u1].chunks(TILE)) {
                *byte = pixels.iter().rev().fold(0, |bits, p| bits << 1 | u8::from(*p < threshold));
            }
        }
        darkness.runs = (0..rows).map(|r| (r, 0, columns)).collect();
        darkness
    }

    /// Follows every outline of a dark region once and shows it as pixels in clockwise order.
    pub(super) fn outlines(&mut self, mut found: impl FnMut(&[(i32, i32)])) {
        let mut outline = Vec::with_capacity(LONGEST);
        let runs = std::mem::take(&mut self.runs);
        for run in &runs {
            for at in Self::bytes(self.pitch, *run).step_by(TILE) {
                let mut starts = self.starts_in(at);
                while starts != 0 {
                    let first = starts.trailing_zeros() as usize;
                    starts &= starts - 1;
                    let start = (at % self.pitch + first % TILE, (run.0 + 1) * TILE + first / TILE);
                    // An outline from within the same tile may have passed it by now.
                    let new = !is_set(&self.passed, at + first / TILE, start.0) && !self.is_speck(start);
                    if new && self.follow(start, &mut outline) {
                        found(&outline);
                    }
                }
            }
        }
        self.runs = runs;
    }

    /// Where a pixel's bit lies.
    #[inline(always)]
    fn byte(&self, x: usize, y: usize) -> usize {
        y / TILE * self.pitch + x / TILE * TILE + y % TILE
    }

    /// Which pixels of a tile, eight a row, are dark, not passed, and light on their left and above,
    /// as every region's first pixel is. Right of a hole there is dark above.
    fn starts_in(&self, at: usize) -> u64 {
        let word = eight(&self.dark, at);
        if word == 0 {
            return 0;
        }
        let tile = |at: usize| eight(&self.dark, at);
        // A tile moved down by a row, the one above coming in.
        let down = |at: usize| tile(at) << TILE | tile(at - self.pitch) >> (64 - TILE);
        let (left, up) = (tile(at - TILE), down(at));
        // Moved by a column, the tile beside coming in.
        let from_left = |own: u64, beside: u64| (own & !HIGHEST) << 1 | (beside & HIGHEST) >> 7;
        let from_right = |own: u64, beside: u64| (own & !EACH) >> 1 | (beside & EACH) << 7;
        let near = from_left(word, left) | up | from_left(up, down(at - TILE)) | from_right(up, down(at + TILE));
        word & !near & !eight(&self.passed, at)
    }

    /// Whether hardly anything is dark in the 8x4 pixels below a start: noise, not worth following.
    fn is_speck(&self, (x, y): (usize, usize)) -> bool {
        let count = |row: usize| {
            let at = self.byte(x - 3, y + row);
            (pair(&self.dark, at) >> ((x - 3) % TILE) & 0xff).count_ones()
        };
        count(0) + count(1) + count(2) + count(3) < LEAST_DARK
    }

    /// Follows an outline from its start; false where it is too long.
    fn follow(&mut self, start: (usize, usize), outline: &mut Vec<(i32, i32)>) -> bool {
        outline.clear();
        let ((mut x, mut y), mut heading) = (start, 0usize);
        let mut first = None;
        let rim = TILE as i32;
        let (pitch, dark, passed) = (self.pitch, self.dark.as_slice(), self.passed.as_mut_slice());
        let (too_long, are_some) = (self.too_long.as_slice(), !self.long_ones.is_empty());
        while outline.len() < LONGEST {
            // Rows above, of and below the pixel.
            let [above, own, below] = [y.wrapping_sub(1), y, y.wrapping_add(1)]
                .map(|y| (y / TILE).wrapping_mul(pitch).wrapping_add(y % TILE));
            let byte = own.wrapping_add(x / TILE * TILE);
            // A long one is met again at many places: now and then is often enough to look.
            if are_some && outline.len().is_multiple_of(LOOK_AGAIN) && is_set(too_long, byte, x) {
                break;
            }
            passed[byte] |= 1 << (x % TILE);
            outline.push((x as i32 - rim, y as i32 - rim));
            let left = x.wrapping_sub(1);
            let (column, shift) = (left / TILE * TILE, left % TILE);
            let three = |row: usize| usize::from(pair(dark, row.wrapping_add(column)) >> shift & 7);
            let around = three(above) | three(own) << 3 | three(below) << 6;
            let turn = usize::from(TURNS[heading % 8][around]);
            if turn == NOWHERE {
                return true;
            }
            if (x, y) == start {
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
            let (right, down) = STEPS[turn % 8];
            (x, y) = (x.wrapping_add_signed(right), y.wrapping_add_signed(down));
        }
        for (u, v) in outline.iter() {
            let (x, y) = ((u + rim) as usize, (v + rim) as usize);
            let byte = self.byte(x, y);
            self.too_long[byte] |= 1 << (x % TILE);
            self.long_ones.push(byte);
        }
        false
    }
}

/// A tile's byte and that of the tile on its right: sixteen pixels of a row, the left one lowest.
#[inline(always)]
fn pair(dark: &[u8], at: usize) -> u16 {
    match dark.get(at..).and_then(|rest| rest.first_chunk::<{ TILE + 1 }>()) {
        Some(bytes) => u16::from(bytes[TILE]) << 8 | u16::from(bytes[0]),
        None => 0,
    }
}

/// After so many pixels of an outline it is tried again whether it is one that is too long.
const LOOK_AGAIN: usize = 8;

/// Where a pixel has no dark neighbour.
const NOWHERE: usize = 8;

/// Where an outline goes on, clockwise from east, by where it came heading and by the nine pixels around, three rows
/// of three bits, the left one lowest: to the first dark neighbour clockwise, from the left of where it came from.
static TURNS: [[u8; 512]; 8] = {
    // The place of each neighbour, clockwise from east.
    const PLACES: [usize; 8] = [5, 8, 7, 6, 3, 0, 1, 2];
    let mut turns = [[NOWHERE as u8; 512]; 8];
    let mut heading = 0;
    while heading < 8 {
        let mut rows = 0;
        while rows < 512 {
            let mut k = 8;
            while k > 0 {
                k -= 1;
                let turn = (heading + 6 + k) % 8;
                if rows >> PLACES[turn] & 1 == 1 {
                    turns[heading][rows] = turn as u8;
                }
            }
            rows += 1;
        }
        heading += 1;
    }
    turns
};

fn is_set(bits: &[u8], byte: usize, x: usize) -> bool {
    bits[byte] >> (x % TILE) & 1 == 1
}

/// Eight bytes at once, the first one lowest.
fn eight(bits: &[u8], from: usize) -> u64 {
    bits.get(from..).and_then(|b| b.first_chunk::<8>()).map_or(0, |b| u64::from_le_bytes(*b))
}

/// One in each of eight bytes.
const EACH: u64 = 0x0101_0101_0101_0101;
/// The highest bit of each of eight bytes.
const HIGHEST: u64 = 0x80 * EACH;

/// The highest bit of each of eight bytes of `a` that is less than that of `b`.
fn less(a: u64, b: u64) -> u64 {
    // No byte borrows from the next one: the highest bits of all are set before.
    let not_less_below = (a | HIGHEST).wrapping_sub(b & !HIGHEST);
    ((!a & b) | (!(a ^ b) & !not_less_below)) & HIGHEST
}

/// A byte with the highest bit of each of eight bytes that are nothing else, the first one lowest.
fn gather(flags: u64) -> u8 {
    // Brings the lowest bits of eight bytes together in the highest one.
    const TOGETHER: u64 = 0x0102_0408_1020_4080;
    ((flags >> 7).wrapping_mul(TOGETHER) >> 56) as u8
}

/// Steps to the eight neighbours, clockwise from east.
const STEPS: [(isize, isize); 8] = [(1, 0), (1, 1), (0, 1), (-1, 1), (-1, 0), (-1, -1), (0, -1), (1, -1)];

/// Runs of neighbouring tiles with enough contrast, within so many columns and rows of whole tiles.
fn runs(contrast: &[u8], tiles: usize, (columns, rows): (usize, usize), least: u8) -> Vec<(usize, usize, usize)> {
    let mut runs = Vec::new();
    for (r, row) in contrast.chunks_exact(tiles).enumerate().take(rows) {
        let mut c = 0;
        while c < columns {
            if row[c..].first_chunk() == Some(&[0u8; 8]) {
                c += 8;
                continue;
            }
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
            means(near, &mut sums, out);
        }
        Means { columns, rows, values }
    }
}

/// Means of nine: of three rows and three columns.
#[multiversion(targets("x86_64+avx2"))]
fn means(near: [&[u8]; 3], sums: &mut [u16], out: &mut [u8]) {
    let columns = out.len();
    for (((s, a), b), c) in sums[1..=columns].iter_mut().zip(near[0]).zip(near[1]).zip(near[2]) {
        *s = u16::from(*a) + u16::from(*b) + u16::from(*c);
    }
    // Nine bytes: no sum is too large.
    sums[0] = sums[1];
    sums[columns + 1] = sums[columns];
    let (left, middle, right) = (&sums[..columns], &sums[1..=columns], &sums[2..columns + 2]);
    for i in 0..columns {
        out[i] = (left[i].wrapping_add(middle[i]).wrapping_add(right[i]) / 9) as u8;
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
        let means = Means::new(&levels[2]);
        let mut darkness = Darkness::default();
        darkness.start(&means);
        let around = Surroundings { means: &means, contrast: &active, darkest: &active };
        darkness.mark(&levels[0], &around, AGAINST_MARGIN);
        darkness.outlines(|o| seen.push(o.to_vec()));
        let outer: Vec<_> = seen.iter().filter(|o| o.contains(&(20, 24))).collect();
        assert_eq!(outer.len(), 1);
        // 11 x 16 pixels have a border of 2 * (11 + 16) - 4.
        assert_eq!(outer[0].len(), 50);
        assert!(outer[0].contains(&(30, 39)));
    }

    /// A narrow grey gap between two black squares beside something white: dark by the local mean.
    #[test]
    fn one_threshold_parts_what_the_local_mean_joins() {
        let grey = |u: usize, v: usize| match (u, v) {
            (_, ..20) => 255,
            (20..34 | 37..51, 20..34) => 10,
            (18..53, 20..36) => 140,
            _ => 150,
        };
        let photo = Luma::new(64, 64, (0..64 * 64).map(|i| grey(i % 64, i / 64)).collect()).unwrap();
        let levels = pyramid(&photo);
        let mut boxes = Vec::new();
        Darkness::within(&levels[0], (16, 18), (54, 38)).outlines(|outline| {
            let u: Vec<i32> = outline.iter().map(|p| p.0 + 16).collect();
            boxes.push((u.iter().min().copied(), u.iter().max().copied()));
        });
        assert_eq!(boxes, [(Some(20), Some(33)), (Some(37), Some(50))]);
    }

    #[test]
    fn eight_pixels_are_compared_as_one_by_one() {
        for i in 0..200_000u64 {
            let (a, b) = (i.wrapping_mul(0x9e37_79b9_7f4a_7c15), (i + 7).wrapping_mul(0xd6e8_feb8_6659_fd93));
            let b = if i % 3 == 0 { a ^ (b & 0x0180_0100_8001_0001) } else { b };
            let plain = a
                .to_le_bytes()
                .iter()
                .zip(b.to_le_bytes())
                .rev()
                .fold(0u8, |bits, (a, b)| bits << 1 | u8::from(*a < b));
            assert_eq!(gather(less(a, b)), plain, "{a:x} {b:x}");
        }
    }

    /// A ring's hole starts no outline of its own.
    #[test]
    fn holes_are_passed_over() {
        let ring = |u: usize, v: usize| {
            let inside = |a: usize, b: usize| (a..b).contains(&u) && (a..b).contains(&v);
            inside(20, 44) && !inside(26, 38)
        };
        let pixels = (0..64 * 64).map(|i| if ring(i % 64, i / 64) { 30 } else { 200 }).collect();
        let photo = Luma::new(64, 64, pixels).unwrap();
        let mut lengths = Vec::new();
        Darkness::within(&pyramid(&photo)[0], (16, 16), (48, 48)).outlines(|outline| lengths.push(outline.len()));
        assert_eq!(lengths, [4 * 24 - 4]);
    }
}
