//! Finding markers in a photo, one file per step.

mod sighting;

pub use sighting::{Sighting, Sightings};
