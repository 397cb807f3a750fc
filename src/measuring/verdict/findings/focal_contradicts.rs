//! The focal length in a photo's record is not the one that the picture shows.

use super::{Case, Explanation, Finding, Rule};
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "focal-contradicts", codes: &["focal-length-contradicts"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("focal-length-contradicts", Level::Warn)];

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
