//! Job and evidence folders below a path.

use std::collections::BTreeSet;
use std::ffi::OsStr;
use std::fs::{self, DirEntry};
use std::io;
use std::path::{Path, PathBuf};

use super::heads::{head, is_archive, is_job_file};
use super::unread::Unread;
use crate::evidence::{INDEX, holds_evidence, is_evidence, is_one_file};
use crate::folder::is_picture;

/// What a folder or file is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Sort {
    /// It holds a `job.toml`.
    Job,
    /// It is sealed.
    Evidence,
    /// It is sealed, as one file.
    OneFile,
    /// It holds the index of a repair order's evidence folders.
    Series,
}

/// A folder of an archive.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Found {
    /// Its path.
    pub path: PathBuf,
    /// What it is.
    pub sort: Sort,
}

/// Folders in folders, at most.
const MOST_DEPTH: usize = 40;
const JOB: &str = "job.toml";
/// Endings of archives that are not looked into.
const PACKED: [&str; 8] = ["zip", "tgz", "gz", "bz2", "xz", "zst", "7z", "rar"];
/// Where a job's photos lie.
const PHOTOS: &str = "photos";
/// Folders that hold pictures of no job: of boards for cameras, of kits for surveys, of reports.
const APART: [&str; 6] = ["models", "cameras", "kits", "boards", "setups", "reports"];

/// Every job and evidence folder at or below the paths, those below a job too, and every file that may be an evidence
/// folder as one file (`.tar`), each once, in the order of their paths. What cannot be read, and what looks as if it
/// belonged to them and is not read, is told to `unread`.
pub fn find(paths: &[PathBuf], unread: &mut dyn FnMut(&Path, &Unread)) -> Vec<Found> {
    let roots = paths.iter().filter_map(|path| path.canonicalize().ok()).collect();
    let mut search = Search { roots, found: BTreeSet::new(), open: Vec::new(), unread };
    search.open.extend(paths.iter().map(|path| Place::top(path.clone())));
    while let Some(place) = search.open.pop() {
        search.look(place);
    }
    search.found.into_iter().collect()
}

/// A folder, or a file that was named, still to be looked at.
struct Place {
    path: PathBuf,
    depth: usize,
    /// Whether a job lies above it: files of other kinds are its attachments there.
    below_job: bool,
    /// Whether pictures are those of no job there.
    apart: bool,
}

impl Place {
    fn top(path: PathBuf) -> Self {
        Place { apart: is_apart(&path), path, depth: 0, below_job: false }
    }

    fn below(&self, path: PathBuf, is_job: bool) -> Self {
        let apart = self.apart || is_apart(&path);
        Place { apart, path, depth: self.depth + 1, below_job: self.below_job || is_job }
    }
}

struct Search<'a> {
    /// What is audited, links resolved.
    roots: Vec<PathBuf>,
    found: BTreeSet<Found>,
    open: Vec<Place>,
    unread: &'a mut dyn FnMut(&Path, &Unread),
}

