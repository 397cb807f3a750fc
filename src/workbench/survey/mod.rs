//! Where the markers of a kit really sit on their carriers.
//!
//! Every marker is adjusted as a body of its own (six unknowns and its size)
//! together with the photos' poses, focal lengths, centres and edge offsets
//! and the camera's calibration: the adjustment of `pose`, with a kit taken
//! apart. That fixes the markers against each other. It leaves two things
//! that no photo shows, and both are attached afterwards:
//!
//! - *Scale.* Photos know it from the markers' stated sizes. Measured lengths
//!   replace these: the common factor of all sizes is then left free.
//! - *The carrier's frame.* Hub datum and aim point bear no marker; where they
//!   are follows from the kit file alone. The found shape is laid on the
//!   file's by the best rigid fit (no scale: that is measured), which is the
//!   S-transformation of Baarda (1973) onto inner constraints over the marker
//!   corners. What the file's errors do to that fit is added to the
//!   covariance: a survey does not find a hub datum.
//!
//! The order of the files is the order of the work: `look`, `apart`, `length`,
//! `datum`, `halves`, `compose`; `words`, `picture` and `page` tell it. `seating`
//! measures how a plate sits when it is clamped on again, `recheck` and `chart`
//! whether a fixed reference is still where it was.

mod advice;
mod apart;
mod chart;
mod compose;
mod datum;
mod error;
mod halves;
mod length;
mod look;
mod page;
mod picture;
mod recheck;
mod rigid;
mod seating;
mod shape;
mod surveyed;
mod words;

pub use chart::recheck_page;
pub use compose::survey;
pub use error::Error;
pub use length::{Length, LengthCheck};
pub use look::{SurveyPhoto, look};
pub use page::page;
pub use recheck::{Limits, Recheck, recheck, recheck_words};
pub use seating::{RunOut, Seated, Seating, seated_from_photos, seated_from_record, seating};
pub use surveyed::{Advice, CarrierSurvey, Halves, LeftOut, MarkerSurvey, Options, PhotoSurvey, Survey};
pub use words::words;
