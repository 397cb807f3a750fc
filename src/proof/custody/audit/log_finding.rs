//! Something in a log, or between a log and an archive, that an auditor should look at.

use serde::Serialize;

use crate::words::{Language, Phrase};

/// Something to look at, or to know.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LogFinding {
    /// `log-broken`, `proof-false`, `attempt-missing`, `photos-missing`, `attempt-refiled`, `attempt-as-stated`,
    /// `verdict-restated`, `not-logged`, `logged-before-taken`, `time-out-of-order`, `time-against-witness`, `entry-repeated`,
    /// `entry-unreadable` or `orders-unknown`; of notes `unlogged` or `logged-late`.
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

impl LogFinding {
    pub(super) fn new(code: &'static str, entries: Vec<u64>, path: Option<&str>, phrase: Phrase) -> Self {
        let message = phrase.say(Language::English);
        LogFinding { code, entries, path: path.map(str::to_owned), message, message_phrase: phrase }
    }
}
