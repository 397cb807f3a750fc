//! The photo's own record: a small TIFF structure (Exif 2.32, JEITA CP-3451).

use crate::rendered::{DESCRIPTION, SOFTWARE};

/// What a photo says about itself.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Record {
    /// Camera maker.
    pub(crate) make: String,
    /// Camera model.
    pub(crate) model: String,
    /// Stored grid against the upright picture, 1 to 8.
    pub(crate) orientation: u16,
    /// Local time, `YYYY:MM:DD HH:MM:SS`.
    pub(crate) taken: String,
    /// Offset from UTC, `+HH:MM`.
    pub(crate) offset: Option<String>,
    /// Whether it says that it was rendered.
    pub(crate) rendered: bool,
    /// A program that processed the picture.
    pub(crate) processing_software: Option<String>,
    /// A small JPEG of the picture; empty: none.
    pub(crate) thumbnail: Vec<u8>,
    /// Focal length, mm.
    pub(crate) focal_mm: f64,
    /// Focal length for 35 mm film, mm.
    pub(crate) focal_35mm: u16,
    /// Digital zoom; one is none.
    pub(crate) digital_zoom: f64,
    /// Width and height of the stored grid.
    pub(crate) size_px: [u32; 2],
}

enum Value {
    Ascii(String),
    Short(u16),
    Long(u32),
    Rational(u32, u32),
    Undefined([u8; 4]),
}

impl Value {
    fn kind(&self) -> u16 {
        match self {
            Value::Ascii(_) => 2,
            Value::Short(_) => 3,
            Value::Long(_) => 4,
            Value::Rational(..) => 5,
            Value::Undefined(_) => 7,
        }
    }

    fn count(&self) -> u32 {
        match self {
            Value::Ascii(text) => text.len() as u32 + 1,
            Value::Undefined(bytes) => bytes.len() as u32,
            _ => 1,
        }
    }

    fn bytes(&self) -> Vec<u8> {
        match self {
            Value::Ascii(text) => text.bytes().chain([0]).collect(),
            Value::Short(v) => v.to_le_bytes().to_vec(),
            Value::Long(v) => v.to_le_bytes().to_vec(),
            Value::Rational(n, d) => n.to_le_bytes().into_iter().chain(d.to_le_bytes()).collect(),
            Value::Undefined(bytes) => bytes.to_vec(),
        }
    }
}

impl Record {
    /// The TIFF bytes, without the `Exif` mark of the JPEG segment.
    pub(crate) fn tiff(&self) -> Vec<u8> {
        let mut first = Vec::new();
        if let Some(name) = &self.processing_software {
            first.push((0x000B, Value::Ascii(name.clone())));
        }
        let [description, software] = mark();
        first.extend(self.rendered.then_some(description));
        first.extend([
            (0x010F, Value::Ascii(self.make.clone())),
            (0x0110, Value::Ascii(self.model.clone())),
            (0x0112, Value::Short(self.orientation)),
        ]);
        first.extend(self.rendered.then_some(software));
        first.push((0x8769, Value::Long(0)));
        let own_at = HEADER + directory(&first, HEADER, 0).len();
        if let Some(last) = first.last_mut() {
            last.1 = Value::Long(own_at as u32);
        }
        let own = directory(&self.own(), own_at, 0);
        let second_at = if self.thumbnail.is_empty() { 0 } else { own_at + own.len() };
        let mut bytes = b"II*\0\x08\0\0\0".to_vec();
        bytes.extend(directory(&first, HEADER, second_at));
        bytes.extend(own);
        if second_at > 0 {
            bytes.extend(self.second(second_at));
        }
        bytes
    }

    /// The TIFF bytes of a record that says nothing but that the picture was rendered.
    pub(crate) fn of_mark_alone() -> Vec<u8> {
        [b"II*\0\x08\0\0\0".to_vec(), directory(&mark(), HEADER, 0)].concat()
    }

    /// The directory of the thumbnail and the thumbnail behind it.
    fn second(&self, at: usize) -> Vec<u8> {
        let entries = |picture_at: usize| {
            [
                (0x0103, Value::Short(6)),
                (0x0201, Value::Long(picture_at as u32)),
                (0x0202, Value::Long(self.thumbnail.len() as u32)),
            ]
        };
        let picture_at = at + directory(&entries(0), at, 0).len();
        let mut bytes = directory(&entries(picture_at), at, 0);
        bytes.extend(&self.thumbnail);
        bytes
    }

