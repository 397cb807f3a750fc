//! A job folder as a whole: every file that the job names, read and checked.

use std::path::{Path, PathBuf};

use crate::camera::Profile;
use crate::input::{Document, Error, Problem, SourceFile, did_you_mean, digest_of_file};
use crate::marker::{Kit, KitFile, MAX_LAYOUT_BYTES, Role, read_layout};
use crate::setup::{Setup, Stand, unknown_from};
use crate::words::phrase;

use super::file::MOST_PHOTOS;
use super::job_file::{JobFile, Phase, PhotoEntry};
use super::kind::Kind;
use super::models::{Candidate, Found, InputFile, Models, Origin, candidate_cameras, file_problem};
use super::paths::{PathProblem, inside, relative};
use super::pictures::{Unlisted, is_picture, unlisted};

/// A job with all that it names but the photos' content.
#[derive(Debug, Clone, PartialEq)]
pub struct JobFolder {
    /// The folder, as it was named.
    pub folder: PathBuf,
    /// The job file.
    pub job: JobFile,
    /// The set-up sheet.
    pub setup: Setup,
    /// The kit with its layout.
    pub kit: Kit,
    /// The camera that the job names; none: chosen per photo among `candidates`.
    pub camera: Option<Profile>,
    /// The stand's screws, where the job names a stand file.
    pub stand: Option<Stand>,
    /// Where the job names no camera: those that a photo's EXIF may choose.
    pub candidates: Vec<Candidate>,
    /// The photos, sorted by name: the order in which a job lists them decides nothing.
    pub photos: Vec<PhotoFile>,
    /// Photos that lie beside them and take no part: those that a job does not list which lists its photos.
    pub unlisted: Vec<Unlisted>,
    /// The attachments in the job's order.
    pub attachments: Vec<AttachedFile>,
    /// Every file that was read: job, setup, kit, layout, camera. A candidate's
    /// is in the candidate, to be added where it is chosen.
    pub inputs: Vec<InputFile>,
}

/// A photo of a job.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PhotoFile {
    /// Relative to the job folder, with `/`.
    pub name: String,
    /// Where it lies.
    pub path: PathBuf,
    /// The step that it shows, by index in the set-up sheet.
    pub step: Option<usize>,
    /// Whether it was taken before or after the calibration ran.
    pub phase: Option<Phase>,
    /// How often the stand had been moved when it was taken.
    pub after_move: u32,
}

/// The largest attachment, bytes; films of a calibration are kept too.
pub const MOST_ATTACHMENT: u64 = 1 << 30;

/// An attachment of a job.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct AttachedFile {
    /// Relative to the job folder, with `/`.
    pub name: String,
    /// scan-before, scan-after, alignment, procedure, overview-photo or other.
    pub kind: String,
    /// Where it lies.
    pub path: PathBuf,
    /// SHA-256, lower-case hexadecimal.
    pub sha256: String,
}

