//! A photo was taken with digital zoom or another focal length.

use super::focal::{LEAST, common_focal, off_prior};
use super::{Case, Explanation, Finding, Rule, Touches};
use crate::pose::Extra;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "photo-zoomed", codes: &["photo-zoomed"], touches: Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("photo-zoomed", Level::Void)];

/// From here on EXIF's ratio is a zoom, not a rounding.
const ZOOM: f64 = 1.02;

fn find(case: &Case) -> Vec<Finding> {
    let all = common_focal(case).is_some();
    (0..case.photos.len()).filter_map(|j| by_exif(case, j).or_else(|| by_fit(case, j).filter(|_| !all))).collect()
}

fn by_exif(case: &Case, j: usize) -> Option<Finding> {
    let file = case.photos[j].file;
    let ratio = case.photos[j].exif.digital_zoom.filter(|z| *z > ZOOM)?;
    let message = phrase!("findings-zoomed-by-record", photo = file, times = figure(ratio, 2));
    Some(Finding::new("photo-zoomed", Level::Void, message).in_photo(file))
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
