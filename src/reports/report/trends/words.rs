//! An effect in a sentence.

use super::super::named::{Named, unit};
use crate::quantity::Quantity;
use crate::record::EffectRecord;
use crate::words::{Figure, Language, Phrase, Value, phrase, say};

/// A key of a statistics record in the trade's words: `squareness, left-board, step tilted`.
pub(super) fn quantity_words(key: &str) -> Value {
    Named::of_key(key).full()
}

/// What a value is compared with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Than {
    /// The set-up sheet.
    Required,
    /// The weeks before.
    Before,
    /// The others in the same place.
    Others,
}

/// How a quantity lies beside what it should be: `nearer`, `turned, its left end nearer`.
pub(super) fn direction(key: &str, too_much: bool) -> Phrase {
    use Quantity as Q;
    let kind = match Named::of_key(key).known() {
        Some(Q::Distance | Q::Range) => "distance",
        Some(Q::Height | Q::HeightFromNose) => "height",
        Some(Q::LateralOffset | Q::LateralFromNose) => "lateral",
        Some(Q::Yaw) => "yaw",
        Some(Q::Pitch) => "pitch",
        Some(Q::Roll) => "roll",
        _ => "other",
    };
    phrase!("trends-direction", kind = kind, much = if too_much { "more" } else { "less" })
}

/// The same with what it is compared with: `nearer than required`.
pub(super) fn direction_than(key: &str, too_much: bool, than: Than) -> Phrase {
    let than = match than {
        Than::Required => "required",
        Than::Before => "before",
        Than::Others => "others",
    };
    phrase!("trends-direction-than", direction = direction(key, too_much), than = than)
}

/// A kind of group, for people.
pub(super) fn factor_word(factor: &str, language: Language) -> String {
    say!(language, "trends-factor", factor = factor)
}

/// `Bay 2` of bay 2, and of a bay that is called "Bay 2".
pub(super) fn subject(factor: &str, name: &str, language: Language) -> String {
    let word = factor_word(factor, language).to_lowercase();
    if factor == "technician" || name.to_lowercase().starts_with(&word) {
        name.to_owned()
    } else {
        say!(language, "trends-subject", factor = factor, name = name)
    }
}

/// Two digits that matter, three places at most.
pub(super) fn short(value: f64) -> Figure {
    let digits = match value.abs() {
        v if v >= 100.0 => 0,
        v if v >= 10.0 => 1,
        _ => 2,
    };
    Figure::fixed(value, digits)
}

/// An effect in a sentence: who or what, how much, which way, since when.
pub fn effect_words(effect: &EffectRecord, language: Language) -> String {
    let who = subject(&effect.factor, &effect.name, language);
    let said = match effect.kind.as_str() {
        "finding" => finding(&who, effect),
        "sheet" => sheet(&who, effect),
        _ => shift(&who, effect),
    };
    let said = said.say(language);
    match &effect.together_with {
        Some(together) => {
            let other = effect.together_phrase.clone().map_or_else(|| Value::from(together), Value::from);
            format!("{said} {}", say!(language, "trends-together", other = other))
        }
        None => said,
    }
}

fn amount(effect: &EffectRecord) -> Phrase {
    let size = short(effect.size.abs());
    match (effect.amount, &effect.unit) {
        (Some(amount), Some(symbol)) => {
            phrase!("trends-amount", amount = short(amount.abs()), unit = unit(symbol), size = size)
        }
        _ => phrase!("trends-amount-tolerances", size = size),
    }
}

fn shift(who: &str, effect: &EffectRecord) -> Phrase {
    let key = effect.quantity.as_deref().unwrap_or_default();
    let (what, amount, too_much) = (quantity_words(key), amount(effect), effect.size > 0.0);
    match &effect.since_week {
        Some(week) => {
            let way = direction_than(key, too_much, Than::Before);
            phrase!("trends-effect-change", who = who, week = week, what = what, amount = amount, way = way)
        }
        None => {
            let way = direction_than(key, too_much, Than::Others);
            phrase!("trends-effect-shift", who = who, what = what, amount = amount, way = way)
        }
    }
}

fn sheet(who: &str, effect: &EffectRecord) -> Phrase {
    let Some([nominal, value]) = effect.nominal else { return shift(who, effect) };
    let what = quantity_words(effect.quantity.as_deref().unwrap_or_default());
    let symbol = unit(effect.unit.as_deref().unwrap_or_default());
    let off = short(effect.size.abs());
    let said = phrase!(
        "trends-effect-sheet",
        who = who,
        what = what,
        nominal = short(nominal),
        value = short(value),
        unit = symbol,
        off = off,
    );
    match &effect.slip {
        Some(slip) => {
            let slip = effect.slip_phrase.clone().map_or_else(|| Value::from(slip), Value::from);
            phrase!("trends-effect-slip", said = said, slip = slip)
        }
        None => said,
    }
}

fn finding(who: &str, effect: &EffectRecord) -> Phrase {
    let [seen, expected] = effect.counts.unwrap_or_default();
    let (seen, expected) = (Figure::fixed(seen, 0), Figure::fixed(expected, 1));
    match (&effect.code, &effect.quantity) {
        (Some(code), _) => {
            phrase!("trends-effect-finding", who = who, code = code, seen = seen, expected = expected)
        }
        (None, quantity) => {
            let what = quantity_words(quantity.as_deref().unwrap_or_default());
            phrase!("trends-effect-outside", who = who, what = what, seen = seen, expected = expected)
        }
    }
}

/// What is more frequent there too: a code, or `QUANTITY outside`.
pub(super) fn also(words: &str) -> Value {
    match words.strip_suffix(" outside") {
        Some(key) => phrase!("trends-also-outside", what = quantity_words(key)).into(),
        None => words.into(),
    }
}

/// What to look at, for whoever is told of an effect.
pub(super) fn advice(effect: &EffectRecord, language: Language) -> String {
    match (effect.factor.as_str(), effect.kind.as_str()) {
        ("technician", "change") => say!(language, "trends-advice-technician-change"),
        ("technician", _) => say!(language, "trends-advice-technician"),
        ("bay", "change") => say!(language, "trends-advice-bay-change"),
        ("bay", _) => say!(language, "trends-advice-bay"),
        ("kit", _) => say!(language, "trends-advice-kit"),
        ("setup", "change") => say!(language, "trends-advice-setup-change"),
        ("setup", _) => say!(language, "trends-advice-setup"),
        _ => String::new(),
    }
}
