//! A marker's gain, patch by patch: unknowns that are taken out of its normal equations.
//!
//! Each patch's unknowns (gain, its slopes; what white has beyond that, and its slopes) are worked out and put back by
//! turns, since the shoulder is not straight; then they are eliminated (Schur complement), so that what
//! remains is the least squares of everything together.

use nalgebra::{SMatrix, SVector};

use super::fit::{noise_of, weight};
use super::gain::{Gain, NEAR_END, seen, seen_plainly};
use super::model::{ALL, Model};
use super::rows::{COLUMNS, Rows};

/// Side of a patch, px: some of them within the ten or so pixels that gains take to run.
const SIDE_PX: f32 = 7.0;
/// Standard deviations in units of the gain's: of its slope for a pixel; of white's own level and slope.
const SLOPE: f32 = 0.19;
const WHITE: f32 = 0.17;
const WHITE_SLOPE: f32 = 0.023;
/// Least share that greys near the end of the scale count. Where many of a marker's are there, nothing else tells
/// how white it is: then their own share.
const LEAST_BEYOND: f32 = 0.1;
/// Levels from which gains are told, least and most: black without light has none.
const LEVELS: (f32, f32) = (5.0, 330.0);
/// Rounds until patches are settled.
const ROUNDS: usize = 3;
/// The spread that is tried where none is known; patches whose gain is that well known tell it, share of its variance.
const TRIED: f32 = 0.3;
const KNOWN: f32 = 0.1;

/// The column of the grey between black and white, and unknowns of a patch.
const SHARE: usize = 11;
const UNKNOWNS: usize = 6;

type Unknowns = SVector<f32, UNKNOWNS>;
type Square = SMatrix<f32, UNKNOWNS, UNKNOWNS>;
type Products = SMatrix<f64, COLUMNS, COLUMNS>;

/// A pixel's patch, what its unknowns do to its level, and its level without them.
struct Spot {
    patch: usize,
    effect: Unknowns,
    level: f32,
}

/// The patches of a marker whose rows are at hand.
pub(super) struct Patches<'a> {
    model: &'a Model,
    spots: Vec<Spot>,
    found: Vec<Unknowns>,
    /// How much greys near the end of the scale count.
    beyond: f32,
}

impl<'a> Patches<'a> {
    pub(super) fn new(model: &'a Model, rows: &Rows, spread: f32) -> Self {
        let ([left, top], [right, _]) = model.extent();
        let columns = (f32::from(right - left) / SIDE_PX) as usize + 1;
        let contrast = model.light[3] as f32;
        let values = rows.residuals().zip(rows.derivatives(SHARE));
        let spots: Vec<Spot> = model
            .pixels
            .iter()
            .zip(values)
            .map(|(pixel, (residual, share))| {
                let (u, v) = (f32::from(pixel.u - left) / SIDE_PX, f32::from(pixel.v - top) / SIDE_PX);
                let level = pixel.grey - residual;
                let patch = v as usize * columns + u as usize;
                let place = ((u.fract() - 0.5) * SIDE_PX, (v.fract() - 0.5) * SIDE_PX);
                Spot { patch, effect: effect(level, share * contrast, place) * spread, level }
            })
            .collect();
        let count = spots.iter().map(|s| s.patch + 1).max().unwrap_or(0);
        let near_end = model.pixels.iter().filter(|p| p.grey >= NEAR_END).count();
        let beyond = (near_end as f32 / model.pixels.len() as f32).max(LEAST_BEYOND);
        Patches { model, spots, found: vec![Unknowns::zeros(); count], beyond }
    }

    /// Works the unknowns out, and leaves the residuals as they are with them; the residuals' noise then.
    pub(super) fn settle(&mut self, rows: &mut Rows, mut noise: f32) -> f32 {
        for _ in 0..ROUNDS {
            let sums = self.sums(noise, |level, grey| seen(level, grey, self.beyond));
            for (found, (own, right)) in self.found.iter_mut().zip(sums) {
                *found = own.cholesky().map_or(Unknowns::zeros(), |c| c.solve(&right));
            }
            let mut at = self.spots.iter().zip(&self.model.pixels);
            for (batch, count) in rows.batches_mut() {
                for (k, (spot, pixel)) in at.by_ref().take(count).enumerate() {
                    batch[ALL][k] = seen(self.level(spot), pixel.grey, self.beyond).0;
                }
            }
            noise = noise_of(self.model, rows.residuals());
        }
        noise
    }

    /// A spot's level with its patch's unknowns.
    fn level(&self, spot: &Spot) -> f32 {
        spot.level + spot.effect.dot(&self.found[spot.patch])
    }

