//! A copy of an evidence folder that shows no more of its photos than the markers.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use image::RgbImage;

use super::CHANGES;
use super::contents::files;
use super::remeasure::remeasure;
use super::sealed_report::{Reports, reports_again};
use crate::credentials::{Source, carries};
use crate::evidence::{Bytes, Contents, REDACTION, Redaction, SEALED, copy_info, find_sealed_job, inspect, joined};
use crate::folder::{PHOTOS, is_picture};
use crate::photo::{self, Orientation, compressed, preview};
use crate::record::JobRecord;
use crate::words::{Language, Phrase, phrase};

/// Why no copy was made.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum RedactError {
    /// The folder is not what was sealed.
    Altered(PathBuf),
    /// It is a copy already.
    Copy(PathBuf),
    /// Measured again, its photos do not give its result.
    Otherwise(PathBuf, Phrase),
    /// Something cannot be read.
    Read {
        /// Which file.
        path: PathBuf,
        /// Why.
        why: String,
    },
    /// A masked photo cannot be written.
    Write(String, String),
}

impl RedactError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            RedactError::Altered(folder) => phrase!("evidence-redact-altered", folder = folder.display().to_string()),
            RedactError::Otherwise(folder, why) => {
                phrase!("evidence-redact-otherwise", folder = folder.display().to_string(), why = why.clone())
            }
            RedactError::Copy(folder) => phrase!("evidence-redact-copy", folder = folder.display().to_string()),
            RedactError::Read { path, why } => {
                phrase!("evidence-cannot-read", path = path.display().to_string(), why = why)
            }
            RedactError::Write(photo, why) => phrase!("evidence-redact-write", photo = photo, why = why),
        }
    }
}

/// A rectangle of an upright photo that stays visible: left, top, right, bottom
/// as shares of width and height, 0 to 1.
pub type Area = [f64; 4];

/// How much around a marker stays visible, in its own sides: its white margin.
const AROUND: f64 = 0.3;
/// What masks: a grey that no marker is lost beside.
const GREY: u8 = 128;
/// As good as JPEG gets: the masked photos are measured again, and of photos of the night a 92 moved values by 1.4 of
/// their standard uncertainty. What is grey takes no room.
const QUALITY: u8 = 100;
/// Sealed photos are never larger.
const ANY_SIZE: usize = 1 << 16;

/// The contents of a copy of the evidence folder: photos masked but for their
/// markers and the areas, reports (which hold the photos) and attachments left out;
/// and what that took away.
///
/// # Errors
/// The folder is not intact, its photos do not give its result, or a photo cannot be read.
pub fn redact(folder: &Path, areas: &[Area]) -> Result<(Contents, Redaction), RedactError> {
    let inspection = inspect(folder).map_err(|e| cannot_read(folder, &e))?;
    if !inspection.intact() {
        return Err(RedactError::Altered(folder.to_path_buf()));
    }
    if inspection.is_copy() {
        return Err(RedactError::Copy(folder.to_path_buf()));
    }
    let payload = folder.join("data");
    // Whoever gets the copy has no whole photos to measure.
    let otherwise = |why| RedactError::Otherwise(folder.to_path_buf(), why);
    let again = remeasure(&payload, &Source::default()).map_err(|e| otherwise(e.phrase()))?;
    if !again.differences.is_empty() {
        return Err(otherwise(again.differing()));
    }
    if let reports @ Reports::Other(_) = reports_again(&payload, &again.recorded) {
        return Err(otherwise(reports.phrase()));
    }
    let record = again.recorded;
    let job = find_sealed_job(&payload).unwrap_or_default();
    let photos: BTreeMap<String, usize> =
        record.photos.iter().enumerate().map(|(n, p)| (joined(&job, &p.file), n)).collect();
    let attached: Vec<String> = record.attachments.iter().map(|a| joined(&job, &a.file)).collect();
    let mut redaction = Redaction {
        format: "redaction/1".to_owned(),
        masked: Vec::new(),
        left_out: Vec::new(),
        credentials_lost: Vec::new(),
    };
    let mut contents = Contents::default();
    for path in files(&payload, "").map_err(|e| cannot_read(&payload, &e))? {
        let sealed = format!("data/{path}");
        let from = payload.join(&path);
        if let Some(n) = photos.get(&path) {
            let bytes = fs::read(&from).map_err(|e| cannot_read(&from, &e))?;
            contents.payload.insert(path.clone(), Bytes::Here(masked(&bytes, &from, &record, *n, areas)?));
            if photo::recognise(&bytes, &path).is_ok_and(|kind| carries(&bytes, kind)) {
                redaction.credentials_lost.push(sealed.clone());
            }
            redaction.masked.push(sealed);
        } else if attached.contains(&path) || path == joined(&job, CHANGES) || shows_photos(&path, &job) {
            redaction.left_out.push(sealed);
        } else {
            contents.payload.insert(path, Bytes::File { path: from, sha256: None });
        }
    }
    for name in files(folder, "").map_err(|e| cannot_read(folder, &e))? {
        if !name.starts_with("data/") {
            contents.payload.insert(format!("{SEALED}/{name}"), Bytes::File { path: folder.join(&name), sha256: None });
        }
    }
    let mut text = serde_json::to_vec_pretty(&redaction).map_err(|e| cannot_read(folder, &e))?;
    text.push(b'\n');
    contents.payload.insert(REDACTION.to_owned(), Bytes::Here(text));
    contents.info = copy_info(&record.job);
    Ok((contents, redaction))
}

