//! The page: what stands out first, then counts, groups, charts, jobs.

use maud::{DOCTYPE, Markup, PreEscaped, html};

use super::super::clean::clean;
use super::super::html::palette;
use super::super::html::symbol::tag;
use super::super::label::sentence;
use super::super::named::{Named, unit};
use super::charts;
use super::draw::{Axis, Row, rows};
use super::lists::{self, percent, with_interval};
use super::words::{
    Than, advice, also, direction, direction_than, effect_words, factor_word, quantity_words, short, subject,
};
use crate::record::{EffectRecord, GroupRecord, MisplacementRecord, TrendsRecord};
use crate::words::{Figure, Language, Value, phrase, say};

const STYLE: &str = include_str!("style.css");
const SCRIPT: &str = include_str!("sort.js");
/// Groups drawn of one kind; all are in the tables.
const MOST_ROWS: usize = 60;

/// The statistics of an archive as one page; links lead to the files beside it.
pub fn trends_html(record: &TrendsRecord, language: Language) -> String {
    let page = html! {
        (DOCTYPE)
        html lang=(language.tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="color-scheme" content="light dark";
                title { (say!(language, "trends-title", count = record.read.results)) }
                style { (PreEscaped(palette::css())) (PreEscaped(super::super::html::STYLE)) (PreEscaped(STYLE)) }
            }
            body {
                main {
                    (title(record, language))
                    (stands_out(record, language))
                    (misplacements(record, language))
                    (grouping(record, &record.by, true, language))
                    @for factor in ["technician", "bay", "setup", "vehicle", "kit", "camera"] {
                        @if factor != record.by { (grouping(record, factor, false, language)) }
                    }
                    (attempts(record, language))
                    (charts::weeks(record, language))
                    (charts::individuals(record, language))
                    (capability(record, language))
                    (findings(record, language))
                    (method(record, language))
                }
                script { (PreEscaped(SCRIPT)) }
            }
        }
    };
    page.into_string().chars().filter(|c| *c == '\n' || clean(c.encode_utf8(&mut [0; 4])).starts_with(*c)).collect()
}

fn title(record: &TrendsRecord, language: Language) -> Markup {
    let read = &record.read;
    html! {
        h1 { (say!(language, "trends-title", count = read.results)) }
        p.lede {
            @if let Some([first, last]) = &record.period {
                (say!(language, "trends-period", first = Value::moment(first), last = Value::moment(last))) " "
            }
            @if read.copies > 0 { (say!(language, "trends-copies", count = read.copies)) " " }
            @if read.errors > 0 { (say!(language, "trends-not-judged", count = read.errors)) " " }
            @if read.unreadable > 0 { (say!(language, "trends-unreadable", count = read.unreadable)) " " }
            @if !record.names { (say!(language, "trends-pseudonyms")) }
        }
        @if !read.unreadable_words.is_empty() {
            details {
                summary { (say!(language, "trends-unreadable-title")) }
                ul.plain { @for w in read.unreadable_in(language) { li { (w) } } }
            }
        }
        @if !record.credentials.is_empty() {
            @let parts = record.credentials.iter().map(|(state, n)| {
                Value::from(phrase!("verdict-credentials-count", state = state, count = *n))
            });
            @let counts = phrase!("verdict-credentials-counts", parts = Value::All(parts.collect()));
            p { (say!(language, "report-credentials-of-photos", counts = counts)) }
        }
        ul.shares {
            @for v in &record.verdicts {
                li { (tag(v.verdict, language)) " " b { (v.count) } " " small { (with_interval(v.share, v.interval).say(language)) } }
            }
        }
    }
}

fn stands_out(record: &TrendsRecord, language: Language) -> Markup {
    html! {
        section {
            h2 { (say!(language, "trends-beyond-chance")) }
            @if record.effects.is_empty() { p { (say!(language, "trends-nothing")) } }
            @for (i, effect) in record.effects.iter().enumerate() { (one_effect(record, i, effect, language)) }
        }
    }
}

fn one_effect(record: &TrendsRecord, i: usize, effect: &EffectRecord, language: Language) -> Markup {
    let jobs = say!(language, "trends-effect-jobs");
    html! {
        article.effect {
            h3 { (subject(&effect.factor, &effect.name, language)) }
            p { (effect_words(effect, language)) }
            p.aside {
                @if let Some([low, high]) = effect.interval {
                    (say!(language, "trends-effect-interval", low = short(low), high = short(high))) " "
                }
                (say!(language, "trends-effect-chance", count = effect.jobs, chance = chance(effect.adjusted_p)))
                @if !effect.also.is_empty() {
                    " " (say!(language, "trends-effect-also", others = effect.also.iter().map(|a| also(a)).collect::<Vec<_>>()))
                }
            }
            p { b { (say!(language, "trends-do")) } " " (advice(effect, language)) }
            (charts::effect(record, effect, language))
            (lists::jobs(record, &format!("effect-{i}"), &jobs, &effect.linked, effect.jobs, language))
        }
    }
}

