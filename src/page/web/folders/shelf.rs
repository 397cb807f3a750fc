//! The job folders on the disk, by name. Kept in memory; a folder is read again
//! when its job file changed.

use std::collections::{BTreeMap, HashMap};
use std::fs::{self, Metadata};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant, SystemTime};

use rayon::prelude::*;

use super::beside::{Kept, job_of_sealed};
use crate::evidence::PAYLOAD;
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
    results: HashMap<String, (Stamp, Option<Arc<Kept>>)>,
}

/// What tells that a file is another one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Stamp(Option<SystemTime>, u64);

impl Stamp {
    fn of(metadata: &Metadata) -> Self {
        Stamp(metadata.modified().ok(), metadata.len())
    }
}

/// What lies where a job's evidence folder goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::web) enum Lies {
    /// Nothing yet.
    Nothing,
    /// The evidence folder of this job as it is.
    Own,
    /// Another job's, this one's from before its file was changed, or no evidence at all.
    Another,
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
    /// Of the job file in the evidence folder of its name, where there is one.
    sealed: Option<Stamp>,
    /// SHA-256 of the job file.
    sha256: String,
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
        self.lies(name) == Lies::Own
    }

    /// What lies where the job's evidence folder goes.
    pub(in crate::web) fn lies(&self, name: &str) -> Lies {
        let sealed = self.sealed_path(name);
        if fs::symlink_metadata(&sealed).is_err() {
            return Lies::Nothing;
        }
        let job = SourceFile::read(&self.root.join(name).join("job.toml"));
        let own = job.is_ok_and(|job| job_of_sealed(&sealed).is_some_and(|at| holds(&at, job.bytes())));
        if own { Lies::Own } else { Lies::Another }
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

    /// The verdict that is kept of a job, in its evidence folder or beside its file, where it is of the job as it is now.
    pub(in crate::web) fn verdict(&self, entry: &Entry) -> Option<Verdict> {
        let folder = self.root.join(&entry.name);
        let sealed = self.sealed_path(&entry.name).join(PAYLOAD);
        let path = if entry.closed { sealed.join(RESULT) } else { folder.join(RESULT) };
        let metadata = fs::metadata(&path).ok()?;
        let kept = self.result(&entry.name, &path, Stamp::of(&metadata))?;
        let job = entry.job.as_ref().ok()?;
        let own = kept.is_of(&entry.sha256) && (entry.closed || kept.fits(&folder, job, metadata.modified().ok()?));
        own.then(|| kept.verdict())
    }

    /// A result on the disk, read again when it changed.
    fn result(&self, name: &str, path: &Path, stamp: Stamp) -> Option<Arc<Kept>> {
        let known = || self.known.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some((_, kept)) = known().results.get(name).filter(|(known, _)| *known == stamp) {
            return kept.clone();
        }
        let kept = Kept::read(path).map(Arc::new);
        known().results.insert(name.to_owned(), (stamp, kept.clone()));
        kept
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
                let sealed = sealed.binary_search(name).ok().and_then(|_| job_of_sealed(&self.sealed_path(name)));
                Some((name.clone(), self.entry(name, sealed.as_deref(), old.get(name))?))
            })
            .collect();
        let mut known = self.known.lock().unwrap_or_else(PoisonError::into_inner);
        known.results.retain(|name, _| entries.contains_key(name));
        known.entries = Arc::new(entries);
        known.looked = Some(Instant::now());
    }

    /// `sealed`: the job file in the evidence folder of that name.
    fn entry(&self, name: &str, sealed: Option<&Path>, old: Option<&Arc<Entry>>) -> Option<Arc<Entry>> {
        let path = self.root.join(name).join("job.toml");
        let metadata = fs::metadata(&path).ok().filter(Metadata::is_file)?;
        let stamp = Stamp::of(&metadata);
        let of_sealed = sealed.and_then(|at| Some(Stamp::of(&fs::metadata(at).ok()?)));
        if let Some(old) = old.filter(|o| o.stamp == stamp && o.sealed == of_sealed) {
            return Some(Arc::clone(old));
        }
        let source = SourceFile::read(&path);
        let closed = source.as_ref().is_ok_and(|job| sealed.is_some_and(|at| holds(at, job.bytes())));
        let sha256 = source.as_ref().map(SourceFile::sha256).unwrap_or_default();
        let job = source
            .and_then(|source| JobFile::from_toml(source.text()?, "job.toml"))
            .map_err(|e| e.without_file().into());
        let text = searched(name, job.as_ref().ok());
        let changed = metadata.modified().unwrap_or(SystemTime::UNIX_EPOCH);
        Some(Arc::new(Entry { name: name.to_owned(), job, changed, closed, stamp, sealed: of_sealed, sha256, text }))
    }
}

/// Whether a file holds these bytes.
fn holds(path: &Path, bytes: &[u8]) -> bool {
    SourceFile::read(path).is_ok_and(|file| file.bytes() == bytes)
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
