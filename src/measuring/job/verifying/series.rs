//! Attempts of one series: what stood the same is adjusted together, so that
//! nobody takes photos until one lot happens to pass.

use crate::job::opening::{Opened, compare};
use crate::marker::{Carrier, Role};
use crate::record::{AttemptPhoto, AttemptRecord, JobRecord};
use crate::verdict::findings::Moved;
use crate::verdict::{body_called, figure};
use crate::words::{Language, Phrase, phrase};

/// A difference above this chance is no sign of a move.
const SAME: f64 = 1e-2;
/// Coarser comparisons than this prove no standstill, mm and degrees (1 sigma): three of the one make the
/// 5 mm that are promised to be found.
const FINEST_MM: f64 = 5.0 / 3.0;
const FINEST_DEG: f64 = 0.08;

/// Attempts that are looked at together, at most: each is adjusted with each
/// other one, and nobody tries as often with a stand that stays.
const MOST_ATTEMPTS: usize = 8;

/// What is known of two attempts beside each other.
#[derive(Debug, Clone, PartialEq)]
enum Beside {
    /// Stand and vehicle stood the same.
    Same,
    /// They did not, or it can't be told: in words.
    Apart(Phrase),
}

/// The attempts of a job's series among all jobs, by index, itself included,
/// in the order of their numbers. Sensors of one vehicle share a series too:
/// attempts have the same sheet and kit. Of very many, those nearest in order.
pub(in crate::job) fn attempts(jobs: &[Option<&Opened>], own: usize) -> Vec<usize> {
    let Some(job) = jobs[own] else { return Vec::new() };
    let Some(series) = &job.folder.job.series else { return vec![own] };
    let mut all: Vec<usize> = (0..jobs.len())
        .filter(|i| {
            jobs[*i].is_some_and(|other| {
                other.folder.job.series.as_ref() == Some(series)
                    && other.folder.setup.name == job.folder.setup.name
                    && other.kit() == job.kit()
            })
        })
        .collect();
    all.sort_by_key(|i| (jobs[*i].and_then(|j| j.folder.job.attempt), *i));
    nearest(&all, own)
}

/// The part of an order around one of its members, no longer than [`MOST_ATTEMPTS`].
fn nearest(order: &[usize], own: usize) -> Vec<usize> {
    let place = order.iter().position(|i| *i == own).unwrap_or(0);
    let first = place.saturating_sub(MOST_ATTEMPTS / 2).min(order.len().saturating_sub(MOST_ATTEMPTS));
    order.iter().skip(first).take(MOST_ATTEMPTS).copied().collect()
}

/// The attempts that stood as `own` stood, and the words for every other one.
pub(in crate::job) fn standing_alike(
    jobs: &[Option<&Opened>],
    attempts: &[usize],
    own: usize,
) -> Vec<(usize, Option<Phrase>)> {
    let others = attempts.iter().filter(|i| **i != own);
    others
        .filter_map(|i| {
            let beside = beside(jobs[own]?, jobs[*i]?);
            Some((
                *i,
                match beside {
                    Beside::Same => None,
                    Beside::Apart(why) => Some(why),
                },
            ))
        })
        .collect()
}

fn beside(a: &Opened, b: &Opened) -> Beside {
    let joined = joined(a, &[b]);
    let states: Vec<Option<usize>> = (0..joined.views.len()).map(|j| Some(usize::from(j >= a.views.len()))).collect();
    let Some(link) = link(a, b) else {
        return Beside::Apart(phrase!("moves-apart-unlinked"));
    };
    let problem = joined.problem();
    let Some(moves) = compare(&problem, &states, |c| changes(c, &link)) else {
        return Beside::Apart(phrase!("moves-apart-unsettled"));
    };
    match moves.iter().find(|m| m.chance < SAME || m.is_large()) {
        Some(m) => {
            let (mm, degrees) = (figure(m.mm, 1), figure(m.degrees, 2));
            let body = body_called(&a.folder.kit, &m.name);
            return Beside::Apart(phrase!("moves-apart-elsewhere", body = body, mm = mm, degrees = degrees));
        }
        None if !moves.iter().any(|m| m.is_stand) => {
            return Beside::Apart(phrase!("moves-apart-stand-unseen"));
        }
        None => {}
    }
    match moves.iter().find(|m| m.u_mm > FINEST_MM || m.u_degrees > FINEST_DEG) {
        Some(Moved { name, .. }) => {
            Beside::Apart(phrase!("moves-apart-untold", body = body_called(&a.folder.kit, name)))
        }
        None => Beside::Same,
    }
}

