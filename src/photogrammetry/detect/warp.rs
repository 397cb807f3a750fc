//! Prints that are not flat, or whose edges are not quite where they should be.
//!
//! Paper curls and lies in waves, a printer's feed wavers: what a marker shows is off what a homography makes of
//! it, by .05 px in photos of sheets taped to a wall, and smoothly, so that neighbouring edges agree and no block of
//! residuals averages it out. So residuals tell how large smooth displacements are, those of degree two (a curl) and higher
//! ones (waves) each for themselves, and the fit's own equations what they do to
//! corners: that is part of the corners' covariance. Of degree two, what looks as perspective does is hidden and taken to
//! be as large as the rest. Corners stay those of plain
//! least squares: with the displacements as unknowns (tried) real photos agree better by 5 %, and strongly processed ones, where noise
//! reduction displaces edges likewise, worse by 5 to 25 %. What shifts, turns, stretches or shears a print no residual
//! tells: that is the kit's own uncertainty.

use nalgebra::{Matrix6, SMatrix, SVector, Vector6};

use super::legendre::{DEGREE_TWO, MEAN_SQUARES, TERMS, Terms, is_of_degree_two};
use super::model::{LOCAL, Model};
use super::normal::{Reduced, Sums};
use super::residuals::{corners_by_common, sums_by_block};
use super::rows::{COLUMNS, Rows};
use super::shared::{LENS, SHARED};

/// The spread that is tried, share of the side; terms that are that well known tell it, share of its variance.
const TRIED: f64 = 0.003;
const KNOWN: f64 = 0.1;
/// What single-precision products leave of the largest of them.
const ROUNDED: f64 = 1e-6;
/// Terms scatter by so many times the variance that single pixels would give them, at least: neighbours have something in
/// common. Blocks of residuals show how much.
const CORRELATED: f64 = 2.0;
/// Terms are weighed as if they spread by this, share of the side.
const USUAL: f64 = 0.0003;
/// What flat prints show through a colour mosaic and noise reduction, share of the side and px at most: no warp.
const SILENT: f64 = 0.0002;
const MOST_SILENT_PX: f64 = 0.03;
/// So many times as much where gains are free: what they cannot hold passes for a warp.
const BESIDE_GAIN: f64 = 2.5;
/// A photo's markers count as so many terms of each where it is about how much that is warped.
const OTHERS: f64 = 5.0;

/// Kinds of terms: of degree two, and of three and four.
const KINDS: usize = 2;

/// What terms of one kind tell: their variance, shares of the side squared, times its weight, and that.
#[derive(Debug, Clone, Copy, Default)]
struct Voice {
    sum: f64,
    weight: f64,
}

impl Voice {
    /// One term more, that was found with a variance.
    fn hear(&mut self, found: f64, variance: f64) {
        let counts = (variance + USUAL.powi(2)).powi(-2);
        self.sum += counts * (found * found - variance);
        self.weight += counts;
    }

    fn join(self, other: Voice) -> Voice {
        Voice { sum: self.sum + other.sum, weight: self.weight + other.weight }
    }

    fn variance(self) -> f64 {
        if self.weight > 0.0 { self.sum / self.weight } else { 0.0 }
    }
}

