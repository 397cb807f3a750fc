//! A verdict in the log of attempts.

use std::collections::HashSet;
use std::sync::{Arc, Mutex, PoisonError};

use crate::record::JobRecord;
use crate::transparency::{Appended, Attempt, Log, LogError, LogFolder};

/// Adds a job to the log of attempts.
pub(in crate::web) fn add(log: &Log, record: &JobRecord, json: &[u8]) -> Result<Appended, LogError> {
    log.append(&[attempt(log, record, json)])
}

fn attempt(log: &Log, record: &JobRecord, json: &[u8]) -> Attempt {
    Attempt::of(record, json, "serve", time::OffsetDateTime::now_utc(), log.order_salt())
}

/// The log with which of its results this page knows.
pub(super) struct Logged {
    log: Arc<Log>,
    /// Results by their commitments; none before somebody asked.
    results: Mutex<Option<HashSet<String>>>,
}

impl Logged {
    pub(super) fn new(log: Arc<Log>) -> Self {
        Logged { log, results: Mutex::new(None) }
    }

    /// Adds a result that says something new, or that the log does not have. Whether it has it is for the log to say:
    /// a file beside a job proves nothing, and the page may have been started without the log before.
    ///
    /// # Errors
    /// The log cannot be read, or takes no more.
    pub(super) fn keep(&self, record: &JobRecord, json: &[u8], new: bool) -> Result<(), LogError> {
        let attempt = attempt(&self.log, record, json);
        let mut results = self.results.lock().unwrap_or_else(PoisonError::into_inner);
        if !new {
            let known = match &mut *results {
                Some(known) => known,
                none => none.insert(read(&self.log)?),
            };
            if known.contains(&attempt.result) {
                return Ok(());
            }
        }
        let result = attempt.result.clone();
        self.log.append(&[attempt])?;
        if let Some(known) = &mut *results {
            known.insert(result);
        }
        Ok(())
    }
}

/// The results of all entries; what is no entry has none.
fn read(log: &Log) -> Result<HashSet<String>, LogError> {
    let mut found = HashSet::new();
    // Nothing is added; what a fault cut off is put right before it is read.
    log.append(&[])?;
    LogFolder::open(log.folder())?.each_entry(|_, entry| {
        if let Ok(attempt) = Attempt::read(&entry) {
            found.insert(attempt.result);
        }
    })?;
    Ok(found)
}
