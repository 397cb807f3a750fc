//! The charts, as pictures of lines and text; every mark is a link.

use maud::{Markup, html};

use super::super::html::svg::{line, n, points, text};
use super::words::short;
use crate::words::{Figure, Language, say};

const WIDTH: f64 = 960.0;
/// Left edge of the drawn field where rows have names.
const NAMES: f64 = 300.0;
const ROW: f64 = 26.0;
/// Names are cut to so many characters.
const MOST_NAME: usize = 34;

/// A name that fits before a row.
fn fitted(name: &str) -> String {
    if name.chars().count() <= MOST_NAME {
        return name.to_owned();
    }
    name.chars().take(MOST_NAME - 1).chain(['…']).collect()
}

/// A drawing is one thing to a screen reader, unless there are links in it.
fn role(has_links: bool) -> &'static str {
    if has_links { "group" } else { "img" }
}

/// A row of a chart of values with intervals.
pub(super) struct Row {
    pub(super) name: String,
    pub(super) value: f64,
    pub(super) interval: [f64; 2],
    /// Words at the right end.
    pub(super) note: String,
    /// Where a click leads.
    pub(super) link: Option<String>,
    /// Beyond chance.
    pub(super) strong: bool,
    /// Few jobs: drawn faintly.
    pub(super) faint: bool,
}

/// How values become text on the axis.
#[derive(Clone, Copy, PartialEq)]
pub(super) enum Axis {
    /// Shares from 0.
    Percent,
    /// Tolerances to both sides of 0.
    Tolerances,
}

/// Values with intervals below each other, with a line at `reference`; bars from 0 where wanted.
pub(super) fn rows(
    title: &str,
    rows: &[Row],
    axis: Axis,
    reference: Option<(f64, &str)>,
    bars: bool,
    language: Language,
) -> Markup {
    let height = 46.0 + ROW * rows.len() as f64;
    let far = |r: &Row| r.interval.iter().map(|v| v.abs()).fold(r.value.abs(), f64::max);
    let most = rows.iter().map(far).chain(reference.map(|r| r.0.abs())).fold(0.0, f64::max).max(1e-6);
    let (low, high) = match axis {
        Axis::Percent => (0.0, (most * 1.05).min(1.0)),
        Axis::Tolerances => (-most * 1.05, most * 1.05),
    };
    let right = WIDTH - 190.0;
    let x = |v: f64| NAMES + (v.clamp(low, high) - low) / (high - low) * (right - NAMES);
    html! {
        div.scroll tabindex="0" {
            svg.ch viewBox=(format!("0 0 {WIDTH} {}", n(height))) role=(role(rows.iter().any(|r| r.link.is_some()))) aria-label=(title) {
                @for (v, label) in ticks(low, high, axis, language) {
                    (line("grid", [x(v), 24.0], [x(v), height - 18.0]))
                    (text("small", "middle", [x(v), 16.0], &label))
                }
                @if let Some((v, label)) = reference {
                    (line("ref", [x(v), 24.0], [x(v), height - 14.0]))
                    (text("small", "middle", [x(v), height - 2.0], label))
                }
                @for (i, r) in rows.iter().enumerate() {
                    @let y = 24.0 + ROW * (i as f64 + 0.5);
                    (linked(r.link.as_deref(), html! {
                        g class=(class(r)) {
                            title { (r.name) " · " (r.note) }
                            rect.hit x="0" y=(n(y - ROW / 2.0)) width=(WIDTH) height=(n(ROW)) {}
                            (text("name", "end", [NAMES - 10.0, y + 5.0], &fitted(&r.name)))
                            @if bars { rect.bar x=(n(x(low))) y=(n(y - 8.0)) width=(n((x(r.value) - x(low)).max(1.0))) height="16" {} }
                            (line("span", [x(r.interval[0]), y], [x(r.interval[1]), y]))
                            @if !bars { circle.dot cx=(n(x(r.value))) cy=(n(y)) r="5" {} }
                            (text("small", "start", [right + 12.0, y + 5.0], &r.note))
                        }
                    }))
                }
            }
        }
    }
}

fn class(row: &Row) -> &'static str {
    match (row.strong, row.faint) {
        (true, _) => "row strong",
        (_, true) => "row faint",
        _ => "row",
    }
}

