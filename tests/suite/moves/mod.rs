//! A stand that is moved after its first verdict and photographed once more:
//! sampled truth for what is stated of every position and every move, flaws
//! planted between moves, and rendered jobs.

#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

mod holds;
mod planted;
mod predicted;
mod rendered;
mod sampler;
