//! An effect in a sentence.

use super::super::label::{Label, sentence};
use super::super::side::against_wanted;
use crate::quantity::rounded;
use crate::record::EffectRecord;

/// A key of a statistics record in the trade's words: `squareness (yaw), left-board, step tilted`.
pub(super) fn quantity_label(key: &str) -> Label {
    let (rest, step) = key.split_once('#').map_or((key, None), |(rest, step)| (rest, Some(step.to_owned())));
    Label { step, ..Label::of_key(rest, crate::words::Language::English) }
}

/// How a quantity lies against the wanted one: `turned, its left end nearer than wanted`.
pub(super) fn direction(key: &str, too_much: bool) -> String {
    match quantity_label(key).quantity {
        Some(quantity) => against_wanted(quantity, too_much, crate::words::Language::English),
        None if too_much => "more than required".to_owned(),
        None => "less than required".to_owned(),
    }
}

/// A kind of group, for people.
pub(super) fn factor_word(factor: &str) -> &str {
    match factor {
        "technician" => "technician",
        "setup" => "set-up sheet",
        "kit" => "marker kit",
        other => other,
    }
}

/// `Bay 2` of bay 2, and of a bay that is called "Bay 2".
pub(super) fn subject(factor: &str, name: &str) -> String {
    let word = factor_word(factor);
    if factor == "technician" || name.to_lowercase().starts_with(word) {
        name.to_owned()
    } else {
        sentence(&format!("{word} {name}"))
    }
}

/// Two digits that matter, three places at most.
pub(super) fn short(value: f64) -> String {
    let digits = if value.abs() >= 100.0 {
        0
    } else if value.abs() >= 10.0 {
        1
    } else {
        2
    };
    rounded(value, digits)
}

/// An effect in a sentence: who or what, how much, which way, since when.
pub fn effect_words(effect: &EffectRecord) -> String {
    let who = subject(&effect.factor, &effect.name);
    let mut text = match effect.kind.as_str() {
        "finding" => finding(&who, effect),
        "sheet" => sheet(&who, effect),
        _ => shift(&who, effect),
    };
    if let Some(other) = &effect.together_with {
        text.push_str(&format!(" It cannot be told apart from {other}: their jobs are the same."));
    }
    text
}

fn amount(effect: &EffectRecord) -> String {
    let size = short(effect.size.abs());
    match (effect.amount, &effect.unit) {
        (Some(amount), Some(unit)) => format!("{} {unit}, {size} tolerances,", short(amount.abs())),
        _ => format!("{size} tolerances"),
    }
}

fn shift(who: &str, effect: &EffectRecord) -> String {
    let key = effect.quantity.as_deref().unwrap_or_default();
    let what = quantity_label(key).full();
    let way = direction(key, effect.size > 0.0);
    match &effect.since_week {
        Some(week) => format!(
            "{who}: from week {week} on {what} has changed by {} {}.",
            amount(effect),
            way.replace("than required", "than before")
        ),
        None => format!(
            "{who}: {what} is off by {} {}, always to this side, also against others in the same place.",
            amount(effect),
            way.replace("than required", "than with the others")
        ),
    }
}

fn sheet(who: &str, effect: &EffectRecord) -> String {
    let key = effect.quantity.as_deref().unwrap_or_default();
    let what = quantity_label(key).full();
    let Some([nominal, value]) = effect.nominal else { return shift(who, effect) };
    let unit = effect.unit.as_deref().unwrap_or_default();
    let slip = effect.slip.as_ref().map_or(String::new(), |s| format!(" It looks as if {s}."));
    format!(
        "{who}: it states {what} {} {unit}, but its jobs' values sit around {} {unit} ({} tolerances off), whoever works with it: compare the sheet with its source.{slip}",
        short(nominal),
        short(value),
        short(effect.size.abs())
    )
}

fn finding(who: &str, effect: &EffectRecord) -> String {
    let [seen, expected] = effect.counts.unwrap_or_default();
    let what = match (&effect.code, &effect.quantity) {
        (Some(code), _) => format!("the finding {code} was made"),
        (None, quantity) => format!("{} was outside", quantity_label(quantity.as_deref().unwrap_or_default()).full()),
    };
    format!(
        "{who}: {what} {} times where {} are to be expected after the others in the same place.",
        rounded(seen, 0),
        rounded(expected, 1)
    )
}

/// What to look at, for whoever is told of an effect.
pub(super) fn advice(effect: &EffectRecord) -> &'static str {
    match (effect.factor.as_str(), effect.kind.as_str()) {
        ("technician", "change") => {
            "Something about how this person works has changed: ask what, before anything is concluded."
        }
        ("technician", _) => {
            "Look at the photos together: a habit like this is found and mended at the stand, not in a table."
        }
        ("bay", "change") => "Ask what was changed in this bay: a lift, the floor, marks on it, lamps.",
        ("bay", _) => "Check the floor (`baywitness bay`), the marks on it, and what people sight along in this bay.",
        ("kit", _) => {
            "Survey the kit again (`baywitness survey`, `recheck`): a marker holder was bent, dropped or mounted otherwise."
        }
        ("setup", "change") => {
            "Compare the sheet's revisions: since then it wants something else, or the vehicles differ."
        }
        ("setup", _) => {
            "Compare every figure of the sheet with the service information that it names, then correct it and judge its jobs again."
        }
        _ => "",
    }
}
