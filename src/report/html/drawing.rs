//! Plan and side view, drawn to scale from the record.
//!
//! Both views share the direction and the scale of x, so what stands below
//! one another in them is the same place along the reference line.

use maud::{Markup, html};

use super::loupe::loupes;
use super::scene::{Deviations, Scene, Stand, deviations};
use super::svg::{dimension, head, line, n, points, text};
use crate::record::{CheckRecord, JobRecord};
use crate::report::figures::Measured;
use crate::report::label::{Label, datum, reference_line, sentence};

const WIDTH: f64 = 1000.0;
const MARGIN: f64 = 26.0;
/// Strip of a view that is kept for dimension lines, units.
const DIMENSIONS: f64 = 64.0;

/// The section.
pub(super) fn section(record: &JobRecord) -> Markup {
    let scene = Scene::of(record);
    let all = deviations(record);
    html! {
        section aria-labelledby="drawing" {
            h2 id="drawing" { "Where everything stood" }
            @if scene.is_empty() {
                p { "The photos do not determine where the stand and the vehicle were, so there is nothing to draw." }
            } @else {
                (views(record, &scene))
            }
            @for group in &all { (magnified(group, &scene, all.len() > 1)) }
        }
    }
}

fn views(record: &JobRecord, scene: &Scene) -> Markup {
    let frame = Frame::around(scene);
    html! {
        figure.views {
            h3 { "Plan: seen from above" }
            (plan(record, scene, &frame))
            h3 style="margin-top:14px" { "Side: seen from the vehicle's right" }
            (side_view(record, scene, &frame))
            figcaption {
                "To scale, true size of every deviation. Markers (black), wheel centres and the stand are where they were \
                 measured; the vehicle's body is a sketch around them. Numbered circles are the photos with their directions."
                @if !scene.nose_seen && scene.nose.is_some() { " The nose was not marked: its place follows from the typed length." }
            }
        }
    }
}

fn magnified(group: &Deviations, scene: &Scene, several: bool) -> Markup {
    let stand = scene.targets.iter().find(|s| Some(s.name) == group.target).or(scene.targets.first());
    let (wide, tall) = stand.map_or((600.0, 250.0), |s| (s.half_width, s.half_height));
    let name: Vec<&str> = group.target.into_iter().chain(group.step).collect();
    html! {
        h3 style="margin-top:18px" {
            "The stand against where it must be"
            @if several && !name.is_empty() { ": " (name.join(", ")) }
        }
        p.lede { "Dashed: wanted. Solid: measured, with its uncertainty as a cross (95 %). Shaded: where the aim point may be." }
        (loupes(group, wide, tall))
    }
}

/// The part of the bay that is drawn, and its scale.
struct Frame {
    x: [f64; 2],
    y: [f64; 2],
    z: f64,
    units_per_mm: f64,
}

impl Frame {
    fn around(scene: &Scene) -> Frame {
        let half = scene.half_width() + 120.0;
        let (mut x, mut y, mut z) = ([-900.0_f64, 1500.0], [-half, half], 1500.0_f64);
        let stands = scene.targets.iter().map(|s| (s.aim, s.half_width + 150.0, s.half_height));
        let hubs = scene.hubs.iter().flatten().chain(&scene.nose).map(|&p| (p, 250.0, 0.0));
        let photos = scene.photos.iter().map(|&(_, p, _)| (p, 300.0, 120.0));
        for (p, wide, tall) in stands.chain(hubs).chain(photos) {
            x = [x[0].min(p[0] - 250.0), x[1].max(p[0] + 250.0)];
            y = [y[0].min(p[1] - wide), y[1].max(p[1] + wide)];
            z = z.max(p[2] + tall);
        }
        Frame { x, y, z: z + 100.0, units_per_mm: (WIDTH - 2.0 * MARGIN) / (x[1] - x[0]) }
    }

    fn length(&self, mm: f64) -> f64 {
        mm * self.units_per_mm
    }

    fn across(&self, x_mm: f64) -> f64 {
        MARGIN + self.length(x_mm - self.x[0])
    }

    /// From above: the vehicle's left is up.
    fn above(&self, p: [f64; 3]) -> [f64; 2] {
        [self.across(p[0]), MARGIN + self.length(self.y[1] - p[1])]
    }