fn cannot_read(path: &Path, why: &impl ToString) -> RedactError {
    RedactError::Read { path: path.to_path_buf(), why: why.to_string() }
}

/// Reports hold copies of the photos; photos that took no part have no markers by which to mask them, and
/// whatever lies with the photos may be one.
fn shows_photos(path: &str, job: &str) -> bool {
    is_picture(Path::new(path))
        || path.starts_with(&(joined(job, PHOTOS) + "/"))
        || !path.contains('/') && [".html", ".pdf"].iter().any(|end| path.ends_with(end))
}

/// A photo as JPEG of the same size on the stored grid, without its record.
fn masked(bytes: &[u8], from: &Path, record: &JobRecord, n: usize, areas: &[Area]) -> Result<Vec<u8>, RedactError> {
    let photo = &record.photos[n];
    let copy = preview(bytes, &photo.file, ANY_SIZE).map_err(|e| cannot_read(from, &e))?;
    let (width, height) = copy.picture.dimensions();
    let mut shown: Vec<[f64; 4]> = areas
        .iter()
        .map(|[l, t, r, b]| [l * f64::from(width), t * f64::from(height), r * f64::from(width), b * f64::from(height)])
        .collect();
    for marker in &photo.markers {
        let corners = marker.corners_px.map(|c| copy.from_stored(c));
        let range = |k: usize| corners.iter().fold((f64::MAX, f64::MIN), |(lo, hi), c| (lo.min(c[k]), hi.max(c[k])));
        let ((l, r), (t, b)) = (range(0), range(1));
        let margin = AROUND * (r - l).max(b - t);
        shown.push([l - margin, t - margin, r + margin, b + margin]);
    }
    let mut masked = RgbImage::new(width, height);
    masked.fill(GREY);
    for [l, t, r, b] in shown {
        let clamp = |v: f64, most: u32| v.clamp(0.0, f64::from(most)) as u32;
        for y in clamp(t, height)..clamp(b.ceil(), height) {
            for x in clamp(l, width)..clamp(r.ceil(), width) {
                masked.put_pixel(x, y, *copy.picture.get_pixel(x, y));
            }
        }
    }
    compressed(&stored(masked, copy.orientation), QUALITY).map_err(|why| RedactError::Write(photo.file.clone(), why))
}

/// Back from upright to the stored grid, where camera models apply.
fn stored(upright: RgbImage, orientation: Orientation) -> RgbImage {
    // The turns by a quarter undo each other; all other orientations undo themselves.
    let back = match orientation.0 {
        6 => 8,
        8 => 6,
        other => other,
    };
    let mut picture = image::DynamicImage::ImageRgb8(upright);
    if let Some(turn) = image::metadata::Orientation::from_exif(back) {
        picture.apply_orientation(turn);
    }
    picture.into_rgb8()
}
