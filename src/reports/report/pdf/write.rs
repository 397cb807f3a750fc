//! Pages become a PDF/A-2a and PDF/UA-1 document.

use krilla::configure::{Accessibility, Archival, ConfigurationBuilder};
use krilla::destination::XyzDestination;
use krilla::geom::{Path, PathBuilder, Point, Size, Transform};
use krilla::metadata::{DateTime, Metadata};
use krilla::num::NormalizedF32;
use krilla::outline::{Outline, OutlineNode};
use krilla::page::PageSettings;
use krilla::paint::{Fill, FillRule, Stroke};
use krilla::surface::Surface;
use krilla::tagging::{Artifact, ArtifactType, ContentTag, Identifier};
use krilla::{Document, SerializeSettings};
use krilla_svg::{SurfaceExt, SvgSettings};

use super::error::PdfError;
use super::page::{Bookmark, Draw, Mark, PAGE_MM, Pages};
use super::tags::{Tags, shortened};
use crate::typeface::{Fonts, MM_PER_POINT};
use crate::words::Language;

/// What the document says of itself.
pub(super) struct About {
    pub(super) title: String,
    /// PDF/A wants a date: the job's own, never the clock's.
    pub(super) date: DateTime,
    pub(super) producer: String,
    /// Tells two documents apart where their titles don't.
    pub(super) id: String,
    pub(super) language: Language,
}

/// The finished file.
pub(super) fn write(fonts: &Fonts, pages: &Pages, tags: &Tags, about: About) -> Result<Vec<u8>, PdfError> {
    let failed = |reason: String| PdfError::Write { reason };
    let configuration = ConfigurationBuilder::new()
        .with_archival_validator(Archival::A2_A)
        .with_accessibility_validator(Accessibility::UA1)
        .finish()
        .map_err(|e| failed(format!("{e:?}")))?;
    let mut document = Document::new_with(SerializeSettings { configuration, ..SerializeSettings::default() });
    document.set_metadata(
        Metadata::new()
            .title(shortened(&about.title))
            .language(about.language.tag().to_owned())
            .creator(about.producer.clone())
            .producer(about.producer)
            .creation_date(about.date)
            .document_id(about.id),
    );
    let mut drawn: Vec<Vec<Identifier>> = (0..tags.leaves()).map(|_| Vec::new()).collect();
    for marks in &pages.pages {
        let settings = PageSettings::from_wh(points(PAGE_MM[0]), points(PAGE_MM[1]))
            .ok_or_else(|| failed(format!("{PAGE_MM:?}")))?;
        let mut page = document.start_page_with(settings);
        let mut surface = page.surface();
        for together in marks.chunk_by(|a, b| a.leaf == b.leaf) {
            let tag = match together.first().and_then(|m| m.leaf) {
                Some(_) => ContentTag::Other,
                None => ContentTag::Artifact(Artifact::with_kind(ArtifactType::Layout)),
            };
            let identifier = surface.start_tagged(tag);
            together.iter().for_each(|mark| draw(&mut surface, fonts, mark));
            surface.end_tagged();
            if let Some(leaf) = together.first().and_then(|m| m.leaf) {
                drawn[leaf].push(identifier);
            }
        }
        surface.finish();
        page.finish();
    }
    document.set_tag_tree(tags.tree(&mut drawn));
    document.set_outline(outline(&pages.bookmarks));
    let mut bytes = document.finish().map_err(|e| failed(format!("{e:?}")))?;
    leave_out_suspects(&mut bytes);
    Ok(bytes)
}

/// `/Suspects false` is what its absence means too (ISO 32000-1, table 321),
/// and older versions of poppler call it an error. Blanks keep every place.
fn leave_out_suspects(bytes: &mut [u8]) {
    const MARKED: &[u8] = b"/Marked true";
    const SUSPECTS: &[u8] = b"/Suspects false";
    let found = memchr::memmem::find_iter(bytes, SUSPECTS).last();
    if let Some(at) = found.filter(|&at| bytes[..at].trim_ascii_end().ends_with(MARKED)) {
        bytes[at..at + SUSPECTS.len()].fill(b' ');
    }
}

fn points(mm: f64) -> f32 {
    (mm / MM_PER_POINT) as f32
}

fn point(mm: [f64; 2]) -> Point {
    Point::from_xy(points(mm[0]), points(mm[1]))
}

fn fill(colour: krilla::color::rgb::Color) -> Fill {
    Fill { paint: colour.into(), opacity: NormalizedF32::ONE, rule: FillRule::NonZero }
}

fn stroke(colour: krilla::color::rgb::Color, width_mm: f64) -> Stroke {
    Stroke { paint: colour.into(), width: points(width_mm), ..Stroke::default() }
}

fn draw(surface: &mut Surface, fonts: &Fonts, mark: &Mark) {
    match &mark.draw {
        Draw::Text { at, style, text } => {
            let face = fonts.face(style.weight);
            surface.set_stroke(None);
            surface.set_fill(Some(fill(style.colour)));
            let size = style.size_pt as f32;
            surface.draw_glyphs(point(*at), &face.glyphs(text), face.font.clone(), text, size, false);
        }
        Draw::Box { at, size, fill: ground, edge } => {
            let [x, y] = *at;
            let corners = [*at, [x + size[0], y], [x + size[0], y + size[1]], [x, y + size[1]]];
            let Some(path) = path(&corners, true) else { return };
            surface.set_fill(ground.map(fill));
            surface.set_stroke(edge.map(|(colour, width)| stroke(colour, width)));
            surface.draw_path(&path);
        }
        Draw::Rule { from, to, colour, width_mm } => {
            let Some(path) = path(&[*from, *to], false) else { return };
            surface.set_fill(None);
            surface.set_stroke(Some(stroke(*colour, *width_mm)));
            surface.draw_path(&path);
        }
        Draw::Svg { at, size, layers } => {
            let Some(size) = Size::from_wh(points(size[0]), points(size[1])) else { return };
            surface.push_transform(&Transform::from_translate(points(at[0]), points(at[1])));
            for (tree, embed_text) in layers.iter() {
                let _ = surface.draw_svg(tree, size, SvgSettings { embed_text: *embed_text, ..SvgSettings::default() });
            }
            surface.pop();
        }
    }
}

fn path(corners: &[[f64; 2]], closed: bool) -> Option<Path> {
    let mut builder = PathBuilder::new();
    for (i, corner) in corners.iter().enumerate() {
        let at = point(*corner);
        if i == 0 { builder.move_to(at.x, at.y) } else { builder.line_to(at.x, at.y) }
    }
    if closed {
        builder.close();
    }
    builder.finish()
}

/// The headings of the second level; the first is the document's title.
fn outline(bookmarks: &[Bookmark]) -> Outline {
    let mut outline = Outline::new();
    for bookmark in bookmarks.iter().filter(|b| b.level <= 2) {
        let at = XyzDestination::new(bookmark.page, point([0.0, bookmark.y_mm]));
        outline.push_child(OutlineNode::new(shortened(&bookmark.title), at));
    }
    outline
}
