//! The report as PDF/A-2a and PDF/UA-1: the words and drawings of the HTML
//! report, laid out on A4.
//!
//! The HTML's elements are read again and set: what the page says, the PDF
//! says, and nothing else; the customer's page follows as the last one.
//! `build`, `rows` and `table` turn elements into items with their structure,
//! `flow` puts items on pages, `furniture` adds head and foot, `write` makes
//! the file.

mod build;
mod drawings;
mod error;
mod flow;
mod furniture;
mod inline;
mod lines;
mod nodes;
mod page;
mod rows;
mod style;
mod table;
mod tags;
mod write;

use krilla::metadata::DateTime;
use maud::{Markup, html};
use sha2::{Digest, Sha512};
use usvg::roxmltree::Document;

use super::html::PhotoPicture;
use crate::record::JobRecord;
use crate::typeface::{Fonts, REPLACEMENT};
use crate::words::{Language, say};
use build::Build;
use drawings::Drawings;
pub use error::PdfError;
use furniture::Furniture;
use inline::Inline;
use tags::Tags;
use write::About;

/// SHA-512 of a result's bytes, lower-case hexadecimal.
pub fn digest(json: &[u8]) -> String {
    crate::input::hex(&Sha512::digest(json))
}

/// The report of one job as PDF. `json` are the bytes of `result.json`, whose
/// digest stands on every page. The same record, pictures and bytes give the
/// same file.
///
/// # Errors
/// A fault of the program: no record makes it fail.
pub fn pdf(
    record: &JobRecord,
    pictures: &[PhotoPicture],
    json: &[u8],
    language: Language,
) -> Result<Vec<u8>, PdfError> {
    pdf_saying(record, pictures, json, language, None)
}

/// The same with a sentence at its beginning about the file itself, such as why it is not signed.
///
/// # Errors
/// As [`pdf`].
pub fn pdf_saying(
    record: &JobRecord,
    pictures: &[PhotoPicture],
    json: &[u8],
    language: Language,
    note: Option<&str>,
) -> Result<Vec<u8>, PdfError> {
    let digest = digest(json);
    let fonts = Fonts::new()?;
    let date = date(record);
    let page = super::html::body(
        record,
        pictures,
        language,
        html! { @if let Some(note) = note { p { (note) } } (about(record, &digest, date.is_some(), language)) },
        super::customer::section(record, &digest, language),
    );
    let (source, foreign) = printable(&fonts, &page);
    let document = Document::parse(&source).map_err(|e| PdfError::Page { reason: e.to_string() })?;
    let drawings = Drawings::new(&fonts);
    let inline = Inline { drawings: &drawings, source: &source };
    let mut build = Build { fonts: &fonts, inline, tags: Tags::new(), items: Vec::new() };
    build.blocks(document.root_element(), Tags::ROOT);
    if foreign > 0 {
        let sign = REPLACEMENT.to_string();
        build.note(&say!(language, "report-foreign-characters", count = foreign, sign = sign));
    }
    let Build { tags, items, .. } = build;
    let mut pages = flow::flow(items);
    let verdict = record.verdict.phrase();
    let title = say!(language, "report-document-title", job = &record.job, verdict = verdict);
    let title: String = title.chars().map(|c| if prints(c) { c } else { REPLACEMENT }).collect();
    furniture::furnish(
        &fonts,
        &mut pages,
        &Furniture {
            title: title.clone(),
            digest: digest.clone(),
            of: say!(language, "report-digest-of"),
            maker: format!("{} {}", record.tool.name, record.tool.version),
            language,
        },
    );
    let producer = format!("{} {}", record.tool.name, record.tool.version);
    let date = date.unwrap_or_else(|| DateTime::new(1970).month(1).day(1));
    write::write(&fonts, &pages, &tags, About { title, date, producer, id: digest, language })
}

/// What the document says of itself.
fn about(record: &JobRecord, digest: &str, dated: bool, language: Language) -> Markup {
    html! {
        section aria-labelledby="about" {
            h2 id="about" { (say!(language, "report-about")) }
            p { (say!(language, "report-about-repeats", job = &record.job)) " " span.hash { (digest) } }
            @if !dated { p { (say!(language, "report-about-undated")) } }
        }
    }
}

/// The job's time, else the latest of its photos.
fn date(record: &JobRecord) -> Option<DateTime> {
    use time::{OffsetDateTime, format_description::well_known::Rfc3339};
    let read = |text: &str| OffsetDateTime::parse(text, &Rfc3339).ok();
    let photos = record.photos.iter().filter_map(|p| p.taken.as_deref()).filter_map(read).max();
    let moment = record.context.taken.as_deref().and_then(read).or(photos)?;
    let year = u16::try_from(moment.year()).ok()?;
    let (hours, minutes, _) = moment.offset().as_hms();
    Some(
        DateTime::new(year)
            .month(u8::from(moment.month()))
            .day(moment.day())
            .hour(moment.hour())
            .minute(moment.minute())
            .second(moment.second())
            .utc_offset_hour(hours)
            .utc_offset_minute(minutes.unsigned_abs()),
    )
}

/// Whether a character may stand in the document's text at all: PDF/A-2a
/// refuses private characters, XML some others.
fn prints(c: char) -> bool {
    let private = matches!(c, '\u{e000}'..='\u{f8ff}' | '\u{f0000}'..='\u{10ffff}');
    let none =
        matches!(c, '\0' | '\u{feff}') || u32::from(c) & 0xfffe == 0xfffe || matches!(c, '\u{fdd0}'..='\u{fdef}');
    !(private || none || c.is_control() && c != '\n')
}

/// The page with what may not be printed replaced, and how many different
/// characters the fonts have no shape for.
fn printable(fonts: &Fonts, page: &str) -> (String, usize) {
    let mut foreign = std::collections::BTreeSet::new();
    let shown = page.chars().map(|c| {
        if !c.is_ascii() && !fonts.shows(c) && !c.is_whitespace() {
            foreign.insert(c);
        }
        if prints(c) { c } else { REPLACEMENT }
    });
    let source = shown.collect();
    (source, foreign.len())
}
