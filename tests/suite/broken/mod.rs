//! What disks, other programs and power cuts do while the program works: nothing
//! that was finished is lost, nothing half-written stands under a final name, and
//! every trouble is one clear error.

#![cfg(test)]
#![cfg(unix)]
#![allow(clippy::unwrap_used, reason = "test support: a panic is the message")]

mod bay;
mod changing;
mod disk;
mod killed;
mod names;
