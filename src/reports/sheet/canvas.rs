//! A PDF page in millimetres: origin at the top left, x right, y down.

use krilla::color::luma;
use krilla::geom::{Path, PathBuilder, Point, Transform};
use krilla::metadata::Metadata;
use krilla::num::NormalizedF32;
use krilla::page::PageSettings;
use krilla::paint::{Fill, FillRule, Stroke, StrokeDash};
use krilla::surface::Surface;
use krilla::{Document, SerializeSettings};

use super::Error;
use crate::typeface::{Fonts, MM_PER_POINT, Weight};
use crate::words::Language;

/// Grey levels: 0 black, 255 white.
pub(super) const BLACK: u8 = 0;
pub(super) const DARK: u8 = 70;
pub(super) const GREY: u8 = 130;
pub(super) const LIGHT: u8 = 215;

/// Which point of a line of text stands at the given place (on the base line).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Anchor {
    Left,
    Middle,
    Right,
}

/// How a text looks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Style {
    pub(super) size_pt: f64,
    pub(super) weight: Weight,
    pub(super) grey: u8,
}

impl Style {
    pub(super) fn regular(size_pt: f64) -> Self {
        Style { size_pt, weight: Weight::Regular, grey: BLACK }
    }

    pub(super) fn bold(size_pt: f64) -> Self {
        Style { weight: Weight::Bold, ..Style::regular(size_pt) }
    }

    pub(super) fn grey(self, grey: u8) -> Self {
        Style { grey, ..self }
    }

    pub(super) fn line_mm(self) -> f64 {
        self.size_pt * 1.32 * MM_PER_POINT
    }
}

/// A document in the making.
pub(super) struct Print {
    document: Document,
    fonts: Fonts,
    language: Language,
}

impl Print {
    pub(super) fn new(title: &str, language: Language) -> Result<Self, Error> {
        let settings = SerializeSettings { xmp_metadata: false, enable_tagging: false, ..SerializeSettings::default() };
        let mut document = Document::new_with(settings);
        // No dates: the same input gives the same bytes.
        let metadata = Metadata::new().title(title.to_owned()).creator("baywitness".to_owned());
        document.set_metadata(metadata.language(language.tag().to_owned()));
        Ok(Print { document, fonts: Fonts::new()?, language })
    }

    pub(super) fn fonts(&self) -> &Fonts {
        &self.fonts
    }

    pub(super) fn page(&mut self, size_mm: [f64; 2], draw: impl FnOnce(&mut Canvas<'_>)) -> Result<(), Error> {
        let settings = PageSettings::from_wh(points(size_mm[0]), points(size_mm[1]))
            .ok_or_else(|| Error::Pdf { reason: format!("{size_mm:?} mm").into() })?;
        let mut page = self.document.start_page_with(settings);
        // Surface and page write themselves when they are dropped.
        draw(&mut Canvas { surface: page.surface(), fonts: &self.fonts, language: self.language });
        Ok(())
    }

    pub(super) fn finish(self) -> Result<Vec<u8>, Error> {
        self.document.finish().map_err(|error| Error::Pdf { reason: format!("{error:?}").into() })
    }
}

/// One page to draw on.
pub(super) struct Canvas<'a> {
    surface: Surface<'a>,
    fonts: &'a Fonts,
    /// What is written on it.
    pub(super) language: Language,
}

