//! Which photo is measured with which camera, and which can't be measured.

use super::look::Looked;
use crate::camera::Profile;
use crate::folder::{InputFile, JobFolder};
use crate::pose::PhotoView;
use crate::verdict::findings::{PhotoProblem, Unseen};

/// The cameras of a job and each photo's share.
#[derive(Debug, Clone)]
pub(super) struct Assignment {
    pub(super) cameras: Vec<Profile>,
    /// Files of cameras that were chosen among candidates.
    pub(super) chosen_files: Vec<InputFile>,
    /// By photo: its camera, or why it has none.
    pub(super) photos: Vec<Result<usize, PhotoProblem>>,
}

/// Gives every photo its camera: the job's own, else the candidate that its
/// size and EXIF pick.
pub(super) fn assign(folder: &JobFolder, photos: &[Looked]) -> Assignment {
    let mut assignment = Assignment { cameras: Vec::new(), chosen_files: Vec::new(), photos: Vec::new() };
    for photo in photos {
        let camera = match &folder.camera {
            Some(profile) => named(profile, photo).map(|()| (profile.clone(), None)),
            None => picked(folder, photo).map(|(p, f)| (p, Some(f))),
        };
        assignment.photos.push(camera.map(|(profile, file)| {
            if let Some(at) = assignment.cameras.iter().position(|c| *c == profile) {
                return at;
            }
            assignment.cameras.push(profile);
            assignment.chosen_files.extend(file);
            assignment.cameras.len() - 1
        }));
    }
    assignment
}

fn named(profile: &Profile, photo: &Looked) -> Result<(), PhotoProblem> {
    let [width, height] = profile.image_size_px;
    let size = [photo.width as u32, photo.height as u32];
    if size != profile.image_size_px {
        return Err(PhotoProblem::Resized(format!(
            "its size is {} x {} px, but camera {} is for {width} x {height} px: use the photo as the camera stored it, or the camera file of the camera that took it",
            size[0], size[1], profile.name
        )));
    }
    let exif = &photo.exif;
    // A photo without a record can't contradict the camera file; one with
    // another make or model does.
    let other = profile.exif.as_ref().filter(|_| exif.make.is_some() || exif.model.is_some()).filter(|wanted| {
        let focal = wanted.focal_length_mm.and(exif.focal_length_mm).or(wanted.focal_length_mm);
        !wanted.matches(exif.make.as_deref(), exif.model.as_deref(), focal)
    });
    match other {
        Some(_) => Err(PhotoProblem::OtherCamera(format!(
            "it was taken by {} {}{}, not by the camera of {}: name that camera's file in the job",
            exif.make.as_deref().unwrap_or("(no make)"),
            exif.model.as_deref().unwrap_or("(no model)"),
            exif.focal_length_mm.map(|f| format!(" at {f:.2} mm")).unwrap_or_default(),
            profile.name
        ))),
        None => Ok(()),
    }
}

fn picked(folder: &JobFolder, photo: &Looked) -> Result<(Profile, InputFile), PhotoProblem> {
    let exif = &photo.exif;
    let size = [photo.width as u32, photo.height as u32];
    let fits: Vec<_> = folder
        .candidates
        .iter()
        .filter(|c| c.profile.is_for(size, exif.make.as_deref(), exif.model.as_deref(), exif.focal_length_mm))
        .collect();
    let who = format!(
        "{} {}, {} x {} px",
        exif.make.as_deref().unwrap_or("(no make in EXIF)"),
        exif.model.as_deref().unwrap_or("(no model in EXIF)"),
        size[0],
        size[1]
    );
    match fits.as_slice() {
        [one] => Ok((one.profile.clone(), one.input.clone())),
        [] => Err(PhotoProblem::OtherCamera(format!(
            "no camera file fits it ({who}): fit the camera with a board, or name its file as `camera` in the job"
        ))),
        [a, b, ..] => Err(PhotoProblem::OtherCamera(format!(
            "two camera files fit it ({who}): {} and {}; name one as `camera` in the job",
            a.profile.name, b.profile.name
        ))),
    }
}

/// What the photos that have a camera say of the kit; `None` where a photo takes no part.
pub(super) fn views(folder: &JobFolder, photos: &[Looked], assignment: &mut Assignment) -> Vec<PhotoView> {
    photos
        .iter()
        .enumerate()
        .map(|(j, photo)| {
            let empty = PhotoView { camera: 0, views: Vec::new(), u_edge_offset_px: 0.0, u_edge_by_size_px: 0.0 };
            let Ok(camera) = assignment.photos[j] else { return empty };
            let view = PhotoView::from_sightings(&folder.kit, camera, &photo.sightings);
            if view.views.is_empty() {
                assignment.photos[j] = Err(PhotoProblem::NoMarkers(unseen(photo)));
                return empty;
            }
            view
        })
        .collect()
}

/// Why a photo shows no marker of the kit.
fn unseen(photo: &Looked) -> Unseen {
    match () {
        () if photo.mirrored.is_some() => Unseen::Mirrored,
        () if !photo.sightings.markers.is_empty() => Unseen::OtherKit,
        () => Unseen::by(photo.clearness.as_ref()),
    }
}
