//! Photos with known truth for the detector's tests.
#![allow(dead_code, reason = "each test binary uses its part")]
#![allow(clippy::unwrap_used, clippy::print_stderr, reason = "test support")]

pub(crate) mod clutter;
pub(crate) mod render;
pub(crate) mod tone;

use std::path::{Path, PathBuf};

use baywitness::detect::{Sighting, Sightings};
use baywitness::photo::Luma;
use nalgebra::{SVector, Vector2};

/// The folder of photos beside the worktree; absent on most machines.
pub(crate) fn shared_photos() -> Option<PathBuf> {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    let found = here.ancestors().skip(1).take(2).map(|p| p.join("shared/photos")).find(|p| p.is_dir());
    if found.is_none() {
        eprintln!("skipped: no folder shared/photos beside the project");
    }
    found
}

/// Luma of a JPEG file.
pub(crate) fn load(path: &Path) -> Luma {
    decode(std::fs::read(path).unwrap())
}

/// Luma of a JPEG.
pub(crate) fn decode(bytes: Vec<u8>) -> Luma {
    use zune_core::bytestream::ZCursor;
    use zune_core::colorspace::ColorSpace;
    use zune_core::options::DecoderOptions;
    let options = DecoderOptions::default().jpeg_set_out_colorspace(ColorSpace::Luma);
    let mut decoder = zune_jpeg::JpegDecoder::new_with_options(ZCursor::new(bytes), options);
    let pixels = decoder.decode().unwrap();
    let (width, height) = decoder.dimensions().unwrap();
    Luma::new(width, height, pixels).unwrap()
}

/// A marker as it truly is in a photo.
#[derive(Debug, Clone)]
pub(crate) struct TrueMarker {
    pub(crate) id: u32,
    pub(crate) corners: [Vector2<f64>; 4],
    pub(crate) visible: f64,
    pub(crate) side: f64,
    pub(crate) facing: f64,
    /// White minus black, grey levels, where it is known.
    pub(crate) contrast: f64,
}

/// A photo with its truth.
#[derive(Debug, Clone)]
pub(crate) struct TruePhoto {
    pub(crate) job: String,
    pub(crate) path: PathBuf,
    pub(crate) markers: Vec<TrueMarker>,
}

/// All bay photos, job by job.
pub(crate) fn bay_photos(shared: &Path) -> Vec<TruePhoto> {
    let mut jobs: Vec<_> = std::fs::read_dir(shared.join("bay/truth")).unwrap().map(|e| e.unwrap().path()).collect();
    jobs.sort();
    let mut photos = Vec::new();
    for folder in jobs {
        let job = folder.file_name().unwrap().to_str().unwrap().to_owned();
        let text = std::fs::read_to_string(folder.join("truth.json")).unwrap();
        let truth: serde_json::Value = serde_json::from_str(&text).unwrap();
        for photo in truth["photos"].as_array().unwrap() {
            let file = photo["file"].as_str().unwrap();
            let pictures = shared.join("bay/jobs").join(&job).join("photos");
            let path =
                [file.to_owned(), file.to_lowercase()].map(|f| pictures.join(f)).into_iter().find(|p| p.exists());
            let markers = photo["markers"].as_array().unwrap().iter().filter_map(true_marker).collect();
            photos.push(TruePhoto { job: job.clone(), path: path.unwrap(), markers });
        }
    }
    photos
}

fn true_marker(m: &serde_json::Value) -> Option<TrueMarker> {
    let number = |v: &serde_json::Value| v.as_f64();
    let corners: Vec<_> = m["corners_px"]
        .as_array()?
        .iter()
        .map(|c| Some(Vector2::new(number(&c[0])?, number(&c[1])?)))
        .collect::<Option<_>>()?;
    Some(TrueMarker {
        id: m["id"].as_u64()? as u32,
        corners: corners.try_into().ok()?,
        visible: number(&m["visible_fraction"])?,
        side: number(&m["side_px"])?,
        facing: number(&m["facing_cos"])?,
        contrast: f64::NAN,
    })
}

/// Errors of found corners against truth, collected.
#[derive(Debug, Clone, Default, serde::Serialize, serde::Deserialize)]
pub(crate) struct Score {
    pub(crate) shown: usize,
    pub(crate) found: usize,
    squares: f64,
    pub(crate) worst: f64,
    outward: f64,
    normalized: f64,
}

impl Score {
    /// Compares a photo's true markers that `wanted` picks with what was found.
    pub(crate) fn add(&mut self, truth: &[TrueMarker], found: &Sightings, wanted: impl Fn(&TrueMarker) -> bool) {
        for marker in truth.iter().filter(|m| wanted(m)) {
            self.shown += 1;
            if let Some(hit) = found.markers.iter().find(|s| same(s, marker)) {
                self.found += 1;
                self.add_pair(marker, hit);
            }
        }
    }

    /// Adds what another one has collected.
    pub(crate) fn join(&mut self, other: &Score) {
        self.shown += other.shown;
        self.found += other.found;
        self.squares += other.squares;
        self.worst = self.worst.max(other.worst);
        self.outward += other.outward;
        self.normalized += other.normalized;
    }

    fn add_pair(&mut self, marker: &TrueMarker, hit: &Sighting) {
        let middle = marker.corners.iter().sum::<Vector2<f64>>() / 4.0;
        let mut error = SVector::<f64, 8>::zeros();
        for (k, (c, t)) in hit.corners_px.iter().zip(&marker.corners).enumerate() {
            error.fixed_rows_mut::<2>(2 * k).copy_from(&(c - t));
            self.outward += (c - t).dot(&(t - middle).normalize()) / 4.0;
        }
        self.squares += error.norm_squared() / 8.0;
        self.worst = self.worst.max(error.amax());
        self.normalized += hit.covariance_px2.cholesky().map_or(f64::NAN, |c| error.dot(&c.solve(&error)) / 8.0);
    }

    /// Root mean square error per coordinate, px.
    pub(crate) fn rms(&self) -> f64 {
        (self.squares / self.found as f64).sqrt()
    }

    /// Mean way of the corners away from their markers' middles, px.
    pub(crate) fn outward(&self) -> f64 {
        self.outward / self.found as f64
    }

    /// Root mean square of errors in units of their stated uncertainty.
    pub(crate) fn normalized(&self) -> f64 {
        (self.normalized / self.found as f64).sqrt()
    }
}

impl std::fmt::Display for Score {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let outward = self.outward();
        write!(
            f,
            "{:4} of {:4}, RMS {:.4} px, worst {:.3}, outward {outward:+.4}, error/u {:.2}",
            self.found,
            self.shown,
            self.rms(),
            self.worst,
            self.normalized()
        )
    }
}

/// Whether a sighting is of a true marker.
pub(crate) fn same(sighting: &Sighting, marker: &TrueMarker) -> bool {
    let middle = |c: &[Vector2<f64>; 4]| c.iter().sum::<Vector2<f64>>() / 4.0;
    sighting.id == marker.id && (middle(&sighting.corners_px) - middle(&marker.corners)).norm() < 5.0
}

/// Ids found where no such marker is.
pub(crate) fn strays(truth: &[TrueMarker], found: &Sightings) -> Vec<u32> {
    found.markers.iter().filter(|s| !truth.iter().any(|m| same(s, m))).map(|s| s.id).collect()
}
