//! What to change where the photos can't decide a check: named after what
//! its uncertainty mostly comes from.

use super::predict::{Predicted, Predictor};
use crate::measure::Origin;
use crate::pose::Source;
use crate::setup::ReferenceLine;

use super::super::answers::line_of;

/// One sentence for each check that stays not proven.
pub(super) fn advice(predictor: &Predictor, predicted: &[Predicted]) -> Vec<String> {
    let checks = predictor.wanted.setup.checks.iter().zip(predicted);
    checks
        .filter(|(_, p)| !p.can_decide)
        .map(|(check, p)| {
            let name = check.quantity.trade_name();
            match &p.answer {
                None => format!(
                    "{name}: nothing in the photos determines it. Show the plates, floor sheets or the nose mark that it is measured from, or type the vehicle's sizes into the job."
                ),
                Some(a) => {
                    let line = line_of(predictor.wanted.setup, check);
                    let (origin, share) = largest(&a.contributions);
                    format!("{name}: {:.0} % of its variance comes from {}", 100.0 * share, remedy(&origin, line))
                }
            }
        })
        .collect()
}

/// The kind of source with the largest part, and its share of the variance.
fn largest(contributions: &[(Origin, f64)]) -> (Origin, f64) {
    let total: f64 = contributions.iter().map(|c| c.1 * c.1).sum();
    let kind = |o: &Origin| remedy(o, ReferenceLine::Centreline);
    let mut best = (Origin::Photos(Source::Image), 0.0);
    for (origin, _) in contributions {
        let share: f64 = contributions.iter().filter(|c| kind(&c.0) == kind(origin)).map(|c| c.1 * c.1).sum();
        if share > best.1 {
            best = (origin.clone(), share);
        }
    }
    (best.0, best.1 / total.max(1e-30))
}

fn remedy(origin: &Origin, line: ReferenceLine) -> &'static str {
    match origin {
        Origin::Photos(Source::Image) => {
            "the corners' noise. Larger markers, or photos from nearer and wider apart, bring it down."
        }
        Origin::Photos(Source::Layout) => {
            "where the markers sit on their holders. Survey the kit (`baywitness survey`) or glue it more exactly."
        }
        Origin::Photos(Source::Scale) => "the printed sizes. Measure the markers and enter their sizes.",
        Origin::Photos(Source::Calibration(_)) => {
            "the camera's calibration. Fit the camera again with more photos of the board."
        }
        Origin::Photos(Source::Focal(_) | Source::Centre(_)) => {
            "each photo's focal length and principal point. More photos, or ones that hold markers nearer and farther at once, fix them."
        }
        Origin::Photos(Source::Turn(_)) => {
            "how the hand turns while a photo is read row by row. Hold the phone still, or put it on a stand."
        }
        Origin::Photos(Source::Edge(_)) => "the photos' edge offset. Larger markers bring it down.",
        Origin::SeatingAngle(_) | Origin::SeatingOffset(_) if line == ReferenceLine::ThrustLine => {
            "how the plates seat on the wheels. Take the photos again after half a wheel turn, use better clamps, or let the sheet refer to the centreline, for which all four wheels carry a plate."
        }
        Origin::SeatingAngle(_) | Origin::SeatingOffset(_) => {
            "how the plates and marks seat. Use better clamps; state a measured seating in the kit."
        }
        Origin::Wheelbase => "the typed wheelbase. Put plates on the front wheels.",
        Origin::NoseFromRearAxle => "the typed nose position. Put a mark on the nose.",
        Origin::FloorBelowHub => "the typed hub height. Lay floor sheets.",
        Origin::Datum(_) => "the datum's own offset. Measure it better or choose another datum.",
        Origin::Reading(_) => "a reading. Take it with a finer instrument.",
    }
}
