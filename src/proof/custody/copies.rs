//! A masked copy looked at: whether its photos show what the sealed result says, and what they measure.
//!
//! A masked photo has other bytes than the sealed one, so that no digest binds it. What it shows does: its size,
//! its markers where the result has them, and the quantities that they measure.

use std::fs;
use std::path::Path;

use super::compared::{checks, files_differ, near, of_check, part, shown};
use super::redact::files;
use super::remeasure::{RemeasureError, models, recorded};
use crate::credentials::Source;
use crate::evidence::{REDACTION, SEALED, find_sealed_job, joined};
use crate::folder::JobFolder;
use crate::job::{Error, Options, photo_markers, verify_and};
use crate::quantity::Estimate;
use crate::record::{CheckRecord, JobRecord, Level, PhotoRecord, Verdict};
use crate::setup::Decision;
use crate::verdict::decide;
use crate::words::{Phrase, phrase};

/// Values of masked photos agree with the recorded ones to so many standard uncertainties. Most move by a tenth of one,
/// those of photos of the night, whose markers are found by what is around them too, by up to 0.8.
pub const MASKED_AGREE_U: f64 = 2.0;
/// Their uncertainties agree to this share of themselves; they were seen to change by a twentieth.
const MASKED_AGREE_OF_U: f64 = 0.25;
const NEAR: [f64; 2] = [MASKED_AGREE_U, MASKED_AGREE_OF_U];
/// A corner lies where it was recorded to this share of its marker's side, and to a pixel where that is less.
const NEAR_SIDES: f64 = 0.05;
const NEAR_PX: f64 = 1.0;
/// So many of the recorded markers must be found again; one that was hardly seen may be lost.
const FOUND_AGAIN: f64 = 0.75;
/// Findings that go by a photo's bytes, or by its own record, which masking takes away.
const OF_WHOLE_PHOTOS: [&str; 4] = ["photo-reused", "photo-edited", "photo-rendered", "credentials-lacking"];

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
    measured(room.path(), &job, recorded)
        .map_err(|e| RemeasureError::Masked(e.phrase().with_texts(&|text| text.replace(&place, ""))))
}

