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
use super::small_file::MOST_FILE;
use super::{BAG_INFO, cannot};
use crate::words::{Language, Phrase, phrase};

/// Why a one-file folder cannot be packed or unpacked.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum OneFileError {
    /// Reading or writing failed.
    Io {
        /// `read`, `write`, ...
        doing: &'static str,
        /// Which file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// There is something in the way.
    Exists(PathBuf),
    /// Something in it that no evidence folder holds.
    Entry {
        /// The tar file.
        file: PathBuf,
        /// The entry's path as the file has it; empty: it is about the whole file.
        entry: String,
        /// What is wrong.
        problem: Phrase,
    },
    /// It cannot be read as it is, which says nothing of what was sealed.
    Unfit {
        /// The tar file.
        file: PathBuf,
        /// The entry's path as the file has it; empty: it is about the whole file.
        entry: String,
        /// What keeps it from being read.
        problem: Phrase,
    },
    /// The folder holds what cannot be packed.
    Folder(PathBuf, Phrase),
}

impl OneFileError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            OneFileError::Io { doing, path, source } => cannot(doing, path, source),
            OneFileError::Exists(path) => phrase!("evidence-exists", form = "file", path = path.display().to_string()),
            OneFileError::Entry { file, entry, problem } | OneFileError::Unfit { file, entry, problem }
                if entry.is_empty() =>
            {
                phrase!("evidence-one-file", file = file.display().to_string(), problem = problem.clone())
            }
            OneFileError::Entry { file, entry, problem } | OneFileError::Unfit { file, entry, problem } => {
                let file = file.display().to_string();
                phrase!("evidence-one-file-entry", file = file, entry = entry, problem = problem.clone())
            }
            OneFileError::Folder(path, why) => {
                phrase!("evidence-file-wrong", file = path.display().to_string(), why = why.clone())
            }
        }
    }
}

fn problem(problem: &str) -> Phrase {
    phrase!("evidence-one-file-problem", problem = problem)
}

/// Whether a path is to be one file.
pub fn is_one_file(path: &Path) -> bool {
    path.extension().is_some_and(|e| e.eq_ignore_ascii_case("tar"))
}

/// As much of a file as may stand before the name of the first of its files.
const MOST_HEAD: u64 = 1 << 16;

/// The largest evidence folder as one file: a job's photos and attachments are far smaller.
pub(crate) const MOST_ONE_FILE: u64 = 16 << 30;

/// Whether a file begins like an evidence folder as one file, whatever its name is.
pub fn holds_evidence(file: &Path) -> bool {
    let Ok(file) = File::open(file) else { return false };
    let mut tar = tar::Archive::new(file.take(MOST_HEAD));
    let first = tar.entries().ok().and_then(|mut entries| entries.next()?.ok());
    first.is_some_and(|entry| entry.path_bytes().ends_with(format!("/{BAG_INFO}").as_bytes()))
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
        return Err(OneFileError::Folder(folder.to_path_buf(), bad.clone()));
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
/// It is no tar, holds other things than files of one folder or one of them twice, or was not packed by [`pack`].
pub fn unpack(file: &Path, into: &Path) -> Result<PathBuf, OneFileError> {
    let cannot_read = |source| OneFileError::Io { doing: "read", path: file.to_path_buf(), source };
    let wrong = |entry: &str, problem: Phrase| OneFileError::Entry {
        file: file.to_path_buf(),
        entry: entry.to_owned(),
        problem,
    };
    let unfit = |entry: &str, problem: Phrase| OneFileError::Unfit {
        file: file.to_path_buf(),
        entry: entry.to_owned(),
        problem,
    };
    if fs::metadata(file).map_err(cannot_read)?.len() > MOST_ONE_FILE {
        return Err(unfit("", phrase!("evidence-size", what = "small")));
    }
    let mut top: Option<String> = None;
    // Packed as other programs do: its digests may all fit, but its bytes are not those that `pack` makes.
    let mut foreign = false;
    let mut tar = tar::Archive::new(BufReader::new(File::open(file).map_err(cannot_read)?));
    for entry in tar.entries().map_err(cannot_read)? {
        let mut entry = entry.map_err(cannot_read)?;
        let path =
            String::from_utf8(entry.path_bytes().into_owned()).map_err(|_| wrong("?", phrase!("evidence-not-utf8")))?;
        foreign = foreign || is_foreign(entry.header());
        let plain = path.strip_prefix("./").unwrap_or(&path);
        let is_folder = entry.header().entry_type() == tar::EntryType::Directory;
        let plain = if is_folder { plain.trim_end_matches('/') } else { plain };
        if is_folder && plain.is_empty() {
            continue;
        }
        if !is_folder && entry.header().entry_type() != tar::EntryType::Regular {
            return Err(wrong(&path, problem("link")));
        }
        let whole = BagPath::new(plain).map_err(|problem| wrong(&path, problem.phrase()))?;
        let Some(first) = whole.as_str().split('/').next().filter(|first| is_folder || *first != plain) else {
            return Err(wrong(&path, problem("no-folder")));
        };
        if top.get_or_insert_with(|| first.to_owned()) != first {
            return Err(wrong(&path, problem("second")));
        }
        if is_folder {
            // Its files make it; an empty one is in no list.
            continue;
        }
        if entry.size() > MOST_FILE {
            return Err(wrong(&path, phrase!("evidence-size", what = "small")));
        }
        let to = into.join(whole.as_str());
        let cannot_write = |source| OneFileError::Io { doing: "write", path: to.clone(), source };
        if let Some(parent) = to.parent() {
            fs::create_dir_all(parent).map_err(cannot_write)?;
        }
        if fs::symlink_metadata(&to).is_ok() {
            return Err(unfit(&path, problem("twice")));
        }
        let mut target = File::create_new(&to).map_err(cannot_write)?;
        io::copy(&mut entry, &mut target).map_err(cannot_write)?;
    }
    let top = top.filter(|top| into.join(top).is_dir()).ok_or_else(|| wrong("", problem("empty")))?;
    let folder = into.join(&top);
    let mut same = SameBytes::new(File::open(file).map_err(cannot_read)?);
    pack_to(&folder, &top, &mut same)?;
    let same = same.and_no_more().map_err(cannot_read)?;
    if !same && foreign {
        return Err(unfit("", problem("foreign")));
    }
    if !same {
        return Err(wrong("", problem("otherwise")));
    }
    Ok(folder)
}

/// Whether another program made an entry: this one packs files alone, without owner and time.
fn is_foreign(header: &tar::Header) -> bool {
    let owned = [header.username_bytes(), header.groupname_bytes()].iter().flatten().any(|name| !name.is_empty());
    owned || header.entry_type() != tar::EntryType::Regular || !matches!(header.mtime(), Ok(0))
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
