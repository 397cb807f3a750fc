//! Jobs behind a number, and tables.

use maud::{Markup, html};

use super::super::html::symbol::tag;
use super::words::{factor_word, quantity_words, short};
use crate::record::{CapabilityRecord, GroupRecord, JobPointer, TrendsRecord};
use crate::words::{Figure, Language, Phrase, Value, phrase, say};

/// Percent with two digits that matter.
fn hundredths(share: f64) -> Figure {
    Figure::fixed(100.0 * share, u8::from(share < 0.0995))
}

/// A share for people.
pub(super) fn percent(share: f64) -> Phrase {
    phrase!("trends-percent", share = hundredths(share))
}

/// `12 % (9 to 15 %)`.
pub(super) fn with_interval(share: f64, interval: [f64; 2]) -> Phrase {
    let [low, high] = interval.map(hundredths);
    phrase!("trends-share-interval", share = hundredths(share), low = low, high = high)
}

/// A folded list of jobs; the id is inside, so that a link to it unfolds it.
pub(super) fn jobs(
    record: &TrendsRecord,
    id: &str,
    title: &str,
    linked: &[usize],
    of: usize,
    language: Language,
) -> Markup {
    let count = if linked.len() < of {
        say!(language, "trends-jobs-some", shown = linked.len(), count = of)
    } else {
        say!(language, "trends-jobs", count = of)
    };
    html! {
        details.jobs {
            summary { (title) " " small { (count) } }
            ul id=(id) {
                @for job in linked.iter().filter_map(|i| record.jobs.get(*i)) { (job_line(job, language)) }
            }
        }
    }
}

fn job_line(job: &JobPointer, language: Language) -> Markup {
    html! {
        li {
            (tag(job.verdict, language)) " "
            b { (job.job) }
            @if let Some(taken) = &job.taken {
                " " span.num { (Value::moment(taken.get(..10).unwrap_or(taken)).say(language)) }
            }
            @if let Some(report) = &job.report {
                " " a href=(format!("{}#photos", href(report))) { (say!(language, "trends-link-report")) }
            }
            " " a href=(href(&job.result)) { (say!(language, "trends-link-result")) }
            @if let Some(folder) = &job.folder { " " a href=(href(folder)) { (say!(language, "trends-link-folder")) } }
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
pub(super) fn groups(factor: &str, groups: &[GroupRecord], language: Language) -> Markup {
    let sortable = factor != "technician";
    let heads = [
        factor_word(factor, language),
        say!(language, "trends-column-jobs"),
        say!(language, "trends-column-within"),
        say!(language, "trends-column-outside"),
        say!(language, "trends-column-not-proven"),
        say!(language, "trends-column-retake"),
        say!(language, "trends-column-share"),
        String::new(),
    ];
    html! {
        div.scroll tabindex="0" { table.sortable[sortable] {
            thead { tr { @for h in heads { @if h.is_empty() { td {} } @else { th scope="col" { (h) } } } } }
            tbody {
                @for g in groups {
                    tr {
                        th scope="row" { (g.name) }
                        td.num { (g.jobs) }
                        @for v in g.verdicts { td.num { (v) } }
                        td.num data-s=(g.outside) { (with_interval(g.outside, g.interval).say(language)) }
                        td { (remark(g, language)) }
                    }
                }
            }
        } }
    }
}

fn remark(g: &GroupRecord, language: Language) -> String {
    match (g.stands_out, g.small) {
        (true, _) => say!(language, "trends-stands-out"),
        (false, true) => say!(language, "trends-few-jobs"),
        (false, false) => String::new(),
    }
}

/// Capability by sheet and quantity.
pub(super) fn capability(rows: &[CapabilityRecord], language: Language) -> Markup {
    let three =
        |c: [f64; 3]| say!(language, "trends-interval", value = short(c[0]), low = short(c[1]), high = short(c[2]));
    let heads = [
        say!(language, "trends-column-setup"),
        say!(language, "trends-column-check"),
        say!(language, "trends-column-first"),
        say!(language, "trends-column-mean"),
        say!(language, "trends-column-deviation"),
        say!(language, "trends-column-cp"),
        say!(language, "trends-column-cpk"),
    ];
    html! {
        div.scroll tabindex="0" { table.sortable {
            thead { tr { @for h in heads { th scope="col" { (h) } } } }
            tbody {
                @for c in rows {
                    tr {
                        td { (c.setup) }
                        td { (quantity_words(&c.quantity).say(language)) }
                        td.num { (c.jobs) }
                        td.num data-s=(c.mean) { (short(c.mean).say(language)) }
                        td.num data-s=(c.deviation) { (short(c.deviation).say(language)) }
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
        let share = with_interval(0.125, [0.09, 0.155]);
        assert_eq!(share.say(Language::English), "12 % (9.0 to 16 %)");
        assert_eq!(share.say(Language::German), "12 % (9,0 bis 16 %)");
        assert_eq!(percent(0.0123).say(Language::English), "1.2 %");
    }
}
