//! From photos of printed markers to where a calibration target stands.

pub use baywitness_foundation::{camera, folder, geom, input, marker, num, quantity, setup};

pub mod detect;
pub mod job;
pub mod measure;
pub mod photo;
pub mod pose;
pub mod record;
pub mod verdict;
