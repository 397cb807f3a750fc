//! The photos were not taken with the camera of the camera file.

use super::{Case, Explanation, Finding, Open, PhotoProblem, Rule, Touches, focal::common_focal};
use crate::pose::Extra;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "camera-mismatch", codes: &["camera-mismatch"], touches: Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("camera-mismatch", Level::Stop)];

/// Residuals this many times the stated variance are no fit of the lens.
const MISFIT: f64 = 4.0;

fn find(case: &Case) -> Vec<Finding> {
    let mut found: Vec<Finding> = case.photos.iter().filter_map(by_exif).collect();
    found.extend(case.photos.iter().filter_map(mirrored));
    found.extend(half_turned(case).or_else(|| by_focal(case)).or_else(|| by_lens(case)));
    found
}

fn by_exif(photo: &super::PhotoFacts) -> Option<Finding> {
    let problem = photo.problem.as_ref().filter(|p| matches!(p, PhotoProblem::OtherCamera(_)))?;
    let finding = Finding::new(
        "camera-mismatch",
        Level::Stop,
        phrase!("findings-of-photo", photo = photo.file, why = problem.phrase()),
    );
    // It takes no part: the figures are the other photos'.
    Some(finding.in_photo(photo.file).touching(Touches::MovesOnly))
}

fn mirrored(photo: &super::PhotoFacts) -> Option<Finding> {
    photo.mirrored?;
    let message = phrase!("findings-mirrored", photo = photo.file);
    Some(Finding::new("camera-mismatch", Level::Stop, message).in_photo(photo.file).touching(Touches::MovesOnly))
}

fn by_focal(case: &Case) -> Option<Finding> {
    let (camera, factor) = common_focal(case)?;
    let message = phrase!(
        "findings-focal-of-all",
        length = if factor > 0.0 { "longer" } else { "shorter" },
        percent = figure(100.0 * factor.abs(), 0),
        camera = &case.problem?.cameras[camera].name
    );
    let message = case.with_rivals(message);
    let mut open = case.open();
    if open.is_empty() || !by_suspect(case) {
        open.push(Open::Focal(photos_of(case, camera)));
    }
    Some(Finding::new("camera-mismatch", Level::Stop, message).leaving(open))
}

/// Whether the common focal length is the best explanation, not what its prior gave way to.
fn by_suspect(case: &Case) -> bool {
    case.culprit(|e| matches!(e, Extra::Focal { photos } if photos.len() > 1)).is_some()
}

/// The photos of one camera.
fn photos_of(case: &Case, camera: usize) -> Vec<usize> {
    let photos = case.problem.map_or(&[][..], |p| &p.photos);
    (0..photos.len()).filter(|j| photos[*j].camera == camera && !photos[*j].views.is_empty()).collect()
}

fn half_turned(case: &Case) -> Option<Finding> {
    let suspect = case.culprit(|e| matches!(e, Extra::HalfTurned { .. }))?;
    let Extra::HalfTurned { photos, .. } = &suspect.extra else { return None };
    let message = case.with_rivals(phrase!("findings-half-turned", photos = case.files(photos)));
    Some(Finding::new("camera-mismatch", Level::Stop, message).leaving(case.open()))
}

fn by_lens(case: &Case) -> Option<Finding> {
    let suspect = case.culprit(|e| matches!(e, Extra::Lens { .. }))?;
    let (scene, problem) = (case.scene?, case.problem?);
    let Extra::Lens { photos } = &suspect.extra else { return None };
    let camera = problem.photos[*photos.first()?].camera;
    if let ([one], true) = (photos.as_slice(), photos_of(case, camera).len() > 1) {
        // The camera's other photos hold what is right: no misfit is too small where the test finds one.
        return Some(one_photo(case, *one, &problem.cameras[camera].name));
    }
    if scene.variance < MISFIT {
        return None;
    }
    let times = figure(scene.variance.sqrt(), 1);
    let message = phrase!("findings-lens-of-all", camera = &problem.cameras[camera].name, times = times);
    let message = case.with_rivals(message);
    Some(Finding::new("camera-mismatch", Level::Stop, message).leaving(case.open()))
}

/// One photo's lens is not that of the others.
fn one_photo(case: &Case, photo: usize, camera: &str) -> Finding {
    let file = case.photos[photo].file;
    let message = case.with_rivals(phrase!("findings-lens-of-one", photo = file, camera = camera));
    Finding::new("camera-mismatch", Level::Stop, message).in_photo(file).leaving(case.open())
}
