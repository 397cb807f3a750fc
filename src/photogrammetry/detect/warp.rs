//! Prints that are not flat, or whose edges are not quite where they should be.
//!
//! Paper curls and lies in waves, a printer's feed wavers: what a marker shows is off what a homography makes of
//! it, by .05 px in photos of sheets taped to a wall, and smoothly, so that neighbouring edges agree and no block of
//! residuals averages it out. So residuals tell how large smooth displacements are, and the fit's own equations what those do to
//! corners: that is part of the corners' covariance. Displacements of degree two look much as perspective does; they
//! are taken to be as large as those of degree three and four, which tell. Corners stay those of plain
//! least squares: with the displacements as unknowns (tried) real photos agree better by 5 %, and strongly processed ones, where noise
//! reduction displaces edges likewise, worse by 5 to 25 %.

use nalgebra::{SMatrix, SVector};

use super::legendre::{MEAN_SQUARE, TERMS, Terms, is_of_degree_two};
use super::model::{LOCAL, Model};
use super::normal::{Reduced, Sums};
use super::residuals::{corners_by_common, sums_by_block};
use super::rows::{COLUMNS, Rows};
use super::shared::{LENS, SHARED};

/// The spread that is tried, share of the side; terms that are that well known tell it, share of its variance.
const TRIED: f64 = 0.003;
const KNOWN: f64 = 0.1;
/// Terms scatter by so many times the variance that single pixels would give them, at least: neighbours have something in
/// common. Blocks of residuals show how much.
const CORRELATED: f64 = 2.0;
/// Terms are weighed as if they spread by this, share of the side.
const USUAL: f64 = 0.0003;
/// What flat prints show through a colour mosaic and noise reduction, share of the side: no warp.
const SILENT: f64 = 0.0002;
/// A photo's markers count as so many terms of each where it is about how much that is warped.
const OTHERS: f64 = 10.0;

/// What one marker tells.
pub(super) struct Told {
    side: f64,
    /// Variance of its terms, shares of the side squared, times its weight, and that.
    sum: f64,
    weight: f64,
    /// What terms of one px do to the corners while the photo's common parameters are kept, and those to the corners.
    by_terms: SMatrix<f64, 8, TERMS>,
    by_common: SMatrix<f64, 8, SHARED>,
    /// What terms of one px want of the common parameters: on the right side of their normal equations.
    wanted: SMatrix<f64, SHARED, TERMS>,
}

/// How a marker is warped.
pub(super) struct Warp {
    /// How far its print is off, root mean square along either axis of the photo, px.
    pub(super) rms_px: f64,
    /// What that adds to the covariance of its corners, px^2.
    pub(super) covariance: SMatrix<f64, 8, 8>,
}

/// What a marker's terms of degree three and four say of how much it is warped; its rows are left without what they
/// explain.
pub(super) fn told(model: &Model, lens: &[f64; LENS], sums: &Sums, reduced: &Reduced, rows: &mut Rows) -> Option<Told> {
    let side = model.side();
    let across = sums.mixed.fixed_columns::<LOCAL>(0).into_owned();
    let prior = SMatrix::<f64, TERMS, TERMS>::identity() * (TRIED * side).powi(-2);
    let by_own = across * reduced.inverse;
    let inverse = (sums.own + prior - by_own * across.transpose()).cholesky()?.inverse();
    let found = inverse * (sums.right - by_own * reduced.right);
    let own = reduced.inverse * (reduced.right - across.transpose() * found);
    rows.take_off(&own, &found);
    let mut scatter = Terms::zeros();
    for sum in sums_by_block(model, reduced.noise, rows, true) {
        let own = SVector::<f64, LOCAL>::from_fn(|k, _| f64::from(sum[k]));
        let block = inverse * (Terms::from_fn(|k, _| f64::from(sum[COLUMNS + k])) - by_own * own);
        scatter += block.component_mul(&block);
    }
    let (mut sum, mut weight) = (0.0, 0.0);
    for k in (0..TERMS).filter(|k| !is_of_degree_two(*k) && inverse[(*k, *k)] < KNOWN * (TRIED * side).powi(2)) {
        let variance = scatter[k].max(CORRELATED * inverse[(k, k)]) / side.powi(2);
        let counts = (variance + USUAL.powi(2)).powi(-2);
        sum += counts * (found[k].powi(2) / side.powi(2) - variance);
        weight += counts;
    }
    Some(Told {
        side,
        sum,
        weight,
        // Least squares takes a displacement for one of its own parameters.
        by_terms: model.corners_by_h() * by_own.transpose().fixed_rows::<8>(0),
        by_common: corners_by_common(model, lens, reduced),
        wanted: (sums.mixed.fixed_columns::<SHARED>(LOCAL) - by_own * reduced.mixed).transpose(),
    })
}

/// How a photo's markers are warped: what each of them tells, and what all do; with the covariance of the photo's common
/// parameters.
pub(super) fn warps(told: &[Option<Told>], shared: &SMatrix<f64, SHARED, SHARED>) -> Vec<Option<Warp>> {
    let all = || told.iter().flatten();
    let (sum, weight): (f64, f64) = (all().map(|t| t.sum).sum(), all().map(|t| t.weight).sum());
    let photo = if weight > 0.0 { (sum / weight).max(0.0) } else { 0.0 };
    let others = OTHERS * USUAL.powi(-4);
    let variance = |t: &Told| {
        let share = (t.sum + photo * others) / (t.weight + others) - SILENT.powi(2);
        share.max(0.0) * t.side.powi(2)
    };
    // What all of them do to the common parameters.
    let common: SMatrix<f64, SHARED, SHARED> = all().map(|t| t.wanted * t.wanted.transpose() * variance(t)).sum();
    let warp = |t: &Told| {
        let own = t.wanted * t.wanted.transpose() * variance(t);
        let by_others = t.by_common * shared * (common - own) * shared * t.by_common.transpose();
        let by_own = t.by_terms + t.by_common * shared * t.wanted;
        let covariance = by_own * by_own.transpose() * variance(t) + by_others;
        Warp { rms_px: (MEAN_SQUARE * variance(t)).sqrt(), covariance }
    };
    told.iter().map(|t| t.as_ref().map(warp)).collect()
}