/// What one marker tells.
pub(super) struct Told {
    side: f64,
    voices: [Voice; KINDS],
    /// Terms that spread less say nothing, px.
    silent: f64,
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

/// What a marker's residuals say of how much it is warped; its rows are left without what that explains.
pub(super) fn told(model: &Model, lens: &[f64; LENS], sums: &Sums, reduced: &Reduced, rows: &mut Rows) -> Option<Told> {
    let side = model.side();
    let across = sums.mixed.fixed_columns::<LOCAL>(0).into_owned();
    let weight = (TRIED * side).powi(-2).max(ROUNDED * sums.own.diagonal().max());
    let by_own = across * reduced.inverse;
    let own = sums.own + SMatrix::identity() * weight - by_own * across.transpose();
    let inverse = own.cholesky()?.inverse();
    let found = inverse * (sums.right - by_own * reduced.right);
    rows.take_off(&(reduced.inverse * (reduced.right - across.transpose() * found)), &found);
    let mut scatter = SMatrix::<f64, TERMS, TERMS>::zeros();
    for (own, terms) in sums_by_block::<TERMS>(model, reduced.noise, rows, COLUMNS) {
        let own = SVector::from(own).map(f64::from);
        let block = inverse * (SVector::from(terms).map(f64::from) - by_own * own);
        scatter += block * block.transpose();
    }
    let mut voices = [Voice::default(); KINDS];
    let limit = KNOWN * (TRIED * side).powi(2);
    let mut hear = |kind: usize, found: f64, variance: f64, scatter: f64| {
        if variance < limit {
            voices[kind].hear(found / side, scatter.max(CORRELATED * variance) / side.powi(2));
        }
    };
    // Of degree two those combinations speak that do not look as perspective does.
    let of_two = |all: &SMatrix<f64, TERMS, TERMS>| Matrix6::from_fn(|i, j| all[(DEGREE_TWO[i], DEGREE_TWO[j])]);
    let (two, scatter_of_two) = (of_two(&inverse).symmetric_eigen(), of_two(&scatter));
    let found_of_two = Vector6::from_fn(|i, _| found[DEGREE_TWO[i]]);
    for (variance, direction) in two.eigenvalues.iter().zip(two.eigenvectors.column_iter()) {
        hear(0, direction.dot(&found_of_two), *variance, (scatter_of_two * direction).dot(&direction));
    }
    for k in (0..TERMS).filter(|k| !is_of_degree_two(*k)) {
        hear(1, found[k], inverse[(k, k)], scatter[(k, k)]);
    }
    let silent = (SILENT * side).min(MOST_SILENT_PX);
    Some(Told {
        side,
        voices,
        silent: if model.gain.is_some() { BESIDE_GAIN * silent } else { silent },
        // Least squares takes a displacement for one of its own parameters.
        by_terms: model.corners_by_h() * by_own.transpose().fixed_rows::<8>(0),
        by_common: corners_by_common(model, lens, reduced),
        wanted: (sums.mixed.fixed_columns::<SHARED>(LOCAL) - by_own * reduced.mixed).transpose(),
    })
}

/// How a photo's markers are warped: what each of them tells, and what all do; with the covariance of the photo's common
/// parameters from the same round (fewer pixels than in the last one, but for both sides of what they do).
pub(super) fn warps(told: &[Option<Told>], shared: &SMatrix<f64, SHARED, SHARED>) -> Vec<Option<Warp>> {
    let photo = std::array::from_fn(|kind| of_most(told.iter().flatten().map(|t| t.voices[kind]).collect()));
    let all: Vec<Option<Terms>> = told.iter().map(|t| t.as_ref().map(|t| t.variances(&photo))).collect();
    let wanted = |t: &Told, variances: &Terms| t.wanted * SMatrix::from_diagonal(variances) * t.wanted.transpose();
    // What all of them do to the common parameters.
    let pairs = || told.iter().zip(&all).map(|(t, v)| Some((t.as_ref()?, v.as_ref()?)));
    let common: SMatrix<f64, SHARED, SHARED> = pairs().flatten().map(|(t, v)| wanted(t, v)).sum();
    let warp = |(t, variances): (&Told, &Terms)| {
        let others = t.by_common * shared * (common - wanted(t, variances)) * shared * t.by_common.transpose();
        let by_own = t.by_terms + t.by_common * shared * t.wanted;
        Warp {
            rms_px: MEAN_SQUARES.iter().zip(variances).map(|(m, v)| m * v / 2.0).sum::<f64>().sqrt(),
            covariance: by_own * SMatrix::from_diagonal(variances) * by_own.transpose() + others,
        }
    };
    pairs().map(|pair| pair.map(warp)).collect()
}

/// The variance that most of a photo's markers speak for: a fifth, stained or half covered, does not.
fn of_most(mut voices: Vec<Voice>) -> f64 {
    voices.sort_by(|a, b| a.variance().total_cmp(&b.variance()));
    voices.truncate(voices.len() - voices.len() / 5);
    voices.into_iter().fold(Voice::default(), Voice::join).variance().max(0.0)
}

impl Told {
    /// Each term's variance, px^2, its photo's variances known.
    fn variances(&self, photo: &[f64; KINDS]) -> Terms {
        let weight = OTHERS * USUAL.powi(-4);
        let kinds: [f64; KINDS] = std::array::from_fn(|kind| {
            let others = Voice { sum: photo[kind] * weight, weight };
            let variance = self.voices[kind].join(others).variance() * self.side.powi(2);
            if variance > self.silent.powi(2) { variance } else { 0.0 }
        });
        Terms::from_fn(|k, _| kinds[usize::from(!is_of_degree_two(k))])
    }
}

#[cfg(test)]
mod tests {
    use nalgebra::{Matrix3, Vector2, Vector3};
    use rand::rngs::ChaCha8Rng;
    use rand::{RngExt, SeedableRng};

