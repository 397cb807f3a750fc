//! Jobs of the sample scene's bay, rendered with a smaller camera so that a
//! test takes a second, not ten.
#![allow(dead_code, reason = "each test file uses its own part")]
#![allow(clippy::unwrap_used, reason = "test support: a panic is the message")]

use std::path::{Path, PathBuf};

use baywitness::camera::Profile;
use baywitness::synth::{LampSpec, Scene, StandError};

/// The scene that the good sample is made from, with nothing wrong at the
/// stand, nothing standing about, one lamp and a camera of `scale` times its size.
pub(crate) fn scene(scale: f64) -> Scene {
    let file: PathBuf = [env!("CARGO_MANIFEST_DIR"), "samples", "scenes", "good.toml"].iter().collect();
    let mut scene = Scene::read(&file).unwrap();
    scene.spec.stand.error = StandError::default();
    scene.spec.clutter = Some(Vec::new());
    scene.spec.lamp = Some(vec![LampSpec { at_mm: [4500.0, 0.0, 3400.0], size_mm: [1300.0, 260.0], colour: [1.0; 3] }]);
    scene.camera = smaller(&scene.camera, scale);
    scene
}

/// The same lens before a coarser grid: pixel centres are whole numbers.
fn smaller(camera: &Profile, scale: f64) -> Profile {
    let mut camera = camera.clone();
    camera.image_size_px = camera.image_size_px.map(|n| (f64::from(n) * scale).round() as u32);
    camera.lens.focal_px = camera.lens.focal_px.map(|f| f * scale);
    camera.lens.centre_px = camera.lens.centre_px.map(|c| (c + 0.5) * scale - 0.5);
    camera.per_photo.u_centre_px *= scale;
    camera.covariance = None;
    camera
}

/// Copies a job folder without its photos, which are copied too where `photos`.
pub(crate) fn copy(from: &Path, to: &Path, photos: bool) {
    std::fs::create_dir_all(to.join("photos")).unwrap();
    for file in std::fs::read_dir(from).unwrap().map(|e| e.unwrap()).filter(|e| e.path().is_file()) {
        std::fs::copy(file.path(), to.join(file.file_name())).unwrap();
    }
    for photo in std::fs::read_dir(from.join("photos")).unwrap().filter(|_| photos) {
        let photo = photo.unwrap();
        std::fs::copy(photo.path(), to.join("photos").join(photo.file_name())).unwrap();
    }
}
