//! A marker's printed pattern as a blurred picture, with derivatives.

use std::sync::LazyLock;

use crate::marker::{CELLS, Dictionary};

/// Cells along a side with the white margin.
const GRID: usize = CELLS + 2;
/// Standard deviations beyond which an edge is complete.
const REACH: f64 = 3.2;

/// White (1) and black (0) cells: `[row][column]`, margin outside.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Pattern([[f64; GRID]; GRID]);

/// Blur in cell coordinates: standard deviations along x and y and their correlation.
#[derive(Debug, Clone, Copy)]
pub(super) struct CellBlur {
    pub(super) x: f64,
    pub(super) y: f64,
    pub(super) correlation: f64,
}

/// White share at a place with its derivatives along cell coordinates.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(super) struct Shade {
    pub(super) value: f64,
    pub(super) x: f64,
    pub(super) y: f64,
    pub(super) xx: f64,
    pub(super) xy: f64,
    pub(super) yy: f64,
}

impl Pattern {
    /// The upright pattern of an id.
    pub(super) fn new(dictionary: &Dictionary, id: u32) -> Self {
        let mut cells = [[1.0; GRID]; GRID];
        for row in 0..CELLS {
            for column in 0..CELLS {
                cells[row + 1][column + 1] = f64::from(u8::from(dictionary.is_white(id, column, row)));
            }
        }
        Pattern(cells)
    }

    /// Whether a place lies within a reach (cells) of an edge between black and white.
    pub(super) fn is_near_edge(&self, x: f64, y: f64, reach_x: f64, reach_y: f64) -> bool {
        let (column, row) = (cell_index(x), cell_index(y));
        let differs = |c: usize, r: usize| (self.0[r][c] - self.0[row][column]).abs() > 0.5;
        let (left, up) = (x + 1.0 - column as f64, y + 1.0 - row as f64);
        let last = GRID - 1;
        left < reach_x && column > 0 && differs(column - 1, row)
            || 1.0 - left < reach_x && column < last && differs(column + 1, row)
            || up < reach_y && row > 0 && differs(column, row - 1)
            || 1.0 - up < reach_y && row < last && differs(column, row + 1)
    }

    /// The pattern blurred by a Gaussian. Along straight edges and at corners of uncorrelated
    /// blur this is exact; the correlation enters by the tetrachoric series to second order.
    pub(super) fn shade(&self, x: f64, y: f64, blur: CellBlur) -> Shade {
        let (across, down) = (Profile::new(x, blur.x), Profile::new(y, blur.y));
        let mut shade = Shade::default();
        for j in 0..=down.lines {
            let row = &self.0[down.first + j];
            let (mut r, mut rx, mut rxx) = (0.0, 0.0, 0.0);
            for i in 0..=across.lines {
                let cell = row[across.first + i];
                r += cell * across.weight(i);
                rx += cell * across.slope(i);
                rxx += cell * across.curve(i);
            }
            shade.value += r * down.weight(j);
            shade.x += rx * down.weight(j);
            shade.xx += rxx * down.weight(j);
            shade.y += r * down.slope(j);
            shade.xy += rx * down.slope(j);
            shade.yy += r * down.curve(j);
        }
        self.correlate(&across, &down, blur, &mut shade);
        shade
    }

    /// d/d(correlation) of a bivariate normal distribution is its density: adds it at the vertices.
    fn correlate(&self, across: &Profile, down: &Profile, blur: CellBlur, shade: &mut Shade) {
        let scale = blur.x * blur.y;
        for j in 0..down.lines {
            for i in 0..across.lines {
                let at = |r: usize, c: usize| self.0[down.first + j + r][across.first + i + c];
                let jump = at(1, 1) - at(0, 1) - at(1, 0) + at(0, 0);
                if jump.abs() < 0.5 {
                    continue;
                }
                let (a, b) = (across.t[i], down.t[j]);
                let density = across.density[i] * down.density[j] * scale;
                let rho = blur.correlation;
                shade.value += jump * density * (rho + 0.5 * rho * rho * a * b);
                shade.x -= jump * density * rho * a / blur.x;
                shade.y -= jump * density * rho * b / blur.y;
            }
        }
    }
}

