//! A workshop with its key, and an auditor with the list on which the key stands.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use crate::evidence::doors::run;
use crate::evidence::{fresh_key, sealed_anew};

pub(super) struct Workshop {
    dir: tempfile::TempDir,
    pub(super) key: PathBuf,
    pub(super) list: PathBuf,
}

impl Workshop {
    pub(super) fn new() -> Self {
        let dir = tempfile::tempdir().unwrap();
        let key = key(dir.path(), "own");
        let list = signers(dir.path(), &key, "");
        Workshop { dir, key, list }
    }

    pub(super) fn at(&self, name: &str) -> PathBuf {
        self.dir.path().join(name)
    }

    pub(super) fn check(&self, folder: &Path) -> (i32, String) {
        check(folder, &self.list)
    }

    /// What `check` says of a folder after somebody changed its payload and made all digests fit.
    pub(super) fn checked(
        &self,
        (from, key): (&str, Option<&Path>),
        out: &str,
        change: impl FnOnce(&mut BTreeMap<String, Vec<u8>>),
    ) -> (i32, String) {
        sealed_anew(&self.at(from), &self.at(out), key, change);
        self.check(&self.at(out))
    }
}

pub(super) fn key(dir: &Path, name: &str) -> PathBuf {
    let home = dir.join(name);
    fs::create_dir_all(&home).unwrap();
    fresh_key(&home, "")
}

/// A list with the workshop's key, with options in front of it.
pub(super) fn signers(dir: &Path, key: &Path, options: &str) -> PathBuf {
    let list = dir.join("signers");
    let public = fs::read_to_string(key.with_extension("pub")).unwrap();
    fs::write(&list, format!("shop@invented.example {options}{public}")).unwrap();
    list
}

pub(super) fn check(folder: &Path, list: &Path) -> (i32, String) {
    run(&[folder, Path::new("--signers"), list], &["check"], None)
}