impl Canvas<'_> {
    /// Fills closed outlines (even-odd) in one go, so that no seam shows between neighbours.
    pub(super) fn fill(&mut self, outlines: &[Vec<[f64; 2]>], grey: u8) {
        let Some(path) = path(outlines, true) else { return };
        self.surface.set_stroke(None);
        self.surface.set_fill(Some(Fill { rule: FillRule::EvenOdd, ..fill(grey) }));
        self.surface.draw_path(&path);
    }

    pub(super) fn stroke(&mut self, corners: &[[f64; 2]], closed: bool, width_mm: f64, grey: u8) {
        self.stroke_with(corners, closed, width_mm, grey, None);
    }

    pub(super) fn line(&mut self, from: [f64; 2], to: [f64; 2], width_mm: f64, grey: u8) {
        self.stroke(&[from, to], false, width_mm, grey);
    }

    /// A dash-dotted centre line.
    pub(super) fn centre_line(&mut self, from: [f64; 2], to: [f64; 2], grey: u8) {
        let dash = [6.0, 1.2, 1.0, 1.2].map(points).to_vec();
        self.stroke_with(&[from, to], false, 0.15, grey, Some(StrokeDash { array: dash, offset: 0.0 }));
    }

    fn stroke_with(&mut self, corners: &[[f64; 2]], closed: bool, width_mm: f64, grey: u8, dash: Option<StrokeDash>) {
        let Some(path) = path(&[corners.to_vec()], closed) else { return };
        self.surface.set_fill(None);
        let width = points(width_mm);
        let paint = luma::Color::new(grey).into();
        self.surface.set_stroke(Some(Stroke { paint, width, dash, ..Stroke::default() }));
        self.surface.draw_path(&path);
    }

    /// Width of a line of text, mm.
    pub(super) fn width_mm(&self, text: &str, style: Style) -> f64 {
        self.fonts.width_mm(text, style.weight, style.size_pt)
    }

    /// One line of text.
    pub(super) fn text(&mut self, at: [f64; 2], anchor: Anchor, style: Style, text: &str) {
        let face = self.fonts.face(style.weight);
        let shift = match anchor {
            Anchor::Left => 0.0,
            Anchor::Middle => -0.5 * self.width_mm(text, style),
            Anchor::Right => -self.width_mm(text, style),
        };
        self.surface.set_stroke(None);
        self.surface.set_fill(Some(fill(style.grey)));
        let start = point([at[0] + shift, at[1]]);
        self.surface.draw_glyphs(start, &face.glyphs(text), face.font.clone(), text, style.size_pt as f32, false);
    }

    /// One line of text that reads upwards.
    pub(super) fn text_upwards(&mut self, at: [f64; 2], anchor: Anchor, style: Style, text: &str) {
        self.surface.push_transform(&Transform::from_rotate_at(-90.0, points(at[0]), points(at[1])));
        self.text(at, anchor, style, text);
        self.surface.pop();
    }

    /// Text in a column; `at` is the first base line. Returns the base line after the last one, mm.
    pub(super) fn paragraph(&mut self, at: [f64; 2], width_mm: f64, style: Style, text: &str) -> f64 {
        let mut y = at[1];
        for line in self.wrap(text, width_mm, style) {
            self.text([at[0], y], Anchor::Left, style, &line);
            y += style.line_mm();
        }
        y
    }

    /// The lines of a text in a column.
    pub(super) fn wrap(&self, text: &str, width_mm: f64, style: Style) -> Vec<String> {
        let mut lines: Vec<String> = Vec::new();
        for word in text.split_whitespace() {
            match lines.last_mut() {
                Some(line) if self.width_mm(&format!("{line} {word}"), style) <= width_mm => {
                    line.push(' ');
                    line.push_str(word);
                }
                _ => lines.push(word.to_owned()),
            }
        }
        lines
    }

    /// The text, cut with an ellipsis where it is wider than `width_mm`.
    pub(super) fn clipped(&self, text: &str, width_mm: f64, style: Style) -> String {
        if self.width_mm(text, style) <= width_mm {
            return text.to_owned();
        }
        let mut kept = text.to_owned();
        while kept.pop().is_some() {
            let shown = format!("{kept}…");
            if self.width_mm(&shown, style) <= width_mm {
                return shown;
            }
        }
        String::new()
    }
}

fn points(mm: f64) -> f32 {
    (mm / MM_PER_POINT) as f32
}

fn point(mm: [f64; 2]) -> Point {
    Point::from_xy(points(mm[0]), points(mm[1]))
}

fn fill(grey: u8) -> Fill {
    Fill { paint: luma::Color::new(grey).into(), opacity: NormalizedF32::ONE, rule: FillRule::NonZero }
}

fn path(outlines: &[Vec<[f64; 2]>], closed: bool) -> Option<Path> {
    let mut builder = PathBuilder::new();
    for outline in outlines {
        for (index, corner) in outline.iter().enumerate() {
            let at = point(*corner);
            if index == 0 { builder.move_to(at.x, at.y) } else { builder.line_to(at.x, at.y) }
        }
        if closed {
            builder.close();
        }
    }
    builder.finish()
}

/// The corners of an upright rectangle.
pub(super) fn rectangle(left: f64, top: f64, width: f64, height: f64) -> Vec<[f64; 2]> {
    vec![[left, top], [left + width, top], [left + width, top + height], [left, top + height]]
}
