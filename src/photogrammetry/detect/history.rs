//! Whether a marker's pixels were compressed before together with the rest of the picture.
//!
//! A picture that was compressed with steps `p` and saved again with finer steps `q` keeps coefficients that lie near
//! multiples of `p`: the histogram of their multiples of `q` swings with the frequency `q / p` (Popescu and Farid 2004,
//! "Statistical tools for digital forensics", Information Hiding; region by region: Lin, He, Tang and Tang 2009, Pattern
//! Recognition 42, 2492-2501). What was put in between, turned, scaled or moved, does not lie on that lattice.

use std::f64::consts::TAU;

use nalgebra::Vector2;

use crate::photo::{Luma, Steps};

/// Coefficients that are looked at: `[vertical, horizontal]` frequency, the first of T.81's zigzag without the mean.
const PLACES: [[usize; 2]; 20] = [
    [0, 1],
    [1, 0],
    [2, 0],
    [1, 1],
    [0, 2],
    [0, 3],
    [1, 2],
    [2, 1],
    [3, 0],
    [4, 0],
    [3, 1],
    [2, 2],
    [1, 3],
    [0, 4],
    [0, 5],
    [1, 4],
    [2, 3],
    [3, 2],
    [4, 1],
    [5, 0],
];
/// Largest frequency of these.
const WIDE: usize = 6;
/// Multiples of a step that are counted, and the first whose neighbours are of the same kind: 0 is its own mirror.
const MOST: usize = 25;
const FIRST: usize = 2;
/// Fewer coefficients of a multiple and its neighbours, on average, say nothing of it. One alone may be empty: between the
/// steps of a coarse earlier compression nothing is left.
const LEAST: u32 = 5;
/// Frequencies at which a swing shows: below, the histogram's own form looks like one; above, next to nothing is left.
const FREQUENCIES: [f64; 2] = [0.2, 0.8];
/// A swing of so many standard deviations, in so many coefficients, is the trace of an earlier compression.
const SWINGS: f64 = 7.0;
const LEAST_COEFFICIENTS: usize = 2;

/// How often the coefficients of some blocks are which multiple of their steps.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Coefficients {
    counts: Box<[[u32; MOST]; PLACES.len()]>,
    steps: [u16; PLACES.len()],
}

impl Coefficients {
    /// Those of the blocks of 8 x 8 pixels that lie within the upright rectangle about a marker's corners. `steps` are the
    /// file's own; whole numbers, where the file is no JPEG: pixels are.
    pub fn of(photo: &Luma, steps: Option<&Steps>, corners: &[Vector2<f64>; 4]) -> Self {
        let steps = PLACES.map(|[v, u]| steps.map_or(1, |s| s[8 * v + u]));
        let mut own = Coefficients { counts: Box::new([[0; MOST]; PLACES.len()]), steps };
        let blocks = |axis: usize, side: usize| {
            let places = corners.map(|c| c[axis].clamp(0.0, side as f64));
            let low = places.into_iter().fold(f64::MAX, f64::min);
            let high = places.into_iter().fold(0.0, f64::max);
            (low / 8.0).ceil() as usize..((high + 1.0) / 8.0).floor().min((side / 8) as f64) as usize
        };
        let waves = waves();
        for row in blocks(1, photo.height()) {
            for column in blocks(0, photo.width()) {
                own.count(photo, [8 * column, 8 * row], &waves);
            }
        }
        own
    }

    fn count(&mut self, photo: &Luma, [left, top]: [usize; 2], waves: &[[f32; 8]; WIDE]) {
        let mut rows = [[0_f32; WIDE]; 8];
        for (v, row) in rows.iter_mut().enumerate() {
            let pixels = &photo.row(top + v)[left..left + 8];
            for (sum, wave) in row.iter_mut().zip(waves) {
                *sum = pixels.iter().zip(wave).map(|(p, w)| f32::from(*p) * w).sum();
            }
        }
        for ((counts, step), [v, u]) in self.counts.iter_mut().zip(self.steps).zip(PLACES) {
            let coefficient: f32 = rows.iter().zip(&waves[v]).map(|(row, w)| row[u] * w).sum();
            let multiple = (coefficient / f32::from(step)).abs().round() as usize;
            if let Some(count) = counts.get_mut(multiple) {
                *count += 1;
            }
        }
    }

