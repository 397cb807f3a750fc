//! The normal equations of a warp's unknowns: taken out of those of everything else, and what they tell before that.

use nalgebra::{SMatrix, SVector};

use super::model::{ALL, LOCAL};
use super::shared::SHARED;
use super::warp::{DEGREE_TWO, PRODUCTS, TERMS, Terms, Warp};

/// The spread that is tried where none is known, share of the side; terms that are that well known tell it, share of
/// its variance.
const TRIED: f64 = 0.003;
const KNOWN: f64 = 0.1;
/// Neighbouring residuals have something in common (noise reduction, JPEG): terms scatter by so many times the
/// variance that single pixels would give them.
const CORRELATED: f64 = 2.0;
/// Terms are weighed as if they spread by this, share of the side.
pub(super) const USUAL: f64 = 0.0003;

/// Normal equations of a warp's unknowns without a prior, and what they share with the other columns.
pub(super) struct Sums {
    pub(super) own: SMatrix<f64, TERMS, TERMS>,
    pub(super) mixed: SMatrix<f64, TERMS, ALL>,
    pub(super) right: Terms,
}

/// What a warp's unknowns leave behind when they are taken out.
#[derive(Debug, Clone)]
pub(super) struct Taken {
    /// Their step if nothing else moved, and how they follow everything else.
    pub(super) alone: Terms,
    pub(super) by_others: SMatrix<f64, TERMS, ALL>,
}

impl Taken {
    pub(super) fn new(sums: &Sums, warp: &Warp) -> Option<Self> {
        let weight = warp.spread.powi(-2);
        let own = (sums.own + SMatrix::identity() * weight).cholesky()?;
        let alone = own.solve(&(sums.right - warp.found * weight));
        Some(Taken { alone, by_others: own.solve(&sums.mixed) })
    }

    /// The step of the warp's unknowns that goes with one of everything else.
    pub(super) fn step(&self, own: &SVector<f64, LOCAL>, shared: &SVector<f64, SHARED>) -> Terms {
        let by_shared = self.by_others.fixed_columns::<SHARED>(LOCAL);
        self.alone - self.by_others.fixed_columns::<LOCAL>(0) * own - by_shared * shared
    }

    /// How they follow the marker's own parameters.
    pub(super) fn by_own(&self) -> SMatrix<f64, TERMS, LOCAL> {
        self.by_others.fixed_columns::<LOCAL>(0).into_owned()
    }
}

/// Sum and weight of the terms' variances, shares of the side squared.
pub(super) type Told = (f64, f64);

/// What a marker's terms of degree three and four say of how much it is warped; with the covariance of its own parameters and
/// the right side of their normal equations.
pub(super) fn told(
    side: f64,
    sums: &Sums,
    own_covariance: &SMatrix<f64, LOCAL, LOCAL>,
    own_right: &SVector<f64, LOCAL>,
) -> Option<Told> {
    let across = sums.mixed.fixed_columns::<LOCAL>(0).into_owned();
    let prior = SMatrix::<f64, TERMS, TERMS>::identity() * (TRIED * side).powi(-2);
    let own = sums.own + prior - across * own_covariance * across.transpose();
    let inverse = own.cholesky()?.inverse();
    let found = inverse * (sums.right - across * own_covariance * own_right);
    let telling = (0..TERMS).filter(|k| k % PRODUCTS >= DEGREE_TWO);
    let known = telling.filter(|k| inverse[(*k, *k)] < KNOWN * (TRIED * side).powi(2));
    Some(known.fold((0.0, 0.0), |(sum, weights), k| {
        let (square, variance) = (found[k].powi(2) / side.powi(2), inverse[(k, k)] / side.powi(2));
        let weight = (variance + USUAL.powi(2)).powi(-2);
        (sum + weight * (square - CORRELATED * variance), weights + weight)
    }))
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
    use super::super::rows::Rows;
    use super::super::shared::{Common, LENS};
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
        rows.straighten(planted);
        let levels: Vec<f32> = rows.residuals().map(|r| -r).collect();
        for (i, (pixel, level)) in model.pixels.iter_mut().zip(levels).enumerate() {
            let hash = (i as u32).wrapping_mul(2_654_435_761) ^ 0x9e37_79b9;
            pixel.grey = level + 5.0 * ((hash.wrapping_mul(0x85eb_ca6b) >> 8) as f32 / 16_777_216.0 - 0.5);
        }
        model
    }

    fn planted(size: f64) -> Terms {
        Terms::from_fn(|k, _| size * [1.0, -0.6, 1.4, -1.1, 0.3][(k * 7) % 5])
    }

    #[test]
    fn residuals_tell_how_warped_a_print_is() {
        let told = |size: f64| {
            let mut models = [Some(warped(&planted(size)))];
            let step = fit_together(&mut models, &mut common(), &mut Rows::default(), Round::Warp);
            let (sum, weight) = step.warps[0].unwrap();
            (sum / weight).max(0.0).sqrt()
        };
        let (flat, bent) = (told(0.0), told(0.08));
        println!("flat {flat:.6}, bent {bent:.6} of the side");
        assert!(flat < 0.0001 && (0.0005..0.0016).contains(&bent), "{flat} {bent}");
    }

    /// Warps of many kinds, perspective's own kind among them: corners are off by less with unknowns than without, and by
    /// as much as their covariance says.
    #[test]
    fn corners_are_as_well_known_as_is_stated() {
        let fitted = |terms: &Terms, warp: Option<Warp>| {
            let mut model = warped(terms);
            model.warp = warp;
            let (mut models, mut common, mut rows) = ([Some(model)], common(), Rows::default());
            let mut round = || fit_together(&mut models, &mut common, &mut rows, Round::Usual);
            let step = (0..6).map(|_| round()).last().unwrap();
            let model = models[0].take().unwrap();
            let off = model.corners(&common.lens).map(|c| [c.x, c.y]);
            let true_place = CORNERS.map(|(u, v)| [u, v]);
            let off = SVector::<f64, 8>::from_fn(|i, _| off[i / 2][i % 2] - true_place[i / 2][i % 2]);
            let variance =
                corner_covariance(&model, &common.lens, step.markers[0].as_ref().unwrap(), &step.shared).trace();
            (off, variance, model.warp)
        };
        const SPREAD: f64 = 0.08;
        let (mut without, mut with, mut stated) = (0.0, 0.0, 0.0);
        for seed in 0..24 {
            let mut random = ChaCha8Rng::seed_from_u64(seed);
            // Twelve even numbers add up to nearly normal ones of variance one.
            let mut normal = || (0..12).map(|_| random.random_range(-0.5..0.5)).sum::<f64>();
            let size = Terms::from_fn(|_, _| SPREAD * normal());
            without += fitted(&size, None).0.norm_squared();
            let (off, variance, warp) = fitted(&size, Some(Warp { spread: SPREAD, found: Terms::zeros() }));
            with += off.norm_squared();
            stated += variance;
            let (found, planted) = (warp.unwrap().rms_px(), Warp { spread: SPREAD, found: size }.rms_px());
            assert!((0.5..1.3).contains(&(found / planted)), "{found} of {planted}");
        }
        let rms = |sum: f64| (sum / (24.0 * 8.0)).sqrt();
        println!("{:.4} px without, {:.4} with unknowns, {:.4} stated", rms(without), rms(with), rms(stated));
        assert!(with < 0.8 * without && (0.6..1.5).contains(&(with / stated)), "{without} {with} {stated}");
    }
}
