//! Encryption: which certificate the page shows, taken up anew when its files
//! change, and what becomes of a connection that begins without it.

mod door;
mod identity;
mod keeper;
mod own;

use std::path::PathBuf;
use std::{fmt, io};

pub(super) use door::{Door, Entered, send_on};
pub(super) use identity::digits;
pub(super) use keeper::Keeper;

use crate::words::{Language, Phrase, phrase};

/// Where the page's certificate comes from.
#[derive(Debug, Clone)]
pub enum Tls {
    /// Files that somebody looks after: PEM, the page's certificate first.
    Files {
        /// The certificate and those that vouch for it.
        certificate: PathBuf,
        /// Its private key.
        key: PathBuf,
    },
    /// The page's own, made once and kept with the jobs.
    Own,
}

/// Why there is no encryption.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// A file that can't be read or written.
    File {
        /// Whether it was to be written.
        writing: bool,
        /// Which.
        file: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// A file without what is looked for.
    Holds {
        /// Which.
        file: PathBuf,
        /// What is missing: `certificate` or `key`.
        what: &'static str,
    },
    /// Certificate and key that can't be used together.
    Pair {
        /// Of the certificate.
        certificate: PathBuf,
        /// Of the key.
        key: PathBuf,
        /// What is wrong.
        problem: String,
    },
    /// A name that no certificate can bear.
    Name(String),
    /// Making one failed.
    Make(String),
}

impl Error {
    /// What is wrong and what to do.
    pub fn phrase(&self) -> Phrase {
        let shown = |path: &PathBuf| path.display().to_string();
        match self {
            Error::File { writing, file, source } => {
                let doing = if *writing { "write" } else { "read" };
                phrase!("page-tls-file", doing = doing, file = shown(file), why = source.to_string())
            }
            Error::Holds { file, what } => phrase!("page-tls-holds", file = shown(file), what = *what),
            Error::Pair { certificate, key, problem } => {
                phrase!("page-tls-pair", certificate = shown(certificate), key = shown(key), why = problem)
            }
            Error::Name(name) => phrase!("page-tls-name", name = name),
            Error::Make(why) => phrase!("page-tls-make", why = why),
        }
    }
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.phrase().say(Language::English))
    }
}
