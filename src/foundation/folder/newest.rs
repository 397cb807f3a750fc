//! Photos that a camera on a tripod takes of a job: of each position of the stand only the newest is kept.
//!
//! Their names in `photos/` say after which move they were taken and begin their
//! SHA-256, so that whoever comes back after a power cut knows them. The order of
//! writing makes every state between harmless: the new photo lies there unlisted,
//! then the job file names it in place of the older one, then the older one goes.

use std::io;
use std::path::{Path, PathBuf};

use super::file::MOST_MOVES;
use super::job_file::{JobFile, Phase, PhotoEntry};
use super::job_folder::pictures_in;
use super::write_durably;
use crate::input::{Error, SourceFile};
use baywitness_words::{Phrase, phrase};

/// How the names of such photos begin.
const PREFIX: &str = "tripod-";
/// So many digits of the digest are in the name.
const DIGITS: usize = 16;

/// Where the stand stands in a new photo.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stands {
    /// Where no photo of the job shows it.
    Elsewhere,
    /// Where the photo of the tripod that was kept last shows it.
    There,
}

/// A photo to be kept.
#[derive(Debug, Clone, Copy)]
pub struct NewPhoto<'a> {
    /// SHA-256 of its bytes, lower-case hexadecimal.
    pub sha256: &'a str,
    /// The ending of its name, without the point.
    pub ending: &'a str,
    /// The set-up sheet's step that it shows.
    pub step: Option<&'a str>,
    /// Where the stand stands in it.
    pub stands: Stands,
    /// Whether the older photo of the position stays because a verdict that was logged rests on it.
    pub older_stays: bool,
}

/// What became of a photo.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum KeptNewest {
    /// It is the first of its position.
    First(PhotoEntry),
    /// It is kept instead of an older one of the position.
    Instead(PhotoEntry),
    /// The older one, by its name, stays; this one is not kept.
    OlderStays(String),
    /// The job has it under this name.
    Already(String),
}

impl KeptNewest {
    /// In one line, behind what the photo shows.
    pub fn phrase(&self) -> Phrase {
        match self {
            KeptNewest::First(entry) => {
                phrase!("moves-tripod-kept-first", photo = &entry.file, move = entry.after_move)
            }
            KeptNewest::Instead(entry) => phrase!("moves-tripod-kept-instead", photo = &entry.file),
            KeptNewest::OlderStays(file) => phrase!("moves-tripod-older-stays", photo = file),
            KeptNewest::Already(file) => phrase!("moves-tripod-already", photo = file),
        }
    }
}

/// A photo of the tripod by its name in the job.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Named {
    file: String,
    after_move: u32,
    digits: String,
}

fn named(file: &str) -> Option<Named> {
    let rest = file.strip_prefix("photos/")?.strip_prefix(PREFIX)?;
    let (number, rest) = rest.split_once('-')?;
    let (digits, _) = rest.split_once('.')?;
    let hex = digits.len() == DIGITS && digits.bytes().all(|b| b.is_ascii_hexdigit());
    Some(Named { file: file.to_owned(), after_move: number.parse().ok()?, digits: digits.to_owned() }).filter(|_| hex)
}

/// Whether a name in `photos/` (with that folder before it) is one that only a tripod's photos have.
pub fn is_of_tripod(file: &str) -> bool {
    named(file).is_some()
}

/// The listed photo of the tripod whose position is the job's last one.
fn of_last_position(entries: &[PhotoEntry], step: Option<&str>) -> Option<Named> {
    let last = entries.iter().map(|e| e.after_move).max()?;
    let of_it = |e: &&PhotoEntry| e.after_move == last && e.step.as_deref() == step;
    entries.iter().filter(of_it).filter_map(|e| named(&e.file)).next_back()
}

/// The photo of the tripod that was kept last, where it shows where the stand stands now.
///
/// # Errors
/// The job file can't be read.
pub fn kept_last(folder: &Path, step: Option<&str>) -> Result<Option<PathBuf>, Error> {
    let job = read(folder)?;
    let entries = job.photo_entries.unwrap_or_default();
    Ok(of_last_position(&entries, step).map(|n| folder.join(n.file)))
}

/// The beginnings of the SHA-256 of all photos of the tripod that lie in the job, also of such that a power cut left.
pub fn known_digits(folder: &Path) -> Vec<String> {
    in_folder(folder).into_iter().map(|n| n.digits).collect()
}

/// Whether a digest is that of one of these beginnings.
pub fn is_known(digits: &[String], sha256: &str) -> bool {
    digits.iter().any(|d| sha256.starts_with(d.as_str()))
}