impl JobFolder {
    /// Opens a job folder and reads everything that it names except the photos.
    ///
    /// # Errors
    /// Anything unreadable, wrong or missing: names file, line, key and remedy.
    pub fn open(folder: &Path, models: &Models) -> Result<Self, Error> {
        let (source, real_folder) = read_job_file(folder)?;
        let document = JobFile::document(source.text()?, source.name())?;
        let job = JobFile::from_document(&document)?;
        let mut inputs = vec![InputFile {
            role: "job",
            name: "job.toml".to_owned(),
            origin: Origin::Job,
            path: Some(folder.join("job.toml")),
            sha256: source.sha256(),
        }];
        let find = |kind: Kind, name: &str| {
            models.find(kind, name, folder).map_err(|problem| document.error(&problem_at(kind.name(), problem)))
        };
        let kit = read_kit(find(Kind::Kit, &job.kit)?, &mut inputs)?;
        let setup = read_setup(find(Kind::Setup, &job.setup)?, &kit, &mut inputs)?;
        check_readings(&job, &setup, &kit).map_err(|p| document.error(&p))?;
        let camera = match &job.camera {
            Some(name) => Some(read_camera(find(Kind::Camera, name)?, &mut inputs)?),
            None => None,
        };
        let stand = match &job.stand {
            Some(name) => Some(read_stand(find(Kind::Stand, name)?, &mut inputs)?),
            None => None,
        };
        check_turns(&job, stand.as_ref()).map_err(|p| document.error(&p))?;
        let candidates = if camera.is_none() { candidate_cameras(models, folder)? } else { Vec::new() };
        let photos = find_photos(&job, &setup, &document, &real_folder)?;
        let attachments = find_attachments(&job, &document, &real_folder)?;
        let lists = job.photos.is_some() || job.photo_entries.is_some();
        let named: Vec<&PathBuf> = photos.iter().map(|p| &p.path).chain(attachments.iter().map(|a| &a.path)).collect();
        let unlisted = if lists { unlisted(&real_folder, &named) } else { Vec::new() };
        Ok(JobFolder {
            folder: folder.to_path_buf(),
            unlisted,
            photos: photos.into_iter().map(|photo| below(folder, &real_folder, photo)).collect(),
            attachments,
            job,
            setup,
            kit,
            camera,
            stand,
            candidates,
            inputs,
        })
    }
}

/// The job file and the folder's real path.
fn read_job_file(folder: &Path) -> Result<(SourceFile, PathBuf), Error> {
    let name = folder.display().to_string();
    let real = std::fs::canonicalize(folder).map_err(|e| {
        Error::new(&name, phrase!("doors-job-unopened", why = e.to_string()), phrase!("doors-job-unopened-remedy"))
    })?;
    if !real.is_dir() {
        return Err(Error::new(name, phrase!("doors-job-is-file"), phrase!("doors-job-is-file-remedy")));
    }
    let path = folder.join("job.toml");
    if !path.exists() {
        let remedy = match named_otherwise(&real) {
            Some(file) => phrase!("doors-no-job-renamed", file = file),
            None => phrase!("doors-no-job-remedy"),
        };
        return Err(Error::new(path.display().to_string(), phrase!("doors-no-job"), remedy));
    }
    Ok((SourceFile::read(&path)?, real))
}

/// A photo by its path from where the job's folder was named, as messages name all other files.
fn below(folder: &Path, real: &Path, photo: PhotoFile) -> PhotoFile {
    let inside = photo.path.strip_prefix(real).map(|inside| folder.join(inside));
    PhotoFile { path: inside.unwrap_or_else(|_| photo.path.clone()), ..photo }
}

/// A job file under another name, such as editors give it whose endings are hidden.
fn named_otherwise(folder: &Path) -> Option<String> {
    const NAMES: [&str; 4] = ["job.toml.txt", "job.toml", "job.txt", "job"];
    let entries = std::fs::read_dir(folder).ok()?.flatten().filter(|entry| entry.path().is_file());
    let names: Vec<String> = entries.filter_map(|entry| entry.file_name().into_string().ok()).collect();
    NAMES.iter().find_map(|wanted| names.iter().find(|name| name.to_lowercase() == *wanted).cloned())
}

fn read_kit(found: Found, inputs: &mut Vec<InputFile>) -> Result<Kit, Error> {
    let Found { source, input } = found;
    let text = source.text()?;
    let KitFile { mut kit, layout } = KitFile::from_toml(text, source.name())?;
    let beside = input.path.as_deref().and_then(Path::parent).map(Path::to_path_buf);
    let (origin, kit_sha256) = (input.origin, input.sha256.clone());
    inputs.push(input);
    if let Some(name) = layout {
        let document = Document::parse(text, source.name(), crate::marker::KIT_FORMAT)?;
        let wrong = |problem| document.error(&problem_at("layout", problem));
        let path = beside.unwrap_or_default().join(relative(&name).map_err(wrong)?);
        let file = SourceFile::read_up_to(&path, MAX_LAYOUT_BYTES)
            .map_err(|e| wrong((file_problem("layout", &e), e.remedy().clone())))?;
        kit.layout = Some(read_layout(&file, &kit, &kit_sha256)?);
        inputs.push(InputFile { role: "layout", name, origin, path: Some(path), sha256: file.sha256() });
    }
    Ok(kit)
}

