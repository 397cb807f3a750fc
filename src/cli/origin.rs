//! Which camera took a job's photos, by the sensor's own pattern (feature `sensor-pattern`).

use std::path::{Path, PathBuf};

use rayon::prelude::*;

use super::output::{cannot_read, language};
use crate::pattern::{self, Digest, Doubt, Estimate, Found, Grey, LIMIT_BYTES, MATCH_PCE, Says, Search, find, judge};
use crate::photo::{self, Luma};
use crate::record::JobRecord;
use crate::words::{Figure, Language, Phrase, phrase, say};

/// What ends a pattern's file name.
const EXTENSION: &str = "pattern";

/// The patterns of the cameras that are known.
pub(super) struct Cameras(Vec<Digest>);

/// What is said of one photo, with its keys in JSON.
#[derive(serde::Serialize)]
pub(super) struct Told {
    file: String,
    camera: Option<String>,
    says: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    why: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    other: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    chance: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    place: Option<Place>,
    message: String,
    message_phrase: Phrase,
}

/// Where a pattern was found, and how well.
#[derive(serde::Serialize)]
struct Place {
    energy: f64,
    shift_px: [i32; 2],
    turn_deg: u16,
    scale: f64,
}

pub(super) const THIS: &str = "this_camera";
pub(super) const ANOTHER: &str = "another_camera";
pub(super) const CANT_TELL: &str = "cant_tell";

fn grey(luma: &Luma) -> Grey<'_> {
    Grey { width: luma.width(), height: luma.height(), pixels: luma.pixels() }
}

impl Cameras {
    /// All patterns of a folder.
    pub(super) fn read(folder: &Path) -> Result<Self, String> {
        let entries = std::fs::read_dir(folder).map_err(|e| cannot_read(folder, &e))?;
        let named = |path: &PathBuf| path.extension().is_some_and(|e| e == EXTENSION);
        let mut files: Vec<PathBuf> = entries.filter_map(|e| Some(e.ok()?.path())).filter(named).collect();
        files.sort();
        let mut known: Vec<(String, Digest)> = Vec::new();
        for file in files {
            let name = file.display().to_string();
            let digest = read(&file)?;
            if let Some((first, _)) = known.iter().find(|(_, d)| d.camera == digest.camera) {
                return Err(say!(language(), "pattern-twice", first = first, second = name, camera = digest.camera));
            }
            known.push((name, digest));
        }
        if known.is_empty() {
            return Err(say!(language(), "pattern-none", folder = folder.display().to_string()));
        }
        Ok(Cameras(known.into_iter().map(|(_, digest)| digest).collect()))
    }

    /// Over all of them: other patterns, another digest.
    pub(super) fn digest(&self) -> String {
        let bytes: Vec<u8> = self.0.iter().flat_map(Digest::to_bytes).collect();
        photo::sha256(&bytes)
    }

    fn says(&self, luma: &Luma, camera: &str) -> Says {
        let photo = grey(luma);
        let Some(own) = self.0.iter().find(|d| d.camera == camera) else { return judge(None, []) };
        let mut here = find(&photo, own, Search::Plain);
        if here.pce >= MATCH_PCE {
            return judge(Some((own, here)), []);
        }
        let look = |digest: &'_ Digest| -> Found { find(&photo, digest, Search::Plain) };
        let others: Vec<(&Digest, Found)> =
            self.0.iter().filter(|d| d.camera != camera).map(|d| (d, look(d))).collect();
        if others.iter().all(|(_, found)| found.pce < MATCH_PCE) {
            here = find(&photo, own, Search::Scaled);
        }
        judge(Some((own, here)), others)
    }

    /// Looks at a job's photos; `job` is its folder.
    pub(super) fn of_job(&self, job: &Path, record: &JobRecord) -> Result<Vec<Told>, String> {
        let of_photo = |photo: &crate::record::PhotoRecord| {
            let Some(camera) = &photo.camera else { return Ok(Told::without_camera(&photo.file)) };
            let luma = photo::read(&job.join(&photo.file)).map_err(|e| e.phrase().say(language()))?.luma;
            Ok(Told::of(&photo.file, camera, self.says(&luma, camera)))
        };
        record.photos.par_iter().map(of_photo).collect()
    }
}

