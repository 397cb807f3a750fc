//! Finding markers in the photos, and the camera of each.

use std::path::PathBuf;

use rayon::prelude::*;

use super::Error;
use crate::camera::Profile;
use crate::detect::{Sightings, find_markers};
use crate::marker::Dictionary;
use crate::photo::{self, Exif};
use crate::words::{Phrase, phrase};

/// What is kept of a photo.
#[derive(Debug, Clone)]
pub struct SurveyPhoto {
    /// Its path, for messages.
    pub file: String,
    /// Width and height of the stored pixel grid.
    pub size_px: [u32; 2],
    /// Its own record.
    pub exif: Exif,
    /// The markers in it.
    pub sightings: Sightings,
}

/// Reads all photos and finds markers in them, in their order; `seen` is
/// called with each photo's path once it is done.
///
/// # Errors
/// A photo that can't be read.
pub fn look(photos: &[PathBuf], seen: &(dyn Fn(&str) + Sync)) -> Result<Vec<SurveyPhoto>, Error> {
    let one = |path: &PathBuf| {
        let photo = photo::read(path).map_err(|e| Error::Photo(e.phrase()))?;
        let file = path.display().to_string();
        let sightings = find_markers(&photo.luma, Dictionary::tag36h11());
        seen(&file);
        Ok(SurveyPhoto { file, size_px: [photo.width as u32, photo.height as u32], exif: photo.exif, sightings })
    };
    photos.par_iter().map(one).collect()
}

/// The camera of a photo: the only one where one is named, else the one that
/// its size and record pick.
pub(super) fn camera_of<'a>(photo: &SurveyPhoto, named: bool, cameras: &'a [Profile]) -> Result<&'a Profile, Error> {
    let no = |why: Phrase| Error::NoCamera { file: photo.file.clone(), why };
    let [width, height] = photo.size_px;
    let exif = &photo.exif;
    if let ([only], true) = (cameras, named) {
        let [w, h] = only.image_size_px;
        if only.image_size_px != photo.size_px {
            return Err(no(phrase!(
                "fit-no-camera-size",
                width = width,
                height = height,
                camera = &only.name,
                for_width = w,
                for_height = h
            )));
        }
        return Ok(only);
    }
    let fits =
        |c: &&Profile| c.is_for(photo.size_px, exif.make.as_deref(), exif.model.as_deref(), exif.focal_length_mm);
    let found: Vec<&Profile> = cameras.iter().filter(fits).collect();
    match found.as_slice() {
        [one] => Ok(one),
        [] => Err(no(phrase!(
            "fit-no-camera-fits",
            known = if exif.make.is_some() && exif.model.is_some() { "yes" } else { "no" },
            width = width,
            height = height,
            make = exif.make.as_deref().unwrap_or_default(),
            model = exif.model.as_deref().unwrap_or_default(),
        ))),
        [a, b, ..] => Err(no(phrase!("fit-no-camera-two", first = &a.name, second = &b.name))),
    }
}