fn linked(link: Option<&str>, inner: Markup) -> Markup {
    match link {
        Some(link) => html! { a href=(link) { (inner) } },
        None => inner,
    }
}

/// Round places of the axis with their words.
fn ticks(low: f64, high: f64, axis: Axis, language: Language) -> Vec<(f64, String)> {
    let step = super::super::html::svg::round_down((high - low) / 4.0);
    let first = (low / step).ceil() as i64;
    let last = (high / step).floor() as i64;
    let words = |v: f64| match axis {
        Axis::Percent => {
            say!(language, "trends-percent", share = Figure::fixed(100.0 * v, u8::from(step < 0.01)))
        }
        Axis::Tolerances => short(v).say(language),
    };
    (first..=last).map(|i| i as f64 * step).map(|v| (v, words(v))).collect()
}

/// A point of a chart over time.
pub(super) struct Point {
    pub(super) value: f64,
    /// Limits of this point, where each has its own.
    pub(super) limits: Option<[f64; 2]>,
    pub(super) name: String,
    pub(super) link: Option<String>,
    pub(super) out: bool,
}

/// Lines across a chart over time: place, style, words.
pub(super) type Across<'a> = (f64, &'a str, &'a str);

/// Points in the order of time, joined by a line.
pub(super) fn over_time(
    title: &str,
    series: &[Point],
    across: &[Across],
    axis: Axis,
    labels: &[(usize, String)],
    language: Language,
) -> Markup {
    let (left, right, top, bottom) = (64.0, WIDTH - 150.0, 14.0, 196.0);
    let limits = series.iter().filter_map(|p| p.limits).flatten();
    let all = series.iter().map(|p| p.value).chain(across.iter().map(|a| a.0)).chain(limits);
    let (low, high) = all.filter(|v| v.is_finite()).fold((f64::MAX, f64::MIN), |(a, b), v| (a.min(v), b.max(v)));
    let spare = ((high - low) * 0.06).max(1e-6);
    let (low, high) = (if axis == Axis::Percent { 0.0 } else { low - spare }, high + spare);
    let y = |v: f64| bottom - (v.clamp(low, high) - low) / (high - low) * (bottom - top);
    let x = |i: usize| left + (i as f64 + 0.5) / series.len().max(1) as f64 * (right - left);
    let path: Vec<[f64; 2]> = series.iter().enumerate().map(|(i, p)| [x(i), y(p.value)]).collect();
    let edge = |which: usize| -> Vec<[f64; 2]> {
        series.iter().enumerate().filter_map(|(i, p)| Some([x(i), y(p.limits?[which])])).collect()
    };
    html! {
        div.scroll tabindex="0" {
            svg.ch viewBox=(format!("0 0 {WIDTH} 226")) role=(role(series.iter().any(|p| p.link.is_some()))) aria-label=(title) {
                @for (v, label) in ticks(low, high, axis, language) {
                    (line("grid", [left, y(v)], [right, y(v)]))
                    (text("small", "end", [left - 8.0, y(v) + 4.0], &label))
                }
                @for (i, label) in labels { (text("small", "middle", [x(*i), bottom + 22.0], label)) }
                @for (v, style, words) in across {
                    (line(style, [left, y(*v)], [right, y(*v)]))
                    (text("small", "start", [right + 8.0, y(*v) + 4.0], words))
                }
                @for which in 0..2 { polyline.lim points=(points(&edge(which))) {} }
                polyline.path points=(points(&path)) {}
                @for (p, at) in series.iter().zip(&path) {
                    (linked(p.link.as_deref(), html! {
                        g {
                            title { (p.name) }
                            circle.hit cx=(n(at[0])) cy=(n(at[1])) r="9" {}
                            @if p.out { rect.out x=(n(at[0] - 4.5)) y=(n(at[1] - 4.5)) width="9" height="9" {} }
                            @else { circle.pt cx=(n(at[0])) cy=(n(at[1])) r="3.2" {} }
                        }
                    }))
                }
            }
        }
    }
}

/// Words below some of `names`, so that they don't touch.
pub(super) fn some_labels(names: &[String]) -> Vec<(usize, String)> {
    let step = names.len().div_ceil(9).max(1);
    names.iter().enumerate().step_by(step).map(|(i, name)| (i, name.clone())).collect()
}
