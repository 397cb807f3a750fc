//! The statements of the customer's page.

use crate::quantity::Quantity;
use crate::record::{CheckRecord, JobRecord, Level, PhotoRecord, Verdict};
use crate::report::figures::{Measured, amount, moment, plain_unit, wanted_plainly};
use crate::report::html::verdict_class;
use crate::report::label::{Label, sentence};
use crate::report::side::side;
use crate::report::todo::figures_are_void;
use crate::words::{Figure, Language, Phrase, Value, phrase, say};

/// The answer in one sentence.
pub(super) fn answer(verdict: Verdict, language: Language) -> String {
    say!(language, "customer-answer", verdict = verdict_class(verdict))
}

/// Whether anything forbids to rely on the single checks.
fn held_up(record: &JobRecord) -> bool {
    record.findings.iter().any(|f| matches!(f.level, Level::Void | Level::Stop) && !names_a_check(record, &f.code))
}

/// A stand that is off is said by its check; everything else that stops a job
/// is about the photos or the set-up as a whole.
fn names_a_check(record: &JobRecord, code: &str) -> bool {
    code.starts_with("stand-")
        && code != "stand-moved-between-photos"
        && record.checks.iter().any(|c| c.verdict == Verdict::Outside)
}

/// What the statements below it are: proven, or within by the measured value alone.
pub(super) fn proven_heading(record: &JobRecord, language: Language) -> String {
    match (record.sheet.decision_rule.as_str(), record.sheet.likely_only()) {
        ("simple", _) => say!(language, "customer-proven-simple"),
        (_, Some(least)) => say!(language, "customer-proven-likely", least = Figure::plain(least)),
        _ => say!(language, "customer-proven"),
    }
}

/// Proven, one statement each.
pub(super) fn proven(record: &JobRecord, language: Language) -> Vec<String> {
    if held_up(record) {
        return Vec::new();
    }
    let within = record.checks.iter().filter(|c| c.verdict == Verdict::Within);
    within.map(|c| say!(language, "customer-within", figures = figures(c, language))).collect()
}

/// Not proven, or not looked at, one statement each.
pub(super) fn not_proven(record: &JobRecord, language: Language) -> Vec<String> {
    let mut all = Vec::new();
    if figures_are_void(record) {
        all.push(say!(language, "customer-void"));
    } else if held_up(record) {
        all.push(say!(language, "customer-held"));
    }
    all.extend(record.checks.iter().filter_map(|c| open(record, c, language)));
    let name = |quantity: &str| plain_name(quantity, None, language);
    all.extend(record.sheet.waived.iter().map(|w| {
        let because = w.because.trim_end_matches('.');
        say!(language, "customer-waived", name = name(&w.quantity), because = because)
    }));
    all.extend(record.sheet.not_checked.iter().map(|q| say!(language, "customer-not-checked", name = name(q))));
    if record.checks.is_empty() {
        all.push(say!(language, "customer-no-check"));
    }
    all
}

fn open(record: &JobRecord, check: &CheckRecord, language: Language) -> Option<String> {
    let name = plain_name(&check.quantity, Some(check), language);
    let statement = match check.verdict {
        Verdict::Retake if check.value.is_none() => phrase!("customer-not-seen", name = name),
        _ if figures_are_void(record) => phrase!("customer-not-trusted", name = name),
        Verdict::NotProven if !check.untrusted.is_empty() => phrase!("customer-not-trusted", name = name),
        Verdict::Within if held_up(record) => phrase!("customer-held-up", name = name),
        Verdict::Within => return None,
        Verdict::Outside => phrase!("customer-outside", figures = figures(check, language)),
        Verdict::NotProven | Verdict::Retake => phrase!("customer-too-close", figures = figures(check, language)),
    };
    Some(statement.say(language))
}

/// `How far the target stood from the nose: 1301.8 mm (give or take 1.8 mm); required: 1300 mm, at most 10 mm off`.
fn figures(check: &CheckRecord, language: Language) -> String {
    let quantity = Quantity::from_name(&check.quantity);
    let name = plain_name(&check.quantity, Some(check), language);
    let figures = measured(check, quantity, language);
    if check.evidence == "reading" {
        say!(language, "customer-named-read", name = name, figures = figures)
    } else {
        say!(language, "customer-named", name = name, figures = figures)
    }
}

fn measured(check: &CheckRecord, quantity: Option<Quantity>, language: Language) -> Phrase {
    let Some(m) = Measured::of_check(check, quantity, language) else { return phrase!("customer-no-value") };
    let plain = |figure: Value| amount(figure, plain_unit(&check.unit)).say(language);
    let value = match m.side {
        Some(side) => {
            phrase!("report-to-side", amount = plain(m.amount().into()), side = side.long(language)).say(language)
        }
        None => plain(m.amount().into()),
    };
    let value = match &m.inches {
        Some(inches) => phrase!("report-with-inches", amount = value, inches = inches).say(language),
        None => value,
    };
    let allowed = allowed(check, quantity, language);
    match m.uncertainty() {
        Some(u) => phrase!("customer-figures", amount = value, u = plain(u.into()), allowed = allowed),
        None => phrase!("customer-figure-alone", amount = value, allowed = allowed),
    }
}

