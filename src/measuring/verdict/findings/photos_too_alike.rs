//! Two photos were taken from almost the same place.

use super::{Case, Explanation, Finding, Rule};
use crate::geom::deg;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "photos-too-alike", codes: &["photos-too-alike"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("photos-too-alike", Level::Warn)];

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
