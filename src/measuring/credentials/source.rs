//! Where a job's credentials come from: its photos' bytes, or an earlier record.

use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;

use super::{Anchors, Credentials};
use crate::photo;

/// How to come by the credentials of photos.
#[derive(Debug, Clone)]
pub enum Source {
    /// From the photos' bytes; signers that these anchors vouch for are trusted.
    /// A program without the feature finds none.
    Photos(Option<Arc<Anchors>>),
    /// As an earlier record has them, by the photo's SHA-256: what is sealed is
    /// measured again as it was, whoever is trusted today.
    Recorded(Arc<BTreeMap<String, Credentials>>),
}

impl Default for Source {
    /// From the photos; no signer is known.
    fn default() -> Self {
        Source::Photos(None)
    }
}

impl Source {
    /// The credentials of a photo that was read before and had this digest;
    /// `None` where it carries none, or none that this program can read.
    ///
    /// # Errors
    /// The file cannot be read.
    pub fn of(&self, path: &Path, sha256: &str) -> Result<Option<Credentials>, photo::Error> {
        match self {
            Source::Recorded(known) => Ok(known.get(sha256).cloned()),
            Source::Photos(anchors) => of_file(path, sha256, anchors.as_deref()),
        }
    }
}

#[cfg(feature = "credentials")]
fn of_file(path: &Path, sha256: &str, anchors: Option<&Anchors>) -> Result<Option<Credentials>, photo::Error> {
    let bytes = photo::read_bytes(path)?;
    let kind = photo::recognise(&bytes, &path.display().to_string())?;
    if !super::carries(&bytes, kind) {
        return Ok(None);
    }
    // What is said of credentials is said of the bytes that were measured.
    if photo::sha256(&bytes) != sha256 {
        return Ok(Some(Credentials::unreadable("general.error")));
    }
    Ok(Some(super::read::read(&bytes, kind, anchors)))
}

#[cfg(not(feature = "credentials"))]
#[allow(clippy::unnecessary_wraps, reason = "with the feature the file is read")]
fn of_file(_: &Path, _: &str, _: Option<&Anchors>) -> Result<Option<Credentials>, photo::Error> {
    Ok(None)
}