    /// Normal equations of each patch, its unknowns in units of their standard deviations.
    fn sums(&self, noise: f32, seen: impl Fn(f32, f32) -> (f32, f32)) -> Vec<(Square, Unknowns)> {
        let mut sums = vec![(Square::identity(), Unknowns::zeros()); self.found.len()];
        for (spot, pixel) in self.spots.iter().zip(&self.model.pixels) {
            let moved = spot.effect.dot(&self.found[spot.patch]);
            let (residual, slope) = seen(spot.level + moved, pixel.grey);
            let weight = weight(residual / noise) / (noise * noise);
            let effect = spot.effect * slope;
            let (own, right) = &mut sums[spot.patch];
            *own += effect * effect.transpose() * weight;
            *right += effect * (weight * (residual + slope * moved));
        }
        sums
    }

    /// Puts the rows' derivatives on the shoulder; what the patches' unknowns take off their products.
    pub(super) fn eliminate(&self, rows: &mut Rows, noise: f32) -> Products {
        let nothing = (Square::identity(), SMatrix::<f32, UNKNOWNS, COLUMNS>::zeros());
        let mut sums = vec![nothing; self.found.len()];
        let mut at = self.spots.iter().zip(&self.model.pixels);
        for (batch, count) in rows.batches_mut() {
            for (k, (spot, pixel)) in at.by_ref().take(count).enumerate() {
                let (_, slope) = seen(self.level(spot), pixel.grey, self.beyond);
                let weight = weight(batch[ALL][k] / noise) / (noise * noise);
                let effect = spot.effect * slope;
                let (own, mixed) = &mut sums[spot.patch];
                *own += effect * effect.transpose() * weight;
                for (c, column) in batch[..ALL].iter_mut().enumerate() {
                    column[k] *= slope;
                    let mut sum = mixed.column_mut(c);
                    sum += effect * (column[k] * weight);
                }
            }
        }
        sums.into_iter().fold(Products::zeros(), |less, (own, mixed)| match own.cholesky() {
            Some(own) => less + (mixed.transpose() * own.solve(&mixed)).map(f64::from),
            None => less,
        })
    }
}

/// What a patch's unknowns, each one standard deviation for a spread of one, do to a level; `white` is its part
/// beyond black, `place` px from the patch's middle.
fn effect(level: f32, white: f32, (u, v): (f32, f32)) -> Unknowns {
    let gain = level.clamp(LEVELS.0, LEVELS.1);
    Unknowns::from([
        gain,
        SLOPE * u * gain,
        SLOPE * v * gain,
        WHITE * white,
        WHITE_SLOPE * u * white,
        WHITE_SLOPE * v * white,
    ])
}

/// How a marker's gain spreads: what the residuals of its patches say, whose rows are at hand. With
/// how many patches say so.
pub(super) fn spread(model: &Model, rows: &Rows, noise: f32) -> (f32, usize) {
    let mut patches = Patches::new(model, rows, TRIED);
    let sums = patches.sums(noise, seen_plainly);
    for (found, (own, right)) in patches.found.iter_mut().zip(sums) {
        *found = own.cholesky().map_or(Unknowns::zeros(), |c| c.solve(&right));
    }
    // What gains cause is no noise.
    let left = patches.spots.iter().zip(&model.pixels).map(|(s, p)| seen_plainly(patches.level(s), p.grey).0);
    let noise = noise_of(model, left).min(noise);
    let mut squares: Vec<f32> = patches
        .sums(noise, seen_plainly)
        .into_iter()
        .filter_map(|(own, right)| {
            let inverse = own.cholesky()?.inverse();
            let found = (inverse * right)[0];
            (inverse[(0, 0)] < KNOWN).then_some(found * found - inverse[(0, 0)])
        })
        .collect();
    squares.sort_by(f32::total_cmp);
    // A few odd patches, at stains and shadows, do not speak for all.
    squares.truncate(squares.len() - squares.len() / 8);
    let count = squares.len();
    let mean = squares.iter().sum::<f32>() / count.max(1) as f32;
    (TRIED * mean.max(0.0).sqrt(), count)
}

/// The prior of a marker's light where gains are unknowns: its levels as found before.
pub(super) fn hold(gain: &Gain, light: &[f64; 6]) -> [(usize, f64, f64); 2] {
    const HELD: f64 = 0.05;
    [(8, gain.held[0], light[0]), (11, gain.held[1], light[3])].map(|(k, held, now)| {
        let weight = (HELD * held.abs().max(10.0)).powi(-2);
        (k, weight, weight * (held - now))
    })
}
