//! Where the stand went: its positions from above, and what each move did.

use maud::{Markup, html};

use super::file_path::path;
use super::svg::{line, n, points, round_down, text};
use super::symbol::{class, symbol};
use crate::record::{AimRecord, JobRecord, PositionFigure, PositionRecord, TurnedRecord, told};
use crate::report::figures::{Measured, amount, moment};
use crate::report::label::{Label, sentence};
use crate::words::{Figure, Language, Value, say};

const WIDTH: f64 = 1000.0;
const HEIGHT: f64 = 420.0;
const MARGIN: f64 = 90.0;
/// A drawing of steps that are smaller shows nothing but noise, mm.
const LEAST_SPAN_MM: f64 = 10.0;

/// The section; nothing for a stand that was not moved.
pub(super) fn section(record: &JobRecord, language: Language) -> Markup {
    let Some(last) = record.positions.last() else { return html! {} };
    html! {
        section aria-labelledby="track" {
            h2 id="track" { (say!(language, "report-track")) }
            p.lede { (say!(language, "report-track-lede")) }
            p { (proof(last, language)) }
            @for target in targets(record) { (drawing(record, &target, language)) }
            (table(record, language))
            @for turned in record.positions.iter().flat_map(|p| &p.turned) { p { (turned_words(turned, language)) } }
        }
    }
}

fn proof(last: &PositionRecord, language: Language) -> String {
    if last.proven_by.is_empty() {
        return say!(language, "report-track-none");
    }
    say!(language, "report-track-shown", photos = Value::from(last.proven_by.clone()))
}

fn turned_words(turned: &TurnedRecord, language: Language) -> String {
    let words = sentence(&told(turned.words_phrase.as_ref(), &turned.words, language));
    say!(language, "report-sentence", words = words)
}

/// Targets and steps that have a place anywhere.
fn targets(record: &JobRecord) -> Vec<(String, Option<String>)> {
    let mut all: Vec<(String, Option<String>)> = Vec::new();
    for aim in record.positions.iter().flat_map(|p| &p.aims) {
        let one = (aim.target.clone(), aim.step.clone());
        if !all.contains(&one) {
            all.push(one);
        }
    }
    all
}

/// From the vehicle's frame to the picture: ahead is right, the vehicle's left is up.
struct View {
    centre: [f64; 2],
    units_per_mm: f64,
}

impl View {
    fn around(places: &[[f64; 2]]) -> View {
        let span = |i: usize| {
            let all = || places.iter().map(|p| p[i]);
            (all().fold(f64::INFINITY, f64::min), all().fold(f64::NEG_INFINITY, f64::max))
        };
        let ((x0, x1), (y0, y1)) = (span(0), span(1));
        let (across, up) = ((x1 - x0).max(LEAST_SPAN_MM), (y1 - y0).max(LEAST_SPAN_MM));
        let scale = ((WIDTH - 2.0 * MARGIN) / across).min((HEIGHT - 2.0 * MARGIN) / up);
        View { centre: [f64::midpoint(x0, x1), f64::midpoint(y0, y1)], units_per_mm: scale }
    }

    fn at(&self, p: [f64; 2]) -> [f64; 2] {
        let [x, y] = [p[0] - self.centre[0], p[1] - self.centre[1]].map(|d| d * self.units_per_mm);
        [WIDTH / 2.0 + x, HEIGHT / 2.0 - y]
    }
}

fn drawing(record: &JobRecord, (target, step): &(String, Option<String>), language: Language) -> Markup {
    let edge = |edge: &str| say!(language, "report-edge", edge = edge);
    let of = |p: &PositionRecord| -> Option<[f64; 2]> {
        let aim = p.aims.iter().find(|a: &&AimRecord| a.target == *target && a.step == *step)?;
        Some([aim.position_mm[0], aim.position_mm[1]])
    };
    let places: Vec<(u32, [f64; 2])> = record.positions.iter().filter_map(|p| Some((p.after_move, of(p)?))).collect();
    let Some(&(last, now)) = places.last() else { return html! {} };
    let wanted = wanted(record, target, step.as_deref(), now);
    let all: Vec<[f64; 2]> = places.iter().map(|p| p.1).chain(wanted).collect();
    let view = View::around(&all);
    let rule_mm = round_down(160.0 / view.units_per_mm);
    let rule = rule_mm * view.units_per_mm;
    let named = step.as_ref().map_or_else(|| target.clone(), |s| format!("{target}, {s}"));
    html! {
        figure.views {
            h3 { (say!(language, "report-track-above", name = &named)) }
            svg.dw.wide viewBox={ "0 0 " (n(WIDTH)) " " (n(HEIGHT)) } role="img" aria-label=(spoken(record, &named, language)) {
                polyline.dim fill="none" points=(points(&places.iter().map(|p| view.at(p.1)).collect::<Vec<_>>())) {}
                @if let Some(w) = wanted {
                    @let [u, v] = view.at(w);
                    (line("ref", [u - 16.0, v], [u + 16.0, v])) (line("ref", [u, v - 16.0], [u, v + 16.0]))
                    (text("halo minor", "end", [u - 14.0, v - 12.0], &say!(language, "report-bar-required")))
                }
                @for (number, at) in &places {
                    @let [u, v] = view.at(*at);
                    circle.aim cx=(n(u)) cy=(n(v)) r=(if *number == last { "7" } else { "4" }) {}
                    (text("halo", "start", [u + 10.0, v - 10.0], &number.to_string()))
                }
                (line("dim", [MARGIN / 2.0, HEIGHT - 20.0], [MARGIN / 2.0 + rule, HEIGHT - 20.0]))
                (text("small halo", "start", [MARGIN / 2.0, HEIGHT - 28.0], &amount(Figure::fixed(rule_mm, 0), "mm").say(language)))
                (text("small halo minor", "start", [2.0, 14.0], &format!("{} ▴", edge("left"))))
                (text("small halo minor", "end", [WIDTH - 4.0, HEIGHT - 6.0], &format!("{} ▸", edge("away-from-vehicle"))))
            }
            figcaption { (say!(language, "report-track-caption")) }
        }
    }
}

