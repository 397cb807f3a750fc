//! What people attest, what the sheet leaves out, whose figures they are, which
//! bytes were read, and the cautions.

use std::collections::BTreeMap;

use maud::{Markup, html};
use serde_json::Value;

use super::file_path::path;
use crate::quantity::Quantity;
use crate::record::{JobRecord, PrerequisiteRecord};
use crate::report::figures::moment;
use crate::report::label::{Label, sentence};
use crate::report::procedure::sentences;
use crate::words::{Figure, Language, say};

/// Prerequisites, calibration and attachments.
pub(super) fn attested(record: &JobRecord, language: Language) -> Markup {
    let known: Vec<&str> = record.sheet.prerequisites.iter().map(|p| p.id.as_str()).collect();
    let free: Vec<_> = record.context.prerequisites.iter().filter(|(id, _)| !known.contains(&id.as_str())).collect();
    html! {
        section aria-labelledby="attested" {
            h2 id="attested" { (say!(language, "report-attested")) }
            @if known.is_empty() && free.is_empty() { p { (say!(language, "report-attested-nothing")) } }
            @else {
                @if record.context.record_complete { p { (say!(language, "report-attested-complete")) } }
                @else { p { strong { (say!(language, "report-attested-missing")) } } }
                table.stack {
                    thead { tr {
                        th scope="col" { (say!(language, "report-statement")) }
                        th scope="col" { (say!(language, "report-answer")) }
                    } }
                    tbody {
                        @for prerequisite in &record.sheet.prerequisites { (prerequisite_row(prerequisite, language)) }
                        @for (id, value) in free {
                            tr {
                                th scope="row" { (id.replace('_', " ")) small { (say!(language, "report-not-asked")) } }
                                td { (answer(Some(value), language)) }
                            }
                        }
                    }
                }
            }
            (calibration(record.context.calibration.as_ref(), language))
            (attachments(record, language))
        }
    }
}

/// Before and after, attempts, ride height, the next photo.
pub(super) fn procedure(record: &JobRecord, language: Language) -> Markup {
    html! {
        @for (i, (title, sentences)) in sentences(record, language).into_iter().enumerate() {
            @let id = format!("procedure-{i}");
            section aria-labelledby=(id) {
                h2 id=(id) { (title) }
                ul { @for sentence in sentences { li { (sentence) } } }
            }
        }
    }
}

fn prerequisite_row(prerequisite: &PrerequisiteRecord, language: Language) -> Markup {
    let required = if prerequisite.required { "yes" } else { "no" };
    let said = answer(prerequisite.answer.as_ref(), language);
    html! {
        tr {
            th scope="row" {
                (prerequisite.text)
                small { (say!(language, "report-obligation", required = required)) }
            }
            td data-k=(say!(language, "report-answer")) {
                @if prerequisite.required && !settled(prerequisite.answer.as_ref()) { strong { (said) } } @else { (said) }
            }
        }
    }
}

/// Answered with anything but no.
fn settled(value: Option<&Value>) -> bool {
    !matches!(value, None | Some(Value::Null | Value::Bool(false)))
}

fn answer(value: Option<&Value>, language: Language) -> String {
    let answer = match value {
        None | Some(Value::Null) => "none",
        Some(Value::Bool(true)) => "yes",
        Some(Value::Bool(false)) => "no",
        Some(value) => return typed(value, language),
    };
    say!(language, "report-answered", answer = answer)
}

fn typed(value: &Value, language: Language) -> String {
    match value {
        Value::String(text) => text.clone(),
        Value::Number(number) => number.as_f64().map_or_else(|| number.to_string(), |n| Figure::plain(n).say(language)),
        other => other.to_string(),
    }
}

fn calibration(said: Option<&BTreeMap<String, Value>>, language: Language) -> Markup {
    html! {
        h3 style="margin-top:16px" { (say!(language, "report-scan-tool")) }
        @match said {
            None => { p { (say!(language, "report-scan-tool-nothing")) } }
            Some(said) => {
                dl.pairs {
                    @for (key, value) in said {
                        dt { (calibration_key(key, language)) }
                        dd { (calibration_value(key, value, language)) }
                    }
                }
                p.aside { (say!(language, "report-scan-tool-aside")) }
            }
        }
    }
}

fn calibration_key(key: &str, language: Language) -> String {
    let known = ["result", "at", "reported_azimuth_deg", "reported_elevation_deg"].contains(&key);
    let key = if known { key.to_owned() } else { sentence(&key.replace('_', " ")) };
    say!(language, "report-calibration-key", key = key)
}

fn calibration_value(key: &str, value: &Value, language: Language) -> String {
    match (key, value) {
        ("result", Value::String(result)) => say!(language, "report-calibration-result", result = result),
        ("at", Value::String(at)) => moment(at, language),
        _ => typed(value, language),
    }
}

