//! Which print keeps the photos from settling: one that one photo shows where the others don't have it.
//!
//! Another print of its code hangs about, and a photo shows that one alone; or a sheet was carried off between two photos. A body
//! with one marker then stands where the other photo can't see it at all, and no step leads from there to a solution.

use super::adjust::adjust;
use super::views::Problem;
use super::work::Options;

/// Bodies that are tried, at most: each is an adjustment.
const MOST_TRIED: usize = 12;

/// The body of one marker, by index in the kit, without which an adjustment that did not settle does, with the photos still
/// linked. `None` where there is none, or more than one: then it does not say which.
pub fn astray(problem: &Problem, options: &Options) -> Option<usize> {
    let carriers = &problem.kit.carriers;
    let may_be = |k: &usize| carriers[*k].markers.len() == 1 && problem.photos.iter().any(|p| p.shows(*k));
    let bodies = (0..carriers.len()).filter(may_be).take(MOST_TRIED);
    let mut guilty = bodies.filter(|k| settles_without(problem, *k, options));
    let first = guilty.next()?;
    guilty.next().is_none().then_some(first)
}

fn settles_without(problem: &Problem, carrier: usize, options: &Options) -> bool {
    let mut without = problem.clone();
    for photo in &mut without.photos {
        photo.views.retain(|v| v.carrier != carrier);
    }
    let shows = |j: usize| !without.photos[j].views.is_empty();
    // A photo that falls out takes with it whatever did not fit.
    adjust(&without, options).is_ok_and(|scene| (0..scene.photos.len()).all(|j| scene.photos[j].is_some() || !shows(j)))
}
