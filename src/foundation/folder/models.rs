//! Where set-up sheets, kits and cameras are found by name.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use crate::camera::Profile;
use crate::input::{Error, SourceFile, nearest};
use crate::words::{Phrase, phrase};

use super::embedded::carried;
use super::kind::Kind;
use super::paths::{PathProblem, relative};

/// The environment variable that names a models folder.
const VARIABLE: &str = "BAYWITNESS_MODELS";

/// Where a file was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Origin {
    /// By its path, seen from the job folder.
    Job,
    /// In the models folder that the command named.
    ModelsOption,
    /// In the models folder that the environment names.
    Environment,
    /// In the installed data folder.
    Installed,
    /// Among those that the program carries.
    Embedded,
}

impl Origin {
    /// The words for records and messages.
    pub fn words(self) -> &'static str {
        match self {
            Origin::Job => "job folder",
            Origin::ModelsOption => "--models folder",
            Origin::Environment => "BAYWITNESS_MODELS folder",
            Origin::Installed => "installed models",
            Origin::Embedded => "embedded models",
        }
    }

    /// The place outside of a job's folder of which a record has these words.
    pub fn of_shared(words: &str) -> Option<Origin> {
        let all = [Origin::ModelsOption, Origin::Environment, Origin::Installed, Origin::Embedded];
        all.into_iter().find(|origin| origin.words() == words)
    }
}

/// Whether the program carries a model of this role, name and SHA-256.
pub fn is_embedded(role: &str, name: &str, sha256: &str) -> bool {
    let stem = name.trim_end_matches(".toml");
    let mut named = carried().filter(|(kind, own, _)| kind.name() == role && *own == stem);
    named.any(|(_, own, text)| SourceFile::new(own, text.as_bytes().to_vec()).sha256() == sha256)
}

/// A file that was read for a job.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct InputFile {
    /// `job`, `setup`, `kit`, `layout`, `camera` or `stand`.
    pub role: &'static str,
    /// As the job names it.
    pub name: String,
    /// Where it was found.
    pub origin: Origin,
    /// Its path; none for an embedded one.
    pub path: Option<PathBuf>,
    /// SHA-256 of its bytes, lower-case hexadecimal.
    pub sha256: String,
}

impl InputFile {
    /// The text of an embedded file.
    pub fn embedded_text(&self) -> Option<&'static str> {
        let stem = self.name.trim_end_matches(".toml");
        let named = carried().find(|(kind, name, _)| kind.name() == self.role && *name == stem);
        named.filter(|_| self.origin == Origin::Embedded).map(|(_, _, text)| text)
    }
}

/// The models folders in the order in which names are looked for, then the
/// embedded models.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Models {
    folders: Vec<(Origin, PathBuf)>,
}

/// A camera that may be chosen by a photo's EXIF.
#[derive(Debug, Clone, PartialEq)]
pub struct Candidate {
    /// The camera.
    pub profile: Profile,
    /// The file that it was read from.
    pub input: InputFile,
}

/// A file found by name, with its content.
pub(super) struct Found {
    pub(super) source: SourceFile,
    pub(super) input: InputFile,
}

impl Models {
    /// The embedded models alone.
    pub fn embedded() -> Self {
        Models { folders: Vec::new() }
    }

    /// The same with one more folder, looked into before all others; it may not exist yet.
    #[must_use]
    pub fn after(mut self, folder: PathBuf) -> Self {
        self.folders.insert(0, (Origin::ModelsOption, folder));
        self
    }

    /// One folder, as `--models` names it, then the embedded models.
    ///
    /// # Errors
    /// The folder does not exist.
    pub fn in_folder(folder: &Path) -> Result<Self, Error> {
        Ok(Models { folders: vec![(Origin::ModelsOption, existing(folder, "--models")?)] })
    }

