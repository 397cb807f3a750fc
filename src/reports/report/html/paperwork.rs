//! What people attest, what the sheet leaves out, whose figures they are, which
//! bytes were read, and the cautions.

use std::collections::BTreeMap;

use maud::{Markup, html};
use serde_json::Value;

use super::path;
use crate::quantity::Quantity;
use crate::record::{JobRecord, PrerequisiteRecord};
use crate::report::label::{Label, sentence};
use crate::report::procedure::sentences;

/// Prerequisites, calibration and attachments.
pub(super) fn attested(record: &JobRecord) -> Markup {
    let known: Vec<&str> = record.sheet.prerequisites.iter().map(|p| p.id.as_str()).collect();
    let free: Vec<_> = record.context.prerequisites.iter().filter(|(id, _)| !known.contains(&id.as_str())).collect();
    html! {
        section aria-labelledby="attested" {
            h2 id="attested" { "What the technician attests" }
            @if known.is_empty() && free.is_empty() { p { "The sheet asks for nothing and nothing was stated." } }
            @else {
                @if record.context.record_complete { p { "Every required answer was given." } }
                @else { p { strong { "Required answers are missing." } } }
                table.stack {
                    thead { tr { th scope="col" { "Statement" } th scope="col" { "Answer" } } }
                    tbody {
                        @for prerequisite in &record.sheet.prerequisites { (prerequisite_row(prerequisite)) }
                        @for (id, value) in free {
                            tr { th scope="row" { (id.replace('_', " ")) small { "not asked for by the sheet" } } td { (answer(Some(value))) } }
                        }
                    }
                }
            }
            (calibration(record.context.calibration.as_ref()))
            (attachments(record))
        }
    }
}

/// Before and after, attempts, ride height, the next photo.
pub(super) fn procedure(record: &JobRecord) -> Markup {
    html! {
        @for (i, (title, sentences)) in sentences(record).into_iter().enumerate() {
            @let id = format!("procedure-{i}");
            section aria-labelledby=(id) {
                h2 id=(id) { (title) }
                ul { @for sentence in sentences { li { (sentence) } } }
            }
        }
    }
}

fn prerequisite_row(prerequisite: &PrerequisiteRecord) -> Markup {
    html! {
        tr {
            th scope="row" {
                (prerequisite.text)
                small { @if prerequisite.required { "required" } @else { "optional" } }
            }
            td data-k="answer" {
                @if prerequisite.required && !settled(prerequisite.answer.as_ref()) {
                    strong { (answer(prerequisite.answer.as_ref())) }
                } @else { (answer(prerequisite.answer.as_ref())) }
            }
        }
    }
}

/// Answered with anything but no.
fn settled(value: Option<&Value>) -> bool {
    !matches!(value, None | Some(Value::Null | Value::Bool(false)))
}

fn answer(value: Option<&Value>) -> String {
    match value {
        None | Some(Value::Null) => "— not answered".into(),
        Some(Value::Bool(true)) => "✓ yes".into(),
        Some(Value::Bool(false)) => "✕ no".into(),
        Some(value) => typed(value),
    }
}

fn typed(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        other => other.to_string(),
    }
}

fn calibration(said: Option<&BTreeMap<String, Value>>) -> Markup {
    html! {
        h3 style="margin-top:16px" { "What the scan tool said" }
        @match said {
            None => { p { "Nothing was stated about the calibration itself." } }
            Some(said) => {
                dl.pairs { @for (key, value) in said { dt { (key_words(key)) } dd { (typed(value)) } } }
                p.aside { "As typed by the technician. It says nothing about where the stand stood." }
            }
        }
    }
}

fn key_words(key: &str) -> String {
    match key.strip_suffix("_deg") {
        Some(stem) => format!("{}, deg", sentence(&stem.replace('_', " "))),
        None => sentence(&key.replace('_', " ")),
    }
}

fn attachments(record: &JobRecord) -> Markup {
    html! {
        @if !record.attachments.is_empty() {
            h3 style="margin-top:16px" { "Attachments" }
            ul.plain {
                @for file in &record.attachments {
                    li { (path(&file.file)) " (" (file.kind.replace('-', " ")) ")" }
                }
            }
        }
    }
}

/// Whose tolerance it is, and what nobody checked.
pub(super) fn limits_of_the_sheet(record: &JobRecord) -> Markup {
    let sheet = &record.sheet;
    html! {
        section aria-labelledby="sheet" {
            h2 id="sheet" { "Whose figures these are" }
            p { @if sheet.source.is_empty() { strong { "The set-up sheet names no source." } } @else { (sheet.source) } }
            @if !sheet.procedure.is_empty() {
                dl.pairs { @for (key, value) in &sheet.procedure { dt { (key_words(key)) } dd { (value) } } }
            }
            h3 style="margin-top:16px" { "What was not checked" }
            @if sheet.waived.is_empty() && sheet.not_checked.is_empty() {
                p { "The set-up sheet waives nothing and left nothing out." }
            } @else {
                ul.plain {
                    @for name in &sheet.not_checked {
                        li { strong { (quantity_words(name)) } ": the sheet neither checks nor waives it" }
                    }
                    @for waiver in &sheet.waived {
                        li { strong { (quantity_words(&waiver.quantity)) } ": waived, because " (waiver.because) }
                    }
                }
            }
        }
    }
}

fn quantity_words(name: &str) -> String {
    if Quantity::from_name(name).is_some() { sentence(&Label::new(name, None).full()) } else { name.to_owned() }
}

/// Every file that was read.
pub(super) fn inputs(record: &JobRecord) -> Markup {
    let attached = record.attachments.iter().map(|a| ("attachment", &a.file, None, &a.sha256));
    let listed = |file: &str| record.inputs.iter().any(|input| input.file == file);
    let read = record.inputs.iter().map(|i| (i.role.as_str(), &i.file, i.found_in.as_deref(), &i.sha256));
    html! {
        section aria-labelledby="inputs" {
            h2 id="inputs" { "The files behind this report" }
            p.lede { "A changed file has another SHA-256." }
            table.stack {
                thead { tr { th scope="col" { "What" } th scope="col" { "File" } th scope="col" { "SHA-256" } } }
                tbody {
                    @for (role, file, found_in, sha) in read.chain(attached.filter(|a| !listed(a.1))) {
                        tr {
                            td { (role) }
                            td { (path(file)) @if let Some(place) = found_in { small { "found in " (place) } } }
                            td { span.hash { (sha) } }
                        }
                    }
                }
            }
        }
    }
}

/// What every report says.
pub(super) fn cautions() -> Markup {
    html! {
        section.keep aria-labelledby="cautions" {
            h2 id="cautions" { "Cautions" }
            ul.plain {
                li { "The vehicle maker's service information and local rules govern. Where they differ from this report, follow them." }
                li { "Work on driver-assistance sensors is for trained people." }
                li { "Lasers and lifted vehicles need precautions of their own." }
                li { "This report documents where the target stood when the photos were taken. It does not replace the calibration procedure, and it does not say that the sensor works." }
            }
        }
    }
}

/// The last line.
pub(super) fn footer(record: &JobRecord) -> Markup {
    html! {
        footer { "Measured and written by " (record.tool.name) " " (record.tool.version) " · record format " (record.format) " · job " (record.job) }
    }
}
