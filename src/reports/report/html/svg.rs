//! Small pieces that every drawing uses.

use maud::{Markup, html};

/// A coordinate with one decimal; what is not finite is drawn at 0.
pub(in crate::report) fn n(value: f64) -> String {
    crate::quantity::rounded(if value.is_finite() { value } else { 0.0 }, 1)
}

/// Points as the value of a `points` or `d` attribute: `1.0,2.0 3.0,4.0`.
pub(in crate::report) fn points(points: &[[f64; 2]]) -> String {
    points.iter().map(|p| format!("{},{}", n(p[0]), n(p[1]))).collect::<Vec<_>>().join(" ")
}

/// A straight line of a style class.
pub(in crate::report) fn line(class: &str, a: [f64; 2], b: [f64; 2]) -> Markup {
    html! { line class=(class) x1=(n(a[0])) y1=(n(a[1])) x2=(n(b[0])) y2=(n(b[1])) {} }
}

/// Text that is anchored at `start`, `middle` or `end`.
pub(in crate::report) fn text(class: &str, anchor: &str, at: [f64; 2], words: &str) -> Markup {
    html! { text class=(class) text-anchor=(anchor) x=(n(at[0])) y=(n(at[1])) { (words) } }
}

/// The head of an arrow that points along `direction` (a unit vector).
pub(super) fn head(class: &str, tip: [f64; 2], direction: [f64; 2], size: f64) -> Markup {
    let [dx, dy] = direction;
    let foot = [tip[0] - dx * size, tip[1] - dy * size];
    let half = size * 0.38;
    let corners = [tip, [foot[0] - dy * half, foot[1] + dx * half], [foot[0] + dy * half, foot[1] - dx * half]];
    html! { polygon class=(class) points=(points(&corners)) {} }
}

/// A dimension line between two points with a head at each end; where they
/// are too close the heads point inwards from outside.
pub(super) fn dimension(a: [f64; 2], b: [f64; 2]) -> Markup {
    let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
    let length = dx.hypot(dy);
    if length < 1e-6 {
        return html! {};
    }
    let d = [dx / length, dy / length];
    let reversed = [-d[0], -d[1]];
    let size = 9.0;
    if length > 3.0 * size {
        return html! { (line("dim", a, b)) (head("head", a, reversed, size)) (head("head", b, d, size)) };
    }
    let out = |p: [f64; 2], way: [f64; 2]| [p[0] + way[0] * 22.0, p[1] + way[1] * 22.0];
    html! {
        (line("dim", out(a, reversed), a)) (line("dim", out(b, d), b))
        (head("head", a, d, size)) (head("head", b, reversed, size))
    }
}

/// The largest of 1, 2, 5 times a power of ten that is not above `limit`.
pub(in crate::report) fn round_down(limit: f64) -> f64 {
    if !(limit.is_finite() && limit > 0.0) {
        return 1.0;
    }
    let power = 10f64.powf(limit.log10().floor());
    let lead = limit / power;
    power
        * if lead >= 5.0 {
            5.0
        } else if lead >= 2.0 {
            2.0
        } else {
            1.0
        }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn factors_are_round() {
        assert!((round_down(73.0) - 50.0).abs() < 1e-9);
        assert!((round_down(0.034) - 0.02).abs() < 1e-12);
        assert!((round_down(f64::NAN) - 1.0).abs() < 1e-12);
    }

    #[test]
    fn coordinates_are_always_drawable() {
        assert_eq!(n(f64::INFINITY), "0.0");
        assert_eq!(points(&[[1.0, -2.26], [f64::NAN, 3.0]]), "1.0,-2.3 0.0,3.0");
    }
}