    /// The folders of a command: `option` (its `--models DIR`), the one that
    /// `BAYWITNESS_MODELS` names, the installed ones, then the embedded models.
    ///
    /// # Errors
    /// A named folder does not exist: another model of the same name could
    /// otherwise be taken in silence.
    pub fn standard(option: Option<&Path>) -> Result<Self, Error> {
        let mut folders = Vec::new();
        if let Some(folder) = option {
            folders.push((Origin::ModelsOption, existing(folder, "--models")?));
        }
        if let Some(folder) = std::env::var_os(VARIABLE).filter(|v| !v.is_empty()) {
            folders.push((Origin::Environment, existing(Path::new(&folder), VARIABLE)?));
        }
        let beside_program =
            std::env::current_exe().ok().and_then(|exe| Some(exe.parent()?.parent()?.join("share/baywitness/models")));
        let system = cfg!(unix).then(|| PathBuf::from("/usr/share/baywitness/models"));
        for folder in beside_program.into_iter().chain(system) {
            if folder.is_dir() && folders.iter().all(|(_, f)| *f != folder) {
                folders.push((Origin::Installed, folder));
            }
        }
        Ok(Models { folders })
    }

    /// Finds a file by its path from the job folder or by its name.
    pub(super) fn find(&self, kind: Kind, name: &str, job_folder: &Path) -> Result<Found, PathProblem> {
        let path = relative(name)?;
        let has_ending = name.ends_with(".toml");
        let file_name = if has_ending { name.to_owned() } else { format!("{name}.toml") };
        let in_job = [job_folder.join(path), job_folder.join(&file_name)];
        if let Some(path) = in_job.into_iter().find(|p| p.is_file()) {
            return read(kind, name, Origin::Job, path);
        }
        if path.components().count() == 1 {
            for (origin, folder) in &self.folders {
                let mut paths = kind.folders().map(|below| folder.join(below).join(&file_name));
                if let Some(path) = paths.find(|p| p.is_file()) {
                    return read(kind, name, *origin, path);
                }
            }
            let stem = file_name.trim_end_matches(".toml");
            if let Some((_, stem, text)) = carried().find(|(k, n, _)| *k == kind && *n == stem) {
                return Ok(embedded(kind, stem, name, text));
            }
        }
        Err(self.not_found(kind, name, job_folder))
    }

    fn not_found(&self, kind: Kind, name: &str, job_folder: &Path) -> PathProblem {
        let shown: String = name.chars().take(200).collect();
        let folder = job_folder.display().to_string();
        let others: Vec<String> =
            self.folders.iter().map(|(_, f)| f.join(kind.folder()).display().to_string()).collect();
        // Only what is one: nobody is asked whether a job file was meant as the kit.
        let in_job = toml_files(job_folder).into_iter().filter(|(_, path)| is_of(kind, path));
        let in_job = in_job.map(|(stem, _)| format!("{stem}.toml"));
        let known: Vec<String> = self.names(kind).into_iter().chain(in_job).collect();
        let stem = name.trim_end_matches(".toml");
        let guess = |word: &str| nearest(word, known.iter().map(String::as_str));
        let (kind, others) = (kind.name(), others.join(", "));
        let problem = if others.is_empty() {
            phrase!("doors-not-found", kind = kind, name = shown, folder = folder)
        } else {
            phrase!("doors-not-found-either", kind = kind, name = shown, folder = folder, others = others)
        };
        let remedy = match guess(stem).or_else(|| guess(name)) {
            Some(guess) => phrase!("doors-not-found-guess", guess = guess),
            None => phrase!("doors-not-found-remedy"),
        };
        (problem, remedy)
    }

    /// Every name of a kind that can be found in the folders or is embedded.
    pub fn names(&self, kind: Kind) -> Vec<String> {
        let below = |folder: &PathBuf| kind.folders().map(|b| folder.join(b)).collect::<Vec<_>>();
        let in_folders = self.folders.iter().flat_map(|(_, f)| below(f)).flat_map(|f| toml_files(&f));
        let stems = in_folders.map(|(stem, _)| stem);
        let embedded = carried().filter(|(k, _, _)| *k == kind).map(|(_, name, _)| name.to_owned());
        stems.chain(embedded).collect::<BTreeSet<_>>().into_iter().collect()
    }
}

/// Every camera that a photo's EXIF may choose, in the order in which names
/// are looked for: `cameras/` of the job folder, of each models folder, then
/// the embedded ones. A name hides the same name further down.
///
/// # Errors
/// A camera file in one of these folders is wrong.
pub fn candidate_cameras(models: &Models, job_folder: &Path) -> Result<Vec<Candidate>, Error> {
    let job = std::iter::once((Origin::Job, job_folder.to_path_buf()));
    let mut seen = BTreeSet::new();
    let mut candidates = Vec::new();
    for (origin, folder) in job.chain(models.folders.iter().cloned()) {
        for (stem, path) in toml_files(&folder.join(Kind::Camera.folder())) {
            if seen.insert(stem.clone()) {
                let source = SourceFile::read(&path)?;
                let profile = Profile::from_toml(source.text()?, source.name())?;
                candidates.push(Candidate { profile, input: input(Kind::Camera, &stem, origin, Some(path), &source) });
            }
        }
    }
    for (kind, stem, text) in carried() {
        if kind == Kind::Camera && seen.insert(stem.to_owned()) {
            let found = embedded(kind, stem, stem, text);
            let profile = Profile::from_toml(text, found.source.name())?;
            candidates.push(Candidate { profile, input: found.input });
        }
    }
    Ok(candidates)
}

