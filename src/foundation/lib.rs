//! What everything else stands on: frames as types, numbers with uncertainty,
//! and the files that a job names (camera, marker kit, set-up sheet, job).
//!
//! # Conventions
//! - Lengths in millimetres, angles in degrees at the borders and radians
//!   inside (`_rad`), pixels on the stored grid with the centre of the
//!   top-left pixel at (0, 0), u right, v down.
//! - Vehicle frame: ISO 8855, see [`geom::Vehicle`].
//! - `a_from_b` maps coordinates of `b` to `a`; [`geom::Pose`] checks the chain.
//! - Marker corners: top-left, top-right, bottom-right, bottom-left of the upright code.
//! - Uncertainties are standard uncertainties (1 sigma, `u_`) unless called expanded.

pub(crate) use baywitness_words as words;

pub mod camera;
pub mod folder;
pub mod geom;
pub mod input;
pub mod marker;
pub mod num;
pub mod quantity;
pub mod rendered;
pub mod setup;
