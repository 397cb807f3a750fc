//! Checks against general-purpose libraries, run in Python.
//!
//! The interpreter is `BAYWITNESS_PYTHON`, else `python3`. Where it lacks a
//! library the check is skipped and says so, unless `BAYWITNESS_REFERENCE` is
//! `required`: then that is a failure.

#![allow(clippy::unwrap_used, reason = "a test may stop where its own helper fails")]
#![allow(clippy::print_stdout, reason = "a skipped check says so, a comparison shows its figures")]

mod bags;
mod camera;
mod closure;
mod engines;
mod harness;
mod lens;
mod log_server;
mod pades;
mod pdf;
mod photo;
mod poses;
mod schemas;
#[cfg(feature = "sensor-pattern")]
mod sensor;
mod statistics;
#[cfg(feature = "parquet")]
mod tables;
mod transparency;
