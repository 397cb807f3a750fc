//! Photos that take no part: they lie in the job's folder and it lists others, or they are of a step that no check is
//! about.

use super::{Case, Finding, PhotoFacts, Rule, Touches};
use crate::folder::{Phase, PhotoEntry};
use crate::marker::Role;
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "photos-not-listed", codes: &["record-incomplete"], touches: Touches::Nothing, find };

/// So many are named, the others counted.
const MOST_NAMED: usize = 6;

fn find(case: &Case) -> Vec<Finding> {
    let lying: Vec<&str> = case.unlisted.iter().map(|photo| photo.name.as_str()).collect();
    let not_listed =
        named(&lying).map(|(photos, more)| phrase!("findings-photos-not-listed", photos = photos, more = more));
    let not_asked = named(&of_no_check(case));
    let not_asked =
        not_asked.map(|(photos, more)| phrase!("findings-photos-of-no-check", photos = photos, more = more));
    let found = not_listed.into_iter().chain(not_asked);
    found.map(|message| Finding::new("record-incomplete", Level::Warn, message)).collect()
}

/// The first names, and how many more there are; `None` where there is none.
fn named(photos: &[&str]) -> Option<(String, usize)> {
    let first = &photos[..photos.len().min(MOST_NAMED)];
    (!photos.is_empty()).then(|| (first.join(", "), photos.len() - first.len()))
}

/// Photos of a sheet with several steps that show the stand in a step that no check is about, or in none: where it
/// stands there contradicts nothing.
fn of_no_check<'a>(case: &Case<'a>) -> Vec<&'a str> {
    if case.setup.steps.len() < 2 {
        return Vec::new();
    }
    let about = |step: &Option<String>| {
        let mut checks = case.setup.checks.iter().filter(|c| c.quantity.is_of_target());
        checks.any(|c| step.is_some() && (c.step.is_none() || c.step == *step) && !c.is_decided_by_reading(case.kit))
    };
    let entries = case.job.photo_entries.iter().flatten();
    let before: Vec<&PhotoEntry> = entries.filter(|e| e.phase != Some(Phase::After) && !about(&e.step)).collect();
    let listed = |photo: &&PhotoFacts| before.iter().any(|e| e.file == photo.file);
    case.photos.iter().filter(listed).filter(|photo| shows_a_stand(case, photo)).map(|photo| photo.file).collect()
}

fn shows_a_stand(case: &Case, photo: &PhotoFacts) -> bool {
    let of = |id: u32| case.kit.marker(id).map(|(carrier, _)| case.kit.carriers[carrier].role);
    photo.sightings.markers.iter().any(|m| of(m.id) == Some(Role::Target))
}
