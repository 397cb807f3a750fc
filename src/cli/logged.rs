//! What `verify` and `seal` share: adding verdicts to the log of attempts.

use std::path::Path;

use time::OffsetDateTime;

use super::output::{cannot_write, language, read_text};
use crate::record::JobRecord;
use crate::transparency::{Appended, Attempt, Log, VerifierKey};
use crate::words::{Phrase, say};

/// Opens a log that this machine writes.
pub(super) fn open(folder: &Path) -> Result<Log, String> {
    Log::open(folder).map_err(|e| e.phrase().say(language()))
}

/// Adds verified jobs in one go; with words about it.
pub(super) fn add(log: &Log, records: &[&JobRecord], by: &str) -> Result<(Appended, String), String> {
    let now = OffsetDateTime::now_utc();
    let attempt = |record: &&JobRecord| {
        let json = record.to_json().map_err(|e| cannot_write(Path::new("JSON"), &e))?;
        Ok(Attempt::of(record, &json, by, now, log.order_salt()))
    };
    let attempts: Vec<Attempt> = records.iter().map(attempt).collect::<Result<_, String>>()?;
    let appended = log.append(&attempts).map_err(|e| e.phrase().say(language()))?;
    let put_right =
        |what: &Phrase| say!(language(), "cli-log-put-right", log = log.origin(), what = what.clone()) + "\n";
    let mut words: String = appended.repaired.iter().map(put_right).collect();
    let first = appended.first;
    match attempts.len() as u64 {
        0 => {}
        1 => words.push_str(&(say!(language(), "cli-logged-one", entry = first, log = log.origin()) + "\n")),
        n => {
            let (first, last) = (first, first + n - 1);
            words.push_str(
                &(say!(language(), "cli-logged-several", first = first, last = last, log = log.origin()) + "\n"),
            );
        }
    }
    Ok((appended, words))
}

/// A number of jobs in words.
pub(super) fn jobs(n: usize) -> String {
    say!(language(), "cli-jobs", count = n)
}

/// Verifier keys of a file.
pub(super) fn read_keys(path: &Path) -> Result<Vec<VerifierKey>, String> {
    let text = read_text(path)?;
    VerifierKey::read_all(&text, &path.display().to_string()).map_err(|e| e.say(language()))
}
