//! What drills say about a trainee: this one, and all so far.

use std::collections::BTreeMap;
use std::fmt::Write;

use maud::{Markup, html};

use super::super::html::svg::{line, n, points, text};
use crate::num::wilson;
use crate::quantity::rounded;
use crate::record::{DrillAnswer, DrillMark, JobMark};
use crate::verdict::findings::explanation;

const STYLE: &str = ".scroll{overflow-x:auto}.scroll table{min-width:560px}.ch{min-width:640px;margin:8px 0}.ch text{font-size:14px;fill:var(--ink)}.ch text.small{font-size:12.5px;fill:var(--muted)}\
.ch .grid{stroke:var(--rule)}.ch .path{fill:none;stroke:var(--line);stroke-width:1.3}.ch .dot{fill:var(--accent)}.ch .again{fill:var(--paper);stroke:var(--line);stroke-width:1.5}";

fn title(code: &str) -> &str {
    match explanation(code) {
        Some(e) => e.title,
        None if code == "none" => "Nothing wrong",
        None => code,
    }
}

fn unit(code: &str) -> &'static str {
    if ["stand-turned", "stand-tilted", "stand-not-level"].contains(&code) { "deg" } else { "mm" }
}

/// A way as a sentence goes on; what is no way of ours as it was typed.
fn way_words(way: &str) -> String {
    match way {
        "away" | "towards" | "left" | "right" => format!("move it {way}"),
        "raise" | "lower" => format!("{way} it"),
        "left-end-towards" => "turn its left end towards the vehicle".to_owned(),
        "left-end-away" => "turn its left end away from the vehicle".to_owned(),
        "top-away" => "tilt its top away from the vehicle".to_owned(),
        "top-towards" => "tilt its top towards the vehicle".to_owned(),
        "right-end-lower" => "lower its right end".to_owned(),
        "right-end-raise" => "raise its right end".to_owned(),
        other => other.replace('-', " "),
    }
}

fn words(a: &DrillAnswer) -> String {
    let mut text = title(&a.finding).to_owned();
    if !a.way.is_empty() {
        let _ = write!(text, ": {}", way_words(&a.way));
    }
    if let Some(size) = a.size {
        let digits = usize::from(unit(&a.finding) == "deg");
        let _ = write!(text, " by {} {}", rounded(size, digits), unit(&a.finding));
    }
    text
}

fn of(part: [usize; 2]) -> String {
    format!("{} of {}", part[0], part[1])
}

/// One marked drill for the terminal.
pub fn drill_text(mark: &DrillMark) -> String {
    let mut text = String::new();
    for job in &mark.jobs {
        let _ = writeln!(text, "{}: {} of {} points", job.job, rounded(job.points, 0), rounded(job.of, 0));
        for m in remarks(job) {
            let _ = writeln!(text, "  {m}");
        }
    }
    let _ = writeln!(
        text,
        "\nLevel {}: findings {}, directions {}, sizes {}, false alarms {}: {} of {} points",
        mark.level,
        of(mark.findings),
        of(mark.ways),
        of(mark.sizes),
        mark.false_alarms,
        rounded(mark.points[0], 0),
        rounded(mark.points[1], 0)
    );
    if mark.earlier > 0 {
        text.push_str("This drill was marked before: its answers were known.\n");
    }
    text
}

/// What is to be said of one job's answers.
fn remarks(job: &JobMark) -> Vec<String> {
    let mut list = Vec::new();
    if job.mistakes.is_empty() {
        list.push(format!("nothing was wrong{}", if job.points > 0.0 { ", and that was said" } else { "" }));
    }
    for m in &job.mistakes {
        let truth = words(&m.truth);
        list.push(match &m.answer {
            None => format!("missed: {truth}"),
            Some(_) if m.way_right && m.size_right => format!("right: {truth}"),
            Some(a) => {
                let way = if m.way_right { "right way" } else { "wrong way" };
                let size = if m.size_right { "right size" } else { "wrong size" };
                format!("named, {way}, {size}: {truth}; answered: {}", words(a))
            }
        });
    }
    list.extend(job.wrong.iter().map(|a| format!("not so: {}", words(a))));
    if !job.answered {
        list.push("no answer was given".to_owned());
    }
    list
}

