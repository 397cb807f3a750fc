//! What can go wrong while staging a scene.

use std::fmt;
use std::path::PathBuf;

use crate::input;
use crate::words::{Language, Phrase, Value, phrase};

/// A scene that cannot be staged.
#[derive(Debug)]
pub enum Error {
    /// A file cannot be read.
    Read {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// A file cannot be written.
    Write {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// The job that the scene describes would not be readable.
    Job(input::Error),
    /// A photo cannot be compressed.
    Compress {
        /// Its file name.
        photo: String,
        /// What the encoder says.
        message: Value,
    },
    /// A text cannot be written as TOML or JSON.
    Truth(String),
}

impl Error {
    /// What is wrong and what to do.
    pub fn phrase(&self) -> Phrase {
        match self {
            Error::Read { path, source } => {
                phrase!("doors-stage-read", path = path.display().to_string(), why = source.to_string())
            }
            Error::Write { path, source } => {
                phrase!("doors-stage-write", path = path.display().to_string(), why = source.to_string())
            }
            Error::Job(e) => phrase!("doors-stage-job", why = e.phrase()),
            Error::Compress { photo, message } => {
                phrase!("doors-stage-compress", photo = photo, why = message.clone())
            }
            Error::Truth(message) => phrase!("doors-stage-truth", why = message),
        }
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
            Error::Read { source, .. } | Error::Write { source, .. } => Some(source),
            _ => None,
        }
    }
}
