//! What the pages of one job show, gathered.

use std::path::PathBuf;
use std::sync::Arc;

use super::app::App;
use super::trouble::Trouble;
use crate::folder::{JobFile, Phase, PhotoEntry};
use crate::record::{JobRecord, PhotoLook, PlanRecord};
use crate::web::deeds::{Change, changes, named};
use crate::web::desk::{Bench, Named, Outcome, Standing};
use crate::web::folders::{Entry, Lies, edit, intake};
use crate::words::Value;

/// A job that a page shows.
pub(super) struct View {
    /// The folder's name.
    pub(super) name: String,
    /// The job file.
    pub(super) job: JobFile,
    /// Its sheet and kit, or why they can't be read.
    pub(super) named: Result<Named, Value>,
    /// Whether it is sealed.
    pub(super) closed: bool,
    /// Whether something else lies where its evidence folder goes.
    pub(super) taken: bool,
    /// The photos in the job's order.
    pub(super) photos: Vec<PhotoEntry>,
    /// Names of the photos that were set aside.
    pub(super) aside: Vec<String>,
    /// What is known of the photos.
    pub(super) standing: Standing,
    /// The attempts of its series with the same sheet, the first one first.
    pub(super) attempts: Vec<Entry>,
    /// Where to stand, where a page asked for it.
    pub(super) plan: Option<Result<Arc<PlanRecord>, Value>>,
    /// Where the evidence folder is or will be.
    pub(super) sealed: PathBuf,
    /// The latest changes, the last one first.
    pub(super) changes: Vec<Change>,
    /// Whether everybody in the network can read along.
    pub(super) open_network: bool,
    /// Whether evidence is signed.
    pub(super) signed: bool,
}

impl View {
    /// Gathers everything but the plan.
    pub(super) fn of(app: &App, name: &str, folder: PathBuf, bench: &Bench) -> Result<Self, Trouble> {
        let job = edit::read(&folder)?;
        let lies = app.shelf.lies(name);
        let series = job.series.clone();
        let of_series = |e: &Entry| {
            let other = |j: &JobFile| series.is_some() && j.series == series && j.setup == job.setup;
            e.job.as_ref().is_ok_and(other)
        };
        let mut attempts = app.shelf.latest(50, of_series);
        attempts.sort_by_key(|e| (e.job.as_ref().ok().and_then(|j| j.attempt), e.name.clone()));
        Ok(View {
            named: named(app, &folder, &job),
            closed: lies == Lies::Own,
            taken: lies == Lies::Another,
            photos: edit::photos(&folder, &job),
            aside: intake::aside(&folder),
            standing: bench.standing(),
            sealed: app.shelf.sealed_path(name),
            changes: changes::latest(&folder),
            open_network: app.open,
            signed: app.key.is_some(),
            name: name.to_owned(),
            plan: None,
            job,
            attempts,
        })
    }

    /// The same with where to stand.
    pub(super) fn with_plan(mut self, app: &App) -> Self {
        self.plan = Some(match &self.named {
            Ok(named) => app.plans.plan(named, &self.job.vehicle),
            Err(words) => Err(words.clone()),
        });
        self
    }

    /// The record, where the last verification made one.
    pub(super) fn record(&self) -> Option<&JobRecord> {
        match &self.standing.outcome {
            Some(Outcome::Record(record)) => Some(record),
            _ => None,
        }
    }

    /// What one photo shows on its own.
    pub(super) fn look(&self, file: &str) -> Option<&PhotoLook> {
        self.standing.looks.iter().find(|l| l.file == file)
    }

    /// Whether a photo from after the calibration is there.
    pub(super) fn has_after(&self) -> bool {
        self.photos.iter().any(|p| p.phase == Some(Phase::After))
    }

    /// Required prerequisites and how many of them are answered.
    pub(super) fn answered(&self) -> (usize, usize) {
        let Ok(named) = &self.named else { return (0, 0) };
        let required = named.setup.prerequisites.iter().filter(|p| p.required);
        let all = required.clone().count();
        (required.filter(|p| self.job.prerequisites.contains_key(&p.id)).count(), all)
    }
}
