//! The self-contained HTML report: one file, no script, nothing fetched.

mod archive;
mod bar;
mod beside;
mod checks;
mod doubts;
mod drawing;
mod findings;
mod loupe;
mod marker_names;
mod overlay;
pub(super) mod palette;
mod paperwork;
mod photo_place;
mod photos;
mod plan;
mod scene;
mod summary;
pub(super) mod svg;
pub(super) mod symbol;
mod tables;
mod track;
mod upright;
mod vehicle;

use maud::{DOCTYPE, Markup, PreEscaped, html};

pub use archive::{ArchiveRow, archive_end, archive_row, archive_start};
pub use palette::css as colours_css;
pub(super) use palette::light;
pub use symbol::{class as verdict_class, symbol as verdict_symbol};

use super::clean::clean;
use crate::record::JobRecord;
use crate::words::Language;

/// How everything looks.
pub(super) const STYLE: &str = include_str!("style.css");

/// A photo's picture for people.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PhotoPicture {
    /// The photo's path as the record names it.
    pub file: String,
    /// The upright preview, JPEG.
    pub jpeg_bytes: Vec<u8>,
    /// Width of the preview, px.
    pub width: u32,
    /// Height of the preview, px.
    pub height: u32,
    /// Width of the stored picture, px.
    pub stored_width: u32,
    /// Height of the stored picture, px.
    pub stored_height: u32,
    /// EXIF orientation of the stored picture, 1 to 8.
    pub orientation: u8,
}

/// The report of one job as a whole HTML page.
///
/// Pictures are matched to the record's photos by file name; a photo without
/// a picture is drawn on an empty ground. Everything typed is escaped.
pub fn html(record: &JobRecord, pictures: &[PhotoPicture], language: Language) -> String {
    let title = format!("Job {}: {}", record.job, record.verdict.words());
    whole_page(&title, &record.job, language, sections(record, pictures, &html! {}, &html! {}))
}

/// A page with the report's style; `job` stands at the foot where it is printed.
pub(super) fn whole_page(title: &str, job: &str, language: Language, body: Markup) -> String {
    let page = html! { (DOCTYPE) html lang=(language.tag()) { (head(title, job)) body { (body) } } };
    page.into_string().chars().filter(|&c| allowed(c)).collect()
}

/// The report's elements without head and style, as one element; with
/// sections before the cautions and at the end.
pub(super) fn body(
    record: &JobRecord,
    pictures: &[PhotoPicture],
    _language: Language,
    before: Markup,
    last: Markup,
) -> String {
    let page = html! { body { (sections(record, pictures, &before, &last)) } };
    page.into_string().chars().filter(|&c| allowed(c)).collect()
}

fn sections(record: &JobRecord, pictures: &[PhotoPicture], before: &Markup, last: &Markup) -> Markup {
    html! {
                (summary::title_block(record))
                main {
                    (summary::verdict(record))
                    (summary::to_do(record))
                    (checks::section(record))
                    (drawing::section(record))
                    (track::section(record))
                    (findings::section(record))
                    (paperwork::procedure(record))
                    (photos::section(record, pictures))
                    (tables::readings(record))
                    (tables::measured(record))
                    (tables::budgets(record))
                    (doubts::section(record))
                    (paperwork::attested(record))
                    (paperwork::limits_of_the_sheet(record))
                    (paperwork::inputs(record))
                    (before)
                    (paperwork::cautions())
                }
                (paperwork::footer(record))
                (last)
    }
}

/// The page's own text needs no control character but the line break; what
/// else there is was typed by somebody and may not act on the reader's screen.
fn allowed(c: char) -> bool {
    c == '\n' || clean(c.encode_utf8(&mut [0; 4])).starts_with(c)
}

fn head(title: &str, job: &str) -> Markup {
    html! {
        head {
            meta charset="utf-8";
            meta name="viewport" content="width=device-width, initial-scale=1";
            meta name="color-scheme" content="light dark";
            meta name="referrer" content="no-referrer";
            title { (title) }
            style { (PreEscaped(stylesheet(job))) }
        }
    }
}

fn stylesheet(job: &str) -> String {
    format!("{}\n{}\n@page{{@bottom-left{{content:\"Job {}\"}}}}", palette::css(), STYLE, css_text(job))
}

/// `text` for a CSS string: every character that is not a plain letter, digit
/// or space is written as its code point, so nothing can end the string.
fn css_text(text: &str) -> String {
    let escape = |c: char| {
        if c.is_ascii_alphanumeric() || c == ' ' { c.to_string() } else { format!("\\{:06x} ", u32::from(c)) }
    };
    clean(text).chars().map(escape).collect()
}

/// `PATH` without its folders is too little to tell two photos apart, so the
/// whole path is kept; long ones may break anywhere.
fn path(file: &str) -> Markup {
    html! { span.path { (file) } }
}

#[cfg(test)]
mod tests {
    use super::css_text;

    #[test]
    fn a_job_number_cannot_leave_its_css_string() {
        assert_eq!(css_text("D-1"), "D\\00002d 1");
        assert!(!css_text("\"} </style><script>").contains(['"', '<', '>', '}']));
    }
}
