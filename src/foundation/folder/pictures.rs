//! Pictures where a job's photos lie, also those that the job does not list.

use std::path::{Path, PathBuf};

/// The endings that the photos folder is searched for.
const PICTURE_ENDINGS: [&str; 4] = ["jpg", "jpeg", "png", "heic"];

/// By its ending; hidden files are what operating systems leave beside pictures.
pub fn is_picture(name: &Path) -> bool {
    let hidden = name.to_string_lossy().starts_with('.');
    let ending = name.extension().and_then(|e| e.to_str()).unwrap_or_default().to_lowercase();
    !hidden && PICTURE_ENDINGS.contains(&ending.as_str())
}

/// A photo that takes no part.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Unlisted {
    /// Relative to the job folder, with `/`.
    pub name: String,
    /// Where it lies.
    pub path: PathBuf,
}

/// Pictures in a job's `photos` that are none of the files that it names, sorted. Nothing of them is read.
pub(super) fn unlisted(folder: &Path, named: &[&PathBuf]) -> Vec<Unlisted> {
    let entries = std::fs::read_dir(folder.join("photos")).into_iter().flatten().flatten();
    let pictures = entries.filter(|entry| is_picture(Path::new(&entry.file_name())) && entry.path().is_file());
    let mut found: Vec<Unlisted> = pictures
        .filter(|entry| {
            entry.path().canonicalize().is_ok_and(|real| real.starts_with(folder) && !named.contains(&&real))
        })
        .map(|entry| Unlisted { name: format!("photos/{}", entry.file_name().to_string_lossy()), path: entry.path() })
        .collect();
    found.sort_by(|a, b| a.name.cmp(&b.name));
    found
}
