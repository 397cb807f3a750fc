//! What of an archive is due: jobs whose time of keeping has passed, timestamps
//! whose authority's certificate will end.

use std::path::{Path, PathBuf};

use time::Date;

use super::audit::{Found, Sort};
use crate::evidence::find_sealed_job;
use crate::evidence::{newest_token, unpack};
use crate::folder::JobFile;
use crate::input::SourceFile;
use crate::words::{Phrase, phrase};

/// What is due at one folder.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Due {
    /// The folder.
    pub path: PathBuf,
    /// The job's number.
    pub job: String,
    /// Until when it is kept; none: for ever.
    pub keep_until: Option<Date>,
    /// Until when the newest timestamp holds by itself.
    pub stamped_until: Option<Date>,
}

impl Due {
    /// Whether the time of keeping has passed on a day.
    pub fn may_go(&self, on: Date) -> bool {
        self.keep_until.is_some_and(|until| until < on)
    }

    /// Whether a new timestamp is wanted by a day, as long as the folder is kept.
    pub fn wants_stamp(&self, by: Date) -> bool {
        self.stamped_until.is_some_and(|until| until <= by && self.keep_until.is_none_or(|keep| keep > until))
    }
}

/// Reads what is due at a folder.
///
/// # Errors
/// The job file or the evidence folder cannot be read.
pub fn due(found: &Found) -> Result<Due, Phrase> {
    match found.sort {
        Sort::Job => of_job(&found.path, &found.path, None),
        Sort::OneFile => {
            let room = tempfile::tempdir().map_err(|e| {
                phrase!("evidence-unpack-room", path = found.path.display().to_string(), why = e.to_string())
            })?;
            of_evidence(&found.path, &unpack(&found.path, room.path()).map_err(|e| e.phrase())?)
        }
        Sort::Evidence | Sort::Series => of_evidence(&found.path, &found.path),
    }
}

/// Of an evidence folder, which bears another name where it was unpacked.
fn of_evidence(named: &Path, folder: &Path) -> Result<Due, Phrase> {
    let payload = folder.join("data");
    let shown = || named.display().to_string();
    let newest = newest_token(folder).map_err(|why| phrase!("evidence-file-wrong", file = shown(), why = why))?;
    let job = find_sealed_job(&payload).ok_or_else(|| phrase!("evidence-holds-no-job", folder = shown()))?;
    of_job(named, &payload.join(job), newest.map(|token| token.ends().date()))
}

fn of_job(named: &Path, job: &Path, stamped_until: Option<Date>) -> Result<Due, Phrase> {
    let source = SourceFile::read(&job.join("job.toml")).map_err(|e| e.phrase())?;
    let read = source.text().and_then(|text| JobFile::from_toml(text, source.name())).map_err(|e| e.phrase())?;
    Ok(Due { path: named.to_path_buf(), job: read.job, keep_until: read.keep_until, stamped_until })
}