    /// From the vehicle's right: up is up.
    fn beside(&self, p: [f64; 3]) -> [f64; 2] {
        [self.across(p[0]), MARGIN + self.length(self.z - p[2])]
    }
}

fn plan(record: &JobRecord, scene: &Scene, frame: &Frame) -> Markup {
    let height = 2.0 * MARGIN + frame.length(frame.y[1] - frame.y[0]) + DIMENSIONS;
    let low = height - DIMENSIONS;
    html! {
        svg.dw.wide viewBox={ "0 0 " (n(WIDTH)) " " (n(height)) } role="img" aria-label=(spoken(record)) {
            (body_from_above(scene, frame))
            (tyres_from_above(scene, frame))
            (reference(record, frame))
            @for marker in &scene.markers { (marker_shape(marker.map(|p| frame.above(p)))) }
            @for stand in &scene.targets { (stand_from_above(stand, frame)) }
            @for &(number, at, direction) in &scene.photos {
                (photo_place(number, frame.above(at), direction.map(|d| [d[0], -d[1]])))
            }
            (distance_line(record, scene, frame, low))
            (wheelbase_line(record, scene, frame, low))
            (text("small halo minor", "end", [WIDTH - 6.0, 18.0], "vehicle's left ▴"))
            (text("small halo minor", "end", [WIDTH - 6.0, low - 4.0], "vehicle's right ▾"))
        }
    }
}

fn spoken(record: &JobRecord) -> String {
    let says = |check: &CheckRecord| {
        let label = Label::of_check(check);
        let m = Measured::of_check(check, label.quantity)?;
        Some(format!("{} {}", label.trade, m.short()))
    };
    let all: Vec<String> = record.checks.iter().filter_map(says).collect();
    format!("Drawing to scale of the vehicle, the target stand and the photos. {}", all.join("; "))
}

fn marker_shape(corners: [[f64; 2]; 4]) -> Markup {
    html! { polygon.marker points=(points(&corners)) {} }
}

/// A vehicle of no make: a rounded body with its glass, from tail to nose.
fn body_from_above(scene: &Scene, frame: &Frame) -> Markup {
    let Some(nose) = scene.nose.map(|n| n[0]).or(scene.front_axle_x().map(|x| x + 860.0)) else { return html! {} };
    let half = scene.half_width() - 20.0;
    let at = |x: f64, y: f64| {
        let [u, v] = frame.above([x, y * half, 0.0]);
        format!("{} {}", n(u), n(v))
    };
    let tail = -780.0;
    let body = format!(
        "M{} Q{} {} L{} Q{} {} Q{} {} L{} Q{} {} Q{} {}Z",
        at(tail + 90.0, 0.80),
        at(tail + 130.0, 1.0),
        at(tail + 420.0, 1.0),
        at(nose - 620.0, 1.0),
        at(nose - 60.0, 0.92),
        at(nose, 0.0),
        at(nose - 60.0, -0.92),
        at(nose - 620.0, -1.0),
        at(tail + 420.0, -1.0),
        at(tail + 130.0, -1.0),
        at(tail + 90.0, -0.80),
        at(tail - 10.0, 0.0),
        at(tail + 90.0, 0.80)
    );
    let screen = nose - 1150.0;
    let glass = format!(
        "M{} Q{} {} L{} Q{} {}Z M{} Q{} {}",
        at(screen, 0.80),
        at(screen + 190.0, 0.0),
        at(screen, -0.80),
        at(screen - 520.0, -0.68),
        at(screen - 400.0, 0.0),
        at(screen - 520.0, 0.68),
        at(tail + 330.0, 0.66),
        at(tail + 240.0, 0.0),
        at(tail + 330.0, -0.66)
    );
    html! { path.body d=(body) {} path.glass d=(glass) {} }
}

fn tyres_from_above(scene: &Scene, frame: &Frame) -> Markup {
    html! {
        @for (i, hub) in scene.hubs.iter().enumerate() {
            @if let Some(hub) = hub {
                @let inward = if i % 2 == 0 { -1.0 } else { 1.0 };
                @let [u, v] = frame.above([hub[0] - 310.0, hub[1].max(hub[1] + inward * 200.0), 0.0]);
                rect.tyre x=(n(u)) y=(n(v)) width=(n(frame.length(620.0))) height=(n(frame.length(200.0))) rx="3" {}
                @let [u, v] = frame.above(*hub);
                circle.hub cx=(n(u)) cy=(n(v)) r="3" {}
            }
        }
    }
}

