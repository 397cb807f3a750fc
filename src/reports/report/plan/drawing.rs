//! The bay from above with the stations.

use maud::{Markup, PreEscaped, html};

use super::super::named::metres;
use crate::quantity::rounded;
use crate::record::{PlanBody, PlanRecord, PlannedStation, told};
use crate::words::{Language, say};

const WIDTH: f64 = 1000.0;
/// So that letters of the same size are twice as large on a phone.
const UPRIGHT_WIDTH: f64 = 480.0;
const EDGE: f64 = 26.0;

/// Which way the vehicle looks in the drawing.
#[derive(Clone, Copy, PartialEq)]
enum Heading {
    /// To the right: for a screen or a sheet.
    Right,
    /// Upwards: a bay is longer than wide, and so is a phone.
    Up,
}

/// From the vehicle frame to the drawing.
struct Frame {
    heading: Heading,
    scale: f64,
    rear_mm: f64,
    front_mm: f64,
    left_mm: f64,
    width: f64,
    height: f64,
}

impl Frame {
    fn new(plan: &PlanRecord, heading: Heading) -> Self {
        let bay = &plan.bay;
        let (rear_mm, front_mm) = (bay.tail_mm - 200.0, bay.nose_mm + bay.ahead_mm + 450.0);
        let stations = plan.stations.iter().map(|s| s.position_mm[1].abs() + 420.0);
        let bodies = bay.bodies.iter().map(|b| b.position_mm[1].abs() + b.half_width_mm + 420.0);
        let left_mm = stations.chain(bodies).fold(bay.width_mm / 2.0 + 120.0, f64::max);
        let (long, wide) = (front_mm - rear_mm, 2.0 * left_mm);
        let scale = match heading {
            Heading::Right => (WIDTH - 2.0 * EDGE) / long,
            Heading::Up => (UPRIGHT_WIDTH - 2.0 * EDGE) / wide,
        };
        let (long, wide) = (long * scale + 2.0 * EDGE, wide * scale + 2.0 * EDGE);
        let (width, height) = if heading == Heading::Right { (long, wide) } else { (wide, long) };
        Frame { heading, scale, rear_mm, front_mm, left_mm, width, height }
    }

    fn at(&self, x: f64, y: f64) -> [f64; 2] {
        let from_left = EDGE + (self.left_mm - y) * self.scale;
        match self.heading {
            Heading::Right => [EDGE + (x - self.rear_mm) * self.scale, from_left],
            Heading::Up => [from_left, EDGE + (self.front_mm - x) * self.scale],
        }
    }
}

fn n(value: f64) -> String {
    rounded(if value.is_finite() { value } else { 0.0 }, 1)
}

fn path(points: &[[f64; 2]]) -> String {
    points.iter().map(|p| format!("{},{}", n(p[0]), n(p[1]))).collect::<Vec<_>>().join(" ")
}

/// The drawing as a file of its own.
pub fn plan_svg(plan: &PlanRecord, language: Language) -> String {
    drawing(plan, Heading::Right, language).into_string()
}

/// The drawing for a page: lying on a screen and on paper, upright on a phone.
pub(super) fn figure(plan: &PlanRecord, language: Language) -> Markup {
    html! {
        figure.lying { (drawing(plan, Heading::Right, language)) }
        figure.upright { (drawing(plan, Heading::Up, language)) }
    }
}

fn drawing(plan: &PlanRecord, heading: Heading, language: Language) -> Markup {
    let frame = Frame::new(plan, heading);
    let view = format!("0 0 {} {}", n(frame.width), n(frame.height));
    html! {
        svg xmlns="http://www.w3.org/2000/svg" viewBox=(view) role="img" {
            title { (say!(language, "plan-drawing")) }
            style { (PreEscaped(STYLE)) }
            rect.paper x="0" y="0" width=(n(frame.width)) height=(n(frame.height)) {}
            (walls(plan, &frame, language))
            (vehicle(plan, &frame, language))
            @for body in &plan.bay.bodies { (carrier(body, &frame, language)) }
            @for (i, s) in plan.stations.iter().enumerate() { (station(i, s, &frame, language)) }
        }
    }
}

