//! What of an archive is due: jobs whose time of keeping has passed, timestamps
//! whose authority's certificate will end.

use std::path::PathBuf;

use time::Date;

use super::audit::{Found, Sort};
use crate::evidence::find_sealed_job;
use crate::evidence::{cannot, newest_token, unpack};
use crate::folder::JobFile;
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
    let (job, stamped_until) = match found.sort {
        Sort::Job => (found.path.clone(), None),
        Sort::OneFile => {
            let room = tempfile::tempdir().map_err(|e| {
                phrase!("evidence-unpack-room", path = found.path.display().to_string(), why = e.to_string())
            })?;
            let folder = unpack(&found.path, room.path()).map_err(|e| e.phrase())?;
            let own = due(&Found { path: folder, sort: Sort::Evidence })?;
            return Ok(Due { path: found.path.clone(), ..own });
        }
        Sort::Evidence | Sort::Series => {
            let payload = found.path.join("data");
            let inside = find_sealed_job(&payload).map(|job| payload.join(job));
            let newest = newest_token(&found.path).map(|token| token.ends().date());
            (inside.ok_or_else(|| phrase!("evidence-holds-no-job", folder = found.path.display().to_string()))?, newest)
        }
    };
    let file = job.join("job.toml");
    let text = std::fs::read_to_string(&file).map_err(|e| cannot("read", &file, &e))?;
    let read = JobFile::from_toml(&text, &file.display().to_string()).map_err(|e| e.phrase())?;
    Ok(Due { path: found.path.clone(), job: read.job, keep_until: read.keep_until, stamped_until })
}
