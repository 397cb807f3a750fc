//! The white share of a blurred pattern at many pixels, and its derivatives.

#![allow(clippy::needless_range_loop, reason = "loops over the same place of many arrays, as the compiler likes them")]

use super::gaussian::{cumulated, density};
use super::lanes::{BATCH, Lane};
use super::pattern::{PAD, PADDED, Pattern};
use super::shared::LENS;

/// Where pixels lie on the marker, and how its blur looks from there.
pub(super) struct Geometry {
    /// Displacement by each lens term, px.
    pub(super) bow_u: [Lane; LENS],
    pub(super) bow_v: [Lane; LENS],
    /// Distance from the middle with the bend taken off, px.
    pub(super) q_u: Lane,
    pub(super) q_v: Lane,
    /// Pattern coordinates, -1 to 1.
    pub(super) x: Lane,
    pub(super) y: Lane,
    /// d cell coordinates / d pixel coordinates.
    pub(super) j: [Lane; 4],
    /// Blur along cell coordinates and its correlation.
    pub(super) sx: Lane,
    pub(super) sy: Lane,
    pub(super) rho: Lane,
}

/// White share at each pixel and its derivatives along cell coordinates.
pub(super) struct Shade {
    pub(super) value: Lane,
    pub(super) x: Lane,
    pub(super) y: Lane,
    pub(super) xx: Lane,
    pub(super) xy: Lane,
    pub(super) yy: Lane,
}

/// The lines between cells around a place along one axis: the blur's share beyond each, its
/// density there and that one's slope, per cell.
pub(super) struct Lines<const N: usize> {
    /// Padded index of the cell before the first line.
    pub(super) first: [u32; BATCH],
    pub(super) t: [Lane; N],
    pub(super) beyond: [Lane; N],
    pub(super) density: [Lane; N],
    slope: [Lane; N],
}

#[inline(always)]
pub(super) fn lines<const N: usize>(place: &Lane, sigma: &Lane) -> Lines<N> {
    const NONE: Lane = [0.0; BATCH];
    let mut l = Lines { first: [0; BATCH], t: [NONE; N], beyond: [NONE; N], density: [NONE; N], slope: [NONE; N] };
    for k in 0..BATCH {
        let cell = 4.0 * place[k] + 4.0;
        // The nearest line: rounded by the sum's last digit.
        const ROUND: f32 = 12_582_912.0;
        let nearest = (cell.clamp(-1.0, 9.0) + ROUND) - ROUND;
        let low = nearest - (N / 2) as f32;
        // The padded pattern's first cell lies before line -PAD.
        l.first[k] = (low + (PAD as f32 - 0.5)) as i32 as u32;
        let inverse = 1.0 / sigma[k];
        for i in 0..N {
            let t = (cell - (low + i as f32)) * inverse;
            let d = density(t);
            l.t[i][k] = t;
            l.beyond[i][k] = cumulated(t, d);
            l.density[i][k] = d * inverse;
            l.slope[i][k] = -t * d * inverse * inverse;
        }
    }
    l
}

/// The cells before and behind each of some lines, rows of columns: `M` is one more than there are lines.
#[inline(always)]
pub(super) fn cells<const M: usize>(pattern: &Pattern, across: &[u32; BATCH], down: &[u32; BATCH]) -> [[Lane; M]; M] {
    let mut around = [[[0.0; BATCH]; M]; M];
    let cells = pattern.padded();
    for k in 0..BATCH {
        let corner = (down[k] * PADDED as u32 + across[k]) as usize;
        for row in 0..M {
            for column in 0..M {
                around[row][column][k] = cells[(corner + row * PADDED + column) % cells.len()];
            }
        }
    }
    around
}

/// The white share of a pattern under its blur.
#[inline(always)]
pub(super) fn shade<const N: usize, const M: usize>(pattern: &Pattern, g: &Geometry) -> Shade {
    const NONE: Lane = [0.0; BATCH];
    let (across, down) = (lines::<N>(&g.x, &g.sx), lines::<N>(&g.y, &g.sy));
    let mut shade = Shade { value: NONE, x: NONE, y: NONE, xx: NONE, xy: NONE, yy: NONE };
    let cells = cells::<M>(pattern, &across.first, &down.first);
    // What the row of cells before had: share, its derivatives, and how cells differ along it.
    let (mut r0, mut rx0, mut rxx0, mut jumps0) = (NONE, NONE, NONE, [NONE; N]);
    for row in 0..M {
        let (mut r, mut rx, mut rxx, mut jumps) = (cells[row][0], NONE, NONE, [NONE; N]);
        for k in 0..BATCH {
            for i in 0..N {
                let jump = cells[row][i + 1][k] - cells[row][i][k];
                r[k] += jump * across.beyond[i][k];
                rx[k] += jump * across.density[i][k];
                rxx[k] += jump * across.slope[i][k];
                jumps[i][k] = jump;
            }
        }
        if row == 0 {
            (shade.value, shade.x, shade.xx) = (r, rx, rxx);
        } else {
            let line = row - 1;
            for k in 0..BATCH {
                let (beyond, density) = (down.beyond[line][k], down.density[line][k]);
                shade.value[k] += (r[k] - r0[k]) * beyond;
                shade.x[k] += (rx[k] - rx0[k]) * beyond;
                shade.xx[k] += (rxx[k] - rxx0[k]) * beyond;
                shade.y[k] += (r[k] - r0[k]) * density;
                shade.xy[k] += (rx[k] - rx0[k]) * density;
                shade.yy[k] += (r[k] - r0[k]) * down.slope[line][k];
            }
            // d/d(correlation) of a bivariate normal distribution is its density: at the cells' vertices.
            for i in 0..N {
                for k in 0..BATCH {
                    let (rho, sx, sy, density) = (g.rho[k], g.sx[k], g.sy[k], down.density[line][k]);
                    let (a, b) = (across.t[i][k], down.t[line][k]);
                    let both = (jumps[i][k] - jumps0[i][k]) * across.density[i][k] * density * (sx * sy) * rho;
                    shade.value[k] += both * correlated(rho, a, b);
                    let (a2, b2) = (a * a - 1.0, b * b - 1.0);
                    shade.x[k] -= both / sx * (a + rho * (0.5 * a2 * b + rho * (1.0 / 6.0) * a * (a2 - 2.0) * b2));
                    shade.y[k] -= both / sy * (b + rho * (0.5 * b2 * a + rho * (1.0 / 6.0) * b * (b2 - 2.0) * a2));
                }
            }
        }
        (r0, rx0, rxx0, jumps0) = (r, rx, rxx, jumps);
    }
    shade
}

/// A bivariate normal distribution less the product of its margins, in units of correlation times the margins'
/// densities: the tetrachoric series (K. Pearson, Phil. Trans. R. Soc. A 195, 1900).
#[inline(always)]
pub(super) fn correlated(rho: f32, a: f32, b: f32) -> f32 {
    1.0 + rho * (0.5 * a * b + rho * (1.0 / 6.0) * (a * a - 1.0) * (b * b - 1.0))
}
