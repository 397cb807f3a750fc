//! Reading a small file of a folder that may be anything: a pipe in its place would be waited for without end, and a
//! file of any size would take all memory.

use std::fs::{self, File};
use std::io::{self, ErrorKind, Read};
use std::path::Path;

use super::RESULT;
use super::inspection::unread;
use crate::folder::MOST_ATTACHMENT;
use crate::words::{Phrase, phrase};

/// A signature and a declaration are some hundred bytes, a list of what was left out as long as its names.
pub(crate) const MOST_SMALL: u64 = 1 << 20;
/// The largest manifest, and the largest result, bytes.
pub(crate) const MOST_MANIFEST: u64 = 64 << 20;
/// The largest file of an evidence folder: no attachment is larger, and photos are far smaller.
pub(crate) const MOST_FILE: u64 = MOST_ATTACHMENT;

/// Why there are no bytes.
pub(crate) struct NotRead {
    /// Nothing bears that name.
    pub(crate) missing: bool,
    /// For people, without the file's name.
    pub(crate) why: Phrase,
}

impl NotRead {
    fn of(e: io::Error) -> Self {
        NotRead { missing: e.kind() == ErrorKind::NotFound, why: unread(e) }
    }

    /// The same with a file's name.
    pub(crate) fn of_file(self, file: &str) -> Phrase {
        phrase!("evidence-file-wrong", file = file, why = self.why)
    }
}

/// The bytes of a regular file, no link, of at most so many bytes; `what` is `manifest`, `timestamp`, `signature` or
/// `small`: what it should have been.
pub(crate) fn read_small(path: &Path, most: u64, what: &'static str) -> Result<Vec<u8>, NotRead> {
    let size = || NotRead { missing: false, why: phrase!("evidence-size", what = what) };
    let is_small = |meta: &fs::Metadata| meta.is_file() && meta.len() <= most;
    // Before it is opened: to open a pipe waits for whoever writes.
    if !is_small(&fs::symlink_metadata(path).map_err(NotRead::of)?) {
        return Err(size());
    }
    let (mut bytes, file) = (Vec::new(), File::open(path).map_err(NotRead::of)?);
    // It may grow meanwhile.
    file.take(most + 1).read_to_end(&mut bytes).map_err(NotRead::of)?;
    if bytes.len() as u64 > most { Err(size()) } else { Ok(bytes) }
}

/// The bytes of the result in an evidence folder's payload.
pub(crate) fn read_result(payload: &Path) -> Result<Vec<u8>, NotRead> {
    read_small(&payload.join(RESULT), MOST_MANIFEST, "small")
}
