//! From readings to sightings: the photometric fit, gated, with covariances.

use nalgebra::{SMatrix, Vector2};

use super::decode::{Reading, centre};
use super::fit::{Round, Step, fit_alone, fit_together, misfit};
use super::model::{LIGHT, Model};
use super::normal::Reduced;
use super::pattern::Pattern;
use super::pixels::choose_pixels;
use super::profile::Profile;
use super::residuals::{Residuals, corner_covariance};
use super::rows::{Rows, with_rows};
use super::shadow::{Spot, shadow};
use super::shared::{Common, LENS, SHARED};
use super::sighting::{Sighting, Sightings};
use super::warp::{Warp, warps};
use crate::cores;
use crate::marker::Dictionary;
use crate::num::median;
use crate::photo::Luma;

/// Farthest that a fit may carry the marker's middle, px and share of the side.
const MOST_MOVED: (f64, f64) = (1.5, 0.12);
/// Most noise, share of the contrast, and most pixels not explained, of a fit that counts.
const MOST_NOISE: f64 = 0.2;
const MOST_MISFIT: f64 = 0.25;

/// Noise, share of the contrast, from which on a shadow is looked for.
const SHADED: f64 = 0.06;
/// Noise that is left once a shadow is allowed for, share of that before.
const SHADE_GAIN: f64 = 0.6;

/// Pixels of a marker, more or less, that take part at first, then, and in the last round.
const FIRST_PIXELS: f64 = 500.0;
const SOME_PIXELS: f64 = 2000.0;
const PIXELS: f64 = 8000.0;
/// A marker whose corners still move by so much, px, needs more rounds.
const SETTLED_PX: f64 = 0.1;
/// Most rounds beyond the usual ones.
const MORE_ROUNDS: usize = 3;
/// Neighbouring residuals are correlated (noise reduction, JPEG): by how much covariances grow
/// for that is averaged over the photo, together with this for so many markers.
const INFLATION: (f64, f64) = (1.5, 2.0);
/// A marker's own figure counts beyond this times the photo's: it is uncertain itself.
const OWN_INFLATION: f64 = 1.5;
/// What the model cannot hold of a camera (1 sigma of each corner's coordinates): px for all, and
/// share of the edge offset for markers of this side and smaller, whose edges overlap (measured
/// on rendered photos of sharpening cameras).
const MODEL_ERROR_PX: f64 = 0.006;
const MODEL_ERROR_SHARE: f64 = 0.055;
/// What is left of the photo's edge offset, share of it (1 sigma, measured likewise).
const OFFSET_ERROR_SHARE: f64 = 0.03;
const OVERLAP_SIDE_PX: f64 = 60.0;

/// Gains of a photo's markers that spread less need no unknowns, nor those of one marker alone: prints and light are
/// uneven like that.
const LEAST_SPREAD: f32 = 0.02;
const LEAST_OWN: f32 = 0.08;
/// What spreads more is no gain but, say, a moving hand (strong tone mapping shows .09).
const MOST_SPREAD: f32 = 0.12;
/// Side of the markers that tell, px: in smaller ones a patch holds several cells, and takes up what the profile misses.
const TELLING_PX: f64 = 60.0;
/// Fewer patches do not speak for a photo.
const FEW_PATCHES: f32 = 300.0;
/// The photo's markers count as so many patches of each where it is about how its gain spreads.
const OTHERS: f32 = 60.0;
/// Patches as they are before they are free show so much less than there is (measured on photos of known truth: the
/// fit's own light and profile take up the rest).
const GROWN: f32 = 3.5;
/// What patches cannot hold of gains (1 sigma of each corner's coordinates), px for a spread of one: between what a strongly
/// changed photo (.05) and one by night (.2) show.
const GAIN_ERROR_PX: f64 = 0.1;

/// Inflation of covariances from which on warps are looked for: of the photo (plain ones 1.3), and of one marker (3 at most).
const WARPED: f64 = 2.0;
const WARPED_ALONE: f64 = 4.0;

