//! The work on a job: verify one (later: plan, audit, trends).

mod answers;
mod assign;
pub mod audit;
mod bay;
mod compare;
mod convert;
mod doubles;
mod doubts;
mod due;
mod look;
mod opened;
mod outline;
mod photo_look;
mod photo_markers;
mod photo_memory;
mod plan;
mod private;
mod redact;
mod remeasure;
mod ride_height;
mod seal;
mod series;
mod setup_check;
mod verify;

pub use bay::{BayWanted, check_bay};
pub use compare::compare;
pub use due::{Due, due};
pub use photo_markers::{FoundMarker, PhotoMarkers, photo_markers};
pub use photo_memory::PhotoMemory;
pub use plan::{PlanOptions, Reach, Wanted, plan};
pub use private::reveal_private;
pub use redact::{Area, RedactError, redact};
pub use remeasure::{AGREE_U, RemeasureError, Remeasured, differences, remeasure};
pub use seal::{GatherError, gather};
pub use setup_check::setup_check;
pub use verify::{Options, attempts_beside, verify, verify_all, verify_watching};

/// The result in an evidence folder's payload.
const RESULT: &str = "result.json";
/// Most folders above a job from which sealed files are taken.
const MOST_UP: usize = 8;

/// Where a job lies in an evidence folder's payload whose files come from up to
/// `up` folders above it: deep enough that they keep their place.
fn sealed_job(up: usize) -> String {
    format!("{}job", "at/".repeat(up.saturating_sub(1)))
}

/// Where the job of an evidence folder's payload lies; none where there is none.
fn find_sealed_job(payload: &std::path::Path) -> Option<String> {
    (0..=MOST_UP).map(sealed_job).find(|job| payload.join(job).join("job.toml").is_file())
}

/// Why a job could not be verified at all: an input that cannot be read.
/// What the photos can't decide is no error but a verdict.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// A job, set-up, rig or camera file.
    #[error(transparent)]
    Input(#[from] crate::input::Error),
    /// A photo that cannot be decoded.
    #[error(transparent)]
    Photo(#[from] crate::photo::Error),
    /// The program itself failed.
    #[error("the program failed on the job {}: please report it, with the job if that is possible", .0.display())]
    Fault(std::path::PathBuf),
    /// Photos of a bay that show no floor.
    #[error("cannot measure the floor: {0}")]
    Bay(String),
}
