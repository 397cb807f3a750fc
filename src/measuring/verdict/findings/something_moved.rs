//! The stand, a sheet, a plate or the vehicle stood elsewhere in some photos.

use super::suspects::{LEVEL, Suspect};
use super::{Case, Explanation, Finding, Rule, Touches};
use crate::geom::deg;
use crate::marker::Role;
use crate::pose::Extra;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::{Phrase, phrase};

pub(super) const RULE: Rule = Rule {
    name: "something-moved",
    codes: &["stand-moved-between-photos", "vehicle-moved-between-photos"],
    touches: Touches::Everything,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[
    Explanation::of("stand-moved-between-photos", Level::Stop),
    Explanation::of("vehicle-moved-between-photos", Level::Stop),
];

/// Smaller moves are below what photos of a bay can tell from lens errors.
pub(super) const LEAST_MM: f64 = 2.5;
pub(super) const LEAST_DEG: f64 = 0.12;
pub(super) const LEAST_ROLL_MM: f64 = 1.5;
/// Estimates of a roll scatter by some 0.2 mm about it (sampled): what is stated to be found from 1.5 mm on is named from here on.
const NAMED_ROLL_MM: f64 = 1.2;

fn find(case: &Case) -> Vec<Finding> {
    let Some(suspect) = case.suspects.first().filter(|s| s.chance < LEVEL) else { return Vec::new() };
    match &suspect.extra {
        Extra::CarrierMoved { carrier, photos } if !case.kit.carriers[*carrier].role.is_wheel() => {
            moved(case, suspect, *carrier, photos).into_iter().collect()
        }
        Extra::GroupRolled { photos, .. } => rolled(case, suspect, photos).into_iter().collect(),
        Extra::GroupMoved { photos, .. } => nudged(case, suspect, photos).into_iter().collect(),
        _ => Vec::new(),
    }
}

/// How far a body moved, where that is more than nothing: mm and degrees.
pub(super) fn amount(suspect: &Suspect) -> Option<(f64, f64)> {
    let step = &suspect.test.estimate;
    let (mm, degrees) = (step.rows(0, 3).norm(), deg(step.rows(3, 3).norm()));
    (mm >= LEAST_MM || degrees >= LEAST_DEG).then_some((mm, degrees))
}

/// A step in words; one that is too long for a linear estimate is far.
pub(super) fn how_far((mm, degrees): (f64, f64)) -> Phrase {
    if mm > 500.0 || degrees > 10.0 {
        return phrase!("findings-step-far");
    }
    phrase!("findings-step", mm = figure(mm, 0), degrees = figure(degrees, 2))
}

/// The photo that a finding is about, where it is one.
pub(super) fn about(finding: Finding, case: &Case, photos: &[usize]) -> Finding {
    match photos {
        [one] => finding.in_photo(case.photos[*one].file),
        _ => finding,
    }
}

fn moved(case: &Case, suspect: &Suspect, carrier: usize, photos: &[usize]) -> Option<Finding> {
    let step = how_far(amount(suspect)?);
    let role = case.kit.carriers[carrier].role;
    let (body, files) = (case.body_first(carrier), case.files(photos));
    let (code, message) = match role {
        Role::Target => {
            ("stand-moved-between-photos", phrase!("findings-stand-moved", body = body, photos = files, step = step))
        }
        arch if arch.is_arch() => {
            ("vehicle-moved-between-photos", phrase!("findings-arch-moved", body = body, photos = files, step = step))
        }
        _ => ("vehicle-moved-between-photos", phrase!("findings-body-moved", body = body, photos = files, step = step)),
    };
    let finding = Finding::new(code, Level::Stop, case.with_rivals(message));
    let finding = finding.on_carrier(&case.kit.carriers[carrier].name).leaving(case.open());
    Some(about(finding, case, photos))
}

fn rolled(case: &Case, suspect: &Suspect, photos: &[usize]) -> Option<Finding> {
    let mm = suspect.test.estimate[0];
    if mm.abs() < NAMED_ROLL_MM {
        return None;
    }
    let way = if mm > 0.0 { "forward" } else { "rearward" };
    let message = phrase!("findings-vehicle-rolled", way = way, mm = figure(mm.abs(), 0), photos = case.files(photos));
    Some(vehicle(case, photos, message))
}

/// The vehicle went any way while the stand was moved.
fn nudged(case: &Case, suspect: &Suspect, photos: &[usize]) -> Option<Finding> {
    let (mm, degrees) = (suspect.test.estimate.rows(0, 2).norm(), deg(suspect.test.estimate[2].abs()));
    if mm < LEAST_ROLL_MM && degrees < LEAST_DEG {
        return None;
    }
    let (mm, degrees) = (figure(mm, 0), figure(degrees, 2));
    let message = phrase!("findings-vehicle-nudged", mm = mm, photos = case.files(photos), degrees = degrees);
    Some(vehicle(case, photos, message))
}

fn vehicle(case: &Case, photos: &[usize], message: Phrase) -> Finding {
    let message = case.with_rivals(message);
    let finding = Finding::new("vehicle-moved-between-photos", Level::Stop, message).leaving(case.open());
    about(finding, case, photos)
}