/// Fits all readings of a photo together.
pub(super) fn refine(photo: &Luma, readings: Vec<Reading>, dictionary: &Dictionary) -> Sightings {
    let mut common = Common { profile: Profile::TYPICAL, lens: [0.0; LENS], sharpening: 0.0, sharpened: false };
    let first = |reading: &Reading| {
        let mut slot = start(photo, reading, dictionary, &common);
        with_rows(|rows| {
            fit_alone(&mut slot, &common, 2, rows);
            check(photo, reading, dictionary, &common, &mut slot, rows);
        });
        slot
    };
    let mut models: Vec<Option<Model>> = cores::map(&readings, first);
    fit_together(&mut models, &mut common, Round::Usual);
    settle(&mut models, &common);
    choose_all(photo, &mut models, &common, SOME_PIXELS);
    common.sharpened = true;
    let step = fit_together(&mut models, &mut common, Round::Gain);
    if free_gains(&mut models, &step) {
        fit_together(&mut models, &mut common, Round::Usual);
    }
    let step = fit_together(&mut models, &mut common, Round::Last);
    let warps = if may_be_warped(&step) {
        let step = fit_together(&mut models, &mut common, Round::Warp);
        warps(&step.warps, &step.shared)
    } else {
        Vec::new()
    };
    choose_all(photo, &mut models, &common, PIXELS);
    let mut step = fit_together(&mut models, &mut common, Round::Last);
    for _ in 0..MORE_ROUNDS {
        if models.iter().flatten().all(|m| m.moved < SETTLED_PX) {
            break;
        }
        settle(&mut models, &common);
        step = fit_together(&mut models, &mut common, Round::Last);
    }
    let markers = finish_all(&readings, &models, &common, (&step, &warps));
    summarize(markers, &models, &common, &step.shared)
}

/// What the fit explains, with its covariance; what does not look like its pattern is no marker,
/// or none that can be measured.
fn finish_all(
    readings: &[Reading],
    models: &[Option<Model>],
    common: &Common,
    (step, warps): (&Step, &[Option<Warp>]),
) -> Vec<Sighting> {
    let inflation = photo_inflation(step.evidence.iter().flatten().map(|e| e.inflation).collect());
    let mut markers = Vec::new();
    let fitted = readings.iter().zip(models).zip(step.markers.iter().zip(&step.evidence)).enumerate();
    for (i, ((reading, model), (reduced, evidence))) in fitted {
        let warp = warps.get(i).and_then(Option::as_ref);
        let (Some(model), Some(reduced), Some(evidence)) = (model, reduced, evidence) else { continue };
        let Some(mut sighting) = finish(reading, model, common, (reduced, evidence), &step.shared) else { continue };
        let gain = model.gain.map_or(0.0, |gain| GAIN_ERROR_PX * f64::from(gain.spread));
        let floor = model_error(&sighting, display_offset(model, common));
        // A shadow or a stain can make one marker worse than the photo's others.
        let grown = sighting.covariance_px2 * inflation.max(evidence.inflation / OWN_INFLATION);
        let warped = warp.map_or_else(SMatrix::zeros, |w| w.covariance);
        sighting.covariance_px2 = grown + SMatrix::identity() * (floor.powi(2) + gain.powi(2)) + warped;
        sighting.warp_px = warp.map(|w| w.rms_px).filter(|rms| *rms > 0.0);
        markers.push(sighting);
    }
    markers
}

/// Gives a gain of its own to each patch of the markers whose residuals want it; whether any did.
fn free_gains(models: &mut [Option<Model>], step: &Step) -> bool {
    let pairs = || models.iter().zip(&step.gains).filter_map(|(m, s)| Some((m.as_ref()?, (*s)?)));
    let told = || pairs().filter(|(m, _)| m.side() > TELLING_PX).map(|(_, (spread, count))| (spread, count as f32));
    let count: f32 = told().map(|(_, n)| n).sum();
    let photo = (told().map(|(s, n)| s * s * n).sum::<f32>() / count.max(FEW_PATCHES)).sqrt();
    let mut any = false;
    for (slot, spread) in models.iter_mut().zip(&step.gains) {
        let (Some(model), Some((own, count))) = (slot, spread) else { continue };
        let count = *count as f32;
        let spread = ((own * own * count + photo * photo * OTHERS) / (count + OTHERS)).sqrt();
        let alone = model.side() > TELLING_PX && spread > LEAST_OWN && spread < MOST_SPREAD;
        if photo > LEAST_SPREAD && photo < MOST_SPREAD || alone {
            model.free_gain(GROWN * spread);
            any = true;
        }
    }
    any
}

