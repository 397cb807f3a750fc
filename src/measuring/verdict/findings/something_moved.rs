//! The stand, a sheet, a plate or the vehicle stood elsewhere in some photos.

use super::suspects::{LEVEL, Suspect};
use super::{Case, Explanation, Finding, Rule, Touches};
use crate::geom::deg;
use crate::marker::Role;
use crate::pose::Extra;
use crate::quantity::rounded;
use crate::verdict::Level;

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
pub(super) fn how_far((mm, degrees): (f64, f64)) -> String {
    if mm > 500.0 || degrees > 10.0 {
        return "by far".to_owned();
    }
    format!("by about {} mm and {} deg", rounded(mm, 0), rounded(degrees, 2))
}

/// The photos by name: "a.jpg", "b.jpg and c.jpg".
pub(super) fn names(case: &Case, photos: &[usize]) -> String {
    let files: Vec<&str> = photos.iter().map(|j| case.photos[*j].file).collect();
    match files.split_last() {
        Some((last, rest)) if !rest.is_empty() => format!("{} and {last}", rest.join(", ")),
        _ => files.concat(),
    }
}

/// The photo that a finding is about, where it is one.
pub(super) fn about(finding: Finding, case: &Case, photos: &[usize]) -> Finding {
    match photos {
        [one] => finding.in_photo(case.photos[*one].file),
        _ => finding,
    }
}

fn moved(case: &Case, suspect: &Suspect, carrier: usize, photos: &[usize]) -> Option<Finding> {
    let how_far = how_far(amount(suspect)?);
    let body = &case.kit.carriers[carrier];
    let (files, rivals) = (names(case, photos), case.rivals());
    let (code, message) = match body.role {
        Role::Target => (
            "stand-moved-between-photos",
            format!(
                "{} stands elsewhere in {files} than in the other photos, {how_far}. Let nobody touch the stand and take all photos again.{rivals}",
                body.name
            ),
        ),
        arch if arch.is_arch() => (
            "vehicle-moved-between-photos",
            format!(
                "{} sits elsewhere over its wheel in {files} than in the other photos, {how_far}: it was bumped, somebody got in or out, or the suspension was still settling. Let nobody aboard and take all photos again.{rivals}",
                body.name
            ),
        ),
        _ => (
            "vehicle-moved-between-photos",
            format!(
                "{} sits elsewhere in {files} than in the other photos, {how_far}: it was bumped, or the vehicle moved. Fix it and take all photos again.{rivals}",
                body.name
            ),
        ),
    };
    let finding = Finding::new(code, Level::Stop, message).on_carrier(&body.name).leaving(case.open());
    Some(about(finding, case, photos))
}

fn rolled(case: &Case, suspect: &Suspect, photos: &[usize]) -> Option<Finding> {
    let mm = suspect.test.estimate[0];
    if mm.abs() < LEAST_ROLL_MM {
        return None;
    }
    let message = format!(
        "The vehicle stands about {} mm further {} in {} than in the other photos. Chock the wheels, check the stand again and take all photos again.{}",
        rounded(mm.abs(), 0),
        if mm > 0.0 { "forward" } else { "rearward" },
        names(case, photos),
        case.rivals()
    );
    let finding = Finding::new("vehicle-moved-between-photos", Level::Stop, message).leaving(case.open());
    Some(about(finding, case, photos))
}

/// The vehicle went any way while the stand was moved.
fn nudged(case: &Case, suspect: &Suspect, photos: &[usize]) -> Option<Finding> {
    let (mm, degrees) = (suspect.test.estimate.rows(0, 2).norm(), deg(suspect.test.estimate[2].abs()));
    if mm < LEAST_ROLL_MM && degrees < LEAST_DEG {
        return None;
    }
    let message = format!(
        "The vehicle stands about {} mm elsewhere in {} than in the photos before the stand was moved, turned by {} deg: it was nudged. Chock the wheels and take two photos again, of all of it.{}",
        rounded(mm, 0),
        names(case, photos),
        rounded(degrees, 2),
        case.rivals()
    );
    let finding = Finding::new("vehicle-moved-between-photos", Level::Stop, message).leaving(case.open());
    Some(about(finding, case, photos))
}
