//! A record's texts in a reader's language.

use super::types::JobRecord;
use crate::marker::Role;
use crate::verdict::body_label;
use crate::words::{Language, Phrase, phrase};

/// A text of a record: its phrase in the language, else the sentence that is
/// kept beside it (the record is older than phrases, or newer than this program).
pub fn told(phrase: Option<&Phrase>, sentence: &str, language: Language) -> String {
    phrase.and_then(|p| p.known(language)).unwrap_or_else(|| sentence.to_owned())
}

/// A carrier, an axle or the vehicle as a record names it, as a label: "rear left wheel plate"; with its own name
/// where the record has several of its role. What the record does not know stays as it is.
pub fn body_told(record: &JobRecord, name: &str, language: Language) -> String {
    let role_of = |name: &str| record.carriers.iter().find(|c| c.name == name).map(|c| c.role.as_str());
    let own = role_of(name);
    let role = own.and_then(|own| Role::ALL.into_iter().find(|r| r.name() == own));
    let Some(label) = body_label(name, role) else { return name.to_owned() };
    let several = own.is_some() && record.carriers.iter().filter(|c| Some(c.role.as_str()) == own).count() > 1;
    if several { phrase!("verdict-body-own", body = label, name = name).say(language) } else { label.say(language) }
}
