//! Jobs behind a number, and tables.

use maud::{Markup, html};

use super::super::html::symbol;
use super::words::{factor_word, quantity_label, short};
use crate::record::{CapabilityRecord, GroupRecord, TrendsRecord};

/// A share for people.
pub(super) fn percent(share: f64) -> String {
    format!("{} %", crate::quantity::rounded(100.0 * share, if share < 0.0995 { 1 } else { 0 }))
}

/// `12 % (9 to 15 %)`.
pub(super) fn with_interval(share: f64, interval: [f64; 2]) -> String {
    let end = |v: f64| percent(v).trim_end_matches(" %").to_owned();
    format!("{} ({} to {} %)", percent(share), end(interval[0]), end(interval[1]))
}

/// A folded list of jobs; the id is inside, so that a link to it unfolds it.
pub(super) fn jobs(record: &TrendsRecord, id: &str, title: &str, linked: &[usize], of: usize) -> Markup {
    html! {
        details.jobs {
            summary { (title) small { " " @if linked.len() < of { (linked.len()) " of " (of) " jobs; all of them: jobs.csv" } @else { (of) " jobs" } } }
            ul id=(id) {
                @for job in linked.iter().filter_map(|i| record.jobs.get(*i)) {
                    li {
                        (symbol::tag(job.verdict, crate::words::Language::English)) " "
                        b { (job.job) }
                        @if let Some(taken) = &job.taken { " " span.num { (taken.get(..10).unwrap_or(taken)) } }
                        @if let Some(report) = &job.report { " " a href=(format!("{}#photos", href(report))) { "report and its photos" } }
                        " " a href=(href(&job.result)) { "result" }
                        @if let Some(folder) = &job.folder { " " a href=(href(folder)) { "folder" } }
                    }
                }
            }
        }
    }
}

/// A path as a link: what would mean something in a link is written as its number.
pub(super) fn href(path: &str) -> String {
    let mut link = String::new();
    for byte in path.bytes() {
        if byte.is_ascii_alphanumeric() || b"-_./~".contains(&byte) {
            link.push(char::from(byte));
        } else {
            link.push_str(&format!("%{byte:02X}"));
        }
    }
    // A first folder named like a scheme would be one.
    if link.starts_with(['/', '.']) { link } else { format!("./{link}") }
}

/// A table of groups; people's is not sorted by their figures.
pub(super) fn groups(factor: &str, groups: &[GroupRecord]) -> Markup {
    let sortable = factor != "technician";
    let heads = ["Jobs", "Within", "Outside", "Not proven", "Retake", "Share outside, 95 %", ""];
    html! {
        div.scroll tabindex="0" { table.sortable[sortable] {
            thead { tr {
                th scope="col" { (super::super::label::sentence(factor_word(factor))) }
                @for h in heads { th scope="col" { (h) } }
            } }
            tbody {
                @for g in groups {
                    tr {
                        th scope="row" { (g.name) }
                        td.num { (g.jobs) }
                        @for v in g.verdicts { td.num { (v) } }
                        td.num data-s=(g.outside) { (with_interval(g.outside, g.interval)) }
                        td { (remark(g)) }
                    }
                }
            }
        } }
    }
}

fn remark(g: &GroupRecord) -> &'static str {
    match (g.stands_out, g.small) {
        (true, _) => "stands out: see above",
        (false, true) => "few jobs: says little",
        (false, false) => "",
    }
}

/// Capability by sheet and quantity.
pub(super) fn capability(rows: &[CapabilityRecord]) -> Markup {
    let three = |c: [f64; 3]| format!("{} ({} to {})", short(c[0]), short(c[1]), short(c[2]));
    html! {
        div.scroll tabindex="0" { table.sortable {
            thead { tr {
                @for h in ["Set-up sheet", "Check", "First attempts", "Mean", "Standard deviation", "Cp, 95 %", "Cpk, 95 %"] {
                    th scope="col" { (h) }
                }
            } }
            tbody {
                @for c in rows {
                    tr {
                        td { (c.setup) }
                        td { (quantity_label(&c.quantity).full()) }
                        td.num { (c.jobs) }
                        td.num data-s=(c.mean) { (short(c.mean)) }
                        td.num { (short(c.deviation)) }
                        td.num data-s=(c.potential[0]) { (three(c.potential)) }
                        td.num data-s=(c.actual[0]) { (three(c.actual)) }
                    }
                }
            }
        } }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn links_lead_to_files_whatever_they_are_called() {
        assert_eq!(href("../a b/x#1.json"), "../a%20b/x%231.json");
        assert_eq!(href("javascript:alert(1)"), "./javascript%3Aalert%281%29");
    }

    #[test]
    fn shares_are_read_as_percent() {
        assert_eq!(with_interval(0.125, [0.09, 0.155]), "12 % (9.0 to 16 %)");
        assert_eq!(percent(0.0123), "1.2 %");
    }
}
