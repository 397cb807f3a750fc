//! A photo was taken with digital zoom or another focal length.

use super::{Case, Finding, Rule};
use crate::pose::Extra;
use crate::quantity::rounded;
use crate::verdict::Level;

pub(super) const RULE: Rule = Rule {
    codes: &["photo-zoomed"],
    title: "Zoomed",
    rationale: "The camera file holds for one focal length; a zoomed photo makes everything seem nearer.",
    method: "EXIF digital zoom ratio above 1.02, or the solved focal length of a photo more than 1 % and five standard \
             uncertainties off its prior, or the score test of a free focal length as best explanation.",
    find,
};

/// From here on EXIF's ratio is a zoom, not a rounding.
const ZOOM: f64 = 1.02;
const LEAST: f64 = 0.01;
const SIGMAS: f64 = 5.0;

fn find(case: &Case) -> Vec<Finding> {
    (0..case.photos.len()).filter_map(|j| zoomed(case, j)).collect()
}

fn zoomed(case: &Case, j: usize) -> Option<Finding> {
    let file = case.photos[j].file;
    let remedy = "Take it again without zoom.";
    if let Some(ratio) = case.photos[j].exif.digital_zoom.filter(|z| *z > ZOOM) {
        let message =
            format!("{file} was taken with {} x digital zoom (its EXIF says so). {remedy}", rounded(ratio, 2));
        return Some(Finding::new("photo-zoomed", Level::Void, message).in_photo(file));
    }
    let (scene, problem) = (case.scene?, case.problem?);
    let solved = scene.photos.get(j)?.as_ref()?;
    let u = problem.cameras[problem.photos[j].camera].per_photo.u_focal_relative;
    let adjusted = u * solved.nuisance[0];
    let from_score =
        case.culprit(|e| *e == Extra::PhotoFocal { photo: j }).map(|s| s.test.estimate[0]).filter(|f| f.abs() > LEAST);
    let from_prior = (adjusted.abs() > LEAST && solved.nuisance[0].abs() > SIGMAS).then_some(adjusted);
    let factor = from_score.map(|f| f + adjusted).or(from_prior)?;
    let message = format!(
        "{file} fits a focal length {} % {} than its camera file allows: zoomed, cropped, or another lens. {remedy}",
        rounded(100.0 * factor.abs(), 0),
        if factor > 0.0 { "longer" } else { "shorter" }
    );
    Some(Finding::new("photo-zoomed", Level::Void, message).in_photo(file))
}
