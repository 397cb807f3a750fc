//! A log as it lies in a folder (or was fetched from where it is published).
//! Nothing in it is trusted: what follows from tiles is held against the root of
//! a checkpoint.

use std::collections::HashMap;
use std::fs;
use std::io::{self, Read};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use super::cannot;
use super::checkpoint::Checkpoint;
use super::note::SignedNote;
use super::tile::{Kind, LONGEST, Tile, WIDTH, holder, subtree, unbundle};
use super::tree::{Hash, consistency_proof, inclusion_proof, is_consistent, is_included, leaf_hash, range_hash};
use crate::words::{Language, Phrase, phrase};

/// The checkpoint's name in a log's folder.
pub const CHECKPOINT: &str = "checkpoint";
/// Largest checkpoint, bytes.
const MOST_CHECKPOINT: u64 = 1 << 16;

/// Why a log cannot be read, or does not hold.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum LogError {
    /// Reading or writing failed.
    Io {
        /// `read`, `write`, ...
        doing: &'static str,
        /// Which file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// There is no log.
    None(PathBuf),
    /// A file is not what a log has there.
    File {
        /// Which file.
        path: PathBuf,
        /// What is wrong.
        why: Phrase,
    },
    /// It is not what it would have to be for what was asked.
    Refused {
        /// Which file or folder.
        path: PathBuf,
        /// Why it is refused.
        why: Phrase,
    },
    /// It is not the log that it was.
    Rewritten {
        /// The log or the checkpoint that does not fit.
        path: PathBuf,
        /// What is wrong.
        why: Phrase,
    },
}

impl LogError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            LogError::Io { doing, path, source } => cannot(doing, path, source),
            LogError::None(folder) => phrase!("evidence-log-none", folder = folder.display().to_string()),
            LogError::File { path, why } | LogError::Refused { path, why } | LogError::Rewritten { path, why } => {
                phrase!("evidence-file-wrong", file = path.display().to_string(), why = why.clone())
            }
        }
    }
}

pub(super) fn io_error(doing: &'static str, path: &Path) -> impl FnOnce(io::Error) -> LogError {
    let path = path.to_path_buf();
    move |source| LogError::Io { doing, path, source }
}

/// Reads a checkpoint's file.
///
/// # Errors
/// It cannot be read, or is none.
pub fn read_checkpoint(path: &Path) -> Result<(Checkpoint, SignedNote), LogError> {
    let mut text = String::new();
    let file = fs::File::open(path).map_err(io_error("read", path))?;
    file.take(MOST_CHECKPOINT).read_to_string(&mut text).map_err(io_error("read", path))?;
    Checkpoint::read(&text).map_err(|why| LogError::File { path: path.to_path_buf(), why })
}

/// Tiles that were read, by level and number.
type Known = HashMap<(u32, u64), Arc<Vec<Hash>>>;

/// A log at one of its checkpoints.
#[derive(Debug)]
pub struct LogFolder {
    folder: PathBuf,
    /// Where it stood.
    pub checkpoint: Checkpoint,
    /// The checkpoint as it was signed.
    pub note: SignedNote,
    tiles: Mutex<Known>,
}

impl LogFolder {
    /// Opens the folder at its newest checkpoint.
    ///
    /// # Errors
    /// There is no log, or its checkpoint cannot be read.
    pub fn open(folder: &Path) -> Result<Self, LogError> {
        let path = folder.join(CHECKPOINT);
        if !path.is_file() {
            return Err(LogError::None(folder.to_path_buf()));
        }
        let (checkpoint, note) = read_checkpoint(&path)?;
        Ok(LogFolder::at(folder, checkpoint, note))
    }

    /// The folder at a given checkpoint, which it may have or not.
    pub fn at(folder: &Path, checkpoint: Checkpoint, note: SignedNote) -> Self {
        LogFolder { folder: folder.to_path_buf(), checkpoint, note, tiles: Mutex::default() }
    }