    fn own(&self) -> Vec<(u16, Value)> {
        let thousandths = |v: f64| Value::Rational((v * 1000.0).round() as u32, 1000);
        let mut own = vec![(0x9000, Value::Undefined(*b"0232")), (0x9003, Value::Ascii(self.taken.clone()))];
        own.extend(self.offset.iter().map(|offset| (0x9011, Value::Ascii(offset.clone()))));
        own.extend([
            (0x920A, thousandths(self.focal_mm)),
            (0xA002, Value::Long(self.size_px[0])),
            (0xA003, Value::Long(self.size_px[1])),
            (0xA404, thousandths(self.digital_zoom)),
            (0xA405, Value::Short(self.focal_35mm)),
        ]);
        own
    }
}

/// Bytes before the first directory.
const HEADER: usize = 8;

/// What says that a picture was rendered, by ascending tags.
fn mark() -> [(u16, Value); 2] {
    [(0x010E, Value::Ascii(DESCRIPTION.to_owned())), (0x0131, Value::Ascii(SOFTWARE.to_owned()))]
}

/// An image file directory that begins at an offset, with its values behind it;
/// `next` is where the next one begins, 0: there is none.
fn directory(entries: &[(u16, Value)], at: usize, next: usize) -> Vec<u8> {
    let mut table = (entries.len() as u16).to_le_bytes().to_vec();
    let mut values: Vec<u8> = Vec::new();
    let values_at = at + 2 + 12 * entries.len() + 4;
    for (tag, value) in entries {
        table.extend(tag.to_le_bytes());
        table.extend(value.kind().to_le_bytes());
        table.extend(value.count().to_le_bytes());
        let mut bytes = value.bytes();
        if bytes.len() <= 4 {
            bytes.resize(4, 0);
            table.extend(bytes);
        } else {
            table.extend(((values_at + values.len()) as u32).to_le_bytes());
            bytes.resize(bytes.len().next_multiple_of(2), 0);
            values.extend(bytes);
        }
    }
    table.extend((next as u32).to_le_bytes());
    table.extend(values);
    table
}

#[cfg(test)]
mod tests {
    use exif::{In, Reader, Tag, Value as Read};

    use super::*;

    #[test]
    fn kamadak_exif_reads_back_what_was_written() {
        let record = Record {
            make: "Example".to_owned(),
            model: "Phone".to_owned(),
            orientation: 6,
            taken: "2026:01:02 03:04:05".to_owned(),
            offset: Some("+01:00".to_owned()),
            rendered: true,
            processing_software: Some("Invented Darkroom 1".to_owned()),
            thumbnail: vec![0xff, 0xd8, 0xff, 0xd9],
            focal_mm: 5.432,
            focal_35mm: 26,
            digital_zoom: 1.5,
            size_px: [4032, 3024],
        };
        let read = Reader::new().read_raw(record.tiff()).unwrap();
        let text = |tag| read.get_field(tag, In::PRIMARY).unwrap().display_value().to_string();
        let number = |tag| match &read.get_field(tag, In::PRIMARY).unwrap().value {
            Read::Rational(r) => r[0].to_f64(),
            other => f64::from(other.get_uint(0).unwrap()),
        };
        assert_eq!((text(Tag::Make), text(Tag::Model)), ("\"Example\"".to_owned(), "\"Phone\"".to_owned()));
        assert_eq!(text(Tag::Software), format!("\"{SOFTWARE}\""));
        let alone = Reader::new().read_raw(Record::of_mark_alone()).unwrap();
        let description = alone.get_field(Tag::ImageDescription, In::PRIMARY).unwrap().display_value().to_string();
        assert_eq!((description, alone.fields().count()), (format!("\"{DESCRIPTION}\""), 2));
        assert_eq!(text(Tag::DateTimeOriginal), "2026-01-02 03:04:05");
        assert_eq!(text(Tag(exif::Context::Tiff, 0x000b)), "\"Invented Darkroom 1\"");
        let small = |tag| read.get_field(tag, In::THUMBNAIL).unwrap().value.get_uint(0).unwrap() as usize;
        let (at, length) = (small(Tag::JPEGInterchangeFormat), small(Tag::JPEGInterchangeFormatLength));
        assert_eq!(read.buf()[at..at + length], record.thumbnail);
        assert_eq!(text(Tag::OffsetTimeOriginal), "\"+01:00\"");
        assert!((number(Tag::FocalLength) - 5.432).abs() < 1e-9);
        assert!((number(Tag::DigitalZoomRatio) - 1.5).abs() < 1e-9);
        assert!((number(Tag::FocalLengthIn35mmFilm) - 26.0).abs() < 1e-9);
        assert!((number(Tag::Orientation) - 6.0).abs() < 1e-9);
        assert!((number(Tag::PixelXDimension) - 4032.0).abs() < 1e-9);
        assert!((number(Tag::PixelYDimension) - 3024.0).abs() < 1e-9);
    }
}
