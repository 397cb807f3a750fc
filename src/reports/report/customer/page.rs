//! The customer's page, alone or as a page of the PDF report.

use maud::{Markup, html};

use super::words;
use crate::record::JobRecord;
use crate::report::html::{rendered, verdict_class, verdict_symbol, whole_page};
use crate::words::{Language, say};

/// The page of one job as a whole HTML page. `digest` is the SHA-512 of
/// `result.json`, lower-case hexadecimal.
pub fn customer_html(record: &JobRecord, digest: &str, language: Language) -> String {
    let title = say!(language, "customer-page-title", job = &record.job);
    let body = html! { main { (statements(record, digest, 1, language)) } };
    whole_page(&title, &record.job, language, body)
}

/// The same as a section of a document.
pub(in crate::report) fn section(record: &JobRecord, digest: &str, language: Language) -> Markup {
    statements(record, digest, 2, language)
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

fn statements(record: &JobRecord, digest: &str, top: u8, language: Language) -> Markup {
    let tool = format!("{} {}", record.tool.name, record.tool.version);
    html! {
        section.leaf {
            (rendered(record, language))
            (heading(top, &say!(language, "customer-title")))
            p { (say!(language, "customer-why")) }
            dl.facts {
                @for (name, value) in words::subject(record, language) {
                    div.wide[value.chars().count() > 24] { dt { (name) } dd { (value) } }
                }
            }
            div class={ "verdict " (verdict_class(record.verdict)) } {
                (verdict_symbol(record.verdict))
                div { p { strong { (words::answer(record.verdict, language)) } } }
            }
            (heading(top + 1, &words::proven_heading(record, language)))
            (list(&words::proven(record, language), &say!(language, "customer-proven-nothing")))
            (heading(top + 1, &say!(language, "customer-open")))
            (list(&words::not_proven(record, language), &say!(language, "customer-open-nothing")))
            (heading(top + 1, &say!(language, "customer-photos")))
            (list(&words::photos(record, language), &say!(language, "customer-no-photo")))
            (heading(top + 1, &say!(language, "customer-whose")))
            p { (words::whose(record, language)) }
            (heading(top + 1, &say!(language, "customer-meaning")))
            (list(&words::meaning(record, language), ""))
            p.aside {
                (say!(language, "customer-again")) " " (say!(language, "customer-repeats", tool = tool)) " " span.hash { (digest) }
            }
            @if !language.is_proofread() { p.aside { (say!(language, "report-not-proofread")) } }
        }
    }
}

fn list(all: &[String], none: &str) -> Markup {
    html! {
        @if all.is_empty() { p { (none) } }
        @else { ul.plain { @for one in all { li { (one) } } } }
    }
}
