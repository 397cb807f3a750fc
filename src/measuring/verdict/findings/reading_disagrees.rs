//! A reading and the photos, or two readings of one thing, exclude each other.

use super::{Case, Compared, Explanation, Finding, Open, Rule, Touches};
use crate::folder::Reading;
use crate::quantity::Unit;
use crate::setup::Check;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::{Value, phrase};

pub(super) const RULE: Rule =
    Rule { name: "reading-disagrees", codes: &["reading-disagrees"], touches: Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("reading-disagrees", Level::Warn)];

fn find(case: &Case) -> Vec<Finding> {
    let mut found: Vec<Finding> =
        case.readings.iter().filter(|r| r.is_excluded()).map(|r| by_photos(case, r)).collect();
    found.extend(by_each_other(case));
    found
}

/// A reading that the photos exclude.
fn by_photos(case: &Case, compared: &Compared) -> Finding {
    let reading = &compared.reading;
    let quantity = reading.quantity.phrase();
    let photos = compared.photo.map_or_else(|| Value::from(""), |p| figure(p.value, 2));
    let (read, error) = (figure(reading.value, 2), figure(compared.normalized_error.unwrap_or(0.0).abs(), 1));
    let message = match reading.quantity.unit() {
        Unit::Millimetre => {
            phrase!("findings-reading-disagrees-mm", quantity = quantity, read = read, photos = photos, error = error)
        }
        Unit::Degree => phrase!(
            "findings-reading-disagrees-degrees",
            quantity = quantity,
            read = read,
            photos = photos,
            error = error
        ),
    };
    match () {
        // It was left out of the figures: what they were with it nobody knows.
        () if reading.use_in_adjustment => Finding::new("reading-disagrees", Level::Stop, message),
        () if !decided(case, |r| r == reading).is_empty() => {
            Finding::new("reading-disagrees", Level::Stop, message).leaving(vec![Open::WithoutReadings])
        }
        () => Finding::new("reading-disagrees", Level::Warn, message).leaving(vec![Open::WithoutReadings]),
    }
}

/// Whether a finding is of a reading against the photos.
pub fn is_against_photos(finding: &Finding) -> bool {
    finding.message.key.starts_with("findings-reading-disagrees")
}

/// Of readings that count as one, the two that exclude each other most: those that decide a check in a step,
/// and those of one thing that were used.
fn by_each_other(case: &Case) -> Vec<Finding> {
    let all = || case.readings.iter().map(|c| &c.reading);
    let mut sets = decided(case, |_| true);
    for one in all().filter(|r| r.use_in_adjustment) {
        sets.push(all().filter(|r| r.use_in_adjustment && r.is_of_the_same(one)).collect());
    }
    let mut found: Vec<Finding> = Vec::new();
    for finding in sets.iter().filter_map(|set| Reading::farthest_apart(set)).map(differ) {
        if !found.contains(&finding) {
            found.push(finding);
        }
    }
    found
}

/// The readings of each check that a reading decides, in each of its steps; those sets alone that have a wanted one.
fn decided<'a>(case: &Case<'a>, wanted: impl Fn(&Reading) -> bool) -> Vec<Vec<&'a Reading>> {
    let by_reading = case.setup.checks.iter().filter(|check| check.is_decided_by_reading(case.kit));
    let of = |check: &Check, step: Option<&str>| -> Vec<&'a Reading> {
        case.readings.iter().map(|c| &c.reading).filter(|r| r.is_of(check, step, case.setup, case.kit)).collect()
    };
    let sets = by_reading.flat_map(|check| check.held_in(&case.setup.steps).into_iter().map(move |s| (check, s)));
    sets.map(|(check, step)| of(check, step)).filter(|set| set.iter().any(|r| wanted(r))).collect()
}

fn differ((one, other, error): (&Reading, &Reading, f64)) -> Finding {
    let quantity = one.quantity.phrase();
    let (read, again, error) = (figure(one.value, 2), figure(other.value, 2), figure(error, 1));
    let message = match one.quantity.unit() {
        Unit::Millimetre => {
            phrase!("findings-readings-differ-mm", quantity = quantity, read = read, again = again, error = error)
        }
        Unit::Degree => {
            phrase!("findings-readings-differ-degrees", quantity = quantity, read = read, again = again, error = error)
        }
    };
    Finding::new("reading-disagrees", Level::Stop, message)
}
