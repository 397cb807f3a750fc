//! The top of the report: what it is about, the verdict, what to do now.

use maud::{Markup, html};

use super::symbol::{class, symbol};
use crate::record::{JobRecord, told};
use crate::report::figures::moment;
use crate::report::icons::move_icon;
use crate::report::label::{sentence, upkeep_words};
use crate::report::todo::{self, Kind};
use crate::words::{Language, say};

/// Who, what, where and when.
pub(super) fn title_block(record: &JobRecord, language: Language) -> Markup {
    let c = &record.context;
    let facts: [(String, Option<String>); 11] = [
        (say!(language, "report-repair-order"), c.series.clone()),
        (say!(language, "report-attempt"), c.attempt.map(|n| n.to_string())),
        (say!(language, "report-vehicle"), c.vehicle.clone()),
        (say!(language, "report-vin"), c.vin.clone()),
        (say!(language, "report-photos-taken"), c.taken.as_deref().map(|taken| moment(taken, language))),
        (say!(language, "report-bay"), c.bay.clone()),
        (say!(language, "report-technician"), c.technician.clone()),
        (say!(language, "report-kit"), Some(c.kit.clone())),
        (say!(language, "report-kit-upkeep"), c.kit_upkeep.as_ref().map(|kit| upkeep_words(kit, language))),
        (say!(language, "report-camera"), Some(c.cameras.join(", "))),
        (say!(language, "report-setup-sheet"), Some(c.setup.clone())),
    ];
    html! {
        @if record.is_rendered() { aside { (rendered(record, language)) } }
        header.titleblock {
            div.name {
                h1 { (say!(language, "report-title", job = &record.job)) }
                p { (sheet_title(record)) }
            }
            dl {
                @for (name, value) in facts {
                    @if let Some(value) = value.filter(|v| !v.is_empty()) { div { dt { (name) } dd { (value) } } }
                }
            }
        }
    }
}

/// The first line, where no camera took the photos.
pub(in crate::report) fn rendered(record: &JobRecord, language: Language) -> Markup {
    html! { @if record.is_rendered() { p.rendered { strong { (say!(language, "report-rendered")) } } } }
}

fn sheet_title(record: &JobRecord) -> &str {
    if record.sheet.title.is_empty() { &record.context.setup } else { &record.sheet.title }
}

/// The verdict in one glance.
pub(super) fn verdict(record: &JobRecord, language: Language) -> Markup {
    html! {
        div class={ "verdict " (class(record.verdict)) } {
            (symbol(record.verdict))
            div {
                h2 { (sentence(&record.verdict.phrase().say(language))) }
                p { (told(record.reason_phrase.as_ref(), &record.reason, language)) }
            }
        }
    }
}

/// What to do now.
pub(super) fn to_do(record: &JobRecord, language: Language) -> Markup {
    html! {
        section aria-labelledby="todo" {
            h2 id="todo" { (say!(language, "report-what-to-do")) }
            ol.todo {
                @for step in todo::steps(record, language) {
                    li.close[step.kind == Kind::Close] {
                        div {
                            strong {
                                @if let Some(icon) = step.way.and_then(|(quantity, more)| move_icon(quantity, more)) { (icon) " " }
                                (step.title)
                            }
                            (step.words)
                            @if !step.about.is_empty() { p.aside { (super::findings::about_line(&step.about)) } }
                        }
                    }
                }
            }
        }
    }
}
