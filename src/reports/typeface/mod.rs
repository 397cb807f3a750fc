//! The embedded fonts of everything printed, and how wide a text is in them.
//!
//! Noto Sans in two weights with Latin, Greek, Cyrillic and the signs that the
//! reports use (`models/fonts`). What a font lacks is shown as a replacement
//! character that still carries the true one, for whoever copies or hears it.

use krilla::text::{Font, GlyphId, KrillaGlyph};
use skrifa::instance::{LocationRef, Size};
use skrifa::{FontRef, MetadataProvider};

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
#[error("an embedded font is damaged; build the program again")]
pub struct Damaged;

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
        Ok(Face { font, reader })
    }

    /// Glyphs of one line, advances in em. Characters that the font lacks get
    /// the replacement's shape.
    pub(crate) fn glyphs(&self, text: &str) -> Vec<KrillaGlyph> {
        let metrics = self.reader.glyph_metrics(Size::unscaled(), LocationRef::default());
        let charmap = self.reader.charmap();
        let em = self.font.units_per_em();
        text.char_indices()
            .map(|(at, character)| {
                let glyph = charmap.map(character).or_else(|| charmap.map(REPLACEMENT)).unwrap_or_default();
                let advance = metrics.advance_width(glyph).unwrap_or(0.0) / em;
                let range = at..at + character.len_utf8();
                KrillaGlyph::new(GlyphId::new(glyph.to_u32()), advance, 0.0, 0.0, 0.0, range, None)
            })
            .collect()
    }

    /// Width of a line in em.
    fn width_em(&self, text: &str) -> f64 {
        self.glyphs(text).iter().map(|glyph| f64::from(glyph.x_advance)).sum()
    }
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
