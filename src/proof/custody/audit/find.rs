//! Job and evidence folders below a path.

use std::collections::BTreeSet;
use std::ffi::OsStr;
use std::fs::{self, DirEntry};
use std::io;
use std::path::{Path, PathBuf};

use super::heads::{head, is_archive, is_job_file};
use super::unread::Unread;
use crate::evidence::{INDEX, PAYLOAD, TAG_MANIFEST, holds_evidence, is_evidence, is_one_file};
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
        if is_unfinished(path) {
            return (self.unread)(path, &Unread::Unfinished);
        }
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
        } else if is_part(&path).is_some_and(|of| is_one_file(Path::new(&of))) {
            (self.unread)(&path, &Unread::Unfinished);
        } else if !is_one_file(&path) && holds_evidence(&path) {
            (self.unread)(&path, &Unread::TarName);
        } else if !below_job && is_packed(&path) {
            (self.unread)(&path, &Unread::Packed);
        } else if plain(&entry.file_name()) != JOB {
            // A job's own photos and attachments are read with it. A job's text among them is a job all the same; but
            // beside a job file editors, and writes that were cut off, leave another one.
            let head = head(&path);
            let left = is_job && plain(&entry.file_name()).contains(JOB);
            if !left && is_job_file(&head) {
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

/// Of what a name is a part as sealing writes it until it is whole: `NAME.part-` and a process's number.
fn is_part(path: &Path) -> Option<String> {
    let name = path.file_name()?.to_string_lossy().into_owned();
    let (of, number) = name.rsplit_once(".part-")?;
    (!number.is_empty() && number.bytes().all(|b| b.is_ascii_digit())).then(|| of.to_owned())
}

/// Whether a folder is what a seal that was killed left: its tag manifest, which is written last, is not there. A whole
/// one is judged as any other.
fn is_unfinished(folder: &Path) -> bool {
    is_part(folder).is_some() && folder.join(PAYLOAD).is_dir() && !folder.join(TAG_MANIFEST).is_file()
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

    fn put(room: &Path, name: &str, text: &str) {
        let path = room.join(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, text).unwrap();
    }

    /// What a killed seal leaves is nothing that was sealed; whatever else bears such a name is looked at as ever.
    #[test]
    fn parts_of_an_unfinished_seal_are_named() {
        let dir = tempfile::tempdir().unwrap();
        for name in [
            "a.part-12/data/job/job.toml",
            "order.part-7/b/tagmanifest-sha512.txt",
            "order.part-7/c.part-7/data/job/job.toml",
            "d.tar.part-9",
            "whole.part-1/data/job/job.toml",
            "whole.part-1/tagmanifest-sha512.txt",
            "jobs.part-2/e/job.toml",
            "f.part-two/data/job/job.toml",
        ] {
            put(dir.path(), name, "");
        }
        let mut parts = Vec::new();
        let found = find(&[dir.path().to_path_buf()], &mut |path, why| {
            assert!(matches!(why, Unread::Unfinished), "{}: {why:?}", path.display());
            parts.push(path.strip_prefix(dir.path()).unwrap().display().to_string());
        });
        parts.sort();
        assert_eq!(parts, ["a.part-12", "d.tar.part-9", "order.part-7/c.part-7"]);
        let names: Vec<_> =
            found.iter().map(|f| (f.path.strip_prefix(dir.path()).unwrap().to_str().unwrap(), f.sort)).collect();
        let sealed = ["order.part-7/b", "whole.part-1"].map(|name| (name, Sort::Evidence));
        let jobs = ["f.part-two/data/job", "jobs.part-2/e"].map(|name| (name, Sort::Job));
        assert_eq!(names, [jobs, sealed].concat());
    }

    /// Below a job lies what it attaches, and whatever somebody wants nobody to read.
    #[test]
    fn a_jobs_text_below_another_job_is_named_whatever_its_name() {
        let dir = tempfile::tempdir().unwrap();
        let text = "format = \"job/1\"\njob = \"x\"\n";
        let odd = "format = \"\\u006aob/1\"\njob = \"x\"\n";
        for (name, text) in [
            ("g/job.toml", text),
            ("g/job.toml.bak", text),
            ("g/.job.toml.part", text),
            ("g/notes/minutes.txt", "the job/1 format = none\n"),
            ("g/old/notes.txt", text),
            ("g/old/more", odd),
            ("h/odd.txt", odd),
        ] {
            put(dir.path(), name, text);
        }
        let mut named = Vec::new();
        find(&[dir.path().to_path_buf()], &mut |path, why| {
            assert!(matches!(why, Unread::JobName), "{}: {why:?}", path.display());
            named.push(path.strip_prefix(dir.path()).unwrap().display().to_string());
        });
        named.sort();
        assert_eq!(named, ["g/old/more", "g/old/notes.txt", "h/odd.txt"]);
    }

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
            put(dir.path(), name, "");
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
