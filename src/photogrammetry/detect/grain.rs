//! A marker's noise, kept so that photos can be compared once their pixels are gone.
//!
//! Noise is what a pixel is apart from the mean of its four neighbours, within the flat parts of the marker's cells: light
//! that runs evenly over the marker leaves nothing of itself in it.

use nalgebra::{Vector2, Vector3};

use super::homography::Homography;
use super::quad::area;
use crate::num::median;
use crate::photo::Luma;

/// Half the side of the window about a marker's middle that is kept, px.
const HALF: usize = 32;
const SIDE: usize = 2 * HALF;
/// Least distance of a flat pixel from its cell's edge: share of the cell, and px. What JPEG and sharpening leave beside
/// edges is no noise, and is the same in every photo from one place.
const MARGIN: f64 = 0.3;
const MARGIN_PX: f64 = 3.0;
/// Cells whose margins leave less than this share of their side have no flat part.
const LEAST_FLAT: f64 = 0.16;
/// Fewer flat pixels of a colour say nothing of its noise.
const LEAST: usize = 30;
/// What differs by more is no noise, quarters of a grey level.
const MOST: i16 = 32;
/// Stands for a pixel that is not flat.
const NONE: i8 = i8::MIN;

/// The noise of one marker in one photo.
#[derive(Debug, Clone, PartialEq)]
pub struct Grain {
    /// Median size of the noise on white, grey levels; `None` where too little of it is flat.
    pub white: Option<f64>,
    /// Likewise on black.
    pub black: Option<f64>,
    /// The pixel in the window's middle.
    middle_px: [usize; 2],
    /// Noise of the window's pixels, quarters of a grey level, row by row.
    noise: Vec<i8>,
}

impl Grain {
    /// The noise of a marker by its corners; `None` where its cells are too small or the window leaves the photo.
    pub fn of(photo: &Luma, corners: &[Vector2<f64>; 4]) -> Option<Self> {
        let cell_px = area(corners).abs().sqrt() / 8.0;
        let margin = MARGIN.max(MARGIN_PX / cell_px);
        if margin.is_nan() || 1.0 - 2.0 * margin < LEAST_FLAT {
            return None;
        }
        let middle = corners.iter().sum::<Vector2<f64>>() / 4.0;
        let inside = |x: f64, side: usize| {
            let x = x.round();
            (x > HALF as f64 && x + (HALF as f64) < side as f64 - 1.0).then_some(x as usize)
        };
        let middle_px = [inside(middle.x, photo.width())?, inside(middle.y, photo.height())?];
        let cells_from_photo = Homography::from_corners(corners)?.photo_from_cell.try_inverse()?;
        let [left, top] = middle_px.map(|x| x - HALF);
        let is_flat = |u: usize, v: usize| {
            let p = cells_from_photo * Vector3::new(u as f64, v as f64, 1.0);
            [p.x / p.z, p.y / p.z].iter().all(|c| (0.0..8.0).contains(c) && (c.fract() - 0.5).abs() < 0.5 - margin)
        };
        let mut noise = vec![NONE; SIDE * SIDE];
        let mut flat: Vec<(u8, i8)> = Vec::new();
        for (row, line) in noise.chunks_exact_mut(SIDE).enumerate() {
            let v = top + row;
            let [above, own, below] = [v - 1, v, v + 1].map(|v| photo.row(v));
            for (column, kept) in line.iter_mut().enumerate() {
                let u = left + column;
                if is_flat(u, v) {
                    let around: i16 = [own[u - 1], own[u + 1], above[u], below[u]].iter().map(|p| i16::from(*p)).sum();
                    *kept = (4 * i16::from(own[u]) - around).clamp(-MOST, MOST) as i8;
                    flat.push((own[u], *kept));
                }
            }
        }
        let [white, black] = by_colour(&flat);
        Some(Grain { white, black, middle_px, noise })
    }

    /// The sums of products of this noise and that of the same marker elsewhere, shifted by whole pixels: of both, of this
    /// one and of the other one with itself, and the number of pixels.
    pub fn products(&self, other: &Grain, shift_px: [i64; 2]) -> Products {
        let apart = |axis: usize| shift_px[axis] - (other.middle_px[axis] as i64 - self.middle_px[axis] as i64);
        let [right, down] = [apart(0), apart(1)];
        let mut sums = Products::default();
        for row in 0..SIDE as i64 {
            for column in 0..SIDE as i64 {
                let (u, v) = (column + right, row + down);
                if !(0..SIDE as i64).contains(&u) || !(0..SIDE as i64).contains(&v) {
                    continue;
                }
                let at = |noise: &[i8], u: i64, v: i64| noise[v as usize * SIDE + u as usize];
                let (a, b) = (at(&self.noise, column, row), at(&other.noise, u, v));
                if a != NONE && b != NONE {
                    sums.add(i64::from(a), i64::from(b));
                }
            }
        }
        sums
    }
}

/// Sums of products of two photos' noise.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Products {
    both: i64,
    first: i64,
    second: i64,
    /// Pixels that are flat in both.
    pub pixels: usize,
}

