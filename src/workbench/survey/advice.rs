//! Whether a survey is fit for use, and what to do where it is not.

use super::surveyed::{Advice, CarrierSurvey, Survey};
use crate::words::{Figure, Phrase, phrase};

/// Fewer photos than this are no survey.
const LEAST_PHOTOS: usize = 4;
/// The guide's number.
const ENOUGH_PHOTOS: usize = 12;
/// A marker that is known no better than a carefully glued one was not worth the photos, mm.
const MOST_U_MM: f64 = 0.3;
/// A length is measured wrong, not unluckily, beyond this E_n (four standard uncertainties).
const MOST_E_N: f64 = 2.0;
/// Halves that differ by this many times what is stated are no survey.
const MOST_RATIO: f64 = 25.0;

/// Places this far from the file's, 1 sigma per coordinate, are another kit's, mm.
const MOST_OFF_MM: f64 = 20.0;

/// Everything there is to say.
pub(super) fn advice(survey: &Survey) -> Vec<Advice> {
    let mut all = Vec::new();
    let mut say = |forbids: bool, said: Phrase| all.push(Advice { forbids, said });
    let used = survey.photos.iter().filter(|p| p.rms_px.is_some()).count();
    if used < LEAST_PHOTOS {
        say(true, phrase!("fit-survey-too-few", count = used, enough = ENOUGH_PHOTOS));
    } else if used < ENOUGH_PHOTOS / 2 {
        say(false, phrase!("fit-survey-few", count = used, enough = ENOUGH_PHOTOS));
    }
    for check in survey.lengths.iter().filter(|c| !c.agrees()) {
        let said = phrase!(
            "fit-survey-length",
            length = check.length.to_string(),
            against = if check.alone { "sizes" } else { "others" },
            expected = Figure::fixed(check.expected_mm, 2),
            score = Figure::fixed(check.normalized_error, 1),
        );
        say(!check.alone && check.normalized_error.abs() > MOST_E_N, said);
    }
    if !survey.measured_scale {
        say(false, phrase!("fit-survey-no-length"));
    }
    frame(survey, &mut say);
    weak(survey, &mut say);
    match &survey.halves {
        Some(halves) if !halves.agree() => {
            let moved = halves.ratio > MOST_RATIO;
            let said = phrase!(
                "fit-survey-halves-differ",
                ratio = Figure::fixed(halves.ratio.sqrt(), 1),
                most = Figure::fixed(halves.largest_mm.0, 2),
                marker = halves.largest_mm.1.to_string(),
                outcome = if moved { "moved" } else { "enlarged" },
            );
            say(moved, said);
        }
        Some(_) => {}
        None => say(false, phrase!("fit-survey-no-halves")),
    }
    if survey.noise_factor > 3.0 {
        say(false, phrase!("fit-survey-noise", factor = Figure::fixed(survey.noise_factor, 1)));
    }
    all
}

/// Whether anything says where the carriers' own frames are.
fn frame(survey: &Survey, say: &mut impl FnMut(bool, Phrase)) {
    if survey.u_found_mm > MOST_OFF_MM {
        say(true, phrase!("fit-survey-far-off", off = Figure::fixed(survey.u_found_mm, 0)));
    }
    let known = |c: &CarrierSurvey| c.markers.iter().map(|m| m.u_centre_mm.max()).fold(0.0, f64::max);
    for carrier in survey.carriers.iter().filter(|c| survey.u_found_mm <= MOST_OFF_MM && known(c) > MOST_OFF_MM) {
        let known = Figure::fixed(known(carrier), 0);
        say(true, phrase!("fit-survey-loose", carrier = &carrier.name, known = known));
    }
}

fn weak(survey: &Survey, say: &mut impl FnMut(bool, Phrase)) {
    let ids: Vec<String> =
        survey.markers().filter(|m| m.u_shape_mm.max() > MOST_U_MM).map(|m| m.id.to_string()).collect();
    if !ids.is_empty() {
        let count = ids.len();
        say(false, phrase!("fit-survey-weak", count = count, markers = ids, most = Figure::plain(MOST_U_MM)));
    }
}
