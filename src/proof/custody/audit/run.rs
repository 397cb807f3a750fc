//! The run over an archive.

use std::collections::{BTreeMap, BTreeSet};
use std::hash::RandomState;
use std::path::{Path, PathBuf};
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};

use rayon::prelude::*;

use super::across::leads;
use super::changes::changes;
use super::digest::digest;
use super::failed::LedgerError;
use super::find::{Found, Sort};
use super::gone::Gone;
use super::judge::judge;
use super::judged::Judged;
use super::ledger::Ledger;
use super::lines::Lines;
use super::trust::Trust;
use crate::custody::{Reports, order_page_again};
use crate::evidence::inspect_index;
use crate::verdict::Verdict;

/// How far an audit is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Progress {
    /// Folders judged or kept from before.
    pub done: usize,
    /// Of them kept from before.
    pub kept: usize,
    /// All folders.
    pub total: usize,
}

/// A finished audit.
#[derive(Debug)]
pub struct Audit {
    /// A line for each folder, in the order of their paths.
    pub lines: Lines,
    /// How many were kept from an earlier run.
    pub kept: usize,
    /// What the lines add up to.
    pub tally: Tally,
}

/// How many lines say what.
#[derive(Debug, Default)]
pub struct Tally {
    verdicts: BTreeMap<Option<&'static str>, usize>,
    exits: BTreeSet<u8>,
    /// With a lead to another folder.
    pub across: usize,
    /// Changed by a recomputation.
    pub changed: usize,
    /// Judged by another version of the program.
    pub other_version: usize,
}

impl Tally {
    fn add(&mut self, line: &Judged) {
        *self.verdicts.entry(line.verdict.map(Verdict::name)).or_default() += 1;
        self.exits.insert(line.exit);
        self.across += usize::from(!line.across.is_empty());
        self.changed += usize::from(!line.changed.is_empty());
        self.other_version += usize::from(line.version != env!("CARGO_PKG_VERSION"));
    }

    /// Lines with a verdict, or with none.
    pub fn of(&self, verdict: Option<Verdict>) -> usize {
        self.verdicts.get(&verdict.map(Verdict::name)).copied().unwrap_or(0)
    }

    /// Every exit code that a line has.
    pub fn exits(&self) -> impl Iterator<Item = u8> {
        self.exits.iter().copied()
    }
}

/// Judges every folder that was found below the paths that were asked for, where it is new or changed since the ledger's
/// last run; all of them where `recompute`, with what that changed. What that run knew and is gone gets a line too.
/// Results are on the disk as soon as they are there.
///
/// # Errors
/// The disk does not take a result.
pub fn audit(
    (asked, found): (&[PathBuf], &[Found]),
    trust: Trust,
    folder: &Path,
    recompute: bool,
    progress: &(dyn Fn(Progress) + Sync),
) -> Result<(Ledger, Audit), LedgerError> {
    let ledger = Ledger::open(folder, recompute)?;
    let numbers = RandomState::new();
    let gone = Gone::since(&ledger, found, asked, &numbers);
    // An index that holds is nothing to judge: its folders have lines of their own.
    let found: Vec<&Found> = found.par_iter().filter(|f| f.sort != Sort::Series || !index_holds(f)).collect();
    let total = found.len();
    let (done, kept) = (AtomicUsize::new(0), AtomicUsize::new(0));
    let failure: Mutex<Option<LedgerError>> = Mutex::new(None);
    let one = |found: &Found| -> Option<u64> {
        let before = ledger.before(&found.path.display().to_string());
        let place = match before.filter(|(_, line)| line.digest == digest(found, trust)) {
            Some((place, _)) => {
                kept.fetch_add(1, Ordering::Relaxed);
                place
            }
            None => ledger.keep(&judge(found, trust)).map_err(|e| *lock(&failure) = Some(e)).ok()?,
        };
        let done = 1 + done.fetch_add(1, Ordering::Relaxed);
        progress(Progress { done, kept: kept.load(Ordering::Relaxed), total });
        Some(place)
    };
    let places: Option<Vec<u64>> = found.par_iter().copied().map(one).collect();
    if let Some(failure) = lock(&failure).take() {
        return Err(failure);
    }
    let mut places = places.unwrap_or_default();
    let gone = gone.lines(&ledger, &places, &numbers)?;
    if !gone.is_empty() {
        let mut all: Vec<(&Path, u64)> = found.iter().map(|f| f.path.as_path()).zip(places).collect();
        for line in &gone {
            all.push((Path::new(&line.path), ledger.keep(line)?));
        }
        all.sort_unstable();
        places = all.into_iter().map(|(_, place)| place).collect();
    }
    let (lines, tally) = finish(&ledger, &places)?;
    Ok((ledger, Audit { lines, kept: kept.into_inner(), tally }))
}

/// What only all jobs together show, and the lines in their order. `places` is
/// where each line begins: nothing else of an archive's lines is in memory.
pub(super) fn finish(ledger: &Ledger, places: &[u64]) -> Result<(Lines, Tally), LedgerError> {
    let mut leads = leads(ledger, places)?;
    let mut tally = Tally::default();
    let pack = 64 * rayon::current_num_threads();
    let whole = |pack: &[u64]| -> Vec<Result<Judged, LedgerError>> {
        pack.par_iter().map(|place| compared(ledger, ledger.line(*place)?)).collect()
    };
    let lines = places.chunks(pack).flat_map(whole).enumerate().map(|(n, line)| {
        let mut line = line?;
        line.across = leads.remove(&n).unwrap_or_default();
        tally.add(&line);
        Ok(line)
    });
    let lines = ledger.finish(lines)?;
    Ok((lines, tally))
}

/// The line with what the recomputation of its folder changed, if one is under way.
fn compared(ledger: &Ledger, mut line: Judged) -> Result<Judged, LedgerError> {
    if ledger.is_recomputing() {
        line.changed = match ledger.earlier(&line.path) {
            Some((was, earlier)) => changes((&was, &earlier), (&line, &ledger.outcome(&line)?)),
            None => Vec::new(),
        };
    }
    Ok(line)
}

fn index_holds(found: &Found) -> bool {
    inspect_index(&found.path).intact() && !matches!(order_page_again(&found.path), Reports::Other(_))
}

fn lock<T>(mutex: &Mutex<T>) -> std::sync::MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(std::sync::PoisonError::into_inner)
}
