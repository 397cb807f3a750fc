//! A record's texts in a reader's language.

use crate::words::{Language, Phrase};

/// A text of a record: its phrase in the language, else the sentence that is
/// kept beside it (the record is older than phrases, or newer than this program).
pub fn told(phrase: Option<&Phrase>, sentence: &str, language: Language) -> String {
    phrase.and_then(|p| p.known(language)).unwrap_or_else(|| sentence.to_owned())
}
