//! What is wrong or worth knowing, besides what is to be done about it now.

use maud::{Markup, html};

use crate::record::{FindingRecord, JobRecord, Level};
use crate::report::text::{level_class, level_word};
use crate::report::todo::{about, is_said_by_steps, message};
use crate::words::{Language, say};

/// The section.
pub(super) fn section(record: &JobRecord, language: Language) -> Markup {
    let further: Vec<&FindingRecord> = record.findings.iter().filter(|f| !is_said_by_steps(record, f)).collect();
    html! {
        section aria-labelledby="findings" {
            h2 id="findings" { (say!(language, "report-findings")) }
            @if record.findings.is_empty() {
                p { (say!(language, "report-nothing-to-report")) }
            } @else if further.is_empty() {
                p { (say!(language, "report-findings-above")) }
            } @else {
                ul.findings { @for finding in further { (item(record, finding, language)) } }
            }
        }
    }
}

fn item(record: &JobRecord, finding: &FindingRecord, language: Language) -> Markup {
    let class = level_class(finding.level);
    html! {
        li class=(class) {
            div.level {
                (sign(finding.level)) " " (level_word(finding.level, language))
                small { (say!(language, "report-level-meaning", level = class)) }
            }
            div {
                p { (message(finding, language)) }
                p.aside { (about_line(&about(record, finding, language))) }
            }
        }
    }
}

/// A finding's name, marker holder, photo and code in one line.
pub(super) fn about_line(about: &[String]) -> String {
    about.join(" · ")
}

/// A shape for each level, so that none is told by its colour alone.
fn sign(level: Level) -> char {
    match level {
        Level::Void => '⊘',
        Level::Stop => '■',
        Level::Warn => '▲',
        Level::Note => '○',
    }
}
