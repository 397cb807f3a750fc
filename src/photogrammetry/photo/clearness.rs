//! Whether a picture is dark or blurred, told without any marker in it.
//!
//! An edge of a sharp picture rises within a few pixels; a blurred one needs
//! many. So: of a rise over a long way, how much lies in its steepest short
//! part. Soft shadows and plain walls have no edges to speak of; then it is
//! not known, which is not blurred.

use super::Luma;
use crate::num::median;

/// Half the pixels each way: less noise, a quarter of the work.
const HALF: usize = 2;
/// A rise is looked for over this many halved pixels.
const LONG: usize = 16;
/// Its steepest part is looked for over this many.
const SHORT: usize = 2;
/// A rise of less than this is no edge, levels of 255.
const RISE: f64 = 40.0;
/// Every so many lines one is looked at.
const STRIDE: usize = 4;
/// The picture in so many parts each way.
const PARTS: usize = 8;
/// Edges in fewer of them may all be soft by nature: a shadow, something near.
const LEAST_PARTS: usize = 20;
/// In one part so many edges count.
const LEAST_EDGES: usize = 8;
/// Less of a rise than this in its steepest part is blurred: a Gaussian blur of 3 px, a path of 12 px. Edges along the
/// path stay sharp, so it is their middle one that tells. Photos of bays, sharp: .87 and more; blurred by 4 px: .38.
const BLURRED: f64 = 0.5;
/// Nearly nothing is brighter than this in a dark picture.
const DARK: u8 = 48;

/// How clear a picture is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Clearness {
    /// Level that a hundredth of the pixels exceed.
    pub brightest: u8,
    /// Share of an edge's rise that lies within 4 px, median of all edges, across the worse of
    /// both directions; `None` where the picture has too few edges in either.
    pub steepness: Option<f64>,
}

impl Clearness {
    /// Looks at a picture.
    pub fn of(luma: &Luma) -> Self {
        let (across, down) = halved(luma);
        let both = [steepness(&across), steepness(&down)];
        // Of a picture with edges in one direction only the other says nothing.
        let steepness = both.into_iter().flatten().reduce(f64::min);
        Clearness { brightest: brightest(luma), steepness }
    }

    /// Too dark for markers to stand out.
    pub fn is_dark(&self) -> bool {
        self.brightest < DARK
    }

    /// Most of its edges are soft.
    pub fn is_blurred(&self) -> bool {
        self.steepness.is_some_and(|s| s < BLURRED)
    }

    /// It has edges, and most are sharp.
    pub fn is_sharp(&self) -> bool {
        self.steepness.is_some_and(|s| s >= BLURRED)
    }
}

fn brightest(luma: &Luma) -> u8 {
    let mut counts = [0usize; 256];
    for v in (0..luma.height()).step_by(STRIDE) {
        for p in luma.row(v) {
            counts[usize::from(*p)] += 1;
        }
    }
    let mut left = counts.iter().sum::<usize>() / 100;
    for (level, count) in counts.iter().enumerate().rev() {
        if *count > left {
            return level as u8;
        }
        left -= count;
    }
    0
}

/// Rows or columns of grey values.
type Lines = Vec<Vec<f32>>;

/// Every few rows and columns of the picture at half its size.
fn halved(luma: &Luma) -> (Lines, Lines) {
    let (width, height) = (luma.width() / HALF, luma.height() / HALF);
    let at = |u: usize, v: usize| -> f32 {
        let (row, next) = (luma.row(HALF * v), luma.row(HALF * v + 1));
        let sum: u16 =
            row[HALF * u..HALF * u + 2].iter().chain(&next[HALF * u..HALF * u + 2]).map(|p| u16::from(*p)).sum();
        f32::from(sum) / 4.0
    };
    let rows = (0..height).step_by(STRIDE).map(|v| (0..width).map(|u| at(u, v)).collect());
    let columns = (0..width).step_by(STRIDE).map(|u| (0..height).map(|v| at(u, v)).collect());
    (rows.collect(), columns.collect())
}