    /// Those of both together.
    #[must_use]
    pub fn with(mut self, more: &Coefficients) -> Self {
        for (all, more) in self.counts.iter_mut().zip(more.counts.iter()) {
            all.iter_mut().zip(more).for_each(|(a, b)| *a += b);
        }
        self
    }

    /// The earlier compression of these blocks; `None` where nothing tells of one.
    pub fn earlier(&self) -> Option<Earlier> {
        let swings = |place: usize| {
            let step = f64::from(self.steps[place]);
            let [low, high] = FREQUENCIES;
            let candidates = (step / high).ceil() as u32..=(step / low).floor() as u32;
            let each = candidates.filter_map(|earlier| {
                let frequency = step / f64::from(earlier);
                Some((frequency, swing(&self.counts[place], frequency)?))
            });
            let (frequency, swing) = each.max_by(|(_, a), (_, b)| a.in_u().total_cmp(&b.in_u()))?;
            (swing.in_u() > SWINGS).then_some((place, frequency, swing))
        };
        let found: Vec<_> = (0..PLACES.len()).filter_map(swings).collect();
        (found.len() >= LEAST_COEFFICIENTS).then_some(Earlier { found })
    }
}

/// The trace of an earlier compression: the swinging coefficients, by place and frequency.
#[derive(Debug, Clone, PartialEq)]
pub struct Earlier {
    found: Vec<(usize, f64, Swing)>,
}

/// How much of an earlier compression some blocks show: 1 all of it, 0 nothing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Share {
    /// The share.
    pub value: f64,
    /// 1 sigma.
    pub u: f64,
}

impl Earlier {
    /// How much of it other blocks show, weighted by how well each coefficient tells; `None` where they are too few.
    pub fn share_of(&self, blocks: &Coefficients) -> Option<Share> {
        let (mut sum, mut weights, mut variance) = (0.0, 0.0, 0.0);
        for (place, frequency, all) in &self.found {
            let Some(own) = swing(&blocks.counts[*place], *frequency) else { continue };
            let weight = (all.size / own.u).powi(2);
            sum += weight * own.size / all.size;
            weights += weight;
            variance += (weight * all.u / all.size).powi(2);
        }
        (weights > 0.0)
            .then(|| Share { value: sum / weights, u: (1.0 / weights + variance / (weights * weights)).sqrt() })
    }
}

/// The swing of a histogram.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Swing {
    size: f64,
    u: f64,
}

impl Swing {
    fn in_u(self) -> f64 {
        self.size / self.u
    }
}

/// How much a histogram's logarithm swings with a frequency about what its neighbours say: least squares, weights by the
/// counts' Poisson variance. A smooth histogram has none.
fn swing(counts: &[u32; MOST], frequency: f64) -> Option<Swing> {
    let log = |k: usize| (f64::from(counts[k]) + 0.5).ln();
    let variance = |k: usize| 1.0 / (f64::from(counts[k]) + 0.5);
    let swings = 1.0 - (TAU * frequency).cos();
    let told: Vec<[f64; 3]> = (FIRST..MOST - 1)
        .filter(|k| counts[k - 1..=k + 1].iter().sum::<u32>() >= 3 * LEAST)
        .map(|k| {
            let weight = 1.0 / (variance(k) + 0.25 * (variance(k - 1) + variance(k + 1)));
            let apart = log(k) - 0.5 * (log(k - 1) + log(k + 1));
            [weight, (TAU * frequency * k as f64).cos() * swings, apart]
        })
        .collect();
    if told.len() < 4 {
        return None;
    }
    let total: f64 = told.iter().map(|[w, ..]| w).sum();
    let mean = told.iter().map(|[w, c, _]| w * c).sum::<f64>() / total;
    let norm: f64 = told.iter().map(|[w, c, _]| w * (c - mean).powi(2)).sum();
    let product: f64 = told.iter().map(|[w, c, apart]| w * (c - mean) * apart).sum();
    (norm > 0.0).then(|| Swing { size: product / norm, u: norm.sqrt().recip() })
}

