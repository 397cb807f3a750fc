//! From readings to sightings: the photometric fit, gated, with covariances.

use nalgebra::{SMatrix, Vector2};

use super::decode::Reading;
use super::fit::{Reduced, fit_alone, fit_together};
use super::model::{Common, LENS, Model, SHARED};
use super::pattern::Pattern;
use super::profile::{Profile, SHAPE};
use super::sighting::{Sighting, Sightings};
use crate::marker::Dictionary;
use crate::photo::Luma;

/// Farthest that a fit may carry a corner, px and share of the side.
const MOST_MOVED: (f64, f64) = (1.5, 0.12);
/// Most noise, share of the contrast, and most pixels not explained, of a fit that counts.
const MOST_NOISE: f64 = 0.2;
const MOST_MISFIT: f64 = 0.25;

/// Pixels of a marker, more or less, that take part while it is fitted alone, then together.
const FIRST_PIXELS: f64 = 500.0;
const PIXELS: [f64; 2] = [700.0, 1800.0];
/// Neighbouring residuals are correlated (noise reduction, JPEG, model): measured on rendered photos.
const INFLATION: f64 = 5.5;

/// Fits all readings of a photo together.
pub(super) fn refine(photo: &Luma, readings: Vec<Reading>, dictionary: &Dictionary) -> Sightings {
    let mut common = Common { profile: Profile::TYPICAL, lens: [0.0; LENS] };
    let mut models: Vec<Option<Model>> = readings.iter().map(|r| start(photo, r, dictionary, &common)).collect();
    fit_alone(&mut models, &common, 2);
    let mut last = None;
    for most in PIXELS {
        choose_pixels(photo, &mut models, &common, most);
        for _ in 0..2 {
            last = Some(fit_together(&mut models, &mut common));
        }
    }
    let Some(step) = last else { return Sightings::default() };
    let finished = |((reading, model), reduced): ((&Reading, &Option<Model>), &Option<Reduced>)| {
        let fitted =
            model.as_ref().zip(reduced.as_ref()).and_then(|(m, r)| finish(reading, m, &common, r, &step.shared));
        // What neither reads cleanly nor looks like its pattern is no marker.
        fitted.or_else(|| (reading.hamming == 0).then(|| unfitted(reading)))
    };
    let markers = readings.iter().zip(&models).zip(&step.markers).filter_map(finished).collect();
    summarize(markers, &models, &common)
}

fn choose_pixels(photo: &Luma, models: &mut [Option<Model>], common: &Common, most: f64) {
    for slot in models {
        if slot.as_mut().is_some_and(|m| m.choose_pixels(photo, &common.lens, most).is_none()) {
            *slot = None;
        }
    }
}

fn start(photo: &Luma, reading: &Reading, dictionary: &Dictionary, common: &Common) -> Option<Model> {
    let pattern = Pattern::new(dictionary, reading.id);
    let mut model = Model::new(photo, pattern, &reading.quad, reading.greys)?;
    model.choose_pixels(photo, &common.lens, FIRST_PIXELS)?;
    Some(model)
}

/// The sighting of a fitted marker, or `None` where the fit went astray.
fn finish(
    reading: &Reading,
    model: &Model,
    common: &Common,
    reduced: &Reduced,
    shared: &SMatrix<f64, SHARED, SHARED>,
) -> Option<Sighting> {
    let corners = model.corners(&common.lens);
    let side = super::quad::area(&reading.quad).abs().sqrt();
    let limit = MOST_MOVED.0.max(MOST_MOVED.1 * side);
    let near = corners.iter().zip(&reading.quad).all(|(a, b)| (a - b).norm() < limit);
    let explained = reduced.noise < MOST_NOISE * model.light[3] && reduced.misfit < MOST_MISFIT;
    if !near || !explained || !model.light.iter().all(|l| l.is_finite()) {
        return None;
    }
    let (own, by_shared) = (&reduced.inverse, reduced.by_shared());
    let by_h = model.corners_by_h();
    let mut covariance = by_h * own.fixed_view::<8, 8>(0, 0) * by_h.transpose();
    let mut by_common = by_h * by_shared.fixed_view::<8, SHARED>(0, 0);
    let lens = model.corners_by_lens(&common.lens);
    for k in 0..LENS {
        let sum = by_common.column(SHAPE + k) + lens.column(k);
        by_common.set_column(SHAPE + k, &sum);
    }
    covariance += by_common * shared * by_common.transpose();
    Some(Sighting {
        id: reading.id,
        hamming: reading.hamming,
        corners_px: corners,
        corner_valid: [true; 4],
        covariance_px2: covariance * INFLATION,
        contrast: model.light[3] / 255.0,
        blur_px: model.sigma(),
    })
}

/// Where no fit succeeded: the sides' corners with a wide uncertainty.
fn unfitted(reading: &Reading) -> Sighting {
    Sighting {
        id: reading.id,
        hamming: reading.hamming,
        corners_px: reading.quad,
        corner_valid: [true; 4],
        covariance_px2: SMatrix::identity() * 0.25,
        contrast: (reading.greys.1 - reading.greys.0) / 255.0,
        blur_px: 1.0,
    }
}

fn summarize(mut markers: Vec<Sighting>, models: &[Option<Model>], common: &Common) -> Sightings {
    markers.sort_by(|a, b| a.id.cmp(&b.id).then(position(a).x.total_cmp(&position(b).x)));
    let mut offsets: Vec<f64> = models.iter().flatten().map(|m| display_offset(m, common)).collect();
    let mut blurs: Vec<f64> = models.iter().flatten().map(Model::sigma).collect();
    Sightings { markers, edge_offset_px: median(&mut offsets), u_edge_offset_px: 0.01, blur_px: median(&mut blurs) }
}

fn position(sighting: &Sighting) -> Vector2<f64> {
    sighting.corners_px.iter().sum::<Vector2<f64>>() / 4.0
}

/// How far outwards the half-way grey of a black edge lies of the true edge, px: what a
/// detector that works on grey levels would report.
fn display_offset(model: &Model, common: &Common) -> f64 {
    model.sigma() * common.profile.middle()
}

fn median(values: &mut [f64]) -> f64 {
    if values.is_empty() {
        return 0.0;
    }
    values.sort_by(f64::total_cmp);
    values[values.len() / 2]
}