fn attachments(record: &JobRecord, language: Language) -> Markup {
    html! {
        @if !record.attachments.is_empty() {
            h3 style="margin-top:16px" { (say!(language, "report-attachments")) }
            ul.plain {
                @for file in &record.attachments {
                    li { (path(&file.file)) " (" (say!(language, "report-attachment-kind", kind = &file.kind)) ")" }
                }
            }
        }
    }
}

/// Whose tolerance it is, and what nobody checked.
pub(super) fn limits_of_the_sheet(record: &JobRecord, language: Language) -> Markup {
    let sheet = &record.sheet;
    html! {
        section aria-labelledby="sheet" {
            h2 id="sheet" { (say!(language, "report-sheet")) }
            p {
                @if sheet.source.is_empty() { strong { (say!(language, "report-sheet-no-source")) } }
                @else { (sheet.source) }
            }
            @if !sheet.procedure.is_empty() {
                dl.pairs {
                    @for (key, value) in &sheet.procedure {
                        dt { (procedure_key(key, language)) }
                        dd { (moment(value, language)) }
                    }
                }
            }
            h3 style="margin-top:16px" { (say!(language, "report-not-checked")) }
            @if sheet.waived.is_empty() && sheet.not_checked.is_empty() {
                p { (say!(language, "report-not-checked-nothing")) }
            } @else {
                ul.plain {
                    @for name in &sheet.not_checked {
                        li { (say!(language, "report-left-out", quantity = quantity_words(name, language))) }
                    }
                    @for waiver in &sheet.waived {
                        @let quantity = quantity_words(&waiver.quantity, language);
                        li { (say!(language, "report-waived", quantity = quantity, because = &waiver.because)) }
                    }
                }
            }
        }
    }
}

fn procedure_key(key: &str, language: Language) -> String {
    let name = key.replace(' ', "-");
    let known = ["document", "revision", "opened", "applies-to"].contains(&name.as_str());
    let key = if known { name } else { sentence(&key.replace('_', " ")) };
    say!(language, "report-procedure-key", key = key)
}

fn quantity_words(name: &str, language: Language) -> String {
    match Quantity::from_name(name) {
        Some(_) => sentence(&Label::new(name, None, language).full()),
        None => name.to_owned(),
    }
}

/// Every file that was read.
pub(super) fn inputs(record: &JobRecord, language: Language) -> Markup {
    let attached = record.attachments.iter().map(|a| ("attachment", &a.file, None, &a.sha256));
    let listed = |file: &str| record.inputs.iter().any(|input| input.file == file);
    let read = record.inputs.iter().map(|i| (i.role.as_str(), &i.file, i.found_in.as_deref(), &i.sha256));
    html! {
        section aria-labelledby="inputs" {
            h2 id="inputs" { (say!(language, "report-inputs")) }
            p.lede { (say!(language, "report-inputs-lede")) }
            table.stack {
                thead { tr {
                    th scope="col" { (say!(language, "report-what")) }
                    th scope="col" { (say!(language, "report-file")) }
                    th scope="col" { "SHA-256" }
                } }
                tbody {
                    @for (role, file, found_in, sha) in read.chain(attached.filter(|a| !listed(a.1))) {
                        tr {
                            td { (say!(language, "report-input-role", role = role)) }
                            td { (path(file)) @if let Some(place) = found_in { small { (found_words(place, language)) } } }
                            td { span.hash { (sha) } }
                        }
                    }
                }
            }
        }
    }
}

/// Records name the place in English; nothing else that stands there is repeated.
fn found_words(place: &str, language: Language) -> String {
    use crate::folder::Origin;
    let known = match Origin::of_shared(place) {
        Some(Origin::ModelsOption) => "option",
        Some(Origin::Environment) => "environment",
        Some(Origin::Installed) => "installed",
        Some(Origin::Embedded) => "embedded",
        Some(Origin::Job) | None => "other",
    };
    say!(language, "report-found-in", place = known)
}

/// What every report says.
pub(super) fn cautions(language: Language) -> Markup {
    html! {
        section.keep aria-labelledby="cautions" {
            h2 id="cautions" { (say!(language, "report-cautions")) }
            ul.plain {
                li { (say!(language, "report-caution-maker")) }
                li { (say!(language, "report-caution-trained")) }
                li { (say!(language, "report-caution-lasers")) }
                li { (say!(language, "report-caution-documents")) }
            }
        }
    }
}

/// The last lines.
pub(super) fn footer(record: &JobRecord, language: Language) -> Markup {
    let tool = format!("{} {}", record.tool.name, record.tool.version);
    html! {
        footer {
            (say!(language, "report-footer", tool = tool, format = &record.format, job = &record.job))
            @if !language.is_proofread() { " · " (say!(language, "report-not-proofread")) }
        }
    }
}
