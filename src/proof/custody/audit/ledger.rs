//! What an audit has done so far, on the disk: a file for each result and a
//! line for each job. Both are only ever added to while it runs; a line is
//! written after its result is safe, so that whatever is cut off is done again.

use std::fs::{self, File};
use std::io::{self, BufWriter, Write};
use std::path::{Path, PathBuf};

use rayon::prelude::*;

use super::failed::{LedgerError, failed};
use super::judged::{Judged, Outcome};
use super::lines::{LineFile, Lines, text_of};
use crate::record::JobRecord;
use crate::words::{Language, phrase};

/// The folder that an audit writes to.
#[derive(Debug)]
pub struct Ledger {
    folder: PathBuf,
    lines: LineFile,
    /// Lines from before a recomputation that is under way.
    earlier: Option<LineFile>,
    /// Held as long as the audit runs.
    _lock: File,
}

const LINES: &str = "audit.jsonl";
const RESULTS: &str = "results";
/// Where the earlier lines and results lie while they are recomputed, and afterwards.
const RECOMPUTING: &str = "recomputing";
const EARLIER: &str = "earlier";

impl Ledger {
    /// Opens an audit's folder with what was done in it before. Where
    /// all is to be recomputed, what was there is set aside first; a
    /// recomputation that was cut off goes on.
    ///
    /// # Errors
    /// The folder cannot be written, or another audit uses it.
    pub fn open(folder: &Path, recompute: bool) -> Result<Self, LedgerError> {
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
        let earlier = recomputing.join(LINES);
        let earlier = earlier.is_file().then(|| LineFile::open(&earlier)).transpose()?;
        let lines = LineFile::open(&folder.join(LINES))?;
        Ok(Ledger { folder: folder.to_path_buf(), lines, earlier, _lock: lock })
    }

    /// Keeps a judgement: the result in a file of its own, then the line that names it;
    /// where that line begins.
    ///
    /// # Errors
    /// The disk does not take it.
    pub(super) fn keep(&self, judged: &Judged) -> Result<u64, LedgerError> {
        let name = result_name(judged);
        let path = self.folder.join(&name);
        let mut json = serde_json::to_vec_pretty(&judged.result).unwrap_or_default();
        json.push(b'\n');
        write_whole(&path, &json)?;
        let line = Judged { result: serde_json::Value::String(name), ..judged.clone() };
        self.lines.add(&line)
    }

    /// Where the line of a job begins that was judged before and has its result, and the line.
    pub(super) fn before(&self, path: &str) -> Option<(u64, Judged)> {
        self.lines.of(path).filter(|(_, line)| self.has(line))
    }

    /// The line that begins at a place.
    ///
    /// # Errors
    /// It cannot be read.
    pub(super) fn line(&self, place: u64) -> Result<Judged, LedgerError> {
        self.lines.at(place)
    }

    /// Whether the result that a line names is there.
    fn has(&self, line: &Judged) -> bool {
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
    pub(super) fn earlier(&self, path: &str) -> Option<(Judged, Outcome)> {
        let (_, line) = self.earlier.as_ref()?.of(path)?;
        // What cannot be read any more cannot be compared.
        let outcome = outcome_in(&self.folder.join(RECOMPUTING), &line).ok()?;
        Some((line, outcome))
    }

    /// Every line of the run before this one.
    pub(super) fn each_before(&self, take: impl FnMut(Judged)) {
        self.earlier.as_ref().unwrap_or(&self.lines).each(take);
    }

    /// The outcome of such a line.
    ///
    /// # Errors
    /// It cannot be read.
    pub(super) fn outcome_before(&self, line: &Judged) -> Result<Outcome, LedgerError> {
        match self.earlier {
            Some(_) => outcome_in(&self.folder.join(RECOMPUTING), line),
            None => self.outcome(line),
        }
    }

    /// Whether an earlier audit is being recomputed.
    pub(super) fn is_recomputing(&self) -> bool {
        self.earlier.as_ref().is_some_and(|earlier| !earlier.is_empty())
    }

    /// Ends an audit: the lines of this run's jobs alone, in the order in which they are given.
    ///
    /// # Errors
    /// The disk does not take it, or a line cannot be had.
    pub(super) fn finish(
        &self,
        lines: impl Iterator<Item = Result<Judged, LedgerError>>,
    ) -> Result<Lines, LedgerError> {
        let path = self.folder.join(LINES);
        let mut file = WholeFile::create(&path)?;
        let mut count = 0;
        for line in lines {
            file.write_all(text_of(&line?).as_bytes()).map_err(failed("write", &path))?;
            count += 1;
        }
        file.finish()?;
        let (recomputing, earlier) = (self.folder.join(RECOMPUTING), self.folder.join(EARLIER));
        if recomputing.is_dir() {
            if earlier.is_dir() {
                fs::remove_dir_all(&earlier).map_err(failed("remove", &earlier))?;
            }
            fs::rename(&recomputing, &earlier).map_err(failed("write", &earlier))?;
        }
        Ok(Lines::new(path, count))
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
        return JobRecord::from_json(&bytes).map(|record| Ok(Box::new(record))).map_err(unread);
    }
    let error: serde_json::Value = serde_json::from_slice(&bytes).map_err(unread)?;
    let told = error["message"].as_str().map(str::to_owned);
    Ok(Err(told.unwrap_or_else(|| phrase!("evidence-ledger-no-message").say(Language::English))))
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

/// Reads every line's outcome again, many at once and in their order; no more
/// than those stay in memory.
///
/// # Errors
/// A line or a result cannot be read.
pub fn each_outcome(
    ledger: &Ledger,
    lines: impl Iterator<Item = Result<Judged, LedgerError>>,
    mut take: impl FnMut(usize, &Judged, Outcome),
) -> Result<(), LedgerError> {
    in_packs(lines, |line| Ok((ledger.outcome(&line)?, line)), |n, (outcome, line)| take(n, &line, outcome))
}

/// Works on many at once, hands on what became of them in their order.
pub(super) fn in_packs<T: Send, U: Send>(
    items: impl Iterator<Item = Result<T, LedgerError>>,
    work: impl Fn(T) -> Result<U, LedgerError> + Sync,
    mut take: impl FnMut(usize, U),
) -> Result<(), LedgerError> {
    let many = 8 * rayon::current_num_threads();
    let mut items = items.peekable();
    let mut n = 0;
    while items.peek().is_some() {
        let some: Vec<T> = items.by_ref().take(many).collect::<Result<_, _>>()?;
        let done: Vec<Result<U, LedgerError>> = some.into_par_iter().map(&work).collect();
        for one in done {
            take(n, one?);
            n += 1;
        }
    }
    Ok(())
}
