//! Focal lengths of photos against their camera file.

use super::Case;
use crate::pose::Extra;

/// The focal factor by which all photos of one camera are off alike, if so.
pub(super) fn common_focal(case: &Case) -> Option<(usize, f64)> {
    let problem = case.problem?;
    if let Some(suspect) = case.culprit(|e| matches!(e, Extra::Focal { photos } if photos.len() > 1)) {
        let Extra::Focal { photos } = &suspect.extra else { return None };
        let factor = suspect.test.estimate[0];
        return (factor.abs() > LEAST).then_some((problem.photos[*photos.first()?].camera, factor));
    }
    (0..problem.cameras.len()).find_map(|camera| {
        let of_camera =
            |j: &usize| problem.photos[*j].camera == camera && case.scene.is_some_and(|s| s.photos[*j].is_some());
        let own: Vec<usize> = (0..problem.photos.len()).filter(of_camera).collect();
        let factors: Vec<f64> = own.iter().filter_map(|j| off_prior(case, *j)).collect();
        let (least, most) = factors.iter().fold((f64::MAX, f64::MIN), |(a, b), f| (a.min(*f), b.max(*f)));
        let alike = own.len() > 1 && factors.len() == own.len() && most - least < 2.0 * LEAST;
        alike.then(|| (camera, f64::midpoint(least, most)))
    })
}

/// Smaller differences are focus breathing, relative.
pub(super) const LEAST: f64 = 0.01;
const SIGMAS: f64 = 5.0;

/// By how much a photo's solved focal length leaves its prior, relative, where that is no chance.
pub(super) fn off_prior(case: &Case, j: usize) -> Option<f64> {
    let (scene, problem) = (case.scene?, case.problem?);
    let solved = scene.photos.get(j)?.as_ref()?;
    let u = problem.cameras[problem.photos[j].camera].per_photo.u_focal_relative;
    let adjusted = u * solved.nuisance[0];
    (adjusted.abs() > LEAST && solved.nuisance[0].abs() > SIGMAS).then_some(adjusted)
}
