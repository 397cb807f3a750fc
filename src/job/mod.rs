//! The work on a job: verify one (later: plan, audit, trends).

mod answers;
mod assign;
mod convert;
mod look;
mod outline;
mod photo_markers;
mod verify;

pub use photo_markers::{FoundMarker, PhotoMarkers, photo_markers};
pub use verify::{Options, verify};

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
}
