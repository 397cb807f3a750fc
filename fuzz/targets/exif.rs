//! Any bytes as a photo's own record: behind a JPEG's head, in a PNG's chunk and bare.

#![no_main]

use baywitness::photo::{self, Kind};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let Some((pick, record)) = bytes.split_first() else { return };
    let record = &record[..record.len().min(60_000)];
    let whole = match pick % 3 {
        // ITU-T T.81, B.1.1.3: an application segment with its length; EXIF 2.32, 4.5.4: its name.
        0 => {
            let length = (record.len() as u16 + 8).to_be_bytes();
            [b"\xff\xd8\xff\xe1", &length[..], b"Exif\0\0", record, b"\xff\xd9"].concat()
        }
        // ISO/IEC 15948 with its third edition's eXIf chunk; nothing here reads the check sum.
        1 => {
            let length = (record.len() as u32).to_be_bytes();
            let head = b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\0\x01\0\0\0\x01\x08\0\0\0\0\x3a\x7e\x9b\x55";
            [head, &length[..], b"eXIf", record, b"\0\0\0\0\0\0\0\0IEND\xae\x42\x60\x82"].concat()
        }
        _ => record.to_vec(),
    };
    for kind in [Kind::Jpeg, Kind::Png, Kind::Heic] {
        let exif = photo::exif(&whole, kind);
        assert!(exif.focal_length_mm.is_none_or(|f| f.is_finite() && f > 0.0));
        assert!(exif.make.is_none_or(|make| make.chars().count() <= 200));
    }
});
