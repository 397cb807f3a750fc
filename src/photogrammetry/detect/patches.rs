//! A marker's gain, patch by patch: unknowns that are taken out of its normal equations.
//!
//! Each patch's unknowns (gain, its slopes; what white has beyond that, and its slopes) are worked out and put back by
//! turns, since the shoulder is not straight; then they are eliminated (Schur complement), so that what
//! remains is the least squares of everything together.

use nalgebra::{SMatrix, SVector};

use super::gain::{NEAR_END, seen, seen_plainly};
use super::model::{ALL, Model};
use super::robust::{noise_of, weight};
use super::rows::Rows;

/// Side of a patch, px: some of them within the ten or so pixels that gains take to run.
const SIDE_PX: f32 = 7.0;
/// Standard deviations in units of the gain's: of its slope for a pixel; of white's own level and slope.
const SLOPE: f32 = 0.19;
const WHITE: f32 = 0.17;
const WHITE_SLOPE: f32 = 0.023;
/// Least share that greys near the end of the scale count. Where many of a marker's are there, nothing else tells
/// how white it is: then the square of their own share.
const LEAST_BEYOND: f32 = 0.1;
/// Levels from which gains are told, least and most: black without light has none.
const LEVELS: (f32, f32) = (5.0, 330.0);
/// Rounds until patches are settled.
const ROUNDS: usize = 6;
/// The spread that is tried where none is known; patches whose gain is that well known tell it, share of its variance.
const TRIED: f32 = 0.3;
const KNOWN: f32 = 0.1;

/// The column of the grey between black and white, and unknowns of a patch.
const SHARE: usize = 11;
const UNKNOWNS: usize = 6;

