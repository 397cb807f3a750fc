//! A masked copy looked at: whether its photos show what the sealed result says, and what they measure.
//!
//! A masked photo has other bytes than the sealed one, so that no digest binds it. What it shows does: its size,
//! its markers where the result has them, and the quantities that they measure.

use std::fs;
use std::path::Path;

use image::RgbImage;

use super::contents::{self, files};
use super::masked_result::{differences, inputs_differ, unmeasured};
use super::remeasure::{RemeasureError, models, recorded};
use crate::credentials::Source;
use crate::evidence::{BagPath, PAYLOAD, REDACTION, Redaction, SEALED, find_sealed_job, joined};
use crate::folder::{Candidate, InputFile, JobFolder, PHOTOS, is_picture};
use crate::job::{Error, Options, photo_markers, verify_and};
use crate::photo::compressed;
use crate::record::{FindingRecord, JobRecord, PhotoRecord, Tool};
use crate::words::{Phrase, phrase};

/// A corner lies where it was recorded to this share of its marker's side, and to a pixel where that is less.
const NEAR_SIDES: f64 = 0.05;
const NEAR_PX: f64 = 1.0;
/// So many of the recorded markers must be found again; one that was hardly seen may be lost.
const FOUND_AGAIN: f64 = 0.75;
/// The finding of a photo that another camera took than the job's.
const OTHER_CAMERA: &str = "camera-mismatch";
/// A picture that shows nothing, and how good a JPEG it needs.
const GREY: u8 = 128;
const QUALITY: u8 = 50;

/// What a masked copy's photos say.
#[derive(Debug)]
pub struct MaskedCopy {
    /// What was sealed.
    pub recorded: JobRecord,
    /// Photos that do not show what was recorded.
    pub strange: Vec<Phrase>,
    /// Markers that were found where they were recorded.
    pub markers: usize,
    /// In what the masked photos measure otherwise than was recorded; or why they could not be measured.
    pub differences: Result<Vec<Phrase>, Phrase>,
}

/// Looks at the masked photos of a copy's payload, and measures them again where they still can be.
///
/// # Errors
/// The result or the job cannot be read.
pub fn look_at_masked(payload: &Path) -> Result<MaskedCopy, RemeasureError> {
    let recorded = recorded(payload)?;
    let job = find_sealed_job(payload).ok_or(RemeasureError::NoJob)?;
    let room = tempfile::tempdir().map_err(|e| RemeasureError::Room(e.to_string()))?;
    whole_again(payload, &job, &recorded, room.path()).map_err(|e| RemeasureError::Room(e.to_string()))?;
    // Where it lies meanwhile is nobody's concern.
    let place = format!("{}/", room.path().display());
    measured((&payload.join(SEALED), room.path()), &job, recorded)
        .map_err(|e| RemeasureError::Masked(e.phrase().with_texts(&|text| text.replace(&place, ""))))
}

/// The copy that lies in the room, looked at and measured.
fn measured((sealed, room): (&Path, &Path), job: &str, recorded: JobRecord) -> Result<MaskedCopy, Error> {
    let options = Options { models: models(room)?, credentials: Source::Recorded(Default::default()) };
    let job = room.join(job);
    let folder = JobFolder::open(&job, &options.models)?;
    let (mut strange, mut markers) = (Vec::new(), 0);
    for photo in &recorded.photos {
        // A result may name any file of this machine; one that is no photo of the job is a difference below.
        let Some(file) = folder.photos.iter().find(|file| file.name == photo.file) else { continue };
        let shown = Shown::in_photo(&file.path)?;
        match shown.as_recorded(photo) {
            Ok(count) => markers += count,
            Err(why) => strange.push(why),
        }
        if of_another_camera(photo, &recorded) {
            show_nothing(&file.path, shown.size_px);
        }
    }
    let mut found = inputs_differ(&recorded, &folder);
    let alike = recorded.tool.is_like(&Tool::this());
    found.extend(contents::differences((sealed, room), &job, &folder, &recorded, alike));
    let cameras = name_camera(&folder, &job, &recorded);
    let (now, decision) = verify_and(&job, &options, |folder, _| folder.setup.decision)?;
    found.extend(match cameras {
        Ok(()) => differences(&recorded, &now, &decision),
        Err(_) => unmeasured(&recorded, &now, &decision),
    });
    let differences = match cameras {
        Err(why) if found.is_empty() => Err(why),
        _ => Ok(found),
    };
    Ok(MaskedCopy { recorded, strange, markers, differences })
}

/// Whether a photo took no part as its own record names another camera, which is masked now. The finding stays and lets
/// nothing be within.
fn of_another_camera(photo: &PhotoRecord, recorded: &JobRecord) -> bool {
    let named = |f: &FindingRecord| f.code == OTHER_CAMERA && f.photo.as_ref() == Some(&photo.file);
    photo.camera.is_none() && recorded.findings.iter().any(named)
}

/// Puts a picture without markers in a photo's place, so that it takes no part.
fn show_nothing(path: &Path, [width, height]: [usize; 2]) {
    let (Ok(width), Ok(height)) = (u32::try_from(width), u32::try_from(height)) else { return };
    let mut picture = RgbImage::new(width, height);
    picture.fill(GREY);
    if let Ok(jpeg) = compressed(&picture, QUALITY) {
        // Where it cannot be written the photo takes part, and what it measures is said.
        let _ = fs::write(path, jpeg);
    }
}

/// What a masked photo shows.
struct Shown {
    size_px: [usize; 2],
    markers: Vec<(u32, [[f64; 2]; 4])>,
}

impl Shown {
    fn in_photo(path: &Path) -> Result<Shown, Error> {
        let seen = photo_markers(path)?;
        let markers = seen.markers.iter().map(|m| (m.id, m.corners_px)).collect();
        Ok(Shown { size_px: [seen.width_px, seen.height_px], markers })
    }

