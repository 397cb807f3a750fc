//! The bay from above, the vehicle driving upwards, with the places to stand.

use maud::{Markup, html};

use crate::record::{PlanBody, PlanRecord, PlannedStation};
use crate::words::{Language, say};

/// Width of the drawing, units: about a phone's pixels.
const WIDTH: f64 = 340.0;
/// So much of the vehicle is drawn behind its nose, mm.
const VEHICLE_MM: f64 = 1500.0;
/// Radius of a place, units.
const PLACE: f64 = 15.0;

struct Frame {
    scale: f64,
    half_mm: f64,
    top_mm: f64,
    height: f64,
}

impl Frame {
    fn of(plan: &PlanRecord) -> Self {
        let bay = &plan.bay;
        let wide = plan.stations.iter().map(|s| s.position_mm[1].abs() + 350.0);
        let half_mm = wide.fold(bay.half_width_mm + 500.0, f64::max);
        let ahead = plan.stations.iter().map(|s| s.position_mm[0]);
        let targets = bay.bodies.iter().map(|b| b.position_mm[0]);
        let top_mm = ahead.chain(targets).fold(bay.nose_mm + 1000.0, f64::max) + 350.0;
        // What the places look at reaches behind the nose in some sheets.
        let lowest = plan.stations.iter().map(|s| s.position_mm[0] - 350.0).fold(bay.nose_mm - VEHICLE_MM, f64::min);
        let scale = WIDTH / (2.0 * half_mm);
        Frame { scale, half_mm, top_mm, height: (top_mm - lowest) * scale }
    }

    /// Left of the vehicle is left, ahead is up.
    fn at(&self, x: f64, y: f64) -> [f64; 2] {
        [(self.half_mm - y) * self.scale, (self.top_mm - x) * self.scale]
    }
}

fn n(value: f64) -> String {
    format!("{:.1}", if value.is_finite() { value } else { 0.0 })
}

fn points(points: &[[f64; 2]]) -> String {
    points.iter().map(|[u, v]| format!("{},{}", n(*u), n(*v))).collect::<Vec<_>>().join(" ")
}

/// The drawing.
pub(in crate::web) fn drawing(language: Language, plan: &PlanRecord, named: &impl Fn(&String) -> String) -> Markup {
    let frame = Frame::of(plan);
    html! {
        figure.bay {
            svg viewBox={ "0 0 " (n(WIDTH)) " " (n(frame.height)) } role="img" aria-label=(say!(language, "page-drawing-from-above")) {
                (vehicle(language, plan, &frame))
                @for (i, s) in plan.stations.iter().enumerate() { (sight(i, s, &frame)) }
                @for body in &plan.bay.bodies { (carrier(body, &named(&body.name), &frame)) }
                @for (i, s) in plan.stations.iter().enumerate() { (place(i, s, &frame)) }
            }
            figcaption { (say!(language, "page-drawing-from-above")) }
        }
    }
}

fn vehicle(language: Language, plan: &PlanRecord, frame: &Frame) -> Markup {
    let bay = &plan.bay;
    let (nose, half) = (bay.nose_mm, bay.half_width_mm);
    let low = frame.top_mm - frame.height / frame.scale;
    let outline = [(low, 1.0), (nose - 700.0, 1.0), (nose - 220.0, 0.86), (nose - 40.0, 0.55), (nose, 0.0)];
    let left = outline.iter().map(|(x, share)| frame.at(*x, share * half));
    let right = outline.iter().rev().map(|(x, share)| frame.at(*x, -share * half));
    let all: Vec<[f64; 2]> = left.chain(right).collect();
    let name = frame.at(low, 0.0);
    html! {
        polyline.body points=(points(&all)) {}
        @for side in [1.0, -1.0] {
            @let [u, v] = frame.at(bay.wheelbase_mm + 310.0, side * (half - 110.0));
            rect.wheel x=(n(u - 95.0 * frame.scale)) y=(n(v)) width=(n(190.0 * frame.scale)) height=(n(620.0 * frame.scale)) rx="3" {}
        }
        text text-anchor="middle" x=(n(name[0])) y=(n(name[1] - 14.0)) { (say!(language, "page-vehicle-word")) }
        text x="4" y=(n(name[1] - 14.0)) { (say!(language, "page-left-word")) }
        text text-anchor="end" x=(n(WIDTH - 4.0)) y=(n(name[1] - 14.0)) { (say!(language, "page-right-word")) }
    }
}

fn carrier(body: &PlanBody, name: &str, frame: &Frame) -> Markup {
    let [x, y, _] = body.position_mm;
    let (sin, cos) = body.heading_deg.to_radians().sin_cos();
    let turned = |ahead: f64, left: f64| frame.at(x + ahead * cos - left * sin, y + ahead * sin + left * cos);
    match body.role.as_str() {
        "target" => {
            let half = body.half_width_mm.max(150.0);
            let ([u1, v1], [u2, v2]) = (turned(0.0, half), turned(0.0, -half));
            let [u, v] = frame.at(x, y);
            html! {
                line.target x1=(n(u1)) y1=(n(v1)) x2=(n(u2)) y2=(n(v2)) {}
                text.halo text-anchor="middle" x=(n(u)) y=(n(v - 9.0)) { (name) }
            }
        }
        "floor" => {
            let corners = [turned(110.0, 110.0), turned(110.0, -110.0), turned(-110.0, -110.0), turned(-110.0, 110.0)];
            html! { polygon.sheet points=(points(&corners)) {} }
        }
        _ => {
            let [u, v] = frame.at(x, y);
            html! { circle.sheet cx=(n(u)) cy=(n(v)) r="4" {} }
        }
    }
}

/// What the phone looks at, as a wedge.
fn sight(i: usize, station: &PlannedStation, frame: &Frame) -> Markup {
    let [x, y, _] = station.position_mm;
    let [lx, ly, _] = station.look_at_mm;
    let bearing = (ly - y).atan2(lx - x);
    let ray = |turn: f64| frame.at(x + 1500.0 * (bearing + turn).cos(), y + 1500.0 * (bearing + turn).sin());
    let wedge = [frame.at(x, y), ray(0.55), ray(-0.55)];
    html! { polygon class={ "sight s" (i % 2) } points=(points(&wedge)) {} }
}

fn place(i: usize, station: &PlannedStation, frame: &Frame) -> Markup {
    let [u, v] = frame.at(station.position_mm[0], station.position_mm[1]);
    html! {
        circle.place cx=(n(u)) cy=(n(v)) r=(n(PLACE)) {}
        text.nr text-anchor="middle" x=(n(u)) y=(n(v + 6.0)) { (i + 1) }
    }
}
