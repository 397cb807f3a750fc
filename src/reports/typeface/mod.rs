//! The embedded fonts of everything printed, and how wide a text is in them.
//!
//! Noto Sans in two weights with Latin, Greek, Cyrillic and the signs that the
//! reports use (`models/fonts`). What a font lacks is shown as a replacement
//! character that still carries the true one, for whoever copies or hears it.

use std::cell::RefCell;
use std::collections::HashMap;

use krilla::text::{Font, GlyphId, KrillaGlyph};
use skrifa::instance::{LocationRef, Size};
use skrifa::{FontRef, MetadataProvider};

use crate::words::{Language, Phrase, phrase};

const REGULAR: &[u8] = baywitness_models::FONT_REGULAR;
const BOLD: &[u8] = baywitness_models::FONT_BOLD;

/// PDF's unit is the point: 72 to the inch.
pub(crate) const MM_PER_POINT: f64 = 25.4 / 72.0;

/// Shown for a character that the fonts lack.
pub(crate) const REPLACEMENT: char = '\u{fffd}';

/// The files of the fonts, regular first; their family is `Noto Sans`.
pub(crate) const FILES: [&[u8]; 2] = [REGULAR, BOLD];

/// A font that is built in cannot be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub struct Damaged;

impl Damaged {
    /// For any language.
    pub fn phrase(self) -> Phrase {
        phrase!("print-font-damaged")
    }
}

/// The weight of a text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Weight {
    /// For text.
    Regular,
    /// For headings.
    Bold,
}

/// One font, ready for setting single lines.
pub(crate) struct Face {
    /// As krilla embeds it.
    pub(crate) font: Font,
    reader: FontRef<'static>,
    shapes: RefCell<HashMap<char, Shape>>,
}

/// Both fonts.
pub(crate) struct Fonts {
    regular: Face,
    bold: Face,
}

impl Fonts {
    /// Reads the built-in files.
    pub(crate) fn new() -> Result<Self, Damaged> {
        Ok(Fonts { regular: Face::new(REGULAR)?, bold: Face::new(BOLD)? })
    }

    /// Width of a line of text, mm.
    pub(crate) fn width_mm(&self, text: &str, weight: Weight, size_pt: f64) -> f64 {
        self.face(weight).width_em(text) * size_pt * MM_PER_POINT
    }

    /// The font of a weight.
    pub(crate) fn face(&self, weight: Weight) -> &Face {
        match weight {
            Weight::Regular => &self.regular,
            Weight::Bold => &self.bold,
        }
    }

    /// Whether a character has a shape of its own.
    pub(crate) fn shows(&self, character: char) -> bool {
        self.regular.reader.charmap().map(character).is_some()
    }
}

impl Face {
    fn new(data: &'static [u8]) -> Result<Self, Damaged> {
        let font = Font::new(data.into(), 0).ok_or(Damaged)?;
        let reader = FontRef::new(data).map_err(|_| Damaged)?;
        Ok(Face { font, reader, shapes: RefCell::default() })
    }

    /// Glyphs of one line, advances in em. Characters that the font lacks get
    /// the replacement's shape.
    pub(crate) fn glyphs(&self, text: &str) -> Vec<KrillaGlyph> {
        text.char_indices()
            .map(|(at, character)| {
                let shape = self.shape(character);
                let range = at..at + character.len_utf8();
                KrillaGlyph::new(GlyphId::new(shape.glyph), shape.advance_em, 0.0, 0.0, 0.0, range, None)
            })
            .collect()
    }

    /// Width of a line in em.
    fn width_em(&self, text: &str) -> f64 {
        text.chars().map(|c| f64::from(self.shape(c).advance_em)).sum()
    }

    /// Looked up in the font's tables once for each character: lines are measured far more often than set.
    fn shape(&self, character: char) -> Shape {
        *self.shapes.borrow_mut().entry(character).or_insert_with(|| {
            let charmap = self.reader.charmap();
            let glyph = charmap.map(character).or_else(|| charmap.map(REPLACEMENT)).unwrap_or_default();
            let metrics = self.reader.glyph_metrics(Size::unscaled(), LocationRef::default());
            let advance_em = metrics.advance_width(glyph).unwrap_or(0.0) / self.font.units_per_em();
            Shape { glyph: glyph.to_u32(), advance_em }
        })
    }
}

/// What a font has for a character.
#[derive(Clone, Copy)]
struct Shape {
    glyph: u32,
    advance_em: f32,
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What the reports write and what people in a workshop are called.
    #[test]
    fn the_signs_of_reports_and_names_have_a_shape() {
        let fonts = Fonts::new().unwrap();
        for c in "±°µ–—“”„·…✓✕⊘■▲○◂▸▴▾←→↑↓≤≥−ÄÖÜäöüßéčşłøÅŐșΩλЖщђ€№\u{fffd}".chars()
        {
            assert!(fonts.shows(c), "{c}");
            assert!(fonts.face(Weight::Bold).reader.charmap().map(c).is_some(), "{c} in bold");
        }
        assert!(!fonts.shows('北'));
        assert!(fonts.width_mm("北", Weight::Regular, 10.0) > 1.0, "a replacement takes room");
    }
}
