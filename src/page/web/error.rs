//! Why the page cannot be served.

use std::net::SocketAddr;
use std::path::PathBuf;
use std::{fmt, io};

use super::tls;
use crate::words::{Language, Phrase, phrase};

/// Why the page can't be served.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// The address is taken or not this machine's.
    Listen {
        /// Where.
        address: SocketAddr,
        /// What the system said.
        source: io::Error,
    },
    /// The folder of jobs.
    Jobs {
        /// Which.
        jobs: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// The certificate.
    Tls(#[from] tls::Error),
    /// Threads or timers.
    Start(#[from] io::Error),
}

impl Error {
    /// What is wrong and what to do.
    pub fn phrase(&self) -> Phrase {
        match self {
            Error::Listen { address, source } => {
                phrase!("page-serve-listen", address = address.to_string(), why = source.to_string())
            }
            Error::Jobs { jobs, source } => {
                phrase!("page-serve-jobs", jobs = jobs.display().to_string(), why = source.to_string())
            }
            Error::Tls(e) => e.phrase(),
            Error::Start(e) => phrase!("page-serve-start", why = e.to_string()),
        }
    }
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.phrase().say(Language::English))
    }
}
