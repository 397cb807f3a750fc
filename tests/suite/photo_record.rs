//! EXIF records, orientation and the upright copies.

#![allow(clippy::unwrap_used, reason = "a test may stop where its own helper fails")]

use std::io::Cursor;

use baywitness::photo::{self, Exif, Orientation};
use exif::{Field, In, Rational, Tag, Value, experimental::Writer};
use jpeg_encoder::{ColorType, Encoder};
use time::macros::datetime;

fn text(tag: Tag, text: &str) -> Field {
    field(tag, Value::Ascii(vec![text.as_bytes().to_vec()]))
}

fn field(tag: Tag, value: Value) -> Field {
    Field { tag, ifd_num: In::PRIMARY, value }
}

fn ratio(tag: Tag, num: u32, denom: u32) -> Field {
    field(tag, Value::Rational(vec![Rational { num, denom }]))
}

/// The TIFF structure of an EXIF record, little-endian.
fn tiff(fields: &[Field]) -> Vec<u8> {
    let mut writer = Writer::new();
    fields.iter().for_each(|f| writer.push_field(f));
    let mut out = Cursor::new(Vec::new());
    writer.write(&mut out, true).unwrap();
    out.into_inner()
}

/// A picture that is dark but for a white square in its stored upper left.
fn picture(width: usize, height: usize, tiff: &[u8]) -> Vec<u8> {
    let pixels: Vec<u8> =
        (0..height).flat_map(|v| (0..width).map(move |u| if u < 8 && v < 8 { 255 } else { 20 })).collect();
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, 95);
    encoder.add_app_segment(1, [b"Exif\0\0", tiff].concat()).unwrap();
    encoder.encode(&pixels, width as u16, height as u16, ColorType::Luma).unwrap();
    bytes
}

fn record(fields: &[Field]) -> Exif {
    photo::decode(&picture(32, 16, &tiff(fields)), "a.jpg").unwrap().exif
}

#[test]
fn a_full_record_is_read() {
    let exif = record(&[
        text(Tag::Make, "Example"),
        text(Tag::Model, "Phone 12M  "),
        text(Tag::Software, "1.0"),
        ratio(Tag::FocalLength, 596, 100),
        field(Tag::FocalLengthIn35mmFilm, Value::Short(vec![27])),
        ratio(Tag::DigitalZoomRatio, 3, 2),
        field(Tag::Orientation, Value::Short(vec![6])),
        text(Tag::DateTimeOriginal, "2026:11:25 10:30:00"),
        text(Tag::OffsetTimeOriginal, "+01:00"),
        field(Tag::PixelXDimension, Value::Long(vec![4032])),
        field(Tag::PixelYDimension, Value::Short(vec![3024])),
        text(Tag::BodySerialNumber, "X-1"),
        text(Tag::Artist, "somebody"),
        text(Tag::GPSDateStamp, "2026:11:25"),
        field(
            Tag::GPSTimeStamp,
            Value::Rational([(9, 1), (29, 1), (5850, 100)].map(|(num, denom)| Rational { num, denom }).into()),
        ),
    ]);
    let wanted = Exif {
        make: Some("Example".into()),
        model: Some("Phone 12M".into()),
        focal_length_mm: Some(5.96),
        focal_length_35mm: Some(27.0),
        digital_zoom: Some(1.5),
        orientation: Some(Orientation(6)),
        taken: Some(datetime!(2026-11-25 10:30 +1)),
        taken_local: None,
        satellites: Some(datetime!(2026-11-25 9:29:58 UTC)),
        pixel_size: Some([4032, 3024]),
        software: Some("1.0".into()),
        private: vec!["serial numbers", "owner or author"],
    };
    assert_eq!(exif, wanted);
}

