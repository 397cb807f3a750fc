//! The work on a job: its photos and files to a verdict record, what photos will
//! be worth before they are taken, a bay's floor.
//!
//! In the order in which they stand on each other: `opening` (files and photos),
//! `asking` (what is measured), `plan` (what photos will be worth), `moving` (a stand
//! that was moved), `recording` (the record), `tripod` and `photos` (one photo by
//! itself), `verifying` (all of it), `bay` (a bay's floor).

mod asking;
mod bay;
mod error;
mod moving;
mod opening;
mod photos;
mod plan;
mod recording;
mod tripod;
mod verifying;

pub use bay::{BayWanted, check_bay};
pub use error::Error;
pub use opening::{Doubles, Options, compare};
pub use photos::{FoundMarker, Glance, PhotoMarkers, PhotoMemory, glance, glance_at, photo_markers, reveal_private};
pub use plan::{PlanOptions, Reach, Wanted, plan, setup_check};
pub use tripod::{Between, FALSE_MOTION, Frame, Seen, Tripod, Untold};
pub use verifying::{attempts_beside, verify, verify_all, verify_and, verify_watching};
