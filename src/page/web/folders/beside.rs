//! What lies beside a job: a result, and an evidence folder of its name. Either may be another job's, or this one's
//! as it was before.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use std::time::SystemTime;

use super::edit;
use crate::evidence::{PAYLOAD, find_sealed_job, is_evidence};
use crate::folder::JobFile;
use crate::record::Verdict;

/// What the list of jobs needs of a result.
#[derive(serde::Deserialize)]
pub(super) struct Kept {
    verdict: Verdict,
    inputs: Vec<Input>,
}

#[derive(serde::Deserialize)]
struct Input {
    role: String,
    file: String,
    sha256: String,
}

impl Kept {
    /// Reads a result; the rest of it is not kept.
    pub(super) fn read(path: &Path) -> Option<Self> {
        serde_json::from_slice(&fs::read(path).ok()?).ok()
    }

    pub(super) fn verdict(&self) -> Verdict {
        self.verdict
    }

    /// Whether it is of a job file with this SHA-256.
    pub(super) fn is_of(&self, job: &str) -> bool {
        self.inputs.iter().any(|input| input.role == "job" && input.sha256 == job)
    }

    /// Whether it has the job's photos, and nothing that it was made from is newer. Photos are not hashed: a list of
    /// jobs would wait for that.
    pub(super) fn fits(&self, folder: &Path, job: &JobFile, made: SystemTime) -> bool {
        let photos: BTreeSet<&str> = self.inputs.iter().filter(|i| i.role == "photo").map(|i| &*i.file).collect();
        let now = edit::would_measure(folder, job);
        // What lies among the models, and not beside the job, has no file here.
        let older = |input: &Input| match fs::metadata(folder.join(&input.file)).and_then(|m| m.modified()) {
            Ok(changed) => changed <= made,
            Err(_) => input.role != "photo",
        };
        photos.into_iter().eq(now.iter().map(String::as_str)) && self.inputs.iter().all(older)
    }
}

/// The job file of an evidence folder, where it is one.
pub(super) fn job_of_sealed(folder: &Path) -> Option<PathBuf> {
    let payload = folder.join(PAYLOAD);
    let job = find_sealed_job(&payload).filter(|_| is_evidence(folder))?;
    Some(payload.join(job).join("job.toml"))
}
