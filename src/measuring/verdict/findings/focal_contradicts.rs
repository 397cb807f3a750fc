//! The focal length in a photo's record is not the one that the picture shows.

use super::{Case, Explanation, Finding, Rule};
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["focal-length-contradicts"],
    title: "Focal length of the record",
    rationale: "A record that states another angle of view than the picture has belongs to another picture, or the picture was cut.",
    method: "The focal length for 35 mm film in the record against the solved one of the photo, by the picture's diagonal (43.27 mm) \
             and by its longer side (36 mm), with and without the digital zoom that the record states, for makers \
             differ: named where it leaves all of them by more than 10 %, half a millimetre and three standard \
             uncertainties. A cut of less than that is not seen, and a record without the value is not checkable.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "focal-length-contradicts",
    level: Level::Warn,
    title: "Record of another focal length",
    meaning: "The photo's record states an angle of view that the picture does not have. That is no proof of intent.",
    cause: "The picture was cut and enlarged, a record was copied from another photo, or the device writes a wrong value.",
    look: "Take a new photo with the same camera and lens and compare the value in its details.",
    remedy: "Give the original file; where the device always writes that value, note it in the job.",
}];

/// Makers' values differ by some percent from what their lenses do.
const LEAST: f64 = 0.10;
/// Values are whole millimetres.
const ROUNDING_MM: f64 = 0.5;
const SIGMAS: f64 = 3.0;
/// Film's longer side and diagonal, mm.
const FILM: [f64; 2] = [36.0, 43.266_615];

fn find(case: &Case) -> Vec<Finding> {
    (0..case.photos.len()).filter_map(|j| of_photo(case, j)).collect()
}

fn of_photo(case: &Case, j: usize) -> Option<Finding> {
    let photo = &case.photos[j];
    let stated = photo.exif.focal_length_35mm?;
    let (scene, problem) = (case.scene?, case.problem?);
    let solved = scene.photos.get(j)?.as_ref()?;
    let u_relative = problem.cameras[problem.photos[j].camera].per_photo.u_focal_relative;
    let [width, height] = photo.size_px.map(|n| n as f64);
    let sides = [width.max(height), width.hypot(height)];
    let focal_px = f64::midpoint(solved.lens.focal_px[0], solved.lens.focal_px[1]);
    let shown = [0, 1].map(|k| focal_px * FILM[k] / sides[k]);
    let zooms = [1.0, photo.exif.digital_zoom.unwrap_or(1.0)];
    let allowed = |value: f64| LEAST * value + ROUNDING_MM + SIGMAS * u_relative * value;
    let fits = shown.iter().any(|s| zooms.iter().any(|z| (stated * z - s).abs() <= allowed(*s)));
    // Between the two definitions every value is some maker's.
    let between = zooms.iter().any(|z| (shown[0].min(shown[1])..=shown[0].max(shown[1])).contains(&(stated * z)));
    if fits || between {
        return None;
    }
    let message = phrase!(
        "findings-focal-contradicts",
        photo = photo.file,
        stated = figure(stated, 0),
        least = figure(shown[0].min(shown[1]), 1),
        most = figure(shown[0].max(shown[1]), 1)
    );
    Some(Finding::new("focal-length-contradicts", Level::Warn, message).in_photo(photo.file))
}
