//! Upright copies of a job's photos, small enough to send on.

use std::path::Path;

use rayon::prelude::*;

use super::PhotoPicture;
use crate::photo::{self, Preview, compressed, preview};
use crate::record::JobRecord;
use crate::words::{Language, Phrase, phrase};

/// The longer side of the copies, px: enough to recognise a bay on a screen
/// and on paper; the originals stay the evidence.
const SIDE_PX: usize = 1600;
const QUALITY: u8 = 82;

/// Why a copy could not be made.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum PictureError {
    /// The photo cannot be read again.
    Read {
        /// The photo.
        name: String,
        /// What the file system said.
        source: std::io::Error,
    },
    /// The photo cannot be decoded again.
    Photo(#[from] photo::Error),
    /// The copy cannot be written as JPEG.
    Encode {
        /// The photo.
        name: String,
        /// What the encoder said.
        why: String,
    },
}

impl PictureError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            PictureError::Read { name, source } => {
                phrase!("report-picture-unreadable", photo = name, why = source.to_string())
            }
            PictureError::Photo(e) => e.phrase(),
            PictureError::Encode { name, why } => phrase!("report-picture-not-made", photo = name, why = why),
        }
    }
}

/// Copies of all photos of a record, in its order; `folder` is the job's.
///
/// # Errors
/// A photo that was there a moment ago and no longer is.
pub fn pictures(folder: &Path, record: &JobRecord) -> Result<Vec<PhotoPicture>, PictureError> {
    record.photos.par_iter().map(|p| picture(folder, &p.file, p.orientation)).collect()
}

fn picture(folder: &Path, name: &str, orientation: u8) -> Result<PhotoPicture, PictureError> {
    let bytes =
        std::fs::read(folder.join(name)).map_err(|source| PictureError::Read { name: name.to_owned(), source })?;
    let (jpeg_bytes, preview) = small_jpeg(&bytes, name, SIDE_PX)?;
    let (width, height) = preview.picture.dimensions();
    Ok(PhotoPicture {
        file: name.to_owned(),
        jpeg_bytes,
        width,
        height,
        stored_width: preview.stored_px[0] as u32,
        stored_height: preview.stored_px[1] as u32,
        orientation,
    })
}

/// An upright copy of a photo as JPEG, its longer side at most `side_px`.
///
/// # Errors
/// The photo cannot be decoded, or the copy not encoded.
pub fn small_jpeg(bytes: &[u8], name: &str, side_px: usize) -> Result<(Vec<u8>, Preview), PictureError> {
    let preview = preview(bytes, name, side_px)?;
    let jpeg_bytes =
        compressed(&preview.picture, QUALITY).map_err(|why| PictureError::Encode { name: name.to_owned(), why })?;
    Ok((jpeg_bytes, preview))
}