fn chance(p: f64) -> Value {
    if p < 1e-6 { crate::words::phrase!("trends-one-in-a-million").into() } else { percent(p).into() }
}

fn misplacements(record: &TrendsRecord, language: Language) -> Markup {
    let row = |(i, m): (usize, &MisplacementRecord)| Row {
        name: say!(
            language,
            "trends-misplaced",
            what = Named::of_key(&m.quantity).short(),
            way = direction(&m.quantity, m.too_much),
        ),
        value: m.share,
        interval: m.interval,
        note: say!(language, "trends-misplaced-note", count = m.count, share = percent(m.share)),
        link: Some(format!("#misplaced-{i}")),
        strong: false,
        faint: m.count < 5,
    };
    let list: Vec<Row> = record.misplacements.iter().enumerate().map(row).collect();
    html! {
        section {
            h2 { (say!(language, "trends-misplaced-title")) }
            p.aside { (say!(language, "trends-misplaced-aside")) }
            @if list.is_empty() { p { (say!(language, "trends-misplaced-none")) } } @else {
                (rows(&say!(language, "trends-misplaced-chart"), &list, Axis::Percent, None, true, language))
                (misplaced_table(&record.misplacements, language))
            }
            @for (i, m) in record.misplacements.iter().enumerate() {
                @let what = quantity_words(&m.quantity);
                @let way = direction_than(&m.quantity, m.too_much, Than::Required);
                @let name = sentence(&say!(language, "trends-misplaced", what = what, way = way));
                (lists::jobs(record, &format!("misplaced-{i}"), &name, &m.linked, m.count, language))
            }
        }
    }
}

fn misplaced_table(misplacements: &[MisplacementRecord], language: Language) -> Markup {
    let heads = [
        say!(language, "trends-column-check"),
        say!(language, "trends-column-way"),
        say!(language, "trends-column-jobs"),
        say!(language, "trends-column-median"),
        say!(language, "trends-column-ninth"),
    ];
    let size = |m: &MisplacementRecord, amount: f64, tolerances: f64| {
        say!(language, "trends-size", amount = short(amount), unit = unit(&m.unit), size = short(tolerances))
    };
    html! {
        div.scroll tabindex="0" { table.sortable {
            thead { tr { @for h in heads { th scope="col" { (h) } } } }
            tbody { @for m in misplacements { tr {
                td { (quantity_words(&m.quantity).say(language)) }
                td { (direction_than(&m.quantity, m.too_much, Than::Required).say(language)) }
                td.num { (m.count) }
                td.num data-s=(m.median) { (size(m, m.amounts[0], m.median)) }
                td.num data-s=(m.ninth) { (size(m, m.amounts[1], m.ninth)) }
            } } }
        } }
    }
}

fn grouping(record: &TrendsRecord, factor: &str, open: bool, language: Language) -> Markup {
    let none = Vec::new();
    let groups = record.groups.get(factor).unwrap_or(&none);
    let all = html! {
        (drawn(record, factor, groups, language))
        (lists::groups(factor, groups, language))
        (tendencies(record, factor, groups, language))
    };
    html! {
        section id=(format!("by-{factor}")) {
            h2 { (say!(language, "trends-by", factor = factor)) }
            @if groups.is_empty() { p { (say!(language, "trends-no-group")) } } @else {
                @if factor == "technician" { p.aside { (say!(language, "trends-people-note")) } }
                @if open { (all) } @else {
                    details { summary { (say!(language, "trends-groups-folded", count = groups.len())) } (all) }
                }
                @for (i, g) in groups.iter().take(MOST_ROWS).enumerate() {
                    (lists::jobs(record, &format!("{factor}-{i}"), &g.name, &g.linked, g.jobs, language))
                }
            }
        }
    }
}