impl Products {
    fn add(&mut self, a: i64, b: i64) {
        self.both += a * b;
        self.first += a * a;
        self.second += b * b;
        self.pixels += 1;
    }

    /// Those of two markers together.
    #[must_use]
    pub fn with(self, more: Products) -> Self {
        Products {
            both: self.both + more.both,
            first: self.first + more.first,
            second: self.second + more.second,
            pixels: self.pixels + more.pixels,
        }
    }

    /// The correlation; 0 where one of them has hardly any noise (less than half a grey level, root mean square).
    pub fn correlation(self) -> f64 {
        if self.first.min(self.second) < 4 * self.pixels as i64 {
            return 0.0;
        }
        self.both as f64 / (self.first as f64 * self.second as f64).sqrt()
    }
}

/// Median size of the noise on white and on black, grey levels.
fn by_colour(flat: &[(u8, i8)]) -> [Option<f64>; 2] {
    let (low, high) = flat.iter().fold((u8::MAX, u8::MIN), |(low, high), (grey, _)| (low.min(*grey), high.max(*grey)));
    let between = low.midpoint(high);
    let size = |white: bool| {
        let own = flat.iter().filter(|(grey, _)| (*grey > between) == white);
        let own: Vec<f64> = own.map(|(_, noise)| f64::from(noise.abs()) / 4.0).collect();
        if own.len() < LEAST { None } else { median(own) }
    };
    [size(true), size(false)]
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A marker of black and white cells of 12 px with noise of a seed, its middle at a place.
    fn photo(middle: [usize; 2], amplitude: u64, seed: u64) -> (Luma, [Vector2<f64>; 4]) {
        let (width, height) = (400, 300);
        let grey = |i: usize| {
            let (u, v) = (i % width, i / width);
            let (x, y) = (u as i64 - middle[0] as i64 + 48, v as i64 - middle[1] as i64 + 48);
            let white = (x.div_euclid(12) + y.div_euclid(12)).rem_euclid(2) == 0;
            let place = ((x + 500) * 1000 + y + 500) as u64;
            let mut h = place.wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ seed.wrapping_mul(0xbf58_476d_1ce4_e5b9);
            h = (h ^ (h >> 31)).wrapping_mul(0x94d0_49bb_1331_11eb);
            (if white { 180 } else { 40 } + ((h >> 40) % (2 * amplitude + 1)) as i32 - amplitude as i32) as u8
        };
        let corner = |x: f64, y: f64| Vector2::new(middle[0] as f64 + x - 0.5, middle[1] as f64 + y - 0.5);
        let corners = [corner(-48.0, -48.0), corner(48.0, -48.0), corner(48.0, 48.0), corner(-48.0, 48.0)];
        (Luma::new(width, height, (0..width * height).map(grey).collect()).unwrap(), corners)
    }

    #[test]
    fn copied_noise_is_the_same_wherever_it_was_put_and_other_noise_is_not() {
        let grain = |middle, seed| {
            let (photo, corners) = photo(middle, 5, seed);
            Grain::of(&photo, &corners).unwrap()
        };
        let (a, copy, other) = (grain([100, 120], 1), grain([117, 109], 1), grain([117, 109], 2));
        assert!(a.products(&copy, [17, -11]).correlation() > 0.999);
        assert!(a.products(&copy, [16, -11]).correlation() < 0.6);
        let apart = a.products(&other, [17, -11]);
        // Four standard deviations of independent noise, whose neighbours share pixels (a fifth more).
        assert!(apart.correlation().abs() < 4.8 / (apart.pixels as f64).sqrt() && apart.pixels > 150);
    }

    #[test]
    fn noise_is_that_of_the_cells_and_edges_are_left_out() {
        let grains = (1..=12).map(|seed| {
            let (photo, corners) = photo([100, 120], 6, seed);
            let grain = Grain::of(&photo, &corners).unwrap();
            [grain.white.unwrap(), grain.black.unwrap()]
        });
        let sums = grains.fold([0.0; 2], |sums, found| [sums[0] + found[0], sums[1] + found[1]]);
        // All five pixels of all 13 levels, counted out.
        let levels = || -6..=6_i32;
        let pairs: Vec<i32> = levels().flat_map(|a| levels().map(move |b| a + b)).collect();
        let fours: Vec<i32> = pairs.iter().flat_map(|a| pairs.iter().map(move |b| a + b)).collect();
        let sizes = levels().flat_map(|own| fours.iter().map(move |around| f64::from((4 * own - around).abs()) / 4.0));
        let wanted = median(sizes.collect::<Vec<f64>>()).unwrap();
        for found in sums.map(|sum| sum / 12.0) {
            assert!((found / wanted - 1.0).abs() < 0.1, "{found} {wanted}");
        }
        let (photo, corners) = photo([100, 120], 6, 3);
        let (quiet, same) = self::photo([100, 120], 0, 3);
        assert_eq!(Grain::of(&quiet, &same).unwrap().white, Some(0.0));
        // Beside the picture, and too small.
        assert!(Grain::of(&photo, &corners.map(|c| c - Vector2::new(90.0, 0.0))).is_none());
        assert!(Grain::of(&photo, &corners.map(|c| (c - corners[0]) * 0.2 + corners[0])).is_none());
    }
}