    /// How many markers lie where they were recorded; else why this cannot be the recorded photo.
    fn as_recorded(&self, photo: &PhotoRecord) -> Result<usize, Phrase> {
        let size = [photo.width_px as usize, photo.height_px as usize];
        if size != self.size_px {
            let [width, height] = self.size_px;
            return Err(phrase!("evidence-masked-size", photo = &photo.file, width = width, height = height));
        }
        let again = |(id, corners): &&(u32, [[f64; 2]; 4])| {
            photo.markers.iter().any(|m| m.id == *id && lie_near(&m.corners_px, corners))
        };
        let found = self.markers.iter().filter(again).count();
        let most = photo.markers.len().max(self.markers.len());
        if (found as f64) < FOUND_AGAIN * most as f64 {
            let (recorded, seen) = (photo.markers.len(), self.markers.len());
            return Err(phrase!(
                "evidence-masked-markers",
                photo = &photo.file,
                recorded = recorded,
                seen = seen,
                found = found,
            ));
        }
        Ok(found)
    }
}

fn lie_near(recorded: &[[f64; 2]; 4], seen: &[[f64; 2]; 4]) -> bool {
    let apart = |a: &[f64; 2], b: &[f64; 2]| (a[0] - b[0]).hypot(a[1] - b[1]);
    let side = apart(&recorded[0], &recorded[2]) / std::f64::consts::SQRT_2;
    recorded.iter().zip(seen).all(|(a, b)| apart(a, b) <= (NEAR_SIDES * side).max(NEAR_PX))
}

/// The copy's payload in a room of its own. Attachments that were left out and pictures that took no part are there as
/// empty files: nothing is measured from them, and what the result says of them goes by their names.
fn whole_again(payload: &Path, job: &str, recorded: &JobRecord, room: &Path) -> std::io::Result<()> {
    let sealed = format!("{SEALED}/");
    for name in files(payload, "")? {
        if name != REDACTION && !name.starts_with(&sealed) {
            let to = room.join(&name);
            to.parent().map_or(Ok(()), fs::create_dir_all)?;
            fs::copy(payload.join(&name), to)?;
        }
    }
    let attached = recorded.attachments.iter().map(|attachment| joined(job, &attachment.file));
    // A picture begins as one: what systems leave beside photos does not, and is not named.
    let pictures = pictures_left_out(payload, job).into_iter().map(|name| (name, &b"\xff\xd8\xff"[..]));
    for (name, bytes) in attached.map(|name| (name, &b""[..])).chain(pictures) {
        let to = room.join(name);
        if !to.exists() {
            to.parent().map_or(Ok(()), fs::create_dir_all)?;
            fs::write(to, bytes)?;
        }
    }
    Ok(())
}

/// Pictures of the job's folder, and what lay with its photos, that the copy says it left out, by their path in the payload.
fn pictures_left_out(payload: &Path, job: &str) -> Vec<String> {
    let redaction = payload.parent().and_then(Redaction::of).and_then(Result::ok);
    let left_out = redaction.map_or_else(Vec::new, |redaction| redaction.left_out);
    // Whoever made the copy may have written anything; no path leads out of the room.
    let names = left_out.iter().filter_map(|path| BagPath::new(path).ok());
    let of_payload = names.filter_map(|path| path.as_str().strip_prefix(PAYLOAD)?.strip_prefix('/').map(str::to_owned));
    let with_photos = joined(job, PHOTOS) + "/";
    of_payload.filter(|name| is_picture(Path::new(name)) || name.starts_with(&with_photos)).collect()
}

/// Masked photos bear no record that would choose their camera: it is the recorded one, where that is one. Its file
/// goes beside the job file, under a name that nothing else has there.
fn name_camera(folder: &JobFolder, job: &Path, recorded: &JobRecord) -> Result<(), Phrase> {
    if folder.camera.is_some() {
        return Ok(());
    }
    let mut cameras = recorded.inputs.iter().filter(|i| i.role == "camera");
    let camera = match (cameras.next(), cameras.next()) {
        (Some(camera), None) => camera,
        (None, _) => return Err(phrase!("evidence-masked-no-camera")),
        _ => return Err(phrase!("evidence-masked-cameras")),
    };
    let same = |c: &&Candidate| c.input.name == camera.file && c.input.sha256 == camera.sha256;
    let Some(candidate) = folder.candidates.iter().find(same) else {
        return Err(phrase!("evidence-masked-no-camera"));
    };
    name_beside(job, &candidate.input)
        .map_err(|e| phrase!("evidence-cannot-read", path = "job.toml", why = e.to_string()))
}

fn name_beside(job: &Path, camera: &InputFile) -> std::io::Result<()> {
    let taken = |name: &String| job.join(name).exists();
    let mut names = (0..).map(|n| format!("camera-{n}.toml"));
    let name = names.find(|name| !taken(name)).unwrap_or_default();
    match (&camera.path, camera.embedded_text()) {
        (Some(path), _) => fs::copy(path, job.join(&name)).map(|_| ())?,
        (None, text) => fs::write(job.join(&name), text.unwrap_or_default())?,
    }
    let path = job.join("job.toml");
    let text = fs::read_to_string(&path)?;
    // Behind the format, which comes first.
    let says =
        |line: &&str| !matches!(line.trim_start_matches('\u{feff}').trim_start().chars().next(), None | Some('#'));
    let format = text.split_inclusive('\n').find(says).unwrap_or_default();
    let end = format.as_ptr() as usize - text.as_ptr() as usize + format.len();
    fs::write(&path, format!("{}\ncamera = \"{name}\"\n{}", text[..end].trim_end(), &text[end..]))
}
