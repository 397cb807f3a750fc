//! What the markers of a photo have in common.

use super::profile::{Profile, SHAPE};

/// Parameters of a photo: edge profile, lens, sharpening.
pub(super) const SHARED: usize = SHAPE + LENS + 1;
/// Among them: how strongly the photo is sharpened.
pub(super) const SHARPENING: usize = SHAPE + LENS;
/// Radial terms that bend straight lines within a marker.
pub(super) const LENS: usize = 3;

/// What a photo's markers have in common.
#[derive(Debug, Clone)]
pub(super) struct Common {
    pub(super) profile: Profile,
    pub(super) lens: [f64; LENS],
    /// How strongly it is sharpened: 0 not at all.
    pub(super) sharpening: f64,
    /// Whether sharpening is looked at, which takes time.
    pub(super) sharpened: bool,
}
