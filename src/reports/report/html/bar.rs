//! One check as a picture: limits, required value, measured value and the
//! interval in which the true value lies.
//!
//! All bars share one scale: the distance between the limits is half the
//! bar's width, so bars can be compared with one another. What lies further
//! off is drawn as an arrow at the edge, with its amount.

use maud::{Markup, html};

use super::svg::{line, n, points, text};
use super::symbol;
use crate::record::CheckRecord;
use crate::report::figures::{Measured, wanted};
use crate::report::label::Label;
use crate::report::side::{Ends, ends};
use crate::words::{Figure, Language, say};

const LEFT: f64 = 14.0;
const RIGHT: f64 = 306.0;
const MIDDLE: f64 = 34.0;
const HALF_BAND: f64 = 11.0;
/// More letters than this at both ends together are set smaller.
const MOST_LETTERS: usize = 38;

/// Maps values to places on the bar.
struct Scale {
    middle: f64,
    units_per_value: f64,
    ends: Ends,
}

impl Scale {
    fn new(check: &CheckRecord, ends: Ends) -> Scale {
        let (middle, half) = match (check.lower, check.upper) {
            (Some(lower), Some(upper)) => ((lower + upper) / 2.0, (upper - lower).abs() / 2.0),
            (Some(limit), None) | (None, Some(limit)) => (check.nominal, (check.nominal - limit).abs()),
            (None, None) => (check.nominal, check.expanded_uncertainty.unwrap_or(0.0) * 4.0),
        };
        let half = if half > 0.0 && half.is_finite() { half } else { 4.0 * check.expanded_uncertainty.unwrap_or(1.0) };
        let half = if half > 0.0 && half.is_finite() { half } else { 1.0 };
        Scale { middle, units_per_value: (RIGHT - LEFT) / 4.0 / half, ends }
    }

    /// The place of a value, however far off.
    fn at(&self, value: f64) -> f64 {
        let sign = if self.ends.high_is_left { -1.0 } else { 1.0 };
        (LEFT + RIGHT) / 2.0 + sign * (value - self.middle) * self.units_per_value
    }

    /// The place of a value, kept on the bar.
    fn kept(&self, value: f64) -> f64 {
        self.at(value).clamp(LEFT, RIGHT)
    }
}

/// The bar of a check.
pub(super) fn bar(check: &CheckRecord, label: &Label, language: Language) -> Markup {
    let scale = Scale::new(check, ends(label.quantity, language));
    html! {
        svg.bar viewBox="0 0 320 66" role="img" aria-label=(spoken(check, label, language)) {
            (end_words(check, label, &scale, language))
            (band(check, &scale))
            (line("axis", [LEFT, MIDDLE], [RIGHT, MIDDLE]))
            (line("nominal", [scale.kept(check.nominal), MIDDLE - 15.0], [scale.kept(check.nominal), MIDDLE + 15.0]))
            (limits(check, label, &scale, language))
            (value(check, &scale, language))
        }
    }
}

/// What lies at either end; where the value lies beyond one, its amount.
fn end_words(check: &CheckRecord, label: &Label, scale: &Scale, language: Language) -> Markup {
    let Ends { low, high, high_is_left } = &scale.ends;
    let (left, right) = if *high_is_left { (high, low) } else { (low, high) };
    let place = finite(check.value).map(|value| scale.at(value));
    let amount = finite(check.value).map_or_else(String::new, |value| {
        let shown = Measured::new(label.quantity, &check.unit, value, check.expanded_uncertainty, language);
        say!(language, "report-off-scale", amount = shown.bare_with_unit())
    });
    let off_left = place.is_some_and(|p| p < LEFT);
    let off_right = place.is_some_and(|p| p > RIGHT);
    let left = format!("◂ {}", if off_left { &amount } else { left });
    let right = format!("{} ▸", if off_right { &amount } else { right });
    let size = match left.chars().count() + right.chars().count() {
        letters if letters > 50 => "tighter",
        letters if letters > MOST_LETTERS => "tight",
        _ => "",
    };
    let class = |off: bool| if off { format!("note {size}") } else { size.to_owned() };
    html! {
        (text(&class(off_left), "start", [LEFT, 12.0], &left))
        (text(&class(off_right), "end", [RIGHT, 12.0], &right))
    }
}

