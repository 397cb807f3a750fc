//! Practice without a car: a gallery of mistakes, each rendered, measured and
//! explained, and drills with hidden misplacements. Everything is invented.

mod bay;
pub mod drill;
mod gallery;

pub use gallery::{COMPANIONS, MISTAKES, show, stage_mistake};

/// Why practice could not be prepared or marked.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// A scene that the program carries, or a drill's file.
    #[error(transparent)]
    Input(Box<crate::input::Error>),
    /// A scene cannot be staged.
    #[error(transparent)]
    Stage(Box<crate::synth::Error>),
    /// A staged job cannot be verified.
    #[error("cannot verify the staged job {job}: {source}")]
    Verify {
        /// Which.
        job: String,
        /// Why.
        source: Box<crate::job::Error>,
    },
    /// A picture or report of a staged job.
    #[error("cannot make the pictures of {job}: {why}")]
    Picture {
        /// Which.
        job: String,
        /// Why.
        why: String,
    },
    /// The disk.
    #[error("cannot {doing} {path}: {source}")]
    Disk {
        /// `read`, `write`, ...
        doing: &'static str,
        /// Which file or folder.
        path: std::path::PathBuf,
        /// What the system said.
        source: std::io::Error,
    },
    /// Something about a drill's answers.
    #[error("{0}")]
    Answers(String),
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

pub(crate) fn disk(doing: &'static str, path: &std::path::Path) -> impl FnOnce(std::io::Error) -> Error {
    let path = path.to_path_buf();
    move |source| Error::Disk { doing, path, source }
}
