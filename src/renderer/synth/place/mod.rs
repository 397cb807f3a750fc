//! Where everything in a scene really is: the vehicle, the carriers and the
//! printed markers, with every hidden error in it. No pixels.

mod draw;
mod kit;
mod stand;
mod vehicle;

pub(crate) use draw::{Purpose, counter, normal, uniform};
pub use kit::{PlacedCarrier, PlacedMarker, Placement};
pub(crate) use stand::{datum_mm, floor_height_mm};
pub use vehicle::{Line, Vehicle, Wheel};
