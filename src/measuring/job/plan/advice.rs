//! What to change where the photos can't decide a check: named after what
//! its uncertainty mostly comes from.

use super::predict::{Predicted, Predictor};
use crate::measure::Origin;
use crate::pose::Source;
use crate::setup::ReferenceLine;
use crate::verdict::figure;
use crate::words::{Phrase, Value, phrase};

use crate::job::asking::line_of;

/// One sentence for each check that stays not proven.
pub(super) fn advice(predictor: &Predictor, predicted: &[Predicted]) -> Vec<Phrase> {
    let checks = predictor.wanted.setup.checks.iter().zip(predicted);
    checks
        .filter(|(_, p)| !p.can_decide)
        .map(|(check, p)| {
            let quantity = check.quantity.phrase();
            match &p.answer {
                None => phrase!("advice-plan-undetermined", quantity = quantity),
                Some(a) => {
                    let line = line_of(predictor.wanted.setup, check);
                    let (origin, share) = largest(&a.contributions);
                    remedy(&origin, line, quantity, figure(100.0 * share, 0))
                }
            }
        })
        .collect()
}

/// The kind of source with the largest part, and its share of the variance.
fn largest(contributions: &[(Origin, f64)]) -> (Origin, f64) {
    let total: f64 = contributions.iter().map(|c| c.1 * c.1).sum();
    let kind = |o: &Origin| remedy(o, ReferenceLine::Centreline, Phrase::new(""), "".into()).key;
    let mut best = (Origin::Photos(Source::Image), 0.0);
    for (origin, _) in contributions {
        let share: f64 = contributions.iter().filter(|c| kind(&c.0) == kind(origin)).map(|c| c.1 * c.1).sum();
        if share > best.1 {
            best = (origin.clone(), share);
        }
    }
    (best.0, best.1 / total.max(1e-30))
}

/// What a check's uncertainty mostly comes from, and what brings it down.
fn remedy(origin: &Origin, line: ReferenceLine, quantity: Phrase, percent: Value) -> Phrase {
    match origin {
        Origin::Photos(Source::Image) => {
            phrase!("advice-plan-corners", quantity = quantity, percent = percent)
        }
        Origin::Photos(Source::Layout) => {
            phrase!("advice-plan-layout", quantity = quantity, percent = percent)
        }
        Origin::Photos(Source::Scale) => {
            phrase!("advice-plan-scale", quantity = quantity, percent = percent)
        }
        Origin::Photos(Source::Calibration(_)) => {
            phrase!("advice-plan-calibration", quantity = quantity, percent = percent)
        }
        Origin::Photos(Source::Focal(_) | Source::Centre(_)) => {
            phrase!("advice-plan-focal", quantity = quantity, percent = percent)
        }
        Origin::Photos(Source::Turn(_)) => {
            phrase!("advice-plan-turn", quantity = quantity, percent = percent)
        }
        Origin::Photos(Source::Edge(_)) => {
            phrase!("advice-plan-edge", quantity = quantity, percent = percent)
        }
        Origin::SeatingAngle(_) | Origin::SeatingOffset(_) if line == ReferenceLine::ThrustLine => {
            phrase!("advice-plan-seating-thrust", quantity = quantity, percent = percent)
        }
        Origin::SeatingAngle(_) | Origin::SeatingOffset(_) => {
            phrase!("advice-plan-seating", quantity = quantity, percent = percent)
        }
        Origin::Wheelbase => {
            phrase!("advice-plan-wheelbase", quantity = quantity, percent = percent)
        }
        Origin::NoseFromRearAxle => {
            phrase!("advice-plan-nose", quantity = quantity, percent = percent)
        }
        Origin::FloorBelowHub => {
            phrase!("advice-plan-hub-height", quantity = quantity, percent = percent)
        }
        Origin::Datum(_) => {
            phrase!("advice-plan-datum", quantity = quantity, percent = percent)
        }
        Origin::Reading(_) => {
            phrase!("advice-plan-reading", quantity = quantity, percent = percent)
        }
    }
}
