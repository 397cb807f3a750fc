//! What can go wrong while staging a scene.

use std::path::PathBuf;

use crate::input;

/// A scene that cannot be staged.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// A file cannot be read.
    #[error("cannot read {path}: {source}; check the path and its permissions", path = path.display())]
    Read {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// A file cannot be written.
    #[error("cannot write {path}: {source}; check the folder's permissions and free space", path = path.display())]
    Write {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// The job that the scene describes would not be readable.
    #[error("the scene's job keys make no valid job file: {0}")]
    Job(input::Error),
    /// A photo cannot be compressed.
    #[error("cannot compress photo {photo}: {message}; make it smaller")]
    Compress {
        /// Its file name.
        photo: String,
        /// What the encoder says.
        message: String,
    },
    /// A text cannot be written as TOML or JSON.
    #[error("cannot write the job or its truth as text: {0}; check the scene's job keys")]
    Truth(String),
}
