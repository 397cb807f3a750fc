//! Whether a photo's file carries a C2PA manifest store, by where the format
//! keeps it (C2PA technical specification, "Embedding manifests into assets").

use crate::photo::Kind;

/// The box of a manifest store in files made of boxes (ISO/IEC 14496-12), by its UUID.
const UUID: [u8; 16] = [0xd8, 0xfe, 0xc3, 0xd6, 0x1b, 0x0e, 0x48, 0x3c, 0x92, 0x97, 0x58, 0x28, 0x87, 0x7e, 0xc4, 0x81];

/// Whether a manifest store is embedded in a photo's bytes; says nothing of its worth.
pub fn carries(bytes: &[u8], kind: Kind) -> bool {
    match kind {
        Kind::Jpeg => in_jpeg(bytes),
        Kind::Png => in_png(bytes),
        Kind::Heic => in_boxes(bytes),
    }
}

/// JUMBF in APP11 segments (ISO/IEC 18477-3: common identifier `JP`).
fn in_jpeg(bytes: &[u8]) -> bool {
    let mut at = 2;
    while let Some(&[0xff, marker, high, low]) = bytes.get(at..at + 4) {
        let length = usize::from(u16::from_be_bytes([high, low]));
        let Some(body) = bytes.get(at + 4..at + 2 + length) else { return false };
        match marker {
            0xeb if body.starts_with(b"JP") && body.get(12..16) == Some(b"jumb") => return true,
            0xda => return false,
            _ => at += 2 + length,
        }
    }
    false
}

/// A chunk `caBX`.
fn in_png(bytes: &[u8]) -> bool {
    let mut at = 8;
    while let Some(&[a, b, c, d, ref name @ ..]) = bytes.get(at..at + 8) {
        match name {
            b"caBX" => return true,
            b"IEND" => return false,
            _ => at = at.saturating_add(12 + u32::from_be_bytes([a, b, c, d]) as usize),
        }
    }
    false
}

/// A box `uuid` of the first level.
fn in_boxes(bytes: &[u8]) -> bool {
    let mut at = 0_usize;
    while let Some(&[a, b, c, d, ref name @ ..]) = bytes.get(at..at.saturating_add(8)) {
        let short = u64::from(u32::from_be_bytes([a, b, c, d]));
        let (head, size) = match short {
            1 => match bytes.get(at + 8..at + 16).and_then(|long| long.try_into().ok()) {
                Some(long) => (16, u64::from_be_bytes(long)),
                None => return false,
            },
            _ => (8, short),
        };
        if name == b"uuid" && bytes.get(at + head..at + head + 16) == Some(&UUID) {
            return true;
        }
        // A box of no length goes to the end of the file.
        if size < head as u64 {
            return false;
        }
        at = at.saturating_add(usize::try_from(size).unwrap_or(usize::MAX));
    }
    false
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_store_is_seen_where_each_format_keeps_it_and_nowhere_else() {
        let jumbf = [&b"JP\0\x01\0\0\0\x01\0\0\0\x40jumb"[..], &[0; 30]].concat();
        let segment =
            |marker: u8, body: &[u8]| [&[0xff, marker], &(body.len() as u16 + 2).to_be_bytes()[..], body].concat();
        let jpeg = |marker| [&[0xff, 0xd8][..], &segment(0xe1, b"Exif\0\0"), &segment(marker, &jumbf)].concat();
        assert!(carries(&jpeg(0xeb), Kind::Jpeg));
        assert!(!carries(&jpeg(0xe2), Kind::Jpeg));
        let chunk = |name: &[u8]| [&3_u32.to_be_bytes()[..], name, b"abc", &[0; 4]].concat();
        let png = |name: &[u8]| [&b"\x89PNG\r\n\x1a\n"[..], &chunk(b"IHDR"), &chunk(name), &chunk(b"IEND")].concat();
        assert!(carries(&png(b"caBX"), Kind::Png));
        assert!(!carries(&png(b"iTXt"), Kind::Png));
        let boxed = |name: &[u8], body: &[u8]| [&(body.len() as u32 + 8).to_be_bytes()[..], name, body].concat();
        let heic = |uuid: &[u8]| [boxed(b"ftyp", b"heic"), boxed(b"uuid", uuid)].concat();
        assert!(carries(&heic(&UUID), Kind::Heic));
        assert!(!carries(&heic(&[7; 16]), Kind::Heic));
        // Cut off anywhere, or of absurd lengths: no fault, and no loop.
        for (bytes, kind) in [(jpeg(0xeb), Kind::Jpeg), (png(b"caBX"), Kind::Png), (heic(&UUID), Kind::Heic)] {
            for end in 0..bytes.len() {
                let _ = carries(&bytes[..end], kind);
                let mut bytes = bytes.clone();
                bytes[end] = 0xff;
                let _ = carries(&bytes, kind);
                bytes[end] = 0;
                let _ = carries(&bytes, kind);
            }
        }
    }
}
