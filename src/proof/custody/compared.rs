//! In what two records of one job differ: what was recorded, and what measuring again says.
//!
//! What decides comes first: inputs, verdicts, findings, values. Where that agrees, everything else is
//! compared as well, so that nothing stands in a sealed record that nobody has made again.

use serde_json::Value as Json;

use crate::evidence::RESULT;
use crate::folder::{Origin, is_embedded};
use crate::record::{CheckRecord, InputRecord, JobRecord, Level};
use crate::words::{Phrase, Value, phrase};

/// Two values agree where they differ by no more than this share of their
/// standard uncertainty: rounding and another processor, not another finding.
pub const AGREE_U: f64 = 0.01;
/// Other measured numbers agree to this much of a mm, a degree, a pixel, a probability,
pub(super) const AGREE: f64 = 1e-3;
/// or to this share of themselves, where that is more.
pub(super) const AGREE_SHARE: f64 = 1e-5;
/// What a file says is there again to the last digits that a number in text keeps.
const SAME: f64 = 1e-9;

/// Who measured: its name is compared with what decides, its version says how the rest is.
const TOOL: &str = "tool";
/// What a photo's bytes bear, which is compared by the photo.
const CREDENTIALS: (&str, &str) = ("photos", "credentials");
/// Where a model was found, in the list of what was read: a sealed one lies in its folder.
const FOUND_IN: (&str, &str) = ("inputs", "found_in");
/// Quantities that a sheet leaves out: another version knew others.
const NOT_CHECKED: &str = "sheet.not_checked";
/// Parts of a record that the job's own files say, or that follow from them without a sentence.
const FROM_FILES: [&str; 3] = ["context", "sheet", "reference_line"];
/// The same of a check.
const CHECK_FROM_FILES: [&str; 9] =
    ["from", "target", "step", "reference_line", "unit", "nominal", "lower", "upper", "evidence"];
/// What a check says in numbers and marks that every version of the program has.
const CHECK_FIGURES: [&str; 5] = ["expanded_uncertainty", "conformance_probability", "can_decide", "grade", "move"];

/// In what two records of one job differ. Of a record by another version of the program, which may say other
/// sentences and know other findings, only what the job's files say and the checks' figures are compared.
pub fn differences(recorded: &JobRecord, now: &JobRecord) -> Vec<Phrase> {
    let mut found = deciding(recorded, now);
    if found.is_empty() {
        found = files_differ(recorded, now, &[]);
    }
    if found.is_empty() {
        let older = !recorded.tool.is_like(&now.tool);
        let mut walk = Walk { found: Vec::new(), near: if older { roughly } else { measured }, older };
        let (a, b) = (json(recorded), json(now));
        if older {
            walk.checks(&a, &b, &CHECK_FIGURES);
        } else {
            walk.compare("", &a, &b);
            walk.found.extend(found_otherwise(recorded, |n| now.inputs.get(n).is_some_and(|i| i.found_in.is_some())));
        }
        found = walk.found;
    }
    found
}

/// In what two records differ of what the job's own files say, but for these keys.
pub(super) fn files_differ(recorded: &JobRecord, now: &JobRecord, but_for: &[&str]) -> Vec<Phrase> {
    let same = |a: f64, b: f64| (a - b).abs() <= SAME * a.abs().max(b.abs());
    let mut walk = Walk { found: Vec::new(), near: same, older: !recorded.tool.is_like(&now.tool) };
    let (mut a, mut b) = (json(recorded), json(now));
    for key in but_for {
        for record in [&mut a, &mut b] {
            record["context"].as_object_mut().map(|context| context.remove(*key));
        }
    }
    for part in FROM_FILES {
        walk.compare(part, &a[part], &b[part]);
    }
    walk.checks(&a, &b, &CHECK_FROM_FILES);
    walk.found
}

fn json(record: &JobRecord) -> Json {
    serde_json::to_value(record).unwrap_or_default()
}

fn measured(a: f64, b: f64) -> bool {
    (a - b).abs() <= AGREE.max(AGREE_SHARE * a.abs())
}

/// Likewise of what follows from uncertainties, which by another version agree to a hundredth of themselves.
fn roughly(a: f64, b: f64) -> bool {
    (a - b).abs() <= AGREE.max(AGREE_U * a.abs())
}

