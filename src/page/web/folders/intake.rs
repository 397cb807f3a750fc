//! Where a file that came whole is kept: a photo or an attachment of a job.
//! Whoever calls holds the job's lock.

use std::io::Read;
use std::path::{Path, PathBuf};

use axum::http::StatusCode;

use super::edit;
use super::upload::Came;
use crate::folder::{Attachment, MOST_MOVES, Phase, PhotoEntry, move_durably};
use crate::photo::{self, Kind};
use crate::web::limits;
use crate::web::trouble::Trouble;
use crate::words::phrase;

/// Photos that are no longer measured with.
const ASIDE: &str = "aside";
/// How the names of those begin that were taken after a move of the stand; its number follows.
const AFTER: &str = "after-";
/// So many digits of the digest tell a job's files apart.
const DIGITS: usize = 16;

/// What became of a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::web) enum Kept {
    /// It is kept now.
    New,
    /// It was there.
    Already,
    /// It was there and somebody set it aside.
    Aside,
}

impl Kept {
    /// The word for the page's script.
    pub(in crate::web) fn name(self) -> &'static str {
        match self {
            Kept::New => "new",
            Kept::Already => "already",
            Kept::Aside => "aside",
        }
    }
}

/// What a photo is of.
#[derive(Debug, Clone)]
pub(in crate::web) struct Shows {
    /// The sheet's step.
    pub(in crate::web) step: Option<String>,
    /// Before or after the calibration ran.
    pub(in crate::web) phase: Phase,
    /// Whether the stand was moved since the photos before; else it shows the stand where the last ones do.
    pub(in crate::web) moved: bool,
}

/// Keeps a photo and lists it in the job.
pub(in crate::web) fn photo(folder: &Path, came: &Came, shows: Shows) -> Result<(Kept, String), Trouble> {
    let Shows { step, phase, moved } = shows;
    let (ending, taken) = examine(&came.path)?;
    let digits = &came.sha256[..DIGITS];
    if let Some(name) = named(&folder.join(ASIDE), digits) {
        return Ok((Kept::Aside, format!("{ASIDE}/{name}")));
    }
    edit::change(folder, |job| {
        edit::list(folder, job);
        let entries = job.photo_entries.get_or_insert_default();
        let there = named(&folder.join("photos"), digits);
        if let Some(file) = there.as_ref().map(|n| format!("photos/{n}"))
            && entries.iter().any(|e| e.file == file)
        {
            return Ok((Kept::Already, file));
        }
        if entries.len() >= limits::PHOTOS {
            let words = phrase!("page-trouble-many-photos", most = limits::PHOTOS);
            return Err(Trouble::new(StatusCode::CONFLICT, "too-many", words));
        }
        // One that a crash left unlisted is listed now.
        let name = there.unwrap_or_else(|| format!("{:02}-{digits}.{ending}", entries.len() + 1));
        move_durably(&came.path, &folder.join("photos").join(&name)).map_err(|e| Trouble::disk("photo", &e))?;
        let file = format!("photos/{name}");
        let last = entries.iter().map(|e| e.after_move).max().unwrap_or(0);
        // A first photo is of no move.
        let after_move = if moved && !entries.is_empty() { (last + 1).min(MOST_MOVES) } else { last };
        entries.push(PhotoEntry { step, phase: Some(phase), after_move, file: file.clone() });
        if phase == Phase::Before && job.taken.is_none() {
            job.taken = taken;
        }
        Ok((Kept::New, file))
    })
}

/// Refuses what is no photo at once.
pub(in crate::web) fn recognised(came: &Came) -> Result<(), Trouble> {
    examine(&came.path).map(|_| ())
}

/// The ending by the content.
pub(in crate::web) fn ending(path: &Path) -> Result<&'static str, Trouble> {
    examine(path).map(|(ending, _)| ending)
}

/// The ending by the content, and when the photo was taken by its own record.
fn examine(path: &Path) -> Result<(&'static str, Option<time::OffsetDateTime>), Trouble> {
    let disk = |e: std::io::Error| Trouble::disk("read", &e);
    let mut head = Vec::new();
    let mut file = std::fs::File::open(path).map_err(disk)?;
    file.by_ref().take(256 * 1024).read_to_end(&mut head).map_err(disk)?;
    let kind = photo::recognise(&head, "the file")
        .map_err(|e| Trouble::new(StatusCode::UNSUPPORTED_MEDIA_TYPE, "no-photo", e.without_name()))?;
    let ending = match kind {
        Kind::Jpeg => "jpg",
        Kind::Png => "png",
        Kind::Heic => "heic",
    };
    Ok((ending, photo::exif(&head, kind).taken))
}

/// The name of a folder's file whose name bears the digest.
fn named(folder: &Path, digits: &str) -> Option<String> {
    let stem = format!("-{digits}");
    let names = std::fs::read_dir(folder).ok()?.filter_map(|e| e.ok()?.file_name().into_string().ok());
    names
        .filter(|n| !n.starts_with('.'))
        .find(|n| n.rsplit_once('.').map_or(n.as_str(), |(stem, _)| stem).ends_with(&stem))
}

