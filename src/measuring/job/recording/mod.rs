//! What a verification found, as the record keeps it.

mod checks;
mod context;
mod convert;
mod outline;
mod parts;
mod photos;
mod reason;

pub(super) use convert::{finding, record};
pub(super) use parts::Parts;
