//! One photo from a file or from bytes.

use std::{fs::File, io::Read, path::Path};

use sha2::{Digest, Sha256};

#[cfg(feature = "heic")]
use super::heic;
use super::limits::MAX_BYTES;
use super::{Error, Exif, Kind, Luma, Traces, content, exif_reader, jpeg, png_rows, traces};

/// A photo, decoded.
#[derive(Debug, Clone, PartialEq)]
pub struct Photo {
    /// Display-referred luma (ITU-R BT.601 weights) on the stored grid.
    pub luma: Luma,
    /// What the photo's own record says.
    pub exif: Exif,
    /// What tells that it is no longer as the camera wrote it.
    pub traces: Traces,
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
    /// What the file is, whatever its name says.
    pub kind: Kind,
    /// Stored pixels in a row.
    pub width: usize,
    /// Stored rows.
    pub height: usize,
}

/// Reads and decodes one photo.
///
/// # Errors
/// Where the file cannot be read, is no picture that is decoded, is cut off or damaged,
/// or states more than [`MAX_PIXELS`](super::MAX_PIXELS).
pub fn read(path: &Path) -> Result<Photo, Error> {
    let name = path.display().to_string();
    decode(&read_bytes(path)?, &name)
}

/// Decodes one photo from its file's bytes; `name` is for messages.
///
/// # Errors
/// As [`read`].
pub fn decode(bytes: &[u8], name: &str) -> Result<Photo, Error> {
    let kind = recognise(bytes, name)?;
    let luma = match kind {
        Kind::Jpeg => jpeg::luma(bytes),
        Kind::Png => png_rows::luma(bytes),
        #[cfg(feature = "heic")]
        Kind::Heic => heic::luma(bytes),
        #[cfg(not(feature = "heic"))]
        Kind::Heic => Err(super::error::Fault::Unsupported(crate::words::phrase!("doors-variant-heic"))),
    }
    .map_err(|fault| fault.of(name))?;
    let (width, height) = (luma.width(), luma.height());
    let traces = traces::traces(bytes, kind, &luma);
    Ok(Photo { luma, exif: exif(bytes, kind), traces, sha256: sha256(bytes), kind, width, height })
}

/// The photo's record, as far as these bytes hold it; a HEIC file's container
/// says how to turn it.
pub fn exif(bytes: &[u8], kind: Kind) -> Exif {
    let exif = exif_reader::exif(bytes);
    match kind {
        #[cfg(feature = "heic")]
        Kind::Heic => Exif { orientation: heic::orientation(bytes), ..exif },
        _ => exif,
    }
}

/// The file's format, or what it is instead. The first 4096 bytes are enough.
///
/// # Errors
/// Empty, or of a format that is not decoded: says what it is.
pub fn recognise(bytes: &[u8], name: &str) -> Result<Kind, Error> {
    if bytes.is_empty() {
        return Err(Error::Empty { name: name.to_owned() });
    }
    content::recognise(bytes).map_err(|content::Foreign { what, remedy }| Error::Foreign {
        name: name.to_owned(),
        what,
        remedy,
    })
}

/// The bytes of a photo's file.
///
/// # Errors
/// Where it cannot be read or has more than [`MAX_BYTES`].
pub fn read_bytes(path: &Path) -> Result<Vec<u8>, Error> {
    let name = path.display().to_string();
    let open = |source| Error::Open { name: name.clone(), source };
    // A pipe or a device could block for ever where it is opened.
    if !path.metadata().map_err(open)?.is_file() {
        return Err(Error::NoFile { name });
    }
    let file = File::open(path).map_err(open)?;
    let stated = file.metadata().map_err(open)?.len();
    let mut bytes = Vec::new();
    if stated <= MAX_BYTES {
        bytes.reserve(stated as usize + 1);
        file.take(MAX_BYTES + 1).read_to_end(&mut bytes).map_err(open)?;
    }
    let count = stated.max(bytes.len() as u64);
    if count > MAX_BYTES {
        return Err(Error::TooManyBytes { name, bytes: count, max: MAX_BYTES });
    }
    Ok(bytes)
}

/// SHA-256 of a photo's bytes, lower-case hexadecimal.
pub fn sha256(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}
