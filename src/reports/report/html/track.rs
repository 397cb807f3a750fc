//! Where the stand went: its positions from above, and what each move did.

use maud::{Markup, html};

use super::path;
use super::svg::{line, n, points, round_down, text};
use super::symbol::{class, symbol};
use crate::record::{AimRecord, JobRecord, PositionFigure, PositionRecord};
use crate::report::figures::{Measured, moment};
use crate::report::label::{Label, sentence};

const WIDTH: f64 = 1000.0;
const HEIGHT: f64 = 420.0;
const MARGIN: f64 = 90.0;
/// A drawing of steps that are smaller shows nothing but noise, mm.
const LEAST_SPAN_MM: f64 = 10.0;

/// The section; nothing for a stand that was not moved.
pub(super) fn section(record: &JobRecord) -> Markup {
    let Some(last) = record.positions.last() else { return html! {} };
    html! {
        section aria-labelledby="track" {
            h2 id="track" { "Where the stand went" }
            p.lede {
                "All photos are measured together: vehicle, plates and floor sheets stand where the first ones found them, \
                 the stand has a place of its own after each move. ± is the expanded uncertainty (95 %); that of a move is \
                 smaller than that of two places, since what both have in common takes no part in it."
            }
            (proof(last))
            @for target in targets(record) { (drawing(record, &target)) }
            (table(record))
            @for turned in record.positions.iter().flat_map(|p| &p.turned) { p { (sentence(&turned.words)) "." } }
        }
    }
}

fn proof(last: &PositionRecord) -> Markup {
    html! {
        p {
            @if last.proven_by.is_empty() {
                "No photo shows the stand where it stands now together with the vehicle."
            } @else {
                "Where it stands now is shown by "
                @for (i, file) in last.proven_by.iter().enumerate() { @if i > 0 { ", " } (path(file)) }
                "."
            }
        }
    }
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

fn drawing(record: &JobRecord, (target, step): &(String, Option<String>)) -> Markup {
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
            h3 { "From above: " (named) }
            svg.dw.wide viewBox={ "0 0 " (n(WIDTH)) " " (n(HEIGHT)) } role="img" aria-label=(spoken(record, &named)) {
                polyline.dim fill="none" points=(points(&places.iter().map(|p| view.at(p.1)).collect::<Vec<_>>())) {}
                @if let Some(w) = wanted {
                    @let [u, v] = view.at(w);
                    (line("ref", [u - 16.0, v], [u + 16.0, v])) (line("ref", [u, v - 16.0], [u, v + 16.0]))
                    (text("halo minor", "end", [u - 14.0, v - 12.0], "required"))
                }
                @for (number, at) in &places {
                    @let [u, v] = view.at(*at);
                    circle.aim cx=(n(u)) cy=(n(v)) r=(if *number == last { "7" } else { "4" }) {}
                    (text("halo", "start", [u + 10.0, v - 10.0], &number.to_string()))
                }
                (line("dim", [MARGIN / 2.0, HEIGHT - 20.0], [MARGIN / 2.0 + rule, HEIGHT - 20.0]))
                (text("small halo", "start", [MARGIN / 2.0, HEIGHT - 28.0], &format!("{} mm", crate::quantity::rounded(rule_mm, 0))))
                (text("small halo minor", "start", [2.0, 14.0], "vehicle's left ▴"))
                (text("small halo minor", "end", [WIDTH - 4.0, HEIGHT - 6.0], "away from the vehicle ▸"))
            }
            figcaption { "The aim point before the first move (0) and after each; the large point is where it stands now." }
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

fn spoken(record: &JobRecord, named: &str) -> String {
    let words = record.positions.iter().flat_map(|p| p.figures.iter().map(move |f| (p.after_move, f)));
    let told: Vec<String> = words
        .filter_map(|(number, f)| {
            Some(format!(
                "move {number}, {}: {}",
                Label::of_check(record.checks.get(f.check)?).trade,
                f.words.as_ref()?
            ))
        })
        .collect();
    format!("The way of {named} from above. {}", told.join("; "))
}

fn table(record: &JobRecord) -> Markup {
    html! {
        table.stack role="table" {
            thead role="rowgroup" { tr role="row" {
                th scope="col" role="columnheader" { "Position" }
                @for figure in &record.positions[0].figures {
                    th scope="col" role="columnheader" { (name(record, figure)) }
                }
            } }
            tbody role="rowgroup" { @for position in &record.positions { (row(record, position)) } }
        }
    }
}

fn name(record: &JobRecord, figure: &PositionFigure) -> String {
    record.checks.get(figure.check).map_or_else(String::new, |c| sentence(&Label::of_check(c).full()))
}

fn row(record: &JobRecord, position: &PositionRecord) -> Markup {
    html! {
        tr role="row" {
            th scope="row" role="rowheader" {
                @match position.after_move { 0 => "Before it was moved", n => { "After move " (n) } }
                @if let Some(taken) = &position.taken { small { (moment(taken)) } }
                small { @for (i, file) in position.photos.iter().enumerate() { @if i > 0 { ", " } (path(file)) } }
            }
            @for figure in &position.figures {
                td role="cell" data-k=(name(record, figure)) { (cell(record, figure)) }
            }
        }
    }
}

fn cell(record: &JobRecord, figure: &PositionFigure) -> Markup {
    let Some((check, value)) = record.checks.get(figure.check).zip(figure.value) else { return html! { "no value" } };
    let m = Measured::new(Label::of_check(check).quantity, &check.unit, value, figure.expanded_uncertainty);
    html! {
        span class=(class(figure.verdict)) { (symbol(figure.verdict)) } " "
        // Seven columns are narrow: the uncertainty gets a line of its own.
        span.num { (m.amount) @if m.uncertainty.is_none() { " " (m.unit) } }
        @if let Some(u) = &m.uncertainty { small { "± " (u) " " (m.unit) } }
        @if let Some(side) = m.side { small { (side.long) } }
        @if let Some(words) = &figure.words { small { (words) } }
    }
}
