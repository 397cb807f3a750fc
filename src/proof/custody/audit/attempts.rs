//! An archive held against the log of attempts: what was tried and is not there,
//! what is sealed and was never logged, entries whose time does not fit, and a
//! log that is not the one it was.

use std::collections::{BTreeMap, BTreeSet, HashMap};
use std::path::{Path, PathBuf};

use serde::Serialize;

use super::failed::LedgerError;
use super::judged::Judged;
use super::kept::{Archive, Holding, Kept};
use super::ledger::{Ledger, in_packs};
use super::lines::Lines;
use super::log_finding::LogFinding;
use super::log_proofs::{ProofFound, hold};
use super::logged_when::{after_the_day, before_taken, late, too_early};
use super::proven::of_line;
use crate::transparency::{
    Attempt, Commitments, LogError, LogFolder, OrderSalt, TOLERANCE_S, VerifierKey, against_witness, out_of_order,
    read_checkpoint, witnessed,
};
use crate::words::{Phrase, Value, phrase};

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
    /// What it is good to know, and proves nothing against anybody.
    pub notes: Vec<LogFinding>,
    /// The newest checkpoint, to be kept for the next audit.
    #[serde(skip)]
    pub checkpoint: String,
}

/// Entries with their numbers.
type Numbered<'a> = Vec<(u64, &'a Attempt)>;

/// A witness, how many entries it saw, and when.
type Seen = (String, u64, i64);

/// What an entry is of: photos, job and sheet.
type Files<'a> = (&'a [String], &'a str, &'a str);

fn files(of: &Commitments) -> Files<'_> {
    (of.photos.as_slice(), &of.job, &of.setup)
}

