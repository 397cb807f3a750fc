//! Phrases that sentences share: figures with their unit, names of bodies,
//! several sentences, one of several things.

use crate::marker::{Carrier, Kit, Role};
use crate::quantity::{Unit, rounded};
use crate::words::{Phrase, Value, phrase};

/// A figure rounded to a place.
pub(crate) fn figure(x: f64, digits: usize) -> Value {
    Value::digits(&rounded(x, digits))
}

/// A length or an angle with its unit, rounded as it is set in a bay.
pub(crate) fn amount(x: f64, unit: Unit, digits: [usize; 2]) -> Phrase {
    let [of_mm, of_degrees] = digits;
    with_unit(figure(x, if unit == Unit::Millimetre { of_mm } else { of_degrees }), unit)
}

/// A length or an angle with its unit.
pub(crate) fn with_unit(x: Value, unit: Unit) -> Phrase {
    match unit {
        Unit::Millimetre => phrase!("verdict-mm", x = x),
        Unit::Degree => phrase!("verdict-degrees", x = x),
    }
}

/// A rounded uncertainty with its unit.
pub(crate) fn plus_minus(digits: &str, unit: Unit) -> Phrase {
    match unit {
        Unit::Millimetre => phrase!("verdict-plus-minus-mm", x = Value::digits(digits)),
        Unit::Degree => phrase!("verdict-plus-minus-degrees", x = Value::digits(digits)),
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

/// Between a stand's name and how often it had been moved, in the name of a body that is where it stood before.
pub(crate) const AFTER_MOVE: &str = " @";

/// Which of a role it is: where a stand stood before it was moved, as it is in a step, else by its own name.
fn own(kit: &Kit, k: usize, body: Phrase) -> Phrase {
    let carrier = &kit.carriers[k];
    let called = |name: &str| kit.carriers.iter().position(|c| c.name == name);
    if let Some((stand, moves)) = carrier.name.rsplit_once(AFTER_MOVE)
        && let (Ok(n), Some(first)) = (moves.parse::<u32>(), called(stand))
    {
        let stand = own(kit, first, body);
        return match n {
            0 => phrase!("verdict-stand-before", stand = stand),
            n => phrase!("verdict-stand-after", stand = stand, move = n),
        };
    }
    if let Some((stand, step)) = carrier.name.strip_suffix(')').and_then(|name| name.split_once(" ("))
        && let Some(first) = called(stand)
    {
        return phrase!("verdict-stand-step", stand = own(kit, first, body), step = step);
    }
    let others = |c: &&Carrier| c.role == carrier.role && c.name != carrier.name && c.markers != carrier.markers;
    if kit.carriers.iter().any(|c| others(&c)) {
        return phrase!("verdict-body-own", body = body, name = &carrier.name);
    }
    body
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
