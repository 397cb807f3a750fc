//! What drills say about a trainee: this one, and all so far.

use std::collections::BTreeMap;
use std::fmt::Write;

use maud::{Markup, html};

use super::super::html::svg::{line, n, points, text};
use crate::num::wilson;
use crate::record::{DrillAnswer, DrillMark, JobMark};
use crate::words::{Figure, Language, Value, say};

const STYLE: &str = ".scroll{overflow-x:auto}.scroll table{min-width:560px}.ch{min-width:640px;margin:8px 0}.ch text{font-size:14px;fill:var(--ink)}.ch text.small{font-size:12.5px;fill:var(--muted)}\
.ch .grid{stroke:var(--rule)}.ch .path{fill:none;stroke:var(--line);stroke-width:1.3}.ch .dot{fill:var(--accent)}.ch .again{fill:var(--paper);stroke:var(--line);stroke-width:1.5}";

fn unit(code: &str) -> &'static str {
    if ["stand-turned", "stand-tilted", "stand-not-level"].contains(&code) { "deg" } else { "mm" }
}

/// A way as a sentence goes on; what is no way of ours as it was typed.
fn way_words(way: &str, language: Language) -> String {
    match way {
        "away" => say!(language, "training-way-away"),
        "towards" => say!(language, "training-way-towards"),
        "left" => say!(language, "training-way-left"),
        "right" => say!(language, "training-way-right"),
        "raise" => say!(language, "training-way-raise"),
        "lower" => say!(language, "training-way-lower"),
        "left-end-towards" => say!(language, "training-way-left-end-towards"),
        "left-end-away" => say!(language, "training-way-left-end-away"),
        "top-away" => say!(language, "training-way-top-away"),
        "top-towards" => say!(language, "training-way-top-towards"),
        "right-end-lower" => say!(language, "training-way-right-end-lower"),
        "right-end-raise" => say!(language, "training-way-right-end-raise"),
        other => other.replace('-', " "),
    }
}

fn words(a: &DrillAnswer, language: Language) -> String {
    let title = super::title(&a.finding, language);
    let way = (!a.way.is_empty()).then(|| way_words(&a.way, language));
    let size = a.size.map(|size| {
        let unit = unit(&a.finding);
        say!(language, "training-size", size = Figure::fixed(size, u8::from(unit == "deg")), unit = unit)
    });
    match (way, size) {
        (Some(way), Some(size)) => say!(language, "training-answer-both", title = title, way = way, size = size),
        (Some(part), None) | (None, Some(part)) => say!(language, "training-answer-one", title = title, part = part),
        (None, None) => title,
    }
}

fn whole(points: f64) -> Figure {
    Figure::fixed(points, 0)
}

/// The sums of a drill in one sentence.
fn score(mark: &DrillMark, language: Language) -> String {
    let [[named, there], [ways, ways_of], [sizes, sizes_of]] = [mark.findings, mark.ways, mark.sizes];
    say!(
        language,
        "training-score",
        named = named,
        there = there,
        ways = ways,
        ways_of = ways_of,
        sizes = sizes,
        sizes_of = sizes_of,
        false_alarms = mark.false_alarms,
        points = whole(mark.points[0]),
        points_of = whole(mark.points[1])
    )
}

/// One marked drill for the terminal.
pub fn drill_text(mark: &DrillMark, language: Language) -> String {
    let mut text = String::new();
    for job in &mark.jobs {
        let points = say!(
            language,
            "training-job-points",
            job = &job.job,
            points = whole(job.points),
            points_of = whole(job.of)
        );
        let _ = writeln!(text, "{points}");
        for m in remarks(job, language) {
            let _ = writeln!(text, "  {m}");
        }
    }
    let level = say!(language, "training-level", level = usize::from(mark.level));
    let _ = writeln!(text, "\n{level}: {}", score(mark, language));
    if mark.earlier > 0 {
        let _ = writeln!(text, "{}", say!(language, "training-marked-before"));
    }
    text
}

/// What is to be said of one job's answers.
fn remarks(job: &JobMark, language: Language) -> Vec<String> {
    let mut list = Vec::new();
    if job.mistakes.is_empty() {
        list.push(if job.points > 0.0 {
            say!(language, "training-nothing-was-wrong-and-said")
        } else {
            say!(language, "training-nothing-was-wrong")
        });
    }
    for m in &job.mistakes {
        let truth = words(&m.truth, language);
        list.push(match &m.answer {
            None => say!(language, "training-missed", truth = truth),
            Some(_) if m.way_right && m.size_right => say!(language, "training-right", truth = truth),
            Some(a) => {
                let part = match (m.way_right, m.size_right) {
                    (true, _) => "way",
                    (false, true) => "size",
                    (false, false) => "neither",
                };
                say!(language, "training-partly", right = part, truth = truth, answer = words(a, language))
            }
        });
    }
    list.extend(job.wrong.iter().map(|a| say!(language, "training-not-so", answer = words(a, language))));
    if !job.answered {
        list.push(say!(language, "training-no-answer"));
    }
    list
}

