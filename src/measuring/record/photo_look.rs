//! The record of one photo looked at on its own (`photo-look/1`), before there
//! is a measurement: what it shows, what it misses, whether to take it again.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::FindingRecord;

/// One photo. Positions lie in the upright picture, px, pixel centres at whole
/// numbers.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PhotoLook {
    /// Always `photo-look/1`.
    pub format: String,
    /// Path as the job names it.
    pub file: String,
    /// SHA-256 of the bytes, lower-case hex.
    pub sha256: String,
    /// Width and height of the upright picture.
    pub upright_px: [f64; 2],
    /// Median blur of its markers, px.
    pub blur_px: f64,
    /// When it was taken, RFC 3339, where the photo says so with its offset.
    pub taken: Option<String>,
    /// The camera file that it will be measured with; null where none fits.
    pub camera: Option<String>,
    /// Markers of the kit that were found.
    pub seen: Vec<LookedMarker>,
    /// Markers of carriers that are in the picture which were not found although
    /// they face the camera and are large enough. A lamp or a hand may cover them.
    pub missing: Vec<LookedMarker>,
    /// Every carrier of the kit.
    pub carriers: Vec<LookedCarrier>,
    /// What is wrong with the photo itself, worst first.
    pub remarks: Vec<FindingRecord>,
}

/// A marker in the upright picture.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LookedMarker {
    /// Code number.
    pub id: u32,
    /// The carrier that bears it.
    pub carrier: String,
    /// Corners in the marker's own order.
    pub corners_px: [[f64; 2]; 4],
}

/// How much of a carrier a photo shows.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct LookedCarrier {
    /// Its name.
    pub name: String,
    /// Its role.
    pub role: String,
    /// Markers found.
    pub seen: usize,
    /// Markers on it, whichever way they face.
    pub of: usize,
}

impl PhotoLook {
    /// Whether the photo shows a target and at least one thing more: what it
    /// takes to tie the stand to the vehicle.
    pub fn ties_the_stand(&self) -> bool {
        let shows = |c: &&LookedCarrier| c.seen > 0;
        self.carriers.iter().filter(shows).any(|c| c.role == "target") && self.carriers.iter().filter(shows).count() > 1
    }
}