/// Of the edges across some lines; `None` where there are too few, or in too few places.
fn steepness(lines: &[Vec<f32>]) -> Option<f64> {
    let mut shares: Vec<f64> = Vec::new();
    let mut parts = [[0usize; PARTS]; PARTS];
    for (i, line) in lines.iter().enumerate() {
        for start in (0..line.len().saturating_sub(LONG)).step_by(LONG / 2) {
            let window = &line[start..=start + LONG];
            let rise = f64::from((window[LONG] - window[0]).abs());
            if rise < RISE {
                continue;
            }
            let steepest = (0..=LONG - SHORT).map(|k| (window[k + SHORT] - window[k]).abs()).fold(0.0, f32::max);
            shares.push(f64::from(steepest) / rise);
            parts[i * PARTS / lines.len()][start * PARTS / line.len()] += 1;
        }
    }
    let with_edges = parts.iter().flatten().filter(|n| **n >= LEAST_EDGES).count();
    if with_edges < LEAST_PARTS {
        return None;
    }
    median(shares)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A picture by a function of place, with noise of some levels.
    fn picture(of: impl Fn(f64, f64) -> f64, noise: f64) -> Luma {
        let (width, height) = (640, 480);
        let mut state = 12345u32;
        let mut next = || {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            f64::from(state >> 8) / f64::from(1 << 24) - 0.5
        };
        let grey = |i: usize| of((i % width) as f64, (i / width) as f64);
        let noisy = (0..width * height).map(|i| (grey(i) + noise * 3.5 * next()).round().clamp(0.0, 255.0) as u8);
        Luma::new(width, height, noisy.collect()).unwrap()
    }

    /// Stripes both ways, their edges blurred by a Gaussian of some pixels (its error function as a logistic one).
    fn checks(blur_u: f64, blur_v: f64) -> impl Fn(f64, f64) -> f64 {
        let edge = |x: f64, blur: f64| {
            let x = x.rem_euclid(160.0) - 80.0;
            // A square wave of period 160: rises at 0, falls at 80.
            let rise = |x: f64| 1.0 / (1.0 + (-1.702 * x / blur).exp());
            rise(x + 80.0) + rise(x) - rise(x + 40.0) - rise(x - 40.0)
        };
        move |u, v| 110.0 + 60.0 * edge(u, blur_u) + 60.0 * edge(v, blur_v)
    }

    #[test]
    fn sharp_blurred_shaken_and_dark_pictures_are_told_apart() {
        for noise in [0.0, 3.0] {
            assert!(Clearness::of(&picture(checks(0.7, 0.7), noise)).is_sharp());
            assert!(Clearness::of(&picture(checks(1.5, 1.5), noise)).is_sharp());
            assert!(Clearness::of(&picture(checks(7.0, 7.0), noise)).is_blurred());
            assert!(Clearness::of(&picture(checks(0.7, 9.0), noise)).is_blurred(), "shaken one way");
            assert!(Clearness::of(&picture(|u, v| 12.0 + 0.08 * checks(0.7, 0.7)(u, v), noise)).is_dark());
        }
    }

    #[test]
    fn a_plain_wall_is_not_called_blurred() {
        type Wall = fn(f64, f64) -> f64;
        let walls: [(&str, Wall); 4] = [
            ("even", |_, _| 150.0),
            ("lit from one side", |u, _| 40.0 + 0.3 * u),
            ("with a soft shadow", |u, v| 150.0 - 80.0 / (1.0 + (-(u - 0.3 * v - 200.0) / 8.0).exp())),
            ("with a sharp line", |u, _| if (300.0..312.0).contains(&u) { 40.0 } else { 170.0 }),
        ];
        for (what, wall) in walls {
            for noise in [0.0, 3.0, 6.0] {
                let found = Clearness::of(&picture(wall, noise));
                assert!(!found.is_blurred() && !found.is_dark(), "{what}, noise {noise}: {found:?}");
            }
        }
    }
}
