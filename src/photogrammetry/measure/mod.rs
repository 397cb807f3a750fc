//! From poses to the quantities of the set-up sheet, each with its
//! uncertainty and where that comes from.
//!
//! All inputs with an uncertainty stand in one vector (`inputs`): the steps of
//! every carrier, how each sits on what it marks, typed sizes, datum offsets.
//! `geometry` turns such a vector into the vehicle's frame, `definitions` into
//! quantities; `measure` differentiates them (GUM 5.1) and lets used readings
//! improve the vector.

mod definitions;
mod geometry;
mod inputs;
mod solve;
mod undetermined;

pub use definitions::Ask;
pub use inputs::{Facts, Origin};
pub use solve::{Answer, CarrierPose, Measurement, UsedReading, differences, gradients, measure};
pub use undetermined::Undetermined;