/// The line that everything refers to, from behind the rear axle to the edge.
fn reference(record: &JobRecord, frame: &Frame) -> Markup {
    let [a, b] = [frame.above([frame.x[0] + 60.0, 0.0, 0.0]), frame.above([frame.x[1] - 60.0, 0.0, 0.0])];
    let words = sentence(&reference_line(&record.reference_line));
    let at = frame.above([250.0, 0.0, 0.0]);
    html! { (line("ref", a, b)) (text("halo", "start", [at[0], at[1] - 8.0], &words)) }
}

fn stand_from_above(stand: &Stand, frame: &Frame) -> Markup {
    let end = |way: f64| frame.above([0, 1, 2].map(|i| stand.aim[i] + way * stand.half_width * stand.left[i]));
    let [u, v] = frame.above(stand.aim);
    html! {
        (line("face", end(1.0), end(-1.0)))
        circle.aim cx=(n(u)) cy=(n(v)) r="5" {}
        (text("halo", "start", [end(1.0)[0] + 8.0, end(1.0)[1] + 4.0], stand.name))
    }
}

/// A numbered circle with a dotted line along which the photo looks.
fn photo_place(number: usize, at: [f64; 2], direction: Option<[f64; 2]>) -> Markup {
    html! {
        @if let Some(d) = direction {
            @let length = d[0].hypot(d[1]);
            @if length > 0.05 {
                @let unit = [d[0] / length, d[1] / length];
                @let tip = [at[0] + unit[0] * 70.0, at[1] + unit[1] * 70.0];
                (line("sight", at, tip)) (head("head", tip, unit, 9.0))
            }
        }
        circle.cam cx=(n(at[0])) cy=(n(at[1])) r="16" {}
        (text("", "middle", [at[0], at[1] + 5.5], &number.to_string()))
    }
}

/// The first distance check with a value.
fn distance_check(record: &JobRecord) -> Option<&CheckRecord> {
    record.checks.iter().find(|c| c.quantity == "distance" && c.value.is_some_and(f64::is_finite))
}

fn distance_line(record: &JobRecord, scene: &Scene, frame: &Frame, low: f64) -> Markup {
    let Some((check, value)) = distance_check(record).and_then(|c| Some((c, c.value?))) else { return html! {} };
    let wanted = check.target.as_deref();
    let Some(stand) = scene.targets.iter().find(|s| wanted.is_none_or(|name| name == s.name)) else { return html! {} };
    let Some(m) = Measured::of_check(check, Label::of_check(check).quantity) else { return html! {} };
    let (a, b) = (frame.across(stand.aim[0] - value), frame.across(stand.aim[0]));
    let y = low + 22.0;
    let from = check.from.as_deref().map_or_else(String::new, |from| format!(" from {}", datum(from)));
    html! {
        (line("ext", [a, frame.above([0.0; 3])[1]], [a, y + 6.0]))
        (line("ext", [b, frame.above(stand.aim)[1]], [b, y + 6.0]))
        (dimension([a, y], [b, y]))
        (text("halo", "middle", [f64::midpoint(a, b), y + 32.0], &format!("{}{from}", m.amount_with_unit())))
    }
}

fn wheelbase_line(record: &JobRecord, scene: &Scene, frame: &Frame, low: f64) -> Markup {
    let Some(wheelbase) = record.measured.get("wheelbase") else { return html! {} };
    if scene.front_axle_x().is_none() || !wheelbase.value.is_finite() {
        return html! {};
    }
    let m = Measured::new(None, "mm", wheelbase.value, None);
    let (a, b) = (frame.across(0.0), frame.across(wheelbase.value));
    let y = low + 22.0;
    html! {
        g.minor {
            (line("ext", [a, low - 20.0], [a, y + 6.0])) (line("ext", [b, low - 20.0], [b, y + 6.0]))
            (dimension([a, y], [b, y]))
            (text("small halo", "middle", [f64::midpoint(a, b), y + 32.0], &format!("wheelbase {}", m.amount_with_unit())))
        }
    }
}

