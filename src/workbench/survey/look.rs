//! Finding markers in the photos, and the camera of each.

use std::path::PathBuf;

use rayon::prelude::*;

use super::Error;
use crate::camera::Profile;
use crate::detect::{Sightings, find_markers};
use crate::marker::Dictionary;
use crate::photo::{self, Exif};

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
        let photo = photo::read(path).map_err(|e| Error::Photo(e.to_string()))?;
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
    let no = |why: String| Error::NoCamera { file: photo.file.clone(), why };
    let [width, height] = photo.size_px;
    let exif = &photo.exif;
    if let ([only], true) = (cameras, named) {
        let [w, h] = only.image_size_px;
        if only.image_size_px != photo.size_px {
            return Err(no(format!(
                "it is {width} x {height} px, but camera {} is for {w} x {h} px: use the photo as the camera stored it",
                only.name
            )));
        }
        return Ok(only);
    }
    let fits =
        |c: &&Profile| c.is_for(photo.size_px, exif.make.as_deref(), exif.model.as_deref(), exif.focal_length_mm);
    let found: Vec<&Profile> = cameras.iter().filter(fits).collect();
    match found.as_slice() {
        [one] => Ok(one),
        [] => Err(no(format!(
            "no camera file fits it ({width} x {height} px, {} {}): fit the camera with a board, or name it with --camera",
            exif.make.as_deref().unwrap_or("no make"),
            exif.model.as_deref().unwrap_or("no model")
        ))),
        [a, b, ..] => Err(no(format!("two camera files fit it, {} and {}: name one with --camera", a.name, b.name))),
    }
}
