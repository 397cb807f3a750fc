//! The fit in words for the terminal.

use super::fitted::CameraFit;
use crate::camera::LensModel;
use crate::shown::fixed;
use crate::words::{Figure, Language, phrase, say};

/// A lens model's parameters with their units, in the covariance's order.
pub(super) fn names(model: LensModel, language: Language) -> Vec<(String, &'static str)> {
    let of_picture = ["focal-u", "focal-v", "centre-u", "centre-v"];
    let mut names: Vec<(String, &str)> =
        of_picture.iter().map(|name| (say!(language, "fit-parameter", name = *name), " px")).collect();
    let distortion: &[&str] = match model {
        LensModel::BrownConrady => &["k1", "k2", "p1", "p2", "k3"],
        LensModel::KannalaBrandt => &["k1", "k2", "k3", "k4"],
    };
    names.extend(distortion.iter().map(|name| ((*name).to_owned(), "")));
    names
}

/// Each parameter with its value and standard uncertainty, as people read them.
pub(super) fn parameter_rows(fit: &CameraFit, language: Language) -> Vec<[String; 3]> {
    let values = super::state::parameters(&fit.profile.lens);
    let all = names(fit.profile.lens.model, language).into_iter();
    all.zip(values.iter().zip(&fit.u_parameters)).map(|(name, (value, u))| row(name, *value, *u, language)).collect()
}

/// A parameter's name, value and standard uncertainty.
pub(super) fn row((name, unit): (String, &str), value: f64, u: f64, language: Language) -> [String; 3] {
    let places = (1 - u.max(1e-9).log10().floor() as i32).clamp(0, 9) as u8;
    [name, format!("{}{unit}", fixed(value, places, language)), format!("{}{unit}", fixed(u, places, language))]
}

/// Rows of parameters for the terminal.
pub(super) fn table(rows: &[[String; 3]]) -> String {
    let width = rows.iter().map(|[name, ..]| name.chars().count()).max().unwrap_or(0);
    rows.iter().map(|[name, value, u]| format!("  {name:<width$} {value:>14}  +- {u}\n")).collect()
}

/// Whether a fit may be used, as the last line says it.
pub(super) fn fit_for_use(is: bool, language: Language) -> String {
    say!(language, "fit-for-use", answer = if is { "yes" } else { "no" })
}

/// Everything that the terminal says of a fit.
pub fn words(fit: &CameraFit, language: Language) -> String {
    let p = &fit.profile;
    let [width, height] = p.image_size_px;
    let mut text = String::new();
    let mut line = |words: String| {
        text.push_str(&words);
        text.push('\n');
    };
    line(say!(
        language,
        "fit-head",
        name = &p.name,
        model = p.lens.model.name(),
        width = width,
        height = height,
        count = fit.photos.len(),
    ));
    line(say!(
        language,
        "fit-head-noise",
        rms = Figure::fixed(fit.rms_px, 3),
        noise = Figure::fixed(p.u_noise_px.unwrap_or(f64::NAN), 3),
        factor = Figure::fixed(fit.noise_factor, 2),
        freedom = Figure::fixed(fit.degrees_of_freedom, 0),
    ));
    line(format!("\n{}", say!(language, "fit-parameters-head")));
    line(table(&parameter_rows(fit, language)));
    line(say!(
        language,
        "fit-per-photo",
        focal = Figure::fixed(100.0 * p.per_photo.u_focal_relative, 3),
        focal_freedom = Figure::fixed(fit.per_photo_degrees[0], 0),
        centre = Figure::fixed(p.per_photo.u_centre_px, 2),
        centre_freedom = Figure::fixed(fit.per_photo_degrees[1], 0),
    ));
    line(say!(language, "fit-turn", turn = Figure::fixed(fit.turn_deg, 3)));
    line(say!(language, "fit-board", bend = Figure::fixed(fit.bend_mm, 2), flex = Figure::fixed(fit.flex_mm, 2)));
    line(say!(
        language,
        "fit-seen",
        share = Figure::fixed(100.0 * fit.coverage.share(), 0),
        tilt = Figure::fixed(fit.coverage.tilt_deg, 0),
        turn = Figure::fixed(fit.coverage.turn_deg, 0),
    ));
    if let Some(halves) = &fit.halves {
        line(say!(
            language,
            "fit-halves",
            first = halves.photos[0],
            second = halves.photos[1],
            most = Figure::fixed(halves.largest_px, 2),
            shape = Figure::fixed(halves.shape_px, 2),
            ratio = Figure::fixed(halves.ratio.sqrt(), 2),
            agree = if halves.agree() { "yes" } else { "no" },
        ));
    }
    for photo in &fit.rejected {
        line(say!(language, "fit-left-out", file = &photo.file, why = photo.why.clone()));
    }
    for advice in &fit.advice {
        let kind = if advice.forbids { "forbids" } else { "note" };
        line(phrase!("fit-advice", kind = kind, advice = advice.said.clone()).say(language));
    }
    line(fit_for_use(fit.fit_for_use(), language));
    text
}
