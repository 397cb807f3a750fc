//! The page: what stands out first, then counts, groups, charts, jobs.

use maud::{DOCTYPE, Markup, PreEscaped, html};

use super::super::clean::clean;
use super::super::html::{palette, symbol};
use super::super::label::sentence;
use super::charts;
use super::draw::{Axis, Row, rows};
use super::lists::{self, percent, with_interval};
use super::words::{advice, direction, factor_word, quantity_label, short, subject};
use crate::record::{EffectRecord, GroupRecord, TrendsRecord};

const STYLE: &str = include_str!("style.css");
const SCRIPT: &str = include_str!("sort.js");
/// Groups drawn of one kind; all are in the tables.
const MOST_ROWS: usize = 60;

/// The statistics of an archive as one page; links lead to the files beside it.
pub fn trends_html(record: &TrendsRecord) -> String {
    let page = html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="color-scheme" content="light dark";
                title { "Trends of " (record.read.results) " jobs" }
                style { (PreEscaped(palette::css())) (PreEscaped(super::super::html::STYLE)) (PreEscaped(STYLE)) }
            }
            body {
                (title(record))
                main {
                    (stands_out(record))
                    (misplacements(record))
                    (grouping(record, &record.by, true))
                    @for factor in ["technician", "bay", "setup", "vehicle", "kit", "camera"] {
                        @if factor != record.by { (grouping(record, factor, false)) }
                    }
                    (attempts(record))
                    (charts::weeks(record))
                    (charts::individuals(record))
                    (capability(record))
                    (findings(record))
                    (method(record))
                }
                script { (PreEscaped(SCRIPT)) }
            }
        }
    };
    page.into_string().chars().filter(|c| *c == '\n' || clean(c.encode_utf8(&mut [0; 4])).starts_with(*c)).collect()
}

fn title(record: &TrendsRecord) -> Markup {
    let read = &record.read;
    html! {
        h1 { "Trends of " (read.results) " jobs" }
        p.lede {
            @if let Some([first, last]) = &record.period { "From " (first) " to " (last) ". " }
            @if read.copies > 0 { (read.copies) " copies were counted once. " }
            @if read.errors > 0 { (read.errors) " jobs could not be judged when they were audited. " }
            @if read.unreadable > 0 { (read.unreadable) " files or lines could not be read. " }
            @if !record.names { "People are pseudonyms; the results and reports that this page links to name them." }
        }
        @if !read.unreadable_words.is_empty() {
            details { summary { "What could not be read" } ul.plain { @for w in &read.unreadable_words { li { (w) } } } }
        }
        ul.shares {
            @for v in &record.verdicts { li { (symbol::tag(v.verdict, crate::words::Language::English)) " " b { (v.count) } " " small { (with_interval(v.share, v.interval)) } } }
        }
    }
}

fn stands_out(record: &TrendsRecord) -> Markup {
    html! {
        section {
            h2 { "What stands out beyond chance" }
            @if record.effects.is_empty() {
                p { "Nothing. Differences between people, bays, set-up sheets and kits below are no larger than chance makes them." }
            }
            @for (i, effect) in record.effects.iter().enumerate() { (one_effect(record, i, effect)) }
        }
    }
}

fn one_effect(record: &TrendsRecord, i: usize, effect: &EffectRecord) -> Markup {
    html! {
        article.effect {
            h3 { (subject(&effect.factor, &effect.name)) }
            p { (effect.words) }
            p.aside {
                @if let Some([low, high]) = effect.interval { "95 % interval " (short(low)) " to " (short(high)) " tolerances; " }
                (effect.jobs) " first attempts; chance of such a difference anywhere in an archive without any: "
                (chance(effect.adjusted_p)) "."
                @if !effect.also.is_empty() { " More frequent here too: " (effect.also.join(", ")) "." }
            }
            p { b { "Do: " } (advice(effect)) }
            (charts::effect(record, effect))
            (lists::jobs(record, &format!("effect-{i}"), "Its jobs, the furthest off first:", &effect.linked, effect.jobs))
        }
    }
}

fn chance(p: f64) -> String {
    if p < 1e-6 { "less than one in a million".into() } else { percent(p) }
}

