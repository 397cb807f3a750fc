//! Two photos were taken from almost the same place.

use super::{Case, Explanation, Finding, Rule};
use crate::geom::deg;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["photos-too-alike"],
    title: "Too alike",
    rationale: "Distances come from looking at the same thing from different places; two photos from one place are one photo.",
    method: "Angle between the lines of sight from the stand to two cameras below 5 degrees. Exact; no false alarms.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "photos-too-alike",
    level: Level::Warn,
    title: "Photos too alike",
    meaning: "Two photos were taken from nearly the same direction, so they count as one.",
    cause: "Both were taken standing in one place.",
    look: "Lay the two pictures side by side: the stand covers the same part of the vehicle.",
    remedy: "Take one of them from the other side of the stand.",
}];

const LEAST_DEG: f64 = 5.0;

fn find(case: &Case) -> Vec<Finding> {
    let Some(measurement) = case.measurement else { return Vec::new() };
    let Some(stand) = case
        .kit
        .with_role(crate::marker::Role::Target)
        .find_map(|k| measurement.carriers[k].as_ref())
        .map(|c| c.vehicle_from_carrier.origin_mm())
    else {
        return Vec::new();
    };
    let sight: Vec<_> = measurement.photos.iter().map(|p| p.as_ref().map(|p| p.origin_mm() - stand)).collect();
    let mut found = Vec::new();
    for i in 0..sight.len() {
        for j in i + 1..sight.len() {
            let (Some(a), Some(b)) = (&sight[i], &sight[j]) else { continue };
            // Of another position of the stand a photo from the same place is another photo.
            if case.after_move.get(i) != case.after_move.get(j) {
                continue;
            }
            let angle = deg(a.angle(b));
            if angle < LEAST_DEG {
                let (a, b) = (case.photos[i].file, case.photos[j].file);
                let degrees = figure(angle, 1);
                let message = phrase!("findings-too-alike", first = a, second = b, degrees = degrees);
                found.push(Finding::new("photos-too-alike", Level::Warn, message).in_photo(b));
            }
        }
    }
    found
}
