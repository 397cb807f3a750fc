//! A vehicle of no make, sketched around its measured wheel centres and nose.

use maud::{Markup, html};

use super::frame::Frame;
use super::scene::Scene;
use super::svg::n;

/// The tail lies this far behind the rear axle; nobody measures it.
const TAIL_X: f64 = -780.0;

/// A rounded body with its glass, from tail to nose.
pub(super) fn body_from_above(scene: &Scene, frame: &Frame) -> Markup {
    let Some(nose) = scene.nose.map(|n| n[0]).or(scene.front_axle_x().map(|x| x + 860.0)) else { return html! {} };
    let half = scene.half_width() - 20.0;
    let at = |x: f64, y: f64| {
        let [u, v] = frame.above([x, y * half, 0.0]);
        format!("{} {}", n(u), n(v))
    };
    let body = format!(
        "M{} Q{} {} L{} Q{} {} Q{} {} L{} Q{} {} Q{} {}Z",
        at(TAIL_X + 90.0, 0.80),
        at(TAIL_X + 130.0, 1.0),
        at(TAIL_X + 420.0, 1.0),
        at(nose - 620.0, 1.0),
        at(nose - 60.0, 0.92),
        at(nose, 0.0),
        at(nose - 60.0, -0.92),
        at(nose - 620.0, -1.0),
        at(TAIL_X + 420.0, -1.0),
        at(TAIL_X + 130.0, -1.0),
        at(TAIL_X + 90.0, -0.80),
        at(TAIL_X - 10.0, 0.0),
        at(TAIL_X + 90.0, 0.80)
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
        at(TAIL_X + 330.0, 0.66),
        at(TAIL_X + 240.0, 0.0),
        at(TAIL_X + 330.0, -0.66)
    );
    html! { path.body d=(body) {} path.glass d=(glass) {} }
}

/// Its tyres, inside the measured wheel centres.
pub(super) fn tyres_from_above(scene: &Scene, frame: &Frame) -> Markup {
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

/// The body from its right side.
pub(super) fn body_from_beside(scene: &Scene, frame: &Frame) -> Markup {
    let Some(nose) = scene.nose.map(|n| n[0]).or(scene.front_axle_x().map(|x| x + 860.0)) else { return html! {} };
    let at = |x: f64, z: f64| {
        let [u, v] = frame.beside([x, 0.0, z]);
        format!("{} {}", n(u), n(v))
    };
    let screen = nose - 1000.0;
    let body = format!(
        "M{} L{} Q{} {} L{} Q{} {} Q{} {} L{} Q{} {} Q{} {}Z",
        at(TAIL_X + 60.0, 260.0),
        at(TAIL_X, 560.0),
        at(TAIL_X + 20.0, 950.0),
        at(TAIL_X + 120.0, 1010.0),
        at(TAIL_X + 420.0, 1400.0),
        at(TAIL_X + 900.0, 1500.0),
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
        at(TAIL_X + 260.0, 1020.0),
        at(TAIL_X + 520.0, 1350.0),
        at(TAIL_X + 950.0, 1430.0),
        at(screen - 640.0, 1370.0),
        at(screen - 170.0, 1000.0)
    );
    html! { path.body d=(body) {} path.glass d=(glass) {} }
}

/// Its wheels, around the measured wheel centres.
pub(super) fn tyres_from_beside(scene: &Scene, frame: &Frame) -> Markup {
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
