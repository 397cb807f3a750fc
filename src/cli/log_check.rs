//! The log of attempts in `check` and `audit`.

use std::path::{Path, PathBuf};

use super::codes::UNREADABLE;
use super::logged::read_keys;
use super::output::{language, write_file};
use crate::custody::audit::{Audit, Ledger, LogAudit, LogFinding, LogOptions, Proven, audit_log, kept_checkpoint};
use crate::evidence::{Item, Outcome};
use crate::input::printable;
use crate::transparency::{LogFolder, PROOF_FILE, VerifierKey, order_salt_file, read_order_salt};
use crate::words::{Language, Phrase, phrase, say};

/// What the reader of an evidence folder knows of logs.
pub(super) struct LogTrust {
    keys: Vec<VerifierKey>,
    now: Option<LogFolder>,
}

impl LogTrust {
    /// From files; none: nothing is known.
    pub(super) fn read(keys: Option<&Path>, log: Option<&Path>) -> Result<Self, String> {
        let keys = keys.map(read_keys).transpose()?.unwrap_or_default();
        let now = log.map(LogFolder::open).transpose().map_err(|e| e.phrase().say(language()))?;
        Ok(LogTrust { keys, now })
    }

    /// Checks the proof in an evidence folder's payload. Nothing is said where there is none and nobody asks.
    pub(super) fn check(&self, payload: &Path) -> Vec<Item> {
        let asked = !self.keys.is_empty() || self.now.is_some();
        let item = |outcome, found: Phrase| vec![Item { what: "log".to_owned(), outcome, found }];
        let judged = Proven::read(payload).and_then(|proven| proven.map(|p| self.judge(&p, payload)).transpose());
        match judged {
            Ok(Some((outcome, found))) => item(outcome, found),
            Ok(None) if asked => item(Outcome::NotCheckable, phrase!("evidence-no-proof")),
            Ok(None) => Vec::new(),
            Err(why) => item(Outcome::Failed, phrase!("evidence-file-wrong", file = PROOF_FILE, why = why)),
        }
    }

    fn judge(&self, proven: &Proven, payload: &Path) -> Result<(Outcome, Phrase), Phrase> {
        let (proof, shown) = (&proven.proof, &proven.shown);
        let vouchers = proven.vouchers(&self.keys)?;
        proven.in_time(&vouchers)?;
        if let Some(now) = &self.now {
            // The log as it is now has to be signed as well, or anybody's tiles would do.
            now.checkpoint.vouchers(&now.note, &self.keys)?;
            now.check_earlier(&shown.checkpoint, &payload.join(PROOF_FILE))
                .map_err(|e| phrase!("evidence-log-does-not-fit", why = e.phrase()))?;
        }
        let witnesses: Vec<String> = vouchers.witnesses.into_iter().map(|(name, _)| name).collect();
        let words = phrase!(
            "evidence-logged",
            entry = proof.index,
            log = &shown.checkpoint.origin,
            when = shown.attempt.when(),
            size = shown.checkpoint.size,
            still = if self.now.is_some() { "yes" } else { "no" },
            witnessed = if witnesses.is_empty() { "no" } else { "yes" },
            witnesses = witnesses,
            signed = if vouchers.log { "yes" } else { "no" },
        );
        Ok((if vouchers.log { Outcome::Passed } else { Outcome::NotCheckable }, words))
    }
}

/// What `audit` was asked about a log.
pub(super) struct Asked<'a> {
    pub(super) folder: &'a Path,
    pub(super) keys: Option<&'a Path>,
    pub(super) earlier: &'a [PathBuf],
    pub(super) orders: Option<&'a Path>,
}

/// Most findings that are shown on the terminal.
const MOST_SHOWN: usize = 20;
/// Something is not proven.
const OPEN: u8 = 3;

/// A finished audit that was held against a log.
pub(super) struct Held {
    found: LogAudit,
    /// How many checkpoints were kept from before.
    earlier: usize,
}

/// What was found, in a language.
pub(super) struct Told {
    pub(super) summary: String,
    /// Code, folder where it is about one, message.
    findings: Vec<(&'static str, Option<String>, String)>,
    /// The folders as people see them.
    paths: Vec<String>,
}

impl Told {
    /// Everything: code, folder, message.
    pub(super) fn shown(&self) -> Vec<[&str; 3]> {
        let all = self.findings.iter().zip(&self.paths);
        all.map(|((code, _, message), path)| [*code, path.as_str(), message.as_str()]).collect()
    }

