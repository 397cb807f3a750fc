//! The fonts of printed sheets, and how wide a text is in them.

use krilla::text::{Font, GlyphId, KrillaGlyph};
use skrifa::instance::{LocationRef, Size};
use skrifa::{FontRef, MetadataProvider};

use super::Error;
use super::canvas::{MM_PER_POINT, Style};

const REGULAR: &[u8] = include_bytes!("../../models/fonts/NotoSans-Regular.ttf");
const BOLD: &[u8] = include_bytes!("../../models/fonts/NotoSans-Bold.ttf");

/// The weight of a text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Weight {
    Regular,
    Bold,
}

/// One font, ready for setting single lines.
pub(super) struct Face {
    pub(super) font: Font,
    reader: FontRef<'static>,
}

pub(super) struct Fonts {
    regular: Face,
    bold: Face,
}

impl Fonts {
    pub(super) fn new() -> Result<Self, Error> {
        Ok(Fonts { regular: Face::new(REGULAR)?, bold: Face::new(BOLD)? })
    }

    /// Width of a line of text, mm.
    pub(super) fn width_mm(&self, text: &str, style: Style) -> f64 {
        self.face(style.weight).width_em(text) * style.size_pt * MM_PER_POINT
    }

    pub(super) fn face(&self, weight: Weight) -> &Face {
        match weight {
            Weight::Regular => &self.regular,
            Weight::Bold => &self.bold,
        }
    }
}

impl Face {
    fn new(data: &'static [u8]) -> Result<Self, Error> {
        let unreadable = || Error::Pdf { reason: "an embedded font is damaged; build the program again".to_owned() };
        let font = Font::new(data.into(), 0).ok_or_else(unreadable)?;
        let reader = FontRef::new(data).map_err(|_| unreadable())?;
        Ok(Face { font, reader })
    }

    /// Glyphs of one line, advances in em. Characters that the font lacks become a question mark.
    pub(super) fn glyphs(&self, text: &str) -> Vec<KrillaGlyph> {
        let metrics = self.reader.glyph_metrics(Size::unscaled(), LocationRef::default());
        let charmap = self.reader.charmap();
        let em = self.font.units_per_em();
        text.char_indices()
            .map(|(at, character)| {
                let glyph = charmap.map(character).or_else(|| charmap.map('?')).unwrap_or_default();
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
