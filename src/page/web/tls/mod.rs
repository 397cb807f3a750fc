//! Encryption: which certificate the page shows, taken up anew when its files
//! change, and what becomes of a connection that begins without it.

mod door;
mod identity;
mod keeper;
mod own;

use std::io;
use std::path::PathBuf;

pub(super) use door::{Door, Entered, send_on};
pub(super) use identity::digits;
pub(super) use keeper::Keeper;

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
    #[error("cannot {doing} {file} ({source}): look after the file or name another one")]
    File {
        /// What was tried.
        doing: &'static str,
        /// Which.
        file: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// A file without what is looked for.
    #[error("{file} holds no {what} in PEM form (\"-----BEGIN ...\"): name the file that does")]
    Holds {
        /// Which.
        file: PathBuf,
        /// What is missing.
        what: &'static str,
    },
    /// Certificate and key that can't be used together.
    #[error(
        "the certificate in {certificate} and the key in {key} can't be used ({problem}): name a pair that belongs together"
    )]
    Pair {
        /// Of the certificate.
        certificate: PathBuf,
        /// Of the key.
        key: PathBuf,
        /// What is wrong.
        problem: String,
    },
    /// A name that no certificate can bear.
    #[error("\"{0}\" is no host name or address for a certificate: use letters, digits, hyphens and dots")]
    Name(String),
    /// Making one failed.
    #[error("cannot make a certificate ({0}): use --tls-cert and --tls-key")]
    Make(String),
}
