//! Names of before 0.2 that are still read. What was met is kept until the
//! program says it, once each: files are parsed many times, a person is told once.

use std::collections::BTreeSet;
use std::sync::{Mutex, PoisonError};

use crate::words::{Phrase, phrase};

/// Formats by their older and their present names.
const FORMATS: [(&str, &str); 1] = [("rig/1", "kit/1")];

/// Keys by their older and their present names.
const KEYS: [(&str, &str); 1] = [("rig", "kit")];

static MET: Mutex<BTreeSet<[String; 3]>> = Mutex::new(BTreeSet::new());

/// Whether a format's name is the older one of what is wanted; notes it.
pub(super) fn is_older_format(found: &str, wanted: &'static str, file: &str) -> bool {
    let is = FORMATS.contains(&(found, wanted));
    if is {
        note(file, found, wanted);
    }
    is
}

/// The older name of a key.
pub(super) fn older_key(key: &str) -> Option<&'static str> {
    KEYS.iter().find(|(_, now)| *now == key).map(|(older, _)| *older)
}

/// The present name of an older key.
pub(super) fn present_key(key: &str) -> Option<&'static str> {
    KEYS.iter().find(|(older, _)| *older == key).map(|(_, now)| *now)
}

/// Keeps that a file used an older name.
pub(super) fn note(file: &str, older: &str, now: &str) {
    MET.lock().unwrap_or_else(PoisonError::into_inner).insert([file, older, now].map(str::to_owned));
}

/// What was met since the last call, in words.
pub fn older_names_met() -> Vec<Phrase> {
    let met = std::mem::take(&mut *MET.lock().unwrap_or_else(PoisonError::into_inner));
    met.into_iter()
        .map(|[file, older, now]| phrase!("doors-older-name", file = file, older = older, now = now))
        .collect()
}
