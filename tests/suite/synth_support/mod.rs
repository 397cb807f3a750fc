//! Scenes for tests of the bay renderer.
#![allow(dead_code, reason = "each test file uses its own part")]
#![allow(clippy::unwrap_used, reason = "a test stops where its own files are unreadable")]

use baywitness::camera::{Lens, LensModel, PerPhoto, Profile, ReadOut};
use baywitness::marker::Kit;
use baywitness::setup::Setup;
use baywitness::synth::{PhotoSpec, Processing, RoomSpec, Scene};

/// The sample kit.
pub(crate) fn kit() -> Kit {
    Kit::read("samples/scenes/kit.toml".as_ref()).unwrap()
}

/// The sample set-up sheet.
pub(crate) fn setup() -> Setup {
    Setup::read("samples/scenes/setup.toml".as_ref()).unwrap()
}

/// A camera without variation from photo to photo.
pub(crate) fn camera(distortion: [f64; 5]) -> Profile {
    Profile {
        name: "test".to_owned(),
        lens: Lens {
            model: LensModel::BrownConrady,
            focal_px: [1500.0, 1500.5],
            centre_px: [801.7, 597.2],
            distortion,
        },
        image_size_px: [1600, 1200],
        u_noise_px: None,
        covariance: None,
        per_photo: PerPhoto { u_focal_relative: 0.0, u_centre_px: 0.0 },
        read_out: ReadOut::default(),
        exif: None,
    }
}

/// A bay without clutter, lamps or hidden errors, photographed by `camera` from
/// one place: the light is the same everywhere on a face.
pub(crate) fn bare(camera: Profile, eye_mm: [f64; 3], look_at_mm: [f64; 3]) -> Scene {
    let mut scene = Scene::new(kit(), setup(), camera);
    scene.spec.kit_errors.exact = true;
    scene.spec.clutter = Some(Vec::new());
    scene.spec.lamp = Some(Vec::new());
    scene.spec.room = RoomSpec { ahead_mm: 30_000.0, ..RoomSpec::default() };
    scene.spec.processing = Processing::none();
    scene.spec.photo = Some(vec![PhotoSpec::new("a.jpg", eye_mm, look_at_mm)]);
    scene
}

/// The sample scene of a name.
pub(crate) fn sample(name: &str) -> Scene {
    Scene::read(format!("samples/scenes/{name}.toml").as_ref()).unwrap()
}
