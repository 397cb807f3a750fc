//! Whether a fit is fit for use, and what to do where it is not.

use super::camera_fit::CameraFit;
use super::halves::MOST_SHAPE_PX;

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

/// One thing to say about a fit.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Advice {
    /// Whether it rules out using the camera.
    pub forbids: bool,
    /// What is wrong and what to do.
    pub text: String,
}

fn warn(text: String) -> Advice {
    Advice { forbids: false, text }
}

fn forbid(text: String) -> Advice {
    Advice { forbids: true, text }
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
        all.push(warn(format!(
            "the corners scatter {:.1} times as much as the detector states: check that the board is flat and printed \
             as its file says; the stated uncertainties allow for it",
            fit.noise_factor
        )));
    }
    all
}

fn photos(fit: &CameraFit, all: &mut Vec<Advice>) {
    let (used, out) = (fit.photos.len(), fit.rejected.len());
    if used < LEAST_PHOTOS {
        all.push(forbid(format!("only {used} photos could be used: take 12 to 20 of the board")));
    } else if used < ENOUGH_PHOTOS {
        all.push(warn(format!("{used} photos say little of how photos differ: take 12 to 20")));
    }
    if out > used / 2 {
        all.push(forbid(format!("{out} photos were left out, {used} used: see why, and take new ones")));
    }
}

fn coverage(fit: &CameraFit, all: &mut Vec<Advice>) {
    let share = fit.coverage.share();
    let empty = fit.coverage.empty_parts();
    if empty.is_empty() && share > 0.8 {
        return;
    }
    let percent = 100.0 * share;
    let fill = if empty.is_empty() { "its edges".to_owned() } else { empty.join(", ") };
    let text = format!("the board was seen in {percent:.0} % of the frame: fill {fill} (of the picture as stored)");
    all.push(if share < 0.6 { forbid(text) } else { warn(text) });
}

fn tilt(fit: &CameraFit, all: &mut Vec<Advice>) {
    let tilt = fit.coverage.tilt_deg;
    if tilt < 15.0 {
        all.push(forbid(format!(
            "the photos look alike: the board's direction differs by {tilt:.0} deg at most; tilt the board (or walk \
             round it) by 30 to 45 deg to the left, to the right, up and down"
        )));
    } else if tilt < 35.0 {
        all.push(warn(format!("tilt the board more: its direction differs by {tilt:.0} deg at most, 60 deg is good")));
    }
    if fit.coverage.turn_deg < 45.0 {
        all.push(warn(
            "all photos have the board the same way up: turn the camera by a quarter for some of them".to_owned(),
        ));
    }
}

fn uncertainty(fit: &CameraFit, all: &mut Vec<Advice>) {
    let relative = fit.u_focal_relative();
    if relative.is_nan() || relative > MOST_U_FOCAL {
        all.push(forbid(format!(
            "the focal length is known to {:.2} % only ({:.2} % is needed): more photos with the board tilted more",
            100.0 * relative,
            100.0 * MOST_U_FOCAL
        )));
    }
    let mut u: Vec<f64> = fit.shape_field.iter().map(|p| p.u_px.unwrap_or(f64::INFINITY)).collect();
    u.sort_by(f64::total_cmp);
    let most = u.get(u.len() * 9 / 10).copied().unwrap_or(f64::INFINITY);
    if most.is_infinite() {
        all.push(forbid(
            "the fitted lens shows nothing at all in a tenth of the frame or more: its distortion was not determined \
             there, fill the frame with the board"
                .to_owned(),
        ));
    } else if most > MOST_U_PX {
        let fill = fit.coverage.empty_parts();
        let fill = if fill.is_empty() { "its corners".to_owned() } else { fill.join(", ") };
        all.push(forbid(format!(
            "a tenth of the frame is known to no better than {most:.2} px ({MOST_U_PX} px is needed): fill {fill}"
        )));
    }
    if fit.bend_mm > 1.0 {
        all.push(warn(format!(
            "the board is bent by {:.1} mm: glue it to a flat plate (glass, aluminium) and fit again",
            fit.bend_mm
        )));
    }
}

fn halves(fit: &CameraFit, all: &mut Vec<Advice>) {
    let Some(halves) = &fit.halves else {
        all.push(warn("too few photos to compare two halves of them".to_owned()));
        return;
    };
    if !halves.alike() {
        all.push(forbid(format!(
            "two halves of the photos show different lenses: their projections differ by {:.2} px somewhere in the frame, \
             focal length and centre apart ({MOST_SHAPE_PX} px is the most); the lens model is the wrong one, the lens \
             changed between the photos, or too few of them reach that part",
            halves.shape_px
        )));
    }
    if halves.agree() {
        return;
    }
    let text = format!(
        "two halves of the photos differ by {:.1} times what is stated (up to {:.2} px)",
        halves.ratio.sqrt(),
        halves.largest_px
    );
    all.push(if halves.ratio > MOST_RATIO {
        forbid(format!("{text}: the lens changed between them, or the board did"))
    } else {
        warn(format!("{text}; the stated uncertainties were enlarged by that factor"))
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
    let name = other.profile.lens.model.name();
    Some(forbid(format!(
        "the lens is not of this model: fit it with --model {name}, which leaves {:.3} px of residuals instead of {:.3} \
         px, and whose halves differ by {:.2} px instead of {:.2} px (focal length and centre apart)",
        other.rms_px, fit.rms_px, others.shape_px, own.shape_px
    )))
}
