//! The measuring behind the page: a bench for each job, what happens there, and what is kept of it.

mod bench;
mod happened;
mod logged;
mod measuring;
mod plans;
mod preview;

pub(super) use bench::{Bench, Outcome, Standing};
pub(super) use happened::Happened;
pub(super) use logged::add;
pub(super) use measuring::Desk;
pub(super) use plans::{Named, Plans};
pub(super) use preview::Previews;