/// What joins two attempts: floor sheets that both show, else a wheel plate.
fn link(a: &Opened, b: &Opened) -> Option<Role> {
    let kit = &a.folder.kit;
    let seen = |job: &Opened, k: usize| job.views.iter().any(|v| v.shows(k));
    let both = |role: Role| kit.with_role(role).any(|k| seen(a, k) && seen(b, k));
    [Role::Floor, Role::RearLeftWheel, Role::RearRightWheel, Role::FrontLeftWheel, Role::FrontRightWheel]
        .into_iter()
        .find(|role| both(*role))
}

fn changes(carrier: &Carrier, link: &Role) -> bool {
    carrier.role != *link && (carrier.role == Role::Target || carrier.role.is_on_vehicle())
}

/// The first job with the photos of the others behind its own.
pub(in crate::job) fn joined(own: &Opened, others: &[&Opened]) -> Opened {
    let mut joined = own.clone();
    for other in others {
        let at: Vec<usize> =
            other.assignment.cameras.iter().map(|camera| index_of(&mut joined.assignment.cameras, camera)).collect();
        for ((photo, view), camera) in other.photos.iter().zip(&other.views).zip(&other.assignment.photos) {
            let mut photo = photo.clone();
            photo.name = format!("{}/{}", other.folder.job.job, photo.name);
            joined.photos.push(photo);
            let mut view = view.clone();
            // Where its stand stood before it was moved is no matter of this job.
            view.views.retain(|v| !other.steps.is_earlier(v.carrier));
            for v in &mut view.views {
                let (carrier, state) = other.steps.origin(v.carrier);
                v.carrier = own.steps.body(carrier, state);
            }
            if let Ok(camera) = camera {
                view.camera = at[*camera];
            }
            joined.views.push(view);
            joined.assignment.photos.push(camera.clone().map(|c| at[c]));
        }
    }
    joined
}

fn index_of<T: Clone + PartialEq>(all: &mut Vec<T>, one: &T) -> usize {
    all.iter().position(|x| x == one).unwrap_or_else(|| {
        all.push(one.clone());
        all.len() - 1
    })
}

/// What the record says of one attempt of the series.
pub(in crate::job) fn attempt_record(job: &Opened, alone: &JobRecord, apart: Option<&Option<Phrase>>) -> AttemptRecord {
    AttemptRecord {
        job: job.folder.job.job.clone(),
        attempt: job.folder.job.attempt,
        taken: alone.context.taken.clone(),
        verdict_alone: alone.verdict,
        together: apart.is_none_or(Option::is_none),
        why_apart: apart.and_then(Option::as_ref).map(|p| p.say(Language::English)),
        why_apart_phrase: apart.cloned().flatten(),
        photos: job.photos.iter().map(|p| AttemptPhoto { file: p.name.clone(), sha256: p.sha256.clone() }).collect(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn of_many_attempts_the_nearest_are_looked_at() {
        let order: Vec<usize> = (0..100).rev().collect();
        assert_eq!(nearest(&order[..3], 98), [99, 98, 97]);
        assert_eq!(nearest(&order, 50), [54, 53, 52, 51, 50, 49, 48, 47]);
        assert_eq!(nearest(&order, 99), [99, 98, 97, 96, 95, 94, 93, 92]);
        assert_eq!(nearest(&order, 0), [7, 6, 5, 4, 3, 2, 1, 0]);
    }
}