/// Whether residuals have more in common with their neighbours than flat prints of a plainly developed photo show: looking for
/// warps takes time.
fn may_be_warped(step: &Step) -> bool {
    let factors: Vec<f64> = step.evidence.iter().flatten().map(|e| e.inflation).collect();
    factors.iter().any(|own| *own > WARPED_ALONE) || photo_inflation(factors) > WARPED
}

fn model_error(sighting: &Sighting, offset: f64) -> f64 {
    let overlap = (OVERLAP_SIDE_PX / sighting.side_px().max(1.0)).min(1.0);
    MODEL_ERROR_PX.hypot(MODEL_ERROR_SHARE * offset * overlap)
}

/// By how much covariances grow for correlated residuals.
fn photo_inflation(mut factors: Vec<f64>) -> f64 {
    factors.sort_by(f64::total_cmp);
    // Markers that are partly covered do not speak for the others.
    let kept = &factors[..factors.len() - factors.len() / 5];
    let (prior, count) = INFLATION;
    ((prior * count + kept.iter().sum::<f64>()) / (count + kept.len() as f64)).max(1.0)
}

/// More rounds for those that started far off.
fn settle(models: &mut [Option<Model>], common: &Common) {
    cores::map_mut(models, |_, slot| {
        if slot.as_ref().is_some_and(|m| m.moved > SETTLED_PX) {
            with_rows(|rows| fit_alone(slot, common, 10, rows));
        }
    });
}

fn choose_all(photo: &Luma, models: &mut [Option<Model>], common: &Common, most: f64) {
    cores::map_mut(models, |_, slot| {
        if slot.as_mut().is_some_and(|m| choose_pixels(m, photo, common, most).is_none()) {
            *slot = None;
        }
    });
}

/// Helps a marker that fits badly, and drops it where that is in vain.
fn check(
    photo: &Luma,
    reading: &Reading,
    dictionary: &Dictionary,
    common: &Common,
    slot: &mut Option<Model>,
    rows: &mut Rows,
) {
    let mut fit = misfit(slot.as_ref(), common, rows);
    if !fits(fit) {
        if let Some(better) = restart(photo, reading, dictionary, common, rows) {
            *slot = Some(better);
        }
        fit = misfit(slot.as_ref(), common, rows);
    }
    if let Some((noise, _)) = fit.filter(|(noise, _)| *noise >= SHADED) {
        fit = part_light(photo, slot, common, noise, rows).or(fit);
    }
    if !fits(fit) {
        *slot = None;
    }
}

/// A marker's pixels, whose rows are at hand, as a shadow is looked for among them.
fn spots(model: &Model, rows: &Rows) -> Vec<Spot> {
    // Columns of the rows that are the pattern coordinates, -1 to 1, and the grey between black and white, 0 to 1.
    let [x, y, e] = [LIGHT + 1, LIGHT + 2, LIGHT + 3].map(|c| rows.derivatives(c).map(f64::from));
    x.zip(y).zip(e).zip(&model.pixels).map(|(((x, y), e), p)| [x, y, e, f64::from(p.grey)]).collect()
}

/// Looks for a shadow's edge across a marker, whose rows are at hand, and fits again without it; how
/// well it fits then, where that is much better.
fn part_light(
    photo: &Luma,
    slot: &mut Option<Model>,
    common: &Common,
    noise: f64,
    rows: &mut Rows,
) -> Option<(f64, f64)> {
    let model = slot.as_mut()?;
    let found = shadow(&spots(model, rows), 2.0 * model.sigma() / model.side())?;
    let before = model.clone();
    model.shadow = Some(found);
    model.light = [found.light.0, 0.0, 0.0, found.light.1, 0.0, 0.0];
    model.moved = f64::INFINITY;
    if choose_pixels(model, photo, common, FIRST_PIXELS).is_some() {
        fit_alone(slot, common, 3, rows);
    }
    let after = misfit(slot.as_ref(), common, rows).filter(|(after, _)| *after < SHADE_GAIN * noise);
    if after.is_none() {
        *slot = Some(before);
    }
    after
}