/// Everybody's progress: a chart and a table for each trainee, the last drill in full.
pub fn progress_html(all: &[DrillMark], language: Language) -> String {
    let title = say!(language, "training-progress");
    let mut by: BTreeMap<&str, Vec<&DrillMark>> = BTreeMap::new();
    for mark in all {
        by.entry(&mark.trainee).or_default().push(mark);
    }
    let body = html! {
        h1 { (title) }
        p.lede { (say!(language, "training-progress-lede")) }
        main {
            @for (trainee, marks) in &by {
                section {
                    h2 { (trainee) }
                    (chart(marks, language))
                    (by_finding(marks, language))
                    @if let Some(last) = marks.last() { (in_full(last, language)) }
                }
            }
        }
        footer { p { (say!(language, "training-drill-caution")) } }
    };
    super::page(&title, STYLE, &body, language)
}

fn share(mark: &DrillMark) -> f64 {
    mark.points[0] / mark.points[1].max(1.0)
}

fn chart(marks: &[&DrillMark], language: Language) -> Markup {
    let (left, right, top, bottom) = (60.0, 900.0, 16.0, 196.0);
    let x = |i: usize| left + (i as f64 + 0.5) / marks.len().max(1) as f64 * (right - left);
    let y = |v: f64| bottom - v * (bottom - top);
    let counted = marks.iter().enumerate().filter(|(_, m)| m.earlier == 0);
    let path: Vec<[f64; 2]> = counted.map(|(i, m)| [x(i), y(share(m))]).collect();
    let step = marks.len().div_ceil(8).max(1);
    html! {
        div.scroll tabindex="0" {
            svg.ch viewBox="0 0 920 240" role="img" aria-label=(say!(language, "training-chart")) {
                @for part in 0..=4 {
                    @let v = f64::from(part) / 4.0;
                    (line("grid", [left, y(v)], [right, y(v)]))
                    (text("small", "end", [left - 8.0, y(v) + 4.0], &format!("{} %", part * 25)))
                }
                polyline.path points=(points(&path)) {}
                @for (i, m) in marks.iter().enumerate() {
                    g {
                        title { (point(m, language)) }
                        circle class=(if m.earlier > 0 { "again" } else { "dot" }) cx=(n(x(i))) cy=(n(y(share(m)))) r="6" {}
                        (text("small", "middle", [x(i), y(share(m)) - 11.0], &say!(language, "training-level", level = usize::from(m.level))))
                        @if i % step == 0 { (text("small", "middle", [x(i), bottom + 22.0], &day(m).say(language))) }
                    }
                }
            }
        }
    }
}

fn day(mark: &DrillMark) -> Value {
    Value::moment(&mark.day)
}

/// What a point of the chart is.
fn point(mark: &DrillMark, language: Language) -> String {
    let percent = Figure::fixed(100.0 * share(mark), 0);
    say!(language, "training-point", day = day(mark), level = usize::from(mark.level), percent = percent)
}

/// How often each mistake was named when it was there, over all drills that count.
fn by_finding(marks: &[&DrillMark], language: Language) -> Markup {
    let mut by: BTreeMap<&str, [usize; 4]> = BTreeMap::new();
    for m in marks.iter().filter(|m| m.earlier == 0).flat_map(|m| &m.jobs).flat_map(|j| &j.mistakes) {
        let [there, named, way, size] = by.entry(&m.truth.finding).or_default();
        *there += 1;
        *named += usize::from(m.answer.is_some());
        *way += usize::from(m.way_right);
        *size += usize::from(m.size_right);
    }
    let heads = [
        say!(language, "training-head-mistake"),
        say!(language, "training-head-there"),
        say!(language, "training-head-named"),
        say!(language, "training-head-right-way"),
        say!(language, "training-head-right-size"),
        say!(language, "training-head-share"),
    ];
    html! {
        div.scroll tabindex="0" { table {
            thead { tr { @for h in heads { th scope="col" { (h) } } } }
            tbody { @for (code, [there, named, way, size]) in &by {
                @let [low, high] = wilson(*named, *there, 0.95);
                tr {
                    th scope="row" { (super::title(code, language)) }
                    td.num { (there) } td.num { (named) } td.num { (way) } td.num { (size) }
                    td.num {
                        (say!(language, "training-interval", low = whole(100.0 * low), high = whole(100.0 * high)))
                        @if *there < 10 { small { (say!(language, "training-few")) } }
                    }
                }
            } }
        } }
    }
}

fn in_full(mark: &DrillMark, language: Language) -> Markup {
    let heads = [
        say!(language, "training-job"),
        say!(language, "training-head-points"),
        say!(language, "training-head-remarks"),
    ];
    html! {
        h3 { (say!(language, "training-last-drill", day = day(mark), level = usize::from(mark.level))) }
        p { (score(mark, language)) }
        div.scroll tabindex="0" { table {
            thead { tr { @for h in heads { th scope="col" { (h) } } } }
            tbody { @for job in &mark.jobs { tr {
                th scope="row" { (job.job) }
                td.num { (say!(language, "training-points", points = whole(job.points), points_of = whole(job.of))) }
                td { @for r in remarks(job, language) { div { (r) } } }
            } } }
        } }
    }
}
