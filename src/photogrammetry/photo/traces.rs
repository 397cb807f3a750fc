//! What tells that a file is no longer as the camera wrote it: marks that
//! programs leave, and a thumbnail of another picture.

use std::io::Cursor;

use exif::{Exif as Record, In, Tag, Value};

use super::exif_time::local_time;
use super::steps::{Steps, steps};
use super::{Kind, Luma, jpeg, likeness, made};
use crate::rendered::{DESCRIPTION, SOFTWARE};

/// What a file holds of its own past; nothing of it proves an intent.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Traces {
    /// Marks that editing programs leave and cameras do not.
    pub edits: Vec<Edit>,
    /// A number for the compression tables of a JPEG: alike where they are.
    pub compression: Option<u64>,
    /// The steps to which a JPEG's luma is rounded.
    pub steps: Option<Steps>,
    /// How alike the thumbnail and the picture are: the correlation of both at
    /// low resolution, 1 for the same picture, about 0 for two.
    pub thumbnail_likeness: Option<f64>,
    /// Marks which say that this program rendered it.
    pub rendered: Vec<Mark>,
}

/// Where a picture says that it was rendered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mark {
    /// Its record does.
    Record,
    /// Its pixels do.
    Picture,
}

impl Mark {
    /// The name in records.
    pub fn name(self) -> &'static str {
        match self {
            Mark::Record => "record",
            Mark::Picture => "picture",
        }
    }
}

/// A mark that a program left which wrote a photo's file after it was taken.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub enum Edit {
    /// Its record names a processing program.
    Program(String),
    /// It was written so many seconds after it was taken.
    WrittenLater(u64),
    /// It holds the data block of a picture editor.
    EditorBlock,
    /// It holds a history of edits (XMP).
    History,
}

/// A file that is written more than this after the picture was taken was saved again, seconds:
/// a phone works on a picture for some seconds.
const SAVED_LATER_S: i64 = 60;
/// No thumbnail is larger, bytes and pixels of a side.
const THUMBNAIL_BYTES: usize = 1 << 20;
const THUMBNAIL_PX: usize = 1024;

/// Looks for traces in a photo's file.
pub(super) fn traces(bytes: &[u8], kind: Kind, luma: &Luma) -> Traces {
    let mut reader = exif::Reader::new();
    reader.continue_on_error(true);
    let record = reader.read_from_container(&mut Cursor::new(bytes)).or_else(|e| e.distill_partial_result(|_| {})).ok();
    let mut traces = Traces::default();
    if let Some(record) = &record {
        traces.edits.extend(in_record(record));
        if says_rendered(record) {
            traces.rendered.push(Mark::Record);
        }
        traces.thumbnail_likeness = thumbnail(record).map(|small| likeness::likeness(&small, luma));
    }
    if made::is_marked(luma) {
        traces.rendered.push(Mark::Picture);
    }
    if kind == Kind::Jpeg {
        for (marker, segment) in segments(bytes) {
            traces.edits.extend(in_segment(marker, segment));
            if marker == 0xdb {
                traces.compression = Some(mixed(traces.compression.unwrap_or(0), segment));
                traces.steps = traces.steps.or_else(|| steps(segment));
            }
        }
    }
    traces.edits.sort();
    traces.edits.dedup();
    traces
}

/// Whether a record says that this program rendered the picture.
fn says_rendered(record: &Record) -> bool {
    let says = |tag: Tag, words: &str| {
        let field = record.get_field(tag, In::PRIMARY);
        field.is_some_and(|f| matches!(&f.value, Value::Ascii(parts) if parts.iter().any(|p| p == words.as_bytes())))
    };
    says(Tag::Software, SOFTWARE) || says(Tag::ImageDescription, DESCRIPTION)
}

/// Exif 2.32 and TIFF/EP: `ProcessingSoftware` is for who works on a picture
/// afterwards; `DateTime` is when the file was changed, `DateTimeOriginal` when
/// the picture was taken, both by the same clock.
fn in_record(record: &Record) -> Vec<Edit> {
    let mut found = Vec::new();
    let text = |tag: Tag| match &record.get_field(tag, In::PRIMARY)?.value {
        Value::Ascii(parts) => parts.first().map(|p| String::from_utf8_lossy(p).trim_matches(['\0', ' ']).to_owned()),
        _ => None,
    };
    const PROCESSING_SOFTWARE: Tag = Tag(exif::Context::Tiff, 0x000b);
    if let Some(name) = text(PROCESSING_SOFTWARE).filter(|n| !n.is_empty()) {
        let name: String = name.chars().filter(|c| !c.is_control()).take(60).collect();
        found.push(Edit::Program(name));
    }
    let time = |tag: Tag| text(tag).and_then(|t| local_time(&t));
    if let (Some(taken), Some(written)) = (time(Tag::DateTimeOriginal), time(Tag::DateTime)) {
        let later = (written - taken).whole_seconds();
        if later > SAVED_LATER_S {
            found.push(Edit::WrittenLater(later.unsigned_abs()));
        }
    }
    found
}

