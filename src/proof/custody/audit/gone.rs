//! Folders that an earlier run into the same ledger judged and that this one does not find.

use std::borrow::Cow;
use std::collections::{BTreeMap, HashMap, HashSet};
use std::hash::{BuildHasher, RandomState};
use std::path::{Path, PathBuf};

use super::failed::LedgerError;
use super::find::Found;
use super::judge::no_longer_there;
use super::judged::{Judged, Outcome};
use super::ledger::{Ledger, each_outcome};
use crate::record::InputRecord;

/// What an earlier run knew and is not found now: by its path what tells the job wherever it lies, where it could be read.
pub(super) struct Gone(BTreeMap<String, Option<u64>>);

impl Gone {
    /// Those at or below the paths that are audited now: of the others nobody asked. To be called before anything is judged.
    pub(super) fn since(ledger: &Ledger, found: &[Found], asked: &[PathBuf], numbers: &RandomState) -> Self {
        let here: HashSet<Cow<str>> = found.iter().map(|f| f.path.to_string_lossy()).collect();
        let mut gone = BTreeMap::new();
        ledger.each_before(|line| {
            if !here.contains(line.path.as_str()) && asked.iter().any(|path| Path::new(&line.path).starts_with(path)) {
                let job = ledger.outcome_before(&line).ok().and_then(|outcome| number(&outcome, numbers));
                gone.insert(line.path, job);
            }
        });
        Gone(gone)
    }

    /// A line for each that lies nowhere else either. `places` are where this run's lines begin.
    pub(super) fn lines(
        mut self,
        ledger: &Ledger,
        places: &[u64],
        numbers: &RandomState,
    ) -> Result<Vec<Judged>, LedgerError> {
        let mut moved: HashMap<u64, Vec<String>> = HashMap::new();
        for (path, job) in &self.0 {
            job.iter().for_each(|job| moved.entry(*job).or_default().push(path.clone()));
        }
        if !moved.is_empty() {
            each_outcome(ledger, places.iter().map(|place| ledger.line(*place)), |_, _, outcome| {
                for path in number(&outcome, numbers).and_then(|job| moved.remove(&job)).unwrap_or_default() {
                    self.0.remove(&path);
                }
            })?;
        }
        Ok(self.0.into_keys().map(|path| no_longer_there(&path)).collect())
    }
}

/// A job's name, verdict and photos as a number.
fn number(outcome: &Outcome, numbers: &RandomState) -> Option<u64> {
    let record = outcome.as_ref().ok()?;
    Some(numbers.hash_one((&record.job, record.verdict.name(), InputRecord::of_photos(&record.inputs))))
}