fn side_view(record: &JobRecord, scene: &Scene, frame: &Frame) -> Markup {
    let floor = frame.beside([0.0; 3])[1];
    html! {
        svg.dw.wide viewBox={ "0 0 " (n(WIDTH)) " " (n(floor + 30.0)) } role="img" aria-label=(spoken(record)) {
            (body_from_beside(scene, frame))
            (tyres_from_beside(scene, frame))
            (floor_line(floor))
            @for marker in &scene.markers { (marker_shape(marker.map(|p| frame.beside(p)))) }
            @for stand in &scene.targets { (stand_from_beside(record, stand, frame)) }
            @for &(number, at, direction) in &scene.photos {
                (photo_place(number, frame.beside(at), direction.map(|d| [d[0], -d[2]])))
            }
        }
    }
}

fn floor_line(y: f64) -> Markup {
    html! {
        (line("floor", [0.0, y], [WIDTH, y]))
        @for i in 0_u8..50 {
            @let x = f64::from(i) * 20.0 + 8.0;
            (line("hatch", [x, y + 2.0], [x - 8.0, y + 11.0]))
        }
    }
}

fn body_from_beside(scene: &Scene, frame: &Frame) -> Markup {
    let Some(nose) = scene.nose.map(|n| n[0]).or(scene.front_axle_x().map(|x| x + 860.0)) else { return html! {} };
    let tail = -780.0;
    let at = |x: f64, z: f64| {
        let [u, v] = frame.beside([x, 0.0, z]);
        format!("{} {}", n(u), n(v))
    };
    let screen = nose - 1000.0;
    let body = format!(
        "M{} L{} Q{} {} L{} Q{} {} Q{} {} L{} Q{} {} Q{} {}Z",
        at(tail + 60.0, 260.0),
        at(tail, 560.0),
        at(tail + 20.0, 950.0),
        at(tail + 120.0, 1010.0),
        at(tail + 420.0, 1400.0),
        at(tail + 900.0, 1500.0),
        at(screen - 620.0, 1430.0),
        at(screen - 400.0, 1380.0),
        at(screen, 980.0),
        at(nose - 260.0, 840.0),
        at(nose, 780.0),
        at(nose, 540.0),
        at(nose, 260.0),
        at(nose - 120.0, 230.0)
    );
    let glass = format!(
        "M{} L{} Q{} {} L{}Z",
        at(tail + 260.0, 1020.0),
        at(tail + 520.0, 1350.0),
        at(tail + 950.0, 1430.0),
        at(screen - 640.0, 1370.0),
        at(screen - 170.0, 1000.0)
    );
    html! { path.body d=(body) {} path.glass d=(glass) {} }
}

fn tyres_from_beside(scene: &Scene, frame: &Frame) -> Markup {
    let pair = |a: Option<[f64; 3]>, b: Option<[f64; 3]>| b.or(a);
    let [rear_left, rear_right, front_left, front_right] = scene.hubs;
    let wheels = [pair(rear_left, rear_right), pair(front_left, front_right)];
    html! {
        @for hub in wheels.into_iter().flatten() {
            @let [u, v] = frame.beside(hub);
            circle.tyre cx=(n(u)) cy=(n(v)) r=(n(frame.length(hub[2].clamp(150.0, 600.0)))) {}
            circle.hub cx=(n(u)) cy=(n(v)) r="3" {}
        }
    }
}

fn stand_from_beside(record: &JobRecord, stand: &Stand, frame: &Frame) -> Markup {
    let end = |way: f64| frame.beside([0, 1, 2].map(|i| stand.aim[i] + way * stand.half_height * stand.up[i]));
    let [u, v] = frame.beside(stand.aim);
    let floor = frame.beside([0.0; 3])[1];
    html! {
        (line("mast", [u, v], [u, floor])) (line("mast", [u - 22.0, floor], [u + 22.0, floor]))
        (line("face", end(1.0), end(-1.0)))
        circle.aim cx=(n(u)) cy=(n(v)) r="5" {}
        (height_line(record, [u, v], floor))
    }
}

fn height_line(record: &JobRecord, aim: [f64; 2], floor: f64) -> Markup {
    let Some(height) = record.measured.get("height").filter(|h| h.value.is_finite()) else { return html! {} };
    let m = Measured::new(None, "mm", height.value, Some(height.standard_uncertainty));
    let x = aim[0] + 46.0;
    html! {
        (line("ext", aim, [x + 6.0, aim[1]]))
        (dimension([x, aim[1]], [x, floor]))
        (text("halo", "start", [x + 8.0, f64::midpoint(aim[1], floor) + 5.0], &format!("{} {}", m.amount, m.unit)))
    }
}
