//! The invented bay that practice takes place in.

use super::Error;
use crate::synth::Scene;

/// The texts that its scene files name.
pub(super) fn text_of(name: &str) -> Option<&'static str> {
    Some(match name {
        "camera.toml" => include_str!("../../samples/scenes/mistakes/camera.toml"),
        "../camera.toml" => include_str!("../../samples/scenes/camera.toml"),
        "setup.toml" => include_str!("../../samples/scenes/mistakes/setup.toml"),
        "setup-prerequisites.toml" => include_str!("../../samples/scenes/mistakes/setup-prerequisites.toml"),
        "setup-open.toml" => include_str!("../../samples/scenes/mistakes/setup-open.toml"),
        "setup-credentials.toml" => include_str!("../../samples/scenes/mistakes/setup-credentials.toml"),
        "setup-tight.toml" => include_str!("../../samples/scenes/mistakes/setup-tight.toml"),
        "setup-offset.toml" => include_str!("../../samples/scenes/mistakes/setup-offset.toml"),
        "../kit.toml" => include_str!("../../samples/scenes/kit.toml"),
        _ => return None,
    })
}

/// A scene of this bay; what is staged of it says that it was rendered.
pub(super) fn scene(text: &str, name: &str) -> Result<Scene, Error> {
    Ok(Scene::from_texts(text, name, &text_of)?.saying_rendered())
}

/// Nothing is wrong in it.
pub(super) const RIGHT: &str = include_str!("../../samples/scenes/mistakes/right.toml");
