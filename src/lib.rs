//! Proves from ordinary photos where a calibration target stood before a vehicle.
//!
//! # Conventions
//! - Lengths in millimetres, angles in degrees at the borders and radians
//!   inside (`_rad`), pixels on the stored grid with the centre of the
//!   top-left pixel at (0, 0), u right, v down.
//! - Vehicle frame: ISO 8855, see [`geom::Vehicle`].
//! - `a_from_b` maps coordinates of `b` to `a`; [`geom::Pose`] checks the chain.
//! - Marker corners: top-left, top-right, bottom-right, bottom-left of the upright code.
//! - Uncertainties are standard uncertainties (1 sigma, `u_`) unless called expanded.

pub mod camera;
pub mod cli;
pub mod detect;
pub mod evidence;
pub mod fit;
pub mod folder;
pub mod geom;
pub mod input;
pub mod job;
pub mod marker;
pub mod measure;
pub mod num;
pub mod photo;
pub mod pose;
pub mod quantity;
pub mod record;
pub mod report;
pub mod setup;
pub mod sheet;
pub mod survey;
pub mod synth;
pub mod training;
pub mod trends;
pub(crate) mod typeface;
pub mod verdict;
pub mod web;
