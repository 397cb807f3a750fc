//! The top of the report: what it is about, the verdict, what to do now.

use maud::{Markup, html};

use super::symbol::{class, symbol};
use crate::record::JobRecord;
use crate::report::figures::moment;
use crate::report::todo::{self, Kind};

/// Who, what, where and when.
pub(super) fn title_block(record: &JobRecord) -> Markup {
    let c = &record.context;
    let attempt = c.attempt.map(|n| n.to_string());
    let cameras = c.cameras.join(", ");
    let taken = c.taken.as_deref().map(moment);
    let kit = c.kit_upkeep.as_ref().map(crate::record::KitUpkeep::words);
    let facts: [(&str, Option<&str>); 10] = [
        ("Repair order", c.series.as_deref()),
        ("Attempt", attempt.as_deref()),
        ("Vehicle", c.vehicle.as_deref()),
        ("Vehicle identification number", c.vin.as_deref()),
        ("Photos taken", taken.as_deref()),
        ("Bay", c.bay.as_deref()),
        ("Technician", c.technician.as_deref()),
        ("Marker kit", Some(&c.kit)),
        ("Kit upkeep", kit.as_deref()),
        ("Camera", Some(&cameras)),
    ];
    html! {
        header.titleblock {
            div.name {
                h1 { "Where the target stood: job " (record.job) }
                p { (sheet_title(record)) }
            }
            dl {
                @for (name, value) in facts.iter().filter(|(_, value)| value.is_some_and(|v| !v.is_empty())) {
                    div { dt { (name) } dd { (value.unwrap_or_default()) } }
                }
                div { dt { "Set-up sheet" } dd { (c.setup) } }
            }
        }
    }
}

fn sheet_title(record: &JobRecord) -> &str {
    if record.sheet.title.is_empty() { &record.context.setup } else { &record.sheet.title }
}

/// The verdict in one glance.
pub(super) fn verdict(record: &JobRecord) -> Markup {
    html! {
        div class={ "verdict " (class(record.verdict)) } {
            (symbol(record.verdict))
            div {
                h2 { (crate::report::label::sentence(record.verdict.words())) }
                p { (record.reason) }
            }
        }
    }
}

/// What to do now.
pub(super) fn to_do(record: &JobRecord) -> Markup {
    html! {
        section aria-labelledby="todo" {
            h2 id="todo" { "What to do now" }
            ol.todo {
                @for step in todo::steps(record) {
                    li.close[step.kind == Kind::Close] {
                        div { strong { (step.title) } (step.words) }
                    }
                }
            }
        }
    }
}
