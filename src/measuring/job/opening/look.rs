//! Reading the photos and finding the markers in them.

use rayon::prelude::*;

use crate::credentials::Credentials;
use crate::detect::{Coefficients, Grain, Sightings, find_markers};
use crate::folder::PhotoFile;
use crate::job::error::Error;
use crate::marker::Dictionary;
use crate::photo::{self, Clearness, Exif, Light, Traces};

/// What is kept of a photo once it was looked at; its pixels are not.
#[derive(Debug, Clone)]
pub(in crate::job) struct Looked {
    pub(in crate::job) name: String,
    pub(in crate::job) sha256: String,
    pub(in crate::job) width: usize,
    pub(in crate::job) height: usize,
    pub(in crate::job) exif: Exif,
    /// What tells that it is no longer as the camera wrote it.
    pub(in crate::job) traces: Traces,
    pub(in crate::job) sightings: Sightings,
    /// The noise of each of its markers, in their order, where it can be told.
    pub(in crate::job) grain: Vec<Option<Grain>>,
    /// How the pixels of each of its markers were compressed.
    pub(in crate::job) coefficients: Vec<Coefficients>,
    /// Where it is at the end of its scale.
    pub(in crate::job) light: Light,
    /// Whether it is dark or blurred, where no marker was found in it.
    pub(in crate::job) clearness: Option<Clearness>,
    /// What its mirror image shows, where that is what it should show itself: codes have a handedness.
    pub(in crate::job) mirrored: Option<Sightings>,
    /// What its camera signed about its bytes; filled in once the job is opened.
    pub(in crate::job) credentials: Option<Credentials>,
}

/// Looks at every photo, in parallel; the first unreadable one (in the job's
/// order) is the error.
pub(in crate::job) fn look(photos: &[PhotoFile]) -> Result<Vec<Looked>, Error> {
    let all: Vec<Result<Looked, Error>> = photos.par_iter().map(look_at).collect();
    all.into_iter().collect()
}

/// Fewer markers than this and the mirror image is looked at too.
const FEW: usize = 4;

/// A photo's markers, and those of its mirror image where that shows more:
/// what the photo itself then shows is a reflection in paint or glass.
fn handed(own: Sightings, mirrored: impl FnOnce() -> Sightings) -> (Sightings, Option<Sightings>) {
    if own.markers.len() >= FEW {
        return (own, None);
    }
    let mirrored = mirrored();
    if mirrored.markers.len() > own.markers.len() + 1 {
        return (Sightings { markers: Vec::new(), ..own }, Some(mirrored));
    }
    (own, None)
}

fn look_at(file: &PhotoFile) -> Result<Looked, Error> {
    let bytes = photo::read_bytes(&file.path)?;
    look_into(&bytes, file)
}

/// Finds the markers of a photo whose bytes are at hand.
pub(in crate::job) fn look_into(bytes: &[u8], file: &PhotoFile) -> Result<Looked, Error> {
    let photo = photo::decode(bytes, &file.path.display().to_string())?;
    let sightings = find_markers(&photo.luma, Dictionary::tag36h11());
    let (sightings, mirrored) = handed(sightings, || find_markers(&photo.luma.mirrored(), Dictionary::tag36h11()));
    let clearness = sightings.markers.is_empty().then(|| Clearness::of(&photo.luma));
    let grain = sightings.markers.iter().map(|m| Grain::of(&photo.luma, &m.corners_px)).collect();
    let steps = photo.traces.steps.as_ref();
    let coefficients = sightings.markers.iter().map(|m| Coefficients::of(&photo.luma, steps, &m.corners_px)).collect();
    Ok(Looked {
        name: file.name.clone(),
        sha256: photo.sha256,
        width: photo.width,
        height: photo.height,
        exif: photo.exif,
        traces: photo.traces,
        sightings,
        grain,
        coefficients,
        clearness,
        light: Light::of(&photo.luma),
        mirrored,
        credentials: None,
    })
}
