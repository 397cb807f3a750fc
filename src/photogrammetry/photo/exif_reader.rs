//! Reads a photo's EXIF record, as far as it is readable.

use std::io::Cursor;

use exif::{Field, In, Rational, Tag, Value};
use time::OffsetDateTime;

use super::exif_time::moment;
use super::{Exif, Orientation};

/// The longest text that is taken over from a record.
const TEXT_MAX: usize = 200;

/// The EXIF values of a JPEG or PNG; a missing or broken record gives none,
/// and a broken field only itself: phones and editors cut records short.
pub(super) fn exif(bytes: &[u8]) -> Exif {
    let mut reader = exif::Reader::new();
    reader.continue_on_error(true);
    let found =
        reader.read_from_container(&mut Cursor::new(bytes)).or_else(|e| e.distill_partial_result(|_ignored| {}));
    found.map(|record| values(&Record(&record))).unwrap_or_default()
}

fn values(record: &Record) -> Exif {
    let local = [
        (Tag::DateTimeOriginal, Tag::OffsetTimeOriginal),
        (Tag::DateTimeDigitized, Tag::OffsetTimeDigitized),
        (Tag::DateTime, Tag::OffsetTime),
    ]
    .into_iter()
    .find_map(|(time, offset)| Some((record.text(time)?, record.text(offset))));
    let taken = local.as_ref().and_then(|(time, offset)| moment(time, offset.as_deref()?));
    Exif {
        make: record.text(Tag::Make),
        model: record.text(Tag::Model),
        focal_length_mm: record.positive(Tag::FocalLength),
        focal_length_35mm: record.positive(Tag::FocalLengthIn35mmFilm),
        digital_zoom: record.positive(Tag::DigitalZoomRatio),
        orientation: record.uint(Tag::Orientation).and_then(Orientation::from_tag),
        taken,
        taken_local: local.filter(|_| taken.is_none()).map(|(time, _)| time),
        satellites: record.satellites(),
        pixel_size: record
            .uint(Tag::PixelXDimension)
            .zip(record.uint(Tag::PixelYDimension))
            .filter(|&(width, height)| width > 0 && height > 0)
            .map(|(width, height)| [width, height]),
        software: record.text(Tag::Software),
        private: record.private(),
    }
}

/// Kinds of private fields, and what tells that one of a kind is there.
const PRIVATE: [(&str, &[Tag]); 4] = [
    ("position (GPS)", &[Tag::GPSLatitude, Tag::GPSLongitude, Tag::GPSDestLatitude, Tag::GPSAreaInformation]),
    ("serial numbers", &[Tag::BodySerialNumber, Tag::LensSerialNumber, Tag::ImageUniqueID]),
    ("owner or author", &[Tag::CameraOwnerName, Tag::Artist, Tag::Copyright]),
    ("the maker's own notes", &[Tag::MakerNote, Tag::UserComment]),
];

/// Private fields of a photo's record by their Exif names, with their values in
/// words; of the maker's notes, which nobody else can read, only their length.
pub fn private_values(bytes: &[u8]) -> Vec<(String, String)> {
    let mut reader = exif::Reader::new();
    reader.continue_on_error(true);
    let found =
        reader.read_from_container(&mut Cursor::new(bytes)).or_else(|e| e.distill_partial_result(|_ignored| {}));
    let Ok(record) = found else { return Vec::new() };
    let named = |tag: Tag| PRIVATE.iter().any(|(_, tags)| tags.contains(&tag));
    let private = |field: &&Field| {
        field.ifd_num == In::PRIMARY && (field.tag.context() == exif::Context::Gps || named(field.tag))
    };
    let shown = |field: &Field| match &field.value {
        Value::Undefined(bytes, _) if field.tag == Tag::MakerNote => format!("{} bytes", bytes.len()),
        _ => field
            .display_value()
            .with_unit(&record)
            .to_string()
            .chars()
            .filter(|c| !c.is_control())
            .take(TEXT_MAX)
            .collect(),
    };
    // North or west stands beside the figure that it belongs to.
    let letter = |field: &&Field| field.tag.to_string().ends_with("Ref");
    record.fields().filter(private).filter(|f| !letter(f)).map(|field| (field.tag.to_string(), shown(field))).collect()
}

struct Record<'a>(&'a exif::Exif);

impl Record<'_> {
    fn value(&self, tag: Tag) -> Option<&Value> {
        self.0.get_field(tag, In::PRIMARY).map(|field: &Field| &field.value)
    }

    fn uint(&self, tag: Tag) -> Option<u32> {
        self.value(tag)?.get_uint(0)
    }

    /// Kinds of private fields that are there.
    fn private(&self) -> Vec<&'static str> {
        let has = |tags: &[Tag]| tags.iter().any(|tag| self.value(*tag).is_some());
        PRIVATE.iter().filter(|(_, tags)| has(tags)).map(|(words, _)| *words).collect()
    }

    /// A number above zero; a rational with a zero below (EXIF's "unknown" or
    /// "infinity", and also "zoom not used") is none.
    fn positive(&self, tag: Tag) -> Option<f64> {
        let number = match self.value(tag)? {
            Value::Rational(v) => v.first().filter(|r| r.denom != 0)?.to_f64(),
            Value::SRational(v) => v.first().filter(|r| r.denom != 0)?.to_f64(),
            Value::Float(v) => f64::from(*v.first()?),
            Value::Double(v) => *v.first()?,
            other => f64::from(other.get_uint(0)?),
        };
        (number.is_finite() && number > 0.0).then_some(number)
    }

    /// Date and time of the satellites, to the second.
    fn satellites(&self) -> Option<OffsetDateTime> {
        let Value::Rational(time) = self.value(Tag::GPSTimeStamp)? else { return None };
        let whole = |part: &Rational| part.num.checked_div(part.denom);
        let [hour, minute, second] = time.as_slice() else { return None };
        let (hour, minute, second) = (whole(hour)?, whole(minute)?, whole(second)?);
        moment(&format!("{} {hour}:{minute}:{second}", self.text(Tag::GPSDateStamp)?), "Z")
    }

    /// A text without its padding; what is no text or has no letter is none.
    fn text(&self, tag: Tag) -> Option<String> {
        let Value::Ascii(parts) = self.value(tag)? else { return None };
        let raw = parts.first()?;
        let end = raw.iter().position(|&b| b == 0).unwrap_or(raw.len());
        let text: String =
            String::from_utf8_lossy(&raw[..end]).chars().filter(|c| !c.is_control()).take(TEXT_MAX).collect();
        let text = text.trim();
        text.chars().any(char::is_alphanumeric).then(|| text.to_owned())
    }
}
