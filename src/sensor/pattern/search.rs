//! A photo in a pattern: as it is, turned, saved smaller, cropped, a little scaled.

use std::ops::Range;

use super::correlate::{BLOCK, Correlator, Peak, Surface};
use super::digest::Digest;
use super::fourier::fast_length;
use super::plane::{Grey, Plane};
use super::residual::residual;

/// From this energy on a pattern counts as found. Goljan, Fridrich and Filler 2009 take 60 for photos that are searched at
/// few places; here hundreds of thousands are, and real strangers reach 44 (`docs/sensor-pattern.md`).
pub const MATCH_PCE: f64 = 100.0;

/// Where a pattern shows best in a photo, and how well.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Found {
    /// Peak-to-correlation energy there.
    pub pce: f64,
    /// How far right and down of its place, px.
    pub shift_px: [i32; 2],
    /// The pattern is turned clockwise by so much.
    pub turn_deg: u16,
    /// The pattern is so many times as large.
    pub scale: f64,
    /// How many places were tried.
    pub places: u64,
}

/// How far to search.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Search {
    /// Turned by quarters, shifted, saved at another size, cropped.
    Plain,
    /// Also scaled by parts of a percent, as a stabiliser or a correction of the lens leaves a picture.
    Scaled,
}

/// Sides of one shape differ by no more than this share.
const SAME_SHAPE: f64 = 0.004;
/// Scales beside one are tried up to this far from it; within a block of [`BLOCK`] px it moves pixels by half of one.
const MOST_SCALE: f64 = 0.004;
/// Rows of a surface that are added up for all scales before the next ones.
const BAND: usize = 16;

/// A photo's noise, ready to be looked for in several patterns.
struct Photo<'a> {
    noise: &'a Plane,
    near: Correlator,
}

/// Looks for a pattern in a photo.
pub fn find(photo: &Grey<'_>, digest: &Digest, search: Search) -> Found {
    let noise = residual(photo);
    let mut photo = Photo { noise: &noise, near: Correlator::new(BLOCK, BLOCK) };
    let mut best = Found { pce: 0.0, shift_px: [0, 0], turn_deg: 0, scale: 1.0, places: 0 };
    for quarters in 0..4 {
        if search == Search::Scaled && quarters % 2 == 0 && digest.size() == noise.size() {
            photo.scaled(digest, quarters, &mut best);
        } else {
            photo.turned(digest, quarters, &mut best);
        }
        if best.pce >= MATCH_PCE {
            return best;
        }
    }
    for quarters in [0, 1] {
        photo.cropped(digest, quarters, &mut best);
        if best.pce >= MATCH_PCE {
            return best;
        }
    }
    best
}

