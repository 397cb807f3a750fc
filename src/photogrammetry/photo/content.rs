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

/// A file that is no JPEG and no PNG: what it is and what to do.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Foreign {
    pub(super) what: &'static str,
    pub(super) remedy: &'static str,
}

const CONVERT: &str = "convert it to JPEG at full size, keeping its EXIF";
const HEIC: &str = "set the phone's camera to \"most compatible\" (JPEG) or convert the picture to JPEG at full size, \
                    keeping its EXIF";
const STILL: &str = "give a still photo, JPEG or PNG";
const OTHER: &str = "give a photo, JPEG or PNG";

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

fn foreign(bytes: &[u8]) -> Foreign {
    let (what, remedy) = if let Some(found) = iso_media(bytes) {
        found
    } else if let Some(&(_, what, remedy)) = SIGNATURES.iter().find(|(magic, ..)| bytes.starts_with(magic)) {
        (what, remedy)
    } else if bytes.starts_with(b"RIFF") && bytes.get(8..12) == Some(b"WEBP") {
        ("a WebP picture", CONVERT)
    } else if is_text(bytes) {
        ("a text file", OTHER)
    } else {
        ("of no known picture format", OTHER)
    };
    Foreign { what, remedy }
}

/// First bytes, what begins so, and the remedy.
const SIGNATURES: [(&[u8], &str, &str); 16] = [
    (b"II*\0", "a TIFF or raw picture", CONVERT),
    (b"MM\0*", "a TIFF or raw picture", CONVERT),
    (b"GIF8", "a GIF picture", STILL),
    (b"BM", "a BMP picture", CONVERT),
    (b"\xff\x0a", "a JPEG XL picture", CONVERT),
    (b"\0\0\0\x0cJXL ", "a JPEG XL picture", CONVERT),
    (b"\0\0\0\x0cjP  ", "a JPEG 2000 picture", CONVERT),
    (b"\xff\xd8", "a JPEG picture whose second marker is damaged", "copy the photo from the camera again"),
    (b"\x89PNG", "a PNG picture that was altered as if it were text", "copy the photo in binary mode again"),
    (b"%PDF", "a PDF document", OTHER),
    (b"PK\x03\x04", "a ZIP archive or office document", OTHER),
    (b"\x1f\x8b", "a gzip archive", OTHER),
    (b"%!PS", "a PostScript document", OTHER),
    (b"qoif", "a QOI picture", CONVERT),
    (b"P5", "a PGM picture", CONVERT),
    (b"P6", "a PPM picture", CONVERT),
];

/// Files of the ISO base media family (ISO/IEC 14496-12): `ftyp` and a brand.
fn iso_media(bytes: &[u8]) -> Option<(&'static str, &'static str)> {
    if bytes.get(4..8) != Some(b"ftyp") {
        return None;
    }
    Some(match bytes.get(8..12) {
        Some(b"avif" | b"avis") => ("an AVIF picture", CONVERT),
        _ if is_heic(bytes) => ("a HEIC picture, which this build does not decode", HEIC),
        Some(b"crx ") => ("a raw picture", CONVERT),
        _ => ("a video", STILL),
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
            (b"\0\0\0\x18ftypavis\0\0\0\0", "an AVIF picture"),
            (b"\0\0\0\x18ftypavif\0\0\0\0", "an AVIF picture"),
            (b"\0\0\0\x18ftypmp42\0\0\0\0", "a video"),
            (b"RIFF\0\0\0\0WEBPVP8 ", "a WebP picture"),
            (b"II*\0\x08\0\0\0", "a TIFF"),
            (b"GIF89a", "a GIF picture"),
            (b"BM\0\0", "a BMP picture"),
            (b"%PDF-1.7", "a PDF document"),
            ("grüße\n".as_bytes(), "a text file"),
            (b"\0\x01\x02\x03", "of no known picture format"),
        ];
        for (bytes, want) in cases {
            let Foreign { what, .. } = recognise(bytes).unwrap_err();
            assert!(what.starts_with(want), "{what} for {want}");
        }
        assert_eq!(recognise(b"\xff\xd8\xff\xe1"), Ok(Kind::Jpeg));
        assert_eq!(recognise(b"\x89PNG\r\n\x1a\n"), Ok(Kind::Png));
    }
}
