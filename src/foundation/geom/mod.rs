//! Frames as types, poses, planes and angles. No input or output, `f64` only.
//!
//! A pose is named after what it does: `target_from_camera` maps a point given
//! in the camera frame to the target frame, so that names chain the way the
//! types do: `a_from_b * b_from_c` is `a_from_c`.

mod angle;
mod frame;
mod plane;
mod pose;

pub use angle::{Attitude, deg, rad};
pub use frame::{Camera, Carrier, Frame, Marker, Vehicle, World};
pub use plane::Plane;
pub use pose::Pose;
