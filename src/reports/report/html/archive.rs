//! The page of an audited archive: one file, a row for each job, to be sorted
//! and filtered where scripts run, and read as it is where they don't.

use maud::{DOCTYPE, Markup, PreEscaped, html};

use super::super::figures::{Measured, wanted};
use super::super::label::Label;
use super::{palette, symbol};
use crate::record::{JobRecord, Verdict};

/// One folder of the archive.
#[derive(Debug)]
pub struct ArchiveRow<'a> {
    /// Its path.
    pub path: &'a str,
    /// The exit code.
    pub exit: u8,
    /// Over everything that was read.
    pub digest: &'a str,
    /// The name of the result's file.
    pub result: &'a str,
    /// What was measured, or in words why nothing was.
    pub outcome: Result<&'a JobRecord, &'a str>,
    /// For evidence folders: whether they are intact, and who signed.
    pub evidence: Option<&'a str>,
    /// What joins it with earlier folders: code, the other folder, and what that means.
    pub across: &'a [[&'a str; 3]],
    /// What a recomputation changed, in words.
    pub changed: &'a [String],
}

const STYLE: &str = include_str!("archive.css");
const SCRIPT: &str = include_str!("archive.js");

/// The page's beginning; rows and [`archive_end`] follow, so that an archive of
/// any size needs the memory of one job.
pub fn archive_start(title: &str, counts: &[(Option<Verdict>, usize)]) -> String {
    let head = html! {
        head {
            meta charset="utf-8";
            meta name="viewport" content="width=device-width, initial-scale=1";
            title { (title) }
            style { (PreEscaped(palette::css())) (PreEscaped(include_str!("style.css"))) (PreEscaped(STYLE)) }
        }
    };
    let body = html! {
        h1 { (title) }
        ul.counts {
            @for (verdict, count) in counts {
                li {
                    label {
                        input type="checkbox" checked value=(verdict.map_or("unreadable", Verdict::name));
                        @match verdict { Some(v) => (symbol::tag(*v, crate::words::Language::English)), None => span.tag { "unreadable or altered" } }
                        b { (count) }
                    }
                }
            }
        }
        p { label { "Show rows with " input #words type="search" placeholder="any of their words"; } " " span #shown {} }
        p.aside {
            "The vehicle maker's service information and local rules govern. These figures document set-ups and replace no "
            "procedure; the work is for trained people, and lasers and lifted vehicles need their own precautions."
        }
    };
    let columns = [
        "Verdict",
        "Job",
        "Checks",
        "Findings",
        "Set-up sheet",
        "Vehicle",
        "Technician",
        "Bay",
        "Taken",
        "Evidence",
        "Folder",
    ];
    let table =
        html! { thead { tr { @for column in columns { th scope="col" { button type="button" { (column) } } } } } };
    format!(
        "{}<html lang=\"en\">{}<body>{}<div class=\"scroll\" tabindex=\"0\"><table id=\"jobs\">{}<tbody>\n",
        DOCTYPE.into_string(),
        head.into_string(),
        body.into_string(),
        table.into_string()
    )
}

/// One row.
pub fn archive_row(row: &ArchiveRow) -> String {
    let evidence = row.evidence.unwrap_or("not sealed");
    let markup = match row.outcome {
        Ok(record) => of_record(row, record, evidence),
        Err(why) => html! {
            tr data-v="unreadable" {
                td { span.tag { "unreadable or altered" } }
                td colspan="8" { (why) (changed(row)) }
                td { (evidence) }
                td.path { (row.path) }
            }
        },
    };
    markup.into_string() + "\n"
}

fn of_record(row: &ArchiveRow, record: &JobRecord, evidence: &str) -> Markup {
    let context = &record.context;
    let text = |value: &Option<String>| value.clone().unwrap_or_default();
    html! {
        tr data-v=(record.verdict.name()) {
            td { (symbol::tag(record.verdict, crate::words::Language::English)) }
            td { (record.job) @if let Some(n) = context.attempt { small { "attempt " (n) } } }
            td { details { summary { (record.reason) } (checks(record)) } (changed(row)) }
            td {
                @for finding in &record.findings { div title=(finding.message) { (finding.code) } }
                @for [code, other, message] in row.across {
                    details { summary { (code) } p { b { (other) } ": " (message) } }
                }
            }
            td { (context.setup) }
            td { (text(&context.vehicle)) }
            td { (text(&context.technician)) }
            td { (text(&context.bay)) }
            td.num { (text(&context.taken)) }
            td { (evidence) }
            td.path { (row.path) }
        }
    }
}

/// What a recomputation changed; open where the verdict is another one.
fn changed(row: &ArchiveRow) -> Markup {
    html! {
        @if !row.changed.is_empty() {
            details.changed open[row.changed.iter().any(|c| c.starts_with("verdict:"))] {
                summary { "recomputed: " (row.changed.len()) " changed" }
                ul.plain { @for change in row.changed { li { (change) } } }
            }
        }
    }
}

fn checks(record: &JobRecord) -> Markup {
    html! {
        ul.plain {
            @for check in &record.checks {
                @let label = Label::of_check(check, crate::words::Language::English);
                li {
                    (label.full()) ": "
                    (Measured::of_check(check, label.quantity, crate::words::Language::English).map_or("not determined".to_owned(), |m| m.long()))
                    ", required " (wanted(check, label.quantity, crate::words::Language::English)) ": " b { (check.verdict.words()) }
                    @if check.correction != "none needed" { " (" (check.correction) ")" }
                }
            }
        }
    }
}

/// The page's end.
pub fn archive_end() -> String {
    format!("</tbody></table></div><script>{SCRIPT}</script></body></html>\n")
}
