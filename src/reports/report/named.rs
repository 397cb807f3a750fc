//! Names of quantities, lines and units in a reader's language, for the reports
//! that list checks outside of a job: plans, trends, audits.

use super::label;
use crate::quantity::Quantity;
use crate::record::CheckRecord;
use crate::setup::ReferenceLine;
use crate::words::{Figure, Language, Phrase, Value, phrase};

/// A check as records name it.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Named<'a> {
    /// The quantity's name.
    pub(super) quantity: &'a str,
    /// The datum that is measured from.
    pub(super) from: Option<&'a str>,
    /// Which of several targets.
    pub(super) target: Option<&'a str>,
    /// Which step.
    pub(super) step: Option<&'a str>,
}

impl<'a> Named<'a> {
    /// Of a check of a job.
    pub(super) fn of_check(check: &'a CheckRecord) -> Self {
        Named {
            quantity: &check.quantity,
            from: check.from.as_deref(),
            target: check.target.as_deref(),
            step: check.step.as_deref(),
        }
    }

    /// Of a key: `yaw`, `distance_from_nose`, `pitch@left-board`, `yaw@left-board#tilted`.
    pub(super) fn of_key(key: &'a str) -> Self {
        let (rest, step) = key.split_once('#').map_or((key, None), |(rest, step)| (rest, Some(step)));
        let (name, target) = rest.split_once('@').map_or((rest, None), |(name, target)| (name, Some(target)));
        let (quantity, from) = match name.rsplit_once("_from_") {
            Some((quantity, from)) if Quantity::from_name(name).is_none() => (quantity, Some(from)),
            _ => (name, None),
        };
        Named { quantity, from, target, step }
    }

    /// The known quantity; `None` for a name from a later version.
    pub(super) fn known(&self) -> Option<Quantity> {
        Quantity::from_name(self.quantity)
    }

    /// The quantity with what it is measured from: `distance from the nose`.
    pub(super) fn short(&self) -> Value {
        match self.from {
            Some(from) => label::from_datum(self.quantity, from).into(),
            None => label::quantity(self.quantity).into(),
        }
    }

    /// With target and step: `squareness, left-board, step tilted`.
    pub(super) fn full(&self) -> Value {
        let name = self.short();
        match (self.target, self.step) {
            (Some(target), Some(step)) => {
                phrase!("plan-check-target-step", name = name, target = target, step = step).into()
            }
            (Some(target), None) => phrase!("plan-check-target", name = name, target = target).into(),
            (None, Some(step)) => phrase!("plan-check-step", name = name, step = step).into(),
            (None, None) => name,
        }
    }
}

/// A unit as it is written in prose: `deg`, `Grad`.
pub(super) fn unit(symbol: &str) -> Phrase {
    phrase!("plan-unit", unit = symbol)
}

/// A reference line that a record has in words or by its name.
pub(super) fn reference_line(words: &str, language: Language) -> String {
    let known = ReferenceLine::ALL.into_iter().find(|l| l.trade_name() == words || l.name() == words);
    known.map_or_else(|| words.to_owned(), |line| line.phrase().say(language))
}

/// A length in metres, to the centimetre.
pub(super) fn metres(mm: f64) -> Figure {
    Figure::fixed(mm / 1000.0, 2)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn keys_are_taken_apart_and_named_in_every_language() {
        let full = |key: &str, language| Named::of_key(key).full().say(language);
        assert_eq!(full("distance_from_rear_axle", Language::English), "distance from the rear axle");
        assert_eq!(full("height_from_nose", Language::English), "height above the nose mark");
        assert_eq!(full("pitch@left-board#tilted", Language::English), "tilt, left-board, step tilted");
        assert_eq!(full("of_a_later_version", Language::English), "of a later version");
        let sensor = full("height_from_nose_from_sensor", Language::French);
        assert_eq!(sensor, "hauteur depuis le point de référence «\u{202f}sensor\u{202f}»");
        assert_eq!(full("distance_from_nose", Language::German), "Abstand ab Fahrzeugfront");
    }
}
