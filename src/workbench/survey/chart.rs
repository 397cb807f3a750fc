//! Control charts of a fixed reference as one HTML page.

use maud::{DOCTYPE, Markup, html};

use super::page::STYLE;
use super::recheck::{ENOUGH_POINTS, Limits, MOST_SIGMAS, Recheck, Series, limits, recheck_words, series};

const SIZE: [f64; 2] = [720.0, 240.0];
/// The frame of the curve.
const LEFT: f64 = 64.0;
const RIGHT: f64 = 636.0;
const TOP: f64 = 24.0;
const BOTTOM: f64 = 196.0;

/// The page of all checks of a reference; the last one is judged.
pub fn recheck_page(reference: &str, all: &[Recheck]) -> String {
    let (words, out) = recheck_words(all);
    let days: Vec<&str> = all.iter().map(|r| r.date.as_str()).collect();
    let page = html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { "Checks of " (reference) }
                style { (STYLE) }
            }
            body {
                h1 { "Checks of " (reference) }
                div class=(if out { "no" } else { "yes" }) { @for line in words.lines() { p { (line) } } }
                @for one in series(all) { (chart(&one, &days)) }
                h2 { "All checks" }
                p {
                    "Moves are against the first survey. A move of more than " (MOST_SIGMAS) " times its standard "
                    "uncertainty is no chance. Spacing: distances between markers over their printed sizes; it falls where "
                    "paper has grown."
                }
                table {
                    tr {
                        th { "Day" } th { "Markers" } th { "Moved most: marker" } th { "by mm" }
                        th { "Largest move over its uncertainty" } th { "Spacing, %" }
                    }
                    @for r in all.iter().rev() {
                        tr {
                            td { (r.date) }
                            td class="n" { (r.markers) }
                            td class="n" { (r.largest.0) }
                            td class="n" { (format!("{:.3}", r.largest.1)) }
                            td class="n" { (format!("{:.1}", r.sigmas)) }
                            td class="n" { (format!("{:+.3}", r.spacing_percent)) }
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

fn chart(Series { name, values, never_negative }: &Series, days: &[&str]) -> Markup {
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
            svg viewBox=(format!("0 0 {} {}", SIZE[0], SIZE[1])) width=(n(SIZE[0])) role="img" aria-label=(format!("Control chart: {name}")) {
                rect x=(n(LEFT)) y=(n(TOP - 10.0)) width=(n(RIGHT - LEFT)) height=(n(BOTTOM - TOP + 20.0)) fill="none" stroke="#8b959d" {}
                @match &found {
                    Some(l) => (lines(l, l.limits[0] < 0.0 && *never_negative, &y)),
                    None => { (label(0.0, "", y(0.0))) (rule(y(0.0), "2 4")) },
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
                    "Individuals chart: mean and limits (2.66 mean moving ranges) of the checks before the last one"
                    @if provisional { "; provisional until there are " (ENOUGH_POINTS + 1) } ". A red diamond lies outside."
                } @else { "Limits appear with the third check." }
            }
        }
    }
}

fn diamond(x: f64, y: f64) -> String {
    format!("M{x:.1} {:.1}L{:.1} {y:.1}L{x:.1} {:.1}L{:.1} {y:.1}Z", y - 7.0, x + 7.0, y + 7.0, x - 7.0)
}

/// Mean and limits; their words step aside where they would lie on each other.
fn lines(found: &Limits, no_lower: bool, y: &impl Fn(f64) -> f64) -> Markup {
    const APART: f64 = 15.0;
    let [lower, upper] = found.limits;
    let middle = y(found.centre);
    let at = [middle, y(upper).min(middle - APART), y(lower).max(middle + APART)];
    html! {
        @for ((value, what, dash), at) in
            [(found.centre, "mean", "none"), (upper, "upper limit", "6 4"), (lower, "lower limit", "6 4")]
                .iter()
                .zip(at)
                .take(if no_lower { 2 } else { 3 })
        {
            (label(*value, what, at))
            (rule(y(*value), dash))
        }
    }
}

fn rule(y: f64, dash: &str) -> Markup {
    html! { line x1=(n(LEFT)) x2=(n(RIGHT)) y1=(n(y)) y2=(n(y)) stroke="#45505a" stroke-dasharray=(dash) {} }
}

/// The words of a line: its value on the left, what it is on the right.
fn label(value: f64, what: &str, y: f64) -> Markup {
    // Adding zero takes the sign of a rounded nothing away.
    let rounded = (value * 1e3).round() / 1e3 + 0.0;
    html! {
        text x=(n(LEFT - 6.0)) y=(n(y + 4.0)) text-anchor="end" { (format!("{rounded:.3}")) }
        text x=(n(RIGHT + 6.0)) y=(n(y + 4.0)) { (what) }
    }
}
