//! What is wrong or worth knowing.

use maud::{Markup, html};

use crate::record::{FindingRecord, JobRecord, Level};

/// The section.
pub(super) fn section(record: &JobRecord) -> Markup {
    html! {
        section aria-labelledby="findings" {
            h2 id="findings" { "Findings" }
            @if record.findings.is_empty() {
                p { "Nothing to report." }
            } @else {
                ul.findings { @for finding in &record.findings { (item(finding)) } }
            }
        }
    }
}

fn item(finding: &FindingRecord) -> Markup {
    let (class, word, meaning) = words(finding.level);
    let about: Vec<&str> = [&finding.carrier, &finding.photo].into_iter().flatten().map(String::as_str).collect();
    html! {
        li class=(class) {
            div.level { (word) small { (meaning) } }
            div {
                p { (finding.message) }
                p.aside { (finding.code.replace('-', " ")) @if !about.is_empty() { " · " (about.join(" · ")) } }
            }
        }
    }
}

fn words(level: Level) -> (&'static str, &'static str, &'static str) {
    match level {
        Level::Void => ("void", "⊘ void", "the measurement can't be trusted"),
        Level::Stop => ("stop", "■ stop", "nothing is called within"),
        Level::Warn => ("warn", "▲ warn", "worth a look"),
        Level::Note => ("note", "○ note", "worth knowing"),
    }
}