/// Removes what a power cut left: photos of the tripod that the job does not list.
///
/// # Errors
/// The job file can't be read.
pub fn sweep(folder: &Path) -> Result<(), Error> {
    let job = read(folder)?;
    let Some(entries) = job.photo_entries else { return Ok(()) };
    for left in in_folder(folder).into_iter().filter(|n| entries.iter().all(|e| e.file != n.file)) {
        // Of no harm where it can't be removed.
        let _ = std::fs::remove_file(folder.join(left.file));
    }
    Ok(())
}

/// Keeps a photo of the tripod; `bring` puts its bytes durably under the name that it gets.
/// Whoever calls is the only one to change the job's files meanwhile.
///
/// # Errors
/// The job file can't be read or written, the photo can't be brought, or the stand was moved too often.
pub fn keep_newest(
    folder: &Path,
    photo: &NewPhoto,
    bring: impl FnOnce(&Path) -> io::Result<()>,
) -> Result<KeptNewest, Error> {
    let mut job = read(folder)?;
    list_all(folder, &mut job)?;
    let mut entries = job.photo_entries.take().unwrap_or_default();
    let digits = &photo.sha256[..DIGITS.min(photo.sha256.len())];
    if let Some(there) = entries.iter().filter_map(|e| named(&e.file)).find(|n| n.digits == digits) {
        return Ok(KeptNewest::Already(there.file));
    }
    let last = entries.iter().map(|e| e.after_move).max().unwrap_or(0);
    let older = of_last_position(&entries, photo.step).filter(|_| photo.stands == Stands::There);
    if let Some(older) = older.as_ref().filter(|_| photo.older_stays) {
        return Ok(KeptNewest::OlderStays(older.file.clone()));
    }
    let after_move = older.as_ref().map_or(last + 1, |o| o.after_move);
    if after_move > MOST_MOVES {
        let problem = phrase!("doors-newest-most-moves", most = MOST_MOVES);
        return Err(Error::new(path_of(folder).display().to_string(), problem, phrase!("doors-newest-new-job")));
    }
    let file = format!("photos/{PREFIX}{after_move}-{digits}.{}", photo.ending);
    let wrong = |e: io::Error| unwritten(&folder.join(&file), &e);
    std::fs::create_dir_all(folder.join("photos")).map_err(wrong)?;
    bring(&folder.join(&file)).map_err(wrong)?;
    // A job that tells photos from before the calibration from those after it is told of these too.
    let phase = entries.iter().any(|e| e.phase.is_some()).then_some(Phase::Before);
    let entry = PhotoEntry { file: file.clone(), step: photo.step.map(str::to_owned), phase, after_move };
    match older.as_ref().and_then(|o| entries.iter_mut().find(|e| e.file == o.file)) {
        Some(place) => *place = entry.clone(),
        None => entries.push(entry.clone()),
    }
    write(folder, &JobFile { photo_entries: Some(entries), ..job })?;
    let Some(older) = older else { return Ok(KeptNewest::First(entry)) };
    // What stays is unlisted, and swept later.
    let _ = std::fs::remove_file(folder.join(older.file));
    Ok(KeptNewest::Instead(entry))
}

/// A job that lists no photos takes all in its folder: they are listed before one more lies beside them.
fn list_all(folder: &Path, job: &mut JobFile) -> Result<(), Error> {
    if job.photo_entries.is_some() {
        return Ok(());
    }
    let listed = job.photos.take();
    let wrong =
        |(problem, remedy): (Phrase, Phrase)| Error::new(path_of(folder).display().to_string(), problem, remedy);
    let names = listed.map_or_else(|| pictures_in(&folder.join("photos")).map_err(wrong), Ok)?;
    job.photo_entries = Some(names.into_iter().filter(|n| !is_of_tripod(n)).map(PhotoEntry::plain).collect());
    write(folder, job)
}

fn in_folder(folder: &Path) -> Vec<Named> {
    let names = std::fs::read_dir(folder.join("photos")).into_iter().flatten().flatten();
    names.filter_map(|e| named(&format!("photos/{}", e.file_name().to_str()?))).collect()
}

fn path_of(folder: &Path) -> PathBuf {
    folder.join("job.toml")
}

fn read(folder: &Path) -> Result<JobFile, Error> {
    let source = SourceFile::read(&path_of(folder))?;
    JobFile::from_toml(source.text()?, source.name())
}

fn write(folder: &Path, job: &JobFile) -> Result<(), Error> {
    let path = path_of(folder);
    let text = job.text_instead_of(std::fs::read_to_string(&path).ok().as_deref())?;
    write_durably(&path, text.as_bytes()).map_err(|e| unwritten(&path, &e))
}

fn unwritten(path: &Path, e: &io::Error) -> Error {
    let problem = phrase!("doors-newest-unwritten", why = e.to_string());
    Error::new(path.display().to_string(), problem, phrase!("doors-newest-make-room"))
}

#[cfg(test)]
mod tests {
    use super::*;

    const JOB: &str = "# by hand\nformat = \"job/1\"\njob = \"A\"\nsetup = \"s\"\nkit = \"r\"\n";

