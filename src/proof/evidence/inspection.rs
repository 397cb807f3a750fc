//! What a check of an evidence folder found, check by check.

use std::io;

use super::signature::Signature;
use super::timestamp::Token;
use crate::words::{Phrase, phrase};

/// How one check went.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outcome {
    /// As it must be.
    Passed,
    /// Not as it must be.
    Failed,
    /// Nothing to check it against.
    NotCheckable,
}

/// One check.
#[derive(Debug, Clone, PartialEq)]
pub struct Item {
    /// What was checked.
    pub what: String,
    /// How it went.
    pub outcome: Outcome,
    /// What was found.
    pub found: Phrase,
}

/// The item that a masked copy has: its files against what was sealed.
pub(super) const SEALED_FILES: &str = "sealed files";
/// How many bad files are named one by one.
const MOST_NAMED: usize = 20;

/// What was found in a folder.
#[derive(Debug, Default)]
pub struct Inspection {
    /// Every check in its order.
    pub items: Vec<Item>,
    /// The signature, where there is one that can be read.
    pub signature: Option<Signature>,
    /// Whether the signature belongs to the tag manifest.
    pub signed: bool,
    /// Timestamps that hold by themselves, the oldest first.
    pub tokens: Vec<Token>,
    /// Likewise those of the sealed folder that a masked copy was made from.
    pub sealed_tokens: Vec<Token>,
}

impl Inspection {
    /// Whether nothing failed.
    pub fn intact(&self) -> bool {
        self.items.iter().all(|i| i.outcome != Outcome::Failed)
    }

    /// Whether it is a masked copy of a sealed folder.
    pub fn is_copy(&self) -> bool {
        self.items.iter().any(|item| item.what == SEALED_FILES)
    }

    pub(super) fn note(&mut self, what: &str, outcome: Outcome, found: Phrase) {
        self.items.push(Item { what: what.to_owned(), outcome, found });
    }

    /// One item for many files.
    pub(super) fn judge(&mut self, what: &str, mut bad: Vec<Phrase>, good: Phrase) {
        if bad.is_empty() {
            return self.note(what, Outcome::Passed, good);
        }
        let more = bad.len().saturating_sub(MOST_NAMED);
        bad.truncate(MOST_NAMED);
        let words = phrase!("evidence-bad", files = bad, more = more);
        self.note(what, Outcome::Failed, words);
    }
}

/// That a file cannot be read, without its name.
pub(super) fn unread(why: io::Error) -> Phrase {
    phrase!("evidence-unreadable", why = why.to_string())
}

/// A file that cannot be read, and what the system said.
pub(super) fn unreadable(file: &str, why: &io::Error) -> Phrase {
    phrase!("evidence-file-unreadable", file = file, why = why.to_string())
}
