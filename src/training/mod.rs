//! Practice without a car: a gallery of mistakes, each rendered, measured and
//! explained, and drills with hidden misplacements. Everything is invented.

mod bay;
pub mod drill;
mod gallery;

pub use gallery::{COMPANIONS, MISTAKES, show, stage_mistake};

use crate::words::{Language, Phrase, phrase};

/// Why practice could not be prepared or marked.
#[derive(Debug)]
pub enum Error {
    /// A scene that the program carries, or a drill's file.
    Input(Box<crate::input::Error>),
    /// A scene cannot be staged.
    Stage(Box<crate::synth::Error>),
    /// A staged job, a picture, the disk, or something about a drill's answers.
    Said(Phrase),
}

impl Error {
    /// For people.
    pub fn words(&self, language: Language) -> String {
        match self {
            Error::Input(e) => e.say(language),
            Error::Stage(e) => e.say(language),
            Error::Said(phrase) => phrase.say(language),
        }
    }
}

impl std::fmt::Display for Error {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.words(Language::English))
    }
}

impl std::error::Error for Error {}

impl From<Phrase> for Error {
    fn from(phrase: Phrase) -> Self {
        Error::Said(phrase)
    }
}

impl From<crate::input::Error> for Error {
    fn from(error: crate::input::Error) -> Self {
        Error::Input(Box::new(error))
    }
}

impl From<crate::synth::Error> for Error {
    fn from(error: crate::synth::Error) -> Self {
        Error::Stage(Box::new(error))
    }
}

pub(crate) fn cannot_read(path: &std::path::Path) -> impl FnOnce(std::io::Error) -> Error {
    let path = path.display().to_string();
    move |why| Error::Said(phrase!("training-cannot-read", path = path, why = why.to_string()))
}

pub(crate) fn cannot_write(path: &std::path::Path) -> impl FnOnce(std::io::Error) -> Error {
    let path = path.display().to_string();
    move |why| Error::Said(phrase!("training-cannot-write", path = path, why = why.to_string()))
}
