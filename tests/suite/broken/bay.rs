//! A small staged job, and the program.

use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};
use std::sync::LazyLock;

use crate::staged;

/// A job in a folder that outlives every test; staged once.
pub(crate) static JOB: LazyLock<PathBuf> = LazyLock::new(|| {
    let job = tempfile::tempdir().unwrap().keep().join("job");
    staged::scene(0.25).stage(&job, &mut |_| ()).unwrap();
    job
});

/// What `verify` and `audit` end with: photos of this size leave the distance open.
pub(crate) const MEASURED: Option<i32> = Some(3);

/// A copy of it with its photos.
pub(crate) fn a_job(to: &Path) -> PathBuf {
    staged::copy(&JOB, to, true);
    to.to_path_buf()
}

pub(crate) fn program(arguments: &[&str]) -> Command {
    let mut command = crate::program::program();
    command.args(arguments).env_remove("BAYWITNESS_MODELS").stdin(Stdio::null());
    command.stdout(Stdio::piped()).stderr(Stdio::piped());
    command
}

/// Exit code and all that was said; a panic is never right.
pub(crate) fn ended(output: &Output) -> (Option<i32>, String) {
    let said = [&output.stdout, &output.stderr].map(|b| String::from_utf8_lossy(b).into_owned()).concat();
    assert!(!said.contains("panicked"), "{said}");
    (output.status.code(), said)
}

pub(crate) fn run(arguments: &[&str]) -> (Option<i32>, String) {
    ended(&program(arguments).output().unwrap())
}

/// One error that names a place.
pub(crate) fn refused(arguments: &[&str], names: &str) {
    let (code, said) = run(arguments);
    assert_eq!(code, Some(2), "{arguments:?}: {said}");
    assert!(said.contains("error: ") && said.contains(names), "{arguments:?}: {said}");
}

/// Every path below a folder, relative to it.
pub(crate) fn below(folder: &Path) -> Vec<String> {
    let mut found = Vec::new();
    let mut open = vec![folder.to_path_buf()];
    while let Some(at) = open.pop() {
        for entry in std::fs::read_dir(&at).unwrap().map(|e| e.unwrap()) {
            if entry.file_type().unwrap().is_dir() {
                open.push(entry.path());
            } else {
                found.push(entry.path().strip_prefix(folder).unwrap().to_string_lossy().into_owned());
            }
        }
    }
    found.sort();
    found
}

pub(crate) fn text(path: &Path) -> &str {
    path.to_str().unwrap()
}