fn drawn(record: &TrendsRecord, factor: &str, groups: &[GroupRecord], language: Language) -> Markup {
    let one = |(i, g): (usize, &GroupRecord)| Row {
        name: g.name.clone(),
        value: g.outside,
        interval: g.interval,
        note: say!(
            language,
            "trends-group-note",
            outside = g.verdicts[1],
            count = g.jobs,
            few = if g.small { "yes" } else { "no" },
        ),
        link: Some(format!("#{factor}-{i}")),
        strong: g.stands_out,
        faint: g.small,
    };
    let list: Vec<Row> = groups.iter().take(MOST_ROWS).enumerate().map(one).collect();
    let all = say!(language, "trends-all-jobs");
    let overall = record.verdicts.get(1).map(|v| (v.share, all.as_str()));
    let title = say!(language, "trends-share-chart", factor = factor_word(factor, language));
    html! {
        p.aside { (say!(language, "trends-share-note")) }
        (rows(&title, &list, Axis::Percent, overall, false, language))
    }
}

/// Each quantity's mean against the others, the other factors taken out.
fn tendencies(record: &TrendsRecord, factor: &str, groups: &[GroupRecord], language: Language) -> Markup {
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
                note: say!(language, "trends-first-attempts", count = t.jobs),
                link: Some(format!("#{factor}-{i}")),
                strong: record.effects.iter().any(named),
                faint: g.small,
            })
        };
        groups.iter().take(MOST_ROWS).enumerate().filter_map(one).collect()
    };
    let others = say!(language, "trends-level", against = "others");
    html! {
        @for quantity in quantities {
            @let what = quantity_words(quantity).say(language);
            @let right = direction_than(quantity, true, Than::Others);
            details {
                summary { (say!(language, "trends-which-way", what = &what)) }
                p.aside { (say!(language, "trends-which-way-note", way = right)) }
                (rows(&what, &of(quantity), Axis::Tolerances, Some((0.0, others.as_str())), false, language))
            }
        }
    }
}

fn attempts(record: &TrendsRecord, language: Language) -> Markup {
    let a = &record.attempts;
    let share = percent(a.all_first_within as f64 / a.all_first.max(1) as f64);
    html! {
        section {
            h2 { (say!(language, "trends-attempts-title")) }
            p { (say!(language, "trends-attempts-first", within = a.all_first_within, count = a.all_first, share = share)) }
            @if a.series == 0 { p { (say!(language, "trends-attempts-none")) } } @else {
                p {
                    (say!(language, "trends-attempts", series = a.series, first = a.first_within, last = a.last_within))
                    @if let (Some(first), Some(last)) = (a.first_size, a.last_size) {
                        " " (say!(language, "trends-attempts-size", first = short(first), last = short(last)))
                    }
                }
            }
        }
    }
}

fn capability(record: &TrendsRecord, language: Language) -> Markup {
    html! {
        section {
            h2 { (say!(language, "trends-capability-title")) }
            p.aside { (say!(language, "trends-capability-note")) }
            @if record.capability.is_empty() { p { (say!(language, "trends-capability-none")) } } @else {
                details {
                    summary { (say!(language, "trends-capability-folded", count = record.capability.len())) }
                    (lists::capability(&record.capability, language))
                }
            }
        }
    }
}

fn findings(record: &TrendsRecord, language: Language) -> Markup {
    html! {
        section {
            h2 { (say!(language, "trends-findings-title")) }
            @for (i, f) in record.findings.iter().enumerate() {
                @let share = with_interval(f.share, f.interval);
                @let title = say!(language, "trends-finding", code = &f.code, share = share);
                (lists::jobs(record, &format!("finding-{i}"), &title, &f.linked, f.count, language))
            }
            @if record.findings.is_empty() { p { (say!(language, "trends-findings-none")) } }
            p.aside { (say!(language, "trends-findings-note")) }
        }
    }
}

fn method(record: &TrendsRecord, language: Language) -> Markup {
    let (t, w) = (&record.tests, &record.weekly_chart);
    html! {
        section {
            h2 { (say!(language, "trends-method-title")) }
            ul.plain {
                li { (say!(language, "trends-method-compared", count = t.jobs)) }
                li {
                    (say!(
                        language,
                        "trends-method-tests",
                        count = t.count,
                        archives = Figure::fixed(1.0 / t.error_rate, 0),
                        size = short(t.least_size),
                        jobs = t.least_jobs,
                    ))
                }
                li {
                    (say!(
                        language,
                        "trends-method-changes",
                        run = Figure::fixed(w.run_length, 0),
                        allowance = short(w.allowance),
                        interval = short(w.interval),
                        shifted = Figure::fixed(w.run_length_shifted, 0),
                    ))
                }
                li { (say!(language, "trends-method-together")) }
                li { (say!(language, "trends-method-not-why")) }
            }
            p.aside { (say!(language, "trends-foot")) }
        }
    }
}
