//! The table of checks.

use maud::{Markup, html};

use super::{bar::bar, symbol};
use crate::record::{CheckRecord, JobRecord};
use crate::report::figures::{Measured, otherwise, percent, plain, wanted};
use crate::report::label::{Label, reference_line, sentence};
use crate::report::todo::{Trust, trust};

/// The section.
pub(super) fn section(record: &JobRecord) -> Markup {
    html! {
        section.keep aria-labelledby="checks" {
            h2 id="checks" { "Checks" }
            @match trust(record) {
                Trust::None => p { strong { "The figures can't be trusted." } " The findings say why." },
                Trust::Some => p { strong { "Not all figures can be trusted." } " The findings say why." },
                Trust::All => {}
            }
            @if record.checks.is_empty() {
                p { "The set-up sheet checks nothing." }
            } @else {
                p.lede { (rule_words(record)) }
                (table(record, &record.checks))
                (bar_key())
            }
            @if let Some(without) = &record.checks_without_readings {
                h3 { "The same checks from the photos alone" }
                p.lede { "Readings took part in the table above. Without them:" }
                (table(record, without))
            }
        }
    }
}

fn rule_words(record: &JobRecord) -> String {
    let line = reference_line(&record.reference_line);
    let sheet = &record.sheet;
    let rule = match sheet.decision_rule.as_str() {
        "guarded" => format!(
            "“Within” needs at least {} % probability that the true value lies inside the limits; so does “outside”.",
            plain(sheet.conformance_probability * 100.0)
        ),
        "simple" => "The measured value alone is held against the limits; its uncertainty does not count.".into(),
        "binary" => "A guard band of one expanded uncertainty is kept inside the limits (ILAC-G8:2019, binary).".into(),
        "four_way" => "Pass, conditional pass, conditional fail, fail (ILAC-G8:2019).".into(),
        other => format!("Decision rule: {other}."),
    };
    format!("Measured against {line}. ± is the expanded uncertainty U (95 %). {rule}")
}

fn table(record: &JobRecord, checks: &[CheckRecord]) -> Markup {
    html! {
        table.checks.stack role="table" {
            thead role="rowgroup" { tr role="row" {
                th.c-name scope="col" role="columnheader" { "Check" }
                th.c-want scope="col" role="columnheader" { "Required" }
                th.c-meas scope="col" role="columnheader" { "Measured ± U" }
                th.c-bar scope="col" role="columnheader" { "Against the limits" }
                th.c-verd scope="col" role="columnheader" { "Verdict" }
            } }
            tbody role="rowgroup" { @for check in checks { (row(record, check)) } }
        }
    }
}

fn row(record: &JobRecord, check: &CheckRecord) -> Markup {
    let label = Label::of_check(check);
    let measured = Measured::of_check(check, label.quantity);
    html! {
        tr role="row" class=(symbol::class(check.verdict)) {
            th scope="row" role="rowheader" {
                (sentence(&label.trade))
                @for small in notes(record, check, &label) { small { (small) } }
            }
            td data-k="required" role="cell" {
                (wanted(check, label.quantity))
                @if let Some(basis) = &check.tolerance_basis { small { "tolerance: " (basis) } }
            }
            td data-k="measured" role="cell" { (measured_cell(measured.as_ref())) }
            td.c-bar data-k="against the limits" role="cell" { (bar(check, &label)) }
            td.c-verd data-k="verdict" role="cell" {
                (symbol::tag(check.verdict))
                @if !check.untrusted.is_empty() { small { strong { "not to be trusted" } } }
                @if let Some(grade) = &check.grade { small { (grade) } }
                @if let Some(p) = check.conformance_probability { small { (percent(p)) " within the limits" } }
                @if !check.can_decide { small { "these photos and this kit cannot prove so small a tolerance" } }
                @if let Some(reason) = &check.reason { p.why { (said_once(record, check, reason)) } }
                @for line in otherwise(check, label.quantity) { small { (sentence(&line)) } }
            }
        }
    }
}

/// A reason longer than this fills a narrow column.
const LONG_REASON: usize = 100;

/// A long reason that several checks share is said with the first of them.
fn said_once(record: &JobRecord, check: &CheckRecord, reason: &str) -> String {
    let of = |c: &CheckRecord| (c.quantity.clone(), c.from.clone(), c.target.clone(), c.step.clone());
    let first = record.checks.iter().find(|c| c.reason.as_deref() == Some(reason));
    match first {
        Some(first) if reason.len() > LONG_REASON && of(first) != of(check) => {
            format!("For the same reason as {}.", Label::of_check(first).trade)
        }
        _ => sentence(reason),
    }
}

fn measured_cell(measured: Option<&Measured>) -> Markup {
    let Some(m) = measured else { return html! { "no value" } };
    html! {
        span.num { (m.amount_with_unit()) }
        @if let Some(inches) = &m.inches { small { (inches) } }
        @if let Some(side) = m.side { small { (side.long) } }
    }
}

fn notes(record: &JobRecord, check: &CheckRecord, label: &Label) -> Vec<String> {
    let mut notes: Vec<String> = label.term.iter().map(|term| (*term).to_owned()).collect();
    notes.extend(label.extras());
    if check.reference_line != record.reference_line {
        notes.push(format!("against {}", reference_line(&check.reference_line)));
    }
    if check.evidence == "reading" {
        notes.push("decided by a reading".into());
    }
    notes
}

fn bar_key() -> Markup {
    html! {
        ul.key aria-label="How to read the bars" {
            li { svg.bar viewBox="0 0 34 16" aria-hidden="true" { rect.band x="2" y="1" width="30" height="14" {}
                line.limit x1="2" y1="0" x2="2" y2="16" {} line.limit x1="32" y1="0" x2="32" y2="16" {} } "limits" }
            li { svg.bar viewBox="0 0 34 16" aria-hidden="true" { line.nominal x1="17" y1="0" x2="17" y2="16" {} } "required" }
            li { svg.bar viewBox="0 0 34 16" aria-hidden="true" { path.span d="M3 8H31M3 3V13M31 3V13" {} }
                "where the true value lies (95 %)" }
            li { "The mark in it is the measured value, in the shape of its verdict." }
        }
    }
}