const STYLE: &str = ".paper{fill:#fff}.wall{stroke:#505c61;stroke-width:3;stroke-dasharray:9 5}.post{fill:#505c61}\
.body{fill:#e9edec;stroke:#6b777b;stroke-width:1.5}.axis{stroke:#6b777b;stroke-width:1;stroke-dasharray:14 4 3 4}\
.wheel{fill:#172024}.sheet{fill:#fff;stroke:#172024;stroke-width:1.5}.stand{stroke:#0b5563;stroke-width:6}\
.face{stroke:#0b5563;stroke-width:2}.eye{fill:#0b5563}.sight{fill:#7fcfdd;fill-opacity:.35;stroke:#0b5563;stroke-width:1}\
.nose{fill:#a01f17}text{font:13px system-ui,'Noto Sans',sans-serif;fill:#172024}.no{fill:#fff;font-weight:700;font-size:15px}\
.small{font-size:11.5px;fill:#505c61}.halo{paint-order:stroke;stroke:#fff;stroke-width:4px}";

fn walls(plan: &PlanRecord, frame: &Frame, language: Language) -> Markup {
    let bay = &plan.bay;
    let (left, right) = (bay.tail_mm - 150.0, bay.nose_mm + bay.ahead_mm - 20.0);
    html! {
        @for side in [1.0, -1.0] {
            @let (a, b) = (frame.at(left, side * bay.width_mm / 2.0), frame.at(right, side * bay.width_mm / 2.0));
            line.wall x1=(n(a[0])) y1=(n(a[1])) x2=(n(b[0])) y2=(n(b[1])) {}
        }
        @let at = frame.at(if frame.heading == Heading::Right { left } else { right }, bay.width_mm / 2.0);
        text.small x=(n(at[0])) y=(n(at[1] - 6.0)) { (say!(language, "plan-clear-width", width = metres(bay.width_mm))) }
        @for [x, y] in &bay.posts_mm {
            @let at = frame.at(*x, *y);
            rect.post x=(n(at[0] - 7.0)) y=(n(at[1] - 7.0)) width="14" height="14" {}
        }
        @let (a, b) = (frame.at(left, 0.0), frame.at(right, 0.0));
        line.axis x1=(n(a[0])) y1=(n(a[1])) x2=(n(b[0])) y2=(n(b[1])) {}
    }
}

fn vehicle(plan: &PlanRecord, frame: &Frame, language: Language) -> Markup {
    let bay = &plan.bay;
    let outline: Vec<[f64; 2]> = [
        (bay.tail_mm, 0.7),
        (bay.tail_mm + 160.0, 0.95),
        (bay.tail_mm + 500.0, 1.0),
        (bay.nose_mm - 700.0, 1.0),
        (bay.nose_mm - 200.0, 0.86),
        (bay.nose_mm - 40.0, 0.6),
        (bay.nose_mm, 0.0),
    ]
    .into_iter()
    .flat_map(|(x, share)| [(x, share), (x, -share)])
    .map(|(x, share)| [x, share * bay.half_width_mm])
    .collect();
    let mut left: Vec<[f64; 2]> = outline.iter().filter(|p| p[1] >= 0.0).copied().collect();
    let mut right: Vec<[f64; 2]> = outline.iter().filter(|p| p[1] < 0.0).copied().collect();
    right.reverse();
    left.append(&mut right);
    let points: Vec<[f64; 2]> = left.iter().map(|p| frame.at(p[0], p[1])).collect();
    html! {
        polygon.body points=(path(&points)) {}
        @for x in [0.0, bay.wheelbase_mm] {
            @for side in [1.0, -1.0] {
                @let y = side * (bay.half_width_mm - 110.0);
                @let (a, b) = (frame.at(x - 310.0, y + 95.0), frame.at(x + 310.0, y - 95.0));
                rect.wheel x=(n(a[0].min(b[0]))) y=(n(a[1].min(b[1]))) width=(n((b[0] - a[0]).abs())) height=(n((b[1] - a[1]).abs())) rx="3" {}
            }
        }
        @let at = frame.at(0.3 * bay.wheelbase_mm, 0.0);
        @let heading = if frame.heading == Heading::Up { "up" } else { "right" };
        text text-anchor="middle" x=(n(at[0])) y=(n(at[1] - 6.0)) { (say!(language, "plan-vehicle", heading = heading)) }
    }
}

