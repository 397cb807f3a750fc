//! A reading and the photos exclude each other.

use super::{Case, Compared, Explanation, Finding, Open, Rule, Touches};
use crate::quantity::Unit;
use crate::setup::Check;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::{Value, phrase};

pub(super) const RULE: Rule =
    Rule { name: "reading-disagrees", codes: &["reading-disagrees"], touches: Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("reading-disagrees", Level::Warn)];

fn find(case: &Case) -> Vec<Finding> {
    case.readings
        .iter()
        .filter(|r| r.normalized_error.is_some_and(|e| e.abs() > 1.0))
        .map(|r| {
            let quantity = r.quantity.phrase();
            let photos = r.photo.map_or_else(|| Value::from(""), |p| figure(p.value, 2));
            let (read, error) = (figure(r.value, 2), figure(r.normalized_error.unwrap_or(0.0).abs(), 1));
            let message = match r.quantity.unit() {
                Unit::Millimetre => phrase!(
                    "findings-reading-disagrees-mm",
                    quantity = quantity,
                    read = read,
                    photos = photos,
                    error = error
                ),
                Unit::Degree => phrase!(
                    "findings-reading-disagrees-degrees",
                    quantity = quantity,
                    read = read,
                    photos = photos,
                    error = error
                ),
            };
            let level = if r.used || decides(case, r) { Level::Stop } else { Level::Warn };
            Finding::new("reading-disagrees", level, message).leaving(vec![Open::WithoutReadings])
        })
        .collect()
}

/// Whether a check takes the reading's value instead of the photos'.
fn decides(case: &Case, reading: &Compared) -> bool {
    let same = |check: &&Check| check.quantity == reading.quantity && check.from == reading.from;
    case.setup.checks.iter().filter(same).any(|check| check.is_decided_by_reading(case.kit))
}
