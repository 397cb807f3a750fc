//! Readings, measured quantities and uncertainty budgets.

use maud::{Markup, html};

use super::number::number;
use crate::record::{CheckRecord, JobRecord, MeasuredRecord, ReadingRecord, told};
use crate::report::figures::{Measured, amount};
use crate::report::label::{Label, reference_line, sentence};
use crate::report::text::agreement;
use crate::words::{Figure, Language, Value, phrase, say};

/// Laser, tape and level against the photos.
pub(super) fn readings(record: &JobRecord, language: Language) -> Markup {
    let columns = columns(language);
    html! {
        @if !record.readings.is_empty() {
            section aria-labelledby="readings" {
                h2 id="readings" { (say!(language, "report-readings")) }
                p.lede { (say!(language, "report-readings-lede")) }
                table.stack role="table" {
                    thead role="rowgroup" { tr role="row" {
                        @for name in &columns { th scope="col" role="columnheader" { (name) } }
                    } }
                    tbody role="rowgroup" {
                        @for reading in &record.readings { (reading_row(reading, &columns, language)) }
                    }
                }
            }
        }
    }
}

fn columns(language: Language) -> [String; 5] {
    [
        say!(language, "report-reading-column"),
        say!(language, "report-read"),
        say!(language, "report-photos"),
        "E_n".to_owned(),
        say!(language, "report-result"),
    ]
}

fn reading_row(reading: &ReadingRecord, columns: &[String; 5], language: Language) -> Markup {
    let label = Label::new(&reading.quantity, reading.from.as_deref(), language);
    let show = |value, u| Measured::new(label.quantity, &reading.unit, value, u, language);
    let sign = match reading.agrees {
        Some(true) => '✓',
        Some(false) => '✕',
        None => '–',
    };
    let instrument = reading.instrument.as_ref().map(|i| phrase!("report-instrument", instrument = i));
    html! {
        tr role="row" {
            th scope="row" role="rowheader" {
                (sentence(&label.full()))
                @if let Some(instrument) = instrument {
                    small { (say!(language, "report-by-instrument", instrument = instrument)) }
                }
            }
            td role="cell" data-k=(columns[1]) {
                (with_side(&show(reading.value, Some(reading.standard_uncertainty)), language))
            }
            td role="cell" data-k=(columns[2]) {
                @match reading.photo_value {
                    Some(value) => (with_side(&show(value, reading.photo_standard_uncertainty), language)),
                    None => (say!(language, "report-not-determined")),
                }
            }
            td role="cell" data-k=(columns[3]) {
                @match reading.normalized_error {
                    Some(e) => { span.num { (Figure::fixed(e.abs(), 2).say(language)) } }
                    None => "–"
                }
            }
            td role="cell" data-k=(columns[4]) {
                (sign) " " (agreement(reading.agrees, language))
                small {
                    @if reading.used { (say!(language, "report-reading-used")) }
                    @else { (say!(language, "report-reading-compared")) }
                }
            }
        }
    }
}

fn with_side(m: &Measured, language: Language) -> Markup {
    html! { (number(&m.amount_with_unit())) @if let Some(side) = m.side { small { (side.long(language)) } } }
}

/// Every quantity that the photos determine.
pub(super) fn measured(record: &JobRecord, language: Language) -> Markup {
    let line = reference_line(&record.reference_line);
    html! {
        section aria-labelledby="measured" {
            h2 id="measured" { (say!(language, "report-all-measured")) }
            @if record.measured.is_empty() {
                p { (say!(language, "report-all-measured-none")) }
            } @else {
                p.lede { (say!(language, "report-all-measured-lede", line = line)) }
                table.stack {
                    thead { tr {
                        th scope="col" { (say!(language, "report-quantity-column")) }
                        th scope="col" { (say!(language, "report-value-u")) }
                        th scope="col" { (say!(language, "report-direction")) }
                    } }
                    tbody { @for (key, value) in in_order(record, language) { (measured_row(key, value, language)) } }
                }
            }
        }
    }
}

/// In the order in which quantities are defined, unknown ones last.
fn in_order(record: &JobRecord, language: Language) -> Vec<(&String, &MeasuredRecord)> {
    let mut all: Vec<_> = record.measured.iter().collect();
    all.sort_by_key(|(key, _)| {
        let label = Label::of_key(key, language);
        (label.target.clone(), label.quantity.is_none(), label.quantity)
    });
    all
}

fn measured_row(key: &str, value: &MeasuredRecord, language: Language) -> Markup {
    let label = Label::of_key(key, language);
    let m = Measured::new(label.quantity, &value.unit, value.value, Some(value.standard_uncertainty), language);
    html! {
        tr {
            th scope="row" { (sentence(&label.full())) }
            td data-k=(say!(language, "report-value-u")) { (number(&m.amount_with_unit())) }
            td { (m.side.map_or_else(String::new, |s| s.long(language))) }
        }
    }
}

/// Where each check's uncertainty comes from.
pub(super) fn budgets(record: &JobRecord, language: Language) -> Markup {
    let with: Vec<&CheckRecord> = record.checks.iter().filter(|c| !c.budget.is_empty()).collect();
    html! {
        @if !with.is_empty() {
            section aria-labelledby="budget" {
                h2 id="budget" { (say!(language, "report-budget")) }
                p.lede { (say!(language, "report-budget-lede")) }
                div.budgets { @for check in with { (budget(check, language)) } }
            }
        }
    }
}

fn budget(check: &CheckRecord, language: Language) -> Markup {
    let whole = |value: f64| Figure::fixed(value, 0).say(language);
    html! {
        details {
            summary { (budget_total(check, language)) }
            table {
                thead { tr {
                    th scope="col" { (say!(language, "report-source")) }
                    th scope="col" { "u" }
                    th scope="col" { (say!(language, "report-share")) }
                    td {}
                } }
                tbody {
                    @for line in &check.budget {
                        @let share = if line.share.is_finite() { line.share.clamp(0.0, 1.0) * 100.0 } else { 0.0 };
                        tr {
                            td { (told(line.source_phrase.as_ref(), &line.source, language)) }
                            td { span.num { (significant(line.standard_uncertainty, &check.unit, language)) } }
                            td { span.num { (whole(share)) " %" } }
                            td style="width:30%" aria-hidden="true" { span.share style=(format!("width:{share:.0}%")) {} }
                        }
                    }
                }
            }
        }
    }
}

fn budget_total(check: &CheckRecord, language: Language) -> String {
    let name = sentence(&Label::of_check(check, language).full());
    let Some(u) = check.standard_uncertainty else { return name };
    say!(
        language,
        "report-budget-total",
        name = name,
        u = significant(u, &check.unit, language),
        freedom = if check.degrees_of_freedom.is_some() { "finite" } else { "infinite" },
        degrees = Figure::fixed(check.degrees_of_freedom.unwrap_or_default(), 0),
        factor_known = if check.coverage_factor.is_some() { "yes" } else { "no" },
        factor = Figure::fixed(check.coverage_factor.unwrap_or_default(), 2)
    )
}

fn significant(u: f64, unit: &str, language: Language) -> String {
    amount(Value::digits(&crate::quantity::with_uncertainty(u, u).1), unit).say(language)
}
