//! Making an evidence folder.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha512};

use super::cannot;
use crate::input::hex;
use crate::words::{Language, Phrase, phrase};

use super::bag_path::{BagPath, PathProblem};
use super::key::{Key, KeyError};
use super::manifest::Manifest;
use super::timestamp::{StampError, stamp};
use super::{BAG_INFO, BAGIT, DECLARATION, MANIFEST, PAYLOAD, SIGNATURE, TAG_MANIFEST};

/// Bytes of one file of the payload.
#[derive(Debug, Clone)]
pub enum Bytes {
    /// In memory.
    Here(Vec<u8>),
    /// In a file, copied as it is; with the SHA-256 that it had when it was measured.
    File {
        /// Where it lies.
        path: PathBuf,
        /// Lower-case hexadecimal; none: whatever it is now.
        sha256: Option<String>,
    },
}

/// What goes into an evidence folder.
#[derive(Debug, Clone, Default)]
pub struct Contents {
    /// Payload by path below `data/`.
    pub payload: BTreeMap<String, Bytes>,
    /// Labels and values of `bag-info.txt` (RFC 8493, 2.2.2), in this order.
    pub info: Vec<(String, String)>,
}

/// Why no evidence folder was made.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum SealError {
    /// There is something in the way.
    Exists(PathBuf),
    /// A file's path cannot be kept.
    Path {
        /// As the job names it.
        path: String,
        /// What is wrong.
        problem: PathProblem,
    },
    /// Two paths that some systems cannot tell apart.
    Alike(String, String),
    /// A file changed after it was measured.
    Changed(PathBuf),
    /// Reading or writing failed.
    Io {
        /// `read`, `write`, ...
        doing: &'static str,
        /// Which file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// The key does not sign.
    Key(#[from] KeyError),
    /// The timestamp is none for this folder.
    Stamp(#[from] StampError),
}

impl SealError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            SealError::Exists(path) => {
                phrase!("evidence-exists", form = "folder", path = path.display().to_string())
            }
            SealError::Path { path, problem } => {
                phrase!("evidence-seal-name", path = path, problem = problem.phrase())
            }
            SealError::Alike(first, second) => phrase!("evidence-seal-alike", first = first, second = second),
            SealError::Changed(path) => phrase!("evidence-seal-changed", path = path.display().to_string()),
            SealError::Io { doing, path, source } => cannot(doing, path, source),
            SealError::Key(e) => e.phrase(),
            SealError::Stamp(e) => e.phrase(),
        }
    }
}

/// A timestamp authority's answer.
#[derive(Debug, Clone, Copy)]
pub struct Answer<'a> {
    /// Its name for messages.
    pub file: &'a str,
    /// Its bytes.
    pub bytes: &'a [u8],
}

/// Writes an evidence folder. It appears under its name only when it is whole
/// and on the disk; the same contents and key give the same bytes.
///
/// # Errors
/// Nothing is left under the name.
pub fn seal(out: &Path, contents: &Contents, key: Option<&Key>, stamped: Option<Answer>) -> Result<(), SealError> {
    if fs::symlink_metadata(out).is_ok() {
        return Err(SealError::Exists(out.to_path_buf()));
    }
    let paths = payload_paths(contents)?;
    let mut name = out.as_os_str().to_owned();
    name.push(format!(".part-{}", std::process::id()));
    let part = PathBuf::from(name);
    let written = write_all(&part, contents, &paths, key).and_then(|()| {
        if let Some(answer) = stamped {
            stamp(&part, answer.bytes, answer.file)?;
        }
        fs::rename(&part, out).map_err(|source| SealError::Io { doing: "rename", path: out.to_path_buf(), source })
    });
    if written.is_err() {
        // What could not be finished is of no use; if it can't be removed either, the name says what it is.
        let _ = fs::remove_dir_all(&part);
    }
    written?;
    sync_folder(out.parent().filter(|p| !p.as_os_str().is_empty()).unwrap_or(Path::new(".")))
}

fn payload_paths(contents: &Contents) -> Result<Vec<(BagPath, &Bytes)>, SealError> {
    let mut seen: BTreeMap<String, String> = BTreeMap::new();
    let mut paths = Vec::new();
    for (path, bytes) in &contents.payload {
        let whole = BagPath::new(&format!("{PAYLOAD}/{path}"))
            .map_err(|problem| SealError::Path { path: path.clone(), problem })?;
        if let Some(first) = seen.insert(whole.folded(), path.clone()) {
            return Err(SealError::Alike(first, path.clone()));
        }
        paths.push((whole, bytes));
    }
    Ok(paths)
}