fn finite(value: Option<f64>) -> Option<f64> {
    value.filter(|v| v.is_finite())
}

fn spoken(check: &CheckRecord, label: &Label, language: Language) -> String {
    let value = Measured::of_check(check, label.quantity, language);
    let value = value.map_or_else(|| say!(language, "report-no-value"), |m| m.short());
    say!(
        language,
        "report-bar-spoken",
        name = &label.trade,
        value = value,
        required = wanted(check, label.quantity, language),
        verdict = check.verdict.phrase()
    )
}

fn band(check: &CheckRecord, scale: &Scale) -> Markup {
    let open = |limit: Option<f64>, towards: f64| scale.kept(limit.unwrap_or(towards));
    let (a, b) = (open(check.lower, f64::MIN), open(check.upper, f64::MAX));
    let none = check.lower.is_none() && check.upper.is_none();
    html! {
        @if !none {
            rect.band x=(n(a.min(b))) y=(n(MIDDLE - HALF_BAND)) width=(n((b - a).abs())) height=(n(2.0 * HALF_BAND)) {}
        }
    }
}

fn limits(check: &CheckRecord, label: &Label, scale: &Scale, language: Language) -> Markup {
    html! {
        @for limit in [check.lower, check.upper].into_iter().flatten() {
            @let x = scale.kept(limit);
            (line("limit", [x, MIDDLE - 15.0], [x, MIDDLE + 15.0]))
            (text("", "middle", [x, 63.0], &number(limit, label, language)))
        }
        @if check.lower.is_some() || check.upper.is_some() {
            @let x = scale.kept(check.nominal);
            @if [check.lower, check.upper].into_iter().flatten().all(|limit| (scale.kept(limit) - x).abs() > 34.0) {
                (text("", "middle", [x, 63.0], &number(check.nominal, label, language)))
            }
        }
    }
}

/// A limit's number: the direction stands at the bar's ends.
fn number(value: f64, label: &Label, language: Language) -> String {
    Figure::plain(if label.quantity.is_some() { value.abs() } else { value }).say(language)
}

fn value(check: &CheckRecord, scale: &Scale, language: Language) -> Markup {
    let Some(value) = finite(check.value) else {
        return text("note", "middle", [(LEFT + RIGHT) / 2.0, MIDDLE + 4.0], &say!(language, "report-no-value"));
    };
    let u = finite(check.expanded_uncertainty).unwrap_or(0.0);
    let (a, b) = (scale.at(value - u), scale.at(value + u));
    let (place, from, to) = (scale.at(value), a.min(b), a.max(b));
    html! {
        @if to >= LEFT && from <= RIGHT { (interval(from, to)) }
        @if place < LEFT { (off_scale(LEFT, -1.0)) }
        @else if place > RIGHT { (off_scale(RIGHT, 1.0)) }
        @else { (symbol::mark(check.verdict, place, MIDDLE, 6.0)) }
    }
}

/// The interval; an end that runs off the bar has an arrow instead of a stop.
fn interval(from: f64, to: f64) -> Markup {
    let (a, b) = (from.max(LEFT), to.min(RIGHT));
    let end = |x: f64, cut: bool, way: f64| {
        if cut {
            format!(
                "M{} {}L{} {}L{} {}",
                n(x - way * 6.0),
                n(MIDDLE - 5.0),
                n(x),
                n(MIDDLE),
                n(x - way * 6.0),
                n(MIDDLE + 5.0)
            )
        } else {
            format!("M{} {}V{}", n(x), n(MIDDLE - 6.0), n(MIDDLE + 6.0))
        }
    };
    let d = format!("M{} {}H{}{}{}", n(a), n(MIDDLE), n(b), end(a, from < LEFT, -1.0), end(b, to > RIGHT, 1.0));
    html! { path.span d=(d) {} }
}

/// A value beyond the bar: a double arrow at its edge.
fn off_scale(x: f64, way: f64) -> Markup {
    let arrow = |at: f64| points(&[[at, MIDDLE - 9.0], [at + way * 10.0, MIDDLE], [at, MIDDLE + 9.0]]);
    html! {
        polygon.off points=(arrow(x - way * 13.0)) {}
        polygon.off points=(arrow(x - way * 2.0)) {}
    }
}
