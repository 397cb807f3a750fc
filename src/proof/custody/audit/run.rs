//! The run over an archive.

use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};

use rayon::prelude::*;

use super::across::leads;
use super::changes::changes;
use super::digest::digest;
use super::find::Found;
use super::judge::judge;
use super::judged::Judged;
use super::ledger::{Ledger, LedgerError};
use super::trust::Trust;

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
    pub lines: Vec<Judged>,
    /// How many were kept from an earlier run.
    pub kept: usize,
}

/// Judges every folder that is new or changed since the ledger's last run; all
/// of them where `recompute`, with what that changed. Results are on the disk as
/// soon as they are there.
///
/// # Errors
/// The disk does not take a result.
pub fn audit(
    found: &[Found],
    trust: Trust,
    folder: &std::path::Path,
    recompute: bool,
    progress: &(dyn Fn(Progress) + Sync),
) -> Result<(Ledger, Audit), LedgerError> {
    let (ledger, before) = Ledger::open(folder, recompute)?;
    let total = found.len();
    let (done, kept) = (AtomicUsize::new(0), AtomicUsize::new(0));
    let failure: Mutex<Option<LedgerError>> = Mutex::new(None);
    let one = |found: &Found| -> Option<Judged> {
        let earlier = before.get(&found.path.display().to_string()).filter(|line| ledger.has(line));
        let earlier = earlier.filter(|line| line.digest == digest(found, trust));
        let line = match earlier {
            Some(line) => {
                kept.fetch_add(1, Ordering::Relaxed);
                line.clone()
            }
            None => ledger.keep(&judge(found, trust)).map_err(|e| *lock(&failure) = Some(e)).ok()?,
        };
        let done = 1 + done.fetch_add(1, Ordering::Relaxed);
        progress(Progress { done, kept: kept.load(Ordering::Relaxed), total });
        Some(line)
    };
    let lines: Option<Vec<Judged>> = found.par_iter().map(one).collect();
    if let Some(failure) = lock(&failure).take() {
        return Err(failure);
    }
    let mut lines = lines.unwrap_or_default();
    let mut leads = leads(&ledger, &lines)?;
    for (n, line) in lines.iter_mut().enumerate() {
        line.across = leads.remove(&n).unwrap_or_default();
    }
    if ledger.is_recomputing() {
        lines.par_iter_mut().try_for_each(|line| compare(&ledger, line))?;
    }
    ledger.finish(&lines)?;
    Ok((ledger, Audit { lines, kept: kept.into_inner() }))
}

/// What the recomputation of a folder changed.
fn compare(ledger: &Ledger, line: &mut Judged) -> Result<(), LedgerError> {
    line.changed = match ledger.earlier(&line.path) {
        Some((was, earlier)) => changes((was, &earlier), (line, &ledger.outcome(line)?)),
        None => Vec::new(),
    };
    Ok(())
}

fn lock<T>(mutex: &Mutex<T>) -> std::sync::MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(std::sync::PoisonError::into_inner)
}
