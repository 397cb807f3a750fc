//! An incremental update (ISO 32000-1, 7.5.6) that adds a signature field and
//! the signature's dictionary to a finished report, with a place left for what
//! is signed.
//!
//! The field shows nothing: its rectangle is empty and lies outside of the
//! page, which PDF/A-2 (ISO 19005-2, 6.3.3) takes for needing no appearance and
//! PDF/UA-1 (ISO 14289-1, 7.18.1) for needing no tag. `DocMDP` says that
//! nothing may be changed afterwards (ISO 32000-1, 12.8.2.2).

use std::ops::Range;

use sha2::{Digest, Sha256};
use time::OffsetDateTime;
use time::macros::format_description;

use super::error::{PadesError, Problem};
use super::syntax::{File, entry, reference};
use crate::input::hex;

/// Digits of one number of `ByteRange`: files up to 10 GB.
const DIGITS: usize = 10;
/// A tree of pages is no deeper than this.
const MOST_LEVELS: usize = 32;

/// A report with an empty place for the signature.
pub(super) struct Prepared {
    pub(super) bytes: Vec<u8>,
    /// The place, its angle brackets included: all else is signed.
    pub(super) hole: Range<usize>,
}

impl Prepared {
    /// What is signed.
    pub(super) fn signed(&self) -> Vec<u8> {
        [&self.bytes[..self.hole.start], &self.bytes[self.hole.end..]].concat()
    }

    /// Puts the signature into its place, zeros behind it.
    pub(super) fn fill(&mut self, signature: &[u8]) -> Result<(), PadesError> {
        let inside = self.hole.start + 1..self.hole.end - 1;
        let digits = hex(signature);
        if digits.len() > inside.len() {
            return Err(PadesError::Pdf(Problem::NoRoom));
        }
        self.bytes[inside.clone()].fill(b'0');
        self.bytes[inside.start..inside.start + digits.len()].copy_from_slice(digits.as_bytes());
        Ok(())
    }
}

/// The report with the signature's objects; `room` bytes are left for it.
pub(super) fn prepare(report: &[u8], field: &str, moment: OffsetDateTime, room: usize) -> Result<Prepared, Problem> {
    let file = File::read(report).ok_or(Problem::NoPdf)?;
    let size = entry(file.trailer, "/Size").and_then(super::syntax::number).ok_or(Problem::NoPdf)?;
    let root = entry(file.trailer, "/Root").and_then(reference).ok_or(Problem::NoPdf)?;
    let catalog = file.dictionary(root).ok_or(Problem::NoPdf)?;
    if entry(catalog, "/AcroForm").is_some() || entry(catalog, "/Perms").is_some() {
        return Err(Problem::SignedAlready);
    }
    let (page, page_dictionary) = first_page(&file, catalog).ok_or(Problem::NoPdf)?;
    if entry(page_dictionary, "/Annots").is_some() {
        return Err(Problem::NoPdf);
    }
    let (signature, widget) = (size, size + 1);
    let catalog =
        with_more(catalog, &format!("/AcroForm<</Fields[{widget} 0 R]/SigFlags 3>>/Perms<</DocMDP {signature} 0 R>>"));
    let page_now = with_more(page_dictionary, &format!("/Annots[{widget} 0 R]"));
    let widget_now = format!(
        "<</Type/Annot/Subtype/Widget/FT/Sig/T(Signature)/TU<{}>/V {signature} 0 R/P {page} 0 R/F 132/Rect[-1 -1 -1 -1]>>",
        utf16(field)
    );
    let mut bytes = report.to_vec();
    if !bytes.ends_with(b"\n") {
        bytes.push(b'\n');
    }
    let mut places = Vec::new();
    for (object, content) in [(root, &catalog), (page, &page_now), (widget, &widget_now.into_bytes())] {
        places.push((object, bytes.len()));
        append(&mut bytes, &[format!("{object} 0 obj\n").as_bytes(), content, b"\nendobj\n"]);
    }
    places.push((signature, bytes.len()));
    let (range, hole) = append_signature(&mut bytes, signature, moment, room)?;
    append_table(&mut bytes, &file, places, size + 2);
    let numbers = [hole.start, hole.end, bytes.len() - hole.end].map(|n| format!("{n:<DIGITS$}"));
    let numbers = format!("0 {}", numbers.join(" "));
    bytes[range].copy_from_slice(numbers.as_bytes());
    Ok(Prepared { bytes, hole })
}