#[cfg(test)]
mod tests {
    use nalgebra::Vector2;
    use rand::rngs::ChaCha8Rng;
    use rand::{RngExt, SeedableRng};

    use super::super::fit::{Round, fit_together};
    use super::super::model::{Model, Pixel};
    use super::super::pattern::Pattern;
    use super::super::profile::Profile;
    use super::super::residuals::corner_covariance;
    use super::super::shared::Common;
    use super::*;
    use crate::marker::Dictionary;
    use crate::photo::Luma;

    const CORNERS: [(f64, f64); 4] = [(20.3, 21.1), (107.9, 29.2), (99.4, 108.0), (18.8, 106.5)];

    fn common() -> Common {
        Common { profile: Profile::TYPICAL, lens: [0.0; LENS], sharpening: 0.0, sharpened: true }
    }

    /// A marker of 85 px whose every pixel is what the model says with such a warp, and some noise.
    fn warped(planted: &Terms) -> Model {
        let photo = Luma::new(130, 130, vec![128; 130 * 130]).unwrap();
        let corners = CORNERS.map(|(u, v)| Vector2::new(u, v));
        let mut model = Model::new(&photo, Pattern::new(Dictionary::tag36h11(), 7), &corners, (50.0, 190.0)).unwrap();
        model.pixels = (12..118).flat_map(|v| (12..118).map(move |u| Pixel { u, v, grey: 0.0 })).collect();
        let mut rows = Rows::default();
        rows.evaluate(&model, &common()).unwrap();
        rows.displace(&model);
        let moved = |k: usize| rows.derivatives(COLUMNS + k).map(move |d| planted[k] as f32 * d);
        let mut levels: Vec<f32> = rows.residuals().map(|r| -r).collect();
        for k in 0..TERMS {
            levels.iter_mut().zip(moved(k)).for_each(|(level, more)| *level += more);
        }
        for (i, (pixel, level)) in model.pixels.iter_mut().zip(levels).enumerate() {
            let hash = (i as u32).wrapping_mul(2_654_435_761) ^ 0x9e37_79b9;
            pixel.grey = level + 5.0 * ((hash.wrapping_mul(0x85eb_ca6b) >> 8) as f32 / 16_777_216.0 - 0.5);
        }
        model
    }

    /// Terms that spread by so much, px.
    fn planted(spread: f64, seed: u64) -> Terms {
        let mut random = ChaCha8Rng::seed_from_u64(seed);
        // Twelve even numbers add up to nearly normal ones of variance one.
        Terms::from_fn(|_, _| spread * (0..12).map(|_| random.random_range(-0.5..0.5)).sum::<f64>())
    }

    const SPREAD: f64 = 0.06;
    const SEEDS: u64 = 24;

    #[test]
    fn residuals_tell_how_warped_a_print_is() {
        let told = |spread: f64, seed: u64| {
            let mut models = [Some(warped(&planted(spread, seed)))];
            let step = fit_together(&mut models, &mut common(), &mut Rows::default(), Round::Warp);
            warps(&step.warps, &step.shared)[0].as_ref().unwrap().rms_px / MEAN_SQUARE.sqrt()
        };
        let mean = |spread: f64| {
            let squares: f64 = (0..SEEDS).map(|seed| told(spread, seed).powi(2)).sum();
            (squares / SEEDS as f64).sqrt()
        };
        let (flat, bent) = (mean(0.0), mean(SPREAD));
        println!("{flat:.4} px told of flat prints, {bent:.4} px of {SPREAD}");
        assert!(flat < 0.1 * SPREAD && (0.7..1.3).contains(&(bent / SPREAD)), "{flat} {bent}");
    }

    /// Warps of all kinds, perspective's own kind among them: corners are off by as much as their covariance says, and by more
    /// than it would say without the warp.
    #[test]
    fn corners_are_as_well_known_as_is_stated() {
        let (mut off, mut stated, mut flat) = (0.0, 0.0, 0.0);
        for seed in 0..SEEDS {
            let (mut models, mut common, mut rows) =
                ([Some(warped(&planted(SPREAD, seed)))], common(), Rows::default());
            let mut round = |round| fit_together(&mut models, &mut common, &mut rows, round);
            (0..5).for_each(|_| drop(round(Round::Usual)));
            let step = round(Round::Warp);
            let warp = warps(&step.warps, &step.shared).remove(0).unwrap();
            let model = models[0].take().unwrap();
            let miss = model.corners(&common.lens).into_iter().zip(CORNERS).map(|(c, (u, v))| c - Vector2::new(u, v));
            off += miss.map(|m| m.norm_squared()).sum::<f64>();
            let reduced = step.markers[0].as_ref().unwrap();
            let plain = corner_covariance(&model, &common.lens, reduced, &step.shared).trace();
            (flat, stated) = (flat + plain, stated + plain + warp.covariance.trace());
        }
        let rms = |sum: f64| (sum / (8 * SEEDS) as f64).sqrt();
        println!("{:.4} px off, {:.4} px stated, {:.4} px without the warp", rms(off), rms(stated), rms(flat));
        assert!(
            (0.8..1.25).contains(&rms(off / stated * (8 * SEEDS) as f64)) && off > 4.0 * flat,
            "{off} {stated} {flat}"
        );
    }
}
