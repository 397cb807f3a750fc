//! One job at work: what is known of it, and who is told.

use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::Instant;

use tokio::sync::broadcast;

use super::happened::Happened;
use crate::job::Tripod;
use crate::record::{JobRecord, PhotoLook};
use crate::words::{Phrase, Value};

/// What a verification ended with.
#[derive(Debug, Clone)]
pub(in crate::web) enum Outcome {
    /// A record.
    Record(Arc<JobRecord>),
    /// An input that can't be read, in words.
    Failed(Value),
    /// There is no photo yet.
    NoPhotos,
}

/// What a page shows of a job's photos.
#[derive(Debug, Clone)]
pub(in crate::web) struct Standing {
    pub(in crate::web) looks: Vec<PhotoLook>,
    pub(in crate::web) outcome: Option<Outcome>,
    /// Whether a newer outcome is on its way.
    pub(in crate::web) working: bool,
    /// What the last photo of a tripod was.
    pub(in crate::web) tripod: Option<Phrase>,
}

/// One job at work.
pub(in crate::web) struct Bench {
    pub(in crate::web) folder: PathBuf,
    /// Held while the job's files are changed.
    pub(in crate::web) edit: tokio::sync::Mutex<()>,
    state: Mutex<State>,
    events: broadcast::Sender<Happened>,
}

pub(in crate::web) struct State {
    pub(in crate::web) used: Instant,
    pub(in crate::web) looks: Vec<PhotoLook>,
    pub(in crate::web) outcome: Option<Outcome>,
    /// What is known of the photos that a tripod sent, and what the last one was.
    tripod: Option<Tripod>,
    tripod_said: Option<Phrase>,
    /// Something changed since the worker last began.
    pub(in crate::web) dirty: bool,
    pub(in crate::web) working: bool,
}

impl Bench {
    pub(in crate::web) fn new(folder: &Path) -> Self {
        Bench {
            folder: folder.to_path_buf(),
            edit: tokio::sync::Mutex::new(()),
            state: Mutex::new(State {
                used: Instant::now(),
                looks: Vec::new(),
                outcome: None,
                tripod: None,
                tripod_said: None,
                dirty: false,
                working: false,
            }),
            events: broadcast::channel(64).0,
        }
    }

    pub(in crate::web) fn state(&self) -> MutexGuard<'_, State> {
        self.state.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Tells every page that shows the job.
    pub(in crate::web) fn tell(&self, happened: Happened) {
        // Nobody may be listening.
        let _ = self.events.send(happened);
    }

    /// The job's events from now on.
    pub(in crate::web) fn listen(&self) -> broadcast::Receiver<Happened> {
        self.events.subscribe()
    }

    /// What is known now.
    pub(in crate::web) fn standing(&self) -> Standing {
        let state = self.state();
        Standing {
            looks: state.looks.clone(),
            outcome: state.outcome.clone(),
            working: state.working,
            tripod: state.tripod_said.clone(),
        }
    }

    /// What is known once nothing is on its way.
    pub(in crate::web) async fn settled(&self) -> Standing {
        let mut events = self.listen();
        loop {
            let standing = self.standing();
            if !standing.working && standing.outcome.is_some() {
                return standing;
            }
            if events.recv().await == Err(broadcast::error::RecvError::Closed) {
                return self.standing();
            }
        }
    }

    /// Takes what is known of the tripod's photos, to go on with it; whoever calls holds the job's lock.
    pub(in crate::web) fn take_tripod(&self) -> Option<Tripod> {
        self.state().tripod.take()
    }

    /// Keeps it for the next photo.
    pub(in crate::web) fn keep_tripod(&self, tripod: Tripod) {
        self.state().tripod = Some(tripod);
    }

    /// What the tripod's last photo was, in one line.
    pub(in crate::web) fn set_tripod_said(&self, said: Phrase) {
        self.state().tripod_said = Some(said);
    }

    /// Whether it was never verified since the page was started.
    pub(in crate::web) fn is_new(&self) -> bool {
        let state = self.state();
        state.outcome.is_none() && !state.working
    }
}
