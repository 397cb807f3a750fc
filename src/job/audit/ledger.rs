//! What an audit has done so far, on the disk: a file for each result and a
//! line for each job. Both are only ever added to while it runs; a line is
//! written after its result is safe, so that whatever is cut off is done again.

use std::collections::BTreeMap;
use std::fs::{self, File, OpenOptions};
use std::io::{self, BufRead, BufReader, Write};
use std::path::{Path, PathBuf};
use std::sync::Mutex;

use super::judge::Judged;

/// The folder that an audit writes to.
#[derive(Debug)]
pub struct Ledger {
    folder: PathBuf,
    lines: Mutex<File>,
    /// Held as long as the audit runs.
    _lock: File,
}

/// Why an audit cannot write.
#[derive(Debug, thiserror::Error)]
pub enum LedgerError {
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
    /// Another audit writes there.
    #[error("another audit is writing to {0}: wait for it, or name another folder")]
    Busy(PathBuf),
}

const LINES: &str = "audit.jsonl";
const RESULTS: &str = "results";

impl Ledger {
    /// Opens an audit's folder, and what was done in it before, by path.
    ///
    /// # Errors
    /// The folder cannot be written, or another audit uses it.
    pub fn open(folder: &Path) -> Result<(Self, BTreeMap<String, Judged>), LedgerError> {
        let results = folder.join(RESULTS);
        fs::create_dir_all(&results).map_err(failed("make the folder", &results))?;
        let lock_path = folder.join("audit.lock");
        let lock = File::create(&lock_path).map_err(failed("write", &lock_path))?;
        lock.try_lock().map_err(|_| LedgerError::Busy(folder.to_path_buf()))?;
        let done = read(&folder.join(LINES))?;
        // A line that was cut off ends here: the file starts again with the whole ones.
        let path = folder.join(LINES);
        write_lines(&path, done.values())?;
        let lines = OpenOptions::new().append(true).open(&path).map_err(failed("write", &path))?;
        Ok((Ledger { folder: folder.to_path_buf(), lines: Mutex::new(lines), _lock: lock }, done))
    }

    /// Keeps a judgement: the result in a file of its own, then the line that names it.
    ///
    /// # Errors
    /// The disk does not take it.
    pub fn keep(&self, judged: &Judged) -> Result<Judged, LedgerError> {
        let name = result_name(judged);
        let path = self.folder.join(&name);
        let mut json = serde_json::to_vec_pretty(&judged.result).unwrap_or_default();
        json.push(b'\n');
        write_whole(&path, &json)?;
        let line = Judged { result: serde_json::Value::String(name), ..judged.clone() };
        let mut text = serde_json::to_string(&line).unwrap_or_default();
        text.push('\n');
        let path = self.folder.join(LINES);
        let mut lines = self.lines.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
        lines.write_all(text.as_bytes()).and_then(|()| lines.sync_data()).map_err(failed("write", &path))?;
        Ok(line)
    }

    /// Whether the result that a line names is there.
    pub fn has(&self, line: &Judged) -> bool {
        line.result.as_str().is_some_and(|name| self.folder.join(name).is_file())
    }

    /// A kept result.
    ///
    /// # Errors
    /// It cannot be read.
    pub fn result(&self, line: &Judged) -> Result<serde_json::Value, LedgerError> {
        let path = self.folder.join(line.result.as_str().unwrap_or_default());
        let bytes = fs::read(&path).map_err(failed("read", &path))?;
        serde_json::from_slice(&bytes).map_err(|e| failed("read", &path)(e.into()))
    }

    /// Ends an audit: the lines of this run's jobs alone, in the order of their paths.
    ///
    /// # Errors
    /// The disk does not take it.
    pub fn finish(&self, lines: &[Judged]) -> Result<(), LedgerError> {
        write_lines(&self.folder.join(LINES), lines.iter())
    }

    /// Writes another file of the audit, whole or not at all.
    ///
    /// # Errors
    /// The disk does not take it.
    pub fn write(&self, name: &str, bytes: &[u8]) -> Result<(), LedgerError> {
        write_whole(&self.folder.join(name), bytes)
    }
}

/// `results/SLUG-DIGEST.json`: the end of the path in plain characters, and
/// enough of the digest (of the whole path too) to tell all apart.
fn result_name(judged: &Judged) -> String {
    use sha2::{Digest, Sha256};
    let plain: String =
        judged.path.chars().map(|c| if c.is_ascii_alphanumeric() || c == '-' { c } else { '_' }).collect();
    let slug = &plain[plain.len().saturating_sub(60)..];
    let digest = crate::input::hex(&Sha256::digest(format!("{}\n{}", judged.path, judged.digest)));
    format!("{RESULTS}/{}-{}.json", slug.trim_matches('_'), &digest[..16])
}

fn read(path: &Path) -> Result<BTreeMap<String, Judged>, LedgerError> {
    let mut done = BTreeMap::new();
    let file = match File::open(path) {
        Ok(file) => file,
        Err(e) if e.kind() == io::ErrorKind::NotFound => return Ok(done),
        Err(e) => return Err(failed("read", path)(e)),
    };
    for line in BufReader::new(file).split(b'\n') {
        let line = line.map_err(failed("read", path))?;
        // What a kill cut off is no line.
        if let Ok(judged) = serde_json::from_slice::<Judged>(&line) {
            done.insert(judged.path.clone(), judged);
        }
    }
    Ok(done)
}

fn write_lines<'a>(path: &Path, lines: impl Iterator<Item = &'a Judged>) -> Result<(), LedgerError> {
    let mut text = String::new();
    for line in lines {
        text.push_str(&serde_json::to_string(line).unwrap_or_default());
        text.push('\n');
    }
    write_whole(path, text.as_bytes())
}

/// Beside it first, on the disk, then renamed.
fn write_whole(path: &Path, bytes: &[u8]) -> Result<(), LedgerError> {
    let mut beside = path.as_os_str().to_owned();
    beside.push(".part");
    let beside = PathBuf::from(beside);
    let write = || {
        let mut file = File::create(&beside)?;
        file.write_all(bytes)?;
        file.sync_data()?;
        fs::rename(&beside, path)
    };
    write().map_err(failed("write", path))
}

fn failed(doing: &'static str, path: &Path) -> impl FnOnce(io::Error) -> LedgerError {
    let path = path.to_path_buf();
    move |source| LedgerError::Io { doing, path, source }
}
