//! Everything before the first job, as a user meets it: exit codes, messages,
//! and the first-day guide, every command of which is tried.
#![cfg(test)]

mod doors;
mod first_day;

use std::path::{Path, PathBuf};

/// Runs the program in a folder: exit code and all that it said.
fn run_in(folder: &Path, arguments: &[&str]) -> (i32, String) {
    let mut command = crate::program::program();
    let output = command.current_dir(folder).args(arguments).env_remove("BAYWITNESS_MODELS").output().unwrap();
    let text = format!("{}{}", String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr));
    (output.status.code().unwrap(), text.split_whitespace().collect::<Vec<_>>().join(" "))
}

/// A folder of the shared photos, where they are.
fn shared(name: &str) -> Option<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../shared/photos").join(name);
    if folder.is_dir() {
        return Some(folder);
    }
    println!("skipped: {} is not here", folder.display());
    None
}

/// Every picture of a folder, by name.
fn pictures(folder: &Path) -> Vec<String> {
    let mut all: Vec<String> =
        std::fs::read_dir(folder).unwrap().map(|e| e.unwrap().path().display().to_string()).collect();
    all.sort();
    all
}