    fn job() -> tempfile::TempDir {
        let folder = tempfile::tempdir().unwrap();
        std::fs::create_dir(folder.path().join("photos")).unwrap();
        std::fs::write(folder.path().join("job.toml"), JOB).unwrap();
        std::fs::write(folder.path().join("photos/a.jpg"), "a").unwrap();
        std::fs::write(folder.path().join("photos/b.jpg"), "b").unwrap();
        folder
    }

    fn digest(n: u8) -> String {
        format!("{n:02x}").repeat(32)
    }

    fn keep(folder: &Path, n: u8, stands: Stands, older_stays: bool) -> KeptNewest {
        let sha256 = digest(n);
        let photo = NewPhoto { sha256: &sha256, ending: "jpg", step: None, stands, older_stays };
        keep_newest(folder, &photo, |path| write_durably(path, &[n])).unwrap()
    }

    fn listed(folder: &Path) -> Vec<(String, u32)> {
        let entries = read(folder).unwrap().photo_entries.unwrap_or_default();
        entries.into_iter().map(|e| (e.file, e.after_move)).collect()
    }

    #[test]
    fn of_each_position_the_newest_stays_and_first_photos_always_do() {
        let (job, at) = (job(), |n: u32, k: u8| (format!("photos/tripod-{n}-{}.jpg", &digest(k)[..16]), n));
        let first = [("photos/a.jpg".to_owned(), 0), ("photos/b.jpg".to_owned(), 0)];
        // The stand was never seen by the tripod: a position of its own, whatever is said.
        assert!(matches!(
            keep(job.path(), 1, Stands::There, false),
            KeptNewest::First(PhotoEntry { after_move: 1, .. })
        ));
        assert!(matches!(
            keep(job.path(), 2, Stands::There, false),
            KeptNewest::Instead(PhotoEntry { after_move: 1, .. })
        ));
        assert_eq!(listed(job.path()), [first[0].clone(), first[1].clone(), at(1, 2)]);
        assert!(matches!(
            keep(job.path(), 3, Stands::Elsewhere, false),
            KeptNewest::First(PhotoEntry { after_move: 2, .. })
        ));
        assert!(matches!(keep(job.path(), 4, Stands::There, true), KeptNewest::OlderStays(_)));
        assert!(matches!(keep(job.path(), 3, Stands::There, false), KeptNewest::Already(_)));
        assert_eq!(listed(job.path()), [first[0].clone(), first[1].clone(), at(1, 2), at(2, 3)]);
        assert_eq!(std::fs::read_dir(job.path().join("photos")).unwrap().count(), 4);
        assert!(std::fs::read_to_string(job.path().join("job.toml")).unwrap().starts_with("# by hand"));
        assert!(kept_last(job.path(), None).unwrap().unwrap().ends_with(&at(2, 3).0));
        // A photo of somebody else's after one more move: the tripod knows that place not yet.
        let mut file = read(job.path()).unwrap();
        file.photo_entries.as_mut().unwrap().push(PhotoEntry { after_move: 3, ..PhotoEntry::plain("photos/c.jpg") });
        write(job.path(), &file).unwrap();
        assert!(matches!(
            keep(job.path(), 5, Stands::There, false),
            KeptNewest::First(PhotoEntry { after_move: 4, .. })
        ));
    }

    #[test]
    fn a_power_cut_at_any_step_leaves_the_job_as_it_was() {
        let job = job();
        let sha256 = digest(7);
        let photo =
            NewPhoto { sha256: &sha256, ending: "jpg", step: None, stands: Stands::Elsewhere, older_stays: false };
        // Gone while the photo is brought, and just after it.
        let cut = || io::Error::other("the power went");
        assert!(keep_newest(job.path(), &photo, |_| Err(cut())).is_err());
        let brought = keep_newest(job.path(), &photo, |path| write_durably(path, &[7]).and(Err(cut())));
        assert!(brought.unwrap_err().to_string().contains("cannot be written"));
        assert_eq!(listed(job.path()).len(), 2, "the job names its photos, not what lies beside them");
        assert!(is_known(&known_digits(job.path()), &sha256));
        sweep(job.path()).unwrap();
        assert_eq!(std::fs::read_dir(job.path().join("photos")).unwrap().count(), 2);
        assert!(matches!(keep(job.path(), 7, Stands::Elsewhere, false), KeptNewest::First(_)));
        assert_eq!(listed(job.path()).len(), 3);
    }

    #[test]
    fn only_its_own_names_are_the_tripods() {
        for other in
            ["photos/tripod.jpg", "photos/tripod-x-0123456789abcdef.jpg", "photos/tripod-1-012.jpg", "aside/a.jpg"]
        {
            assert!(!is_of_tripod(other), "{other}");
        }
        assert!(is_of_tripod("photos/tripod-12-0123456789abcdef.heic"));
    }
}