fn fits(misfit: Option<(f64, f64)>) -> bool {
    misfit.is_some_and(|(noise, unexplained)| noise < MOST_NOISE && unexplained < MOST_MISFIT)
}

/// Starts again with one corner after the other put where the three others would have it.
fn restart(
    photo: &Luma,
    reading: &Reading,
    dictionary: &Dictionary,
    common: &Common,
    rows: &mut Rows,
) -> Option<Model> {
    (0..4).find_map(|k| {
        let mut reading = reading.clone();
        let q = &reading.quad;
        reading.quad[k] = q[(k + 1) % 4] + q[(k + 3) % 4] - q[(k + 2) % 4];
        let mut slot = start(photo, &reading, dictionary, common);
        fit_alone(&mut slot, common, 4, rows);
        fits(misfit(slot.as_ref(), common, rows)).then_some(slot).flatten()
    })
}

fn start(photo: &Luma, reading: &Reading, dictionary: &Dictionary, common: &Common) -> Option<Model> {
    let pattern = Pattern::new(dictionary, reading.id);
    let mut model = Model::new(photo, pattern, &reading.quad, reading.greys)?;
    choose_pixels(&mut model, photo, common, FIRST_PIXELS)?;
    Some(model)
}

/// The sighting of a fitted marker, or `None` where the fit went astray.
fn finish(
    reading: &Reading,
    model: &Model,
    common: &Common,
    (reduced, evidence): (&Reduced, &Residuals),
    shared: &SMatrix<f64, SHARED, SHARED>,
) -> Option<Sighting> {
    let corners = model.corners(&common.lens);
    let side = super::quad::area(&reading.quad).abs().sqrt();
    let limit = MOST_MOVED.0.max(MOST_MOVED.1 * side);
    let near = (centre(&corners) - centre(&reading.quad)).norm() < limit;
    let explained = reduced.noise < MOST_NOISE * model.light[3] && reduced.misfit < MOST_MISFIT;
    if !near || !explained || !model.light.iter().all(|l| l.is_finite()) {
        return None;
    }
    let covariance = corner_covariance(model, &common.lens, reduced, shared);
    Some(Sighting {
        id: reading.id,
        wrong_bits: reading.wrong_bits,
        corners_px: corners,
        corner_valid: evidence.seen,
        covariance_px2: covariance,
        contrast: (model.light[3] / 255.0).min(1.0),
        blur_px: model.sigma(),
        warp_px: None,
    })
}

fn summarize(
    mut markers: Vec<Sighting>,
    models: &[Option<Model>],
    common: &Common,
    shared: &SMatrix<f64, SHARED, SHARED>,
) -> Sightings {
    markers.sort_by(|a, b| a.id.cmp(&b.id).then(position(a).x.total_cmp(&position(b).x)));
    let offsets: Vec<f64> = models.iter().flatten().map(|m| display_offset(m, common)).collect();
    let blurs: Vec<f64> = models.iter().flatten().map(Model::sigma).collect();
    let (offset, blur) = (median(offsets).unwrap_or(0.0), median(blurs).unwrap_or(0.0));
    // The profile's first parameter moves an edge by so many units of the blur.
    let found = blur * shared[(0, 0)].max(0.0).sqrt();
    let u_edge_offset_px = if markers.is_empty() { 0.0 } else { found.hypot(OFFSET_ERROR_SHARE * offset) };
    let gain_spread = median(models.iter().flatten().filter_map(|m| Some(f64::from(m.gain?.spread))));
    Sightings { markers, edge_offset_px: offset, u_edge_offset_px, blur_px: blur, gain_spread }
}

fn position(sighting: &Sighting) -> Vector2<f64> {
    sighting.corners_px.iter().sum::<Vector2<f64>>() / 4.0
}

/// How far outwards the half-way grey of a black edge lies of the true edge, px: what a
/// detector that works on grey levels would report.
fn display_offset(model: &Model, common: &Common) -> f64 {
    model.sigma() * common.profile.middle()
}
