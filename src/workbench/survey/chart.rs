//! Control charts of a fixed reference as one HTML page.

use maud::{DOCTYPE, Markup, html};

use super::page::STYLE;
use super::recheck::{ENOUGH_POINTS, Limits, MOST_SIGMAS, Recheck, Series, limits, recheck_words, series};
use crate::shown::{fixed, signed};
use crate::words::{Figure, Language, Value, say};

const SIZE: [f64; 2] = [720.0, 240.0];
/// The frame of the curve.
const LEFT: f64 = 64.0;
const RIGHT: f64 = 636.0;
const TOP: f64 = 24.0;
const BOTTOM: f64 = 196.0;

/// The page of all checks of a reference; the last one is judged.
pub fn recheck_page(reference: &str, all: &[Recheck], language: Language) -> String {
    let (words, out) = recheck_words(all, language);
    let days: Vec<String> = all.iter().map(|r| Value::moment(&r.date).say(language)).collect();
    let title = say!(language, "fit-recheck-title", reference = reference);
    let page = html! {
        (DOCTYPE)
        html lang=(language.tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { (title) }
                style { (STYLE) }
            }
            body {
                h1 { (title) }
                div class=(if out { "no" } else { "yes" }) { @for line in words.lines() { p { (line) } } }
                @for one in series(all) { (chart(&one, &days, language)) }
                h2 { (say!(language, "fit-recheck-all")) }
                p { (say!(language, "fit-recheck-note", sigmas = Figure::plain(MOST_SIGMAS))) }
                table {
                    tr {
                        th { (say!(language, "fit-recheck-column-day")) } th { (say!(language, "fit-survey-column-markers")) }
                        th { (say!(language, "fit-recheck-column-most")) } th { (say!(language, "fit-recheck-column-by")) }
                        th { (say!(language, "fit-recheck-column-sigmas")) }
                        th { (say!(language, "fit-recheck-series", series = "spacing")) }
                    }
                    @for r in all.iter().rev() {
                        tr {
                            td { (Value::moment(&r.date).say(language)) }
                            td class="n" { (r.markers) }
                            td class="n" { (r.largest.0) }
                            td class="n" { (fixed(r.largest.1, 3, language)) }
                            td class="n" { (fixed(r.sigmas, 1, language)) }
                            td class="n" { (signed(r.spacing_percent, 3, language)) }
                        }
                    }
                }
            }
        }
    };
    page.into_string()
}

fn n(value: f64) -> String {
    format!("{:.1}", if value.is_finite() { value } else { 0.0 })
}

fn chart(Series { name, values, never_negative }: &Series, days: &[String], language: Language) -> Markup {
    let name = name.say(language);
    let found = limits(values);
    let drawn = |l: &f64| !(*never_negative && *l < 0.0);
    let edges = found.iter().flat_map(|l| l.limits).filter(drawn).chain(values.iter().copied()).chain([0.0]);
    let [low, high] = edges.fold([f64::INFINITY, f64::NEG_INFINITY], |[a, b], v| [a.min(v), b.max(v)]);
    let span = (high - low).max(1e-6);
    let y = |v: f64| TOP + (BOTTOM - TOP) * (high - v) / span;
    let x = |i: usize| LEFT + 14.0 + (RIGHT - LEFT - 28.0) * (i as f64 + 0.5) / values.len() as f64;
    let path: Vec<String> = values.iter().enumerate().map(|(i, v)| format!("{:.1},{:.1}", x(i), y(*v))).collect();
    let provisional = values.len() <= ENOUGH_POINTS;
    // A day needs some 90 px; the last one always stands there.
    let every = values.len().div_ceil(5).max(1);
    html! {
        h2 { (name) }
        figure {
            svg viewBox=(format!("0 0 {} {}", SIZE[0], SIZE[1])) width=(n(SIZE[0])) role="img" aria-label=(say!(language, "fit-recheck-chart", name = &name)) {
                rect x=(n(LEFT)) y=(n(TOP - 10.0)) width=(n(RIGHT - LEFT)) height=(n(BOTTOM - TOP + 20.0)) fill="none" stroke="#8b959d" {}
                @match &found {
                    Some(l) => (lines(l, l.limits[0] < 0.0 && *never_negative, &y, language)),
                    None => { (label(0.0, "", y(0.0), language)) (rule(y(0.0), "2 4")) },
                }
                polyline points=(path.join(" ")) fill="none" stroke="#316f97" {}
                @for (i, (v, day)) in values.iter().zip(days).enumerate() {
                    @let outside = found.is_some_and(|l| *v < l.limits[0] || *v > l.limits[1]);
                    @if outside {
                        path d=(diamond(x(i), y(*v))) fill="#a3201d" {}
                    } @else {
                        circle cx=(n(x(i))) cy=(n(y(*v))) r="3.5" fill="#316f97" {}
                    }
                    @if (values.len() - 1 - i) % every == 0 {
                        line x1=(n(x(i))) x2=(n(x(i))) y1=(n(BOTTOM + 10.0)) y2=(n(BOTTOM + 15.0)) stroke="#8b959d" {}
                        text x=(n(x(i))) y=(n(BOTTOM + 29.0)) text-anchor="middle" { (day) }
                    }
                }
            }
            figcaption {
                @if found.is_some() {
                    (say!(
                        language,
                        "fit-recheck-caption",
                        factor = Figure::fixed(2.66, 2),
                        provisional = if provisional { "yes" } else { "no" },
                        enough = ENOUGH_POINTS + 1,
                    ))
                } @else { (say!(language, "fit-recheck-no-limits")) }
            }
        }
    }
}

fn diamond(x: f64, y: f64) -> String {
    format!("M{x:.1} {:.1}L{:.1} {y:.1}L{x:.1} {:.1}L{:.1} {y:.1}Z", y - 7.0, x + 7.0, y + 7.0, x - 7.0)
}

/// Mean and limits; their words step aside where they would lie on each other.
fn lines(found: &Limits, no_lower: bool, y: &impl Fn(f64) -> f64, language: Language) -> Markup {
    const APART: f64 = 15.0;
    let [lower, upper] = found.limits;
    let middle = y(found.centre);
    let at = [middle, y(upper).min(middle - APART), y(lower).max(middle + APART)];
    html! {
        @for ((value, what, dash), at) in
            [(found.centre, "mean", "none"), (upper, "upper", "6 4"), (lower, "lower", "6 4")]
                .iter()
                .zip(at)
                .take(if no_lower { 2 } else { 3 })
        {
            (label(*value, &say!(language, "fit-recheck-line", line = *what), at, language))
            (rule(y(*value), dash))
        }
    }
}

fn rule(y: f64, dash: &str) -> Markup {
    html! { line x1=(n(LEFT)) x2=(n(RIGHT)) y1=(n(y)) y2=(n(y)) stroke="#45505a" stroke-dasharray=(dash) {} }
}

/// The words of a line: its value on the left, what it is on the right.
fn label(value: f64, what: &str, y: f64, language: Language) -> Markup {
    html! {
        text x=(n(LEFT - 6.0)) y=(n(y + 4.0)) text-anchor="end" { (fixed(value, 3, language)) }
        text x=(n(RIGHT + 6.0)) y=(n(y + 4.0)) { (what) }
    }
}
