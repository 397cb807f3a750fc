//! What an audit has done so far, on the disk: a file for each result and a
//! line for each job. Both are only ever added to while it runs; a line is
//! written after its result is safe, so that whatever is cut off is done again.

use std::collections::BTreeMap;
use std::fs::{self, File, OpenOptions};
use std::io::{self, BufRead, BufReader, BufWriter, Write};
use std::path::{Path, PathBuf};
use std::sync::Mutex;

use rayon::prelude::*;

use super::judged::{Judged, Outcome};
use crate::evidence::cannot;
use crate::words::{Language, Phrase, phrase};

/// The folder that an audit writes to.
#[derive(Debug)]
pub struct Ledger {
    folder: PathBuf,
    lines: Mutex<File>,
    /// Lines from before a recomputation that is under way, by path.
    earlier: BTreeMap<String, Judged>,
    /// Held as long as the audit runs.
    _lock: File,
}

/// Why an audit cannot write.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum LedgerError {
    /// Reading or writing failed.
    Io {
        /// `read`, `write`, ...
        doing: &'static str,
        /// Which file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// Another audit writes there.
    Busy(PathBuf),
}

impl LedgerError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            LedgerError::Io { doing, path, source } => cannot(doing, path, source),
            LedgerError::Busy(folder) => phrase!("evidence-ledger-busy", folder = folder.display().to_string()),
        }
    }
}

const LINES: &str = "audit.jsonl";
const RESULTS: &str = "results";
/// Where the earlier lines and results lie while they are recomputed, and afterwards.
const RECOMPUTING: &str = "recomputing";
const EARLIER: &str = "earlier";

