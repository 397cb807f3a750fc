//! Proves from ordinary photos where a calibration target stood in front of a vehicle.
//!
//! This crate is the program: its commands, and practice on invented jobs. What
//! it does is in its parts, each a crate of its own below `src/`, named here once
//! more so that who uses the whole finds it in one place.

pub mod cli;
pub mod training;

pub use baywitness_measuring::{
    camera, credentials, detect, folder, geom, input, job, marker, measure, num, photo, pose, quantity, record, setup,
    verdict,
};
pub use baywitness_page::web;
pub use baywitness_proof::{custody, evidence, transparency, trends};
pub use baywitness_renderer::synth;
pub use baywitness_reports::{report, sheet};
#[cfg(feature = "sensor-pattern")]
pub use baywitness_sensor::pattern;
pub use baywitness_words as words;
pub use baywitness_workbench::{fit, survey};