    use super::super::fit::{Round, Step, fit_together};
    use super::super::model::{LIGHT, Pixel};
    use super::super::pattern::Pattern;
    use super::super::profile::Profile;
    use super::super::residuals::corner_covariance;
    use super::super::shared::Common;
    use super::*;
    use crate::marker::Dictionary;
    use crate::photo::Luma;

    const SEEDS: u64 = 24;
    const SIZE: usize = 900;

    fn common() -> Common {
        Common { profile: Profile::TYPICAL, lens: [0.0; LENS], sharpening: 0.0, sharpened: true }
    }

    /// How far a print is off by its place, -1 to 1: a curl about some axis and two waves, px; nothing of the
    /// unknowns' own polynomials. Its shift, turn, stretch and shear are taken off.
    struct Field {
        curl: [f64; 4],
        waves: [[f64; 5]; 2],
        plane: [Vector3<f64>; 2],
    }

    impl Field {
        fn drawn(size: f64, random: &mut ChaCha8Rng) -> Self {
            let mut even = |most: f64| random.random_range(-most..most);
            let curl = std::array::from_fn(|k| if k < 2 { even(1.0) } else { 1.5 * even(size) });
            let waves = std::array::from_fn(|_| [even(3.0), even(3.0), even(3.0), even(size), even(size)]);
            let mut field = Field { curl, waves, plane: [Vector3::zeros(); 2] };
            let (mut square, mut right) = (Matrix3::zeros(), [Vector3::zeros(); 2]);
            for [x, y] in places() {
                let (row, off) = (Vector3::new(1.0, x, y), field.at([x, y]));
                square += row * row.transpose();
                right.iter_mut().zip(off).for_each(|(right, off)| *right += row * off);
            }
            field.plane = right.map(|right| square.try_inverse().unwrap() * right);
            field
        }

        fn at(&self, [x, y]: [f64; 2]) -> [f64; 2] {
            let across = self.curl[0] * x + self.curl[1] * y;
            [0, 1].map(|i| {
                let waves = self.waves.iter().map(|w| w[3 + i] * (w[0] * x + w[1] * y + w[2]).sin());
                let plane = self.plane[i].dot(&Vector3::new(1.0, x, y));
                self.curl[2 + i] * across * across + waves.sum::<f64>() - plane
            })
        }

        fn rms(&self) -> f64 {
            let squares = places().flat_map(|place| self.at(place)).map(|off| off * off);
            (squares.sum::<f64>() / (2 * places().count()) as f64).sqrt()
        }
    }

    fn places() -> impl Iterator<Item = [f64; 2]> {
        (0..19 * 19).map(|i| [(i % 19) as f64 / 9.0 - 1.0, (i / 19) as f64 / 9.0 - 1.0])
    }

    fn corners(at: [f64; 2]) -> [Vector2<f64>; 4] {
        [(20.3, 21.1), (107.9, 29.2), (99.4, 108.0), (18.8, 106.5)].map(|(u, v)| Vector2::new(at[0] + u, at[1] + v))
    }

    /// A marker of 85 px whose every pixel is what the model says with such a warp, and some noise.
    fn marker(id: u32, at: [f64; 2], field: &Field, random: &mut ChaCha8Rng) -> Model {
        let photo = Luma::new(SIZE, SIZE, vec![128; SIZE * SIZE]).unwrap();
        let pattern = Pattern::new(Dictionary::tag36h11(), id);
        let mut model = Model::new(&photo, pattern, &corners(at), (50.0, 190.0)).unwrap();
        let [u, v] = at.map(|t| t as u16);
        let places = (v + 12..v + 118).flat_map(|v| (u + 12..u + 118).map(move |u| (u, v)));
        model.pixels = places.map(|(u, v)| Pixel { u, v, grey: 0.0 }).collect();
        let mut rows = Rows::default();
        rows.evaluate(&model, &common()).unwrap();
        let column = |k: usize| rows.derivatives(k).map(f64::from).collect::<Vec<f64>>();
        let [x, y, by_u, by_v] = [LIGHT + 1, LIGHT + 2, 2, 5].map(column);
        let perspective = model.perspective().map(f64::from);
        let levels: Vec<f32> = rows.residuals().map(|r| -r).collect();
        for (i, pixel) in model.pixels.iter_mut().enumerate() {
            let by_px = (perspective[0] * x[i] + perspective[1] * y[i] + 1.0) / model.unit;
            let off = field.at([x[i], y[i]]);
            let more = (off[0] * by_u[i] + off[1] * by_v[i]) * by_px;
            pixel.grey = levels[i] + more as f32 + random.random_range(-2.5..2.5);
        }
        model
    }