impl Ledger {
    /// Opens an audit's folder, and what was done in it before, by path. Where
    /// all is to be recomputed, what was there is set aside first; a
    /// recomputation that was cut off goes on.
    ///
    /// # Errors
    /// The folder cannot be written, or another audit uses it.
    pub fn open(folder: &Path, recompute: bool) -> Result<(Self, BTreeMap<String, Judged>), LedgerError> {
        let results = folder.join(RESULTS);
        fs::create_dir_all(&results).map_err(failed("make", &results))?;
        let lock_path = folder.join("audit.lock");
        let lock = File::create(&lock_path).map_err(failed("write", &lock_path))?;
        lock.try_lock().map_err(|_| LedgerError::Busy(folder.to_path_buf()))?;
        let recomputing = folder.join(RECOMPUTING);
        let cut_off = folder.join(format!("{RECOMPUTING}.part")).is_dir();
        if (recompute && folder.join(LINES).is_file() || cut_off) && !recomputing.is_dir() {
            set_aside(folder)?;
            fs::create_dir_all(&results).map_err(failed("make", &results))?;
        }
        let earlier = read(&recomputing.join(LINES))?;
        let done = read(&folder.join(LINES))?;
        // A line that was cut off ends here: the file starts again with the whole ones.
        let path = folder.join(LINES);
        write_lines(&path, done.values())?;
        let lines = OpenOptions::new().append(true).open(&path).map_err(failed("write", &path))?;
        Ok((Ledger { folder: folder.to_path_buf(), lines: Mutex::new(lines), earlier, _lock: lock }, done))
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

    /// The record that a line names, or why there is none.
    ///
    /// # Errors
    /// It cannot be read.
    pub fn outcome(&self, line: &Judged) -> Result<Outcome, LedgerError> {
        outcome_in(&self.folder, line)
    }

    /// The line and the outcome of a folder before this recomputation, where there were any.
    pub(super) fn earlier(&self, path: &str) -> Option<(&Judged, Outcome)> {
        let line = self.earlier.get(path)?;
        // What cannot be read any more cannot be compared.
        outcome_in(&self.folder.join(RECOMPUTING), line).ok().map(|outcome| (line, outcome))
    }

    /// Whether an earlier audit is being recomputed.
    pub(super) fn is_recomputing(&self) -> bool {
        !self.earlier.is_empty()
    }

    /// Ends an audit: the lines of this run's jobs alone, in the order of their paths.
    ///
    /// # Errors
    /// The disk does not take it.
    pub fn finish(&self, lines: &[Judged]) -> Result<(), LedgerError> {
        write_lines(&self.folder.join(LINES), lines.iter())?;
        let (recomputing, earlier) = (self.folder.join(RECOMPUTING), self.folder.join(EARLIER));
        if recomputing.is_dir() {
            if earlier.is_dir() {
                fs::remove_dir_all(&earlier).map_err(failed("remove", &earlier))?;
            }
            fs::rename(&recomputing, &earlier).map_err(failed("write", &earlier))?;
        }
        Ok(())
    }

    /// Begins another file of the audit, which appears whole or not at all.
    ///
    /// # Errors
    /// The disk does not take it.
    pub fn create(&self, name: &str) -> Result<WholeFile, LedgerError> {
        WholeFile::create(&self.folder.join(name))
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

/// Moves lines and results into a folder of their own. Cut off anywhere, it is
/// taken up again: the folder gets its name when both are in it.
fn set_aside(folder: &Path) -> Result<(), LedgerError> {
    let aside = folder.join(format!("{RECOMPUTING}.part"));
    fs::create_dir_all(&aside).map_err(failed("make", &aside))?;
    for name in [RESULTS, LINES] {
        let (from, to) = (folder.join(name), aside.join(name));
        if from.exists() && !to.exists() {
            fs::rename(&from, &to).map_err(failed("move", &from))?;
        }
    }
    let named = folder.join(RECOMPUTING);
    fs::rename(&aside, &named).map_err(failed("write", &named))
}

fn outcome_in(folder: &Path, line: &Judged) -> Result<Outcome, LedgerError> {
    let path = folder.join(line.result.as_str().unwrap_or_default());
    let bytes = fs::read(&path).map_err(failed("read", &path))?;
    let unread = |e: serde_json::Error| failed("read", &path)(e.into());
    if line.verdict.is_some() {
        return serde_json::from_slice(&bytes).map(|record| Ok(Box::new(record))).map_err(unread);
    }
    let error: serde_json::Value = serde_json::from_slice(&bytes).map_err(unread)?;
    let told = error["message"].as_str().map(str::to_owned);
    Ok(Err(told.unwrap_or_else(|| phrase!("evidence-ledger-no-message").say(Language::English))))
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
    let mut file = WholeFile::create(path)?;
    for line in lines {
        let text = serde_json::to_string(line).unwrap_or_default();
        writeln!(file, "{text}").map_err(failed("write", path))?;
    }
    file.finish()
}

/// A file that is written beside its place first, and gets its name when it is on the disk.
#[derive(Debug)]
pub struct WholeFile {
    file: BufWriter<File>,
    beside: PathBuf,
    path: PathBuf,
}

impl WholeFile {
    fn create(path: &Path) -> Result<Self, LedgerError> {
        let mut beside = path.as_os_str().to_owned();
        beside.push(".part");
        let beside = PathBuf::from(beside);
        let file = BufWriter::new(File::create(&beside).map_err(failed("write", path))?);
        Ok(WholeFile { file, beside, path: path.to_path_buf() })
    }

    /// Puts the file in its place.
    ///
    /// # Errors
    /// The disk does not take it.
    pub fn finish(self) -> Result<(), LedgerError> {
        let WholeFile { file, beside, path } = self;
        let write = || {
            file.into_inner().map_err(io::IntoInnerError::into_error)?.sync_data()?;
            fs::rename(&beside, &path)
        };
        write().map_err(failed("write", &path))
    }
}

impl Write for WholeFile {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        self.file.write(bytes)
    }

    fn flush(&mut self) -> io::Result<()> {
        self.file.flush()
    }
}

fn write_whole(path: &Path, bytes: &[u8]) -> Result<(), LedgerError> {
    let mut file = WholeFile::create(path)?;
    file.write_all(bytes).map_err(failed("write", path))?;
    file.finish()
}

fn failed(doing: &'static str, path: &Path) -> impl FnOnce(io::Error) -> LedgerError {
    let path = path.to_path_buf();
    move |source| LedgerError::Io { doing, path, source }
}

/// Reads every line's outcome again, many at once and in their order; no more
/// than those stay in memory.
///
/// # Errors
/// A result cannot be read.
pub fn each_outcome(
    ledger: &Ledger,
    lines: &[Judged],
    mut take: impl FnMut(usize, &Judged, Outcome),
) -> Result<(), LedgerError> {
    let many = 8 * rayon::current_num_threads();
    for (pack, some) in lines.chunks(many).enumerate() {
        let read: Vec<Result<Outcome, LedgerError>> = some.par_iter().map(|line| ledger.outcome(line)).collect();
        for (n, (line, outcome)) in some.iter().zip(read).enumerate() {
            take(pack * many + n, line, outcome?);
        }
    }
    Ok(())
}
