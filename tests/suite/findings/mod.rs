//! Findings: how often they cry wolf on plain jobs, and the flaws they find.

#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "a test may stop where its own support fails")]

mod acceptance;
pub(crate) mod bench;
pub(crate) mod campaign;
mod datums;
mod defect;
mod light;
mod other_phone;
mod phases;
mod photos;
mod places;
mod plain;
mod plain_rendered;
pub(crate) mod planted;
mod readings;
mod rendered;
mod sizes;
mod trust;
mod vehicle;