/// Cosines of the transform (T.81, A.3.3), each frequency's of length one.
fn waves() -> [[f32; 8]; WIDE] {
    let one = |frequency: usize, x: usize| {
        let norm = if frequency == 0 { 0.125_f64.sqrt() } else { 0.5 };
        (norm * (TAU * (2 * x + 1) as f64 * frequency as f64 / 32.0).cos()) as f32
    };
    std::array::from_fn(|frequency| std::array::from_fn(|x| one(frequency, x)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::photo::{Photo, decode};

    const SIDE: usize = 640;

    /// Noise of a seed, alike everywhere: its coefficients have one smooth histogram.
    fn texture(seed: u64) -> Vec<u8> {
        let grey = |i: usize| {
            let mut h = (i as u64 + 1).wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ seed.wrapping_mul(0xbf58_476d_1ce4_e5b9);
            h = (h ^ (h >> 31)).wrapping_mul(0x94d0_49bb_1331_11eb);
            let parts = [h >> 20, h >> 35, h >> 50].map(|part| (part % 31) as f64 - 15.0);
            (128.0 + parts.iter().sum::<f64>()) as u8
        };
        (0..SIDE * SIDE).map(grey).collect()
    }

    fn saved(pixels: &[u8], quality: u8) -> Photo {
        let mut bytes = Vec::new();
        jpeg_encoder::Encoder::new(&mut bytes, quality)
            .encode(pixels, SIDE as u16, SIDE as u16, jpeg_encoder::ColorType::Luma)
            .unwrap();
        decode(&bytes, "a.jpg").unwrap()
    }

    /// The left or the right half's blocks.
    fn half(photo: &Photo, right: bool) -> Coefficients {
        let (from, to) = if right { (320.0, 639.0) } else { (0.0, 319.0) };
        let corners = [[from, 0.0], [to, 0.0], [to, 639.0], [from, 639.0]].map(|[x, y]| Vector2::new(x, y));
        Coefficients::of(&photo.luma, photo.traces.steps.as_ref(), &corners)
    }

    #[test]
    fn what_was_put_in_after_a_compression_does_not_show_it() {
        let once = saved(&texture(1), 85);
        assert_eq!((half(&once, false).earlier(), half(&once, true).earlier()), (None, None));
        // Saved again, whole: both halves show it alike.
        let again = saved(once.luma.pixels(), 97);
        let earlier = half(&again, false).earlier().unwrap();
        let share = earlier.share_of(&half(&again, true)).unwrap();
        assert!((share.value - 1.0).abs() < 4.0 * share.u + 0.1 && share.u < 0.1, "{share:?}");
        // The right half exchanged in between.
        let (mut mended, other) = (once.luma.pixels().to_vec(), texture(2));
        for (row, new) in mended.chunks_exact_mut(SIDE).zip(other.chunks_exact(SIDE)) {
            row[320..].copy_from_slice(&new[320..]);
        }
        let mended = saved(&mended, 97);
        let share = half(&mended, false).earlier().unwrap().share_of(&half(&mended, true)).unwrap();
        assert!(share.value.abs() < 4.0 * share.u + 0.05, "{share:?}");
        // Read from a JPEG into a file without one: whole numbers are steps as well.
        let whole = [[0.0, 0.0], [639.0, 0.0], [639.0, 639.0], [0.0, 639.0]].map(|[x, y]| Vector2::new(x, y));
        assert!(Coefficients::of(&saved(&texture(1), 90).luma, None, &whole).earlier().is_some());
        // Beside the picture there is nothing.
        let beside = whole.map(|c| c + Vector2::new(900.0, 0.0));
        assert_eq!(Coefficients::of(&once.luma, None, &beside).earlier(), None);
    }
}
