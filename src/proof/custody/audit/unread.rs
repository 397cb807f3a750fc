//! What an audit passes by and must not pass over in silence.

use std::io;

use crate::words::{Phrase, phrase};

/// Why something below the audited paths was not read.
#[derive(Debug)]
pub enum Unread {
    /// The system refuses it.
    System(io::Error),
    /// A job file by another name.
    JobName,
    /// A job's pictures without a job file.
    NoJob,
    /// Evidence in one file by another ending.
    TarName,
    /// What a seal that was killed leaves.
    Unfinished,
    /// An archive of a kind that is not read.
    Packed,
    /// A link that leads out of what is audited.
    Link,
    /// Too many folders above it.
    Deep,
}

impl Unread {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        let (what, why) = match self {
            Unread::System(e) => ("system", e.to_string()),
            Unread::JobName => ("job-name", String::new()),
            Unread::NoJob => ("no-job", String::new()),
            Unread::TarName => ("tar-name", String::new()),
            Unread::Unfinished => ("unfinished", String::new()),
            Unread::Packed => ("packed", String::new()),
            Unread::Link => ("link", String::new()),
            Unread::Deep => ("deep", String::new()),
        };
        phrase!("evidence-audit-unread", what = what, why = why)
    }
}
