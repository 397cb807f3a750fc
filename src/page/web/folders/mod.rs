//! The job folders on the disk: found, read, changed, filled with what is sent.

mod beside;
pub(super) mod edit;
pub(super) mod intake;
mod library;
pub(super) mod series;
mod shelf;
mod upload;

pub(super) use edit::is_after;
pub(super) use intake::Kept;
pub(super) use library::{Library, Shelved, folder};
pub(super) use shelf::{Entry, Lies, RESULT, Shelf};
pub(super) use upload::{Announced, Came, take, take_any};
