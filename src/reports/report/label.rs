//! What a quantity is called.

use crate::quantity::Quantity;
use crate::record::KitUpkeep;
use crate::words::{Language, Phrase, Value, phrase, say};

/// A quantity as records name it, ready to be shown.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Label {
    /// The known quantity; `None` for a name from a later version.
    pub(super) quantity: Option<Quantity>,
    /// The trade's words: `squareness`, `distance from the nose`.
    pub(super) trade: String,
    /// The term of standards, where it differs: `yaw`.
    pub(super) term: Option<String>,
    /// Which of several targets.
    pub(super) target: Option<String>,
    /// Which step.
    pub(super) step: Option<String>,
    /// What it is said in.
    pub(super) language: Language,
}

impl Label {
    /// Of a check or a reading.
    pub(super) fn new(quantity: &str, from: Option<&str>, language: Language) -> Label {
        let known = Quantity::from_name(quantity);
        Label {
            quantity: known,
            trade: trade(quantity, known, from).say(language),
            term: known.and_then(term).map(|term| say!(language, "report-term", term = term)),
            target: None,
            step: None,
            language,
        }
    }

    /// Of a check, with its target and step.
    pub(super) fn of_check(check: &crate::record::CheckRecord, language: Language) -> Label {
        Label {
            target: check.target.clone(),
            step: check.step.clone(),
            ..Label::new(&check.quantity, check.from.as_deref(), language)
        }
    }

    /// Of a key of `measured`: `yaw`, `distance_from_nose`, `pitch@left-board`.
    pub(super) fn of_key(key: &str, language: Language) -> Label {
        let (name, target) = match key.split_once('@') {
            Some((name, target)) => (name, Some(target.to_owned())),
            None => (key, None),
        };
        let label = match name.split_once("_from_") {
            Some((quantity, from)) if Quantity::from_name(name).is_none() => Label::new(quantity, Some(from), language),
            _ => Label::new(name, None, language),
        };
        Label { target, ..label }
    }

    /// `squareness (yaw), left-board, step tilted`.
    pub(super) fn full(&self) -> String {
        let name = match &self.term {
            Some(term) => say!(self.language, "report-with-term", name = &self.trade, term = term),
            None => self.trade.clone(),
        };
        [vec![name], self.extras()].concat().join(", ")
    }

    /// Target and step, where stated.
    pub(super) fn extras(&self) -> Vec<String> {
        let step = self.step.iter().map(|step| say!(self.language, "report-step", step = step));
        self.target.iter().cloned().chain(step).collect()
    }
}

fn trade(name: &str, known: Option<Quantity>, from: Option<&str>) -> Phrase {
    from.filter(|_| known.is_some()).map_or_else(|| quantity(name), |from| from_datum(name, from))
}

/// A quantity's word of the trade; a name of a later version as it is.
pub(super) fn quantity(name: &str) -> Phrase {
    let known = Quantity::from_name(name).is_some();
    phrase!("verdict-quantity", quantity = if known { name.to_owned() } else { name.replace('_', " ") })
}

/// With the point that it is measured from: `distance from the nose`.
pub(super) fn from_datum(name: &str, from: &str) -> Phrase {
    phrase!("report-quantity-from", quantity = name, name = quantity(name), datum = datum(from))
}

fn term(quantity: Quantity) -> Option<&'static str> {
    use Quantity as Q;
    match quantity {
        Q::Yaw => Some("yaw"),
        Q::Pitch => Some("pitch"),
        Q::Roll => Some("roll"),
        Q::LateralOffset | Q::LateralFromNose => Some("lateral"),
        Q::Range => Some("range"),
        _ => None,
    }
}

/// The point that is measured from, in words.
pub(super) fn datum(from: &str) -> Phrase {
    phrase!("report-datum", datum = from)
}

/// A reference line in words.
pub(super) fn reference_line(name: &str) -> Phrase {
    let known = crate::setup::ReferenceLine::ALL.into_iter().any(|line| line.name() == name);
    phrase!("report-reference-line", line = if known { name.to_owned() } else { name.replace('_', " ") })
}

/// A marker kit's serial number and survey.
pub(super) fn upkeep_words(kit: &KitUpkeep, language: Language) -> String {
    let serial = kit.serial.as_ref().map(|serial| say!(language, "report-kit-serial", serial = serial));
    let due = kit.survey_due.as_ref().map(|due| {
        let state = match kit.survey_overdue {
            Some(true) => "overdue",
            Some(false) => "due",
            None => "unknown",
        };
        say!(language, "report-kit-due", state = state, due = Value::moment(due))
    });
    serial.into_iter().chain(due).collect::<Vec<_>>().join(", ")
}

/// With a capital at the front.
pub(super) fn sentence(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map(|first| first.to_uppercase().chain(chars).collect()).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn full(quantity: &str, from: Option<&str>) -> String {
        Label::new(quantity, from, Language::English).full()
    }

    fn of_key(key: &str) -> String {
        Label::of_key(key, Language::English).full()
    }

    #[test]
    fn trade_word_and_term_stand_together() {
        assert_eq!(full("yaw", None), "squareness (yaw)");
        assert_eq!(full("distance", Some("nose")), "distance from the nose");
        assert_eq!(full("height_from_nose", Some("sensor")), "height above the datum “sensor”");
        let german = Label::new("distance", Some("nose"), Language::German);
        assert_eq!(german.full(), "Abstand ab Fahrzeugfront");
    }

    #[test]
    fn keys_of_measured_are_taken_apart() {
        assert_eq!(of_key("distance_from_rear_axle"), "distance from the rear axle");
        assert_eq!(of_key("height_from_nose"), "height above the nose mark");
        assert_eq!(of_key("pitch@left-board"), "tilt (pitch), left-board");
        assert_eq!(of_key("of_a_later_version"), "of a later version");
    }

    #[test]
    fn every_quantity_and_line_has_a_name_in_every_language() {
        for language in Language::ALL {
            for quantity in Quantity::ALL {
                let name = Label::new(quantity.name(), None, language).trade;
                // Where no variant fits, the bare name would stand there.
                assert!(!name.contains('_') && !name.is_empty(), "{name}");
                assert!(name != quantity.name() || !matches!(language, Language::German), "{name}");
            }
            for line in crate::setup::ReferenceLine::ALL {
                assert!(!reference_line(line.name()).say(language).contains('_'));
            }
        }
    }

    #[test]
    fn sentences_begin_with_a_capital() {
        assert_eq!(sentence("centring"), "Centring");
        assert_eq!(sentence(""), "");
    }
}
