//! Check rulers: what a printer made of 160 mm.

use crate::words::{Figure, Language, say};

use super::canvas::{Anchor, BLACK, Canvas, DARK, Style};

/// Length of the check rulers whose reading is entered, mm.
pub const RULER_MM: f64 = 160.0;
/// Room that a short vertical ruler needs with its text, mm.
pub(super) const SHORT_RULER_MM: f64 = 42.0;
/// Length of a short ruler, mm.
pub(super) const SHORT_LENGTH_MM: f64 = 30.0;

const END_TICK_MM: f64 = 5.0;
const LINE_MM: f64 = 0.15;

/// A ruler from `start` to the right; ticks point down, the text stands below.
pub(super) fn across(canvas: &mut Canvas<'_>, start: [f64; 2], length_mm: f64, text: &str) {
    let [x, y] = start;
    canvas.line([x, y], [x + length_mm, y], LINE_MM, BLACK);
    for (offset, tick) in ticks(length_mm) {
        canvas.line([x + offset, y], [x + offset, y + tick], LINE_MM, BLACK);
    }
    canvas.text([x + length_mm / 2.0, y + 7.4], Anchor::Middle, Style::regular(7.5).grey(DARK), text);
}

/// A ruler from `start` downwards; ticks point to the right, the text stands right of it and reads upwards.
pub(super) fn along(canvas: &mut Canvas<'_>, start: [f64; 2], length_mm: f64, text: &str) {
    let [x, y] = start;
    canvas.line([x, y], [x, y + length_mm], LINE_MM, BLACK);
    for (offset, tick) in ticks(length_mm) {
        canvas.line([x, y + offset], [x + tick, y + offset], LINE_MM, BLACK);
    }
    canvas.text_upwards([x + 7.6, y + length_mm / 2.0], Anchor::Middle, Style::regular(7.5).grey(DARK), text);
}

/// What stands beside a ruler.
pub(super) fn request(way: &str, length_mm: f64, language: Language) -> String {
    say!(language, "print-ruler", way = way, length = Figure::fixed(length_mm, 1))
}

/// What stands beside a short one, which is only a quick check.
pub(super) fn quick(length_mm: f64, language: Language) -> String {
    say!(language, "print-ruler-short", length = Figure::fixed(length_mm, 1))
}

/// Offsets and lengths of the ticks: each 10 mm, longer each 50 mm and at the ends.
/// The middle of an end tick's line is the ruler's end.
fn ticks(length_mm: f64) -> impl Iterator<Item = (f64, f64)> {
    let steps = (length_mm / 10.0).round() as u32;
    (0..=steps).map(move |step| {
        let tick = if step == 0 || step == steps {
            END_TICK_MM
        } else if step % 5 == 0 {
            3.0
        } else {
            1.6
        };
        (f64::from(step) * 10.0, tick)
    })
}
