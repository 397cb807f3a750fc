//! The work on a job: its photos and files to a verdict record, what photos will
//! be worth before they are taken, a bay's floor.

mod answers;
mod assign;
mod bay;
mod compare;
mod context;
mod convert;
mod doubles;
mod doubts;
mod glance;
mod look;
mod moves;
mod opened;
mod outline;
mod photo_look;
mod photo_markers;
mod photo_memory;
mod plan;
mod private;
mod ride_height;
mod series;
mod setup_check;
mod verify;

pub use bay::{BayWanted, check_bay};
pub use compare::compare;
pub use doubles::Doubles;
pub use glance::{Glance, glance, glance_at};
pub use photo_markers::{FoundMarker, PhotoMarkers, photo_markers};
pub use photo_memory::PhotoMemory;
pub use plan::{PlanOptions, Reach, Wanted, plan};
pub use private::reveal_private;
pub use setup_check::setup_check;
pub use verify::{Options, attempts_beside, verify, verify_all, verify_and, verify_watching};

/// Why a job could not be verified at all: an input that cannot be read.
/// What the photos can't decide is no error but a verdict.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// A job, set-up, kit or camera file.
    #[error(transparent)]
    Input(#[from] crate::input::Error),
    /// A photo that cannot be decoded.
    #[error(transparent)]
    Photo(#[from] crate::photo::Error),
    /// The program itself failed.
    #[error("the program failed on the job {}: please report it, with the job if that is possible", .0.display())]
    Fault(std::path::PathBuf),
    /// Photos of a bay that show no floor.
    #[error("{}", .0.say(crate::words::Language::English))]
    Bay(crate::words::Phrase),
}

impl Error {
    /// What is wrong and what to do, in a language.
    pub fn say(&self, language: crate::words::Language) -> String {
        match self {
            Error::Input(e) => e.say(language),
            Error::Photo(e) => e.say(language),
            Error::Fault(path) => crate::words::phrase!("doors-fault-of-the-program", job = path.display().to_string()).say(language),
            Error::Bay(phrase) => phrase.say(language),
        }
    }
}