impl Search<'_> {
    fn look(&mut self, place: Place) {
        let path = &place.path;
        if is_evidence(path) {
            self.found.insert(Found { path: path.clone(), sort: Sort::Evidence });
            return;
        }
        if is_one_file(path) && path.is_file() {
            self.found.insert(Found { path: path.clone(), sort: Sort::OneFile });
            return;
        }
        let entries: Vec<DirEntry> = match fs::read_dir(path).and_then(Iterator::collect) {
            Ok(entries) => entries,
            Err(e) => return (self.unread)(path, &Unread::System(e)),
        };
        let is_job = path.join(JOB).is_file();
        for (is, sort) in [(is_job, Sort::Job), (path.join(INDEX).is_file(), Sort::Series)] {
            if is {
                self.found.insert(Found { path: path.clone(), sort });
            }
        }
        // Where the system does not tell capitals apart, the job file may be spelled with some.
        let has_job_file = !is_job || entries.iter().any(|entry| entry.file_name() == JOB);
        for entry in &entries {
            if has_job_file && like_a_job_file(&entry.file_name(), is_job) {
                (self.unread)(&entry.path(), &Unread::JobName);
            } else if let Err(e) = self.entry(entry, &place, is_job) {
                (self.unread)(&entry.path(), &Unread::System(e));
            }
        }
        if !is_job && !place.below_job && !place.apart && like_a_jobs_photos(path, &entries) {
            (self.unread)(path, &Unread::NoJob);
        }
    }

    fn entry(&mut self, entry: &DirEntry, place: &Place, is_job: bool) -> io::Result<()> {
        let (path, kind) = (entry.path(), entry.file_type()?);
        let below_job = place.below_job || is_job;
        if kind.is_symlink() {
            self.link(&path);
        } else if kind.is_dir() && place.depth < MOST_DEPTH {
            self.open.push(place.below(path, is_job));
        } else if kind.is_dir() {
            (self.unread)(&path, &Unread::Deep);
        } else if !kind.is_file() {
            // A pipe or a device holds nothing, and reading it may never end.
        } else if is_one_file(&path) && (!below_job || holds_evidence(&path)) {
            self.found.insert(Found { path, sort: Sort::OneFile });
        } else if !is_one_file(&path) && holds_evidence(&path) {
            (self.unread)(&path, &Unread::TarName);
        } else if !below_job && is_packed(&path) {
            (self.unread)(&path, &Unread::Packed);
        } else if (!below_job || is_toml(&path)) && plain(&entry.file_name()) != JOB {
            // A job's own photos and attachments are read with it.
            let head = head(&path);
            if is_job_file(&head) {
                (self.unread)(&path, &Unread::JobName);
            } else if !below_job && is_archive(&head) {
                (self.unread)(&path, &Unread::Packed);
            }
        }
        Ok(())
    }

    /// A link to a folder, or to what may be evidence in one file, is named unless its target is looked at in its own place.
    fn link(&mut self, path: &Path) {
        let Ok(target) = path.canonicalize() else { return };
        let concerns = target.is_dir() || is_one_file(path) || target.is_file() && holds_evidence(&target);
        if concerns && !self.roots.iter().any(|root| target.starts_with(root)) {
            (self.unread)(path, &Unread::Link);
        }
    }
}

/// Whether a name is almost that of a job file; beside a job file, what editors leave is nothing to wonder at.
fn like_a_job_file(name: &OsStr, beside_one: bool) -> bool {
    let plain = plain(name);
    name != JOB && (plain == JOB || !beside_one && plain.starts_with(JOB))
}

/// Whether pictures lie there as a job's do: in a folder for photos, or beside files such as a job's.
fn like_a_jobs_photos(folder: &Path, entries: &[DirEntry]) -> bool {
    let named = folder.file_name().is_some_and(|name| plain(name) == PHOTOS);
    entries.iter().any(|entry| is_picture(Path::new(&entry.file_name())))
        && (named || entries.iter().any(|entry| is_toml(&entry.path())))
}

fn is_apart(folder: &Path) -> bool {
    folder.file_name().is_some_and(|name| APART.contains(&plain(name).as_str()))
}

fn plain(name: &OsStr) -> String {
    name.to_string_lossy().trim().to_lowercase()
}

fn is_packed(path: &Path) -> bool {
    path.extension().map(plain).is_some_and(|ending| PACKED.contains(&ending.as_str()))
}

fn is_toml(path: &Path) -> bool {
    path.extension().map(plain).is_some_and(|ending| ending == "toml")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn folders_are_found_once_and_in_order() {
        let dir = tempfile::tempdir().unwrap();
        for name in [
            "b/job.toml",
            "a/x/job.toml",
            "a/x/inner/job.toml",
            "c/bagit.txt",
            "c/data/job/job.toml",
            "d/e.txt",
            "d/f.tar",
        ] {
            let path = dir.path().join(name);
            fs::create_dir_all(path.parent().unwrap()).unwrap();
            fs::write(path, "").unwrap();
        }
        #[cfg(unix)]
        std::os::unix::fs::symlink(dir.path(), dir.path().join("d/loop")).unwrap();
        let mut unread = Vec::new();
        let missing = dir.path().join("none");
        let paths = [dir.path().to_path_buf(), dir.path().join("a"), missing.clone()];
        let found = find(&paths, &mut |path, _| unread.push(path.to_path_buf()));
        let names: Vec<_> =
            found.iter().map(|f| (f.path.strip_prefix(dir.path()).unwrap().to_str().unwrap(), f.sort)).collect();
        let jobs = ["a/x", "a/x/inner", "b"].map(|name| (name, Sort::Job));
        assert_eq!(names, [&jobs[..], &[("c", Sort::Evidence), ("d/f.tar", Sort::OneFile)]].concat());
        assert_eq!(unread, [missing]);
    }
}