fn misplacements(record: &TrendsRecord) -> Markup {
    let list: Vec<Row> = record
        .misplacements
        .iter()
        .enumerate()
        .map(|(i, m)| Row {
            name: format!(
                "{}: {}",
                quantity_label(&m.quantity).trade,
                direction(&m.quantity, m.too_much).replace(" than required", "")
            ),
            value: m.share,
            interval: m.interval,
            note: format!("{} jobs, {}", m.count, percent(m.share)),
            link: Some(format!("#misplaced-{i}")),
            strong: false,
            faint: m.count < 5,
        })
        .collect();
    html! {
        section {
            h2 { "How the stand was misplaced" }
            p.aside { "Checks that are outside tolerance, as a share of the jobs that have such a check; the lines are 95 % intervals (Wilson)." }
            @if list.is_empty() { p { "No check was outside." } } @else { (rows("Misplacements by kind and direction", &list, Axis::Percent, None, true)) }
            @if !record.misplacements.is_empty() {
                div.scroll tabindex="0" { table.sortable {
                    thead { tr { @for h in ["Check", "Which way", "Jobs", "Middle size", "Nine of ten below"] { th scope="col" { (h) } } } }
                    tbody { @for m in &record.misplacements { tr {
                        td { (quantity_label(&m.quantity).full()) }
                        td { (direction(&m.quantity, m.too_much)) }
                        td.num { (m.count) }
                        td.num data-s=(m.median) { (short(m.amounts[0])) " " (m.unit) " (" (short(m.median)) " tolerances)" }
                        td.num data-s=(m.ninth) { (short(m.amounts[1])) " " (m.unit) " (" (short(m.ninth)) " tolerances)" }
                    } } }
                } }
            }
            @for (i, m) in record.misplacements.iter().enumerate() {
                @let name = format!("{}, {}:", quantity_label(&m.quantity).full(), direction(&m.quantity, m.too_much));
                (lists::jobs(record, &format!("misplaced-{i}"), &sentence(&name), &m.linked, m.count))
            }
        }
    }
}

fn grouping(record: &TrendsRecord, factor: &str, open: bool) -> Markup {
    let none = Vec::new();
    let groups = record.groups.get(factor).unwrap_or(&none);
    let heading = format!("By {}", factor_word(factor));
    html! {
        section id=(format!("by-{factor}")) {
            h2 { (heading) }
            @if groups.is_empty() { p { "No job states it." } } @else {
                @if factor == "technician" {
                    p.aside { "In the order of names: a difference between people is only said to be one where it stands out beyond chance (above). Who works in a bad bay has bad figures." }
                }
                @if open { (drawn(record, factor, groups)) (lists::groups(factor, groups)) (tendencies(record, factor, groups)) }
                @else { details { summary { (groups.len()) " in all: shares, figures, jobs" } (drawn(record, factor, groups)) (lists::groups(factor, groups)) (tendencies(record, factor, groups)) } }
                @for (i, g) in groups.iter().take(MOST_ROWS).enumerate() {
                    (lists::jobs(record, &format!("{factor}-{i}"), &format!("{}: ", g.name), &g.linked, g.jobs))
                }
            }
        }
    }
}

fn drawn(record: &TrendsRecord, factor: &str, groups: &[GroupRecord]) -> Markup {
    let one = |(i, g): (usize, &GroupRecord)| Row {
        name: g.name.clone(),
        value: g.outside,
        interval: g.interval,
        note: format!("{} of {} jobs{}", g.verdicts[1], g.jobs, if g.small { ", few" } else { "" }),
        link: Some(format!("#{factor}-{i}")),
        strong: g.stands_out,
        faint: g.small,
    };
    let list: Vec<Row> = groups.iter().take(MOST_ROWS).enumerate().map(one).collect();
    let overall = record.verdicts.get(1).map(|v| (v.share, "all jobs"));
    html! {
        p.aside { "Share of jobs outside tolerance with 95 % intervals. Intervals that overlap say nothing; one in twenty lies beside the truth by chance." }
        (rows(&format!("Share outside by {factor}"), &list, Axis::Percent, overall, false))
    }
}

