//! Changes of a job file: read, changed, read back as `verify` will, and only
//! then written.

use std::collections::BTreeSet;
use std::path::Path;

use crate::folder::{JobFile, Phase, PhotoEntry, is_of_tripod, write_durably};
use crate::input::SourceFile;
use crate::web::trouble::Trouble;

/// Reads a job file.
pub(in crate::web) fn read(folder: &Path) -> Result<JobFile, Trouble> {
    let source = SourceFile::read(&folder.join("job.toml"))?;
    Ok(JobFile::from_toml(source.text()?, "job.toml")?)
}

/// Writes a job file that reads back; it is on the disk when this returns.
pub(in crate::web) fn write(folder: &Path, job: &JobFile) -> Result<(), Trouble> {
    let path = folder.join("job.toml");
    let text = job.text_instead_of(std::fs::read_to_string(&path).ok().as_deref())?;
    write_durably(&path, text.as_bytes()).map_err(|e| Trouble::disk("job", &e))
}

/// Changes a job file; whoever calls holds the job's lock.
pub(in crate::web) fn change<T>(
    folder: &Path,
    change: impl FnOnce(&mut JobFile) -> Result<T, Trouble>,
) -> Result<T, Trouble> {
    let mut job = read(folder)?;
    let before = job.clone();
    let answer = change(&mut job)?;
    if job != before {
        write(folder, &job)?;
    }
    Ok(answer)
}

/// The photos that a job file lists; where it lists none, those in `photos/`,
/// as `verify` takes them.
pub(in crate::web) fn photos(folder: &Path, job: &JobFile) -> Vec<PhotoEntry> {
    match (&job.photo_entries, &job.photos) {
        (Some(entries), _) => entries.clone(),
        (None, Some(names)) => names.iter().cloned().map(PhotoEntry::plain).collect(),
        (None, None) => in_folder(folder).into_iter().map(PhotoEntry::plain).collect(),
    }
}

fn in_folder(folder: &Path) -> Vec<String> {
    let Ok(entries) = std::fs::read_dir(folder.join("photos")) else { return Vec::new() };
    let mut names: Vec<String> = entries
        .filter_map(|e| e.ok()?.file_name().into_string().ok())
        .filter(|name| {
            let ending = Path::new(name).extension().and_then(|e| e.to_str()).unwrap_or_default().to_lowercase();
            !name.starts_with('.') && ["jpg", "jpeg", "png", "heic"].contains(&ending.as_str())
        })
        .map(|name| format!("photos/{name}"))
        .collect();
    names.sort();
    names
}

/// Names of the photos that opening the job's page would have measured: those of [`photos`], and what [`adopt`] lists.
pub(in crate::web) fn would_measure(folder: &Path, job: &JobFile) -> BTreeSet<String> {
    let new = job.photo_entries.as_ref().map(|_| in_folder(folder)).unwrap_or_default();
    let new = new.into_iter().filter(|name| !is_of_tripod(name));
    photos(folder, job).into_iter().map(|photo| photo.file).chain(new).collect()
}

/// Lists the photos one by one, so that each can say what it belongs to.
pub(in crate::web) fn list(folder: &Path, job: &mut JobFile) {
    job.photo_entries = Some(photos(folder, job));
    job.photos = None;
}

/// Lists pictures that somebody copied into `photos/` beside listed ones;
/// whether there were any.
pub(in crate::web) fn adopt(folder: &Path) -> Result<bool, Trouble> {
    change(folder, |job| {
        let Some(entries) = &mut job.photo_entries else { return Ok(false) };
        // A tripod's photo that is not listed is what a power cut left of it.
        let is_new = |f: &String| entries.iter().all(|e| e.file != *f) && !is_of_tripod(f);
        let new: Vec<String> = in_folder(folder).into_iter().filter(is_new).collect();
        let any = !new.is_empty();
        entries
            .extend(new.into_iter().map(|file| PhotoEntry { phase: Some(Phase::Before), ..PhotoEntry::plain(file) }));
        Ok(any)
    })
}

/// Takes what is no longer there out of the list; an empty list is none.
pub(in crate::web) fn unlist(job: &mut JobFile, file: &str) {
    if let Some(entries) = &mut job.photo_entries {
        entries.retain(|e| e.file != file);
        if entries.is_empty() {
            job.photo_entries = None;
        }
    }
}

/// Whether a photo was taken after the calibration ran.
pub(in crate::web) fn is_after(entry: &PhotoEntry) -> bool {
    entry.phase == Some(Phase::After)
}