/// How the block of image resources of a picture editor begins (the APP13 resource of JPEG files).
const APP13_RESOURCE: &[u8] = b"Photoshop 3.0\0";
/// How names of XMP's own properties begin (ISO 16684-1).
const XMP_NAMESPACE: &[u8] = b"http://ns.adobe.com/";

/// Segments that cameras do not write: resources of picture editors (APP13), and
/// in XMP (ISO 16684-1) a history of what was done to the file.
fn in_segment(marker: u8, segment: &[u8]) -> Option<Edit> {
    let holds = |needle: &[u8]| memchr::memmem::find(segment, needle).is_some();
    match marker {
        0xed if segment.starts_with(APP13_RESOURCE) => Some(Edit::EditorBlock),
        0xe1 if segment.starts_with(XMP_NAMESPACE) && (holds(b"stEvt:action") || holds(b"xmpMM:History")) => {
            Some(Edit::History)
        }
        _ => None,
    }
}

/// Markers and bodies of a JPEG's segments before its picture data; what is cut
/// off is left out, for decoding tells that.
fn segments(bytes: &[u8]) -> Vec<(u8, &[u8])> {
    let mut found = Vec::new();
    let mut at = 2;
    while let Some(&[0xff, marker, high, low]) = bytes.get(at..at + 4) {
        let length = usize::from(u16::from_be_bytes([high, low]));
        let (0xc0..=0xfe, Some(body)) = (marker, bytes.get(at + 4..at + 2 + length)) else { break };
        if marker == 0xda {
            break;
        }
        found.push((marker, body));
        at += 2 + length;
    }
    found
}

/// FNV-1a, continued.
fn mixed(start: u64, bytes: &[u8]) -> u64 {
    bytes.iter().fold(start ^ 0xcbf2_9ce4_8422_2325, |h, b| (h ^ u64::from(*b)).wrapping_mul(0x0100_0000_01b3))
}

/// The thumbnail of the record's second directory, where it is a JPEG that can be decoded.
fn thumbnail(record: &Record) -> Option<Luma> {
    let number = |tag: Tag| record.get_field(tag, In::THUMBNAIL)?.value.get_uint(0).map(|n| n as usize);
    let (at, length) = (number(Tag::JPEGInterchangeFormat)?, number(Tag::JPEGInterchangeFormatLength)?);
    let bytes = record.buf().get(at..at.checked_add(length.min(THUMBNAIL_BYTES))?)?;
    let luma = jpeg::luma(bytes).ok()?;
    (luma.width().max(luma.height()) <= THUMBNAIL_PX).then_some(luma)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn file(segments: &[(u8, &[u8])]) -> Vec<u8> {
        let mut bytes = vec![0xff, 0xd8];
        for (marker, body) in segments {
            bytes.extend([0xff, *marker]);
            bytes.extend((body.len() as u16 + 2).to_be_bytes());
            bytes.extend(*body);
        }
        bytes
    }

    #[test]
    fn marks_of_editors_are_seen_and_others_are_not() {
        let luma = Luma::new(1, 1, vec![0]).unwrap();
        let history = [XMP_NAMESPACE, b"xap/1.0/\0<x stEvt:action=\"saved\"/>"].concat();
        let plain = [XMP_NAMESPACE, b"xap/1.0/\0<x Camera:gain=\"1\"/>"].concat();
        let edits = |segments: &[(u8, &[u8])]| traces(&file(segments), Kind::Jpeg, &luma).edits;
        assert_eq!(edits(&[(0xe1, &plain), (0xe2, b"ICC_PROFILE\0")]), Vec::new());
        assert_eq!(edits(&[(0xe1, &history)]), [Edit::History]);
        assert_eq!(edits(&[(0xed, APP13_RESOURCE)]), [Edit::EditorBlock]);
        // Cut off anywhere: no fault.
        let whole = file(&[(0xe1, &history), (0xed, APP13_RESOURCE)]);
        for end in 0..whole.len() {
            let _ = traces(&whole[..end], Kind::Jpeg, &luma);
        }
    }

    #[test]
    fn compression_tables_tell_files_apart() {
        let luma = Luma::new(1, 1, vec![0]).unwrap();
        let of = |table: &[u8]| traces(&file(&[(0xdb, table)]), Kind::Jpeg, &luma).compression;
        assert!(of(&[0, 1, 2]).is_some() && of(&[0, 1, 2]) == of(&[0, 1, 2]) && of(&[0, 1, 2]) != of(&[0, 1, 3]));
    }
}
