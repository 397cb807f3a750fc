//! What the residuals of a fitted marker say: how far the stated covariance can be trusted, and
//! which corners are covered.

use std::collections::BTreeMap;

use nalgebra::{SMatrix, SVector};

use super::fit::{REJECT, Reduced, Row, derivative, residual, weight};
use super::model::{Common, LOCAL, Model};

/// Side of the blocks within which residuals may be correlated, px, or cells where these are larger.
const BLOCK_PX: f64 = 4.0;
/// A corner is looked at this far around, cells.
const CORNER_REACH: f64 = 1.3;
/// Share of its pixels that must disagree for it to count as covered.
const COVERED: f64 = 0.3;
/// Least difference from the model that may be a cover, share of the contrast.
const COVER_CONTRAST: f64 = 0.25;

/// How much larger the corners' covariance is than least squares says: residuals are summed up
/// by blocks, so that what neighbours have in common counts in full (the "sandwich" of
/// H. White, Econometrica 48, 1980, with blocks in place of single observations).
pub(super) fn inflation(model: &Model, reduced: &Reduced) -> f64 {
    let corners_from_own = model.corners_by_h() * reduced.inverse.fixed_view::<8, LOCAL>(0, 0);
    let stated = (corners_from_own.fixed_view::<8, 8>(0, 0) * model.corners_by_h().transpose()).trace();
    let block = BLOCK_PX.max(model.side() / 8.0);
    // In the order of the keys, so that the sum is the same every time.
    let mut sums: BTreeMap<(i32, i32), SVector<f64, LOCAL>> = BTreeMap::new();
    for (pixel, row) in model.pixels.iter().zip(&reduced.rows) {
        let key = ((pixel.u / block) as i32, (pixel.v / block) as i32);
        *sums.entry(key).or_default() += score(row, reduced.noise);
    }
    let found: f64 = sums.values().map(|s| (corners_from_own * s).norm_squared()).sum();
    found / stated
}

/// A pixel's part of the weighted right-hand side.
fn score(row: &Row, noise: f64) -> SVector<f64, LOCAL> {
    let r = residual(row);
    let scaled = f64::from(r * weight(r / noise as f32)) / (noise * noise);
    SVector::from_fn(|k, _| scaled * f64::from(derivative(row, k)))
}

/// Which corners are not covered.
pub(super) fn corners_seen(model: &Model, common: &Common, reduced: &Reduced) -> [bool; 4] {
    let limit = (f64::from(REJECT) * reduced.noise).max(COVER_CONTRAST * model.light[3]) as f32;
    let Some(prepared) = model.prepare() else { return [false; 4] };
    let (mut all, mut wrong) = ([0u32; 4], [0u32; 4]);
    for (pixel, row) in model.pixels.iter().zip(&reduced.rows) {
        let (x, y) = model.cell_of(&prepared, common, pixel);
        for (k, (a, b)) in super::homography::CORNERS.iter().enumerate() {
            if (x - a).abs() < CORNER_REACH && (y - b).abs() < CORNER_REACH {
                all[k] += 1;
                wrong[k] += u32::from(residual(row).abs() > limit);
            }
        }
    }
    std::array::from_fn(|k| f64::from(wrong[k]) < COVERED * f64::from(all[k].max(1)))
}

/// Covariance of the corners from the fit, its inflation apart.
pub(super) fn corner_covariance(model: &Model, reduced: &Reduced) -> SMatrix<f64, 8, 8> {
    let by_h = model.corners_by_h();
    by_h * reduced.inverse.fixed_view::<8, 8>(0, 0) * by_h.transpose()
}
