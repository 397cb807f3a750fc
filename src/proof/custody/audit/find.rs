//! Job and evidence folders below a path.

use std::fs;
use std::path::{Path, PathBuf};

use crate::evidence::{is_evidence, is_one_file};

/// What a folder or file is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Sort {
    /// It holds a `job.toml`.
    Job,
    /// It is sealed.
    Evidence,
    /// It is sealed, as one file.
    OneFile,
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

/// Every job and evidence folder at or below the paths, and every file that may be
/// an evidence folder as one file (`.tar`), each once, in the order of their paths. Links are not followed; what cannot be read is told to `unread`.
pub fn find(paths: &[PathBuf], unread: &mut dyn FnMut(&Path, &std::io::Error)) -> Vec<Found> {
    let mut found = Vec::new();
    let mut open: Vec<(PathBuf, usize)> = paths.iter().map(|p| (p.clone(), 0)).collect();
    while let Some((path, depth)) = open.pop() {
        if is_evidence(&path) {
            found.push(Found { path, sort: Sort::Evidence });
            continue;
        }
        if path.join("job.toml").is_file() {
            found.push(Found { path, sort: Sort::Job });
            continue;
        }
        if is_one_file(&path) && path.is_file() {
            found.push(Found { path, sort: Sort::OneFile });
            continue;
        }
        let entries = match fs::read_dir(&path) {
            Ok(entries) => entries,
            Err(e) => {
                unread(&path, &e);
                continue;
            }
        };
        for entry in entries {
            match entry.and_then(|e| Ok((e.file_type()?.is_dir(), e.path()))) {
                Ok((true, below)) if depth < MOST_DEPTH => open.push((below, depth + 1)),
                Ok((false, file)) if is_one_file(&file) && !file.is_symlink() => {
                    found.push(Found { path: file, sort: Sort::OneFile });
                }
                Ok(_) => {}
                Err(e) => unread(&path, &e),
            }
        }
    }
    found.sort();
    found.dedup();
    found
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
        assert_eq!(names, [("a/x", Sort::Job), ("b", Sort::Job), ("c", Sort::Evidence), ("d/f.tar", Sort::OneFile)]);
        assert_eq!(unread, [missing]);
    }
}
