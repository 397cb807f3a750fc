//! What an audit says of its folders in words: for people, and as tables keep it.

use crate::custody::audit::{COPY, Change, NOT_MEASURED, ReportSignature};
use crate::quantity::Quantity;
use crate::words::{Figure, Language, Phrase, Value, phrase, say};

/// Whether a folder is as it was sealed, as `audit.jsonl` has it.
pub(super) fn evidence_words(kept: &str, signer: Option<&str>, language: Language) -> String {
    if let Some(copy) = kept.strip_prefix(COPY) {
        let (copy, measured) = copy.strip_suffix(NOT_MEASURED).map_or((copy, "yes"), |copy| (copy, "no"));
        let state = evidence_words(copy, signer, language);
        return say!(language, "evidence-state-copy", state = state, measured = measured);
    }
    let state = match (kept, signer) {
        ("intact and signed", Some(_)) => "signed",
        ("intact, signer unknown", _) => "unknown",
        ("intact, unsigned", _) => "unsigned",
        ("altered", _) => "altered",
        ("gone", _) => "gone",
        _ => return kept.to_owned(),
    };
    say!(language, "evidence-state", state = state, who = signer.unwrap_or_default())
}

/// What the signature of the report says, as tables have it.
pub(super) fn kept_report(report: &ReportSignature) -> String {
    let listed = match report.listed {
        None => "",
        Some(true) => ", listed",
        Some(false) => ", not listed",
    };
    let by = report.signer.as_ref().map_or(String::new(), |who| format!(" by {who}"));
    format!("{}{by}{listed}", report.state)
}

/// The same for people.
pub(super) fn report_words(report: &ReportSignature, language: Language) -> String {
    let state = match (report.state.as_str(), report.listed) {
        ("holds", None) => "holds",
        ("holds", Some(true)) => "listed",
        ("holds", Some(false)) => "unlisted",
        ("broken", _) => "broken",
        ("none", _) => "none",
        _ => return report.state.clone(),
    };
    say!(language, "evidence-report-state", state = state, who = report.signer.as_deref().unwrap_or_default())
}

/// What a recomputation changed, as tables have it.
pub(super) fn kept_words(change: &Change) -> String {
    let moved = change.in_u.map_or(String::new(), |n| format!(", {n:+.2} u"));
    format!("{}: {} before, now {}{moved}", change.what, change.earlier, change.now)
}

/// The same for people.
pub(super) fn change_words(change: &Change, language: Language) -> String {
    let what = match (change.what.as_str(), change.what.split_once(" (")) {
        ("verdict" | "findings" | "message", _) => phrase!("evidence-change-what", what = &change.what).into(),
        (_, Some((quantity, parts))) => {
            let name = quantity_words(quantity);
            phrase!("evidence-change-check", name = name, parts = parts.trim_end_matches(')')).into()
        }
        (quantity, None) => quantity_words(quantity),
    };
    let (earlier, now) = (value_words(&change.earlier), value_words(&change.now));
    match change.in_u {
        Some(n) => say!(
            language,
            "evidence-change-moved",
            what = what,
            earlier = earlier,
            now = now,
            sign = if n < 0.0 { "minus" } else { "plus" },
            moved = Figure::fixed(n.abs(), 2),
        ),
        None => say!(language, "evidence-change", what = what, earlier = earlier, now = now),
    }
}

/// A quantity by its name; one of a later version as it is.
fn quantity_words(name: &str) -> Value {
    Quantity::from_name(name).map_or_else(|| name.replace('_', " ").into(), |q| q.phrase().into())
}

/// A verdict, a value with its uncertainty, or a text as it is.
fn value_words(kept: &str) -> Value {
    match kept {
        "within" | "outside" | "not_proven" | "retake" => phrase!("evidence-verdict", verdict = kept).into(),
        "none" => phrase!("evidence-none").into(),
        "not checked" => phrase!("evidence-not-checked").into(),
        "not determined" => phrase!("evidence-not-determined").into(),
        "unreadable or altered" => phrase!("evidence-audit-unreadable").into(),
        _ => measured_words(kept).map_or_else(|| kept.into(), Value::from),
    }
}

/// `1299.3000 mm (u 0.6000)`.
fn measured_words(kept: &str) -> Option<Phrase> {
    let (value, rest) = kept.split_once(' ')?;
    let (unit, u) = rest.split_once(" (u ")?;
    let (value, u) = (Figure::of_digits(value)?, Figure::of_digits(u.strip_suffix(')')?)?);
    let unit = phrase!("plan-unit", unit = unit);
    Some(phrase!("evidence-value", value = value, unit = unit, u = u))
}
