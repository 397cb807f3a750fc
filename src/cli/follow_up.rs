//! Photos that are added to a job from the command line: of a stand that was
//! moved, or one more of where it stands.

use std::path::{Path, PathBuf};

use super::output::{cannot_read, cannot_write, language, read_text, shown};
use crate::folder::{JobFile, JobFolder, MOST_MOVES, Models, PhotoEntry, write_durably};
use crate::input::digest_of_file;
use crate::setup::Setup;
use crate::words::say;

/// What the photos are of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Of {
    /// The stand where it stands after one more move.
    Move,
    /// The stand where the last photos found it.
    SamePlace,
}

/// The step that photos show, which a sheet with steps has to be told.
pub(super) fn step_of<'a>(setup: &Setup, said: Option<&'a str>) -> Result<Option<&'a str>, String> {
    let (language, sheet) = (language(), setup.name.as_str());
    let steps = || setup.steps.iter().map(|s| format!("--step \"{s}\"")).collect::<Vec<_>>().join(", ");
    match said {
        None if !setup.steps.is_empty() => Err(say!(language, "cli-move-step-lacks", sheet = sheet, steps = steps())),
        Some(step) if setup.steps.is_empty() => Err(say!(language, "cli-move-no-steps", sheet = sheet, step = step)),
        Some(step) if setup.steps.iter().all(|s| s != step) => {
            Err(say!(language, "cli-move-no-such-step", sheet = sheet, step = step, steps = steps()))
        }
        said => Ok(said),
    }
}

/// Copies photos into a job's `photos/` and lists them in its `job.toml`, after which move they were taken and which
/// step they show.
pub(super) fn add(job: &Path, files: &[PathBuf], of: Of, step: Option<&str>, models: &Models) -> Result<(), String> {
    let folder = JobFolder::open(job, models).map_err(|e| e.say(language()))?;
    let step = step_of(&folder.setup, step)?;
    let last = folder.photos.iter().map(|p| p.after_move).max().unwrap_or(0);
    let after_move = if of == Of::Move { last + 1 } else { last };
    if after_move > MOST_MOVES {
        return Err(say!(language(), "cli-move-too-often", job = shown(job), most = MOST_MOVES));
    }
    let mut entries: Vec<PhotoEntry> = folder
        .photos
        .iter()
        .map(|p| {
            let step = p.step.and_then(|i| folder.setup.steps.get(i).cloned());
            PhotoEntry { file: p.name.clone(), step, phase: p.phase, after_move: p.after_move }
        })
        .collect();
    for file in files {
        let name = copied(job, file, after_move)?;
        if entries.iter().any(|e| e.file == name) {
            return Err(say!(language(), "cli-move-is-there", photo = name, job = shown(job)));
        }
        entries.push(PhotoEntry { after_move, step: step.map(str::to_owned), ..PhotoEntry::plain(name) });
    }
    let changed = JobFile { photos: None, photo_entries: Some(entries), ..folder.job };
    write(&job.join("job.toml"), &changed)
}

/// The photo's name in the job; its file is there, under another name where its own was taken by another picture.
fn copied(job: &Path, file: &Path, after_move: u32) -> Result<String, String> {
    let own = file
        .file_name()
        .and_then(|n| n.to_str())
        .ok_or_else(|| say!(language(), "cli-move-no-name", file = shown(file)))?;
    let words = |e: crate::input::Error| e.say(language());
    let digest = digest_of_file(file).map_err(words)?;
    for name in [own.to_owned(), format!("move-{after_move}-{own}")] {
        let (inside, target) = (format!("photos/{name}"), job.join("photos").join(&name));
        if !target.exists() {
            let bytes = std::fs::read(file).map_err(|e| cannot_read(file, &e))?;
            std::fs::create_dir_all(job.join("photos"))
                .and_then(|()| write_durably(&target, &bytes))
                .map_err(|e| cannot_write(&target, &e))?;
            return Ok(inside);
        }
        if digest_of_file(&target).map_err(words)? == digest {
            return Ok(inside);
        }
    }
    Err(say!(language(), "cli-move-name-taken", folder = shown(&job.join("photos")), name = own))
}

fn write(path: &Path, job: &JobFile) -> Result<(), String> {
    let old = read_text(path)?;
    let text = job.text_instead_of(Some(&old)).map_err(|e| e.say(language()))?;
    write_durably(path, text.as_bytes()).map_err(|e| cannot_write(path, &e))
}
