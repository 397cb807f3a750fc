//! Control charts of a fixed reference as one HTML page.

use maud::{DOCTYPE, Markup, html};

use super::page::STYLE;
use super::recheck::{ENOUGH_POINTS, Limits, Recheck, limits, recheck_words, series};

const SIZE: [f64; 2] = [640.0, 200.0];
const LEFT: f64 = 64.0;

/// The page of all checks of a reference; the last one is judged.
pub fn recheck_page(reference: &str, all: &[Recheck]) -> String {
    let (words, out) = recheck_words(all);
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
                @for (name, values) in series(all) { (chart(name, &values)) }
                table {
                    tr { th { "Day" } th { "Markers" } th { "Moved most" } th { "mm" } th { "over u" } th { "Spacing, %" } }
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

fn chart(name: &str, values: &[f64]) -> Markup {
    let found = limits(values);
    let edges = found.iter().flat_map(|l| l.limits).chain(values.iter().copied()).chain([0.0]);
    let [low, high] = edges.fold([f64::INFINITY, f64::NEG_INFINITY], |[a, b], v| [a.min(v), b.max(v)]);
    let span = (high - low).max(1e-6);
    let y = |v: f64| 14.0 + (SIZE[1] - 28.0) * (high - v) / span;
    let x = |i: usize| LEFT + 14.0 + (SIZE[0] - LEFT - 28.0) * (i as f64 + 0.5) / values.len() as f64;
    let path: Vec<String> = values.iter().enumerate().map(|(i, v)| format!("{:.1},{:.1}", x(i), y(*v))).collect();
    let provisional = values.len() <= ENOUGH_POINTS;
    html! {
        h2 { (name) }
        figure {
            svg viewBox=(format!("0 0 {} {}", SIZE[0], SIZE[1])) width=(n(SIZE[0])) role="img" aria-label=(format!("Control chart: {name}")) {
                rect x=(n(LEFT)) y="4" width=(n(SIZE[0] - LEFT - 4.0)) height=(n(SIZE[1] - 8.0)) fill="none" stroke="#8b959d" {}
                @if let Some(l) = &found { (lines(l, &y)) }
                polyline points=(path.join(" ")) fill="none" stroke="#316f97" {}
                @for (i, v) in values.iter().enumerate() {
                    @let outside = found.is_some_and(|l| *v < l.limits[0] || *v > l.limits[1]);
                    circle cx=(n(x(i))) cy=(n(y(*v))) r=(if outside { "5" } else { "3" }) fill=(if outside { "#a3201d" } else { "#316f97" }) {}
                }
            }
            figcaption {
                "Individuals chart: mean and limits (2.66 mean moving ranges) of the checks before the last one"
                @if provisional { "; provisional with so few of them" } "."
            }
        }
    }
}

fn lines(limits: &Limits, y: &impl Fn(f64) -> f64) -> Markup {
    html! {
        @for (value, dash) in [(limits.centre, "none"), (limits.limits[0], "6 4"), (limits.limits[1], "6 4")] {
            line x1=(n(LEFT)) x2=(n(SIZE[0] - 4.0)) y1=(n(y(value))) y2=(n(y(value))) stroke="#45505a" stroke-dasharray=(dash) {}
            text x=(n(LEFT - 6.0)) y=(n(y(value) + 4.0)) text-anchor="end" { (format!("{value:.3}")) }
        }
    }
}