#[test]
fn retake_values_are_absent_and_do_not_hide_the_others() {
    let exif = record(&[
        text(Tag::Make, "Example"),
        text(Tag::Model, "\u{1}\u{2} "),
        ratio(Tag::FocalLength, 596, 0),
        field(Tag::FocalLengthIn35mmFilm, Value::Short(vec![0])),
        ratio(Tag::DigitalZoomRatio, 0, 1),
        field(Tag::Orientation, Value::Short(vec![9])),
        text(Tag::DateTimeOriginal, "2026:11:25 10:30:00"),
        text(Tag::Software, &"long".repeat(500)),
    ]);
    assert_eq!(exif.make.as_deref(), Some("Example"));
    assert_eq!((exif.model, exif.focal_length_mm, exif.focal_length_35mm), (None, None, None));
    assert_eq!((exif.digital_zoom, exif.orientation), (None, None));
    assert_eq!((exif.taken, exif.taken_local.as_deref()), (None, Some("2026:11:25 10:30:00")));
    assert!(exif.software.unwrap().len() <= 200);
}

#[test]
fn a_record_that_was_cut_short_gives_what_it_still_holds() {
    let whole = tiff(&[
        text(Tag::Make, "Example"),
        text(Tag::Model, "Phone 12M"),
        text(Tag::DateTimeOriginal, "2026:11:25 10:30:00"),
    ]);
    let full = photo::decode(&picture(32, 16, &whole), "a").unwrap().exif;
    let mut partial = 0;
    for end in 0..whole.len() {
        let exif = photo::decode(&picture(32, 16, &whole[..end]), "a").unwrap().exif;
        assert!(exif.make.is_none() || exif.make == full.make);
        partial += usize::from(exif.make.is_some() && exif != full);
    }
    assert!(partial > 0, "continue on error");
}

#[test]
fn a_preview_is_upright_and_maps_stored_positions() {
    // Where the stored upper left corner is seen (EXIF 2.32, Orientation):
    // [left, top] of the upright picture.
    let seen = [[1, 1], [0, 1], [0, 0], [1, 0], [1, 1], [0, 1], [0, 0], [1, 0]];
    for (tag, [left, top]) in (1..=8).zip(seen) {
        let bytes = picture(64, 32, &tiff(&[field(Tag::Orientation, Value::Short(vec![tag]))]));
        let full = photo::decode(&bytes, "a.jpg").unwrap();
        assert_eq!((full.width, full.height, full.luma.at(2, 2) > 200), (64, 32, true), "stored grid, tag {tag}");
        for max_side in [1000, 16] {
            let preview = photo::preview(&bytes, "a.jpg", max_side).unwrap();
            let (width, height) = preview.picture.dimensions();
            let portrait = tag >= 5;
            let long = max_side.min(64) as u32;
            assert_eq!((width, height), if portrait { (long / 2, long) } else { (long, long / 2) }, "tag {tag}");
            let [x, y] = preview.from_stored([1.5, 1.5]);
            assert!(preview.picture.get_pixel(x.round() as u32, y.round() as u32).0[0] > 200, "tag {tag}: {x} {y}");
            assert_eq!([x < f64::from(width) / 2.0, y < f64::from(height) / 2.0], [left == 1, top == 1], "tag {tag}");
        }
    }
}

#[test]
fn private_values_are_for_who_asks() {
    let fields = [
        text(Tag::Make, "Example"),
        text(Tag::BodySerialNumber, "X-1"),
        text(Tag::GPSLatitudeRef, "N"),
        field(
            Tag::GPSLatitude,
            Value::Rational([(52, 1), (31, 1), (12, 1)].map(|(num, denom)| Rational { num, denom }).to_vec()),
        ),
        field(Tag::MakerNote, Value::Undefined(vec![7; 40], 0)),
    ];
    let bytes = picture(32, 16, &tiff(&fields));
    let values = photo::private_values(&bytes);
    let of = |name: &str| values.iter().find(|(n, _)| n == name).map(|(_, v)| v.as_str());
    assert_eq!(of("GPSLatitude"), Some("52 deg 31 min 12 sec N"));
    assert_eq!((of("BodySerialNumber"), of("MakerNote"), of("Make")), (Some("\"X-1\""), Some("40 bytes"), None));
    // Nothing but their kinds is in what everybody gets.
    let exif = format!("{:?}", photo::decode(&bytes, "a.jpg").unwrap().exif);
    assert!(exif.contains("position (GPS)") && !exif.contains("52") && !exif.contains("X-1"), "{exif}");
    assert_eq!(photo::private_values(b"no photo"), []);
}
