//! What can go wrong while staging a scene.

use std::path::PathBuf;

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
    /// The scene file does not say what it should.
    #[error("{file}: {message}")]
    Scene {
        /// The file.
        file: String,
        /// What is wrong and how to mend it.
        message: String,
    },
    /// A photo cannot be compressed.
    #[error("cannot compress photo {photo}: {message}")]
    Compress {
        /// Its file name.
        photo: String,
        /// What the encoder says.
        message: String,
    },
}
