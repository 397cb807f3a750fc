//! The models that the program carries. A new file in `models/` gets a line here.

use super::models::Kind;

/// Kind, name and text of each.
pub(super) const EMBEDDED: [(Kind, &str, &str); 19] = [
    (Kind::Setup, "demo-front-radar", include_str!("../../models/setups/demo-front-radar.toml")),
    (Kind::Setup, "radar-plate", include_str!("../../models/setups/radar-plate.toml")),
    (Kind::Setup, "radar-plate-two-tilts", include_str!("../../models/setups/radar-plate-two-tilts.toml")),
    (Kind::Setup, "corner-reflector", include_str!("../../models/setups/corner-reflector.toml")),
    (Kind::Setup, "camera-board", include_str!("../../models/setups/camera-board.toml")),
    (Kind::Setup, "camera-board-ride-height", include_str!("../../models/setups/camera-board-ride-height.toml")),
    (Kind::Setup, "camera-boards-two", include_str!("../../models/setups/camera-boards-two.toml")),
    (Kind::Setup, "surround-mats", include_str!("../../models/setups/surround-mats.toml")),
    (Kind::Setup, "radar-follows-sensor", include_str!("../../models/setups/radar-follows-sensor.toml")),
    (Kind::Rig, "two-boards", include_str!("../../models/rigs/two-boards.toml")),
    (Kind::Rig, "reference", include_str!("../../models/rigs/reference.toml")),
    (Kind::Rig, "mats", include_str!("../../models/rigs/mats.toml")),
    (Kind::Rig, "demo-bay", include_str!("../../models/rigs/demo-bay.toml")),
    (Kind::Rig, "bay-a4", include_str!("../../models/rigs/bay-a4.toml")),
    (Kind::Rig, "bay-a4-arches", include_str!("../../models/rigs/bay-a4-arches.toml")),
    (Kind::Rig, "bay-a3", include_str!("../../models/rigs/bay-a3.toml")),
    (Kind::Camera, "demo-phone", include_str!("../../models/cameras/demo-phone.toml")),
    (Kind::Board, "board-a4", include_str!("../../models/boards/board-a4.toml")),
    (Kind::Board, "board-a3", include_str!("../../models/boards/board-a3.toml")),
];