/// Keeps an attachment and lists it.
pub(in crate::web) fn attachment(
    folder: &Path,
    came: &Came,
    kind: &str,
    sent_as: &str,
) -> Result<(Kept, String), Trouble> {
    let digits = &came.sha256[..DIGITS];
    let shelf = folder.join("attachments");
    std::fs::create_dir_all(&shelf).map_err(|e| Trouble::disk("folder", &e))?;
    edit::change(folder, |job| {
        let own = format!("attachments/{digits}-");
        if let Some(there) = job.attachments.iter().find(|a| a.file.starts_with(&own) && a.kind == kind) {
            return Ok((Kept::Already, there.file.clone()));
        }
        if job.attachments.len() >= limits::ATTACHMENTS {
            let words = phrase!("page-trouble-many-files", most = limits::ATTACHMENTS);
            return Err(Trouble::new(StatusCode::CONFLICT, "too-many", words));
        }
        let name = format!("{digits}-{}", plain(sent_as));
        move_durably(&came.path, &shelf.join(&name)).map_err(|e| Trouble::disk("file", &e))?;
        let file = format!("attachments/{name}");
        job.attachments.push(Attachment { file: file.clone(), kind: kind.to_owned() });
        Ok((Kept::New, file))
    })
}

/// A file name that every system can hold.
fn plain(name: &str) -> String {
    let last = name.rsplit(['/', '\\']).next().unwrap_or_default();
    let plain: String =
        last.chars().map(|c| if c.is_ascii_alphanumeric() || ".-_".contains(c) { c } else { '_' }).collect();
    let plain = plain.trim_start_matches('.');
    let from = plain.len().saturating_sub(80);
    if plain.is_empty() { "file".to_owned() } else { plain[from..].trim_start_matches('.').to_owned() }
}

/// Takes a photo out of the measurement; it is kept.
pub(in crate::web) fn set_aside(folder: &Path, file: &str) -> Result<(), Trouble> {
    let listed = edit::photos(folder, &edit::read(folder)?).into_iter().find(|e| e.file == file);
    let name = file.strip_prefix("photos/").filter(|n| !n.contains('/'));
    let (entry, name) = listed.zip(name).ok_or_else(|| Trouble::not_found("photo"))?;
    let kept_as = match entry.after_move {
        0 => name.to_owned(),
        n => format!("{AFTER}{n}-{name}"),
    };
    std::fs::create_dir_all(folder.join(ASIDE)).map_err(|e| Trouble::disk("folder", &e))?;
    edit::change(folder, |job| {
        edit::list(folder, job);
        edit::unlist(job, file);
        Ok(())
    })?;
    move_durably(&folder.join(file), &folder.join(ASIDE).join(kept_as)).map_err(|e| Trouble::disk("photo", &e))
}

/// After which move a photo was taken that was set aside, and its name before.
fn after(name: &str) -> (u32, &str) {
    let said = name.strip_prefix(AFTER).and_then(|rest| rest.split_once('-'));
    said.and_then(|(n, own)| Some((n.parse().ok()?, own))).unwrap_or((0, name))
}

/// Measures with a photo again that was set aside.
pub(in crate::web) fn bring_back(folder: &Path, name: &str) -> Result<(), Trouble> {
    if !aside(folder).iter().any(|n| n == name) {
        return Err(Trouble::not_found("photo"));
    }
    let (after_move, own) = after(name);
    let file = format!("photos/{own}");
    move_durably(&folder.join(ASIDE).join(name), &folder.join(&file)).map_err(|e| Trouble::disk("photo", &e))?;
    edit::change(folder, |job| {
        edit::list(folder, job);
        let entries = job.photo_entries.get_or_insert_default();
        if entries.iter().all(|e| e.file != file) {
            entries.push(PhotoEntry { phase: Some(Phase::Before), after_move, ..PhotoEntry::plain(file) });
        }
        Ok(())
    })
}

/// Names of the photos that were set aside, sorted.
pub(in crate::web) fn aside(folder: &Path) -> Vec<String> {
    let Ok(entries) = std::fs::read_dir(folder.join(ASIDE)) else { return Vec::new() };
    let mut names: Vec<String> =
        entries.filter_map(|e| e.ok()?.file_name().into_string().ok()).filter(|n| !n.starts_with('.')).collect();
    names.sort();
    names
}

/// The file of a photo that the page may show: a listed one or one set aside.
pub(in crate::web) fn picture_path(folder: &Path, file: &str) -> Option<PathBuf> {
    let job = edit::read(folder).ok()?;
    let listed = edit::photos(folder, &job).iter().any(|e| e.file == file);
    let set_aside = || file.strip_prefix("aside/").is_some_and(|name| aside(folder).iter().any(|n| n == name));
    if !listed && !set_aside() {
        return None;
    }
    // A job file of somebody else's may name what lies elsewhere.
    let path = std::fs::canonicalize(folder.join(file)).ok()?;
    path.starts_with(std::fs::canonicalize(folder).ok()?).then_some(path)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_of_attachments_stay_in_their_folder() {
        assert_eq!(plain("../../etc/passwd"), "passwd");
        assert_eq!(plain("C:\\scan report.pdf"), "scan_report.pdf");
        assert_eq!(plain("..."), "file");
        assert_eq!(plain("ü\u{202e}.pdf"), "__.pdf");
        assert!(plain(&"x".repeat(500)).len() <= 80);
    }
}
