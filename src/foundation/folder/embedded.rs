//! The models that the program carries, by kind and name.

use super::kind::Kind;

/// Kind, name and text of each.
pub(super) fn carried() -> impl Iterator<Item = (Kind, &'static str, &'static str)> {
    let of = |kind: Kind, files: &'static [(&'static str, &'static str)]| {
        files.iter().map(move |(name, text)| (kind, *name, *text))
    };
    of(Kind::Setup, &baywitness_models::SETUPS)
        .chain(of(Kind::Kit, &baywitness_models::KITS))
        .chain(of(Kind::Camera, &baywitness_models::CAMERAS))
        .chain(of(Kind::Board, &baywitness_models::BOARDS))
}