/// `1500 mm, at most 10 mm off`; limits that are not the same both ways as the sheet has them.
fn allowed(check: &CheckRecord, quantity: Option<Quantity>, language: Language) -> String {
    match (check.lower, check.upper) {
        (Some(lower), Some(upper)) if (upper + lower - 2.0 * check.nominal).abs() < 1e-6 * (upper - lower).abs() => {
            let half = amount(Figure::plain((upper - lower) / 2.0), plain_unit(&check.unit));
            say!(language, "customer-allowed", nominal = nominal(check, quantity, language), half = half)
        }
        _ => wanted_plainly(check, quantity, language),
    }
}

fn nominal(check: &CheckRecord, quantity: Option<Quantity>, language: Language) -> Phrase {
    let value = check.nominal;
    let shown = amount(Figure::plain(if quantity.is_some() { value.abs() } else { value }), plain_unit(&check.unit));
    match quantity.filter(|_| value != 0.0).and_then(|q| side(q, value > 0.0)) {
        Some(side) => phrase!("report-to-side", amount = shown, side = side.short(language)),
        None => shown,
    }
}

/// What a check is about in everybody's words.
fn plain_name(quantity: &str, check: Option<&CheckRecord>, language: Language) -> String {
    use Quantity as Q;
    let from = check.and_then(|c| c.from.as_deref());
    let of = |quantity: &str| say!(language, "customer-quantity", quantity = quantity);
    let name = match Quantity::from_name(quantity) {
        Some(Q::Distance) => match from {
            Some(from) => say!(language, "customer-distance-from", datum = from),
            None => of("distance"),
        },
        Some(Q::LateralOffset | Q::LateralFromNose) => of("centring"),
        Some(Q::Height | Q::HeightFromNose) => of("height"),
        Some(Q::Yaw) => of("yaw"),
        Some(Q::Pitch) => of("pitch"),
        Some(Q::Roll) => of("roll"),
        _ => sentence(&Label::new(quantity, from, language).trade),
    };
    let extras = check.map(|c| Label::of_check(c, language).extras()).unwrap_or_default();
    if extras.is_empty() {
        return name;
    }
    say!(language, "customer-with-extras", name = name, extras = extras.join(", "))
}

/// More photos than this are one sentence, so that the page stays one page.
const FEW_PHOTOS: usize = 4;

/// Which photos it rests on.
pub(super) fn photos(record: &JobRecord, language: Language) -> Vec<String> {
    let one = |(i, photo): (usize, &PhotoRecord)| {
        let used = if photo.unused_because.is_none() { "yes" } else { "no" };
        let (number, file) = (i + 1, &photo.file);
        match photo.taken.as_deref() {
            Some(taken) => {
                let taken = Value::moment(taken);
                say!(language, "customer-photo-taken", used = used, number = number, file = file, taken = taken)
            }
            None => say!(language, "customer-photo", used = used, number = number, file = file),
        }
    };
    let all: Vec<String> = record.photos.iter().enumerate().map(one).collect();
    if all.len() <= FEW_PHOTOS {
        return all;
    }
    vec![say!(language, "customer-many-photos", count = all.len(), photos = all.join("; "))]
}

/// Whose limits they are.
pub(super) fn whose(record: &JobRecord, language: Language) -> String {
    match record.sheet.source.trim() {
        "" => say!(language, "customer-whose-nobody"),
        source => source.to_owned(),
    }
}

/// What it means, and what it does not.
pub(super) fn meaning(record: &JobRecord, language: Language) -> Vec<String> {
    let result = record.context.calibration.as_ref().and_then(|c| c.get("result")).and_then(|r| r.as_str());
    let scan = result.map(|result| {
        let result = phrase!("report-calibration-result", result = result);
        say!(language, "customer-meaning-scan", result = result)
    });
    let first = [say!(language, "customer-meaning-moment"), say!(language, "customer-meaning-not")];
    let then = [
        say!(language, "customer-meaning-u"),
        say!(language, "customer-meaning-limits"),
        say!(language, "customer-meaning-trained"),
    ];
    first.into_iter().chain(scan).chain(then).collect()
}

/// Vehicle, order, date: what stands at the top.
pub(super) fn subject(record: &JobRecord, language: Language) -> Vec<(String, String)> {
    let c = &record.context;
    let sensor = if record.sheet.title.is_empty() { &c.setup } else { &record.sheet.title };
    let all = [
        (say!(language, "customer-what"), Some(sensor.clone())),
        (say!(language, "customer-vehicle"), c.vehicle.clone()),
        (say!(language, "customer-vin"), c.vin.clone()),
        (say!(language, "customer-repair-order"), c.series.clone()),
        (say!(language, "customer-photos-taken"), c.taken.as_deref().map(|taken| moment(taken, language))),
        (say!(language, "customer-job"), Some(record.job.clone())),
    ];
    all.into_iter().filter_map(|(name, value)| Some((name, value.filter(|v| !v.is_empty())?))).collect()
}