    /// Three markers of a photo, warped so far, fitted.
    fn fitted(sizes: [f64; 3], seed: u64) -> (Vec<Model>, Vec<Field>, Common, Step) {
        let mut random = ChaCha8Rng::seed_from_u64(seed);
        let fields: Vec<Field> = sizes.iter().map(|size| Field::drawn(size.max(1e-12), &mut random)).collect();
        let one = |(i, field)| Some(marker(7 + i as u32, PLACES[i], field, &mut random));
        let mut models: Vec<Option<Model>> = fields.iter().enumerate().map(one).collect();
        let mut common = common();
        for _ in 0..5 {
            fit_together(&mut models, &mut common, Round::Usual);
        }
        let step = fit_together(&mut models, &mut common, Round::Warp);
        (models.into_iter().flatten().collect(), fields, common, step)
    }

    const PLACES: [[f64; 2]; 3] = [[60.0, 100.0], [400.0, 380.0], [720.0, 640.0]];

    #[test]
    fn residuals_tell_how_warped_a_print_is() {
        let mean = |size: f64| {
            let (mut told, mut there) = (0.0, 0.0);
            for seed in 0..SEEDS {
                let (models, fields, _, step) = fitted([size; 3], seed);
                assert_eq!(models.len(), 3);
                there += fields.iter().map(|f| f.rms().powi(2)).sum::<f64>();
                told += warps(&step.warps, &step.shared).iter().flatten().map(|w| w.rms_px.powi(2)).sum::<f64>();
            }
            [told, there].map(|sum| (sum / (3 * SEEDS) as f64).sqrt())
        };
        let ([flat, _], [told, there]) = (mean(0.0), mean(0.15));
        println!("{flat:.4} px told of flat prints, {told:.4} px of {there:.4} px");
        assert!(flat < 0.005 && (0.6..1.5).contains(&(told / there)), "{flat} {told} {there}");
        // Before anything too small is left out.
        let (_, _, _, step) = fitted([0.0; 3], 99);
        for voice in step.warps.iter().flatten().flat_map(|t| t.voices) {
            assert!(voice.variance() < (0.5 * SILENT).powi(2), "{voice:?}");
        }
    }

    /// Corners are off by as much as their covariance says, of prints that are all bent and where one is among flat
    /// ones; and by far more than it would say without the warp.
    #[test]
    fn corners_are_as_well_known_as_is_stated() {
        for (sizes, least) in [([0.15; 3], 0.7), ([0.15, 0.0, 0.0], 0.5)] {
            let (mut off, mut stated, mut flat) = (0.0, 0.0, 0.0);
            for seed in 0..SEEDS {
                let (models, _, common, step) = fitted(sizes, 100 + seed);
                let all = warps(&step.warps, &step.shared);
                // The first one, which is bent.
                let (model, reduced) = (&models[0], step.markers[0].as_ref().unwrap());
                let miss = model.corners(&common.lens).into_iter().zip(corners(PLACES[0])).map(|(c, place)| c - place);
                off += miss.map(|m| m.norm_squared()).sum::<f64>();
                let plain = corner_covariance(model, &common.lens, reduced, &step.shared).trace();
                (flat, stated) = (flat + plain, stated + plain + all[0].as_ref().unwrap().covariance.trace());
            }
            let rms = |sum: f64| (sum / (8 * SEEDS) as f64).sqrt();
            println!("{sizes:?}: {:.4} px off, {:.4} stated, {:.4} without the warp", rms(off), rms(stated), rms(flat));
            let ratio = rms(stated) / rms(off);
            assert!((least..1.6).contains(&ratio) && off > 4.0 * flat, "{sizes:?}: {off} {stated} {flat}");
        }
    }
}
