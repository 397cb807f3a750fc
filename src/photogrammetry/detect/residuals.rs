//! What the residuals of a fitted marker say: how far the stated covariance can be trusted, and
//! which corners are covered.

use nalgebra::{SMatrix, SVector};

use super::homography::CORNERS;
use super::model::{ALL, LIGHT, LOCAL, Model};
use super::normal::Reduced;
use super::profile::SHAPE;
use super::robust::{REJECT, weight};
use super::rows::Rows;
use super::shared::{LENS, SHARED};

/// Side of the blocks within which residuals may be correlated, px, or cells where these are larger.
const BLOCK_PX: f64 = 4.0;
/// A corner is looked at this far around, cells.
const CORNER_REACH: f32 = 1.3;
/// Share of its pixels that must disagree for it to count as covered.
const COVERED: f64 = 0.3;
/// Least difference from the model that may be a cover, share of the contrast.
const COVER_CONTRAST: f64 = 0.25;

/// Columns of the rows that are the pattern coordinates, -1 to 1: the slopes of the light, after its level, 1.
const X: usize = LIGHT + 1;
const Y: usize = LIGHT + 2;

/// The residuals of one marker, summed up.
pub(super) struct Residuals {
    /// How much larger the corners' covariance is than least squares says.
    pub(super) inflation: f64,
    /// Which corners are not covered.
    pub(super) seen: [bool; 4],
}

impl Residuals {
    pub(super) fn new(model: &Model, reduced: &Reduced, rows: &Rows) -> Self {
        Residuals { inflation: inflation(model, reduced, rows), seen: corners_seen(model, reduced, rows) }
    }
}

/// Residuals are summed up by blocks, so that what neighbours have in common counts in full (the
/// "sandwich" of H. White, Econometrica 48, 1980, with blocks in place of single observations).
fn inflation(model: &Model, reduced: &Reduced, rows: &Rows) -> f64 {
    let by_h = model.corners_by_h();
    let corners_from_own = by_h * reduced.inverse.fixed_view::<8, LOCAL>(0, 0);
    let stated = (corners_from_own.fixed_view::<8, 8>(0, 0) * by_h.transpose()).trace();
    let vector = |sum: &[f32; LOCAL]| SVector::<f64, LOCAL>::from_fn(|k, _| f64::from(sum[k]));
    let sums = sums_by_block::<0>(model, reduced.noise, rows, 0);
    let found: f64 = sums.iter().map(|(own, _)| (corners_from_own * vector(own)).norm_squared()).sum();
    found / stated
}

/// Residuals times derivatives, weighted, summed up by blocks: those of the marker's own parameters, or `N` columns from one
/// on besides.
pub(super) fn sums_by_block<const N: usize>(
    model: &Model,
    noise: f64,
    rows: &Rows,
    from: usize,
) -> Vec<([f32; LOCAL], [f32; N])> {
    let block = (BLOCK_PX.max(model.side() / 8.0)) as f32;
    let (low, high) = model.extent();
    let index = |t: u16, low: u16| (f32::from(t - low) / block) as usize;
    let columns = index(high[0], low[0]) + 1;
    let mut sums = vec![([0f32; LOCAL], [0f32; N]); columns * (index(high[1], low[1]) + 1)];
    let noise = noise as f32;
    let mut pixels = model.pixels.iter();
    for (batch, count) in rows.batches() {
        for (k, pixel) in pixels.by_ref().take(count).enumerate() {
            let residual = batch[ALL][k];
            let score = residual * weight(residual / noise) / (noise * noise);
            let (own, besides) = &mut sums[index(pixel.v, low[1]) * columns + index(pixel.u, low[0])];
            let all = own.iter_mut().zip(batch).chain(besides.iter_mut().zip(&batch[from..]));
            for (s, column) in all {
                *s += score * column[k];
            }
        }
    }
    sums
}

fn corners_seen(model: &Model, reduced: &Reduced, rows: &Rows) -> [bool; 4] {
    let limit = (f64::from(REJECT) * reduced.noise).max(COVER_CONTRAST * model.light[3]) as f32;
    let (mut all, mut wrong) = ([0u32; 4], [0u32; 4]);
    let places = rows.derivatives(X).zip(rows.derivatives(Y)).zip(rows.derivatives(LIGHT));
    for (((x, y), light), residual) in places.zip(rows.residuals()) {
        // On a display's shoulder all derivatives are smaller; at the end of the scale there are none.
        if light == 0.0 {
            continue;
        }
        let (x, y) = (4.0 * x / light + 4.0, 4.0 * y / light + 4.0);
        for (k, (a, b)) in CORNERS.iter().enumerate() {
            if (x - *a as f32).abs() < CORNER_REACH && (y - *b as f32).abs() < CORNER_REACH {
                all[k] += 1;
                wrong[k] += u32::from(residual.abs() > limit);
            }
        }
    }
    std::array::from_fn(|k| f64::from(wrong[k]) < COVERED * f64::from(all[k].max(1)))
}

/// Covariance of the corners from the fit, its inflation apart; with that of the common parameters.
pub(super) fn corner_covariance(
    model: &Model,
    lens: &[f64; LENS],
    reduced: &Reduced,
    shared: &SMatrix<f64, SHARED, SHARED>,
) -> SMatrix<f64, 8, 8> {
    let (by_h, by_common) = (model.corners_by_h(), corners_by_common(model, lens, reduced));
    by_h * reduced.inverse.fixed_view::<8, 8>(0, 0) * by_h.transpose() + by_common * shared * by_common.transpose()
}

/// How the corners follow the photo's common parameters.
pub(super) fn corners_by_common(model: &Model, lens: &[f64; LENS], reduced: &Reduced) -> SMatrix<f64, 8, SHARED> {
    let mut by_common = model.corners_by_h() * reduced.by_shared().fixed_view::<8, SHARED>(0, 0);
    let by_lens = model.corners_by_lens(lens);
    for k in 0..LENS {
        let sum = by_common.column(SHAPE + k) + by_lens.column(k);
        by_common.set_column(SHAPE + k, &sum);
    }
    by_common
}
