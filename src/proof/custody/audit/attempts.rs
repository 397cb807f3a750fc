//! An archive held against the log of attempts: what was tried and is not there,
//! what is sealed and was never logged, entries whose time does not fit, and a
//! log that is not the one it was.

use std::collections::{BTreeMap, BTreeSet, HashMap};
use std::path::{Path, PathBuf};

use serde::Serialize;

use super::failed::LedgerError;
use super::kept::{Archive, Holding, Kept};
use super::ledger::{Ledger, each_outcome};
use super::lines::Lines;
use crate::transparency::{
    Attempt, LogError, LogFolder, OrderSalt, TOLERANCE_S, VerifierKey, against_witness, out_of_order, read_checkpoint,
    witnessed,
};
use crate::words::{Language, Phrase, Value, phrase};

/// What an audit of a log begins with.
#[derive(Debug)]
pub struct LogOptions {
    /// The log's folder.
    pub folder: PathBuf,
    /// Keys of logs and witnesses that count.
    pub keys: Vec<VerifierKey>,
    /// Checkpoints that were kept from before.
    pub earlier: Vec<PathBuf>,
    /// The log's secret for repair orders, where the auditor was given it.
    pub order_salt: Option<OrderSalt>,
}

/// What was found (`log-audit/1`).
#[derive(Debug, Serialize)]
pub struct LogAudit {
    format: &'static str,
    /// The log's name.
    pub origin: String,
    /// Entries.
    pub size: u64,
    /// Whether a key that counts signed the checkpoint.
    pub signed: bool,
    /// Names of the witnesses whose cosignatures hold.
    pub witnesses: BTreeSet<String>,
    /// Everything that an auditor should look at.
    pub findings: Vec<LogFinding>,
    /// The newest checkpoint, to be kept for the next audit.
    #[serde(skip)]
    pub checkpoint: String,
}

/// Something to look at.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LogFinding {
    /// `log-broken`, `attempt-missing`, `photos-missing`, `attempt-refiled`, `attempt-as-stated`, `verdict-restated`,
    /// `not-logged`, `time-out-of-order`, `time-against-witness`, `entry-repeated` or `entry-unreadable`.
    pub code: &'static str,
    /// Numbers of the log's entries that it is about.
    pub entries: Vec<u64>,
    /// The folder of the archive that it is about.
    pub path: Option<String>,
    /// In words.
    pub message: String,
    /// The same for any language.
    pub message_phrase: Phrase,
}

/// Entries with their numbers.
type Numbered<'a> = Vec<(u64, &'a Attempt)>;

/// Holds an archive that was audited against a log.
///
/// # Errors
/// A result of the archive cannot be read. What is wrong with the log is a finding.
pub fn audit_log(ledger: &Ledger, lines: &Lines, options: &LogOptions) -> Result<LogAudit, LedgerError> {
    let mut archive = Archive::default();
    each_outcome(ledger, lines.iter()?, |_, line, outcome| {
        if let Ok(record) = outcome {
            archive.add(line, &record, options.order_salt.as_ref());
        }
    })?;
    let mut audit = LogAudit {
        format: "log-audit/1",
        origin: String::new(),
        size: 0,
        signed: false,
        witnesses: BTreeSet::new(),
        findings: Vec::new(),
        checkpoint: String::new(),
    };
    if let Err(e) = audit.read(options, &mut archive) {
        audit.note("log-broken", Vec::new(), None, phrase!("evidence-log-broken", why = e.phrase()));
    }
    Ok(audit)
}

impl LogAudit {
    /// Whether the log holds: what it says can be relied on.
    pub fn holds(&self) -> bool {
        self.findings.iter().all(|f| f.code != "log-broken")
    }

    fn note(&mut self, code: &'static str, entries: Vec<u64>, path: Option<&str>, phrase: Phrase) {
        let message = phrase.say(Language::English);
        self.findings.push(LogFinding {
            code,
            entries,
            path: path.map(str::to_owned),
            message,
            message_phrase: phrase,
        });
    }