/// Where the aim point must be, as the checks of distance and centring say.
fn wanted(record: &JobRecord, target: &str, step: Option<&str>, now: [f64; 2]) -> Option<[f64; 2]> {
    let left = |quantity: &str| {
        let mut checks = record.checks.iter();
        let of_it = |c: &&crate::record::CheckRecord| {
            c.quantity == quantity
                && c.target.as_deref().is_none_or(|t| t == target)
                && c.step.as_deref().is_none_or(|s| Some(s) == step)
        };
        checks.find(of_it).and_then(|c| Some(c.nominal - c.value?))
    };
    Some([now[0] + left("distance")?, now[1] + left("lateral_offset")?])
}

fn spoken(record: &JobRecord, named: &str, language: Language) -> String {
    let words = record.positions.iter().flat_map(|p| p.figures.iter().map(move |f| (p.after_move, f)));
    let all: Vec<String> = words
        .filter_map(|(number, f)| {
            let name = Label::of_check(record.checks.get(f.check)?, language).trade;
            let moved = told(f.words_phrase.as_ref(), f.words.as_ref()?, language);
            Some(say!(language, "report-track-move", number = number, name = name, moved = moved))
        })
        .collect();
    say!(language, "report-track-spoken", name = named, moves = all.join("; "))
}

fn table(record: &JobRecord, language: Language) -> Markup {
    html! {
        table.stack role="table" {
            thead role="rowgroup" { tr role="row" {
                th scope="col" role="columnheader" { (say!(language, "report-position")) }
                @for figure in &record.positions[0].figures {
                    th scope="col" role="columnheader" { (name(record, figure, language)) }
                }
            } }
            tbody role="rowgroup" { @for position in &record.positions { (row(record, position, language)) } }
        }
    }
}

fn name(record: &JobRecord, figure: &PositionFigure, language: Language) -> String {
    record.checks.get(figure.check).map_or_else(String::new, |c| sentence(&Label::of_check(c, language).full()))
}

fn row(record: &JobRecord, position: &PositionRecord, language: Language) -> Markup {
    html! {
        tr role="row" {
            th scope="row" role="rowheader" {
                @match position.after_move {
                    0 => (say!(language, "report-before-moves")),
                    n => (say!(language, "report-after-move", number = n)),
                }
                @if let Some(taken) = &position.taken { small { (moment(taken, language)) } }
                small { @for (i, file) in position.photos.iter().enumerate() { @if i > 0 { ", " } (path(file)) } }
            }
            @for figure in &position.figures {
                td role="cell" data-k=(name(record, figure, language)) { (cell(record, figure, language)) }
            }
        }
    }
}

fn cell(record: &JobRecord, figure: &PositionFigure, language: Language) -> Markup {
    let Some((check, value)) = record.checks.get(figure.check).zip(figure.value) else {
        return html! { (say!(language, "report-no-value")) };
    };
    let quantity = Label::of_check(check, language).quantity;
    let m = Measured::new(quantity, &check.unit, value, figure.expanded_uncertainty, language);
    let u = m.uncertainty_with_unit();
    html! {
        span class=(class(figure.verdict)) { (symbol(figure.verdict)) } " "
        // Seven columns are narrow: the uncertainty gets a line of its own.
        span.num { @if u.is_some() { (m.amount()) } @else { (m.bare_with_unit()) } }
        @if let Some(u) = u { small { "± " (u) } }
        @if let Some(side) = m.side { small { (side.long(language)) } }
        @if let Some(words) = &figure.words { small { (told(figure.words_phrase.as_ref(), words, language)) } }
    }
}
