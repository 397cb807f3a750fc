//! The job folder: `job.toml` (`job/1`) and where the files that it names are found.

mod job_file;

pub use job_file::{Attachment, Calibration, JobFile, Reading, Vehicle};
