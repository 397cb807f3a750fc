//! A sealed job measured again from its photos, and compared with what was recorded.

use std::path::Path;
use std::sync::Arc;

use crate::credentials::{BUILT_IN, Source};
use crate::folder::Models;
use crate::record::{Credentials, JobRecord};

use crate::job::{Error, Options, reveal_private, verify, verify_and};

use super::compared::differences;
use super::{contents, further, signed};
use crate::evidence::{RESULT, find_sealed_job, read_result};
use crate::words::{Language, Phrase, phrase};

/// Why nothing could be compared.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum RemeasureError {
    /// The recorded result cannot be read.
    Result(String),
    /// There is no job in the folder.
    NoJob,
    /// The job cannot be verified.
    Job(#[from] Error),
    /// The job of a masked copy cannot be verified.
    Masked(Phrase),
    /// There is no room to measure in.
    Room(String),
}

impl RemeasureError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            RemeasureError::Result(why) => phrase!("evidence-remeasure-result", file = RESULT, why = why),
            RemeasureError::NoJob => phrase!("evidence-remeasure-no-job"),
            RemeasureError::Job(e) => phrase!("evidence-remeasure-job", why = e.phrase()),
            RemeasureError::Masked(why) => phrase!("evidence-remeasure-job", why = why.clone()),
            RemeasureError::Room(why) => phrase!("evidence-remeasure-room", why = why),
        }
    }
}

/// The outcome of measuring again.
#[derive(Debug)]
pub struct Remeasured {
    /// What the folder says.
    pub recorded: JobRecord,
    /// What the photos say now.
    pub now: JobRecord,
    /// In what they differ; empty where they agree.
    pub differences: Vec<Phrase>,
    /// By photo, the content credentials that its bytes bear today; empty where this program cannot read any.
    pub credentials: Vec<(String, Option<Credentials>)>,
}

impl Remeasured {
    /// All differences in one phrase.
    pub fn differing(&self) -> Phrase {
        further(self.differences.clone())
    }
}

/// The result of an evidence folder's payload.
pub(super) fn recorded(payload: &Path) -> Result<JobRecord, RemeasureError> {
    let text = read_result(payload).map_err(|e| RemeasureError::Result(e.why.say(Language::English)))?;
    JobRecord::from_json(&text).map_err(|e| RemeasureError::Result(e.to_string()))
}

/// The models of an evidence folder's payload.
pub(super) fn models(payload: &Path) -> Result<Models, Error> {
    let shared = payload.join("models");
    if shared.is_dir() { Ok(Models::in_folder(&shared)?) } else { Ok(Models::embedded()) }
}

/// Measures the job of an evidence folder's payload again.
///
/// Content credentials count as they were recorded, so that what was sealed is
/// found again whoever is trusted and whatever has expired today; that their
/// bytes are still those that were signed is looked at where the program can.
/// Where `credentials` names trust anchors, the new record is by those; and where the
/// set-up sheet requires credentials, it is by what this program validates for its reader:
/// without the feature or without anchors the job is not proven, whatever was recorded.
///
/// # Errors
/// The result or the job cannot be read.
pub fn remeasure(payload: &Path, credentials: &Source) -> Result<Remeasured, RemeasureError> {
    let recorded = recorded(payload)?;
    let job = payload.join(find_sealed_job(payload).ok_or(RemeasureError::NoJob)?);
    let before = signed::recorded(&recorded);
    let mut options = Options { models: models(payload)?, credentials: Source::Recorded(Arc::new(before.clone())) };
    let (mut now, folder) = verify_and(&job, &options, |folder, _| folder.clone())?;
    if recorded.photos.iter().any(|photo| !photo.private_values.is_empty()) {
        reveal_private(&job, &mut now)?;
    }
    let found = signed::found(&job, &now, credentials).map_err(Error::from)?;
    let mut differences = differences(&recorded, &now);
    let alike = recorded.tool.is_like(&now.tool);
    let labelled = payload.parent().unwrap_or(payload);
    differences.extend(contents::differences((labelled, payload), &job, &folder, &recorded, alike));
    differences.extend(signed::differences(&before, &found));
    if !BUILT_IN {
        differences.extend(signed::missing(&job, &now, &before).map_err(Error::from)?);
    }
    // What a sheet requires is not proven by what the record says of itself.
    if now.sheet.credentials_required || matches!(credentials, Source::Photos(Some(_))) {
        let today = signed::of_today(&before, &found, credentials);
        if today != before {
            options.credentials = Source::Recorded(Arc::new(today));
            now = verify(&job, &options)?;
        }
    }
    let found = found.into_iter().map(|f| (f.file, f.credentials)).collect();
    Ok(Remeasured { recorded, now, differences, credentials: found })
}
