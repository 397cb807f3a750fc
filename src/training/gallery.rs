//! The gallery of mistakes: for each finding a bay with exactly that mistake,
//! rendered, verified and laid beside the same bay without it.

use std::fs;
use std::path::Path;

use super::bay::{RIGHT, scene};
use super::{Error, cannot_write};
use crate::folder::Models;
use crate::job::{Options, verify};
use crate::record::{GalleryEntry, JobRecord, PhotoRecord};
use crate::report;
use crate::words::{Language, phrase};

macro_rules! mistakes {
    ($($code:literal),* $(,)?) => {
        [$(($code, include_str!(concat!("../../samples/scenes/mistakes/", $code, ".toml")))),*]
    };
}

/// Each finding's code and the scene that shows it, in the order of the reports.
pub const MISTAKES: [(&str, &str); 47] = mistakes![
    "stand-turned",
    "stand-off-centre",
    "stand-too-near",
    "stand-too-far",
    "stand-too-high",
    "stand-too-low",
    "stand-tilted",
    "stand-not-level",
    "stand-moved-between-photos",
    "vehicle-moved-between-photos",
    "plate-not-seated",
    "vehicle-sizes-disagree",
    "plates-swapped",
    "print-scale-wrong",
    "print-not-flat",
    "marker-displaced",
    "marker-duplicated",
    "camera-mismatch",
    "photo-zoomed",
    "photo-resized",
    "photo-blurred",
    "photo-badly-lit",
    "photo-light-changed",
    "photo-reused",
    "photos-too-alike",
    "carrier-not-seen",
    "floor-not-level",
    "steering-not-straight",
    "weak-geometry",
    "wrong-datum-suspected",
    "reading-disagrees",
    "times-out-of-order",
    "photo-of-another-day",
    "photo-edited",
    "thumbnail-differs",
    "photo-rendered",
    "noise-repeated",
    "markers-without-noise",
    "compression-differs",
    "focal-length-contradicts",
    "markers-of-another-kit",
    "card-not-seen",
    "card-of-another-job",
    "prerequisite-not-met",
    "record-incomplete",
    "credentials-lacking",
    "not-checked",
];

/// Findings that cannot come alone, and what comes with them.
pub const COMPANIONS: [(&str, &[&str]); 7] = [
    // A wrong datum is only looked for where a check is outside.
    ("wrong-datum-suspected", &["stand-off-centre"]),
    // The same picture is taken from the same place.
    ("photo-reused", &["photos-too-alike"]),
    // Where something does not fit, figures hang on single photos and holders.
    ("camera-mismatch", &["weak-geometry"]),
    // With prints that fit nowhere a plate's other pose fits hardly worse: no figure is left to hang on anything.
    ("print-scale-wrong", &["carrier-not-seen"]),
    ("stand-moved-between-photos", &["weak-geometry"]),
    ("vehicle-moved-between-photos", &["weak-geometry"]),
    ("floor-not-level", &["weak-geometry"]),
];

/// Stages the bay that shows a finding; `right` stages the one without any.
///
/// # Errors
/// An unknown code, or the disk does not take it.
pub fn stage_mistake(code: &str, folder: &Path) -> Result<(), Error> {
    let text = match MISTAKES.iter().find(|(c, _)| *c == code) {
        Some((_, text)) => text,
        None if code == "right" => RIGHT,
        None => return Err(phrase!("training-no-scene", code = code).into()),
    };
    scene(text, &format!("{code}.toml"))?.stage(folder, &mut |_| ())?;
    Ok(())
}

fn staged(code: &str, out: &Path) -> Result<JobRecord, Error> {
    let folder = out.join("jobs").join(code);
    stage_mistake(code, &folder)?;
    let options = Options::new(Models::embedded());
    let cannot = |e: crate::job::Error| phrase!("training-cannot-verify", job = code, why = e.phrase());
    verify(&folder, &options).map_err(|e| cannot(e).into())
}