    /// What is about one folder: code, message.
    pub(super) fn of(&self, folder: &str) -> Vec<[&str; 2]> {
        let own = self.findings.iter().filter(|(_, path, _)| path.as_deref() == Some(folder));
        own.map(|(code, _, message)| [*code, message.as_str()]).collect()
    }

    /// What is about no folder of the archive.
    pub(super) fn without_folder(&self) -> impl Iterator<Item = (&str, &str)> {
        self.findings.iter().filter(|(_, path, _)| path.is_none()).map(|(code, _, message)| (*code, message.as_str()))
    }
}

/// Holds a finished audit against a log.
pub(super) fn audit(ledger: &Ledger, audit: &Audit, out: &Path, asked: &Asked) -> Result<Held, String> {
    let own = order_salt_file(asked.folder);
    let orders = asked.orders.or(Some(own.as_path()).filter(|p| p.is_file()));
    let kept = kept_checkpoint(out);
    let mut earlier = asked.earlier.to_vec();
    earlier.extend(Some(kept.clone()).filter(|p| p.is_file()));
    let options = LogOptions {
        folder: asked.folder.to_path_buf(),
        keys: asked.keys.map(read_keys).transpose()?.unwrap_or_default(),
        earlier,
        order_salt: orders.map(read_order_salt).transpose().map_err(|e| e.phrase().say(language()))?,
    };
    let found = audit_log(ledger, &audit.lines, &options).map_err(|e| e.phrase().say(language()))?;
    let mut json = serde_json::to_vec_pretty(&found).map_err(|e| e.to_string())?;
    json.push(b'\n');
    write_file(&out.join("log.json"), &json)?;
    if found.holds() {
        write_file(&kept, found.checkpoint.as_bytes())?;
    }
    Ok(Held { found, earlier: options.earlier.len() })
}

impl Held {
    /// The exit code. A log that anybody may have signed proves nothing.
    pub(super) fn exit(&self) -> u8 {
        let found = &self.found;
        // A false proof is an altered folder.
        let sound = found.holds() && found.findings.iter().all(|f| f.code != "proof-false");
        match (sound, found.findings.is_empty() && found.signed) {
            (false, _) => UNREADABLE,
            (true, false) => OPEN,
            (true, true) => 0,
        }
    }

    /// Which log, and how far it can be relied on.
    fn summary(&self, language: Language) -> String {
        let found = &self.found;
        let notes = |code: &str| found.notes.iter().filter(|note| note.code == code).count();
        say!(
            language,
            "evidence-log-summary",
            log = &found.origin,
            size = found.size,
            signed = if found.signed { "yes" } else { "no" },
            witnessed = if found.witnesses.is_empty() { "no" } else { "yes" },
            witnesses = found.witnesses.iter().cloned().collect::<Vec<_>>(),
            kept = if found.holds() && self.earlier > 0 { "yes" } else { "no" },
            unlogged = notes("unlogged"),
            late = notes("logged-late"),
        )
    }

    /// For the audit's page.
    pub(super) fn told(&self, language: Language) -> Told {
        let one = |f: &LogFinding| (f.code, f.path.clone(), printable(f.message_phrase.say(language)));
        let all = &self.found.findings;
        let paths = all.iter().map(|f| printable(f.path.clone().unwrap_or_default())).collect();
        Told { summary: self.summary(language), findings: all.iter().map(one).collect(), paths }
    }

    /// For the terminal.
    pub(super) fn words(&self, out: &Path, language: Language) -> String {
        let findings = &self.found.findings;
        let mut text = self.summary(language) + "\n";
        for finding in findings.iter().take(MOST_SHOWN) {
            text.push_str(&format!("  {}: {}\n", finding.code, printable(finding.message_phrase.say(language))));
        }
        if findings.len() > MOST_SHOWN {
            text.push_str(&format!("  {}\n", say!(language, "evidence-log-more", count = findings.len() - MOST_SHOWN)));
        }
        let last = if findings.is_empty() {
            say!(language, "evidence-log-nothing")
        } else {
            say!(language, "evidence-log-all", file = out.join("log.json").display().to_string())
        };
        text.push_str(&format!("  {last}\n"));
        text
    }
}
