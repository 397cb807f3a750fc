//! What changes a job: opened, prepared, closed, tried again; each deed is noted.

pub(super) mod alignment;
pub(super) mod attempt;
pub(super) mod changes;
pub(super) mod closing;
pub(super) mod named;
pub(super) mod opening;
pub(super) mod own_sheets;
pub(super) mod paperwork;

pub(super) use changes::{Act, Change, Deed};
pub(super) use named::named;
pub(super) use own_sheets::{FROM, QUANTITIES};
pub(super) use paperwork::{Readable, instruments, readable};
