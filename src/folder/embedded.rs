//! The models that the program carries. A new file in `models/` gets a line here.

use super::models::Kind;

/// Kind, name and text of each.
pub(super) const EMBEDDED: [(Kind, &str, &str); 7] = [
    (Kind::Setup, "demo-front-radar", include_str!("../../models/setups/demo-front-radar.toml")),
    (Kind::Rig, "demo-bay", include_str!("../../models/rigs/demo-bay.toml")),
    (Kind::Rig, "bay-a4", include_str!("../../models/rigs/bay-a4.toml")),
    (Kind::Rig, "bay-a3", include_str!("../../models/rigs/bay-a3.toml")),
    (Kind::Camera, "demo-phone", include_str!("../../models/cameras/demo-phone.toml")),
    (Kind::Board, "board-a4", include_str!("../../models/boards/board-a4.toml")),
    (Kind::Board, "board-a3", include_str!("../../models/boards/board-a3.toml")),
];
