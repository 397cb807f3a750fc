//! The stand against where it must be, under a magnifying glass: from above,
//! from the vehicle's right side, and as seen from the vehicle.
//!
//! The stand's outline is drawn to one scale and its deviations to a larger
//! one; how many times larger is written under each drawing.

use maud::{Markup, html};

use super::scene::{Deviation, Deviations};
use super::svg::{line, n, round_down, text};
use crate::report::figures::{Measured, amount};
use crate::report::label::{Label, sentence};
use crate::report::side::against_wanted;
use crate::words::{Figure, Language, say};

const SIDE: f64 = 320.0;
const CENTRE: f64 = SIDE / 2.0;
/// Half the length that deviations may take up.
const ROOM: f64 = 96.0;
/// Turned at most this far, degrees.
const TURN: f64 = 28.0;
/// Units per mm of the stand's outline: 1.2 m are 150 units.
const OUTLINE_SCALE: f64 = 0.125;

/// One view: two directions of the bay and one angle.
struct View<'a> {
    title: String,
    /// Words at the left, right, top and bottom edge.
    edges: [String; 4],
    /// Rightwards on the page; the sign turns the value to the page.
    across: (Option<Deviation<'a>>, f64),
    /// Upwards on the page.
    upward: (Option<Deviation<'a>>, f64),
    /// Clockwise on the page.
    turn: (Option<Deviation<'a>>, f64),
    /// The stand's outline at the centre, half width and half height, units.
    outline: [f64; 2],
    language: Language,
}

/// The three views of one target.
pub(super) fn loupes(deviations: &Deviations, half_width_mm: f64, half_height_mm: f64, language: Language) -> Markup {
    let (wide, tall) = (half_width_mm * OUTLINE_SCALE, half_height_mm * OUTLINE_SCALE);
    let (wide, tall) = (wide.clamp(30.0, 110.0), tall.clamp(24.0, 110.0));
    let d = deviations;
    let edge = |sign: &str, edge: &str| {
        let words = say!(language, "report-edge", edge = edge);
        if sign == "◂" { format!("{sign} {words}") } else { format!("{words} {sign}") }
    };
    let views = [
        View {
            title: say!(language, "report-view-above"),
            edges: [edge("◂", "towards"), edge("▸", "away"), edge("▴", "left"), edge("▾", "right")],
            across: (d.away, 1.0),
            upward: (d.left, 1.0),
            turn: (d.yaw, -1.0),
            outline: [5.0, wide],
            language,
        },
        View {
            title: say!(language, "report-view-right"),
            edges: [edge("◂", "towards"), edge("▸", "away"), edge("▴", "higher"), edge("▾", "lower")],
            across: (d.away, 1.0),
            upward: (d.up, 1.0),
            turn: (d.pitch, 1.0),
            outline: [5.0, tall],
            language,
        },
        View {
            title: say!(language, "report-view-vehicle"),
            edges: [edge("◂", "left"), edge("▸", "right"), edge("▴", "higher"), edge("▾", "lower")],
            across: (d.left, -1.0),
            upward: (d.up, 1.0),
            turn: (d.roll, 1.0),
            outline: [wide, tall],
            language,
        },
    ];
    html! { div.loupes { @for view in views.iter().filter(|v| v.shows_something()) { (view.figure()) } } }
}

impl View<'_> {
    fn shows_something(&self) -> bool {
        [self.across.0, self.upward.0, self.turn.0].iter().any(Option::is_some)
    }

    fn figure(&self) -> Markup {
        let lengths = length_factor([self.across.0, self.upward.0]);
        let angles = angle_factor(self.turn.0);
        html! {
            figure {
                h3 { (self.title) }
                (self.drawing(lengths, angles))
                ul {
                    @for deviation in [self.across.0, self.upward.0, self.turn.0].into_iter().flatten() {
                        li { (words(&deviation, self.language)) }
                    }
                }
                figcaption { (self.factors(lengths, angles)) }
            }
        }
    }

    fn factors(&self, lengths: f64, angles: f64) -> String {
        let moved = self.across.0.is_some() || self.upward.0.is_some();
        let [lengths, angles] = [lengths, angles].map(Figure::plain);
        match (moved, self.turn.0.is_some()) {
            (true, true) => say!(self.language, "report-drawn-both", lengths = lengths, angles = angles),
            (true, false) => say!(self.language, "report-drawn-moved", lengths = lengths),
            (false, _) => say!(self.language, "report-drawn-turned", angles = angles),
        }
    }

    fn drawing(&self, lengths: f64, angles: f64) -> Markup {
        let scale = lengths * OUTLINE_SCALE;
        let x = page(self.across, scale);
        let y = page(self.upward, -scale);
        let turn = self.turn.0.map_or(0.0, |d| (d.by * angles).clamp(-60.0, 60.0) * self.turn.1);
        let moved = self.across.0.is_some() || self.upward.0.is_some();
        let at = [kept(CENTRE + x), kept(CENTRE + y)];
        html! {
            svg.dw viewBox={ "0 0 " (SIDE) " " (SIDE + 24.0) } role="img" aria-label=(self.spoken()) {
                @if moved { (self.zone(scale)) }
                (line("ext", [CENTRE, 30.0], [CENTRE, SIDE - 30.0])) (line("ext", [22.0, CENTRE], [SIDE - 22.0, CENTRE]))
                (self.turn_limits(angles))
                (self.stand("wanted", [CENTRE, CENTRE], 0.0))
                (self.stand("got", at, turn))
                (self.uncertainty(at, scale))
                circle.aim cx=(n(at[0])) cy=(n(at[1])) r="5" {}
                (self.edge_words())
                @if moved { (scale_bar(scale, self.language)) }
            }
        }
    }

    fn spoken(&self) -> String {
        let shown = [self.across.0, self.upward.0, self.turn.0].into_iter().flatten();
        let said: Vec<String> = shown.map(|d| words(&d, self.language)).collect();
        format!("{}: {}", self.title, said.join("; "))
    }

    fn stand(&self, class: &str, at: [f64; 2], turn: f64) -> Markup {
        let [w, h] = self.outline;
        html! {
            g transform=(format!("translate({} {}) rotate({})", n(at[0]), n(at[1]), n(turn))) {
                rect class=(class) x=(n(-w)) y=(n(-h)) width=(n(2.0 * w)) height=(n(2.0 * h)) {}
            }
        }
    }

    /// Where the aim point may be.
    fn zone(&self, scale: f64) -> Markup {
        let span = |(deviation, sign): (Option<Deviation>, f64), scale: f64| {
            let limits = deviation.map(|d| (d.lower, d.upper)).unwrap_or_default();
            let place = |limit: Option<f64>, open: f64| {
                CENTRE + (limit.map_or(open, |l| l * scale * sign)).clamp(-CENTRE, CENTRE)
            };
            let (a, b) =
                (place(limits.0, -CENTRE * sign * scale.signum()), place(limits.1, CENTRE * sign * scale.signum()));
            (a.min(b), a.max(b))
        };
        let (left, right) = span(self.across, scale);
        let (top, bottom) = span(self.upward, -scale);
        let (left, right) = (left.max(18.0), right.min(SIDE - 18.0));
        let (top, bottom) = (top.max(28.0), bottom.min(SIDE - 28.0));
        html! { rect.zone x=(n(left)) y=(n(top)) width=(n(right - left)) height=(n(bottom - top)) {} }
    }

    /// The lines between which the stand's long side may lie.
    fn turn_limits(&self, angles: f64) -> Markup {
        let Some(deviation) = self.turn.0 else { return html! {} };
        let [w, h] = self.outline;
        let (start, length) = if w > h { (0.0, w + 12.0) } else { (90.0, h + 12.0) };
        html! {
            @for limit in [deviation.lower, deviation.upper].into_iter().flatten() {
                @let degrees = start + (limit * angles).clamp(-60.0, 60.0) * self.turn.1;
                @let (sin, cos) = degrees.to_radians().sin_cos();
                @let (x, y) = (cos * length, sin * length);
                (line("limit", [CENTRE - x, CENTRE - y], [CENTRE + x, CENTRE + y]))
            }
        }
    }

    fn uncertainty(&self, at: [f64; 2], scale: f64) -> Markup {
        let reach = |d: Option<Deviation>| d.map_or(0.0, |d| (d.u * scale).min(CENTRE));
        let (u, v) = (reach(self.across.0), reach(self.upward.0));
        html! {
            (line("u", [at[0] - u, at[1]], [at[0] + u, at[1]]))
            (line("u", [at[0], at[1] - v], [at[0], at[1] + v]))
        }
    }

    fn edge_words(&self) -> Markup {
        let [left, right, top, bottom] = &self.edges;
        let side = if left.chars().count() + right.chars().count() > 42 { "small halo tight" } else { "small halo" };
        html! {
            (text("small halo", "middle", [CENTRE, 16.0], top))
            (text("small halo", "middle", [CENTRE, SIDE - 8.0], bottom))
            (text(side, "start", [4.0, SIDE + 16.0], left))
            (text(side, "end", [SIDE - 4.0, SIDE + 16.0], right))
        }
    }
}

fn page((deviation, sign): (Option<Deviation>, f64), scale: f64) -> f64 {
    deviation.map_or(0.0, |d| d.by * scale * sign)
}

fn kept(place: f64) -> f64 {
    place.clamp(24.0, SIDE - 24.0)
}

/// `Distance from the nose: 22.1 mm nearer than required`; a deviation that rounds to nothing is said to be none.
fn words(deviation: &Deviation, language: Language) -> String {
    let unit = &deviation.check.unit;
    let name = sentence(&Label::of_check(deviation.check, language).trade);
    let shown = Measured::new(Some(deviation.quantity), unit, deviation.by, Some(deviation.u), language);
    if shown.is_zero() {
        return say!(language, "report-as-required", name = name);
    }
    let against = against_wanted(deviation.quantity, deviation.by > 0.0, language);
    say!(language, "report-deviation", name = name, amount = shown.bare_with_unit(), against = against)
}

/// Fits both displacements with their uncertainty and, as far as it goes, the tolerance.
fn length_factor(deviations: [Option<Deviation>; 2]) -> f64 {
    let reach = deviations.into_iter().flatten().map(|d| (d.by.abs() + d.u).max(widest_limit(&d))).fold(0.0, f64::max);
    round_down((ROOM / OUTLINE_SCALE / reach.max(1e-3)).min(500.0))
}

fn angle_factor(deviation: Option<Deviation>) -> f64 {
    deviation.map_or(1.0, |d| round_down((TURN / d.by.abs().max(widest_limit(&d)).max(1e-3)).min(100.0)))
}

fn widest_limit(deviation: &Deviation) -> f64 {
    deviation.lower.into_iter().chain(deviation.upper).map(f64::abs).fold(0.0, f64::max)
}

/// A round length near a fifth of the drawing.
fn scale_bar(scale: f64, language: Language) -> Markup {
    let length = round_down(SIDE / 4.0 / scale);
    let (x, y) = (SIDE - 6.0, SIDE - 26.0);
    html! {
        (line("dim", [x - length * scale, y], [x, y]))
        (line("dim", [x - length * scale, y - 4.0], [x - length * scale, y + 4.0])) (line("dim", [x, y - 4.0], [x, y + 4.0]))
        (text("small halo", "end", [x, y - 8.0], &amount(Figure::plain(length), "mm").say(language)))
    }
}
