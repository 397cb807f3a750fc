//! Writing a log: one writer at a time, and nothing is acknowledged before it
//! is on the disk.
//!
//! The folder can be published as it is. What must not be lies beside it, in
//! `NAME.private`: the key, the secret that salts repair orders, the lock, and the
//! newest checkpoint that was ever signed. An append writes entries and hashes,
//! then that checkpoint, then the public one. Cut off before the second step
//! nothing was signed: what is left over is taken away. Cut off after it, the next
//! one publishes what was signed. A folder that has gone back behind what was
//! signed (a restored copy) is refused: going on would fork the log.

use std::fs::{self, File, OpenOptions};
use std::io::Write;
use std::path::{Path, PathBuf};

use ssh_key::private::{Ed25519Keypair, KeypairData};
use ssh_key::{LineEnding, PrivateKey};

use super::attempt::{Attempt, OrderSalt};
use super::checkpoint::Checkpoint;
use super::note::{KeyKind, NoteSignature, NoteSigner, SignedNote, VerifierKey, Vouched, check_name};
use super::proof_file::AttemptProof;
use super::read::{CHECKPOINT, LogError, LogFolder, io_error, read_checkpoint};
use super::tile::{Kind, Tile, WIDTH, bundle, subtree, unbundle};
use super::tree::{Hash, empty_root, leaf_hash, range_hash};
use crate::folder::write_durably;
use crate::words::{Phrase, phrase};

/// The published key to check the log with.
pub const VERIFIER_KEY: &str = "verifier-key";
const KEY: &str = "key";
const SALT: &str = "order-salt";
const NEWEST: &str = "newest";
const LOCK: &str = "lock";

/// A log that this machine writes.
pub struct Log {
    folder: PathBuf,
    private: PathBuf,
    origin: String,
    signer: NoteSigner,
    salt: OrderSalt,
}

impl std::fmt::Debug for Log {
    /// Without key and secret.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Log").field("folder", &self.folder).field("origin", &self.origin).finish_non_exhaustive()
    }
}

/// What an append did.
#[derive(Debug)]
pub struct Appended {
    /// The number of the first new entry.
    pub first: u64,
    entries: Vec<Vec<u8>>,
    grown: LogFolder,
    /// What was put right first, after an append that was cut off.
    pub repaired: Vec<Phrase>,
}

impl Appended {
    /// Proofs of the new entries, in their order.
    ///
    /// # Errors
    /// The log was altered meanwhile.
    pub fn proofs(&self) -> Result<Vec<AttemptProof>, LogError> {
        let numbered = self.entries.iter().zip(self.first..);
        let proofs = numbered.map(|(entry, index)| {
            let proof = self.grown.inclusion(index, entry)?;
            Ok(AttemptProof { entry: entry.clone(), index, proof, note: self.grown.note.clone() })
        });
        proofs.collect()
    }
}

/// Where what is not published lies.
pub fn private_folder(folder: &Path) -> PathBuf {
    let mut name = folder.file_name().unwrap_or_default().to_owned();
    name.push(".private");
    folder.with_file_name(name)
}

/// The secret that salts repair orders, from a log's private folder.
///
/// # Errors
/// It cannot be read.
pub fn read_order_salt(path: &Path) -> Result<OrderSalt, LogError> {
    let text = fs::read_to_string(path).map_err(io_error("read", path))?;
    let digits = text.trim().as_bytes();
    let bytes: Option<Vec<u8>> =
        digits.chunks(2).map(|two| u8::from_str_radix(std::str::from_utf8(two).ok()?, 16).ok()).collect();
    let salt = bytes.filter(|_| digits.len() == 64).and_then(|b| OrderSalt::try_from(b).ok());
    salt.ok_or_else(|| LogError::File {
        path: path.to_path_buf(),
        why: phrase!("evidence-log-key-file", problem = "salt"),
    })
}

/// Where a log's secret for repair orders lies, where this is the machine that writes it.
pub fn order_salt_file(folder: &Path) -> PathBuf {
    private_folder(folder).join(SALT)
}

fn random() -> Result<[u8; 32], LogError> {
    let mut bytes = [0; 32];
    let failed = |e: getrandom::Error| LogError::Io {
        doing: "random",
        path: PathBuf::new(),
        source: std::io::Error::other(e.to_string()),
    };
    getrandom::fill(&mut bytes).map_err(failed)?;
    Ok(bytes)
}

