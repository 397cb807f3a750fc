//! A camera on a tripod that watches a stand being moved: how often noise is
//! taken for a move and a creeping stand for one at rest, by sampled corners;
//! and rendered photos through the command line.

#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

mod rendered;
mod sampled;