fn write_all(
    folder: &Path,
    contents: &Contents,
    paths: &[(BagPath, &Bytes)],
    key: Option<&Key>,
) -> Result<(), SealError> {
    let (mut manifest, mut octets) = (Manifest::default(), 0);
    fs::create_dir_all(folder.join(PAYLOAD)).map_err(|source| SealError::Io {
        doing: "make",
        path: folder.to_path_buf(),
        source,
    })?;
    for (path, bytes) in paths {
        let to = folder.join(path.as_str());
        if let Some(parent) = to.parent() {
            fs::create_dir_all(parent).map_err(|source| SealError::Io {
                doing: "make",
                path: parent.to_path_buf(),
                source,
            })?;
        }
        let (digest, size) = match bytes {
            Bytes::Here(bytes) => (write_file(&to, bytes)?, bytes.len() as u64),
            Bytes::File { path, sha256 } => copy(path, sha256.as_deref(), &to)?,
        };
        octets += size;
        manifest.entries.insert(path.clone(), digest);
    }
    let mut info: Vec<(String, String)> = contents.info.clone();
    info.push((SIZE.to_owned(), format!("{octets}.{}", paths.len())));
    let mut tags = Manifest::default();
    for (name, text) in [(BAGIT, DECLARATION.to_owned()), (BAG_INFO, info_text(&info)), (MANIFEST, manifest.text())] {
        let digest = write_file(&folder.join(name), text.as_bytes())?;
        let path = BagPath::new(name).map_err(|problem| SealError::Path { path: name.to_owned(), problem })?;
        tags.entries.insert(path, digest);
    }
    let text = tags.text();
    write_file(&folder.join(TAG_MANIFEST), text.as_bytes())?;
    if let Some(key) = key {
        let signature = key.sign(text.as_bytes())?;
        write_file(&folder.join(SIGNATURE), signature.pem().as_bytes())?;
    }
    sync_folder(folder)
}

/// The label that counts a payload's bytes and files (RFC 8493, 2.2.2).
pub(crate) const SIZE: &str = "Payload-Oxum";

/// `Label: value` lines.
pub(crate) fn info_text(info: &[(String, String)]) -> String {
    info.iter().map(|(label, value)| format!("{label}: {}\n", label_text(value))).collect()
}

/// A label's value as it is written: what would start a new line becomes a blank.
pub(crate) fn label_text(value: &str) -> String {
    value.chars().map(|c| if c.is_control() { ' ' } else { c }).collect::<String>().trim().to_owned()
}

/// Writes a file to the disk; its SHA-512.
pub(super) fn write_file(path: &Path, bytes: &[u8]) -> Result<String, SealError> {
    let failed = |source| SealError::Io { doing: "write", path: path.to_path_buf(), source };
    let mut file = File::create_new(path).map_err(failed)?;
    file.write_all(bytes).map_err(failed)?;
    file.sync_all().map_err(failed)?;
    Ok(hex(&Sha512::digest(bytes)))
}

/// Copies a file; its SHA-512 and size.
fn copy(from: &Path, sha256: Option<&str>, to: &Path) -> Result<(String, u64), SealError> {
    let cannot_read = |source| SealError::Io { doing: "read", path: from.to_path_buf(), source };
    let cannot_write = |source| SealError::Io { doing: "write", path: to.to_path_buf(), source };
    let mut source = File::open(from).map_err(cannot_read)?;
    let mut target = File::create_new(to).map_err(cannot_write)?;
    let (mut digest, mut measured, mut size) = (Sha512::new(), sha2::Sha256::new(), 0);
    let mut block = vec![0; 1 << 18];
    loop {
        let n = source.read(&mut block).map_err(cannot_read)?;
        if n == 0 {
            break;
        }
        digest.update(&block[..n]);
        measured.update(&block[..n]);
        target.write_all(&block[..n]).map_err(cannot_write)?;
        size += n as u64;
    }
    target.sync_all().map_err(cannot_write)?;
    if sha256.is_some_and(|wanted| wanted != hex(&measured.finalize())) {
        return Err(SealError::Changed(from.to_path_buf()));
    }
    Ok((hex(&digest.finalize()), size))
}

/// New names of a folder reach the disk.
pub(super) fn sync_folder(folder: &Path) -> Result<(), SealError> {
    crate::folder::sync_folder(folder).map_err(|source| SealError::Io {
        doing: "write",
        path: folder.to_path_buf(),
        source,
    })
}
