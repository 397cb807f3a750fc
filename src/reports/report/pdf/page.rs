//! A4 and what is put on it. Millimetres from the top left, x right, y down.

use std::rc::Rc;

use krilla::color::rgb;

use super::style::Style;

/// ISO 216 A4, upright.
pub(super) const PAGE_MM: [f64; 2] = [210.0, 297.0];
pub(super) const LEFT_MM: f64 = 13.0;
pub(super) const WIDTH_MM: f64 = 184.0;
/// Between these the report itself stands; above is the head, below the foot.
pub(super) const TOP_MM: f64 = 19.0;
pub(super) const BOTTOM_MM: f64 = 264.0;

/// One thing that is drawn.
#[derive(Clone)]
pub(super) enum Draw {
    /// One line of text; `at` is the start of its base line.
    Text { at: [f64; 2], style: Style, text: String },
    /// A rectangle.
    Box { at: [f64; 2], size: [f64; 2], fill: Option<rgb::Color>, edge: Option<(rgb::Color, f64)> },
    /// A straight line.
    Rule { from: [f64; 2], to: [f64; 2], colour: rgb::Color, width_mm: f64 },
    /// A drawing.
    Svg { at: [f64; 2], size: [f64; 2], layers: Rc<Layers> },
}

/// A drawn thing and the piece of the document's structure that it belongs
/// to; `None`: decoration.
#[derive(Clone)]
pub(super) struct Mark {
    pub(super) leaf: Option<usize>,
    pub(super) draw: Draw,
}

impl Mark {
    /// The same, further right and down.
    pub(super) fn moved(&self, by: [f64; 2]) -> Mark {
        let add = |at: [f64; 2]| [at[0] + by[0], at[1] + by[1]];
        let draw = match self.draw.clone() {
            Draw::Text { at, style, text } => Draw::Text { at: add(at), style, text },
            Draw::Box { at, size, fill, edge } => Draw::Box { at: add(at), size, fill, edge },
            Draw::Rule { from, to, colour, width_mm } => Draw::Rule { from: add(from), to: add(to), colour, width_mm },
            Draw::Svg { at, size, layers } => Draw::Svg { at: add(at), size, layers },
        };
        Mark { draw, ..*self }
    }
}

/// A heading's place, for the list of contents that viewers show.
pub(super) struct Bookmark {
    pub(super) level: u8,
    pub(super) title: String,
    pub(super) page: usize,
    pub(super) y_mm: f64,
}

/// All pages.
#[derive(Default)]
pub(super) struct Pages {
    pub(super) pages: Vec<Vec<Mark>>,
    pub(super) bookmarks: Vec<Bookmark>,
}

/// Drawings on top of one another, and whether words stay words.
pub(super) type Layers = Vec<(usvg::Tree, bool)>;
