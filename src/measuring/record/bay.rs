//! The record of a bay check (`bay/1`).

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::verdict::Verdict;
use crate::words::Phrase;

/// How level and flat a floor is. x forward from the rear axle, y left, mm;
/// heights over the plane of the wheels' contact points.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct BayRecord {
    /// Always `bay/1`.
    pub format: String,
    /// The kit's name.
    #[serde(alias = "rig")]
    pub kit: String,
    /// The camera's name.
    pub camera: String,
    /// Whether heights refer to the wheels; else to the sheets' own plane.
    pub against_wheels: bool,
    /// Whether the hub height was typed; else the sheets nearest to the wheels count as zero.
    pub hub_height_typed: bool,
    /// Rise of the sheets' best plane to the front and to the left, degrees.
    pub slope_deg: [f64; 2],
    /// How far one wheel is off the plane of the others, as half of the twist.
    pub wheel_twist_mm: Option<f64>,
    /// The sheets.
    pub sheets: Vec<BaySheet>,
    /// Figures against the set-up sheet's limits.
    pub limits: Vec<BayLimit>,
    /// The photos.
    pub photos: Vec<BayPhoto>,
    /// The nose before the rear axle, where it was typed.
    pub nose_mm: Option<f64>,
}

/// One floor sheet.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct BaySheet {
    /// Its name in the kit.
    pub name: String,
    /// x, y.
    pub position_mm: [f64; 2],
    /// Height.
    pub height_mm: f64,
    /// Half its 95 % interval.
    pub expanded_uncertainty_mm: f64,
    /// Height over the sheets' best plane.
    pub off_plane_mm: f64,
    /// Its own rise to the front and to the left.
    pub rise_deg: [f64; 2],
}

/// A figure with its limit.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct BayLimit {
    /// What it is.
    pub what: String,
    /// The same by key, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub what_phrase: Option<Phrase>,
    /// deg, mm/m or mm.
    pub unit: String,
    /// The figure.
    pub value: f64,
    /// Half its 95 % interval.
    pub expanded_uncertainty: f64,
    /// The set-up sheet's limit, if it has one.
    pub limit: Option<f64>,
    /// Whether the limit is an upper one.
    pub at_most: bool,
    /// The verdict, guarded by the expanded uncertainty; null without a limit.
    pub verdict: Option<Verdict>,
}

/// One photo of a bay check.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct BayPhoto {
    /// Its path.
    pub file: String,
    /// SHA-256, lower-case hex.
    pub sha256: String,
    /// Root mean square residual, px; null where it was not joined.
    pub rms_px: Option<f64>,
    /// Markers found.
    pub markers: usize,
}
