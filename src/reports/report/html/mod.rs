//! The self-contained HTML report: one file, no script, nothing fetched.

mod archive;
mod bar;
mod beside;
mod checks;
mod doubts;
mod drawing;
mod file_path;
mod findings;
mod frame;
mod loupe;
mod marker_names;
mod number;
mod overlay;
pub(super) mod palette;
mod paperwork;
mod photo_picture;
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

pub use archive::{ArchiveLog, ArchiveRow, archive_end, archive_row, archive_start};
pub use palette::css as colours_css;
pub(super) use palette::light;
pub use photo_picture::PhotoPicture;
pub(super) use summary::rendered;
pub use symbol::{class as verdict_class, symbol as verdict_symbol};

use super::clean::clean;
use crate::record::JobRecord;
use crate::words::{Language, say};

/// How everything looks.
pub(super) const STYLE: &str = include_str!("style.css");

/// The report of one job as a whole HTML page.
///
/// Pictures are matched to the record's photos by file name; a photo without
/// a picture is drawn on an empty ground. Everything typed is escaped.
pub fn html(record: &JobRecord, pictures: &[PhotoPicture], language: Language) -> String {
    let verdict = record.verdict.phrase();
    let title = say!(language, "report-page-title", job = &record.job, verdict = verdict);
    whole_page(&title, &record.job, language, sections(record, pictures, language, &html! {}, &html! {}))
}

/// A page with the report's style; `job` stands at the foot where it is printed.
pub(super) fn whole_page(title: &str, job: &str, language: Language, body: Markup) -> String {
    let page = html! { (DOCTYPE) html lang=(language.tag()) { (head(title, job, language)) body { (body) } } };
    page.into_string().chars().filter(|&c| allowed(c)).collect()
}

/// The report's elements without head and style, as one element; with
/// sections before the cautions and at the end.
pub(super) fn body(
    record: &JobRecord,
    pictures: &[PhotoPicture],
    language: Language,
    before: Markup,
    last: Markup,
) -> String {
    let page = html! { body { (sections(record, pictures, language, &before, &last)) } };
    page.into_string().chars().filter(|&c| allowed(c)).collect()
}

fn sections(
    record: &JobRecord,
    pictures: &[PhotoPicture],
    language: Language,
    before: &Markup,
    last: &Markup,
) -> Markup {
    html! {
        (summary::title_block(record, language))
        main {
            (summary::verdict(record, language))
            (summary::to_do(record, language))
            (checks::section(record, language))
            (drawing::section(record, language))
            (track::section(record, language))
            (findings::section(record, language))
            (paperwork::procedure(record, language))
            (photos::section(record, pictures, language))
            (tables::readings(record, language))
            (tables::measured(record, language))
            (tables::budgets(record, language))
            (doubts::section(record, language))
            (paperwork::attested(record, language))
            (paperwork::limits_of_the_sheet(record, language))
            (paperwork::inputs(record, language))
            (before)
            (paperwork::cautions(language))
        }
        (paperwork::footer(record, language))
        (last)
    }
}

/// The page's own text needs no control character but the line break; what
/// else there is was typed by somebody and may not act on the reader's screen.
fn allowed(c: char) -> bool {
    c == '\n' || clean(c.encode_utf8(&mut [0; 4])).starts_with(c)
}

fn head(title: &str, job: &str, language: Language) -> Markup {
    html! {
        head {
            meta charset="utf-8";
            meta name="viewport" content="width=device-width, initial-scale=1";
            meta name="color-scheme" content="light dark";
            meta name="referrer" content="no-referrer";
            title { (title) }
            style { (PreEscaped(stylesheet(job, language))) }
        }
    }
}

fn stylesheet(job: &str, language: Language) -> String {
    let job = css_text(&say!(language, "report-job", job = job));
    format!("{}\n{STYLE}\n{}\n@page{{@bottom-left{{content:\"{job}\"}}}}", palette::css(), page_numbers_css(language))
}

/// Page numbers of a printed page, in a language: the style sheet's own are English.
pub(super) fn page_numbers_css(language: Language) -> String {
    const NUMBERS: [(char, &str); 2] = [('\u{1}', "counter(page)"), ('\u{2}', "counter(pages)")];
    let [page, pages] = NUMBERS.map(|(sign, _)| sign.to_string());
    let words = say!(language, "report-page-of", page = page, pages = pages);
    let piece = |text: &str| match NUMBERS.iter().find(|(sign, _)| text.starts_with(*sign)) {
        Some((_, counter)) => (*counter).to_owned(),
        None => format!("\"{}\"", css_text(text)),
    };
    let is_number = |c: char| NUMBERS.iter().any(|(sign, _)| *sign == c);
    let mut pieces = Vec::new();
    for part in words.split_inclusive(is_number) {
        let end = part.trim_end_matches(is_number).len();
        pieces.extend([&part[..end], &part[end..]].into_iter().filter(|p| !p.is_empty()).map(piece));
    }
    format!("@page{{@bottom-right{{content:{}}}}}", pieces.join(" "))
}

/// `text` for a CSS string: every character that is not a plain letter, digit
/// or space is written as its code point, so nothing can end the string.
fn css_text(text: &str) -> String {
    let escape = |c: char| {
        if c.is_ascii_alphanumeric() || c == ' ' { c.to_string() } else { format!("\\{:06x} ", u32::from(c)) }
    };
    clean(text).chars().map(escape).collect()
}

#[cfg(test)]
mod tests {
    use super::{css_text, page_numbers_css};
    use crate::words::Language;

    #[test]
    fn page_numbers_are_counters_between_the_language_s_words() {
        let css = page_numbers_css(Language::German);
        assert_eq!(css, r#"@page{@bottom-right{content:"Seite " counter(page) " von " counter(pages)}}"#);
    }

    #[test]
    fn a_job_number_cannot_leave_its_css_string() {
        assert_eq!(css_text("D-1"), "D\\00002d 1");
        assert!(!css_text("\"} </style><script>").contains(['"', '<', '>', '}']));
    }
}