impl Photo<'_> {
    /// The pattern turned by so many quarters, at the photo's size.
    fn turned(&mut self, digest: &Digest, quarters: u8, best: &mut Found) {
        let size = digest.size();
        let [width, height] = if quarters % 2 == 1 { [size[1], size[0]] } else { size };
        let own = self.noise.size();
        let factors = [own[0] as f64 / width as f64, own[1] as f64 / height as f64];
        let told = |peak: Peak, scale: f64| Found {
            pce: peak.pce,
            shift_px: peak.shift,
            turn_deg: 90 * u16::from(quarters),
            scale,
            places: 0,
        };
        if own == [width, height] {
            let surface = match quarters {
                0 => self.near.whole(self.noise, digest),
                _ => self.near.whole(self.noise, &digest.plane().turned(quarters)),
            };
            best.take(&surface, |peak| told(peak, 1.0));
        } else if (factors[0] / factors[1] - 1.0).abs() < SAME_SHAPE {
            let pattern = digest.plane().turned(quarters);
            let surface = match factors[0] < 1.0 {
                true => self.near.whole(self.noise, &pattern.resized(own)),
                false => self.near.whole(&self.noise.resized(pattern.size()), &pattern),
            };
            best.take(&surface, |peak| told(peak, factors[0]));
        }
    }

    /// The photo as a part of the pattern turned by so many quarters, and by two more.
    fn cropped(&mut self, digest: &Digest, quarters: u8, best: &mut Found) {
        let (own, size) = (self.noise.size(), digest.size());
        let [width, height] = if quarters % 2 == 1 { [size[1], size[0]] } else { size };
        if own[0] > width || own[1] > height || own == [width, height] {
            return;
        }
        let pattern = digest.plane().turned(quarters);
        let mut all = Correlator::new(fast_length(width), fast_length(height));
        all.both_ways(self.noise, &pattern, |surface, over| {
            let turn_deg = 90 * u16::from(quarters + if over { 2 } else { 0 });
            best.take(surface, |peak| Found { pce: peak.pce, shift_px: peak.shift, turn_deg, scale: 1.0, places: 0 });
            best.pce >= MATCH_PCE
        });
    }

    /// The pattern at the photo's size, and scaled a little about the picture's middle: each block's correlation is moved by
    /// how far scaling moves the block, and all are added.
    fn scaled(&mut self, digest: &Digest, quarters: u8, best: &mut Found) {
        let pattern = digest.plane().turned(quarters);
        let size = pattern.size();
        let middle = size.map(|n| 0.5 * n as f64);
        let blocks: Vec<([f64; 2], Surface)> = self
            .near
            .blocks(size)
            .into_iter()
            .map(|block| {
                let centre = |i: usize| 0.5 * (block[i] + (block[i] + BLOCK).min(size[i])) as f64;
                ([0, 1].map(|i| centre(i) - middle[i]), self.near.one(self.noise, &pattern, block))
            })
            .collect();
        // From one scale to the next the picture's corner moves by a pixel.
        let step = 1.0 / middle[0].hypot(middle[1]);
        let most = (MOST_SCALE / step).floor() as i32;
        let scales = (-most..=most).filter(|n| *n != 0).map(|n| f64::from(n) * step).collect();
        for scales in [vec![0.0], scales] {
            for (surface, scale) in at_scales(&blocks, &scales, size).iter().zip(&scales) {
                let (turn_deg, scale) = (90 * u16::from(quarters), 1.0 + scale);
                best.take(surface, |peak| Found { pce: peak.pce, shift_px: peak.shift, turn_deg, scale, places: 0 });
            }
            if best.pce >= MATCH_PCE {
                return;
            }
        }
    }
}

/// Sums of blocks, each a vector from the middle and its correlation, for a pattern scaled by so much more than one.
fn at_scales(blocks: &[([f64; 2], Surface)], scales: &[f64], size: [usize; 2]) -> Vec<Surface> {
    let none = || Surface { width: BLOCK, height: BLOCK, values: vec![0.0; BLOCK * BLOCK] };
    let mut sums: Vec<Surface> = scales.iter().map(|_| none()).collect();
    // Some rows of all sums at a time: what they need of the blocks stays in the processor's cache.
    for first in (0..BLOCK).step_by(BAND) {
        for (sum, scale) in sums.iter_mut().zip(scales) {
            for (place, surface) in blocks {
                let moved = place.map(|p| (p * scale).round() as i32);
                sum.add_moved(surface, moved, first..(first + BAND).min(BLOCK));
            }
        }
    }
    sums.iter_mut().for_each(|sum| sum.even_out(size, size));
    sums
}

impl Found {
    /// Keeps the better one, and counts the places.
    fn take(&mut self, surface: &Surface, told: impl Fn(Peak) -> Found) {
        let places = self.places + surface.values.len() as u64;
        let found = told(surface.peak());
        *self = Found { places, ..if found.pce > self.pce { found } else { *self } };
    }
}

impl Surface {
    /// Adds to some rows another one whose peak is expected so far right and down.
    fn add_moved(&mut self, other: &Surface, shift: [i32; 2], rows: Range<usize>) {
        let (width, height) = (self.width, self.height);
        let [du, dv] = [shift[0].rem_euclid(width as i32) as usize, shift[1].rem_euclid(height as i32) as usize];
        for v in rows {
            let from = &other.values[(v + dv) % height * width..][..width];
            let to = &mut self.values[v * width..][..width];
            let (first, rest) = to.split_at_mut(width - du);
            first.iter_mut().zip(&from[du..]).for_each(|(a, b)| *a += b);
            rest.iter_mut().zip(&from[..du]).for_each(|(a, b)| *a += b);
        }
    }
}

/// Whether two patterns are of one sensor, or share what is no sensor's own.
pub(super) fn alike(a: &Digest, b: &Digest) -> bool {
    a.size() == b.size() && Correlator::new(BLOCK, BLOCK).whole(a, b).peak().pce >= MATCH_PCE
}