/// Holds an archive that was audited against a log.
///
/// # Errors
/// A result of the archive cannot be read. What is wrong with the log is a finding.
pub fn audit_log(ledger: &Ledger, lines: &Lines, options: &LogOptions) -> Result<LogAudit, LedgerError> {
    let (mut archive, mut proofs) = (Archive::default(), Vec::new());
    // A folder that was altered proves nothing, whatever lies in it.
    let read = |line: Judged| {
        let Ok(record) = ledger.outcome(&line)? else { return Ok(None) };
        let proven = of_line(&line);
        let found = ProofFound::of(&line, proven.as_ref().map(Option::as_ref).map_err(Clone::clone), &options.keys);
        Ok(Some((line, record, proven.ok().flatten(), found)))
    };
    in_packs(lines.iter()?, read, |_, one| {
        if let Some((line, record, proven, found)) = one {
            archive.add(&line, &record, options.order_salt.as_ref(), proven);
            proofs.extend(found);
        }
    })?;
    let mut audit = LogAudit {
        format: "log-audit/1",
        origin: String::new(),
        size: 0,
        signed: false,
        witnesses: BTreeSet::new(),
        findings: Vec::new(),
        notes: Vec::new(),
        checkpoint: String::new(),
    };
    if let Err(e) = audit.read(options, &mut archive, &proofs) {
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
        self.findings.push(LogFinding::new(code, entries, path, phrase));
    }

    fn read(&mut self, options: &LogOptions, archive: &mut Archive, proofs: &[ProofFound]) -> Result<(), LogError> {
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
            // The same job verified twice within a second is two neighbours, and nothing to look at.
            if let Some(first) = seen.insert(entry, n).filter(|first| first + 1 < n) {
                let words = phrase!("evidence-log-repeated", entry = n, first = first);
                odd.push(("entry-repeated", vec![first, n], words));
            }
        })?;
        for (code, entries, message) in odd {
            self.note(code, entries, None, message);
        }
        self.findings.extend(hold(proofs, &log)?);
        let witnesses = self.times(&log, &attempts, options)?;
        archive.bind(|entry| seen.contains_key(entry));
        let holds_some = attempts.values().any(|a| a.files.photos.iter().any(|photo| archive.has(photo)));
        if !archive.try_secret(&attempts) && options.order_salt.is_some() && holds_some {
            self.note("orders-unknown", Vec::new(), None, phrase!("evidence-log-orders-unknown"));
        }
        self.missing(&attempts, archive);
        self.restated(&attempts, archive);
        self.not_logged(&attempts, archive);
        self.logged_when(&attempts, archive, &witnesses);
        // Kept only when all of it held: the next audit goes on from here.
        self.checkpoint = log.note.to_text();
        Ok(())
    }

    fn times(
        &mut self,
        log: &LogFolder,
        attempts: &BTreeMap<u64, Attempt>,
        options: &LogOptions,
    ) -> Result<Vec<Seen>, LogError> {
        let mut found = Vec::new();
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
                self.witnesses.insert(witness.clone());
                found.push((witness, checkpoint.size, seen));
            }
        }
        Ok(found)
    }

    /// Attempts that no job of the archive has with all of their photos and as it was filed, each attempt once.
    fn missing(&mut self, attempts: &BTreeMap<u64, Attempt>, archive: &Archive) {
        // By repair order and number, and where something else has it by that one's code and path.
        type Which<'a> = (&'a str, Option<u32>, Option<(&'static str, &'a str)>);
        let mut lacking: BTreeMap<Which, Numbered> = BTreeMap::new();
        for (n, attempt) in attempts {
            let elsewhere = match archive.holding(*n, attempt) {
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
        let logged: BTreeSet<Files> = attempts.values().map(|a| files(&a.files)).collect();
        for job in archive.jobs.iter().filter(|job| job.sealed) {
            if !logged.contains(&files(&job.files)) {
                let message = phrase!("evidence-log-no-entry", path = &job.path);
                self.note("not-logged", Vec::new(), Some(&job.path), message);
            }
        }
    }

    /// Entries that are older than what they are of; and, as notes, jobs that were logged long after, or are neither
    /// sealed nor logged.
    fn logged_when(&mut self, attempts: &BTreeMap<u64, Attempt>, archive: &Archive, witnesses: &[Seen]) {
        let (mut same, mut first) = (BTreeMap::<Files, Numbered>::new(), BTreeMap::<&[String], (u64, &Attempt)>::new());
        for (n, attempt) in attempts {
            same.entry(files(&attempt.files)).or_default().push((*n, attempt));
            first.entry(&attempt.files.photos).or_insert((*n, attempt));
        }
        let named = |f: &LogFinding| f.path.clone().filter(|_| f.code == "logged-before-taken");
        let named: BTreeSet<String> = self.findings.iter().filter_map(named).collect();
        for job in &archive.jobs {
            let path = job.path.as_str();
            let own = first.get(job.files.photos.as_slice());
            if own.is_none() && !job.sealed {
                let words = phrase!("evidence-log-unlogged", path = path);
                self.notes.push(LogFinding::new("unlogged", Vec::new(), Some(path), words));
            }
            let Some(latest) = &job.latest else { continue };
            let entries = same.get(&files(&job.files)).map_or(&[][..], Vec::as_slice);
            let of_witness = |n: u64| witnesses.iter().find(|(_, size, seen)| n < *size && too_early(*seen, latest));
            let early = entries.iter().find_map(|(n, attempt)| {
                let own = Some((*n, attempt.seconds(), None)).filter(|_| too_early(attempt.seconds(), latest));
                own.or_else(|| of_witness(*n).map(|(witness, _, seen)| (*n, *seen, Some(witness.as_str()))))
            });
            if let Some((n, seconds, witness)) = early.filter(|_| !named.contains(path)) {
                let why = before_taken((n, seconds), witness, latest);
                let words = phrase!("evidence-file-wrong", file = path, why = why);
                self.note("logged-before-taken", vec![n], Some(path), words);
            } else if let Some((n, attempt)) = own.filter(|(_, attempt)| late(attempt.seconds(), latest)) {
                let words = after_the_day(path, *n, attempt.when(), latest);
                self.notes.push(LogFinding::new("logged-late", vec![*n], Some(path), words));
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
