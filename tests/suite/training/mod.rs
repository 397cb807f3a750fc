//! Practice: the gallery of mistakes and drills.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

mod drills;
mod gallery;