/// Each quantity's mean against the others, the other factors taken out.
fn tendencies(record: &TrendsRecord, factor: &str, groups: &[GroupRecord]) -> Markup {
    let mut quantities: Vec<&str> =
        groups.iter().flat_map(|g| g.tendencies.iter().map(|t| t.quantity.as_str())).collect();
    quantities.sort_unstable();
    quantities.dedup();
    let of = |quantity: &str| -> Vec<Row> {
        let one = |(i, g): (usize, &GroupRecord)| {
            let t = g.tendencies.iter().find(|t| t.quantity == quantity)?;
            let named =
                |e: &EffectRecord| e.name == g.name && e.factor == factor && e.quantity.as_deref() == Some(quantity);
            Some(Row {
                name: g.name.clone(),
                value: t.shift,
                interval: t.interval,
                note: format!("{} first attempts", t.jobs),
                link: Some(format!("#{factor}-{i}")),
                strong: record.effects.iter().any(named),
                faint: g.small,
            })
        };
        groups.iter().take(MOST_ROWS).enumerate().filter_map(one).collect()
    };
    html! {
        @for quantity in quantities {
            details {
                summary { "Which way: " (quantity_label(quantity).full()) }
                p.aside { "Mean of (value - nominal) / tolerance against the others, other factors taken out; 95 % intervals of each alone. To the right: "
                    (direction(quantity, true).replace("than required", "than with the others")) "." }
                (rows(&format!("{quantity} by {factor}"), &of(quantity), Axis::Tolerances, Some((0.0, "the others")), false))
            }
        }
    }
}

fn attempts(record: &TrendsRecord) -> Markup {
    let a = &record.attempts;
    html! {
        section {
            h2 { "First attempt against last" }
            p { "Within at the first attempt: " (a.all_first_within) " of " (a.all_first) " (" (percent(a.all_first_within as f64 / a.all_first.max(1) as f64)) ")." }
            @if a.series == 0 { p { "No repair order has more than one attempt." } } @else {
                p {
                    "Of " (a.series) " repair orders with several attempts " (a.first_within) " were within at the first and "
                    (a.last_within) " at the last."
                    @if let (Some(first), Some(last)) = (a.first_size, a.last_size) {
                        " The largest deviation was " (short(first)) " tolerances in the mean at the first, " (short(last)) " at the last."
                    }
                }
            }
        }
    }
}

fn capability(record: &TrendsRecord) -> Markup {
    html! {
        section {
            h2 { "Capability by set-up sheet" }
            p.aside { "(value - nominal) / tolerance of first attempts; Cp and Cpk with 95 % intervals for a normal spread (ISO 22514-2). Below 1 the spread does not fit the tolerance." }
            @if record.capability.is_empty() { p { "No sheet has eight first attempts." } } @else {
                details { summary { (record.capability.len()) " checks" } (lists::capability(&record.capability)) }
            }
        }
    }
}

fn findings(record: &TrendsRecord) -> Markup {
    html! {
        section {
            h2 { "Findings" }
            @for (i, f) in record.findings.iter().enumerate() {
                (lists::jobs(record, &format!("finding-{i}"), &format!("{}: {} of all jobs;", f.code, with_interval(f.share, f.interval)), &f.linked, f.count))
            }
            @if record.findings.is_empty() { p { "None was made." } }
            p.aside { "`baywitness explain CODE` says what a code means; `baywitness gallery` shows each." }
        }
    }
}

fn method(record: &TrendsRecord) -> Markup {
    let (t, w) = (&record.tests, &record.weekly_chart);
    html! {
        section {
            h2 { "How this was found, and what it can't say" }
            ul.plain {
                li { "Compared are first attempts (" (t.jobs) "), so that nobody's figures are mended by repeating. People, bays, set-up sheets and kits are told apart by one additive model for each quantity; findings are compared within strata of all other factors (Mantel and Haenszel, exact)." }
                li { (t.count) " tests were made. With Holm's correction at most one archive in " (crate::quantity::rounded(1.0 / t.error_rate, 0)) " without any effect has one named here. Differences below " (short(t.least_size)) " tolerances, and groups with fewer than " (t.least_jobs) " first attempts, are never named." }
                li { "Changes are looked for by cumulative sums over single jobs; the week is the likeliest one, a neighbour may be the right one. The weekly chart signals by chance once in " (crate::quantity::rounded(w.run_length, 0)) " weeks (allowance " (short(w.allowance)) ", interval " (short(w.interval)) "), and " (crate::quantity::rounded(w.run_length_shifted, 0)) " weeks after a shift of one standard deviation of a weekly mean." }
                li { "What always goes together (a person who only works in one bay with one kit) cannot be told apart by any figures; it is said where that is so." }
                li { "Figures say that something differs, not why, and not whose fault it is. Jobs whose photos could not be used count as a verdict only." }
            }
            p.aside { "The vehicle maker's service information and local rules govern. These figures document set-ups and replace no procedure; the work is for trained people, and lasers and lifted vehicles need their own precautions." }
        }
    }
}
