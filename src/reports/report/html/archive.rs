//! The page of an audited archive: one file, a row for each job, to be sorted
//! and filtered where scripts run, and read as it is where they don't.

use maud::{DOCTYPE, Markup, PreEscaped, html};

use super::super::figures::{Measured, wanted};
use super::super::label::Label;
use super::super::named::Named;
use super::palette;
use super::symbol::tag;
use crate::credentials::summary;
use crate::record::{JobRecord, Verdict, told};
use crate::words::{Language, say};

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
    /// For evidence folders: whether they are intact, and who signed, in the reader's language.
    pub evidence: Option<&'a str>,
    /// What joins it with earlier folders: code, the other folder, and what that means in the reader's language.
    pub across: &'a [[&'a str; 3]],
    /// What a recomputation changed, in the reader's language.
    pub changed: &'a [String],
    /// Whether that is the verdict.
    pub verdict_changed: bool,
    /// What the log of attempts says about it: code, and what that means in the reader's language.
    pub log: &'a [[&'a str; 2]],
}

/// What the log of attempts says of an archive, in the reader's language.
#[derive(Debug)]
pub struct ArchiveLog<'a> {
    /// Which log, and how far it can be relied on.
    pub summary: &'a str,
    /// Each finding: code, folder where it is about one, message.
    pub findings: &'a [[&'a str; 3]],
}

const STYLE: &str = include_str!("archive.css");
const SCRIPT: &str = include_str!("archive.js");

/// The page's beginning; rows and [`archive_end`] follow, so that an archive of
/// any size needs the memory of one job.
pub fn archive_start(counts: &[(Option<Verdict>, usize)], log: Option<&ArchiveLog>, language: Language) -> String {
    let title = say!(language, "evidence-audit-title");
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
                        @match verdict {
                            Some(v) => (tag(*v, language)),
                            None => span.tag { (say!(language, "evidence-audit-unreadable")) },
                        }
                        b { (count) }
                    }
                }
            }
        }
        @if let Some(log) = log { (log_section(log, language)) }
        p {
            label {
                (say!(language, "evidence-audit-filter")) " "
                input #words type="search" placeholder=(say!(language, "evidence-audit-filter-hint"));
            }
            " " span #shown data-words=(say!(language, "evidence-audit-shown", shown = "{0}", count = "{1}")) {}
        }
        p.aside { (say!(language, "evidence-audit-foot")) }
    };
    format!(
        "{}<html lang=\"{}\">{}<body><main>{}<div class=\"scroll\" tabindex=\"0\"><table id=\"jobs\">{}<tbody>\n",
        DOCTYPE.into_string(),
        language.tag(),
        head.into_string(),
        body.into_string(),
        table_head(language).into_string()
    )
}

fn table_head(language: Language) -> Markup {
    let columns = [
        say!(language, "evidence-column-verdict"),
        say!(language, "evidence-column-job"),
        say!(language, "evidence-column-checks"),
        say!(language, "evidence-column-findings"),
        say!(language, "evidence-column-setup"),
        say!(language, "evidence-column-vehicle"),
        say!(language, "evidence-column-technician"),
        say!(language, "evidence-column-bay"),
        say!(language, "evidence-column-taken"),
        say!(language, "evidence-column-evidence"),
        say!(language, "evidence-column-folder"),
    ];
    html! { thead { tr { @for column in columns { th scope="col" { button type="button" { (column) } } } } } }
}

/// The log of attempts: what it says of the whole archive, attempts without a folder too.
fn log_section(log: &ArchiveLog, language: Language) -> Markup {
    html! {
        section #log {
            h2 { (say!(language, "evidence-log-title")) }
            p { (log.summary) }
            @if log.findings.is_empty() { p { (say!(language, "evidence-log-nothing")) } } @else {
                div.scroll tabindex="0" { table {
                    thead { tr {
                        th scope="col" { (say!(language, "evidence-column-finding")) }
                        th scope="col" { (say!(language, "evidence-column-meaning")) }
                        th scope="col" { (say!(language, "evidence-column-folder")) }
                    } }
                    tbody {
                        @for [code, path, message] in log.findings {
                            tr { td { (code) } td { (message) } td.path { (path) } }
                        }
                    }
                } }
            }
        }
    }
}

/// One row.
pub fn archive_row(row: &ArchiveRow, language: Language) -> String {
    let evidence = row.evidence.map_or_else(|| say!(language, "evidence-not-sealed"), str::to_owned);
    let markup = match row.outcome {
        Ok(record) => of_record(row, record, &evidence, language),
        Err(why) => html! {
            tr data-v="unreadable" {
                td { span.tag { (say!(language, "evidence-audit-unreadable")) } }
                td colspan="8" { (why) (changed(row, language)) }
                td { (evidence) }
                td.path { (row.path) }
            }
        },
    };
    markup.into_string() + "\n"
}

fn of_record(row: &ArchiveRow, record: &JobRecord, evidence: &str, language: Language) -> Markup {
    let context = &record.context;
    let text = |value: &Option<String>| value.clone().unwrap_or_default();
    html! {
        tr data-v=(record.verdict.name()) {
            td { (tag(record.verdict, language)) }
            td {
                (record.job)
                @if let Some(n) = context.attempt { " " small { (say!(language, "evidence-attempt", attempt = n)) } }
            }
            td {
                details {
                    summary { (told(record.reason_phrase.as_ref(), &record.reason, language)) }
                    (checks(record, language))
                }
                (changed(row, language))
            }
            td {
                @for finding in &record.findings {
                    div title=(told(finding.message_phrase.as_ref(), &finding.message, language)) { (finding.code) }
                }
                @for [code, other, message] in row.across {
                    details { summary { (code) } p { b { (other) } ": " (message) } }
                }
                @for [code, message] in row.log { details { summary { (code) } p { (message) } } }
            }
            td { (context.setup) }
            td { (text(&context.vehicle)) }
            td { (text(&context.technician)) }
            td { (text(&context.bay)) }
            td.num { (text(&context.taken)) }
            td {
                (evidence)
                @if let Some(counts) = summary(record.credentials()) {
                    div { (say!(language, "report-credentials-of-photos", counts = counts)) }
                }
            }
            td.path { (row.path) }
        }
    }
}

/// What a recomputation changed; open where the verdict is another one.
fn changed(row: &ArchiveRow, language: Language) -> Markup {
    html! {
        @if !row.changed.is_empty() {
            details.changed open[row.verdict_changed] {
                summary { (say!(language, "evidence-recomputed", count = row.changed.len())) }
                ul.plain { @for change in row.changed { li { (change) } } }
            }
        }
    }
}

fn checks(record: &JobRecord, language: Language) -> Markup {
    html! {
        ul.plain {
            @for check in &record.checks {
                @let quantity = Label::of_check(check, language).quantity;
                @let measured = Measured::of_check(check, quantity, language)
                    .map_or_else(|| say!(language, "evidence-not-determined"), |m| m.long());
                li {
                    (say!(
                        language,
                        "evidence-check",
                        what = Named::of_check(check).full(),
                        measured = measured,
                        required = wanted(check, quantity, language),
                        verdict = check.verdict.phrase(),
                    ))
                    @if check.correction != "none needed" {
                        " (" (told(check.correction_phrase.as_ref(), &check.correction, language)) ")"
                    }
                }
            }
        }
    }
}

/// The page's end.
pub fn archive_end() -> String {
    format!("</tbody></table></div></main><script>{SCRIPT}</script></body></html>\n")
}
