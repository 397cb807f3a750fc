//! What is measured, and how a measured number travels: value, standard
//! uncertainty and degrees of freedom, always together.

mod combine;
mod estimate;
mod name;
mod rounding;

pub use combine::combine;
pub use estimate::Estimate;
pub use name::{Quantity, Unit};
pub use rounding::{rounded, with_uncertainty};
