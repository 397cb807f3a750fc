//! What is true in a scene: quantities by direct formulas, and every marker's
//! corners in every photo.

mod corners;
mod quantities;
mod record;

pub use corners::SeenMarker;
pub(crate) use corners::seen;
pub use quantities::{Quantities, measured};
pub use record::{CarrierTruth, PhotoTruth, Truth};
pub(crate) use record::{Shown, truth};