/// The copy that lies in the room, looked at and measured.
fn measured(room: &Path, job: &str, recorded: JobRecord) -> Result<MaskedCopy, Error> {
    let options = Options { models: models(room)?, credentials: Source::Recorded(Default::default()) };
    let job = room.join(job);
    let folder = JobFolder::open(&job, &options.models)?;
    let (mut strange, mut markers) = (Vec::new(), 0);
    for photo in &recorded.photos {
        match Shown::in_photo(&job.join(&photo.file))?.as_recorded(photo) {
            Ok(count) => markers += count,
            Err(why) => strange.push(why),
        }
    }
    let differences = match name_camera(&folder, &job, &recorded) {
        Err(why) => Err(why),
        Ok(()) => {
            let (now, decision) = verify_and(&job, &options, |folder, _| folder.setup.decision)?;
            Ok(differences(&recorded, &now, &decision))
        }
    };
    Ok(MaskedCopy { recorded, strange, markers, differences })
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

/// The copy's payload in a room of its own, attachments that were left out as empty files: nothing is measured from them.
fn whole_again(payload: &Path, job: &str, recorded: &JobRecord, room: &Path) -> std::io::Result<()> {
    let sealed = format!("{SEALED}/");
    for name in files(payload, "")? {
        if name != REDACTION && !name.starts_with(&sealed) {
            let to = room.join(&name);
            to.parent().map_or(Ok(()), fs::create_dir_all)?;
            fs::copy(payload.join(&name), to)?;
        }
    }
    for attachment in &recorded.attachments {
        let to = room.join(joined(job, &attachment.file));
        if !to.exists() {
            to.parent().map_or(Ok(()), fs::create_dir_all)?;
            fs::write(to, "")?;
        }
    }
    Ok(())
}

/// Masked photos bear no record that would choose their camera: it is the recorded one, where that is one.
fn name_camera(folder: &JobFolder, job: &Path, recorded: &JobRecord) -> Result<(), Phrase> {
    if folder.camera.is_some() {
        return Ok(());
    }
    let mut cameras = recorded.inputs.iter().filter(|i| i.role == "camera").map(|i| i.file.as_str());
    let (Some(camera), None) = (cameras.next(), cameras.next()) else {
        return Err(phrase!("evidence-masked-cameras"));
    };
    let path = job.join("job.toml");
    let text = fs::read_to_string(&path).and_then(|text| {
        // Behind the format, which comes first.
        let says =
            |line: &&str| !matches!(line.trim_start_matches('\u{feff}').trim_start().chars().next(), None | Some('#'));
        let format = text.split_inclusive('\n').find(says).unwrap_or_default();
        let end = format.as_ptr() as usize - text.as_ptr() as usize + format.len();
        let named = serde_json::to_string(camera)?;
        fs::write(&path, format!("{}\ncamera = {named}\n{}", text[..end].trim_end(), &text[end..]))
    });
    text.map_err(|e| phrase!("evidence-cannot-read", path = "job.toml", why = e.to_string()))
}

fn differences(recorded: &JobRecord, now: &JobRecord, decision: &Decision) -> Vec<Phrase> {
    // When it was taken, and with it whether the kit's survey was overdue, may come from a photo's own record.
    let mut found = files_differ(recorded, now, &["taken", "kit_upkeep"]);
    let mut differ = |what, a, b| found.push(phrase!("evidence-difference", what = what, recorded = a, now = b));
    if checks(recorded) != checks(now) {
        differ(part("checks"), checks(recorded).into(), checks(now).into());
        return found;
    }
    for (a, b) in recorded.checks.iter().zip(&now.checks) {
        if !near(of_check(a), of_check(b), NEAR) {
            differ((&a.quantity).into(), shown(a.value), shown(b.value));
        } else if let Some(follows) = follows(a, b, decision) {
            differ((&a.quantity).into(), a.verdict.name().into(), follows.name().into());
        }
    }
    for (key, a) in &recorded.measured {
        let Some(b) = now.measured.get(key) else { continue };
        let (x, y) = ((a.value, a.standard_uncertainty), (b.value, b.standard_uncertainty));
        if !near(Some(x), Some(y), NEAR) {
            differ(key.into(), shown(Some(a.value)), shown(Some(b.value)));
        }
    }
    let whole = Verdict::of_checks(recorded.checks.iter().map(|c| c.verdict));
    if recorded.verdict != whole && claims(recorded.verdict) {
        differ(part("verdict"), recorded.verdict.name().into(), whole.name().into());
    }
    let known = |code: &str| recorded.findings.iter().any(|f| f.code == code) || OF_WHOLE_PHOTOS.contains(&code);
    for finding in now.findings.iter().filter(|f| matches!(f.level, Level::Stop | Level::Void)) {
        if !known(&finding.code) {
            differ(part("findings"), phrase!("evidence-nothing").into(), finding.code.as_str().into());
        }
    }
    found
}

/// A verdict that states something; the others only withhold.
fn claims(verdict: Verdict) -> bool {
    matches!(verdict, Verdict::Within | Verdict::Outside)
}

/// What follows from a check's recorded figures, where it states something else. Values that lie at a limit may be
/// decided otherwise by masked photos; the recorded ones decide as they did.
fn follows(recorded: &CheckRecord, now: &CheckRecord, decision: &Decision) -> Option<Verdict> {
    if recorded.verdict == now.verdict || !claims(recorded.verdict) {
        return None;
    }
    let (value, standard_uncertainty) = of_check(recorded)?;
    let degrees_of_freedom = recorded.degrees_of_freedom.unwrap_or(f64::INFINITY);
    let estimate = Estimate { value, standard_uncertainty, degrees_of_freedom };
    let decided = decide(decision, now.lower, now.upper, &estimate).verdict;
    (decided != recorded.verdict).then_some(decided)
}
