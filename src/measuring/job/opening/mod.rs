//! A job's folder opened, its photos looked at and tied to cameras and bodies.

mod assign;
mod compare;
mod doubles;
mod look;
mod opened;
mod options;

pub(super) use assign::Assignment;
pub use compare::compare;
pub use doubles::Doubles;
pub(super) use look::{Looked, look, look_into};
pub(super) use opened::Opened;
pub use options::Options;