fn read_setup(found: Found, kit: &Kit, inputs: &mut Vec<InputFile>) -> Result<Setup, Error> {
    let document = Setup::document(found.source.text()?, found.source.name())?;
    let setup = Setup::from_document(&document)?;
    setup.check_against(kit).map_err(|problem| document.error(&problem))?;
    inputs.push(found.input);
    Ok(setup)
}

fn read_camera(found: Found, inputs: &mut Vec<InputFile>) -> Result<Profile, Error> {
    let profile = Profile::from_toml(found.source.text()?, found.source.name())?;
    inputs.push(found.input);
    Ok(profile)
}

fn read_stand(found: Found, inputs: &mut Vec<InputFile>) -> Result<Stand, Error> {
    let stand = Stand::from_toml(found.source.text()?, found.source.name())?;
    inputs.push(found.input);
    Ok(stand)
}

/// Only a stand's own screws can have been turned.
fn check_turns(job: &JobFile, stand: Option<&Stand>) -> Result<(), Problem> {
    for (i, made) in job.moves.iter().enumerate() {
        for screw in made.turned.keys() {
            let key = format!("move[{i}].turned.{screw}");
            let Some(stand) = stand else {
                return Err(problem_at(&key, (phrase!("doors-no-stand"), phrase!("doors-no-stand-remedy"))));
            };
            if stand.screw(screw).is_none() {
                let problem = phrase!("doors-no-screw", screw = screw, stand = &stand.name);
                let known = did_you_mean(screw, stand.screws.iter().map(|s| s.name.as_str()));
                return Err(problem_at(&key, (problem, known)));
            }
        }
    }
    Ok(())
}

/// Readings may be taken from the sheet's datums, of the kit's targets, in the sheet's steps.
fn check_readings(job: &JobFile, setup: &Setup, kit: &Kit) -> Result<(), Problem> {
    let targets: Vec<&str> = kit.with_role(Role::Target).map(|k| kit.carriers[k].name.as_str()).collect();
    for (i, reading) in job.readings.iter().enumerate() {
        if let Some(name) = reading.target.as_deref().filter(|name| !targets.contains(name)) {
            let problem = phrase!("doors-no-carrier", name = name, what = "target", kit = &kit.name);
            let known = did_you_mean(name, targets.iter().copied());
            return Err(problem_at(&format!("reading[{i}].target"), (problem, known)));
        }
        if let Some(step) = &reading.step {
            step_of(setup, step).map_err(|problem| problem_at(&format!("reading[{i}].step"), problem))?;
        }
        if let Some(problem) = unknown_from(reading.from.as_ref(), &setup.datums) {
            return Err(problem_at(&format!("reading[{i}].from"), problem));
        }
    }
    Ok(())
}

