//! Readings, measured quantities and uncertainty budgets.

use maud::{Markup, html};

use crate::record::{CheckRecord, JobRecord, MeasuredRecord, ReadingRecord};
use crate::report::figures::Measured;
use crate::report::label::{Label, reference_line, sentence};

/// Laser, tape and level against the photos.
pub(super) fn readings(record: &JobRecord) -> Markup {
    html! {
        @if !record.readings.is_empty() {
            section aria-labelledby="readings" {
                h2 id="readings" { "Readings against the photos" }
                p.lede {
                    "± is the standard uncertainty u. E"
                    sub { "n" }
                    " is the difference over the root of the summed squares of both expanded uncertainties \
                     (ISO/IEC 17043): up to 1 they agree."
                }
                table.stack role="table" {
                    thead role="rowgroup" { tr role="row" {
                        @for name in ["Reading", "Read", "Photos", "E_n", "Result"] {
                            th scope="col" role="columnheader" { (name) }
                        }
                    } }
                    tbody role="rowgroup" { @for reading in &record.readings { (reading_row(reading)) } }
                }
            }
        }
    }
}

fn reading_row(reading: &ReadingRecord) -> Markup {
    let label = Label::new(&reading.quantity, reading.from.as_deref());
    let show = |value, u| Measured::new(label.quantity, &reading.unit, value, u);
    let result = match reading.agrees {
        Some(true) => "✓ agrees",
        Some(false) => "✕ disagrees",
        None => "– not comparable",
    };
    html! {
        tr role="row" {
            th scope="row" role="rowheader" {
                (sentence(&label.full()))
                @if let Some(instrument) = &reading.instrument { small { "by " (instrument) } }
            }
            td role="cell" data-k="read" { (amount(&show(reading.value, Some(reading.standard_uncertainty)))) }
            td role="cell" data-k="photos" {
                @match reading.photo_value {
                    Some(value) => (amount(&show(value, reading.photo_standard_uncertainty))),
                    None => "not determined",
                }
            }
            td role="cell" data-k="E_n" {
                @match reading.normalized_error { Some(e) => { span.num { (format!("{:.2}", e.abs())) } } None => "–" }
            }
            td role="cell" data-k="result" {
                (result)
                small { @if reading.used { "used in the result" } @else { "compared only, not used" } }
            }
        }
    }
}

fn amount(m: &Measured) -> Markup {
    html! { span.num { (m.amount_with_unit()) } @if let Some(side) = m.side { small { (side.long) } } }
}

/// Every quantity that the photos determine.
pub(super) fn measured(record: &JobRecord) -> Markup {
    html! {
        section aria-labelledby="measured" {
            h2 id="measured" { "All measured quantities" }
            @if record.measured.is_empty() {
                p { "The photos determine no quantity of the set-up." }
            } @else {
                p.lede { "Against " (reference_line(&record.reference_line)) ". ± is the standard uncertainty u." }
                table {
                    thead { tr { th scope="col" { "Quantity" } th scope="col" { "Value ± u" } th scope="col" { "Direction" } } }
                    tbody { @for (key, value) in in_order(record) { (measured_row(key, value)) } }
                }
            }
        }
    }
}

/// In the order in which quantities are defined, unknown ones last.
fn in_order(record: &JobRecord) -> Vec<(&String, &MeasuredRecord)> {
    let mut all: Vec<_> = record.measured.iter().collect();
    all.sort_by_key(|(key, _)| {
        let label = Label::of_key(key);
        (label.target.clone(), label.quantity.is_none(), label.quantity)
    });
    all
}

fn measured_row(key: &str, value: &MeasuredRecord) -> Markup {
    let label = Label::of_key(key);
    let m = Measured::new(label.quantity, &value.unit, value.value, Some(value.standard_uncertainty));
    html! {
        tr {
            th scope="row" { (sentence(&label.full())) }
            td { span.num { (m.amount_with_unit()) } }
            td { (m.side.map_or("", |s| s.long)) }
        }
    }
}

/// Where each check's uncertainty comes from.
pub(super) fn budgets(record: &JobRecord) -> Markup {
    let with: Vec<&CheckRecord> = record.checks.iter().filter(|c| !c.budget.is_empty()).collect();
    html! {
        @if !with.is_empty() {
            section aria-labelledby="budget" {
                h2 id="budget" { "Where the uncertainty comes from" }
                p.lede { "Each source's standard uncertainty and its share of the variance (GUM)." }
                div.budgets { @for check in with { (budget(check)) } }
            }
        }
    }
}

fn budget(check: &CheckRecord) -> Markup {
    let label = Label::of_check(check);
    html! {
        details {
            summary { (sentence(&label.full())) (budget_total(check)) }
            table {
                thead { tr { th scope="col" { "Source" } th scope="col" { "u" } th scope="col" { "Share" } th scope="col" { "" } } }
                tbody {
                    @for line in &check.budget {
                        @let share = if line.share.is_finite() { line.share.clamp(0.0, 1.0) * 100.0 } else { 0.0 };
                        tr {
                            td { (line.source) }
                            td { span.num { (significant(line.standard_uncertainty)) " " (check.unit) } }
                            td { span.num { (format!("{share:.0} %")) } }
                            td style="width:30%" aria-hidden="true" { span.share style=(format!("width:{share:.0}%")) {} }
                        }
                    }
                }
            }
        }
    }
}

fn budget_total(check: &CheckRecord) -> String {
    let Some(u) = check.standard_uncertainty else { return String::new() };
    let freedom = match check.degrees_of_freedom {
        Some(n) => format!("{n:.0} degrees of freedom"),
        None => "infinite degrees of freedom".into(),
    };
    let factor = check.coverage_factor.map_or_else(String::new, |k| format!(", coverage factor {k:.2}"));
    format!(": u = {} {}, {freedom}{factor}", significant(u), check.unit)
}

fn significant(u: f64) -> String {
    crate::quantity::with_uncertainty(u, u).1
}
