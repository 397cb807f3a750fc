//! Findings: how often they cry wolf on plain jobs, and the flaws they find.

#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "a test may stop where its own support fails")]

mod bench;
#[path = "../common/mod.rs"]
mod common;
mod datums;
mod flaws;
mod photos;
mod plain;
mod readings;
mod rendered;
#[path = "../staged/mod.rs"]
mod staged;