fn find_photos(job: &JobFile, setup: &Setup, document: &Document, folder: &Path) -> Result<Vec<PhotoFile>, Error> {
    let entries = match (&job.photo_entries, &job.photos) {
        (Some(entries), _) => entries.clone(),
        (None, Some(names)) => plain(names),
        (None, None) => plain(
            &pictures_in(&folder.join("photos"))
                .map_err(|(problem, remedy)| Error::new(document.file(), problem, remedy))?,
        ),
    };
    let mut photos: Vec<PhotoFile> = Vec::new();
    for (i, PhotoEntry { file: name, step, phase, after_move }) in entries.into_iter().enumerate() {
        let key = match (&job.photo_entries, &job.photos) {
            (Some(_), _) => format!("photo[{i}].file"),
            (None, Some(_)) => format!("photos[{i}]"),
            (None, None) => String::new(),
        };
        let wrong = |problem| document.error(&problem_at(&key, problem));
        let path = inside(folder, &name).map_err(wrong)?;
        if let Some(earlier) = photos.iter().find(|p| p.path == path) {
            return Err(wrong((
                phrase!("doors-same-file", name = name, earlier = &earlier.name),
                phrase!("doors-photo-once"),
            )));
        }
        let step = step
            .map(|s| step_of(setup, &s))
            .transpose()
            .map_err(|problem| document.error(&problem_at(&format!("photo[{i}].step"), problem)))?;
        photos.push(PhotoFile { name, path, step, phase, after_move });
    }
    // Sums are rounded in the order of their terms: one order, one answer to the last bit.
    // Those of a move follow those before it, so that what happened in between is a cut of the series.
    photos.sort_by(|a, b| (a.after_move, &a.name).cmp(&(b.after_move, &b.name)));
    Ok(photos)
}

fn plain(names: &[String]) -> Vec<PhotoEntry> {
    names.iter().map(PhotoEntry::plain).collect()
}

/// A step of the sheet by its name, or what is wrong and the remedy.
fn step_of(setup: &Setup, name: &str) -> Result<usize, PathProblem> {
    setup.steps.iter().position(|s| s == name).ok_or_else(|| {
        let problem = phrase!("doors-no-step", step = name, sheet = &setup.name);
        if setup.steps.is_empty() {
            return (problem, phrase!("doors-no-steps-remedy"));
        }
        (problem, did_you_mean(name, setup.steps.iter().map(String::as_str)))
    })
}

/// Names (`photos/...`) of all pictures in a folder, sorted.
pub(super) fn pictures_in(folder: &Path) -> Result<Vec<String>, PathProblem> {
    let remedy = || phrase!("doors-photos-remedy");
    let entries =
        std::fs::read_dir(folder).map_err(|e| (phrase!("doors-photos-no-folder", why = e.to_string()), remedy()))?;
    let mut names = Vec::new();
    for entry in entries {
        let entry = entry.map_err(|e| (phrase!("doors-photos-unreadable", why = e.to_string()), remedy()))?;
        let name = entry.file_name();
        if !is_picture(Path::new(&name)) {
            continue;
        }
        let Some(name) = name.to_str() else {
            return Err((
                phrase!("doors-photo-name", name = Path::new(&name).display().to_string()),
                phrase!("doors-photo-name-remedy"),
            ));
        };
        names.push(format!("photos/{name}"));
    }
    if names.is_empty() {
        return Err((phrase!("doors-photos-empty"), remedy()));
    }
    if names.len() > MOST_PHOTOS {
        return Err((phrase!("doors-photos-too-many", most = MOST_PHOTOS), phrase!("doors-split-the-job")));
    }
    names.sort();
    Ok(names)
}

fn find_attachments(job: &JobFile, document: &Document, folder: &Path) -> Result<Vec<AttachedFile>, Error> {
    let attach = |(i, attachment): (usize, &super::job_file::Attachment)| {
        let key = format!("attachment[{i}].file");
        let path = inside(folder, &attachment.file).map_err(|problem| document.error(&problem_at(&key, problem)))?;
        // Before it is read: a file may be without end and take no room on the disk.
        if std::fs::metadata(&path).is_ok_and(|file| file.len() > MOST_ATTACHMENT) {
            let too_large = phrase!("doors-attachment-large", most = MOST_ATTACHMENT >> 20);
            return Err(document.error(&problem_at(&key, (too_large, phrase!("doors-attachment-large-remedy")))));
        }
        let sha256 = digest_of_file(&path)?;
        Ok(AttachedFile { name: attachment.file.clone(), kind: attachment.kind.clone(), path, sha256 })
    };
    job.attachments.iter().enumerate().map(attach).collect()
}

fn problem_at(key: &str, (problem, remedy): PathProblem) -> Problem {
    Problem { key: key.to_owned(), problem, remedy }
}
