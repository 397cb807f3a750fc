//! The measuring behind the page: one worker for each job that has something
//! new, so many at a time as there are cores, the results kept in memory and
//! beside the job file.

use std::collections::HashMap;
use std::path::Path;
use std::sync::{Arc, Mutex, PoisonError};
use std::time::Instant;

use axum::http::StatusCode;
use tokio::sync::Semaphore;

use super::bench::{Bench, Outcome};
use super::happened::Happened;
use super::logged::Logged;
use crate::folder::write_durably;
use crate::job::{self, Frame, PhotoMemory, attempts_beside, verify_watching};
use crate::marker::Kit;
use crate::record::{AttemptRecord, JobRecord, PhotoLook};
use crate::transparency::Log;
use crate::web::folders::edit;
use crate::web::folders::series;
use crate::web::folders::{RESULT, Shelf};
use crate::web::limits;
use crate::web::trouble::{Trouble, blocking};
use crate::words::{Phrase, phrase};

/// All jobs at work.
pub(in crate::web) struct Desk {
    options: job::Options,
    shelf: Arc<Shelf>,
    memory: PhotoMemory,
    log: Option<Logged>,
    places: Arc<Semaphore>,
    benches: Mutex<HashMap<String, Arc<Bench>>>,
}

impl Desk {
    pub(in crate::web) fn new(options: job::Options, shelf: Arc<Shelf>, log: Option<Arc<Log>>) -> Self {
        let cores = std::thread::available_parallelism().map_or(2, usize::from);
        Desk {
            options,
            shelf,
            log: log.map(Logged::new),
            memory: PhotoMemory::new(limits::REMEMBERED_PHOTOS),
            places: Arc::new(Semaphore::new(cores)),
            benches: Mutex::default(),
        }
    }

    /// The bench of a job; a job that nobody used for longest loses its place.
    pub(in crate::web) fn bench(&self, name: &str, folder: &Path) -> Arc<Bench> {
        let mut benches = self.benches.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(bench) = benches.get(name) {
            bench.state().used = Instant::now();
            return Arc::clone(bench);
        }
        if benches.len() >= limits::AT_WORK {
            let idle = benches.iter().filter(|(_, b)| Arc::strong_count(b) == 1 && !b.state().working);
            if let Some(oldest) = idle.min_by_key(|(_, b)| b.state().used).map(|(n, _)| n.clone()) {
                benches.remove(&oldest);
            }
        }
        let bench = Arc::new(Bench::new(folder));
        benches.insert(name.to_owned(), Arc::clone(&bench));
        bench
    }

    /// Something changed: the job is verified again.
    pub(in crate::web) fn wake(self: &Arc<Self>, bench: &Arc<Bench>) {
        {
            let mut state = bench.state();
            state.dirty = true;
            if state.working {
                return;
            }
            state.working = true;
        }
        let (desk, bench) = (Arc::clone(self), Arc::clone(bench));
        tokio::spawn(async move { desk.work(bench).await });
    }

    /// Looks at a photo before anybody is told that it is kept: one that can't
    /// be decoded would keep the whole job from being measured.
    ///
    /// # Errors
    /// What is wrong with it and what to do.
    pub(in crate::web) async fn examine(self: &Arc<Self>, path: &Path) -> Result<(), Trouble> {
        let (desk, path) = (Arc::clone(self), path.to_path_buf());
        let _place = self.places.acquire().await.map_err(|_| Trouble::not_found("photo"))?;
        blocking(move || {
            desk.memory.examine(&path).map_err(|e| {
                let words = match &e {
                    job::Error::Photo(e) => e.without_name(),
                    other => other.phrase(),
                };
                Trouble::new(StatusCode::UNPROCESSABLE_ENTITY, "undecodable", words)
            })
        })
        .await
    }

    /// What a photo of a tripod shows of the kit; one that was examined is known.
    ///
    /// # Errors
    /// It can't be read.
    pub(in crate::web) fn frame(&self, path: &Path, kit: &Kit) -> Result<Frame, Trouble> {
        self.memory.frame(path, kit).map(|(frame, _)| frame).map_err(|e| Trouble::typed(e.phrase()))
    }

    /// Looks at a live picture, with a place among what is measured.
    pub(in crate::web) async fn glance<T: Send + 'static>(
        &self,
        look: impl FnOnce() -> Result<T, Trouble> + Send + 'static,
    ) -> Result<T, Trouble> {
        let _place = self.places.acquire().await.map_err(|_| Trouble::not_found("picture"))?;
        blocking(look).await
    }

    async fn work(self: Arc<Self>, bench: Arc<Bench>) {
        loop {
            let Ok(place) = Arc::clone(&self.places).acquire_owned().await else { return };
            bench.state().dirty = false;
            let (desk, at) = (Arc::clone(&self), Arc::clone(&bench));
            let worked = tokio::task::spawn_blocking(move || desk.verify(&at)).await;
            drop(place);
            let again = {
                let mut state = bench.state();
                state.outcome =
                    Some(worked.unwrap_or_else(|_| Outcome::Failed(phrase!("page-trouble-measuring").into())));
                state.working = state.dirty;
                state.dirty
            };
            bench.tell(Happened::Verdict);
            if !again {
                return;
            }
        }
    }

    fn verify(&self, bench: &Bench) -> Outcome {
        let none = edit::read(&bench.folder).is_ok_and(|job| edit::photos(&bench.folder, &job).is_empty());
        if none {
            bench.state().looks.clear();
            return Outcome::NoPhotos;
        }
        let mut told = |looks: Vec<PhotoLook>| {
            bench.state().looks = looks;
            bench.tell(Happened::Photos);
        };
        match verify_watching(&bench.folder, &self.options, &self.memory, &mut told) {
            Ok(mut record) => {
                if let Err(why) = self.keep(bench, &record) {
                    return Outcome::Failed(why.into());
                }
                // Not in the file: what `verify` says of this job alone is the job's result.
                record.attempts = self.beside(bench, &record);
                Outcome::Record(Arc::new(record))
            }
            // The bay knows the job's files, not the server's folders.
            Err(e) => {
                let folder = format!("{}/", bench.folder.display());
                Outcome::Failed(e.phrase().with_texts(&|text| text.replace(&folder, "")).into())
            }
        }
    }
}

impl Desk {
    /// Keeps a result beside its job, and logs it first where it says something new or is not in the log yet:
    /// nobody sees a verdict that could still be left out.
    fn keep(&self, bench: &Bench, record: &JobRecord) -> Result<(), Phrase> {
        let Ok(json) = record.to_json() else { return Ok(()) };
        let file = bench.folder.join(RESULT);
        if let Some(log) = &self.log {
            let new = std::fs::read(&file).ok().as_ref() != Some(&json);
            log.keep(record, &json, new).map_err(|e| phrase!("page-trouble-not-logged", why = e.to_string()))?;
        }
        // The list's verdict; what can't be kept is measured again when the job is opened.
        let _ = write_durably(&file, &json);
        Ok(())
    }

    /// Whether anything moved since the attempts before.
    fn beside(&self, bench: &Bench, record: &JobRecord) -> Vec<AttemptRecord> {
        if record.context.attempt.is_none_or(|n| n < 2) {
            return Vec::new();
        }
        let name = bench.folder.file_name().and_then(|n| n.to_str()).unwrap_or_default();
        let earlier = series::earlier(&self.shelf, name);
        if earlier.is_empty() {
            return Vec::new();
        }
        attempts_beside(&bench.folder, record, &earlier, &self.options, &self.memory)
    }
}
