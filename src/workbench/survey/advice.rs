//! Whether a survey is fit for use, and what to do where it is not.

use super::compose::Survey;

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

/// One thing to say about a survey.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Advice {
    /// Whether it rules out using the surveyed kit.
    pub forbids: bool,
    /// What is wrong and what to do.
    pub text: String,
}

/// Everything there is to say.
pub(super) fn advice(survey: &Survey) -> Vec<Advice> {
    let mut all = Vec::new();
    let mut say = |forbids: bool, text: String| all.push(Advice { forbids, text });
    let used = survey.photos.iter().filter(|p| p.rms_px.is_some()).count();
    if used < LEAST_PHOTOS {
        say(true, format!("only {used} photos could be used: take {ENOUGH_PHOTOS} from all sides"));
    } else if used < ENOUGH_PHOTOS / 2 {
        say(false, format!("{used} photos leave little to contradict each other: take {ENOUGH_PHOTOS}"));
    }
    for check in survey.lengths.iter().filter(|c| !c.agrees()) {
        let against = if check.alone { "the marker sizes of the kit file" } else { "the other lengths" };
        say(
            !check.alone && check.normalized_error.abs() > MOST_E_N,
            format!(
                "the length {} disagrees with {against}: {:.2} mm was expected (E_n {:.1}); measure it again{}",
                check.length,
                check.expected_mm,
                check.normalized_error,
                if check.alone { ", or the prints are of another size than stated" } else { "" }
            ),
        );
    }
    if !survey.measured_scale {
        say(
            false,
            "no length was measured, so the scale is that of the stated marker sizes: measure one as long as possible \
             (--length)"
                .to_owned(),
        );
    }
    frame(survey, &mut say);
    weak(survey, &mut say);
    if let Some(halves) = &survey.halves {
        if !halves.agree() {
            let text = format!(
                "two halves of the photos differ by {:.1} times what is stated (up to {:.2} mm, marker {})",
                halves.ratio.sqrt(),
                halves.largest_mm.0,
                halves.largest_mm.1
            );
            let end = if halves.ratio > MOST_RATIO {
                "something moved between the photos: survey again, or carriers apart (--apart)"
            } else {
                "the stated uncertainties were enlarged by that factor"
            };
            say(halves.ratio > MOST_RATIO, format!("{text}: {end}"));
        }
    } else {
        say(
            false,
            "two halves of the photos cannot be compared: they are too few, or half of them does not fix the markers"
                .to_owned(),
        );
    }
    if survey.noise_factor > 3.0 {
        say(
            false,
            format!(
                "corners scatter {:.1} times as much as the detector states: flat markers? nothing moved? The stated \
                 uncertainties allow for it",
                survey.noise_factor
            ),
        );
    }
    all
}

/// Whether anything says where the carriers' own frames are.
fn frame(survey: &Survey, say: &mut impl FnMut(bool, String)) {
    if survey.u_found_mm > MOST_OFF_MM {
        say(
            true,
            format!(
                "markers sit {:.0} mm (1 sigma) from where the kit file has them, so that nothing says where hub datum \
                 or aim point are: is it this kit's file, are sheets swapped? Correct the centres in it and survey again",
                survey.u_found_mm
            ),
        );
    }
    let known = |c: &super::compose::CarrierSurvey| c.markers.iter().map(|m| m.u_centre_mm.max()).fold(0.0, f64::max);
    for carrier in survey.carriers.iter().filter(|c| survey.u_found_mm <= MOST_OFF_MM && known(c) > MOST_OFF_MM) {
        say(
            true,
            format!(
                "markers of {} are known to {:.0} mm against its own frame (hub datum, aim point): the kit file says no \
                 better where they sit, measure them on the carrier and enter their centres",
                carrier.name,
                known(carrier)
            ),
        );
    }
}

fn weak(survey: &Survey, say: &mut impl FnMut(bool, String)) {
    let ids: Vec<String> =
        survey.markers().filter(|m| m.u_shape_mm.max() > MOST_U_MM).map(|m| m.id.to_string()).collect();
    if !ids.is_empty() {
        say(
            false,
            format!(
                "the place of marker {} is known no better than {MOST_U_MM} mm: take more photos of it, nearer and \
                 from both sides",
                ids.join(", ")
            ),
        );
    }
}