/// Everybody's progress: a chart and a table for each trainee, the last drill in full.
pub fn progress_html(all: &[DrillMark]) -> String {
    let mut by: BTreeMap<&str, Vec<&DrillMark>> = BTreeMap::new();
    for mark in all {
        by.entry(&mark.trainee).or_default().push(mark);
    }
    let body = html! {
        h1 { "Progress in drills" }
        p.lede { "Points of each drill in the order in which they were marked. Drills that were marked before (open circles) count for nothing: their answers were known." }
        main {
            @for (trainee, marks) in &by {
                section {
                    h2 { (trainee) }
                    (chart(marks))
                    (by_finding(marks))
                    @if let Some(last) = marks.last() { (in_full(last)) }
                }
            }
        }
        footer { p { "Drills are invented and practise reading a set-up; they replace no training at a real vehicle. The vehicle maker's service information and local rules govern; lasers and lifted vehicles need their own precautions." } }
    };
    super::page("Progress in drills", STYLE, &body)
}

fn share(mark: &DrillMark) -> f64 {
    mark.points[0] / mark.points[1].max(1.0)
}

fn chart(marks: &[&DrillMark]) -> Markup {
    let (left, right, top, bottom) = (60.0, 900.0, 16.0, 196.0);
    let x = |i: usize| left + (i as f64 + 0.5) / marks.len().max(1) as f64 * (right - left);
    let y = |v: f64| bottom - v * (bottom - top);
    let counted = marks.iter().enumerate().filter(|(_, m)| m.earlier == 0);
    let path: Vec<[f64; 2]> = counted.map(|(i, m)| [x(i), y(share(m))]).collect();
    let step = marks.len().div_ceil(8).max(1);
    html! {
        div.scroll tabindex="0" {
            svg.ch viewBox="0 0 920 240" role="img" aria-label="Share of the points of each drill" {
                @for part in 0..=4 {
                    @let v = f64::from(part) / 4.0;
                    (line("grid", [left, y(v)], [right, y(v)]))
                    (text("small", "end", [left - 8.0, y(v) + 4.0], &format!("{} %", part * 25)))
                }
                polyline.path points=(points(&path)) {}
                @for (i, m) in marks.iter().enumerate() {
                    g {
                        title { (m.day) ", level " (m.level) ": " (rounded(100.0 * share(m), 0)) " % of the points" }
                        circle class=(if m.earlier > 0 { "again" } else { "dot" }) cx=(n(x(i))) cy=(n(y(share(m)))) r="6" {}
                        (text("small", "middle", [x(i), y(share(m)) - 11.0], &format!("level {}", m.level)))
                        @if i % step == 0 { (text("small", "middle", [x(i), bottom + 22.0], &m.day)) }
                    }
                }
            }
        }
    }
}

/// How often each mistake was named when it was there, over all drills that count.
fn by_finding(marks: &[&DrillMark]) -> Markup {
    let mut by: BTreeMap<&str, [usize; 4]> = BTreeMap::new();
    for m in marks.iter().filter(|m| m.earlier == 0).flat_map(|m| &m.jobs).flat_map(|j| &j.mistakes) {
        let [there, named, way, size] = by.entry(&m.truth.finding).or_default();
        *there += 1;
        *named += usize::from(m.answer.is_some());
        *way += usize::from(m.way_right);
        *size += usize::from(m.size_right);
    }
    html! {
        div.scroll tabindex="0" { table {
            thead { tr { @for h in ["Mistake", "There", "Named", "Right way", "Right size", "Named, 95 %"] { th scope="col" { (h) } } } }
            tbody { @for (code, [there, named, way, size]) in &by {
                @let [low, high] = wilson(*named, *there, 0.95);
                tr {
                    th scope="row" { (title(code)) }
                    td.num { (there) } td.num { (named) } td.num { (way) } td.num { (size) }
                    td.num { (rounded(100.0 * low, 0)) " to " (rounded(100.0 * high, 0)) " %" @if *there < 10 { small { "few: says little" } } }
                }
            } }
        } }
    }
}

fn in_full(mark: &DrillMark) -> Markup {
    html! {
        h3 { "The last drill: " (mark.day) ", level " (mark.level) }
        p {
            "Findings " (of(mark.findings)) ", directions " (of(mark.ways)) ", sizes " (of(mark.sizes)) ", false alarms " (mark.false_alarms)
            ": " (rounded(mark.points[0], 0)) " of " (rounded(mark.points[1], 0)) " points."
        }
        div.scroll tabindex="0" { table {
            thead { tr { @for h in ["Job", "Points", "What was there, and what was said"] { th scope="col" { (h) } } } }
            tbody { @for job in &mark.jobs { tr {
                th scope="row" { (job.job) }
                td.num { (rounded(job.points, 0)) " of " (rounded(job.of, 0)) }
                td { @for r in remarks(job) { div { (r) } } }
            } } }
        } }
    }
}
