//! Why a job could not be verified at all.

use std::path::Path;

use crate::words::{Language, Phrase, phrase};

/// Why a job could not be verified at all: an input that cannot be read.
/// What the photos can't decide is no error but a verdict.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// A job, set-up, kit or camera file.
    #[error(transparent)]
    Input(#[from] crate::input::Error),
    /// A photo that cannot be decoded.
    #[error(transparent)]
    Photo(#[from] crate::photo::Error),
    /// The program itself failed.
    #[error("{}", failed_on(.0).say(Language::English))]
    Fault(std::path::PathBuf),
    /// Photos of a bay that show no floor.
    #[error("{}", .0.say(Language::English))]
    Bay(Phrase),
}

impl Error {
    /// What is wrong and what to do, in a language.
    pub fn say(&self, language: Language) -> String {
        match self {
            Error::Input(e) => e.say(language),
            other => other.phrase().say(language),
        }
    }

    /// The same, not yet in any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            Error::Input(e) => e.phrase(),
            Error::Photo(e) => e.phrase(),
            Error::Fault(path) => failed_on(path),
            Error::Bay(phrase) => phrase.clone(),
        }
    }
}

fn failed_on(path: &Path) -> Phrase {
    phrase!("doors-fault-of-the-program", job = path.display().to_string())
}