/// A new file that only its owner may read.
fn write_secret(path: &Path, bytes: &[u8]) -> Result<(), LogError> {
    let mut options = OpenOptions::new();
    options.write(true).create_new(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    let mut file = options.open(path).map_err(io_error("write", path))?;
    file.write_all(bytes).and_then(|()| file.sync_all()).map_err(io_error("write", path))
}

impl Log {
    /// Makes an empty log with a key of its own.
    ///
    /// # Errors
    /// There is one already, or the disk does not take it.
    pub fn create(folder: &Path, origin: &str) -> Result<Self, LogError> {
        let private = private_folder(folder);
        let file = |path: &Path, why: Phrase| LogError::File { path: path.to_path_buf(), why };
        check_name(origin).map_err(|why| file(folder, phrase!("evidence-log-not-made", why = why)))?;
        let signed_before = private.join(NEWEST).exists();
        if signed_before || folder.join(CHECKPOINT).exists() {
            return Err(file(if signed_before { &private } else { folder }, phrase!("evidence-log-exists")));
        }
        for path in [folder, &private] {
            fs::create_dir_all(path).map_err(io_error("make", path))?;
            let above = path.parent().unwrap_or(Path::new("."));
            crate::folder::sync_folder(above).map_err(io_error("write", above))?;
        }
        // Of a log whose making was cut off: nothing was signed with that key.
        for left in [KEY, SALT] {
            let _ = fs::remove_file(private.join(left));
        }
        #[cfg(unix)]
        fs::set_permissions(&private, std::os::unix::fs::PermissionsExt::from_mode(0o700))
            .map_err(io_error("protect", &private))?;
        let seed = random()?;
        let pair = KeypairData::Ed25519(Ed25519Keypair::from_seed(&seed));
        let no_key = |e: ssh_key::Error| file(&private, phrase!("evidence-log-no-key", why = e.to_string()));
        let key = PrivateKey::new(pair, origin).and_then(|key| key.to_openssh(LineEnding::LF)).map_err(no_key)?;
        write_secret(&private.join(KEY), key.as_bytes())?;
        write_secret(&private.join(SALT), format!("{}\n", crate::input::hex(&random()?)).as_bytes())?;
        let signer = NoteSigner::new(origin, &seed);
        let published = folder.join(VERIFIER_KEY);
        write_durably(&published, format!("{}\n", signer.verifier(KeyKind::Log).text()).as_bytes())
            .map_err(io_error("write", &published))?;
        let checkpoint = Checkpoint { origin: origin.to_owned(), size: 0, root: empty_root() };
        let text = signed(&signer, &checkpoint).to_text();
        for path in [private.join(NEWEST), folder.join(CHECKPOINT)] {
            write_durably(&path, text.as_bytes()).map_err(io_error("write", &path))?;
        }
        Log::open(folder)
    }

    /// Opens a log that this machine writes.
    ///
    /// # Errors
    /// There is none, or its key is not here.
    pub fn open(folder: &Path) -> Result<Self, LogError> {
        let private = private_folder(folder);
        let (origin, newest) = (LogFolder::open(folder)?.checkpoint.origin, private.join(NEWEST));
        let path = private.join(KEY);
        let text = fs::read_to_string(&path).map_err(io_error("key", &path))?;
        let key_file = |problem: &str| phrase!("evidence-log-key-file", problem = problem);
        let no_key = |problem: &str| LogError::File { path: path.clone(), why: key_file(problem) };
        let key = PrivateKey::from_openssh(&text).map_err(|_| no_key("no-key"))?;
        let pair = key.key_data().ed25519().ok_or_else(|| no_key("kind"))?;
        let signer = NoteSigner::new(&origin, &pair.private.to_bytes());
        let (signed, note) = read_checkpoint(&newest)?;
        if signed.origin != origin || note.vouched_by(&signer.verifier(KeyKind::Log)) != Vouched::Yes(None) {
            return Err(LogError::File { path: newest, why: key_file("other-key") });
        }
        let salt = read_order_salt(&private.join(SALT))?;
        Ok(Log { folder: folder.to_path_buf(), private, origin, signer, salt })
    }

    /// The key to check the log with.
    pub fn verifier(&self) -> VerifierKey {
        self.signer.verifier(KeyKind::Log)
    }

    /// The log's name.
    pub fn origin(&self) -> &str {
        &self.origin
    }

    /// Where it lies.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// What salts repair orders.
    pub fn order_salt(&self) -> &OrderSalt {
        &self.salt
    }

    fn lock(&self) -> Result<File, LogError> {
        let path = self.private.join(LOCK);
        let file = OpenOptions::new().create(true).append(true).open(&path).map_err(io_error("lock", &path))?;
        file.lock().map_err(io_error("lock", &path))?;
        Ok(file)
    }

    /// Adds attempts. When it returns, they are signed for, on the disk and published.
    ///
    /// # Errors
    /// The disk does not take them (then none of them is in the log), or the log is not the one that was signed.
    pub fn append(&self, attempts: &[Attempt]) -> Result<Appended, LogError> {
        let long = |why| LogError::File { path: self.folder.clone(), why: phrase!("evidence-log-refuses", why = why) };
        let entries: Vec<Vec<u8>> = attempts.iter().map(Attempt::bytes).collect::<Result<_, _>>().map_err(long)?;
        let lock = self.lock()?;
        let (now, repaired) = self.settle()?;
        let checkpoint = if entries.is_empty() { now.checkpoint } else { self.add(&now, &entries)? };
        let first = checkpoint.size - entries.len() as u64;
        let note = signed(&self.signer, &checkpoint);
        let grown = LogFolder::at(&self.folder, checkpoint, note);
        drop(lock);
        Ok(Appended { first, entries, grown, repaired })
    }

    /// The log as it was signed last, after whatever was cut off is put right.
    fn settle(&self) -> Result<(LogFolder, Vec<Phrase>), LogError> {
        let (signed, note) = read_checkpoint(&self.private.join(NEWEST))?;
        let public = LogFolder::open(&self.folder)?.checkpoint;
        let now = LogFolder::at(&self.folder, signed, note);
        let newest = self.private.join(NEWEST).display().to_string();
        let held = now.check_root().and_then(|()| now.check_earlier(&public, &self.folder.join(CHECKPOINT)));
        held.map_err(|e| {
            let why = phrase!("evidence-log-went-back", file = newest, why = e.phrase());
            LogError::Rewritten { path: self.folder.clone(), why }
        })?;
        let mut repaired = self.remove_leftovers(now.checkpoint.size)?;
        if public.size < now.checkpoint.size {
            self.publish(&now.note)?;
            repaired.push(phrase!("evidence-log-published", size = now.checkpoint.size));
        }
        Ok((now, repaired))
    }

    /// Takes away what an append wrote that was cut off before anything was signed.
    fn remove_leftovers(&self, size: u64) -> Result<Vec<Phrase>, LogError> {
        let mut removed = 0_usize;
        let mut remove = |path: &Path| match fs::remove_file(path) {
            Ok(()) => {
                removed += 1;
                Ok(())
            }
            Err(e) if e.kind() == std::io::ErrorKind::NotFound => Ok(()),
            Err(e) => Err(io_error("remove", path)(e)),
        };
        // An append adds at the right edge alone: to the last tile, or to the one after it.
        let mut edge = Tile::last_of(size);
        let next = |tile: &Tile| Tile { index: tile.index + 1, width: 0, ..*tile };
        edge.extend(edge.iter().map(next).collect::<Vec<_>>());
        if size == 0 {
            edge = [Kind::Entries, Kind::Hashes(0)].map(|kind| Tile { kind, index: 0, width: 0 }).into();
        }
        for tile in edge {
            let full = self.folder.join(tile.full_path());
            if tile.width < WIDTH {
                remove(&full)?;
            }
            let mut partials = full.as_os_str().to_owned();
            partials.push(".p");
            for entry in fs::read_dir(&partials).into_iter().flatten().flatten() {
                let name = entry.file_name().to_string_lossy().into_owned();
                if name.starts_with('.') || name.parse::<u64>().is_ok_and(|width| width > tile.width) {
                    remove(&entry.path())?;
                }
            }
        }
        let words = phrase!("evidence-log-removed", count = removed);
        Ok(if removed > 0 { vec![words] } else { Vec::new() })
    }

    /// Writes entries and hashes, signs, publishes.
    fn add(&self, now: &LogFolder, entries: &[Vec<u8>]) -> Result<Checkpoint, LogError> {
        let old = now.checkpoint.size;
        let size = old + entries.len() as u64;
        let mut first = old / WIDTH * WIDTH;
        let mut kept = self.kept(Kind::Entries, old)?;
        kept.extend(entries.iter().cloned());
        for some in kept.chunks(WIDTH as usize) {
            self.write(Tile { kind: Kind::Entries, index: first / WIDTH, width: some.len() as u64 }, &bundle(some))?;
            first += WIDTH;
        }
        // What is new at each level: leaves, then a hash for each tile that became full below.
        let mut new: Vec<Hash> = entries.iter().map(|e| leaf_hash(e)).collect();
        let (mut level, mut before) = (0, old);
        while !new.is_empty() {
            let last = self.kept(Kind::Hashes(level), old)?;
            let mut hashes: Vec<Hash> = last.iter().filter_map(|h| Hash::try_from(h.as_slice()).ok()).collect();
            hashes.append(&mut new);
            for (some, index) in hashes.chunks(WIDTH as usize).zip(before / WIDTH..) {
                self.write(Tile { kind: Kind::Hashes(level), index, width: some.len() as u64 }, some.as_flattened())?;
                if some.len() as u64 == WIDTH {
                    new.push(subtree(some));
                }
            }
            level += 1;
            before /= WIDTH;
        }
        let grown = Checkpoint { size, ..now.checkpoint.clone() };
        let grown = LogFolder::at(&self.folder, grown, now.note.clone());
        let root = range_hash(0, size, &|level, index| grown.node(level, index))?;
        let checkpoint = Checkpoint { origin: self.origin.clone(), size, root };
        let note = signed(&self.signer, &checkpoint);
        let newest = self.private.join(NEWEST);
        write_durably(&newest, note.to_text().as_bytes()).map_err(io_error("write", &newest))?;
        self.publish(&note)?;
        self.prune(old, size);
        Ok(checkpoint)
    }

    /// What the last tile of a kind holds, where it is not full: entries, or hashes.
    fn kept(&self, kind: Kind, size: u64) -> Result<Vec<Vec<u8>>, LogError> {
        let Some(tile) = Tile::last_of(size).into_iter().find(|t| t.kind == kind && t.width < WIDTH) else {
            return Ok(Vec::new());
        };
        let path = self.folder.join(tile.path());
        let bytes = fs::read(&path).map_err(io_error("read", &path))?;
        let held = match kind {
            Kind::Entries => unbundle(&bytes, tile.width, true),
            Kind::Hashes(_) => Some(bytes.chunks(32).map(<[u8]>::to_vec).collect()),
        };
        held.filter(|h: &Vec<Vec<u8>>| h.len() as u64 == tile.width)
            .ok_or_else(|| LogError::File { path, why: phrase!("evidence-tile", problem = "altered") })
    }

    fn write(&self, tile: Tile, bytes: &[u8]) -> Result<(), LogError> {
        let path = self.folder.join(tile.path());
        if let Some(parent) = path.parent()
            && !parent.is_dir()
        {
            fs::create_dir_all(parent).map_err(io_error("make", parent))?;
            // Names of new folders have to reach the disk as well, up to the log's own.
            for above in parent.ancestors().skip(1).take_while(|p| p.starts_with(&self.folder)) {
                crate::folder::sync_folder(above).map_err(io_error("write", above))?;
            }
        }
        write_durably(&path, bytes).map_err(io_error("write", &path))
    }

    fn publish(&self, note: &SignedNote) -> Result<(), LogError> {
        let path = self.folder.join(CHECKPOINT);
        write_durably(&path, note.to_text().as_bytes()).map_err(io_error("write", &path))
    }

    /// Partial tiles whose full one is there are of no use any more. What can't be removed does no harm.
    fn prune(&self, old: u64, size: u64) {
        for tile in Tile::last_of(old).into_iter().filter(|t| t.width < WIDTH) {
            if Tile::of(tile.kind, tile.index, size).is_some_and(|t| t.width == WIDTH) {
                let mut partials = self.folder.join(tile.full_path()).into_os_string();
                partials.push(".p");
                let _ = fs::remove_dir_all(partials);
            }
        }
    }

    /// Puts cosignatures under the public checkpoint, where it is still the one that was cosigned.
    ///
    /// # Errors
    /// The disk does not take it.
    pub fn add_cosignatures(&self, cosigned: &SignedNote, new: &NoteSignature) -> Result<(), LogError> {
        let lock = self.lock()?;
        let mut note = LogFolder::open(&self.folder)?.note;
        if note.text == cosigned.text {
            note.add([new.clone()]);
            self.publish(&note)?;
        }
        drop(lock);
        Ok(())
    }
}

fn signed(signer: &NoteSigner, checkpoint: &Checkpoint) -> SignedNote {
    let text = checkpoint.text();
    SignedNote { signatures: vec![signer.sign(&text)], text }
}