fn carrier(body: &PlanBody, frame: &Frame, language: Language) -> Markup {
    let [x, y, _] = body.position_mm;
    let (sin, cos) = crate::geom::rad(body.heading_deg).sin_cos();
    let turned = |ahead: f64, left: f64| frame.at(x + ahead * cos - left * sin, y + ahead * sin + left * cos);
    let at = frame.at(x, y);
    match body.role.as_str() {
        "target" => {
            let half = body.half_width_mm.max(150.0);
            let (a, b) = (turned(0.0, half), turned(0.0, -half));
            let tip = turned(-260.0, 0.0);
            html! {
                line.stand x1=(n(a[0])) y1=(n(a[1])) x2=(n(b[0])) y2=(n(b[1])) {}
                line.face x1=(n(at[0])) y1=(n(at[1])) x2=(n(tip[0])) y2=(n(tip[1])) {}
                @let (x, y, anchor) = match frame.heading {
                    Heading::Right => (at[0].max(a[0]).max(b[0]) + 9.0, at[1], "start"),
                    Heading::Up => (at[0], at[1].min(a[1]).min(b[1]) - 20.0, "middle"),
                };
                text.halo text-anchor=(anchor) x=(n(x)) y=(n(y - 2.0)) { (body.name) }
                text.small.halo text-anchor=(anchor) x=(n(x)) y=(n(y + 12.0)) { (told(body.label_phrase.as_ref(), &body.label, language)) }
            }
        }
        "floor" => {
            let corners = [turned(110.0, 110.0), turned(110.0, -110.0), turned(-110.0, -110.0), turned(-110.0, 110.0)];
            html! {
                polygon.sheet points=(path(&corners)) {}
                text.small text-anchor="middle" x=(n(at[0])) y=(n(at[1] + 24.0)) { (body.name) }
            }
        }
        "nose" => html! { circle.nose cx=(n(at[0])) cy=(n(at[1])) r="4" {} },
        _ => html! { circle.sheet cx=(n(at[0])) cy=(n(at[1])) r="4" {} },
    }
}

fn station(index: usize, station: &PlannedStation, frame: &Frame, language: Language) -> Markup {
    let [x, y, z] = station.position_mm;
    let [lx, ly, _] = station.look_at_mm;
    let bearing = (ly - y).atan2(lx - x);
    let ray = |turn: f64| frame.at(x + 950.0 * (bearing + turn).cos(), y + 950.0 * (bearing + turn).sin());
    let at = frame.at(x, y);
    let half = crate::geom::rad(33.0);
    let wedge = [at, ray(half), ray(-half)];
    let below = if frame.heading == Heading::Right && y >= 0.0 { -19.0 } else { 29.0 };
    html! {
        polygon.sight points=(path(&wedge)) {}
        circle.eye cx=(n(at[0])) cy=(n(at[1])) r="13" {}
        text.no text-anchor="middle" x=(n(at[0])) y=(n(at[1] + 5.0)) { (index + 1) }
        text.small.halo text-anchor="middle" x=(n(at[0])) y=(n(at[1] + below)) { (say!(language, "plan-camera-height", height = metres(z))) }
    }
}
