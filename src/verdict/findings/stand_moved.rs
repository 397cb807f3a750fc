//! The stand (or a sheet or plate) was moved between two photos.

use super::{Case, Finding, Rule};
use crate::geom::deg;
use crate::marker::Role;
use crate::pose::Extra;
use crate::quantity::rounded;
use crate::verdict::Level;

pub(super) const RULE: Rule = Rule {
    codes: &["stand-moved-between-photos", "vehicle-moved-between-photos"],
    title: "Something moved between the photos",
    rationale: "All photos are measured together. A stand that was nudged between two of them stands where neither shows it.",
    method: "Score test: a separate pose of the body in one photo. Needs two photos that are linked by other bodies too; \
             the best explanation of all suspects must be this one, with a chance below 1e-4, and larger than 2.5 mm or 0.12 deg.",
    find,
};

/// Smaller moves are below what photos of a bay can tell from lens errors.
const LEAST_MM: f64 = 2.5;
const LEAST_DEG: f64 = 0.12;

fn find(case: &Case) -> Vec<Finding> {
    let Some(suspect) = case.culprit(|e| matches!(e, Extra::CarrierMoved { .. })) else { return Vec::new() };
    let Extra::CarrierMoved { carrier, photo } = suspect.extra else { return Vec::new() };
    let (mm, degrees) = (suspect.test.estimate.rows(0, 3).norm(), deg(suspect.test.estimate.rows(3, 3).norm()));
    if mm < LEAST_MM && degrees < LEAST_DEG {
        return Vec::new();
    }
    let body = &case.rig.carriers[carrier];
    let file = case.photos[photo].file;
    let how_far = format!("by about {} mm and {} deg", rounded(mm, 0), rounded(degrees, 2));
    let (code, message) = match body.role {
        Role::Target => (
            "stand-moved-between-photos",
            format!(
                "{} stands elsewhere in {file} than in the other photos, {how_far}. Let nobody touch the stand and take all photos again.",
                body.name
            ),
        ),
        _ => (
            "vehicle-moved-between-photos",
            format!(
                "{} sits elsewhere in {file} than in the other photos, {how_far}: it was bumped, or the vehicle moved. Fix it and take all photos again.",
                body.name
            ),
        ),
    };
    vec![Finding::new(code, Level::Stop, message).on_carrier(&body.name).in_photo(file)]
}
