//! Why a photo could not be read.

use std::fmt;

use crate::words::{Language, Phrase, phrase};

/// Why a photo could not be read; each message names the file and the remedy.
#[derive(Debug)]
pub enum Error {
    /// The file system refused.
    Open {
        /// The photo's name.
        name: String,
        /// What the file system said.
        source: std::io::Error,
    },
    /// A folder, a pipe or a device.
    NoFile {
        /// The photo's name.
        name: String,
    },
    /// Nothing in it.
    Empty {
        /// The photo's name.
        name: String,
    },
    /// More bytes than any photo has.
    TooManyBytes {
        /// The photo's name.
        name: String,
        /// Its size.
        bytes: u64,
        /// The limit.
        max: u64,
    },
    /// Recognised, and no picture that is decoded.
    Foreign {
        /// The photo's name.
        name: String,
        /// What the file is: a word of the message `doors-photo-foreign`.
        what: &'static str,
        /// What to do: likewise.
        remedy: &'static str,
    },
    /// More pixels than the limit; also how a decompression bomb ends.
    TooManyPixels {
        /// The photo's name.
        name: String,
        /// Stated width.
        width: usize,
        /// Stated height.
        height: usize,
        /// The limit.
        max: usize,
    },
    /// The file ends early.
    CutOff {
        /// The photo's name.
        name: String,
        /// Where it ends.
        detail: Phrase,
    },
    /// The file contradicts itself.
    Damaged {
        /// The photo's name.
        name: String,
        /// What is wrong.
        detail: Phrase,
    },
    /// A variant of the format that is not decoded.
    Unsupported {
        /// The photo's name.
        name: String,
        /// The variant.
        what: Phrase,
    },
}

impl Error {
    /// What is wrong and what to do.
    pub fn phrase(&self) -> Phrase {
        match self {
            Error::Open { name, source } => phrase!("doors-photo-open", name = name, why = source.to_string()),
            Error::NoFile { name } => {
                phrase!("doors-photo-open", name = name, why = phrase!("doors-photo-no-file"))
            }
            Error::Empty { name } => phrase!("doors-photo-empty", name = name),
            Error::TooManyBytes { name, bytes, max } => {
                phrase!("doors-photo-bytes", name = name, bytes = *bytes, most = *max)
            }
            Error::Foreign { name, what, remedy } => {
                phrase!("doors-photo-foreign", name = name, what = *what, remedy = *remedy)
            }
            Error::TooManyPixels { name, width, height, max } => {
                phrase!("doors-photo-pixels", name = name, width = *width, height = *height, most = *max)
            }
            Error::CutOff { name, detail } => phrase!("doors-photo-cut", name = name, detail = detail.clone()),
            Error::Damaged { name, detail } => phrase!("doors-photo-damaged", name = name, detail = detail.clone()),
            Error::Unsupported { name, what } => phrase!("doors-photo-unsupported", name = name, what = what.clone()),
        }
    }

    /// The same where everybody sees which photo it is, or its name is only this machine's.
    pub fn without_name(&self) -> Phrase {
        self.phrase().with("name", "none")
    }

    /// The same in a language.
    pub fn say(&self, language: Language) -> String {
        self.phrase().say(language)
    }
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.say(Language::English))
    }
}

impl std::error::Error for Error {
    fn source(&self) -> Option<&(dyn std::error::Error + 'static)> {
        match self {
            Error::Open { source, .. } => Some(source),
            _ => None,
        }
    }
}

/// What a decoder found wrong, before the photo's name is known.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Fault {
    CutOff(Phrase),
    Damaged(Phrase),
    Unsupported(Phrase),
    TooManyPixels(usize, usize),
}

/// A decoder's own words.
pub(super) fn as_it_came(text: impl Into<String>) -> Phrase {
    phrase!("doors-said", text = text.into())
}

impl Fault {
    pub(super) fn of(self, name: &str) -> Error {
        let name = name.to_owned();
        match self {
            Fault::CutOff(detail) => Error::CutOff { name, detail },
            Fault::Damaged(detail) => Error::Damaged { name, detail },
            Fault::Unsupported(what) => Error::Unsupported { name, what },
            Fault::TooManyPixels(width, height) => {
                Error::TooManyPixels { name, width, height, max: super::limits::MAX_PIXELS }
            }
        }
    }
}
