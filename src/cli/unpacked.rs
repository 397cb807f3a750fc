//! Evidence as it is named: a folder, or one file that is unpacked first.

use std::path::{Path, PathBuf};

use super::output::language;
use crate::evidence::{OneFileError, is_one_file, unpack};
use crate::words::say;

/// An evidence folder at hand; where it was one file, what it was unpacked into
/// is gone once this is.
pub(super) struct Unpacked {
    pub(super) folder: PathBuf,
    /// Whether the folder is one file where it was named.
    pub(super) was_one_file: bool,
    _room: Option<tempfile::TempDir>,
}

/// Why it could not be unpacked.
pub(super) enum Unpacking {
    /// What is in it is not what was packed.
    Altered(String),
    /// It cannot be read.
    Failed(String),
}

impl From<Unpacking> for String {
    fn from(why: Unpacking) -> String {
        match why {
            Unpacking::Altered(words) | Unpacking::Failed(words) => words,
        }
    }
}

/// Opens evidence by its name; what it holds is not looked at.
pub(super) fn open(named: &Path) -> Result<Unpacked, Unpacking> {
    if !named.is_file() || !is_one_file(named) {
        return Ok(Unpacked { folder: named.to_path_buf(), was_one_file: false, _room: None });
    }
    let room = tempfile::tempdir()
        .map_err(|e| Unpacking::Failed(say!(language(), "cli-cannot-unpack", why = e.to_string())))?;
    match unpack(named, room.path()) {
        Ok(folder) => Ok(Unpacked { folder, was_one_file: true, _room: Some(room) }),
        Err(e @ OneFileError::Entry { .. }) => Err(Unpacking::Altered(e.phrase().say(language()))),
        Err(e) => Err(Unpacking::Failed(e.phrase().say(language()))),
    }
}
