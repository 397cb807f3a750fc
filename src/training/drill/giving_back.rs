//! What marking gives back: the kit and the truth of each job, and nothing else, nowhere else.
//!
//! A drill folder comes from somebody else, and what lies under its seal proves nothing about who sealed it.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use super::folder::{GIVEN_BACK, write};
use crate::training::Error;
use crate::words::phrase;

/// The jobs to which files are given back, each once and in order.
pub(super) fn jobs_of(files: &BTreeMap<String, String>) -> Vec<String> {
    let mut jobs: Vec<String> =
        files.keys().filter_map(|name| name.split_once('/')).map(|(job, _)| job.to_owned()).collect();
    jobs.dedup();
    jobs
}

/// Where each file goes; every name is looked at before anything is written.
///
/// # Errors
/// A file that no job of a drill has, or a job's folder that leads elsewhere.
pub(super) fn places(
    folder: &Path,
    jobs: &[String],
    files: &BTreeMap<String, String>,
) -> Result<Vec<(PathBuf, String)>, Error> {
    let mut places = Vec::new();
    for (name, text) in files {
        let known = name
            .split_once('/')
            .filter(|(job, file)| is_plain(job) && GIVEN_BACK.contains(file) && jobs.iter().any(|known| known == job));
        let Some((job, file)) = known else {
            let path = folder.display().to_string();
            return Err(
                phrase!("training-gives-back-other", path = path, name = name.escape_debug().to_string()).into()
            );
        };
        let own = folder.join(job);
        let leads_elsewhere = |path: &Path| fs::symlink_metadata(path).is_ok_and(|meta| meta.is_symlink());
        if let Some(link) = [own.clone(), own.join(file)].into_iter().find(|path| leads_elsewhere(path)) {
            return Err(phrase!("training-gives-back-link", path = link.display().to_string()).into());
        }
        places.push((own.join(file), text.clone()));
    }
    Ok(places)
}

/// Writes them; a file is replaced whole, and a link that was put there meanwhile with it.
///
/// # Errors
/// What the disk says.
pub(super) fn give_back(places: &[(PathBuf, String)]) -> Result<(), Error> {
    places.iter().try_for_each(|(path, text)| write(path, text.as_bytes()))
}

/// A name of a folder, which leads nowhere else on any system.
fn is_plain(job: &str) -> bool {
    !job.is_empty() && job.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-' || b == b'_')
}