/// What is compared elsewhere, by its place: people choose names of prerequisites and of what a scan tool says.
fn passed(place: &str, key: &str) -> bool {
    let one_of = |(list, own): (&str, &str)| {
        let number = place.strip_prefix(list).and_then(|rest| rest.strip_prefix('[')?.strip_suffix(']'));
        key == own && number.is_some_and(|n| n.bytes().all(|b| b.is_ascii_digit()))
    };
    place.is_empty() && key == TOOL || one_of(CREDENTIALS) || one_of(FOUND_IN)
}

/// Inputs that a result of this edition says were found where they were not: `shared` tells of the input of this number
/// whether it lies with the folder's models, where sealing puts what was no file of the job. Among which models the
/// job found it, no folder shows; the program's own ones have their bytes.
pub(super) fn found_otherwise(recorded: &JobRecord, shared: impl Fn(usize) -> bool) -> Vec<Phrase> {
    let right = |n: usize, input: &InputRecord| match &input.found_in {
        None => !shared(n),
        Some(place) if !shared(n) || Origin::of_shared(place).is_none() => false,
        Some(place) if place == Origin::Embedded.words() => is_embedded(&input.role, &input.file, &input.sha256),
        Some(_) => true,
    };
    let other = |(n, input): (usize, &InputRecord)| {
        let place = phrase!("evidence-difference-place", file = RESULT, place = format!("inputs[{n}].found_in"));
        let said = input.found_in.as_deref().map_or_else(|| phrase!("evidence-nothing").into(), Value::from);
        let due = if shared(n) { phrase!("evidence-found-shared") } else { phrase!("evidence-found-own") };
        (!right(n, input)).then(|| difference(place.into(), said, due.into()))
    };
    recorded.inputs.iter().enumerate().filter_map(other).collect()
}

/// That a result says that another program made it.
pub(super) fn another_program(recorded: &JobRecord, now: &JobRecord) -> Option<Phrase> {
    let place = phrase!("evidence-difference-place", file = RESULT, place = "tool.name");
    let names = [&recorded.tool.name, &now.tool.name];
    (names[0] != names[1]).then(|| difference(place.into(), names[0].into(), names[1].into()))
}

/// Two records walked through key by key.
struct Walk {
    found: Vec<Phrase>,
    /// When two numbers agree.
    near: fn(f64, f64) -> bool,
    /// Whether another version of the program recorded: it may not have known a key, nor every quantity.
    older: bool,
}

impl Walk {
    fn compare(&mut self, place: &str, a: &Json, b: &Json) {
        if self.older && (a.is_null() || place == NOT_CHECKED) {
            return;
        }
        match (a, b) {
            (Json::Object(x), Json::Object(y)) => {
                let more = y.keys().filter(|key| !x.contains_key(*key));
                for key in x.keys().chain(more).filter(|key| !passed(place, key)) {
                    let below = if place.is_empty() { key.clone() } else { format!("{place}.{key}") };
                    self.compare(&below, &a[key], &b[key]);
                }
            }
            (Json::Array(x), Json::Array(y)) if x.len() == y.len() => {
                for (n, (one, other)) in x.iter().zip(y).enumerate() {
                    self.compare(&format!("{place}[{n}]"), one, other);
                }
            }
            (Json::Number(x), Json::Number(y)) => {
                let near = x.as_f64().zip(y.as_f64()).is_some_and(|(x, y)| (self.near)(x, y));
                self.note(near, place, a, b);
            }
            _ => self.note(a == b, place, a, b),
        }
    }

    /// These keys of the checks, which are as many.
    fn checks(&mut self, a: &Json, b: &Json, keys: &[&str]) {
        let of = |record: &Json| record["checks"].as_array().cloned().unwrap_or_default();
        let (all, others) = (of(a), of(b));
        for (n, one) in all.iter().enumerate() {
            let other = others.get(n).unwrap_or(&Json::Null);
            keys.iter().for_each(|key| self.compare(&format!("checks[{n}].{key}"), &one[*key], &other[*key]));
        }
    }

    fn note(&mut self, same: bool, place: &str, a: &Json, b: &Json) {
        if !same {
            let what = phrase!("evidence-difference-place", file = RESULT, place = place);
            self.found.push(difference(what.into(), told(a), told(b)));
        }
    }
}

