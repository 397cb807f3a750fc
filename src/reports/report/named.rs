//! Names of quantities, lines and units in a reader's language, for the reports
//! that list checks outside of a job: plans, trends, audits.

use maud::{Markup, html};

use super::html::symbol;
use crate::quantity::Quantity;
use crate::record::{CheckRecord, Verdict};
use crate::setup::ReferenceLine;
use crate::words::{Figure, Language, Phrase, Value, phrase, say};

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
    pub(super) fn short(&self) -> Phrase {
        let plain = quantity(self.quantity);
        match self.from {
            Some(from) => {
                phrase!("plan-quantity-from", quantity = self.quantity, plain = plain, datum = datum(from))
            }
            None => plain,
        }
    }

    /// With target and step: `squareness, left-board, step tilted`.
    pub(super) fn full(&self) -> Phrase {
        let name = self.short();
        match (self.target, self.step) {
            (Some(target), Some(step)) => phrase!("plan-check-target-step", name = name, target = target, step = step),
            (Some(target), None) => phrase!("plan-check-target", name = name, target = target),
            (None, Some(step)) => phrase!("plan-check-step", name = name, step = step),
            (None, None) => name,
        }
    }
}

/// A quantity's word of the trade.
pub(super) fn quantity(name: &str) -> Phrase {
    phrase!("plan-quantity", quantity = name, name = name.replace('_', " "))
}

fn datum(from: &str) -> Phrase {
    phrase!("plan-datum", datum = from)
}

/// A unit as it is written in prose: `deg`, `Grad`.
pub(super) fn unit(symbol: &str) -> Phrase {
    phrase!("plan-unit", unit = symbol)
}

/// A reference line that a record has in words or by its name.
pub(super) fn reference_line(words: &str, language: Language) -> String {
    let known = ReferenceLine::ALL.into_iter().find(|l| l.trade_name() == words || l.name() == words);
    known.map_or_else(|| words.to_owned(), |line| say!(language, "plan-reference-line", line = line.name()))
}

/// Digits as rounding gave them, with the language's decimal sign.
pub(super) fn digits(text: &str) -> Value {
    Figure::of_digits(text).map_or_else(|| text.into(), Into::into)
}

/// A length in metres, to the centimetre.
pub(super) fn metres(mm: f64) -> Figure {
    Figure::fixed(mm / 1000.0, 2)
}

/// A verdict's word.
pub(super) fn verdict(verdict: Verdict) -> Phrase {
    phrase!("plan-verdict", verdict = verdict.name())
}

/// A verdict's symbol and word.
pub(super) fn tag(of: Verdict, language: Language) -> Markup {
    html! { span class={ "tag " (symbol::class(of)) } { (symbol::symbol(of)) (verdict(of).say(language)) } }
}

/// With a capital at the front, as a heading or a cell begins.
pub(super) fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map(|first| first.to_uppercase().chain(chars).collect()).unwrap_or_default()
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
        assert_eq!(full("distance_from_nose", Language::German), "Abstand ab Fahrzeugfront");
        assert_eq!(
            full("height_from_nose_from_sensor", Language::French),
            "hauteur depuis le point de référence « sensor »"
        );
    }

    #[test]
    fn every_quantity_has_a_word_in_every_language() {
        for language in Language::ALL {
            let word = |name: &str| phrase!("plan-quantity", quantity = name, name = "?").say(language);
            let all: Vec<String> = Quantity::ALL.iter().map(|q| word(q.name())).collect();
            for (word, q) in all.iter().zip(Quantity::ALL) {
                assert_ne!(word, "?", "{q:?} in {language:?}");
                assert_eq!(all.iter().filter(|w| *w == word).count(), 1, "{word} in {language:?}");
            }
        }
    }
}
