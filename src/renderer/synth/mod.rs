//! The bay renderer: photos of an invented bay with exact truth.
//!
//! A [`Scene`] says what stands where (and what is secretly wrong), which
//! camera looks from where, and how it develops its pictures. Every pixel's
//! own distorted ray is traced; markers are covered exactly, other edges by
//! many rays. The truth is computed by formulas of this room alone: it
//! imports nothing that it tests.
//!
//! ```no_run
//! use baywitness_renderer::synth::Scene;
//! # fn main() -> Result<(), Box<dyn std::error::Error>> {
//! let scene = Scene::read("scene.toml".as_ref())?;
//! let corners = scene.corners(0); // exact, no pixels
//! let photo = scene.with_scale(0.25).render_photo(0); // quick, a quarter of the size
//! # Ok(())
//! # }
//! ```

mod build;
mod develop;
mod error;
mod photo;
mod place;
mod scene;
mod stage;
mod trace;
mod truth;
mod turning;
mod view;
mod waves;

pub use develop::Picture;
pub use error::Error;
pub use photo::LinearPicture;
pub use place::{Line, PlacedCarrier, PlacedMarker, Placement, Vehicle, Wheel};
pub use scene::{
    CarrierMistake, ClutterKind, ClutterSpec, Denoise, FloorSpec, Insides, InsidesSpec, KitErrors, LampSpec,
    OpeningSpec, PhotoSpec, Preset, Processing, ProcessingChange, RoomSpec, Scene, SceneSpec, StandError, StandSpec,
    Stray, Strength, TrueLens, VehicleSpec,
};
pub use truth::{CarrierTruth, PhotoTruth, Quantities, SeenMarker, Truth, measured};
pub use turning::Turning;
pub use view::View;
pub use waves::Waves;