/// A value of a record, cut where it is long.
fn told(value: &Json) -> Value {
    const MOST: usize = 80;
    let text = match value {
        Json::Null => return phrase!("evidence-nothing").into(),
        Json::String(text) => text.clone(),
        other => other.to_string(),
    };
    let cut: String = text.chars().take(MOST).collect();
    if cut.len() < text.len() { (cut + "…").into() } else { cut.into() }
}

/// In what two records differ of that which decides.
fn deciding(recorded: &JobRecord, now: &JobRecord) -> Vec<Phrase> {
    let mut found = Vec::new();
    let mut same = |what: Value, a: Value, b: Value| {
        if a != b {
            found.push(difference(what, a, b));
        }
    };
    same(part("job"), (&recorded.job).into(), (&now.job).into());
    same(part("verdict"), recorded.verdict.name().into(), now.verdict.name().into());
    same(part("inputs"), digests(recorded).into(), digests(now).into());
    // Another version may name more or less of what only deserves a look.
    let least = if recorded.tool.is_like(&now.tool) { Level::Note } else { Level::Stop };
    same(part("findings"), codes(recorded, least).into(), codes(now, least).into());
    same(part("checks"), checks(recorded).into(), checks(now).into());
    for (a, b) in recorded.checks.iter().zip(&now.checks) {
        same((&a.quantity).into(), a.verdict.name().into(), b.verdict.name().into());
        if !near(of_check(a), of_check(b), [AGREE_U; 2]) {
            same((&a.quantity).into(), shown(a.value), shown(b.value));
        }
    }
    let keys = |r: &JobRecord| r.measured.keys().cloned().collect::<Vec<_>>().join(" ");
    same(part("quantities"), keys(recorded).into(), keys(now).into());
    for (key, a) in &recorded.measured {
        let Some(b) = now.measured.get(key) else { continue };
        if !near(Some((a.value, a.standard_uncertainty)), Some((b.value, b.standard_uncertainty)), [AGREE_U; 2]) {
            same(key.into(), shown(Some(a.value)), shown(Some(b.value)));
        }
    }
    found.extend(another_program(recorded, now));
    found
}

/// A check's value and its standard uncertainty.
pub(super) fn of_check(check: &CheckRecord) -> Option<(f64, f64)> {
    check.value.zip(check.standard_uncertainty)
}

/// Whether two values with their standard uncertainties agree: the values, and the uncertainties, each to a share of
/// the first one's uncertainty.
pub(super) fn near(a: Option<(f64, f64)>, b: Option<(f64, f64)>, [share, of_u]: [f64; 2]) -> bool {
    match (a, b) {
        (Some((x, u)), Some((y, v))) => (x - y).abs() <= share * u && (u - v).abs() <= of_u * u,
        (a, b) => a.is_none() && b.is_none(),
    }
}

/// In what two records differ: what it is, what was recorded, and what is said now.
pub(super) fn difference(what: Value, recorded: Value, now: Value) -> Phrase {
    phrase!("evidence-difference", what = what, recorded = recorded, now = now)
}

/// What differs, where it is no quantity.
pub(super) fn part(what: &str) -> Value {
    phrase!("evidence-difference-what", what = what).into()
}

/// With all its digits.
pub(super) fn shown(value: Option<f64>) -> Value {
    let Some(value) = value else { return phrase!("evidence-nothing").into() };
    Value::digits(&value.to_string())
}

fn digests(record: &JobRecord) -> String {
    let mut all: Vec<String> = record.inputs.iter().map(|i| format!("{} {} {}", i.role, i.file, i.sha256)).collect();
    all.sort();
    all.join(", ")
}

/// The findings' codes of this level and above.
fn codes(record: &JobRecord, least: Level) -> String {
    let mut all: Vec<&str> = record.findings.iter().filter(|f| f.level <= least).map(|f| f.code.as_str()).collect();
    all.sort_unstable();
    all.join(" ")
}

pub(super) fn checks(record: &JobRecord) -> String {
    let named = |c: &CheckRecord| format!("{} {:?} {:?} {:?}", c.quantity, c.from, c.target, c.step);
    record.checks.iter().map(named).collect::<Vec<_>>().join(", ")
}
