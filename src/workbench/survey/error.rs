//! Why a kit could not be surveyed.

use crate::words::{Language, Phrase, phrase};

/// Why a kit could not be surveyed.
#[derive(Debug, Clone, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum Error {
    /// A photo can't be read.
    Photo(Phrase),
    /// No camera for a photo.
    NoCamera {
        /// The photo.
        file: String,
        /// What is wrong and what to do.
        why: Phrase,
    },
    /// The photos do not show the kit, or not enough of it.
    NotMeasured(Phrase),
    /// A length names what is not there.
    Length {
        /// As typed.
        length: String,
        /// What is wrong and what to do.
        why: Phrase,
    },
}

impl Error {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            Error::Photo(why) => why.clone(),
            Error::NoCamera { file, why } => phrase!("fit-no-camera", file = file, why = why.clone()),
            Error::NotMeasured(why) => phrase!("fit-no-survey", why = why.clone()),
            Error::Length { length, why } => phrase!("fit-no-length", length = length, why = why.clone()),
        }
    }

    /// Whether an input could not be read, rather than not be measured.
    pub fn unreadable(&self) -> bool {
        !matches!(self, Error::NotMeasured(_))
    }
}
