//! A second machine that vouches for a log: it remembers the newest checkpoint
//! that it saw of each log, and cosigns only what continues it.

use std::fs;
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha256};

use super::checkpoint::Checkpoint;
use super::note::{KeyKind, NoteSigner, SignedNote, VerifierKey};
use super::read::{LogError, LogFolder, io_error, read_checkpoint};
use super::write::{Log, private_folder};
use crate::folder::write_durably;
use crate::words::phrase;

/// Cosigned checkpoints in a log's folder, a file for each size.
pub const WITNESSED: &str = "witnessed";

/// What a witness signed.
#[derive(Debug)]
pub struct Witnessed {
    /// The log's state.
    pub checkpoint: Checkpoint,
    /// How many entries it had when the witness saw it last; none: never seen.
    pub before: Option<u64>,
    /// The checkpoint with the cosignature.
    pub file: PathBuf,
}

/// Where a witness remembers what it saw of a log, where nobody names a file: beside its key, a file for each log. The first
/// one is the key's alone, as it was when a witness had one log.
pub fn memory(key: &Path, origin: &str) -> PathBuf {
    let beside = |ending: &str| {
        let mut file = key.as_os_str().to_owned();
        file.push(ending);
        PathBuf::from(file)
    };
    let own = beside(&format!(".{}.seen", &crate::input::hex(&Sha256::digest(origin))[..16]));
    let first = beside(".seen");
    let of_another = read_checkpoint(&first).is_ok_and(|(seen, _)| seen.origin != origin);
    if own.exists() || of_another { own } else { first }
}

/// Cosigns a log's newest checkpoint, where it is signed by the log and continues
/// what this witness has `seen` (a file of its own, made the first time).
///
/// # Errors
/// The log was rewritten, is not signed by a known key, or a file cannot be read or written.
pub fn witness(
    folder: &Path,
    keys: &[VerifierKey],
    signer: &NoteSigner,
    seen: &Path,
    now: u64,
) -> Result<Witnessed, LogError> {
    let log = LogFolder::open(folder)?;
    let vouchers = log.checkpoint.vouchers(&log.note, keys);
    let vouchers = vouchers.map_err(|why| LogError::Rewritten { path: folder.to_path_buf(), why })?;
    if !vouchers.log {
        let why = phrase!("evidence-log-key-not-given", log = &log.checkpoint.origin);
        return Err(LogError::File { path: folder.to_path_buf(), why });
    }
    if log.checkpoint.is_own(&signer.verifier(KeyKind::Witness), &log.note, keys) {
        let why = phrase!("evidence-witness-own-key", log = &log.checkpoint.origin);
        return Err(LogError::Refused { path: folder.to_path_buf(), why });
    }
    let before = if seen.exists() {
        let (earlier, _) = read_checkpoint(seen)?;
        if earlier.origin != log.checkpoint.origin {
            let why = phrase!("evidence-witness-of-another", log = &log.checkpoint.origin, other = &earlier.origin);
            return Err(LogError::Refused { path: seen.to_path_buf(), why });
        }
        log.check_earlier(&earlier, seen)?;
        Some(earlier.size)
    } else {
        log.check_root()?;
        None
    };
    // Remembered before it is signed: a crash between the two costs a signature, never a fork.
    write_durably(seen, log.note.to_text().as_bytes()).map_err(io_error("write", seen))?;
    let signature = signer.cosign(&log.note.text, now);
    let file = folder.join(WITNESSED).join(log.checkpoint.size.to_string());
    let mut note = log.note.clone();
    if let Ok((_, earlier)) = read_checkpoint(&file)
        && earlier.text == note.text
    {
        note.add(earlier.signatures);
    }
    note.add([signature.clone()]);
    let parent = folder.join(WITNESSED);
    fs::create_dir_all(&parent).map_err(io_error("make", &parent))?;
    write_durably(&file, note.to_text().as_bytes()).map_err(io_error("write", &file))?;
    // The public checkpoint is the log's own to write; where it is written here, it gets the line.
    if private_folder(folder).is_dir() {
        Log::open(folder)?.add_cosignatures(&note, &signature)?;
    }
    Ok(Witnessed { checkpoint: log.checkpoint, before, file })
}

/// Every cosigned checkpoint of a log's folder, the smallest first.
///
/// # Errors
/// A file cannot be read.
pub fn witnessed(folder: &Path) -> Result<Vec<(PathBuf, Checkpoint, SignedNote)>, LogError> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder.join(WITNESSED)).into_iter().flatten() {
        let path = entry.map_err(io_error("read", folder))?.path();
        // Hidden files are parts that were never finished.
        if path.file_name().is_some_and(|n| !n.to_string_lossy().starts_with('.')) {
            let (checkpoint, note) = read_checkpoint(&path)?;
            found.push((path, checkpoint, note));
        }
    }
    found.sort_by_key(|(_, checkpoint, _)| checkpoint.size);
    Ok(found)
}