/// Stages, verifies and pictures every code below `out`: `jobs/CODE`,
/// `reports/CODE.html`, `pictures/CODE-*.jpg`. Returns what the page shows and
/// the record without a mistake; `progress` is told each code.
///
/// # Errors
/// The disk does not take it, or a staged job cannot be verified.
pub fn show(
    codes: &[&str],
    out: &Path,
    language: Language,
    progress: &mut dyn FnMut(&str),
) -> Result<(JobRecord, Vec<GalleryEntry>), Error> {
    for name in ["jobs", "reports", "pictures"] {
        let folder = out.join(name);
        fs::create_dir_all(&folder).map_err(cannot_write(&folder))?;
    }
    progress("right");
    let right = staged("right", out)?;
    let mut entries = Vec::new();
    for code in codes {
        progress(code);
        let record = staged(code, out)?;
        let pictures = crops(code, out, &right, &record)?;
        let folder = out.join("jobs").join(code);
        let photos = report::pictures(&folder, &record).map_err(|e| picture(code, e))?;
        let report = format!("reports/{code}.html");
        let path = out.join(&report);
        fs::write(&path, report::html(&record, &photos, language)).map_err(cannot_write(&path))?;
        entries.push(GalleryEntry {
            code: (*code).to_owned(),
            companions: COMPANIONS
                .iter()
                .find(|(c, _)| c == code)
                .map_or(Vec::new(), |(_, with)| with.iter().map(|c| (*c).to_owned()).collect()),
            record,
            pictures,
            report,
        });
    }
    Ok((right, entries))
}

fn picture(job: &str, why: impl std::fmt::Display) -> Error {
    phrase!("training-cannot-picture", job = job, why = why.to_string()).into()
}

/// Width of a picture on the page, px.
const WIDTH_PX: u32 = 720;

/// The same part of a photo without and with the mistake: of the photo and the
/// carrier that the finding names, else of the second photo and all that was found.
fn crops(code: &str, out: &Path, right: &JobRecord, record: &JobRecord) -> Result<Vec<[String; 2]>, Error> {
    let finding = record.findings.iter().find(|f| f.code == code);
    let named = finding.and_then(|f| f.photo.as_deref());
    let number = record.photos.iter().position(|p| Some(p.file.as_str()) == named);
    let number = number.unwrap_or(1).min(record.photos.len().saturating_sub(1));
    let (Some(with), Some(without)) = (record.photos.get(number), right.photos.get(number.min(right.photos.len() - 1)))
    else {
        return Ok(Vec::new());
    };
    let carrier = finding.and_then(|f| f.carrier.as_deref()).or(code.starts_with("stand-").then_some("stand"));
    let part = part(without, with, carrier);
    let mut names = [String::new(), String::new()];
    for (which, (job, photo)) in [("right", without), (code, with)].into_iter().enumerate() {
        names[which] = format!("pictures/{code}-{}.jpg", ["without", "with"][which]);
        let source = out.join("jobs").join(job).join(&photo.file);
        let whole = image::open(&source).map_err(|e| picture(code, e))?;
        let [left, top, width, height] = part.map(|share| share.clamp(0.0, 1.0));
        let size = [f64::from(whole.width()), f64::from(whole.height())];
        let cut = whole.crop_imm(
            (left * size[0]) as u32,
            (top * size[1]) as u32,
            ((width * size[0]) as u32).max(1),
            ((height * size[1]) as u32).max(1),
        );
        let tall = (f64::from(WIDTH_PX) * f64::from(cut.height()) / f64::from(cut.width())) as u32;
        let small = cut.resize_exact(WIDTH_PX, tall.max(1), image::imageops::FilterType::CatmullRom).to_rgb8();
        let path = out.join(&names[which]);
        let mut bytes = Vec::new();
        image::codecs::jpeg::JpegEncoder::new_with_quality(&mut bytes, 84)
            .encode_image(&small)
            .map_err(|e| picture(code, e))?;
        fs::write(&path, bytes).map_err(cannot_write(&path))?;
    }
    Ok(vec![names])
}

/// Left, top, width and height of the part to show, as shares of the photo.
fn part(without: &PhotoRecord, with: &PhotoRecord, carrier: Option<&str>) -> [f64; 4] {
    let shares = |photo: &PhotoRecord| -> Vec<[f64; 2]> {
        let size = [f64::from(photo.width_px.max(1)), f64::from(photo.height_px.max(1))];
        let own = photo.markers.iter().filter(|m| carrier.is_none() || m.carrier.as_deref() == carrier);
        own.flat_map(|m| m.corners_px).map(|c| [c[0] / size[0], c[1] / size[1]]).collect()
    };
    let points: Vec<[f64; 2]> = [shares(without), shares(with)].concat();
    if points.len() < 4 {
        return [0.0, 0.0, 1.0, 1.0];
    }
    let mut low = [1.0f64; 2];
    let mut high = [0.0f64; 2];
    for p in &points {
        for i in 0..2 {
            low[i] = low[i].min(p[i]);
            high[i] = high[i].max(p[i]);
        }
    }
    // As wide as high, which keeps the photo's shape, with room around it.
    let size = ((high[0] - low[0]).max(high[1] - low[1]) * 1.5).clamp(0.25, 1.0);
    let place = |i: usize| (f64::midpoint(low[i], high[i]) - size / 2.0).clamp(0.0, 1.0 - size);
    [place(0), place(1), size, size]
}