    fn read(&mut self, options: &LogOptions, archive: &mut Archive) -> Result<(), LogError> {
        let log = LogFolder::open(&options.folder)?;
        (self.origin, self.size) = (log.checkpoint.origin.clone(), log.checkpoint.size);
        let false_key = |why| LogError::Rewritten { path: options.folder.clone(), why };
        let vouchers = log.checkpoint.vouchers(&log.note, &options.keys).map_err(false_key)?;
        self.signed = vouchers.log;
        for path in &options.earlier {
            let (earlier, _) = read_checkpoint(path)?;
            log.check_earlier(&earlier, path)?;
        }
        let mut attempts = BTreeMap::new();
        let mut seen: HashMap<Vec<u8>, u64> = HashMap::new();
        let mut odd = Vec::new();
        log.each_entry(|n, entry| {
            match Attempt::read(&entry) {
                Ok(attempt) => drop(attempts.insert(n, attempt)),
                Err(why) => {
                    odd.push(("entry-unreadable", vec![n], phrase!("evidence-log-unreadable", entry = n, why = why)))
                }
            }
            if let Some(first) = seen.insert(entry, n) {
                let words = phrase!("evidence-log-repeated", entry = n, first = first);
                odd.push(("entry-repeated", vec![first, n], words));
            }
        })?;
        for (code, entries, message) in odd {
            self.note(code, entries, None, message);
        }
        self.times(&log, &attempts, options)?;
        archive.bind(|entry| seen.contains_key(entry));
        self.missing(&attempts, archive);
        self.restated(&attempts, archive);
        self.not_logged(&attempts, archive);
        // Kept only when all of it held: the next audit goes on from here.
        self.checkpoint = log.note.to_text();
        Ok(())
    }

    fn times(
        &mut self,
        log: &LogFolder,
        attempts: &BTreeMap<u64, Attempt>,
        options: &LogOptions,
    ) -> Result<(), LogError> {
        let numbers: Vec<u64> = attempts.keys().copied().collect();
        let times: Vec<i64> = attempts.values().map(Attempt::seconds).collect();
        for (n, off) in out_of_order(&times) {
            let (number, when) = (numbers[n], attempts[&numbers[n]].when());
            let message = phrase!(
                "evidence-log-out-of-order",
                entry = number,
                when = when,
                off = off.unsigned_abs(),
                which = if off < 0 { "earlier" } else { "later" },
                tolerance = TOLERANCE_S.unsigned_abs(),
            );
            self.note("time-out-of-order", vec![number], None, message);
        }
        for (path, checkpoint, note) in witnessed(log.folder())? {
            log.check_earlier(&checkpoint, &path)?;
            let vouchers = checkpoint.vouchers(&note, &options.keys);
            let vouchers = vouchers.map_err(|why| LogError::Rewritten { path: path.clone(), why })?;
            for (witness, time) in vouchers.witnesses {
                let seen = i64::try_from(time).unwrap_or(i64::MAX);
                // Numbers of entries that can be read; the others have no time.
                let before = numbers.partition_point(|n| *n < checkpoint.size) as u64;
                for (n, off) in against_witness(&times, before, seen) {
                    let (number, when) = (numbers[n], attempts[&numbers[n]].when());
                    let message = phrase!(
                        "evidence-log-against-witness",
                        entry = number,
                        when = when,
                        witness = &witness,
                        size = checkpoint.size,
                        off = off.unsigned_abs(),
                        which = if off < 0 { "earlier" } else { "later" },
                    );
                    self.note("time-against-witness", vec![number], None, message);
                }
                self.witnesses.insert(witness);
            }
        }
        Ok(())
    }

