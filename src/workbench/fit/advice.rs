//! Whether a fit is fit for use, and what to do where it is not.

use super::fitted::{Advice, CameraFit};
use super::halves::MOST_SHAPE_PX;
use crate::words::{Figure, Phrase, phrase};

/// Fewer photos than this are no fit.
const LEAST_PHOTOS: usize = 5;
/// Fewer than this say little of how photos differ.
const ENOUGH_PHOTOS: usize = 10;
/// Largest standard uncertainty of the projection, px, that nine tenths of
/// the frame may have besides focal length and centre, which every photo has
/// its own of: more would rule over the corners' own noise.
const MOST_U_PX: f64 = 0.2;
/// Largest relative standard uncertainty of the mean focal length.
const MOST_U_FOCAL: f64 = 2e-3;
/// Halves that differ by this many times what is stated are no fit.
const MOST_RATIO: f64 = 25.0;

fn warn(said: Phrase) -> Advice {
    Advice { forbids: false, said }
}

fn forbid(said: Phrase) -> Advice {
    Advice { forbids: true, said }
}

/// Everything there is to say.
pub(super) fn advice(fit: &CameraFit) -> Vec<Advice> {
    let mut all = Vec::new();
    photos(fit, &mut all);
    coverage(fit, &mut all);
    tilt(fit, &mut all);
    uncertainty(fit, &mut all);
    halves(fit, &mut all);
    if fit.noise_factor > 3.0 {
        all.push(warn(phrase!("fit-advice-noise", factor = Figure::fixed(fit.noise_factor, 1))));
    }
    all
}

fn photos(fit: &CameraFit, all: &mut Vec<Advice>) {
    let (used, out) = (fit.photos.len(), fit.rejected.len());
    if used < LEAST_PHOTOS {
        all.push(forbid(phrase!("fit-advice-too-few", count = used)));
    } else if used < ENOUGH_PHOTOS {
        all.push(warn(phrase!("fit-advice-few", count = used)));
    }
    if out > used / 2 {
        all.push(forbid(phrase!("fit-advice-many-out", left_out = out, used = used)));
    }
}

/// Names of parts of the picture, or what stands for none of them.
fn parts(fit: &CameraFit, none: Phrase) -> Vec<Phrase> {
    let parts = fit.coverage.empty_parts();
    if parts.is_empty() { vec![none] } else { parts.into_iter().map(|part| phrase!("fit-part", part = part)).collect() }
}

fn coverage(fit: &CameraFit, all: &mut Vec<Advice>) {
    let share = fit.coverage.share();
    if fit.coverage.empty_parts().is_empty() && share > 0.8 {
        return;
    }
    let fill = parts(fit, phrase!("fit-part", part = "edges"));
    let said = phrase!("fit-advice-coverage", share = Figure::fixed(100.0 * share, 0), parts = fill);
    all.push(if share < 0.6 { forbid(said) } else { warn(said) });
}

fn tilt(fit: &CameraFit, all: &mut Vec<Advice>) {
    let tilt = fit.coverage.tilt_deg;
    if tilt < 15.0 {
        all.push(forbid(phrase!("fit-advice-alike", tilt = Figure::fixed(tilt, 0))));
    } else if tilt < 35.0 {
        all.push(warn(phrase!("fit-advice-tilt", tilt = Figure::fixed(tilt, 0))));
    }
    if fit.coverage.turn_deg < 45.0 {
        all.push(warn(phrase!("fit-advice-turn")));
    }
}

fn uncertainty(fit: &CameraFit, all: &mut Vec<Advice>) {
    let relative = fit.u_focal_relative();
    if relative.is_nan() || relative > MOST_U_FOCAL {
        let (u, most) = (Figure::fixed(100.0 * relative, 2), Figure::fixed(100.0 * MOST_U_FOCAL, 2));
        all.push(forbid(phrase!("fit-advice-focal", u = u, most = most)));
    }
    let mut u: Vec<f64> = fit.shape_field.iter().map(|p| p.u_px.unwrap_or(f64::INFINITY)).collect();
    u.sort_by(f64::total_cmp);
    let most = u.get(u.len() * 9 / 10).copied().unwrap_or(f64::INFINITY);
    if most.is_infinite() {
        all.push(forbid(phrase!("fit-advice-dark")));
    } else if most > MOST_U_PX {
        let fill = parts(fit, phrase!("fit-part", part = "corners"));
        let (u, most) = (Figure::fixed(most, 2), Figure::plain(MOST_U_PX));
        all.push(forbid(phrase!("fit-advice-frame", u = u, most = most, parts = fill)));
    }
    if fit.bend_mm > 1.0 {
        all.push(warn(phrase!("fit-advice-bent", bend = Figure::fixed(fit.bend_mm, 1))));
    }
}

fn halves(fit: &CameraFit, all: &mut Vec<Advice>) {
    let Some(halves) = &fit.halves else {
        all.push(warn(phrase!("fit-advice-no-halves")));
        return;
    };
    if !halves.alike() {
        let (shape, most) = (Figure::fixed(halves.shape_px, 2), Figure::plain(MOST_SHAPE_PX));
        all.push(forbid(phrase!("fit-advice-other-lens", shape = shape, most = most)));
    }
    if halves.agree() {
        return;
    }
    let (ratio, most) = (Figure::fixed(halves.ratio.sqrt(), 1), Figure::fixed(halves.largest_px, 2));
    all.push(if halves.ratio > MOST_RATIO {
        forbid(phrase!("fit-advice-halves-changed", ratio = ratio, most = most))
    } else {
        warn(phrase!("fit-advice-halves-enlarged", ratio = ratio, most = most))
    });
}

/// A model whose residuals are smaller by this factor fits better, not by chance: thousands of corners have a say.
const BETTER: f64 = 0.9;

/// What to say where the other lens model fits the same photos better.
pub(super) fn better(fit: &CameraFit, other: &CameraFit) -> Option<Advice> {
    let (own, others) = (fit.halves.as_ref()?, other.halves.as_ref()?);
    if other.rms_px > BETTER * fit.rms_px || others.shape_px > own.shape_px || other.photos.len() < fit.photos.len() {
        return None;
    }
    Some(forbid(phrase!(
        "fit-advice-better-model",
        model = other.profile.lens.model.name(),
        rms = Figure::fixed(other.rms_px, 3),
        own_rms = Figure::fixed(fit.rms_px, 3),
        shape = Figure::fixed(others.shape_px, 2),
        own_shape = Figure::fixed(own.shape_px, 2),
    )))
}
