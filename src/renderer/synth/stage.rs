//! Writing a scene as a job folder with its truth.

use std::fs;
use std::path::{Path, PathBuf};

use time::format_description::BorrowedFormatItem;
use time::macros::format_description;
use time::{Duration, OffsetDateTime};

use super::develop::{Record, compress, mark, smaller};
use super::error::Error;
use super::photo::LinearPicture;
use super::scene::{PhotoSpec, Scene};
use super::truth::Truth;
use crate::folder::JobFile;

const EXIF_TIME: &[BorrowedFormatItem<'_>] = format_description!("[year]:[month]:[day] [hour]:[minute]:[second]");
const EXIF_OFFSET: &[BorrowedFormatItem<'_>] = format_description!("[offset_hour sign:mandatory]:[offset_minute]");
/// Between one photo and the next, where the scene does not say, seconds.
const PAUSE_S: f64 = 37.0;
/// Width of a thumbnail (Exif 2.32 wants 160 by 120).
const THUMBNAIL_PX: usize = 160;

impl Scene {
    /// Writes the job folder: photos, `job.toml`, `setup.toml`, `kit.toml`,
    /// `camera.toml`, the attachments that the job names, and `truth.json`.
    ///
    /// `progress` is called with each photo's name before it is rendered.
    ///
    /// # Errors
    /// A file cannot be read or written, or the job's keys are wrong.
    pub fn stage(&self, folder: &Path, progress: &mut dyn FnMut(&str)) -> Result<Truth, Error> {
        self.stage_lit(folder, &[], progress)
    }

    /// The same with the photos' light traced before ([`Scene::render_linear`], see [`Scene::develop`]); photos
    /// beyond the list are traced.
    ///
    /// # Errors
    /// As [`Scene::stage`].
    pub fn stage_lit(
        &self,
        folder: &Path,
        lights: &[LinearPicture],
        progress: &mut dyn FnMut(&str),
    ) -> Result<Truth, Error> {
        let job = self.job_toml()?;
        let file = JobFile::from_toml(&job, "[job]").map_err(Error::Job)?;
        make(&folder.join("photos"))?;
        write(&folder.join("job.toml"), job.as_bytes())?;
        write(&folder.join("setup.toml"), self.setup.to_toml().as_bytes())?;
        write(&folder.join("kit.toml"), self.kit.to_toml(None).as_bytes())?;
        write(&folder.join("camera.toml"), self.camera.to_toml().as_bytes())?;
        for attachment in &file.attachments {
            self.copy(&attachment.file, folder)?;
        }
        for (index, photo) in self.photos().iter().enumerate() {
            progress(&photo.file);
            write(&folder.join("photos").join(&photo.file), &self.jpeg(index, photo, lights.get(index))?)?;
        }
        let truth = self.truth();
        let text = serde_json::to_string_pretty(&truth).map_err(|e| Error::Truth(e.to_string()))?;
        write(&folder.join("truth.json"), text.as_bytes())?;
        Ok(truth)
    }

    /// The job file: the scene's job keys and what is staged.
    fn job_toml(&self) -> Result<String, Error> {
        let mut own = toml::Table::new();
        own.insert("setup".to_owned(), "setup.toml".into());
        own.insert("kit".to_owned(), "kit.toml".into());
        own.insert("camera".to_owned(), "camera.toml".into());
        let photos = self.photos();
        let plain = photos.iter().all(|p| p.step.is_none() && p.phase.is_none() && p.after_move == 0);
        let mut entries = toml::Table::new();
        if plain {
            let names: Vec<String> = photos.iter().map(|p| format!("photos/{}", p.file)).collect();
            own.insert("photos".to_owned(), names.into());
        } else {
            entries.insert("photo".to_owned(), toml::Value::Array(photos.iter().map(photo_entry).collect()));
        }
        if !self.spec.job.contains_key("job") {
            own.insert("job".to_owned(), "STAGED-1".into());
        }
        if self.says_rendered && !self.spec.job.contains_key("rendered") {
            own.insert("rendered".to_owned(), true.into());
        }
        let text = |table: &toml::Table| toml::to_string(table).map_err(|e| Error::Truth(e.to_string()));
        Ok(format!("format = \"job/1\"\n{}{}\n{}", text(&own)?, text(&self.spec.job)?, text(&entries)?))
    }

    fn copy(&self, name: &str, folder: &Path) -> Result<(), Error> {
        let source = self.folder.clone().unwrap_or_default().join(name);
        let bytes = fs::read(&source).map_err(|e| Error::Read { path: source, source: e })?;
        let target = folder.join(name);
        make(target.parent().unwrap_or(folder))?;
        write(&target, &bytes)
    }

    /// One photo as the file that the camera writes.
    fn jpeg(&self, index: usize, photo: &PhotoSpec, light: Option<&LinearPicture>) -> Result<Vec<u8>, Error> {
        let picture = match light {
            Some(light) => self.develop(index, light),
            None => self.render_photo(index),
        };
        let Some(mut picture) = picture else { return Ok(Vec::new()) };
        if self.says_rendered {
            mark(&mut picture, &self.corners(index).iter().map(|m| m.corners_px).collect::<Vec<_>>());
        }
        let quality = self.jpeg_quality(&self.spec.processing.changed(&photo.processing));
        let mut record = photo.exif.then(|| self.record(index, photo));
        if let (Some(record), Some(other)) = (&mut record, &photo.record.thumbnail_of) {
            record.thumbnail = self.thumbnail(other)?;
        }
        let record = record.map(|r| r.tiff()).or_else(|| self.says_rendered.then(Record::of_mark_alone));
        compress(&picture, quality, record.as_deref())
            .map_err(|message| Error::Compress { photo: photo.file.clone(), message })
    }

    fn record(&self, index: usize, photo: &PhotoSpec) -> Record {
        let later = photo.seconds_later.unwrap_or(PAUSE_S * index as f64);
        let taken = self.taken() + Duration::seconds_f64(later) + Duration::days(photo.record.days_later);
        let exif = self.camera.exif.clone().unwrap_or_default();
        let film = 36.0 * self.camera.lens.focal_px[0] / f64::from(self.camera.image_size_px[0]);
        Record {
            make: exif.make.unwrap_or_else(|| "Example".to_owned()),
            model: exif.model.unwrap_or_else(|| self.camera.name.clone()),
            orientation: photo.orientation,
            taken: taken.format(EXIF_TIME).unwrap_or_default(),
            offset: (!photo.record.without_offset).then(|| taken.format(EXIF_OFFSET).unwrap_or_default()),
            rendered: self.says_rendered,
            processing_software: photo.record.processing_software.clone(),
            thumbnail: Vec::new(),
            focal_mm: exif.focal_length_mm.unwrap_or(film / 5.0),
            focal_35mm: photo.record.focal_35mm.unwrap_or((film * photo.digital_zoom).round() as u16),
            digital_zoom: photo.digital_zoom,
            size_px: self.camera.image_size_px.map(|s| (f64::from(s) * self.scale).round() as u32),
        }
    }

    /// A photo of the scene as its camera's thumbnail.
    fn thumbnail(&self, file: &str) -> Result<Vec<u8>, Error> {
        let shown = self.photos().iter().position(|p| p.file == file).and_then(|index| self.render_photo(index));
        let Some(picture) = shown else { return Ok(Vec::new()) };
        compress(&smaller(&picture, THUMBNAIL_PX), 75, None)
            .map_err(|message| Error::Compress { photo: file.to_owned(), message })
    }

    /// The job's time, else a fixed one of the invented scenario.
    fn taken(&self) -> OffsetDateTime {
        let stated = self.spec.job.get("taken").and_then(|t| t.to_string().parse().ok());
        let invented = time::macros::datetime!(2026-02-03 10:15:00 +01:00);
        stated.and_then(|t: toml::value::Datetime| offset_time(&t)).unwrap_or(invented)
    }
}

/// A photo with its step and phase, as the job file has it.
fn photo_entry(photo: &PhotoSpec) -> toml::Value {
    let mut entry = toml::Table::new();
    entry.insert("file".to_owned(), format!("photos/{}", photo.file).into());
    for (key, value) in [("step", &photo.step), ("phase", &photo.phase)] {
        if let Some(value) = value {
            entry.insert(key.to_owned(), value.clone().into());
        }
    }
    if photo.after_move > 0 {
        entry.insert("after_move".to_owned(), i64::from(photo.after_move).into());
    }
    entry.into()
}

fn offset_time(t: &toml::value::Datetime) -> Option<OffsetDateTime> {
    OffsetDateTime::parse(&t.to_string(), &time::format_description::well_known::Rfc3339).ok()
}

fn make(folder: &Path) -> Result<(), Error> {
    fs::create_dir_all(folder).map_err(|source| Error::Write { path: folder.to_path_buf(), source })
}

fn write(path: &Path, bytes: &[u8]) -> Result<(), Error> {
    fs::write(path, bytes).map_err(|source| Error::Write { path: PathBuf::from(path), source })
}