fn append(bytes: &mut Vec<u8>, parts: &[&[u8]]) {
    parts.iter().for_each(|part| bytes.extend_from_slice(part));
}

/// The dictionary with further keys at its end.
fn with_more(dictionary: &[u8], keys: &str) -> Vec<u8> {
    let inside = dictionary.strip_suffix(b">>").unwrap_or(dictionary);
    [inside, keys.as_bytes(), b">>"].concat()
}

fn first_page<'a>(file: &File<'a>, catalog: &[u8]) -> Option<(usize, &'a [u8])> {
    let mut object = entry(catalog, "/Pages").and_then(reference)?;
    for _ in 0..MOST_LEVELS {
        let dictionary = file.dictionary(object)?;
        match entry(dictionary, "/Kids") {
            Some(kids) => object = reference(kids.strip_prefix(b"[")?)?,
            None => return Some((object, dictionary)),
        }
    }
    None
}

/// A text string in any script (7.9.2.2).
fn utf16(text: &str) -> String {
    let units = std::iter::once(0xfeff).chain(text.encode_utf16());
    units.map(|unit| format!("{unit:04x}")).collect()
}

/// The signature's dictionary; where the numbers of its range and the hole are.
fn append_signature(
    bytes: &mut Vec<u8>,
    object: usize,
    moment: OffsetDateTime,
    room: usize,
) -> Result<(Range<usize>, Range<usize>), Problem> {
    let shape = format_description!("[year][month][day][hour][minute][second]");
    let when = moment.to_offset(time::UtcOffset::UTC).format(&shape).map_err(|_| Problem::NoPdf)?;
    let head = format!(
        "{object} 0 obj\n<</Type/Sig/Filter/Adobe.PPKLite/SubFilter/ETSI.CAdES.detached/M(D:{when}Z)\
         /Reference[<</Type/SigRef/TransformMethod/DocMDP/TransformParams<</Type/TransformParams/P 1/V/1.2>>>>]/ByteRange["
    );
    bytes.extend_from_slice(head.as_bytes());
    let range = bytes.len()..bytes.len() + 2 + 3 * DIGITS + 2;
    bytes.resize(range.end, b' ');
    bytes.extend_from_slice(b"]/Contents");
    let hole = bytes.len()..bytes.len() + 2 * room + 2;
    bytes.push(b'<');
    bytes.resize(hole.end - 1, b'0');
    bytes.extend_from_slice(b">>>\nendobj\n");
    Ok((range, hole))
}

/// The cross-reference of what is new, and a trailer that points to the one before.
fn append_table(bytes: &mut Vec<u8>, file: &File, mut places: Vec<(usize, usize)>, size: usize) {
    let start = bytes.len();
    // The first half tells the document, the second this state of it (14.4).
    let state = hex(&Sha256::digest(&bytes[..])[..16]);
    places.sort_unstable();
    bytes.extend_from_slice(b"xref\n");
    for (object, place) in places {
        bytes.extend_from_slice(format!("{object} 1\n{place:010} 00000 n\r\n").as_bytes());
    }
    bytes.extend_from_slice(format!("trailer\n<</Size {size}").as_bytes());
    for key in ["/Root", "/Info"] {
        if let Some(value) = entry(file.trailer, key) {
            append(bytes, &[key.as_bytes(), b" ", value]);
        }
    }
    if let Some(first) = entry(file.trailer, "/ID").and_then(first_of) {
        append(bytes, &[b"/ID[", first, b"<", state.as_bytes(), b">]"]);
    }
    bytes.extend_from_slice(format!("/Prev {}>>\nstartxref\n{start}\n%%EOF\n", file.start).as_bytes());
}

/// The first value of an array.
fn first_of(array: &[u8]) -> Option<&[u8]> {
    let from = super::syntax::after_blanks(array, 1);
    array.get(from..super::syntax::value_end(array, from)?)
}
