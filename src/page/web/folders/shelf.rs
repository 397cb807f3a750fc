//! The job folders on the disk, by name. Kept in memory; a folder is read again
//! when its job file changed.

use std::collections::{BTreeMap, HashMap};
use std::fs::{self, Metadata};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant, SystemTime};

use rayon::prelude::*;

use crate::folder::JobFile;
use crate::input::SourceFile;
use crate::record::Verdict;
use crate::words::Value;

/// The folder of evidence folders in the folder of jobs.
const SEALED: &str = "sealed";
/// The result beside the job file.
pub(in crate::web) const RESULT: &str = "result.json";
/// Other programs' changes are seen after this.
const FRESH: Duration = Duration::from_secs(1);

/// The folder of jobs.
pub(in crate::web) struct Shelf {
    root: PathBuf,
    known: Mutex<Known>,
}

#[derive(Default)]
struct Known {
    looked: Option<Instant>,
    /// Shared, so that looking again copies no job.
    entries: Arc<BTreeMap<String, Arc<Entry>>>,
    verdicts: HashMap<String, (Stamp, Option<Verdict>)>,
}

/// What tells that a file is another one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Stamp(Option<SystemTime>, u64);

impl Stamp {
    fn of(metadata: &Metadata) -> Self {
        Stamp(metadata.modified().ok(), metadata.len())
    }
}

/// A job of the list.
#[derive(Debug, Clone)]
pub(in crate::web) struct Entry {
    /// The folder's name.
    pub(in crate::web) name: String,
    /// The job file; else why it can't be read.
    pub(in crate::web) job: Result<JobFile, Value>,
    /// When the job file was last written.
    pub(in crate::web) changed: SystemTime,
    /// Whether it is sealed.
    pub(in crate::web) closed: bool,
    stamp: Stamp,
    /// Everything that is searched, in small letters.
    text: String,
}

impl Shelf {
    pub(in crate::web) fn new(root: PathBuf) -> Self {
        Shelf { root, known: Mutex::default() }
    }

    /// The folder of jobs.
    pub(in crate::web) fn root(&self) -> &Path {
        &self.root
    }

    /// Where a job's evidence folder is.
    pub(in crate::web) fn sealed_path(&self, name: &str) -> PathBuf {
        self.root.join(SEALED).join(name)
    }

    /// The job's folder, where there is such a job.
    pub(in crate::web) fn path(&self, name: &str) -> Option<PathBuf> {
        let plain = !name.is_empty() && !name.starts_with('.') && !name.contains(['/', '\\', '\0']) && name != SEALED;
        let path = self.root.join(name);
        (plain && path.join("job.toml").is_file()).then_some(path)
    }

    /// Whether the job is sealed.
    pub(in crate::web) fn is_closed(&self, name: &str) -> bool {
        self.sealed_path(name).is_dir()
    }

    /// The latest jobs of a kind, at most so many.
    pub(in crate::web) fn latest(&self, most: usize, keep: impl Fn(&Entry) -> bool) -> Vec<Entry> {
        self.refresh(false);
        let known = self.known.lock().unwrap_or_else(PoisonError::into_inner);
        let mut found: Vec<&Arc<Entry>> = known.entries.values().filter(|e| keep(e)).collect();
        found.sort_by(|a, b| latest_first(a, b));
        found.into_iter().take(most).map(|e| Entry::clone(e)).collect()
    }

    /// One page of the jobs that hold every word, and how many there are.
    pub(in crate::web) fn search(&self, words: &str, from: usize, most: usize) -> (Vec<Entry>, usize) {
        self.refresh(false);
        let words: Vec<String> = words.to_lowercase().split_whitespace().map(str::to_owned).collect();
        let known = self.known.lock().unwrap_or_else(PoisonError::into_inner);
        let mut found: Vec<&Arc<Entry>> =
            known.entries.values().filter(|e| words.iter().all(|w| e.text.contains(w.as_str()))).collect();
        found.sort_by(|a, b| latest_first(a, b));
        let count = found.len();
        (found.into_iter().skip(from).take(most).map(|e| Entry::clone(e)).collect(), count)
    }

