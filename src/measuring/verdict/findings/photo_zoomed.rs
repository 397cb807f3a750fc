//! A photo was taken with digital zoom or another focal length.

use super::{Case, Explanation, Finding, Rule, Touches, camera_mismatch};
use crate::pose::Extra;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["photo-zoomed"],
    title: "Zoomed",
    rationale: "The camera file holds for one focal length; a zoomed photo makes everything seem nearer.",
    method: "EXIF digital zoom ratio above 1.02, or the solved focal length of a photo more than 1 % and five standard \
             uncertainties off its prior (chance 6e-7), or the score test of a free focal length as best explanation (chance below 1e-4). \
             Where all photos are off by the same factor it is `camera-mismatch`.",
    touches: Touches::Everything,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "photo-zoomed",
    level: Level::Void,
    title: "Photo zoomed",
    meaning: "One photo shows everything larger or smaller than its camera can at the focal length of the camera file.",
    cause: "Two fingers on the screen, the phone's automatic change of lens, or a crop that was saved at the old size.",
    look: "The phone's gallery shows zoom or focal length among the photo's details; the picture shows less of the bay than its neighbours.",
    remedy: "Set the camera to its plain 1x lens and take the photo again.",
}];

/// From here on EXIF's ratio is a zoom, not a rounding.
const ZOOM: f64 = 1.02;
/// Smaller differences are focus breathing, relative.
pub(super) const LEAST: f64 = 0.01;
const SIGMAS: f64 = 5.0;

fn find(case: &Case) -> Vec<Finding> {
    let all = camera_mismatch::common_focal(case).is_some();
    (0..case.photos.len()).filter_map(|j| by_exif(case, j).or_else(|| by_fit(case, j).filter(|_| !all))).collect()
}

fn by_exif(case: &Case, j: usize) -> Option<Finding> {
    let file = case.photos[j].file;
    let ratio = case.photos[j].exif.digital_zoom.filter(|z| *z > ZOOM)?;
    let message = phrase!("findings-zoomed-by-record", photo = file, times = figure(ratio, 2));
    Some(Finding::new("photo-zoomed", Level::Void, message).in_photo(file))
}

/// By how much a photo's solved focal length leaves its prior, relative, where that is no chance.
pub(super) fn off_prior(case: &Case, j: usize) -> Option<f64> {
    let (scene, problem) = (case.scene?, case.problem?);
    let solved = scene.photos.get(j)?.as_ref()?;
    let u = problem.cameras[problem.photos[j].camera].per_photo.u_focal_relative;
    let adjusted = u * solved.nuisance[0];
    (adjusted.abs() > LEAST && solved.nuisance[0].abs() > SIGMAS).then_some(adjusted)
}

fn by_fit(case: &Case, j: usize) -> Option<Finding> {
    let file = case.photos[j].file;
    let (scene, problem) = (case.scene?, case.problem?);
    let solved = scene.photos.get(j)?.as_ref()?;
    let adjusted = problem.cameras[problem.photos[j].camera].per_photo.u_focal_relative * solved.nuisance[0];
    let from_score = case
        .culprit(|e| matches!(e, Extra::Focal { photos } if photos.as_slice() == [j]))
        .map(|s| s.test.estimate[0])
        .filter(|f| f.abs() > LEAST);
    let factor = from_score.map(|f| f + adjusted).or_else(|| off_prior(case, j))?;
    let message = phrase!(
        "findings-zoomed",
        length = if factor > 0.0 { "longer" } else { "shorter" },
        photo = file,
        percent = figure(100.0 * factor.abs(), 0)
    );
    let message = if from_score.is_some() { case.with_rivals(message) } else { message };
    Some(Finding::new("photo-zoomed", Level::Void, message).in_photo(file))
}
