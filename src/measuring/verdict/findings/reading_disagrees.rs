//! A reading and the photos exclude each other.

use super::{Case, Explanation, Finding, Open, Rule, Touches};
use crate::quantity::Unit;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::{Value, phrase};

pub(super) const RULE: Rule = Rule {
    codes: &["reading-disagrees"],
    title: "Reading disagrees",
    rationale: "Two independent instruments that disagree beyond their uncertainties: one of them, or a typing, is wrong.",
    method: "E_n of ISO/IEC 17043 above 1: at correct uncertainties one pair in some twenty-two at most, fewer where both count.",
    touches: Touches::Everything,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "reading-disagrees",
    level: Level::Warn,
    title: "Reading disagrees",
    meaning: "A value read at the vehicle and the photos exclude each other within their uncertainties. Where the reading was used in the result it stops the job.",
    cause: "It was read from another point, digits were exchanged when it was typed, the laser was not square, or the tape sagged; or the photos are wrong.",
    look: "Read again, from the point that the sheet names, and read aloud what is typed.",
    remedy: "Correct the reading, or find the point it was taken from; if it stands, take the photos again.",
}];

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
            let level = if r.used { Level::Stop } else { Level::Warn };
            Finding::new("reading-disagrees", level, message).leaving(vec![Open::WithoutReadings])
        })
        .collect()
}