type Unknowns = SVector<f32, UNKNOWNS>;
type Square = SMatrix<f32, UNKNOWNS, UNKNOWNS>;
/// Products of so many columns.
pub(super) type Products<const N: usize> = SMatrix<f64, N, N>;

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
        let beyond = (near_end as f32 / model.pixels.len() as f32).powi(2).max(LEAST_BEYOND);
        Patches { model, spots, found: vec![Unknowns::zeros(); count], beyond }
    }

    /// Works the unknowns out, and leaves the residuals as they are with them; the residuals' noise then.
    pub(super) fn settle(&mut self, rows: &mut Rows, mut noise: f32) -> f32 {
        for _ in 0..ROUNDS {
            let beyond = self.beyond;
            self.solve(noise, |level, grey| seen(level, grey, beyond));
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

    /// One step of each patch's unknowns.
    fn solve(&mut self, noise: f32, seen: impl Fn(f32, f32) -> (f32, f32)) {
        let sums = self.sums(noise, seen);
        for (found, (own, right)) in self.found.iter_mut().zip(sums) {
            *found = own.cholesky().map_or(Unknowns::zeros(), |c| c.solve(&right));
        }
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

    /// Puts the rows' derivatives (their first `N` columns but the residuals) on the shoulder; what the patches' unknowns
    /// take off their products.
    pub(super) fn eliminate<const N: usize>(&self, rows: &mut Rows, noise: f32) -> Products<N> {
        let nothing = (Square::identity(), SMatrix::<f32, UNKNOWNS, N>::zeros());
        let mut sums = vec![nothing; self.found.len()];
        let mut at = self.spots.iter().zip(&self.model.pixels);
        for (batch, count) in rows.batches_mut() {
            for (k, (spot, pixel)) in at.by_ref().take(count).enumerate() {
                let (_, slope) = seen(self.level(spot), pixel.grey, self.beyond);
                let weight = weight(batch[ALL][k] / noise) / (noise * noise);
                let effect = spot.effect * slope;
                let (own, mixed) = &mut sums[spot.patch];
                *own += effect * effect.transpose() * weight;
                for (c, column) in batch[..N].iter_mut().enumerate().filter(|(c, _)| *c != ALL) {
                    column[k] *= slope;
                    let mut sum = mixed.column_mut(c);
                    sum += effect * (column[k] * weight);
                }
            }
        }
        sums.into_iter().fold(Products::<N>::zeros(), |less, (own, mixed)| match own.cholesky() {
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
    patches.solve(noise, seen_plainly);
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

#[cfg(test)]
mod tests {
    use nalgebra::{DMatrix, DVector, Vector2};

    use super::super::model::Pixel;
    use super::super::pattern::Pattern;
    use super::super::profile::Profile;
    use super::super::rows::COLUMNS;
    use super::super::shared::{Common, LENS};
    use super::super::squares::squares;
    use super::*;
    use crate::marker::Dictionary;
    use crate::photo::Luma;

    const COMMON: Common = Common { profile: Profile::TYPICAL, lens: [0.0; LENS], sharpening: 0.0, sharpened: false };

    /// Even numbers, -1 to 1, by place.
    fn scatter(u: u16, v: u16) -> f32 {
        let hash = (u32::from(u) * 7919 + u32::from(v) * 104_729 + 12_345).wrapping_mul(2_654_435_761);
        (hash >> 8) as f32 / 8_388_608.0 - 1.0
    }

    /// A marker of 88 px whose pixels in a square of it are what the model says, times a gain, with some noise.
    fn marker(low: u16, high: u16, gain: impl Fn(u16, u16) -> f32) -> (Model, Rows) {
        let photo = Luma::new(130, 130, vec![128; 130 * 130]).unwrap();
        let corners = [(20.3, 21.1), (107.9, 19.2), (109.4, 108.0), (18.8, 106.5)].map(|(u, v)| Vector2::new(u, v));
        let pattern = Pattern::new(Dictionary::tag36h11(), 7);
        let mut model = Model::new(&photo, pattern, &corners, (50.0, 190.0)).unwrap();
        let places = (low..high).flat_map(|v| (low..high).map(move |u| (u, v)));
        model.pixels = places.map(|(u, v)| Pixel { u, v, grey: 0.0 }).collect();
        let mut rows = Rows::default();
        rows.evaluate(&model, &COMMON).unwrap();
        let levels: Vec<f32> = rows.residuals().map(|r| -r).collect();
        for (pixel, level) in model.pixels.iter_mut().zip(levels) {
            pixel.grey = level * gain(pixel.u, pixel.v) + 3.0 * scatter(pixel.u, pixel.v);
        }
        rows.evaluate(&model, &COMMON).unwrap();
        (model, rows)
    }

    /// Gains that spread by .052.
    fn patchy(u: u16, v: u16) -> f32 {
        1.0 + 0.09 * scatter((u - 16) / 7, (v - 16) / 7)
    }

    /// Normal equations of everything together, in double precision, solved by nalgebra.
    #[test]
    fn eliminating_patches_is_least_squares_with_all_unknowns() {
        let (model, mut rows) = marker(16, 36, patchy);
        let mut patches = Patches::new(&model, &rows, 0.3);
        let noise = patches.settle(&mut rows, 2.0);
        let less = patches.eliminate::<COLUMNS>(&mut rows, noise);
        let all: Vec<usize> = (0..COLUMNS).collect();
        let sums = squares::<COLUMNS>(&rows, &all, |residual| weight(residual / noise) / (noise * noise));
        let count = ALL + UNKNOWNS * patches.found.len();
        let mut whole = DMatrix::<f64>::identity(count, count);
        let columns: Vec<Vec<f32>> = (0..COLUMNS).map(|c| rows.derivatives(c).collect()).collect();
        let (mut wanted, mut prior) = (DVector::<f64>::zeros(count), DVector::<f64>::zeros(count));
        for (i, (spot, pixel)) in patches.spots.iter().zip(&model.pixels).enumerate() {
            let (residual, slope) = seen(patches.level(spot), pixel.grey, patches.beyond);
            let mut row = DVector::<f64>::zeros(count);
            for (to, column) in row.iter_mut().zip(&columns[..ALL]) {
                *to = f64::from(column[i]);
            }
            for k in 0..UNKNOWNS {
                row[ALL + UNKNOWNS * spot.patch + k] = f64::from(spot.effect[k] * slope);
            }
            let weight = f64::from(weight(residual / noise) / (noise * noise));
            whole += &row * row.transpose() * weight;
            wanted += row * (weight * f64::from(residual));
        }
        for (k, found) in patches.found.iter().flat_map(|f| f.iter()).enumerate() {
            prior[ALL + k] = f64::from(*found);
        }
        let rest = count - ALL;
        let mixed = whole.view((ALL, 0), (rest, ALL)).into_owned();
        let patches_alone = whole.view((ALL, ALL), (rest, rest)).into_owned().cholesky().unwrap();
        let taken = mixed.transpose() * patches_alone.solve(&mixed);
        for i in 0..ALL {
            for j in i..ALL {
                // The parameters' own prior of one, which only the whole has.
                let own = whole[(i, j)] - if i == j { 1.0 } else { 0.0 };
                let scale = (sums[(i, i)] * sums[(j, j)]).sqrt().max(1.0);
                let miss = (sums[(i, j)] - less[(i, j)] - (own - taken[(i, j)])) / scale;
                assert!(miss.abs() < 1e-5, "{i} {j}: {miss}");
            }
        }
        assert!((0..8).all(|i| taken[(i, i)] > 0.1 * sums[(i, i)]), "patches take hardly anything");
        // Settled: another step would hardly move them, standard deviations of the prior.
        let left = patches_alone.solve(&(wanted - prior).rows(ALL, rest)).amax();
        assert!(patches.found.len() >= 9 && left < 0.05, "{left}");
    }

    #[test]
    fn gains_spread_where_there_are_some() {
        let spread = |gain: &dyn Fn(u16, u16) -> f32| {
            let (model, rows) = marker(16, 112, gain);
            let noise = noise_of(&model, rows.residuals());
            spread(&model, &rows, noise)
        };
        let (none, patches) = spread(&|_, _| 1.0);
        let (some, _) = spread(&patchy);
        println!("{patches} patches: {none} without gains, {some} with gains of .052");
        assert!(patches > 100 && none < 0.01 && (0.035..0.065).contains(&some), "{none} {some}");
    }
}
