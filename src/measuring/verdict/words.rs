//! Phrases that sentences share: figures with their unit, names of bodies,
//! several sentences, one of several things.

use crate::marker::{Kit, Role};
use crate::quantity::{Unit, rounded};
use crate::words::{Figure, Phrase, Value, phrase};

/// A figure rounded to a place.
pub(crate) fn figure(x: f64, digits: usize) -> Value {
    digits_of(&rounded(x, digits))
}

/// A rounded text of digits.
pub(crate) fn digits_of(text: &str) -> Value {
    Figure::of_digits(text).map_or_else(|| text.into(), Value::from)
}

/// A length or an angle with its unit, rounded as it is set in a bay.
pub(crate) fn amount(x: f64, unit: Unit, digits: [usize; 2]) -> Phrase {
    let [of_mm, of_degrees] = digits;
    match unit {
        Unit::Millimetre => phrase!("verdict-mm", x = figure(x, of_mm)),
        Unit::Degree => phrase!("verdict-degrees", x = figure(x, of_degrees)),
    }
}

/// A rounded uncertainty with its unit.
pub(crate) fn plus_minus(digits: &str, unit: Unit) -> Phrase {
    match unit {
        Unit::Millimetre => phrase!("verdict-plus-minus-mm", x = digits_of(digits)),
        Unit::Degree => phrase!("verdict-plus-minus-degrees", x = digits_of(digits)),
    }
}

/// Whole sentences, one behind the other.
pub(crate) fn sentences(first: Phrase, then: impl IntoIterator<Item = Phrase>) -> Phrase {
    then.into_iter().fold(first, |first, then| phrase!("verdict-sentences", first = first, then = then))
}

/// One of up to three things; further ones are left out, `None` where there is none.
pub(crate) fn either(all: Vec<Phrase>) -> Option<Phrase> {
    let mut all = all.into_iter();
    Some(match (all.next()?, all.next(), all.next()) {
        (one, None, _) => one,
        (first, Some(second), None) => phrase!("verdict-either-two", first = first, second = second),
        (first, Some(second), Some(third)) => {
            phrase!("verdict-either-three", first = first, second = second, third = third)
        }
    })
}

/// A carrier within a sentence: "the stand", "the floor sheet “floor-1”".
pub(crate) fn body(kit: &Kit, k: usize) -> Phrase {
    own(kit, k, phrase!("verdict-body", role = kit.carriers[k].role.name()))
}

/// A carrier at a sentence's beginning: "The stand".
pub(crate) fn body_first(kit: &Kit, k: usize) -> Phrase {
    own(kit, k, phrase!("verdict-body-first", role = kit.carriers[k].role.name()))
}

/// The vehicle, or a carrier of that name, within a sentence.
pub(crate) fn body_called(kit: &Kit, name: &str) -> Phrase {
    let k = kit.carriers.iter().position(|c| c.name == name);
    k.map_or_else(|| phrase!("verdict-body", role = "vehicle"), |k| body(kit, k))
}

/// Where a kit has several of a role, the carrier's own name tells which.
fn own(kit: &Kit, k: usize, body: Phrase) -> Phrase {
    let carrier = &kit.carriers[k];
    if kit.with_role(carrier.role).nth(1).is_none() {
        return body;
    }
    phrase!("verdict-body-own", body = body, name = &carrier.name)
}

/// A carrier or an axle as a label, by the name that a record has for it and, where known, its role.
pub fn body_label(name: &str, role: Option<Role>) -> Option<Phrase> {
    Some(match (name, role) {
        (_, Some(role)) => phrase!("verdict-body-label", role = role.name()),
        ("front axle", None) => phrase!("verdict-body-label", role = "front_axle"),
        ("rear axle", None) => phrase!("verdict-body-label", role = "rear_axle"),
        ("vehicle", None) => phrase!("verdict-body-label", role = "vehicle"),
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Language;

    #[test]
    fn figures_and_choices_are_said_in_the_language() {
        let moved = || phrase!("findings-without-readings");
        assert_eq!(amount(-0.004, Unit::Degree, [0, 2]).say(Language::German), "0,00°");
        assert_eq!(plus_minus("1.20", Unit::Millimetre).say(Language::English), "±1.20 mm");
        assert_eq!(either(Vec::new()), None);
        let three = either(vec![moved(), moved(), moved()]).unwrap().say(Language::German);
        assert_eq!(three, "ohne die Ablesungen, ohne die Ablesungen oder ohne die Ablesungen");
    }
}
