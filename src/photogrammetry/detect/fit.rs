//! All markers of a photo fitted at once: least squares over the pixels of the whole printed
//! pattern, in linear light, with blur and tone curve estimated.
//!
//! Each marker has its own homography, light and blur; tone curve and lens bend are common.
//! The normal equations have arrow shape and are reduced marker by marker (Schur complement).

use nalgebra::{SMatrix, SVector};

use super::model::{ALL, LOCAL, Model};
use super::normal::{Normal, OFFSET, Reduced, Sums, reduce};
use super::patches::{Patches, Products, spread};
use super::profile::{Profile, SHAPE};
use super::residuals::Residuals;
use super::robust::{REJECT, noise_of, weight};
use super::rows::{COLUMNS, Rows, WIDE, with_rows};
use super::shared::{Common, LENS, SHARED, SHARPENING};
use super::squares::squares;
use super::warp::{Told, told};
use crate::cores;

/// How strongly lenses may bend, relative displacement at the photo's corner by r^2 and r^4 (1 sigma).
const LENS_SPREAD: f64 = 0.12;
/// How strongly photos are sharpened (1 sigma).
const SHARPENING_SPREAD: f64 = 0.5;
/// Least way of a corner, px, that is worth a round.
const STILL_PX: f64 = 0.03;

/// Weighted normal equations over a marker's pixels, whose rows they leave behind.
fn accumulate(model: &Model, common: &Common, rows: &mut Rows, columns: &[usize], round: Round) -> Option<Normal> {
    rows.evaluate(model, common)?;
    if round == Round::Warp {
        rows.displace(model);
        let columns: Vec<usize> = columns.iter().copied().chain(COLUMNS..WIDE).collect();
        Some(summed_up::<WIDE>(model, rows, &columns, round))
    } else {
        Some(summed_up::<COLUMNS>(model, rows, columns, round))
    }
}

/// The same of evaluated rows, of which `N` columns are filled.
fn summed_up<const N: usize>(model: &Model, rows: &mut Rows, columns: &[usize], round: Round) -> Normal {
    let mut noise = noise_of(model, rows.residuals());
    let gain = (round == Round::Gain).then(|| spread(model, rows, noise));
    let mut less: Option<Products<N>> = None;
    if let Some(gain) = &model.gain {
        let mut patches = Patches::new(model, rows, gain.spread);
        noise = patches.settle(rows, noise);
        less = Some(patches.eliminate(rows, noise));
    }
    let products = squares::<N>(rows, columns, |residual| weight(residual / noise) / (noise * noise));
    let unexplained = rows.residuals().filter(|r| r.abs() > REJECT * noise).count();
    let upper = |i: usize, j: usize| products[(i.min(j), i.max(j))] - less.as_ref().map_or(0.0, |taken| taken[(i, j)]);
    let sums = || Sums {
        own: SMatrix::from_fn(|i, j| upper(COLUMNS + i, COLUMNS + j)),
        mixed: SMatrix::from_fn(|i, j| upper(COLUMNS + i, summed(j))),
        right: SVector::from_fn(|i, _| products[(ALL, COLUMNS + i)]),
    };
    Normal {
        matrix: SMatrix::from_fn(|i, j| upper(summed(i), summed(j))),
        right: SVector::from_fn(|i, _| products[(summed(i), ALL)]),
        noise: f64::from(noise),
        misfit: unexplained as f64 / model.pixels.len() as f64,
        gain,
        sums: (round == Round::Warp).then(|| Box::new(sums())),
    }
}

/// The columns of all parameters and of the residuals. The first of the profile's is that of the marker's own
/// offset once more: its products are not summed twice.
const ALL_COLUMNS: [usize; COLUMNS - 1] = {
    let mut columns = [0; COLUMNS - 1];
    let mut i = 0;
    while i < COLUMNS - 1 {
        columns[i] = if i < LOCAL { i } else { i + 1 };
        i += 1;
    }
    columns
};

/// The column that stands for a parameter's.
fn summed(parameter: usize) -> usize {
    if parameter == LOCAL { OFFSET } else { parameter }
}

/// Those of a marker's own parameters and of the residuals.
const OWN_COLUMNS: [usize; LOCAL + 1] = {
    let mut columns = [ALL; LOCAL + 1];
    let mut i = 0;
    while i < LOCAL {
        columns[i] = i;
        i += 1;
    }
    columns
};

/// Improves a marker with the common parameters kept, until its corners hardly move.
pub(super) fn fit_alone(slot: &mut Option<Model>, common: &Common, rounds: usize, rows: &mut Rows) {
    for _ in 0..rounds {
        let Some(model) = slot else { break };
        if model.moved < STILL_PX {
            break;
        }
        let done = accumulate(model, common, rows, &OWN_COLUMNS, Round::Usual)
            .and_then(|normal| reduce(model, &normal))
            .map(|r| r.step(model, &SVector::zeros()));
        if done.is_none() {
            *slot = None;
        }
    }
}