    /// Where it lies.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    fn tile(&self, kind: Kind, index: u64) -> Result<(Tile, Vec<u8>), LogError> {
        let wrong = |problem: &str| LogError::File {
            path: self.folder.clone(),
            why: phrase!("evidence-tile", problem = problem),
        };
        let tile = Tile::of(kind, index, self.checkpoint.size).ok_or_else(|| wrong("none"))?;
        let partial = self.folder.join(tile.path());
        let most = WIDTH * (LONGEST as u64 + 2);
        let read = |path: &Path| {
            let mut bytes = Vec::new();
            fs::File::open(path)?.take(most).read_to_end(&mut bytes).map(|_| bytes)
        };
        // A tile that was partial at this checkpoint may have become full, and the partial one taken away.
        let bytes = match read(&partial) {
            Err(e) if e.kind() == io::ErrorKind::NotFound => read(&self.folder.join(tile.full_path())).map_err(|_| e),
            other => other,
        };
        Ok((tile, bytes.map_err(io_error("read", &partial))?))
    }

    fn known(&self) -> MutexGuard<'_, Known> {
        self.tiles.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn hashes(&self, level: u32, index: u64) -> Result<Arc<Vec<Hash>>, LogError> {
        if let Some(known) = self.known().get(&(level, index)) {
            return Ok(Arc::clone(known));
        }
        let (tile, bytes) = self.tile(Kind::Hashes(level), index)?;
        let (hashes, rest) = bytes.as_chunks::<32>();
        let wanted = tile.width as usize;
        if !rest.is_empty() || (hashes.len() != wanted && hashes.len() != WIDTH as usize) {
            let why = phrase!("evidence-tile-hashes", count = wanted);
            return Err(LogError::File { path: self.folder.join(tile.path()), why });
        }
        let hashes = Arc::new(hashes[..wanted].to_vec());
        self.known().insert((level, index), Arc::clone(&hashes));
        Ok(hashes)
    }

    /// The hash of a complete subtree, as the tiles have it.
    pub(super) fn node(&self, level: u32, index: u64) -> Result<Hash, LogError> {
        let (tile_level, tile, range) = holder(level, index);
        let hashes = self.hashes(tile_level, tile)?;
        let some = hashes.get(range).ok_or_else(|| LogError::File {
            path: self.folder.clone(),
            why: phrase!("evidence-tile", problem = "subtree"),
        })?;
        Ok(subtree(some))
    }

    fn unfit(&self) -> LogError {
        LogError::Rewritten {
            path: self.folder.clone(),
            why: phrase!("evidence-tiles-root", size = self.checkpoint.size),
        }
    }

    /// Whether the tiles' right edge gives the checkpoint's root.
    ///
    /// # Errors
    /// It does not, or cannot be read.
    pub fn check_root(&self) -> Result<(), LogError> {
        let root = range_hash(0, self.checkpoint.size, &|level, index| self.node(level, index))?;
        if root == self.checkpoint.root { Ok(()) } else { Err(self.unfit()) }
    }

    /// The proof that an entry is in the log, checked against the root.
    ///
    /// # Errors
    /// There is no such entry, or the tiles do not give the root.
    pub fn inclusion(&self, index: u64, entry: &[u8]) -> Result<Vec<Hash>, LogError> {
        let (size, root) = (self.checkpoint.size, &self.checkpoint.root);
        if index >= size {
            let why = phrase!("evidence-log-no-such-entry", size = size, entry = index);
            return Err(LogError::File { path: self.folder.clone(), why });
        }
        let proof = inclusion_proof(index, size, &|level, index| self.node(level, index))?;
        if is_included(index, size, &leaf_hash(entry), &proof, root) { Ok(proof) } else { Err(self.unfit()) }
    }

    /// Whether an earlier checkpoint of the log is the start of it.
    ///
    /// # Errors
    /// It is not: the log was rewritten or truncated; or it is of another log.
    pub fn check_earlier(&self, earlier: &Checkpoint, named: &Path) -> Result<(), LogError> {
        let now = &self.checkpoint;
        let file = named.display().to_string();
        let rewritten = |why: Phrase| Err(LogError::Rewritten { path: self.folder.clone(), why });
        if earlier.origin != now.origin {
            return rewritten(phrase!("evidence-log-other", log = &now.origin, file = file, other = &earlier.origin));
        }
        if earlier.size > now.size {
            return rewritten(phrase!("evidence-log-truncated", size = now.size, file = file, earlier = earlier.size));
        }
        let proof = consistency_proof(earlier.size, now.size, &|level, index| self.node(level, index))?;
        if is_consistent((earlier.size, &earlier.root), (now.size, &now.root), &proof) {
            return Ok(());
        }
        // Which of the two it is: tiles that do not belong to the checkpoint are another matter.
        self.check_root()?;
        if earlier.size == now.size {
            return rewritten(phrase!("evidence-log-forked", file = file, size = now.size));
        }
        rewritten(phrase!("evidence-log-rewritten", size = earlier.size, file = file))
    }

    /// Reads every entry, holding each against the tiles and all tiles against the root.
    ///
    /// # Errors
    /// The first file that is missing or does not fit.
    pub fn each_entry(&self, mut take: impl FnMut(u64, Vec<u8>)) -> Result<(), LogError> {
        let size = self.checkpoint.size;
        for index in 0..size.div_ceil(WIDTH) {
            let (tile, bytes) = self.tile(Kind::Entries, index)?;
            let wrong = |why: Phrase| LogError::File { path: self.folder.join(tile.path()), why };
            // Longer only where a full bundle stands for the partial one.
            let partial = self.folder.join(tile.path()).is_file();
            let entries = unbundle(&bytes, tile.width, partial)
                .ok_or_else(|| wrong(phrase!("evidence-tile-entries", count = tile.width)))?;
            let hashes = self.hashes(0, index)?;
            for (n, (entry, hash)) in entries.into_iter().zip(hashes.iter()).enumerate() {
                let number = index * WIDTH + n as u64;
                if leaf_hash(&entry) != *hash {
                    return Err(wrong(phrase!("evidence-tile-entry", entry = number)));
                }
                take(number, entry);
            }
        }
        self.check_levels()?;
        self.check_root()
    }

    /// Whether each hash of an upper tile is that of the tile below.
    fn check_levels(&self) -> Result<(), LogError> {
        let (mut level, mut full) = (1, self.checkpoint.size / WIDTH);
        while full > 0 {
            for index in 0..full {
                if self.hashes(level, index / WIDTH)?[(index % WIDTH) as usize]
                    != subtree(&self.hashes(level - 1, index)?)
                {
                    let why = phrase!("evidence-tiles-level", level = level);
                    return Err(LogError::Rewritten { path: self.folder.clone(), why });
                }
            }
            level += 1;
            full /= WIDTH;
        }
        Ok(())
    }
}
