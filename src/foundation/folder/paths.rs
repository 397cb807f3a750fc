//! Files of a job: they may not reach outside its folder.

use std::path::{Component, Path, PathBuf};

use crate::input::{printable, turns_writing};
use crate::words::{Phrase, phrase};

/// What is wrong with a path in a job file, and the remedy.
pub(super) type PathProblem = (Phrase, Phrase);

/// Checks that a text can be a path of a file that a job names: relative and
/// written with `/`, so that it holds on every machine.
pub(super) fn relative(name: &str) -> Result<&Path, PathProblem> {
    if name.chars().any(turns_writing) {
        return Err((phrase!("doors-path-turning", name = shown(name)), phrase!("doors-path-turning-remedy")));
    }
    if name.contains('\\') {
        return Err((phrase!("doors-path-backslash", name = shown(name)), phrase!("doors-path-backslash-remedy")));
    }
    let path = Path::new(name);
    let has_drive = name.as_bytes().get(1) == Some(&b':');
    if has_drive || path.components().any(|c| matches!(c, Component::RootDir | Component::Prefix(_))) {
        return Err((phrase!("doors-path-absolute", name = shown(name)), phrase!("doors-path-absolute-remedy")));
    }
    Ok(path)
}

/// The file of a job that `name` names, which must lie inside the job's folder
/// even where links are followed. `folder` is the canonical path of the folder.
pub(super) fn inside(folder: &Path, name: &str) -> Result<PathBuf, PathProblem> {
    let remedy = || phrase!("doors-path-outside-remedy");
    let path = relative(name)?;
    if path.components().any(|c| c == Component::ParentDir) {
        return Err((phrase!("doors-path-outside", name = shown(name)), remedy()));
    }
    let found = std::fs::canonicalize(folder.join(path)).map_err(|e| match e.kind() {
        std::io::ErrorKind::NotFound | std::io::ErrorKind::NotADirectory => {
            (phrase!("doors-path-not-there", name = shown(name)), phrase!("doors-path-not-there-remedy"))
        }
        _ => (
            phrase!("doors-path-unreadable", name = shown(name), why = e.to_string()),
            phrase!("doors-path-unreadable-remedy"),
        ),
    })?;
    if !found.starts_with(folder) {
        return Err((phrase!("doors-path-link", name = shown(name)), remedy()));
    }
    if !found.is_file() {
        return Err((phrase!("doors-path-no-file", name = shown(name)), phrase!("doors-path-no-file-remedy")));
    }
    Ok(found)
}

fn shown(name: &str) -> String {
    printable(name.chars().take(200).collect())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Language;

    #[test]
    fn nothing_outside_is_reached() {
        let outer = tempfile::tempdir().unwrap();
        let outside = outer.path().join("secret.jpg");
        std::fs::write(&outside, "x").unwrap();
        let job = outer.path().join("job");
        std::fs::create_dir_all(job.join("photos")).unwrap();
        std::fs::write(job.join("photos/a.jpg"), "x").unwrap();
        let job = job.canonicalize().unwrap();
        assert!(inside(&job, "photos/a.jpg").is_ok());
        assert!(inside(&job, "./photos/a.jpg").is_ok());
        let wrong = |name: &str| inside(&job, name).unwrap_err().0.say(Language::English);
        assert!(wrong("../secret.jpg").contains("reaches outside"));
        assert!(wrong("photos/../../secret.jpg").contains("reaches outside"));
        assert!(wrong(outside.to_str().unwrap()).contains("absolute path"));
        assert!(wrong("C:/secret.jpg").contains("absolute path"));
        assert!(wrong("photos\\a.jpg").contains("backslash"));
        assert!(wrong("photos/b.jpg").contains("does not exist"));
        assert!(wrong("photos").contains("is not a file"));
        assert!(wrong("photos/a.jpg/x").contains("does not exist"));
        assert!(wrong("a\0b").contains("cannot be opened"));
    }

    #[cfg(unix)]
    #[test]
    fn links_are_followed_before_they_are_judged() {
        let outer = tempfile::tempdir().unwrap();
        std::fs::write(outer.path().join("secret.jpg"), "x").unwrap();
        let job = outer.path().join("job");
        std::fs::create_dir(&job).unwrap();
        std::fs::write(job.join("a.jpg"), "x").unwrap();
        std::os::unix::fs::symlink(outer.path().join("secret.jpg"), job.join("out.jpg")).unwrap();
        std::os::unix::fs::symlink("a.jpg", job.join("in.jpg")).unwrap();
        let job = job.canonicalize().unwrap();
        assert!(inside(&job, "out.jpg").unwrap_err().0.say(Language::English).contains("leads outside"));
        assert!(inside(&job, "in.jpg").is_ok());
    }
}
