//! An evidence folder as one file: an uncompressed POSIX tar with the folder at
//! its top (RFC 8493, 4), so that any archiver opens it.
//!
//! The same folder gives the same bytes: files in the order of their names, no
//! owner, no time. A file is therefore read by unpacking it and packing it
//! again: what comes out otherwise was not packed here, or was altered.

use std::fs::{self, File};
use std::io::{self, BufReader, BufWriter, Read, Write};
use std::path::{Path, PathBuf};

use super::bag_path::BagPath;
use super::inspect::walk;

/// Why a one-file folder cannot be packed or unpacked.
#[derive(Debug, thiserror::Error)]
pub enum OneFileError {
    /// Reading or writing failed.
    #[error("cannot {doing} {path}: {source}")]
    Io {
        /// `read`, `write`, ...
        doing: &'static str,
        /// Which file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// There is something in the way.
    #[error("{0} is already there: name another file, or move it away first (sealed evidence is never changed)")]
    Exists(PathBuf),
    /// Something in it that no evidence folder holds.
    #[error("{file}: the entry {entry:?} {problem}: this is no evidence folder as one file")]
    Entry {
        /// The tar file.
        file: PathBuf,
        /// The entry's path as the file has it.
        entry: String,
        /// What is wrong.
        problem: String,
    },
    /// The folder holds what cannot be packed.
    #[error("{0}: {1}")]
    Folder(PathBuf, String),
}

/// Whether a path is to be one file.
pub fn is_one_file(path: &Path) -> bool {
    path.extension().is_some_and(|e| e.eq_ignore_ascii_case("tar"))
}

/// Packs a folder; `name` is the folder's name inside. The file appears whole or not at all.
///
/// # Errors
/// Something is in the way, or reading or writing failed.
pub fn pack(folder: &Path, name: &str, file: &Path) -> Result<(), OneFileError> {
    if fs::symlink_metadata(file).is_ok() {
        return Err(OneFileError::Exists(file.to_path_buf()));
    }
    pack_anew(folder, name, file)
}

/// Packs an unpacked folder again in its file's stead, under its own name: what
/// a timestamp adds. The file is the old one or the new one at any moment.
///
/// # Errors
/// Reading or writing failed.
pub fn repack(folder: &Path, file: &Path) -> Result<(), OneFileError> {
    let name = folder.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default();
    pack_anew(folder, &name, file)
}

fn pack_anew(folder: &Path, name: &str, file: &Path) -> Result<(), OneFileError> {
    let failed = |source| OneFileError::Io { doing: "write", path: file.to_path_buf(), source };
    let mut part = file.as_os_str().to_owned();
    part.push(format!(".part-{}", std::process::id()));
    let part = PathBuf::from(part);
    let written = File::create_new(&part).map_err(failed).and_then(|target| {
        let mut target = BufWriter::new(target);
        pack_to(folder, name, &mut target)?;
        let target = target.into_inner().map_err(|e| failed(e.into_error()))?;
        target.sync_all().map_err(failed)?;
        fs::rename(&part, file).map_err(failed)
    });
    if written.is_err() {
        // What could not be finished is of no use.
        let _ = fs::remove_file(&part);
    }
    written
}

fn pack_to(folder: &Path, name: &str, target: &mut impl Write) -> Result<(), OneFileError> {
    let cannot_read = |path: &Path, source| OneFileError::Io { doing: "read", path: path.to_path_buf(), source };
    let (files, bad) = walk(folder).map_err(|e| cannot_read(folder, e))?;
    if let Some(bad) = bad.first() {
        return Err(OneFileError::Folder(folder.to_path_buf(), bad.say(crate::words::Language::English)));
    }
    let mut tar = tar::Builder::new(target);
    for (path, on_disk) in &files {
        let file = File::open(on_disk).map_err(|e| cannot_read(on_disk, e))?;
        let mut header = tar::Header::new_gnu();
        header.set_size(file.metadata().map_err(|e| cannot_read(on_disk, e))?.len());
        header.set_mode(0o644);
        header.set_mtime(0);
        header.set_entry_type(tar::EntryType::Regular);
        tar.append_data(&mut header, format!("{name}/{path}"), BufReader::new(file))
            .map_err(|e| cannot_read(on_disk, e))?;
    }
    tar.finish().map_err(|e| cannot_read(folder, e))
}

/// Unpacks a file that may be anything into an empty folder; the evidence folder
/// in it. Nothing is written outside of `into`, and no more than the file holds.
///
/// # Errors
/// It is no tar, holds other things than files of one folder, or was not packed by [`pack`].
pub fn unpack(file: &Path, into: &Path) -> Result<PathBuf, OneFileError> {
    let cannot_read = |source| OneFileError::Io { doing: "read", path: file.to_path_buf(), source };
    let wrong = |entry: &str, problem: String| OneFileError::Entry {
        file: file.to_path_buf(),
        entry: entry.to_owned(),
        problem,
    };
    let mut top: Option<String> = None;
    let mut tar = tar::Archive::new(BufReader::new(File::open(file).map_err(cannot_read)?));
    for entry in tar.entries().map_err(cannot_read)? {
        let mut entry = entry.map_err(cannot_read)?;
        let path =
            String::from_utf8(entry.path_bytes().into_owned()).map_err(|_| wrong("?", "is not UTF-8".to_owned()))?;
        if entry.header().entry_type() != tar::EntryType::Regular {
            return Err(wrong(&path, "is a link or another thing that is no file".to_owned()));
        }
        let whole = BagPath::new(&path).map_err(|problem| wrong(&path, problem.to_string()))?;
        let Some((first, _)) = whole.as_str().split_once('/') else {
            return Err(wrong(&path, "lies in no folder".to_owned()));
        };
        if top.get_or_insert_with(|| first.to_owned()) != first {
            return Err(wrong(&path, "lies in a second folder".to_owned()));
        }
        let to = into.join(whole.as_str());
        let cannot_write = |source| OneFileError::Io { doing: "write", path: to.clone(), source };
        if let Some(parent) = to.parent() {
            fs::create_dir_all(parent).map_err(cannot_write)?;
        }
        let mut target = File::create_new(&to).map_err(cannot_write)?;
        io::copy(&mut entry, &mut target).map_err(cannot_write)?;
    }
    let top = top.ok_or_else(|| wrong("", "is missing, the file is empty".to_owned()))?;
    let folder = into.join(&top);
    let mut same = SameBytes::new(File::open(file).map_err(cannot_read)?);
    pack_to(&folder, &top, &mut same)?;
    if !same.and_no_more().map_err(cannot_read)? {
        return Err(wrong("", "or its header was altered, or another program packed the file".to_owned()));
    }
    Ok(folder)
}

/// Compares what is written to it with a file.
struct SameBytes {
    file: BufReader<File>,
    same: bool,
}

impl SameBytes {
    fn new(file: File) -> Self {
        SameBytes { file: BufReader::new(file), same: true }
    }

    fn and_no_more(mut self) -> io::Result<bool> {
        Ok(self.same && self.file.read(&mut [0])? == 0)
    }
}

impl Write for SameBytes {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let mut own = vec![0; bytes.len()];
        self.same = self.same && self.file.read_exact(&mut own).is_ok() && own == bytes;
        Ok(bytes.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        Ok(())
    }
}
