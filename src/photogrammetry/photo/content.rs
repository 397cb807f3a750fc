//! What a file is, by its first bytes.

/// Picture formats that this build decodes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// JPEG: ITU-T T.81, baseline or progressive.
    Jpeg,
    /// PNG: ISO/IEC 15948.
    Png,
    /// HEIC: ISO/IEC 23008-12, with the feature `heic`.
    Heic,
}

impl Kind {
    /// The format's name for people.
    pub fn name(self) -> &'static str {
        match self {
            Kind::Jpeg => "JPEG",
            Kind::Png => "PNG",
            Kind::Heic => "HEIC",
        }
    }
}

/// A file that is no JPEG and no PNG: what it is and what to do, as words of the message `doors-photo-foreign`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Foreign {
    pub(super) what: &'static str,
    pub(super) remedy: &'static str,
}

// Words of the message `doors-photo-foreign`.
const CONVERT: &str = "convert";
const HEIC: &str = "heic";
const STILL: &str = "still";
const OTHER: &str = "photo";

/// Recognises a file by its content.
pub(super) fn recognise(bytes: &[u8]) -> Result<Kind, Foreign> {
    if bytes.starts_with(b"\xff\xd8\xff") {
        return Ok(Kind::Jpeg);
    }
    if bytes.starts_with(b"\x89PNG\r\n\x1a\n") {
        return Ok(Kind::Png);
    }
    if cfg!(feature = "heic") && is_heic(bytes) {
        return Ok(Kind::Heic);
    }
    Err(foreign(bytes))
}

/// Whether the first bytes of a file, twelve at least, are those of a photo, also of a kind that this build does not decode.
pub fn is_picture(head: &[u8]) -> bool {
    recognise(head).is_ok() || iso_media(head).is_some()
}

fn foreign(bytes: &[u8]) -> Foreign {
    let (what, remedy) = if let Some(found) = iso_media(bytes) {
        found
    } else if let Some(&(_, what, remedy)) = SIGNATURES.iter().find(|(magic, ..)| bytes.starts_with(magic)) {
        (what, remedy)
    } else if bytes.starts_with(b"RIFF") && bytes.get(8..12) == Some(b"WEBP") {
        ("webp", CONVERT)
    } else if is_text(bytes) {
        ("text", OTHER)
    } else {
        ("other", OTHER)
    };
    Foreign { what, remedy }
}

/// First bytes, what begins so, and the remedy.
const SIGNATURES: [(&[u8], &str, &str); 16] = [
    (b"II*\0", "tiff", CONVERT),
    (b"MM\0*", "tiff", CONVERT),
    (b"GIF8", "gif", STILL),
    (b"BM", "bmp", CONVERT),
    (b"\xff\x0a", "jxl", CONVERT),
    (b"\0\0\0\x0cJXL ", "jxl", CONVERT),
    (b"\0\0\0\x0cjP  ", "jp2", CONVERT),
    (b"\xff\xd8", "jpeg", "copy"),
    (b"\x89PNG", "png", "binary"),
    (b"%PDF", "pdf", OTHER),
    (b"PK\x03\x04", "zip", OTHER),
    (b"\x1f\x8b", "gzip", OTHER),
    (b"%!PS", "ps", OTHER),
    (b"qoif", "qoi", CONVERT),
    (b"P5", "pgm", CONVERT),
    (b"P6", "ppm", CONVERT),
];

/// Files of the ISO base media family (ISO/IEC 14496-12): `ftyp` and a brand.
fn iso_media(bytes: &[u8]) -> Option<(&'static str, &'static str)> {
    if bytes.get(4..8) != Some(b"ftyp") {
        return None;
    }
    Some(match bytes.get(8..12) {
        Some(b"avif" | b"avis") => ("avif", CONVERT),
        _ if is_heic(bytes) => ("heic", HEIC),
        Some(b"crx ") => ("raw", CONVERT),
        _ => ("video", STILL),
    })
}

/// Whether the file's own brand or one that it is compatible with is HEIC
/// (ISO/IEC 23008-12, annex B.4).
fn is_heic(bytes: &[u8]) -> bool {
    let length = bytes.first_chunk().map_or(0, |b: &[u8; 4]| u32::from_be_bytes(*b) as usize);
    let brands = bytes.get(8..length.min(bytes.len()).min(256)).unwrap_or_default();
    bytes.get(4..8) == Some(b"ftyp")
        && brands.chunks_exact(4).any(|brand| matches!(brand, b"heic" | b"heix" | b"heim" | b"heis"))
}

fn is_text(bytes: &[u8]) -> bool {
    let head = &bytes[..bytes.len().min(512)];
    let text = match std::str::from_utf8(head) {
        Ok(text) => text,
        // A letter may be cut in two by the limit.
        Err(e) if e.error_len().is_none() => std::str::from_utf8(&head[..e.valid_up_to()]).unwrap_or_default(),
        Err(_) => return false,
    };
    !text.is_empty() && text.chars().all(|c| !c.is_control() || matches!(c, '\n' | '\r' | '\t' | '\u{feff}'))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_what_a_file_is() {
        // Signatures from the formats' own specifications (TIFF 6.0, RFC 9649,
        // GIF89a, ISO/IEC 14496-12 and 23008-12, ISO 32000).
        let cases: [(&[u8], &str); 10] = [
            (b"\0\0\0\x18ftypavis\0\0\0\0", "avif"),
            (b"\0\0\0\x18ftypavif\0\0\0\0", "avif"),
            (b"\0\0\0\x18ftypmp42\0\0\0\0", "video"),
            (b"RIFF\0\0\0\0WEBPVP8 ", "webp"),
            (b"II*\0\x08\0\0\0", "tiff"),
            (b"GIF89a", "gif"),
            (b"BM\0\0", "bmp"),
            (b"%PDF-1.7", "pdf"),
            ("grüße\n".as_bytes(), "text"),
            (b"\0\x01\x02\x03", "other"),
        ];
        for (bytes, want) in cases {
            let Foreign { what, .. } = recognise(bytes).unwrap_err();
            assert_eq!(what, want);
        }
        assert_eq!(recognise(b"\xff\xd8\xff\xe1"), Ok(Kind::Jpeg));
        assert_eq!(recognise(b"\x89PNG\r\n\x1a\n"), Ok(Kind::Png));
    }
}