    /// The verdict that is kept beside a job's file, while it is the job's.
    pub(in crate::web) fn verdict(&self, entry: &Entry) -> Option<Verdict> {
        let path = self.root.join(&entry.name).join(RESULT);
        let metadata = fs::metadata(&path).ok()?;
        let stamp = Stamp::of(&metadata);
        // A result that is older than the job file is another state's.
        if metadata.modified().ok()? < entry.changed {
            return None;
        }
        if let Some((known, verdict)) =
            self.known.lock().unwrap_or_else(PoisonError::into_inner).verdicts.get(&entry.name)
            && *known == stamp
        {
            return *verdict;
        }
        let verdict = read_verdict(&path);
        self.known.lock().unwrap_or_else(PoisonError::into_inner).verdicts.insert(entry.name.clone(), (stamp, verdict));
        verdict
    }

    /// Reads what changed; at once where `now`, else at most once in a while.
    pub(in crate::web) fn refresh(&self, now: bool) {
        let old = {
            let known = self.known.lock().unwrap_or_else(PoisonError::into_inner);
            if !now && known.looked.is_some_and(|at| at.elapsed() < FRESH) {
                return;
            }
            Arc::clone(&known.entries)
        };
        let sealed = names_in(&self.root.join(SEALED));
        let names = names_in(&self.root);
        let entries: BTreeMap<String, Arc<Entry>> = names
            .par_iter()
            .filter_map(|name| {
                let closed = sealed.binary_search(name).is_ok();
                Some((name.clone(), self.entry(name, closed, old.get(name))?))
            })
            .collect();
        let mut known = self.known.lock().unwrap_or_else(PoisonError::into_inner);
        known.verdicts.retain(|name, _| entries.contains_key(name));
        known.entries = Arc::new(entries);
        known.looked = Some(Instant::now());
    }

    fn entry(&self, name: &str, closed: bool, old: Option<&Arc<Entry>>) -> Option<Arc<Entry>> {
        let path = self.root.join(name).join("job.toml");
        let metadata = fs::metadata(&path).ok().filter(Metadata::is_file)?;
        let stamp = Stamp::of(&metadata);
        if let Some(old) = old.filter(|o| o.stamp == stamp) {
            let same = old.closed == closed;
            return Some(if same { Arc::clone(old) } else { Arc::new(Entry { closed, ..Entry::clone(old) }) });
        }
        let job = SourceFile::read(&path)
            .and_then(|source| JobFile::from_toml(source.text()?, "job.toml"))
            .map_err(|e| e.without_file().into());
        let text = searched(name, job.as_ref().ok());
        let changed = metadata.modified().unwrap_or(SystemTime::UNIX_EPOCH);
        Some(Arc::new(Entry { name: name.to_owned(), job, changed, closed, stamp, text }))
    }
}

fn latest_first(a: &Entry, b: &Entry) -> std::cmp::Ordering {
    b.changed.cmp(&a.changed).then_with(|| b.name.cmp(&a.name))
}

/// Names of the folders in a folder, sorted; hidden ones are nobody's jobs.
fn names_in(folder: &Path) -> Vec<String> {
    let Ok(entries) = fs::read_dir(folder) else { return Vec::new() };
    let mut names: Vec<String> = entries
        .filter_map(|e| {
            let e = e.ok()?;
            let name = e.file_name().into_string().ok()?;
            (!name.starts_with('.') && e.file_type().ok()?.is_dir()).then_some(name)
        })
        .collect();
    names.sort();
    names
}

fn searched(name: &str, job: Option<&JobFile>) -> String {
    let Some(job) = job else { return name.to_lowercase() };
    let vehicle = &job.vehicle;
    let parts = [&job.technician, &job.series, &job.bay, &vehicle.description, &vehicle.vin];
    let mut text = format!("{name} {} {}", job.job, job.setup);
    for part in parts.into_iter().flatten() {
        text.push(' ');
        text.push_str(part);
    }
    text.to_lowercase()
}

/// The verdict of a record; the rest of it is not kept.
fn read_verdict(path: &Path) -> Option<Verdict> {
    #[derive(serde::Deserialize)]
    struct Brief {
        verdict: Verdict,
    }
    let bytes = fs::read(path).ok()?;
    serde_json::from_slice::<Brief>(&bytes).ok().map(|b| b.verdict)
}
