//! What text looks like on the page.

use krilla::color::rgb;

use crate::report::html::light;
use crate::typeface::{MM_PER_POINT, Weight};

/// Size, weight and colour of a run of text.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Style {
    pub(super) size_pt: f64,
    pub(super) weight: Weight,
    pub(super) colour: rgb::Color,
    /// The base line's shift upwards, mm.
    pub(super) rise_mm: f64,
}

impl Style {
    /// Text of the report.
    pub(super) fn body() -> Style {
        Style { size_pt: 9.2, weight: Weight::Regular, colour: colour("ink"), rise_mm: 0.0 }
    }

    pub(super) fn sized(self, size_pt: f64) -> Style {
        Style { size_pt, ..self }
    }

    pub(super) fn bold(self) -> Style {
        Style { weight: Weight::Bold, ..self }
    }

    pub(super) fn coloured(self, name: &str) -> Style {
        Style { colour: colour(name), ..self }
    }

    /// From one base line to the next, mm.
    pub(super) fn line_mm(self) -> f64 {
        self.size_pt * 1.34 * MM_PER_POINT
    }

    /// From the top of a line to its base line, mm.
    pub(super) fn ascent_mm(self) -> f64 {
        self.size_pt * 1.02 * MM_PER_POINT
    }
}

/// A colour of the report's palette, as on paper.
pub(super) fn colour(name: &str) -> rgb::Color {
    let hex = light(name).trim_start_matches('#');
    let channel = |at: usize| hex.get(at..at + 2).and_then(|pair| u8::from_str_radix(pair, 16).ok()).unwrap_or(0);
    rgb::Color::new(channel(0), channel(2), channel(4))
}
