//! The reports of a sealed job: what the PDF's own signature says, and whether they are reports of its result.

use std::fs;
use std::path::Path;

use crate::evidence::{RESULT, Standing, find_sealed_job, read_result};
use crate::record::{JobRecord, Tool};
use crate::report;
use crate::words::{Language, Phrase, phrase, say};

/// The reports in an evidence folder's payload.
pub(super) const REPORT_PDF: &str = "report.pdf";
pub(super) const REPORT_HTML: &str = "report.html";
pub(super) const CUSTOMER_HTML: &str = "for-the-customer.html";
/// The largest report that is read; one of 50 photos has some 20 MB.
const MOST_BYTES: u64 = 1 << 29;

/// How the report of an evidence folder's payload stands; `None` where there is none, as in masked copies, or where what
/// bears its name is no file of a report's size, which is for [`crate::evidence::inspect`] to say.
pub fn sealed_report(payload: &Path) -> Option<Standing> {
    Some(Standing::of(sealed(payload, REPORT_PDF)?))
}

fn sealed(payload: &Path, name: &str) -> Option<Vec<u8>> {
    let file = payload.join(name);
    let is_one = |m: &fs::Metadata| m.is_file() && m.len() <= MOST_BYTES;
    fs::symlink_metadata(&file).ok().filter(is_one)?;
    fs::read(file).ok()
}

/// Whether the reports of an evidence folder's payload are those of its result.
#[derive(Debug, PartialEq)]
pub enum Reports {
    /// There is none, as in masked copies.
    None,
    /// So many, each byte for byte what this program makes of the result and the photos.
    Same(usize),
    /// These are another result's, or were changed.
    Other(Vec<String>),
    /// Another version made them, which sets pages otherwise: it cannot be told.
    CannotTell(Phrase),
}

impl Reports {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            Reports::None => phrase!("evidence-no-reports"),
            Reports::Same(count) => phrase!("evidence-reports-same", count = *count),
            Reports::Other(files) => phrase!("evidence-reports-other", files = files.join(", "), result = RESULT),
            Reports::CannotTell(why) => why.clone(),
        }
    }
}

/// Makes the reports of an evidence folder's payload again from its result and photos, and compares: reports are
/// functions of these and of their language.
pub fn reports_again(payload: &Path, record: &JobRecord) -> Reports {
    let here: Vec<(&str, Vec<u8>)> = [REPORT_HTML, REPORT_PDF, CUSTOMER_HTML]
        .into_iter()
        .filter_map(|name| Some((name, sealed(payload, name)?)))
        .collect();
    if here.is_empty() {
        return Reports::None;
    }
    let now = Tool::this();
    if !record.tool.is_like(&now) {
        return Reports::CannotTell(other_tool(&record.tool, &now));
    }
    let sources = || -> Result<_, Phrase> {
        let json = read_result(payload).map_err(|e| e.of_file(RESULT))?;
        let job = payload.join(find_sealed_job(payload).unwrap_or_default());
        Ok((json, report::pictures(&job, record).map_err(|e| e.phrase())?))
    };
    let (json, pictures) = match sources() {
        Ok(sources) => sources,
        Err(why) => return Reports::CannotTell(why),
    };
    let is_same = |name: &str, bytes: &[u8], language: Language| match name {
        REPORT_PDF => report::pdf(record, &pictures, &json, language)
            .is_ok_and(|made| made == bytes || is_signed(bytes, &made, language)),
        REPORT_HTML => report::html(record, &pictures, language).as_bytes() == bytes,
        _ => report::customer_html(record, &report::digest(&json), language).as_bytes() == bytes,
    };
    let languages = languages(&here);
    let other: Vec<String> = here
        .iter()
        .filter(|(name, bytes)| !languages.iter().any(|language| is_same(name, bytes, *language)))
        .map(|(name, _)| format!("data/{name}"))
        .collect();
    if other.is_empty() { Reports::Same(here.len()) } else { Reports::Other(other) }
}

/// Another version made what is here.
pub(super) fn other_tool(recorded: &Tool, now: &Tool) -> Phrase {
    phrase!("evidence-reports-by-other", recorded = recorded.words(), now = now.words())
}

/// The language that the pages say they are in; where no page says one, each may be.
fn languages(here: &[(&str, Vec<u8>)]) -> Vec<Language> {
    let all = Language::ALL.into_iter().chain([Language::Pseudo]);
    let says = |language: &Language| {
        let tag = format!("<html lang=\"{}\"", language.tag());
        here.iter().any(|(_, bytes)| memchr::memmem::find(&bytes[..bytes.len().min(400)], tag.as_bytes()).is_some())
    };
    let said: Vec<Language> = all.clone().filter(says).collect();
    if said.is_empty() { all.collect() } else { said }
}

/// Whether a PDF is this report with nothing but its signature behind it.
fn is_signed(pdf: &[u8], made: &[u8], language: Language) -> bool {
    let Standing::Holds(signed) = Standing::of(pdf.to_vec()) else { return false };
    signed.is_of(made, &say!(language, "evidence-pdf-field"))
}