fn read(file: &Path) -> Result<Digest, String> {
    let size = std::fs::metadata(file).map_err(|e| cannot_read(file, &e))?.len();
    // What is too large is named so without being read.
    let bytes = match size > LIMIT_BYTES as u64 {
        true => vec![0; LIMIT_BYTES + 1],
        false => std::fs::read(file).map_err(|e| cannot_read(file, &e))?,
    };
    Digest::from_bytes(&bytes, &file.display().to_string()).map_err(|e| e.phrase().say(language()))
}

impl Told {
    fn without_camera(file: &str) -> Told {
        Told::new(file, None, CANT_TELL, phrase!("pattern-no-camera", photo = file))
    }

    fn new(file: &str, camera: Option<&str>, says: &'static str, phrase: Phrase) -> Told {
        Told {
            file: file.to_owned(),
            camera: camera.map(str::to_owned),
            says,
            why: None,
            other: None,
            chance: None,
            place: None,
            message: phrase.say(Language::English),
            message_phrase: phrase,
        }
    }

    fn of(file: &str, camera: &str, says: Says) -> Told {
        let shown = |chance: f64| Figure::plain(chance);
        let place = |found: &Found| {
            let energy = (10.0 * found.pce).round() / 10.0;
            Some(Place { energy, shift_px: found.shift_px, turn_deg: found.turn_deg, scale: found.scale })
        };
        match says {
            Says::ThisCamera { chance, found } => {
                let phrase = phrase!("pattern-this-camera", photo = file, camera = camera, chance = shown(chance));
                let told = Told::new(file, Some(camera), THIS, phrase);
                Told { chance: Some(chance), place: place(&found), ..told }
            }
            Says::AnotherCamera { camera: other, chance, found } => {
                let phrase = phrase!(
                    "pattern-another-camera",
                    photo = file,
                    camera = camera,
                    other = other.as_str(),
                    chance = shown(chance)
                );
                let told = Told::new(file, Some(camera), ANOTHER, phrase);
                Told { chance: Some(chance), place: place(&found), other: Some(other), ..told }
            }
            Says::CantTell(doubt) => {
                let why = match doubt {
                    Doubt::NoPattern => "no-pattern",
                    Doubt::Faint => "faint",
                    Doubt::MightHide => "might-hide",
                    Doubt::Alike => "alike",
                };
                let phrase = phrase!("pattern-cant-tell", photo = file, camera = camera, why = why);
                Told { why: Some(why), ..Told::new(file, Some(camera), CANT_TELL, phrase) }
            }
        }
    }

    /// What is said: [`THIS`], [`ANOTHER`] or [`CANT_TELL`].
    pub(super) fn says(&self) -> &'static str {
        self.says
    }

    /// The same in words.
    pub(super) fn phrase(&self) -> &Phrase {
        &self.message_phrase
    }
}

/// A heading and a line for each photo.
pub(super) fn words(told: &[Told], language: Language) -> String {
    let lines = told.iter().map(|t| format!("  {}\n", t.phrase().say(language)));
    format!("{}\n{}", say!(language, "pattern-title"), lines.collect::<String>())
}

/// A camera's pattern from its photos, in the bytes of its file, and what is said of it; or why there is none.
pub(super) fn made(camera: &str, photos: &[PathBuf]) -> Result<(Vec<u8>, String), Refused> {
    let each = |take: &mut dyn FnMut(&Grey<'_>, &str) -> Result<(), Refused>| -> Result<(), Refused> {
        for path in photos {
            let luma = photo::read(path).map_err(|e| Refused::Unreadable(e.phrase().say(language())))?.luma;
            take(&grey(&luma), &path.display().to_string())?;
        }
        Ok(())
    };
    let mut estimate = Estimate::default();
    each(&mut |photo, name| Ok(estimate.add(photo, name)?))?;
    let again = |look: &mut dyn FnMut(&Grey<'_>)| {
        each(&mut |photo, _| {
            look(photo);
            Ok(())
        })
    };
    let digest = estimate.digest(camera, again)?;
    let words = say!(
        language(),
        "pattern-made",
        shown = digest.shown,
        photos = digest.photos,
        energy = Figure::fixed(f64::from(digest.median_pce), 0),
        needed = Figure::fixed(MATCH_PCE, 0),
    );
    Ok((digest.to_bytes(), words))
}

/// Why no pattern was made.
pub(super) enum Refused {
    /// A photo cannot be read.
    Unreadable(String),
    /// The photos do not make one.
    Unfit(String),
}

impl From<pattern::Error> for Refused {
    fn from(why: pattern::Error) -> Self {
        Refused::Unfit(why.phrase().say(language()))
    }
}
