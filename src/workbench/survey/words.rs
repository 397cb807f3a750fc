//! The survey in words for the terminal.

use nalgebra::Vector3;

use super::length::LengthCheck;
use super::surveyed::{CarrierSurvey, MarkerSurvey, Survey};
use crate::shown::{fixed, signed};
use crate::words::{Figure, Language, say};

/// Found minus stated of one marker, as people read it.
pub(super) fn marker_row(marker: &MarkerSurvey, language: Language) -> [String; 6] {
    let three = |v: &Vector3<f64>, shown: fn(f64, u8, Language) -> String| {
        [v.x, v.y, v.z].map(|v| shown(v, 2, language)).join(" ")
    };
    [
        marker.id.to_string(),
        marker.photos.to_string(),
        three(&marker.moved_mm, signed),
        three(&marker.u_shape_mm, fixed),
        three(&marker.u_centre_mm, fixed),
        signed(marker.turned_rad.norm().to_degrees(), 2, language),
    ]
}

/// Heads of [`marker_row`].
pub(super) fn heads(language: Language) -> [String; 6] {
    [
        say!(language, "fit-survey-column-marker"),
        say!(language, "fit-survey-column-photos"),
        say!(language, "fit-survey-column-moved"),
        say!(language, "fit-survey-column-u-shape"),
        say!(language, "fit-survey-column-u-centre"),
        say!(language, "fit-survey-column-turned"),
    ]
}

/// One length and what the others say of it.
pub(super) fn length_words(check: &LengthCheck, language: Language) -> String {
    say!(
        language,
        "fit-length",
        length = check.length.to_string(),
        against = if check.alone { "sizes" } else { "others" },
        expected = Figure::fixed(check.expected_mm, 2),
        u = Figure::fixed(check.u_expected_mm, 2),
        score = signed(check.normalized_error, 2, language),
        agrees = if check.agrees() { "yes" } else { "no" },
    )
}

/// Where the scale comes from and what the printer did.
pub(super) fn scale_words(survey: &Survey, language: Language) -> String {
    let [scale, u] = survey.print_scale.map(|s| 100.0 * s);
    say!(
        language,
        "fit-scale",
        source = if survey.measured_scale { "lengths" } else { "sizes" },
        scale = signed(scale, 3, language),
        u = Figure::fixed(u, 3),
    )
}

fn carrier_words(carrier: &CarrierSurvey, language: Language) -> String {
    let rms = |f: &dyn Fn(&MarkerSurvey) -> f64| {
        (carrier.markers.iter().map(f).sum::<f64>() / (3.0 * carrier.markers.len() as f64)).sqrt()
    };
    let mut text = say!(
        language,
        "fit-survey-carrier",
        name = &carrier.name,
        count = carrier.markers.len(),
        moved = Figure::fixed(rms(&|m| m.moved_mm.norm_squared()), 2),
        known = Figure::fixed(rms(&|m| m.u_shape_mm.norm_squared()), 3),
    );
    text.push('\n');
    let rows: Vec<[String; 6]> =
        std::iter::once(heads(language)).chain(carrier.markers.iter().map(|m| marker_row(m, language))).collect();
    let width = |column: usize| rows.iter().map(|r| r[column].chars().count()).max().unwrap_or(0);
    let widths = [0, 1, 2, 3, 4, 5].map(width);
    for [id, photos, moved, shape, full, turned] in &rows {
        text += &format!(
            "  {id:>0$} {photos:>1$}  {moved:<2$}  {shape:<3$}  {full:<4$}  {turned:>5$}\n",
            widths[0], widths[1], widths[2], widths[3], widths[4], widths[5]
        );
    }
    text
}

/// Everything that the terminal says of a survey.
pub fn words(survey: &Survey, language: Language) -> String {
    let used = survey.photos.iter().filter(|p| p.rms_px.is_some()).count();
    let mut text = say!(
        language,
        "fit-survey-head",
        name = &survey.kit.name,
        markers = survey.markers().count(),
        carriers = survey.carriers.len(),
        used = used,
        count = survey.photos.len(),
        factor = Figure::fixed(survey.noise_factor, 2),
        freedom = Figure::fixed(survey.degrees_of_freedom, 0),
    );
    text.push_str("\n\n");
    for carrier in &survey.carriers {
        text += &carrier_words(carrier, language);
    }
    let mut line = |words: String| {
        text.push_str(&words);
        text.push('\n');
    };
    line(format!("\n{}", scale_words(survey, language)));
    for check in &survey.lengths {
        line(length_words(check, language));
    }
    line(say!(language, "fit-survey-file", off = Figure::fixed(survey.u_found_mm, 2)));
    if let Some(halves) = &survey.halves {
        line(say!(
            language,
            "fit-survey-halves",
            first = halves.photos[0],
            second = halves.photos[1],
            rms = Figure::fixed(halves.rms_mm, 3),
            most = Figure::fixed(halves.largest_mm.0, 2),
            marker = halves.largest_mm.1.to_string(),
            ratio = Figure::fixed(halves.ratio.sqrt(), 2),
            agree = if halves.agree() { "yes" } else { "no" },
        ));
    }
    for photo in survey.photos.iter().filter(|p| p.rms_px.is_none()) {
        line(say!(language, "fit-survey-photo-out", file = &photo.file));
    }
    for left in &survey.left_out {
        line(say!(language, "fit-survey-left-out", what = left.what.clone(), why = left.why.clone()));
    }
    for advice in &survey.advice {
        let kind = if advice.forbids { "forbids" } else { "note" };
        line(say!(language, "fit-advice", kind = kind, advice = advice.said.clone()));
    }
    line(say!(language, "fit-for-use", answer = if survey.fit_for_use() { "yes" } else { "no" }));
    text
}
