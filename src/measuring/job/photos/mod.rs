//! One photo by itself: what it shows the moment it arrives, at a glance, and what is remembered of it.

mod glance;
mod markers;
mod memory;
mod on_arrival;
mod private;

pub use glance::{Glance, glance, glance_at};
pub use markers::{FoundMarker, PhotoMarkers, photo_markers};
pub use memory::PhotoMemory;
pub(super) use on_arrival::looks;
pub use private::reveal_private;
