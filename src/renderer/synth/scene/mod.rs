//! A scene: its file's keys and the kit, sheet and camera that it names.

mod bay_spec;
mod check;
mod file;
mod insides;
mod insides_spec;
mod photo_spec;
mod presets;
mod spec;
mod stand_error;
mod vehicle_spec;

pub use bay_spec::{ClutterKind, ClutterSpec, FloorSpec, LampSpec, OpeningSpec, RoomSpec};
pub use insides::Insides;
pub use insides_spec::{Denoise, InsidesSpec, Preset, Strength};
pub use photo_spec::{PhotoSpec, Processing, ProcessingChange};
pub use spec::{CarrierMistake, KitErrors, SceneSpec, StandSpec, Stray, TrueLens};
pub use stand_error::StandError;
pub use vehicle_spec::VehicleSpec;

use std::path::PathBuf;

use crate::camera::Profile;
use crate::marker::Kit;
use crate::setup::Setup;

/// A bay that can be photographed. All fields may be changed before a photo is taken.
#[derive(Debug, Clone, PartialEq)]
pub struct Scene {
    /// The scene file's keys.
    pub spec: SceneSpec,
    /// The kit, as its file states it.
    pub kit: Kit,
    /// The set-up sheet.
    pub setup: Setup,
    /// The camera file.
    pub camera: Profile,
    /// Size of the pictures against the camera's own grid, for quick tests.
    pub scale: f64,
    /// Folder of the scene file, from which attachments are copied.
    pub folder: Option<PathBuf>,
}

impl Scene {
    /// A scene with every default.
    pub fn new(kit: Kit, setup: Setup, camera: Profile) -> Self {
        Scene { spec: SceneSpec::default(), kit, setup, camera, scale: 1.0, folder: None }
    }

    /// The same scene with another seed: every hidden error is drawn anew.
    #[must_use]
    pub fn with_seed(mut self, seed: u64) -> Self {
        self.spec.seed = seed;
        self
    }

    /// The same scene with pictures of another size.
    #[must_use]
    pub fn with_scale(mut self, scale: f64) -> Self {
        self.scale = scale;
        self
    }

    /// The photos: the scene's own, else two from the front quarters.
    pub fn photos(&self) -> Vec<PhotoSpec> {
        self.spec.photo.clone().unwrap_or_else(|| {
            let nose = self.spec.vehicle.nose_mm[0];
            let from = |file: &str, side: f64| {
                PhotoSpec::new(file, [nose + 3700.0, 2750.0 * side, 1650.0], [nose + 150.0, 180.0 * side, 560.0])
            };
            vec![from("a.jpg", 1.0), from("b.jpg", -1.0)]
        })
    }
}
