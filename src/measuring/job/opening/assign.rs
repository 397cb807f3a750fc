//! Which photo is measured with which camera, and which can't be measured.

use std::collections::BTreeSet;

use super::look::Looked;
use crate::camera::Profile;
use crate::folder::{InputFile, JobFolder};
use crate::pose::{PhotoView, doubled};
use crate::verdict::findings::{PhotoProblem, Unseen};
use crate::words::{Figure, Phrase, Value, phrase};

/// The cameras of a job and each photo's share.
#[derive(Debug, Clone)]
pub(in crate::job) struct Assignment {
    pub(in crate::job) cameras: Vec<Profile>,
    /// Files of cameras that were chosen among candidates.
    pub(in crate::job) chosen_files: Vec<InputFile>,
    /// By photo: its camera, or why it has none.
    pub(in crate::job) photos: Vec<Result<usize, PhotoProblem>>,
}

/// Gives every photo its camera: the job's own, else the candidate that its
/// size and EXIF pick.
pub(in crate::job) fn assign(folder: &JobFolder, photos: &[Looked]) -> Assignment {
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
        return Err(PhotoProblem::Resized(phrase!(
            "findings-photo-size",
            width = px(size[0]),
            height = px(size[1]),
            camera = &profile.name,
            wanted_width = px(width),
            wanted_height = px(height)
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
        Some(_) => Err(PhotoProblem::OtherCamera(other_camera(photo, profile))),
        None => Ok(()),
    }
}

fn other_camera(photo: &Looked, profile: &Profile) -> Phrase {
    let (maker, model) = maker_and_model(photo);
    let camera = &profile.name;
    match photo.exif.focal_length_mm {
        Some(f) => phrase!(
            "findings-photo-other-camera-at",
            maker = maker,
            model = model,
            focal = Figure::fixed(f, 2),
            camera = camera
        ),
        None => phrase!("findings-photo-other-camera", maker = maker, model = model, camera = camera),
    }
}

/// As its EXIF has them.
fn maker_and_model(photo: &Looked) -> (Value, Value) {
    let maker = photo.exif.make.as_ref().map_or_else(|| phrase!("findings-no-make").into(), Value::from);
    let model = photo.exif.model.as_ref().map_or_else(|| phrase!("findings-no-model").into(), Value::from);
    (maker, model)
}

/// Pixels are no counted things: they have no plural and no thousands.
fn px(n: u32) -> String {
    n.to_string()
}

fn picked(folder: &JobFolder, photo: &Looked) -> Result<(Profile, InputFile), PhotoProblem> {
    let exif = &photo.exif;
    let size = [photo.width as u32, photo.height as u32];
    let fits: Vec<_> = folder
        .candidates
        .iter()
        .filter(|c| c.profile.is_for(size, exif.make.as_deref(), exif.model.as_deref(), exif.focal_length_mm))
        .collect();
    let (maker, model) = maker_and_model(photo);
    let (width, height) = (px(size[0]), px(size[1]));
    match fits.as_slice() {
        [one] => Ok((one.profile.clone(), one.input.clone())),
        [] => Err(PhotoProblem::OtherCamera(phrase!(
            "findings-photo-no-camera",
            maker = maker,
            model = model,
            width = width,
            height = height
        ))),
        [a, b, ..] => Err(PhotoProblem::OtherCamera(phrase!(
            "findings-photo-two-cameras",
            maker = maker,
            model = model,
            width = width,
            height = height,
            first = &a.profile.name,
            second = &b.profile.name
        ))),
    }
}

/// What the photos that have a camera say of the kit; empty where a photo takes no part. A code that any photo of the job
/// shows twice takes part in none: which of its prints another photo shows nobody can tell.
pub(in crate::job) fn views(folder: &JobFolder, photos: &[Looked], assignment: &mut Assignment) -> Vec<PhotoView> {
    let doubled = doubled(&folder.kit, photos.iter().map(|p| &p.sightings));
    photos
        .iter()
        .enumerate()
        .map(|(j, photo)| {
            let empty = PhotoView { camera: 0, views: Vec::new(), u_edge_offset_px: 0.0, u_edge_by_size_px: 0.0 };
            let Ok(camera) = assignment.photos[j] else { return empty };
            let view = PhotoView::from_sightings(&folder.kit, camera, &photo.sightings).without(&doubled);
            if view.views.is_empty() {
                assignment.photos[j] = Err(PhotoProblem::NoMarkers(unseen(photo, &doubled)));
                return empty;
            }
            view
        })
        .collect()
}

/// Why a photo shows no marker of the kit.
fn unseen(photo: &Looked, doubled: &BTreeSet<u32>) -> Unseen {
    match () {
        () if photo.mirrored.is_some() => Unseen::Mirrored,
        () if photo.sightings.markers.iter().any(|m| doubled.contains(&m.id)) => Unseen::Doubled,
        () if !photo.sightings.markers.is_empty() => Unseen::OtherKit,
        () => Unseen::by(photo.clearness.as_ref()),
    }
}
