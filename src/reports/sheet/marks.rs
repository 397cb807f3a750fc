//! Crop marks, alignment ticks and arrows.

use super::canvas::{BLACK, Canvas};

const LINE_MM: f64 = 0.15;

/// Crop marks just outside the corners of a rectangle, as far as they stay on the printable area.
pub(super) fn crop(canvas: &mut Canvas<'_>, corner: [f64; 2], size: [f64; 2], page_mm: [f64; 2]) {
    const GAP: f64 = 0.8;
    const LENGTH: f64 = 3.2;
    const EDGE: f64 = super::paper::UNPRINTABLE_MM - 0.5;
    let ends = [corner, [corner[0] + size[0], corner[1] + size[1]]];
    for (i, x) in [ends[0][0], ends[1][0]].into_iter().enumerate() {
        for (j, y) in [ends[0][1], ends[1][1]].into_iter().enumerate() {
            let (sx, sy) = (if i == 0 { -1.0 } else { 1.0 }, if j == 0 { -1.0 } else { 1.0 });
            let tip = [x + sx * (GAP + LENGTH), y + sy * (GAP + LENGTH)];
            if (EDGE..=page_mm[0] - EDGE).contains(&tip[0]) {
                canvas.line([x + sx * GAP, y], [tip[0], y], LINE_MM, BLACK);
            }
            canvas.line([x, y + sy * GAP], [x, tip[1]], LINE_MM, BLACK);
        }
    }
}

/// Short lines across the middle of each edge, half inside and half outside the cut: they
/// meet the pencilled lines of the assembly drawing.
pub(super) fn align(canvas: &mut Canvas<'_>, corner: [f64; 2], size: [f64; 2], centre: [f64; 2]) {
    const INSIDE: f64 = 2.0;
    const OUTSIDE: f64 = 3.0;
    let (right, bottom) = (corner[0] + size[0], corner[1] + size[1]);
    for (edge, out) in [(corner[0], -1.0), (right, 1.0)] {
        canvas.line([edge - out * INSIDE, centre[1]], [edge + out * OUTSIDE, centre[1]], LINE_MM, BLACK);
    }
    for (edge, out) in [(corner[1], -1.0), (bottom, 1.0)] {
        canvas.line([centre[0], edge - out * INSIDE], [centre[0], edge + out * OUTSIDE], LINE_MM, BLACK);
    }
}

/// A filled arrow that points up; `foot` is the middle of its lower end.
pub(super) fn up_arrow(canvas: &mut Canvas<'_>, foot: [f64; 2], height: f64) {
    arrow(canvas, foot, [0.0, -1.0], height, BLACK);
}

/// A filled arrow along a unit vector on the page.
pub(super) fn arrow(canvas: &mut Canvas<'_>, foot: [f64; 2], along: [f64; 2], length: f64, grey: u8) {
    let head = (0.55 * length).min(2.6);
    let (half_head, half_shaft) = (0.42 * head, 0.11 * head);
    let at = |forward: f64, side: f64| {
        [foot[0] + forward * along[0] - side * along[1], foot[1] + forward * along[1] + side * along[0]]
    };
    let neck = length - head;
    let outline = vec![
        at(0.0, -half_shaft),
        at(neck, -half_shaft),
        at(neck, -half_head),
        at(length, 0.0),
        at(neck, half_head),
        at(neck, half_shaft),
        at(0.0, half_shaft),
    ];
    canvas.fill(&[outline], grey);
}