/// Grid index of the cell at a coordinate, the margin being 0 and `GRID - 1`.
fn cell_index(t: f64) -> usize {
    ((t + 1.0).max(0.0) as usize).min(GRID - 1)
}

/// Cell boundaries within reach of a place along one axis.
struct Profile {
    /// Grid index of the first cell that counts.
    first: usize,
    /// Number of boundaries; one more cells count.
    lines: usize,
    t: [f64; GRID],
    /// Share of the blur beyond each boundary's near side.
    above: [f64; GRID],
    density: [f64; GRID],
    steepness: [f64; GRID],
}

impl Profile {
    fn new(x: f64, sigma: f64) -> Self {
        // First boundary not before, last one not behind the reach (casts are cheaper than ceil and floor).
        let start = (x - REACH * sigma).clamp(0.0, CELLS as f64);
        let low = start as i32 + i32::from(f64::from(start as i32) < start);
        let high = (x + REACH * sigma + 1.0).clamp(0.0, CELLS as f64 + 1.0) as i32 - 1;
        let lines = if x > CELLS as f64 + REACH * sigma { 0 } else { (high - low + 1).max(0) as usize };
        let first = if lines == 0 { cell_index(x) } else { low as usize };
        let mut profile =
            Profile { first, lines, t: [0.0; GRID], above: [0.0; GRID], density: [0.0; GRID], steepness: [0.0; GRID] };
        for i in 0..lines {
            let t = (x - f64::from(low) - i as f64) / sigma;
            let (cumulated, density) = normal(t);
            profile.t[i] = t;
            profile.above[i] = cumulated;
            profile.density[i] = density / sigma;
            profile.steepness[i] = -t * density / (sigma * sigma);
        }
        profile
    }

    fn difference(&self, values: &[f64; GRID], i: usize, before: f64) -> f64 {
        let left = if i == 0 { before } else { values[i - 1] };
        let right = if i == self.lines { 0.0 } else { values[i] };
        left - right
    }

    fn weight(&self, i: usize) -> f64 {
        self.difference(&self.above, i, 1.0)
    }

    fn slope(&self, i: usize) -> f64 {
        self.difference(&self.density, i, 0.0)
    }

    fn curve(&self, i: usize) -> f64 {
        self.difference(&self.steepness, i, 0.0)
    }
}

const TABLE_STEP: f64 = 1.0 / 64.0;
const TABLE_END: f64 = 4.5;

static NORMAL: LazyLock<Vec<(f64, f64)>> = LazyLock::new(|| {
    let count = (2.0 * TABLE_END / TABLE_STEP) as usize + 1;
    let at = |i: usize| i as f64 * TABLE_STEP - TABLE_END;
    (0..count).map(|i| (0.5 * statrs::function::erf::erfc(-at(i) / std::f64::consts::SQRT_2), density(at(i)))).collect()
});

fn density(t: f64) -> f64 {
    (-0.5 * t * t).exp() / (2.0 * std::f64::consts::PI).sqrt()
}

/// Cumulated normal distribution and density, from a table with a Taylor step (error below 1e-7).
pub(super) fn normal(t: f64) -> (f64, f64) {
    if t.abs() >= TABLE_END {
        return (if t > 0.0 { 1.0 } else { 0.0 }, 0.0);
    }
    let index = ((t + TABLE_END) / TABLE_STEP + 0.5) as usize;
    let (cumulated, density) = NORMAL[index.min(NORMAL.len() - 1)];
    let t0 = index as f64 * TABLE_STEP - TABLE_END;
    let d = t - t0;
    let first = cumulated + density * (d - 0.5 * t0 * d * d);
    (first, density * (1.0 - t0 * d + 0.5 * (t0 * t0 - 1.0) * d * d))
}

