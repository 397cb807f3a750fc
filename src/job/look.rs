//! Reading the photos and finding the markers in them.

use rayon::prelude::*;

use super::Error;
use crate::detect::{Sightings, find_markers};
use crate::folder::PhotoFile;
use crate::marker::Dictionary;
use crate::photo::{self, Exif};

/// What is kept of a photo once it was looked at; its pixels are not.
#[derive(Debug, Clone)]
pub(super) struct Looked {
    pub(super) name: String,
    pub(super) sha256: String,
    pub(super) width: usize,
    pub(super) height: usize,
    pub(super) exif: Exif,
    pub(super) sightings: Sightings,
}

/// Looks at every photo, in parallel; the first unreadable one (in the job's
/// order) is the error.
pub(super) fn look(photos: &[PhotoFile]) -> Result<Vec<Looked>, Error> {
    let all: Vec<Result<Looked, Error>> = photos.par_iter().map(look_at).collect();
    all.into_iter().collect()
}

fn look_at(file: &PhotoFile) -> Result<Looked, Error> {
    let photo = photo::read(&file.path)?;
    let sightings = find_markers(&photo.luma, Dictionary::tag36h11());
    Ok(Looked {
        name: file.name.clone(),
        sha256: photo.sha256,
        width: photo.width,
        height: photo.height,
        exif: photo.exif,
        sightings,
    })
}
