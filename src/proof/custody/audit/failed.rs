//! What keeps an audit's folder from being read or written.

use std::io;
use std::path::{Path, PathBuf};

use crate::evidence::cannot;
use crate::words::{Language, Phrase, phrase};

/// Why an audit cannot write.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum LedgerError {
    /// Reading or writing failed.
    Io {
        /// `read`, `write`, ...
        doing: &'static str,
        /// Which file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// Another audit writes there.
    Busy(PathBuf),
}

impl LedgerError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            LedgerError::Io { doing, path, source } => cannot(doing, path, source),
            LedgerError::Busy(folder) => phrase!("evidence-ledger-busy", folder = folder.display().to_string()),
        }
    }
}

pub(super) fn failed(doing: &'static str, path: &Path) -> impl FnOnce(io::Error) -> LedgerError {
    let path = path.to_path_buf();
    move |source| LedgerError::Io { doing, path, source }
}
