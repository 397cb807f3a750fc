//! The job folder: `job.toml` (`job/1`) and where the files that it names are found.

mod durable;
mod embedded;
mod file;
mod job_file;
mod job_folder;
mod keep_comments;
mod kind;
mod models;
mod newest;
mod open;
mod paths;
mod pictures;
pub mod vin;
mod write;

pub use durable::{make_folder_durably, move_durably, sync_folder, write_as_named, write_durably, write_private};
pub use file::{CARD_IDS, INSTRUMENTS, MOST_MOVES};
pub use job_file::{Attachment, Calibration, JobFile, MoveEntry, Phase, PhotoEntry, Reading, Vehicle};
pub use job_folder::{AttachedFile, JobFolder, MOST_ATTACHMENT, PhotoFile};
pub use kind::Kind;
pub use models::{Candidate, InputFile, Models, Origin, candidate_cameras, is_embedded};
pub use newest::{KeptNewest, NewPhoto, Stands, is_known, is_of_tripod, keep_newest, kept_last, known_digits, sweep};
pub use pictures::{PHOTOS, Unlisted, is_picture};