fn existing(folder: &Path, said_by: &str) -> Result<PathBuf, Error> {
    if folder.is_dir() {
        return Ok(folder.to_path_buf());
    }
    let problem = phrase!("doors-no-models-folder", said_by = said_by);
    Err(Error::new(folder.display().to_string(), problem, phrase!("doors-no-models-folder-remedy", said_by = said_by)))
}

/// Names without ending and paths of a folder's TOML files, sorted by name; a
/// folder that is not there has none.
fn toml_files(folder: &Path) -> Vec<(String, PathBuf)> {
    let Ok(entries) = std::fs::read_dir(folder) else { return Vec::new() };
    let mut files: Vec<(String, PathBuf)> = entries
        .filter_map(|entry| {
            let path = entry.ok()?.path();
            let stem = path.file_name()?.to_str()?.strip_suffix(".toml")?.to_owned();
            (!stem.starts_with('.') && path.is_file()).then_some((stem, path))
        })
        .collect();
    files.sort();
    files
}

/// Whether a file says by its format that it is of a kind.
fn is_of(kind: Kind, path: &Path) -> bool {
    let source = SourceFile::read(path).ok();
    let table = source.as_ref().and_then(|s| s.text().ok()?.parse::<toml::Table>().ok());
    let format = table.as_ref().and_then(|t| t.get("format")?.as_str()).unwrap_or_default();
    format.split_once('/').is_some_and(|(name, _)| name == kind.name() || kind == Kind::Kit && name == "rig")
}

/// What is wrong with a file that another one names; `kind` is its role there.
pub(super) fn file_problem(kind: &str, e: &Error) -> Phrase {
    phrase!("doors-named-file", kind = kind, file = e.file(), problem = e.problem().clone())
}

fn read(kind: Kind, name: &str, origin: Origin, path: PathBuf) -> Result<Found, PathProblem> {
    let source = SourceFile::read(&path).map_err(|e| (file_problem(kind.name(), &e), e.remedy().clone()))?;
    let input = input(kind, name, origin, Some(path), &source);
    Ok(Found { source, input })
}

fn embedded(kind: Kind, stem: &str, name: &str, text: &str) -> Found {
    let source = SourceFile::new(format!("{}/{stem}.toml (embedded)", kind.folder()), text.as_bytes().to_vec());
    let input = input(kind, name, Origin::Embedded, None, &source);
    Found { source, input }
}

fn input(kind: Kind, name: &str, origin: Origin, path: Option<PathBuf>, source: &SourceFile) -> InputFile {
    InputFile { role: kind.name(), name: name.to_owned(), origin, path, sha256: source.sha256() }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::marker::{Board, KitFile};
    use crate::setup::Setup;

    #[test]
    fn embedded_models_are_right_and_named_after_their_files() {
        for (kind, stem, text) in carried() {
            let name = match kind {
                Kind::Setup => Setup::from_toml(text, stem).unwrap().name,
                Kind::Kit => KitFile::from_toml(text, stem).unwrap().kit.name,
                Kind::Camera => Profile::from_toml(text, stem).unwrap().name,
                Kind::Stand => crate::setup::Stand::from_toml(text, stem).unwrap().name,
                // Boards carry no name.
                Kind::Board => Board::from_toml(text, stem).map(|_| stem.to_owned()).unwrap(),
            };
            assert_eq!(name, stem);
        }
    }

    #[test]
    fn every_model_file_is_embedded() {
        for kind in [Kind::Setup, Kind::Kit, Kind::Camera, Kind::Board] {
            let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../models").join(kind.folder());
            for (stem, _) in toml_files(&folder) {
                assert!(carried().any(|(k, s, _)| k == kind && s == stem), "{stem} is not embedded");
            }
        }
    }
}