/// What the last step of a photo knew.
pub(super) struct Step {
    /// Covariance of the common parameters.
    pub(super) shared: SMatrix<f64, SHARED, SHARED>,
    pub(super) markers: Vec<Option<Reduced>>,
    /// What the residuals of each marker said.
    pub(super) evidence: Vec<Option<Residuals>>,
    /// How each marker's gain seems to spread from patch to patch, and how many patches say so.
    pub(super) gains: Vec<Option<(f32, usize)>>,
    /// How much each marker's print seems to be warped.
    pub(super) warps: Vec<Option<Told>>,
}

/// How badly a marker fits: noise as a share of the contrast, and the share of pixels not explained.
pub(super) fn misfit(model: Option<&Model>, common: &Common, rows: &mut Rows) -> Option<(f64, f64)> {
    let model = model?;
    rows.evaluate(model, common)?;
    let noise = noise_of(model, rows.residuals());
    let unexplained = rows.residuals().filter(|r| r.abs() > REJECT * noise).count();
    Some((f64::from(noise) / model.light[3], unexplained as f64 / model.pixels.len() as f64))
}

/// What a round of all markers is to tell beyond their parameters.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Round {
    Usual,
    /// Whether light was changed from place to place.
    Gain,
    /// Whether prints are warped; nothing is moved.
    Warp,
    /// What the residuals say.
    Last,
}

/// What one marker contributes to a step.
struct Part {
    normal: Normal,
    reduced: Reduced,
    residuals: Option<Residuals>,
    warp: Option<Told>,
}

impl Part {
    fn new(model: &Model, common: &Common, rows: &mut Rows, round: Round) -> Option<Self> {
        let mut normal = accumulate(model, common, rows, &ALL_COLUMNS, round)?;
        let reduced = reduce(model, &normal)?;
        let residuals = (round == Round::Last).then(|| Residuals::new(model, &reduced, rows));
        let warp = normal.sums.take().and_then(|sums| told(model, &common.lens, &sums, &reduced, rows));
        Some(Part { normal, reduced, residuals, warp })
    }
}

/// One step of all markers together with the common parameters.
pub(super) fn fit_together(models: &mut [Option<Model>], common: &mut Common, round: Round) -> Step {
    let mut matrix = SMatrix::<f64, SHARED, SHARED>::zeros();
    let mut right = SVector::<f64, SHARED>::zeros();
    add_prior(common, &mut matrix, &mut right);
    let now = &*common;
    let parts = cores::map_mut(models, |_, slot| {
        let part = slot.as_ref().and_then(|model| with_rows(|rows| Part::new(model, now, rows, round)));
        if part.is_none() {
            *slot = None;
        }
        part
    });
    let (mut reduced, mut evidence, mut gains, mut warps) = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
    for part in parts {
        let Some(Part { normal, reduced: r, residuals, warp }) = part else {
            reduced.push(None);
            evidence.push(None);
            gains.push(None);
            warps.push(None);
            continue;
        };
        let across = r.mixed.transpose() * r.inverse;
        matrix += normal.matrix.fixed_view::<SHARED, SHARED>(LOCAL, LOCAL) - across * r.mixed;
        right += normal.right.fixed_rows::<SHARED>(LOCAL) - across * r.right;
        warps.push(warp);
        gains.push(normal.gain);
        evidence.push(residuals);
        reduced.push(Some(r));
    }
    let covariance = matrix.try_inverse().unwrap_or_default();
    if round != Round::Warp {
        go(models, common, &reduced, &(covariance * right));
    }
    Step { shared: covariance, markers: reduced, evidence, gains, warps }
}

/// Moves all parameters as the common ones' step has it.
fn go(models: &mut [Option<Model>], common: &mut Common, reduced: &[Option<Reduced>], step: &SVector<f64, SHARED>) {
    for (slot, r) in models.iter_mut().zip(reduced) {
        if let (Some(model), Some(r)) = (slot, r) {
            r.step(model, step);
        }
    }
    for k in 0..SHAPE {
        common.profile.0[k] += step[k].clamp(-0.2, 0.2);
    }
    for k in 0..LENS {
        common.lens[k] += step[SHAPE + k];
    }
    common.sharpening += step[SHARPENING].clamp(-0.5, 0.5);
}

fn add_prior(common: &Common, matrix: &mut SMatrix<f64, SHARED, SHARED>, right: &mut SVector<f64, SHARED>) {
    for k in 0..SHAPE {
        let weight = Profile::SPREAD.powi(-2);
        matrix[(k, k)] += weight;
        right[k] += weight * (Profile::TYPICAL.0[k] - common.profile.0[k]);
    }
    for k in 0..LENS {
        matrix[(SHAPE + k, SHAPE + k)] += LENS_SPREAD.powi(-2);
        right[SHAPE + k] -= common.lens[k] * LENS_SPREAD.powi(-2);
    }
    matrix[(SHARPENING, SHARPENING)] += SHARPENING_SPREAD.powi(-2);
    right[SHARPENING] -= common.sharpening * SHARPENING_SPREAD.powi(-2);
}