const SHARES: usize = 4096;

static QUANTILES: LazyLock<Vec<f64>> = LazyLock::new(|| {
    let at = |i: usize| (i as f64 / SHARES as f64).clamp(1e-5, 1.0 - 1e-5);
    (0..=SHARES).map(|i| -std::f64::consts::SQRT_2 * statrs::function::erf::erfc_inv(2.0 * at(i))).collect()
});

/// Inverse of the cumulated normal distribution, from a table (within 0.02 from 0.0005 to 0.9995).
pub(super) fn quantile(share: f64) -> f64 {
    let t = share.clamp(0.0, 1.0) * SHARES as f64;
    let i = (t as usize).min(SHARES - 1);
    let (l, r) = (QUANTILES[i], QUANTILES[i + 1]);
    l + (r - l) * (t - i as f64)
}

#[cfg(test)]
mod tests {
    use super::*;

    const BLUR: CellBlur = CellBlur { x: 0.31, y: 0.22, correlation: 0.3 };

    #[test]
    fn table_agrees_with_statrs() {
        for i in -500..500 {
            let t = f64::from(i) * 0.0123;
            let truth = 0.5 * statrs::function::erf::erfc(-t / std::f64::consts::SQRT_2);
            assert!((normal(t).0 - truth).abs() < 4e-6, "{t}");
            assert!((normal(t).1 - density(t)).abs() < 1e-4, "{t}");
        }
    }

    /// Against a brute-force average of the printed pattern over the blur.
    #[test]
    fn value_is_the_pattern_averaged_over_the_blur() {
        let pattern = Pattern::new(Dictionary::tag36h11(), 5);
        for (x, y) in [(0.1, 3.2), (2.05, 2.9), (4.5, 4.1), (8.1, 7.9), (3.0, 6.02)] {
            let (mut sum, mut weights) = (0.0, 0.0);
            for i in -120..120 {
                for j in -120..120 {
                    let (a, b) = ((f64::from(i) + 0.5) / 30.0, (f64::from(j) + 0.5) / 30.0);
                    let rho = BLUR.correlation;
                    let weight = (-(a * a - 2.0 * rho * a * b + b * b) / (2.0 * (1.0 - rho * rho))).exp();
                    sum += weight * pattern.0[cell_index(y - b * BLUR.y)][cell_index(x - a * BLUR.x)];
                    weights += weight;
                }
            }
            let shade = pattern.shade(x, y, BLUR);
            assert!((shade.value - sum / weights).abs() < 6e-3, "{x} {y}: {} {}", shade.value, sum / weights);
        }
    }

    #[test]
    fn derivatives_agree_with_differences() {
        let pattern = Pattern::new(Dictionary::tag36h11(), 5);
        let h = 1e-3;
        let blur = CellBlur { correlation: 0.0, ..BLUR };
        for (x, y) in [(0.1, 3.2), (2.05, 2.9), (4.5, 4.1), (8.1, 7.9), (3.1, 6.02)] {
            let at = |a: f64, b: f64| pattern.shade(x + a * h, y + b * h, blur);
            let s = at(0.0, 0.0);
            assert!((s.x - (at(1.0, 0.0).value - at(-1.0, 0.0).value) / (2.0 * h)).abs() < 5e-3);
            assert!((s.y - (at(0.0, 1.0).value - at(0.0, -1.0).value) / (2.0 * h)).abs() < 5e-3);
            assert!((s.xx - (at(1.0, 0.0).x - at(-1.0, 0.0).x) / (2.0 * h)).abs() < 5e-2);
            assert!((s.xy - (at(0.0, 1.0).x - at(0.0, -1.0).x) / (2.0 * h)).abs() < 5e-2);
            assert!((s.yy - (at(0.0, 1.0).y - at(0.0, -1.0).y) / (2.0 * h)).abs() < 5e-2);
        }
    }
}
