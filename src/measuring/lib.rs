//! From photos of printed markers to where a calibration target stands: each
//! quantity with its uncertainty, decided against a set-up sheet. No page, no
//! PDF, no command line, no network: bytes and files in, a record out.
//!
//! # The front
//! | to | call | gives |
//! |---|---|---|
//! | verify a job's folder | [`verify_folder`] | a [`JobRecord`]: verdict, checks, budgets, findings |
//! | find markers in a grey picture | [`find_markers`] | [`Sightings`]: corners in px, their covariance |
//! | adjust photos of a kit | [`adjust`] | a [`Scene`]: poses of photos and carriers, joint covariance |
//!
//! ```
//! use baywitness_measuring::{Dictionary, Luma, find_markers, verify_folder};
//!
//! let job = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../samples/good");
//! let record = verify_folder(&job)?;
//! for check in &record.checks {
//!     println!("{}: {:?} {:?} {:?}", check.quantity, check.value, check.standard_uncertainty, check.verdict);
//! }
//! let grey = Luma::new(640, 480, vec![128; 640 * 480]).expect("as many pixels as width times height");
//! assert!(find_markers(&grey, Dictionary::tag36h11()).markers.is_empty());
//! # Ok::<(), baywitness_measuring::job::Error>(())
//! ```
//!
//! # Below the front
//! The rooms, in the order in which data flows: [`photo`] → [`detect`] → [`pose`] →
//! [`measure`] → [`verdict`] → [`record`]; [`job`] leads a job through them, and
//! [`credentials`] says what cameras signed about the photos' bytes. Frames,
//! numbers and files are [`geom`], [`num`], [`quantity`], [`input`], [`camera`],
//! [`marker`], [`setup`] and [`folder`], of the foundation, which states frames, units,
//! pixel origin and corner order.

use std::path::Path;

pub use baywitness_foundation::{camera, folder, geom, input, marker, num, quantity, setup};
use baywitness_photogrammetry::cores;
pub use baywitness_photogrammetry::{detect, measure, photo, pose};
pub use baywitness_words as words;

pub mod credentials;
pub mod job;
pub mod record;
pub mod verdict;

pub use detect::{Sighting, Sightings, find_markers};
pub use marker::Dictionary;
pub use photo::Luma;
pub use pose::{PhotoView, Problem, Scene, adjust};
pub use record::JobRecord;

/// Verifies the job in a folder (`job.toml` and what it names; kits, sheets and
/// cameras by name are those that the program carries).
///
/// # Errors
/// An input that cannot be read or decoded. What the photos can't decide is no
/// error but a verdict of the record.
pub fn verify_folder(folder: &Path) -> Result<JobRecord, job::Error> {
    job::verify(folder, &job::Options::new(folder::Models::embedded()))
}
