//! The models that the program carries. A new file in `models/` gets a line here.

use super::models::Kind;

/// Kind, name and text of each.
pub(super) const EMBEDDED: [(Kind, &str, &str); 3] = [
    (Kind::Setup, "demo-front-radar", include_str!("../../models/setups/demo-front-radar.toml")),
    (Kind::Rig, "demo-bay", include_str!("../../models/rigs/demo-bay.toml")),
    (Kind::Camera, "demo-phone", include_str!("../../models/cameras/demo-phone.toml")),
];
