//! Where a job and its files lie in an evidence folder's payload.

use std::path::Path;

/// Most folders above a job from which sealed files are taken.
pub(crate) const MOST_UP: usize = 8;

/// Where a job lies in an evidence folder's payload whose files come from up to
/// `up` folders above it: deep enough that they keep their place.
pub(crate) fn sealed_job(up: usize) -> String {
    format!("{}job", "at/".repeat(up.saturating_sub(1)))
}

/// Where the job of an evidence folder's payload lies; none where there is none.
pub fn find_sealed_job(payload: &Path) -> Option<String> {
    (0..=MOST_UP).map(sealed_job).find(|job| payload.join(job).join("job.toml").is_file())
}

/// A path seen from a folder, without steps up and down.
pub(crate) fn joined(folder: &str, name: &str) -> String {
    let mut parts: Vec<&str> = folder.split('/').filter(|p| !p.is_empty()).collect();
    for part in name.split('/') {
        match part {
            "" | "." => {}
            ".." => {
                parts.pop();
            }
            part => parts.push(part),
        }
    }
    parts.join("/")
}
