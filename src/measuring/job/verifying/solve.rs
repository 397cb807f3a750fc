//! The scene of a job, or why there is none.

use crate::job::opening::Assignment;
use crate::pose::{self, Problem, Scene, adjust, astray};
use crate::verdict::findings::PhotoProblem;
use crate::verdict::sentences;
use crate::words::{Phrase, phrase};

/// Two views that agree are the least proof.
const LEAST_PHOTOS: usize = 2;

/// The scene, or in words why there is none.
pub(in crate::job) fn solve(problem: &Problem, names: &[&str], assignment: &mut Assignment) -> Result<Scene, Phrase> {
    let usable = assignment.photos.iter().filter(|p| p.is_ok()).count();
    if usable < LEAST_PHOTOS {
        return Err(match usable {
            0 => no_photo(assignment),
            _ => only_one(names, assignment),
        });
    }
    let options = pose::Options::default();
    let scene = adjust(problem, &options).map_err(|e| why_not_of(problem, &e, &options))?;
    for (j, photo) in scene.photos.iter().enumerate() {
        if photo.is_none() && assignment.photos[j].is_ok() {
            assignment.photos[j] = Err(PhotoProblem::NotLinked);
        }
    }
    if scene.photos.iter().flatten().count() < LEAST_PHOTOS {
        return Err(phrase!("advice-not-linked"));
    }
    Ok(scene)
}

/// Why a job's photos could not be adjusted: where one print alone stands in the way, which.
fn why_not_of(problem: &Problem, error: &pose::Error, options: &pose::Options) -> Phrase {
    let unsettled = matches!(error, pose::Error::NotSettled { .. });
    let body = unsettled.then(|| astray(problem, options)).flatten().map(|k| &problem.kit.carriers[k]);
    match body.and_then(|body| Some((body, body.markers.first()?))) {
        Some((body, marker)) => {
            phrase!("advice-not-settled-with", marker = marker.id.to_string(), name = &body.name)
        }
        None => why_no_scene(error),
    }
}

/// Why photos could not be adjusted.
pub(in crate::job) fn why_no_scene(error: &pose::Error) -> Phrase {
    match error {
        pose::Error::NothingSeen { photos } => phrase!("advice-nothing-seen", photos = *photos),
        pose::Error::NotSettled { .. } => phrase!("advice-not-settled"),
    }
}

/// Which photos can't be measured besides the one that can, and why.
fn only_one(names: &[&str], assignment: &Assignment) -> Phrase {
    let not = names.iter().zip(&assignment.photos).filter_map(|(name, p)| Some((name, p.as_ref().err()?)));
    let not: Vec<Phrase> =
        not.map(|(name, why)| phrase!("advice-photo-cannot", photo = *name, why = why.phrase())).collect();
    if not.is_empty() {
        return phrase!("advice-one-photo");
    }
    sentences(phrase!("advice-one-photo-because"), not)
}

/// Why no photo at all can be measured: the first one's reason stands for all.
fn no_photo(assignment: &Assignment) -> Phrase {
    match assignment.photos.iter().find_map(|p| p.as_ref().err()) {
        Some(problem) => phrase!("advice-no-usable-photo", why = problem.phrase()),
        None => phrase!("advice-no-photo"),
    }
}