    /// Attempts that no job of the archive has with all of their photos and as it was filed, each attempt once.
    fn missing(&mut self, attempts: &BTreeMap<u64, Attempt>, archive: &Archive) {
        // By repair order and number, and where something else has it by that one's code and path.
        type Which<'a> = (&'a str, Option<u32>, Option<(&'static str, &'a str)>);
        let mut lacking: BTreeMap<Which, Numbered> = BTreeMap::new();
        for (n, attempt) in attempts {
            let elsewhere = match archive.holding(attempt) {
                Holding::Whole => continue,
                Holding::Refiled(job) => Some(("attempt-refiled", job.path.as_str())),
                Holding::Stated(copy) => Some(("attempt-as-stated", copy.path.as_str())),
                Holding::Nowhere => None,
            };
            lacking.entry((&attempt.order, attempt.attempt, elsewhere)).or_default().push((*n, attempt));
        }
        for ((order, number, elsewhere), entries) in lacking {
            let photos: BTreeSet<&String> = entries.iter().flat_map(|(_, a)| &a.files.photos).collect();
            let gone = photos.iter().filter(|photo| !archive.has(photo)).count();
            let (code, lies) = match (elsewhere, gone) {
                (Some((code @ "attempt-refiled", _)), _) => (code, "refiled"),
                (Some((code, _)), _) => (code, "stated"),
                (None, 0) => ("attempt-missing", "scattered"),
                (None, gone) if gone == photos.len() => ("attempt-missing", "nowhere"),
                (None, _) => ("photos-missing", "partly"),
            };
            let path = elsewhere.map(|(_, path)| path);
            let known = archive.orders.get(order);
            let told: Vec<Phrase> = entries
                .iter()
                .map(|(n, a)| phrase!("evidence-log-entry", entry = *n, when = a.when(), verdict = verdict(&a.verdict)))
                .collect();
            let message = phrase!(
                "evidence-log-missing",
                numbered = if number.is_some() { "yes" } else { "no" },
                attempt = number.unwrap_or(0),
                known = if known.is_some() { "yes" } else { "no" },
                order = known.map_or("", String::as_str),
                lies = lies,
                path = path.unwrap_or_default(),
                gone = gone,
                photos = photos.len(),
                entries = listed(told),
            );
            self.note(code, entries.iter().map(|(n, _)| *n).collect(), path, message);
        }
    }

    /// The same photos with another verdict, before something else was typed or photos were added.
    fn restated(&mut self, attempts: &BTreeMap<u64, Attempt>, archive: &Archive) {
        let mut before: BTreeMap<&str, (&Kept, Numbered)> = BTreeMap::new();
        for (n, attempt) in attempts {
            for job in archive.contradicting(attempt) {
                before.entry(&job.path).or_insert((job, Vec::new())).1.push((*n, attempt));
            }
        }
        for (path, (job, entries)) in before {
            let told: Vec<Phrase> = entries
                .iter()
                .map(|(n, a)| {
                    let with = match (a.files.job != job.files.job, a.files.setup != job.files.setup) {
                        // Everything else is salted by the photos, and tells nothing where those are others.
                        _ if a.files.photos != job.files.photos => "photos",
                        (true, true) => "both",
                        (true, false) => "job",
                        (false, true) => "setup",
                        (false, false) => "none",
                    };
                    let verdict = verdict(&a.verdict);
                    phrase!("evidence-log-entry-with", entry = *n, when = a.when(), verdict = verdict, with = with)
                })
                .collect();
            let message =
                phrase!("evidence-log-restated", path = path, now = verdict(job.verdict), entries = listed(told));
            self.note("verdict-restated", entries.iter().map(|(n, _)| *n).collect(), Some(path), message);
        }
    }

    fn not_logged(&mut self, attempts: &BTreeMap<u64, Attempt>, archive: &Archive) {
        let logged: BTreeSet<(&[String], &str, &str)> = attempts
            .values()
            .map(|a| (a.files.photos.as_slice(), a.files.job.as_str(), a.files.setup.as_str()))
            .collect();
        for job in archive.jobs.iter().filter(|job| job.sealed) {
            if !logged.contains(&(&job.files.photos, &job.files.job, &job.files.setup)) {
                let message = phrase!("evidence-log-no-entry", path = &job.path);
                self.note("not-logged", Vec::new(), Some(&job.path), message);
            }
        }
    }
}

fn verdict(name: &str) -> Phrase {
    phrase!("evidence-verdict", verdict = name)
}

/// The last few of many entries.
fn listed(mut entries: Vec<Phrase>) -> Phrase {
    const MOST: usize = 6;
    let more = entries.len().saturating_sub(MOST);
    let some: Value = entries.split_off(more).into();
    if more > 0 {
        phrase!("evidence-log-entries-more", more = more, entries = some)
    } else {
        phrase!("evidence-log-entries", entries = some)
    }
}

/// Where an audit keeps a log's checkpoint for the next one.
pub fn kept_checkpoint(out: &Path) -> PathBuf {
    out.join("log-checkpoint")
}
