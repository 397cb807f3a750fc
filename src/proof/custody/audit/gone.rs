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

/// What an earlier run knew and is not found now, by its path.
pub(super) struct Gone(BTreeMap<String, Earlier>);

struct Earlier {
    digest: String,
    /// What tells the job wherever it lies; none where it could not be read.
    job: Option<u64>,
}

impl Gone {
    /// Those at or below the paths that are audited now: of the others nobody asked. To be called before anything is judged.
    pub(super) fn since(ledger: &Ledger, found: &[Found], asked: &[PathBuf], numbers: &RandomState) -> Self {
        let here: HashSet<Cow<str>> = found.iter().map(|f| f.path.to_string_lossy()).collect();
        let mut gone = BTreeMap::new();
        ledger.each_before(|line| {
            if !here.contains(line.path.as_str()) && asked.iter().any(|path| Path::new(&line.path).starts_with(path)) {
                let job = ledger.outcome_before(&line).ok().and_then(|outcome| number(&outcome, numbers));
                gone.insert(line.path, Earlier { digest: line.digest, job });
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
        if self.0.values().any(|earlier| earlier.job.is_some()) {
            let mut moved: HashMap<u64, Vec<String>> = HashMap::new();
            for (path, earlier) in &self.0 {
                moved.entry(earlier.job.unwrap_or(0)).or_default().push(path.clone());
            }
            each_outcome(ledger, places.iter().map(|place| ledger.line(*place)), |_, _, outcome| {
                let paths = number(&outcome, numbers).and_then(|job| moved.remove(&job));
                paths.into_iter().flatten().for_each(|path| drop(self.0.remove(&path)));
            })?;
        }
        Ok(self.0.into_iter().map(|(path, earlier)| no_longer_there(&path, &earlier.digest)).collect())
    }
}

/// A job's name, verdict and photos as a number, never 0.
fn number(outcome: &Outcome, numbers: &RandomState) -> Option<u64> {
    let record = outcome.as_ref().ok()?;
    let of_photos = record.inputs.iter().filter(|i| i.role == "photo");
    let mut photos: Vec<&str> = of_photos.map(|i| i.sha256.as_str()).collect();
    photos.sort_unstable();
    Some(numbers.hash_one((&record.job, record.verdict.name(), photos)).max(1))
}
