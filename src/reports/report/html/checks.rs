//! The table of checks.

use maud::{Markup, html};

use super::number::number;
use super::{bar::bar, symbol};
use crate::record::{CheckRecord, JobRecord};
use crate::report::figures::{Measured, otherwise, percent, wanted};
use crate::report::label::{Label, reference_line, sentence};
use crate::report::todo::{Trust, reason, steps, trust};
use crate::words::{Figure, Language, kept_together, say};

/// The section.
pub(super) fn section(record: &JobRecord, language: Language) -> Markup {
    html! {
        section.keep aria-labelledby="checks" {
            h2 id="checks" { (say!(language, "report-checks")) }
            @if let Some(doubt) = doubt(trust(record), language) {
                p { strong { (doubt) } " " (say!(language, "report-findings-say-why")) }
            }
            @if record.checks.is_empty() {
                p { (say!(language, "report-checks-none")) }
            } @else {
                p.lede { (lede(record, language)) }
                (table(record, &record.checks, language))
                (bar_key(language))
            }
            @if let Some(without) = &record.checks_without_readings {
                h3 { (say!(language, "report-from-photos-alone")) }
                p.lede { (say!(language, "report-without-readings")) }
                (table(record, without, language))
            }
        }
    }
}

/// What is said where not all figures can be trusted.
pub(super) fn doubt(trust: Trust, language: Language) -> Option<String> {
    match trust {
        Trust::None => Some(say!(language, "report-none-trusted")),
        Trust::Some => Some(say!(language, "report-some-trusted")),
        Trust::All => None,
    }
}

fn lede(record: &JobRecord, language: Language) -> String {
    let sheet = &record.sheet;
    let line = reference_line(&record.reference_line);
    let least = Figure::plain(sheet.conformance_probability * 100.0);
    let rule = say!(language, "report-rule", rule = &sheet.decision_rule, least = least);
    format!("{} {rule}", say!(language, "report-checks-lede", line = line))
}

fn table(record: &JobRecord, checks: &[CheckRecord], language: Language) -> Markup {
    html! {
        table.checks.stack role="table" {
            thead role="rowgroup" { tr role="row" {
                th.c-name scope="col" role="columnheader" { (say!(language, "report-check")) }
                th.c-want scope="col" role="columnheader" { (say!(language, "report-required")) }
                th.c-meas scope="col" role="columnheader" { (say!(language, "report-measured-u")) }
                th.c-bar scope="col" role="columnheader" { (say!(language, "report-against-limits")) }
                th.c-verd scope="col" role="columnheader" { (say!(language, "report-verdict-column")) }
            } }
            tbody role="rowgroup" { @for check in checks { (row(record, check, language)) } }
        }
    }
}

fn row(record: &JobRecord, check: &CheckRecord, language: Language) -> Markup {
    let label = Label::of_check(check, language);
    let measured = Measured::of_check(check, label.quantity, language);
    html! {
        tr role="row" class=(symbol::class(check.verdict)) {
            th scope="row" role="rowheader" {
                (sentence(&label.trade))
                @for small in notes(record, check, &label, language) { small { (small) } }
            }
            td data-k=(say!(language, "report-required")) role="cell" {
                (kept_together(&wanted(check, label.quantity, language)))
                @if let Some(basis) = &check.tolerance_basis {
                    small { (say!(language, "report-tolerance-basis", basis = basis)) }
                }
            }
            td data-k=(say!(language, "report-measured-key")) role="cell" { (measured_cell(measured.as_ref(), language)) }
            td.c-bar data-k=(say!(language, "report-against-limits")) role="cell" { (bar(check, &label, language)) }
            td.c-verd data-k=(say!(language, "report-verdict-column")) role="cell" { (verdict(record, check, &label, language)) }
        }
    }
}

fn verdict(record: &JobRecord, check: &CheckRecord, label: &Label, language: Language) -> Markup {
    html! {
        (symbol::tag(check.verdict, language))
        @if !check.untrusted.is_empty() { small { strong { (say!(language, "report-not-to-be-trusted")) } } }
        @if let Some(grade) = &check.grade { small { (say!(language, "report-grade", grade = grade.replace(' ', "_"))) } }
        @if let Some(p) = check.conformance_probability {
            small { (say!(language, "report-within-limits", probability = percent(p))) }
        }
        @if is_too_small(check) { small { (say!(language, "report-too-small")) } }
        @if let Some(reason) = reason(check, language) { p.why { (said_once(record, check, &reason, language)) } }
        @for line in otherwise(check, label.quantity, language) { small { (sentence(&line)) } }
    }
}

/// A reason longer than this fills a narrow column.
const LONG_REASON: usize = 100;

/// Whether no value could be proven, and the reason does not say so already.
fn is_too_small(check: &CheckRecord) -> bool {
    let said = check
        .reason_phrase
        .as_ref()
        .is_some_and(|reason| ["advice-too-small", "advice-too-unsure"].contains(&reason.key.as_str()));
    !check.can_decide && check.value.is_some() && !said
}

/// A long reason is said once: by what to do now, or with the first of the checks that share it.
fn said_once(record: &JobRecord, check: &CheckRecord, reason: &str, language: Language) -> String {
    if reason.len() <= LONG_REASON {
        return sentence(reason);
    }
    if let Some(at) = steps(record, language).iter().position(|step| step.words == sentence(reason)) {
        return say!(language, "report-reason-in-step", step = at + 1);
    }
    let of = |c: &CheckRecord| (c.quantity.clone(), c.from.clone(), c.target.clone(), c.step.clone());
    let first = record.checks.iter().find(|c| c.reason == check.reason);
    match first {
        Some(first) if of(first) != of(check) => {
            say!(language, "report-same-reason", check = Label::of_check(first, language).trade)
        }
        _ => sentence(reason),
    }
}

fn measured_cell(measured: Option<&Measured>, language: Language) -> Markup {
    let Some(m) = measured else { return html! { (say!(language, "report-no-value")) } };
    html! {
        (number(&m.amount_with_unit()))
        @if let Some(inches) = &m.inches { small { (inches) } }
        @if let Some(side) = m.side { small { (side.long(language)) } }
    }
}

fn notes(record: &JobRecord, check: &CheckRecord, label: &Label, language: Language) -> Vec<String> {
    let mut notes: Vec<String> = label.term.iter().cloned().collect();
    notes.extend(label.extras());
    if check.reference_line != record.reference_line {
        notes.push(say!(language, "report-against-line", line = reference_line(&check.reference_line)));
    }
    if check.evidence == "reading" {
        notes.push(say!(language, "report-by-reading"));
    }
    notes
}

fn bar_key(language: Language) -> Markup {
    html! {
        ul.key aria-label=(say!(language, "report-bar-key")) {
            li { svg.bar viewBox="0 0 34 16" aria-hidden="true" { rect.band x="2" y="1" width="30" height="14" {}
                line.limit x1="2" y1="0" x2="2" y2="16" {} line.limit x1="32" y1="0" x2="32" y2="16" {} }
                (say!(language, "report-bar-limits")) }
            li { svg.bar viewBox="0 0 34 16" aria-hidden="true" { line.nominal x1="17" y1="0" x2="17" y2="16" {} }
                (say!(language, "report-bar-required")) }
            li { svg.bar viewBox="0 0 34 16" aria-hidden="true" { path.span d="M3 8H31M3 3V13M31 3V13" {} }
                (say!(language, "report-bar-true")) }
            li { (say!(language, "report-bar-mark")) }
        }
    }
}
