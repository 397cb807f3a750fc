//! The customer's page, alone or as a page of the PDF report.

use maud::{Markup, html};

use super::words;
use crate::record::JobRecord;
use crate::report::html::{verdict_class, verdict_symbol, whole_page};
use crate::words::Language;

/// The page of one job as a whole HTML page. `digest` is the SHA-512 of
/// `result.json`, lower-case hexadecimal.
pub fn customer_html(record: &JobRecord, digest: &str, language: Language) -> String {
    let title = format!("For the customer: job {}", record.job);
    whole_page(&title, &record.job, language, html! { main { (statements(record, digest, 1)) } })
}

/// The same as a section of a document.
pub(in crate::report) fn section(record: &JobRecord, digest: &str) -> Markup {
    statements(record, digest, 2)
}

/// A heading of the page's own level `top` or one below.
fn heading(level: u8, words: &str) -> Markup {
    html! {
        @match level {
            1 => { h1 { (words) } }
            2 => { h2 { (words) } }
            _ => { h3 { (words) } }
        }
    }
}

fn statements(record: &JobRecord, digest: &str, top: u8) -> Markup {
    html! {
        section.leaf {
            (heading(top, "For the customer: where the target stood"))
            p { (words::WHY) }
            dl.facts { @for (name, value) in words::subject(record) { div.wide[value.len() > 24] { dt { (name) } dd { (value) } } } }
            div class={ "verdict " (verdict_class(record.verdict)) } {
                (verdict_symbol(record.verdict))
                div { p { strong { (words::answer(record.verdict)) } } }
            }
            (heading(top + 1, "What was proven"))
            (list(&words::proven(record), "Nothing."))
            (heading(top + 1, "What was not proven, or is wrong"))
            (list(&words::not_proven(record), "Nothing was left open."))
            (heading(top + 1, "By which photos"))
            (list(&words::photos(record), "No photo could be read."))
            (heading(top + 1, "Whose limits these are"))
            p { (words::whose(record)) }
            (heading(top + 1, "What that means, and what it does not"))
            (list(&words::meaning(record), ""))
            p.aside {
                "It can be checked again: whoever has the photos and the files can have them measured once more. This page \
                 repeats the file result.json with the SHA-512 " span.hash { (digest) } ", written by " (record.tool.name) " " (record.tool.version) "."
            }
        }
    }
}

fn list(all: &[String], none: &str) -> Markup {
    html! {
        @if all.is_empty() { p { (none) } }
        @else { ul.plain { @for one in all { li { (one) } } } }
    }
}
