//! The record of a plan (`plan/1`): where to stand and what it will be worth.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::words::Phrase;

/// A plan. Positions in the vehicle frame, mm.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PlanRecord {
    /// Always `plan/1`.
    pub format: String,
    /// The set-up sheet's name.
    pub setup: String,
    /// Its title.
    pub title: String,
    /// Who says so.
    pub source: String,
    /// The kit's name.
    #[serde(alias = "rig")]
    pub kit: String,
    /// The camera's name.
    pub camera: String,
    /// The sheet's steps; each is photographed from every station.
    pub steps: Vec<String>,
    /// Corner noise that is counted on, in units of what is expected of plainly developed photos.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub noise_ratio: Option<f64>,
    /// How far the hand is counted on to turn while rows are read, in units of what the camera file states; absent where earlier
    /// jobs say nothing of it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub turn_ratio: Option<f64>,
    /// Where to stand.
    pub stations: Vec<PlannedStation>,
    /// The checks in the sheet's order.
    pub predicted: Vec<PredictedCheck>,
    /// The fewest photos for each check, where stations were searched.
    pub least_photos: Vec<LeastPhotos>,
    /// What to change where a check can't be decided.
    pub advice: Vec<String>,
    /// The same by keys and figures, for other languages.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub advice_phrases: Vec<Phrase>,
    /// One photo after a move of the stand, where it was asked for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub follow_up: Option<PlannedFollowUp>,
    /// The bay, for drawings.
    pub bay: PlanBay,
}

/// The photo after a move that is worth most: adjusted with those of the stations, the stand as another body.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PlannedFollowUp {
    /// Where to stand.
    pub station: PlannedStation,
    /// What the checks will be worth with it, in the sheet's order.
    pub predicted: Vec<PredictedCheck>,
}

/// One station.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PlannedStation {
    /// The camera.
    pub position_mm: [f64; 3],
    /// What it looks at.
    pub look_at_mm: [f64; 3],
    /// Carriers that the photo will show.
    pub sees: Vec<String>,
    /// How many markers it will show.
    pub markers: usize,
}

/// What is predicted for one check.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PredictedCheck {
    /// Quantity's name.
    pub quantity: String,
    /// The datum of a distance.
    pub from: Option<String>,
    /// The target, where the sheet names one.
    pub target: Option<String>,
    /// The step, where the sheet names one.
    pub step: Option<String>,
    /// Its reference line in words.
    pub reference_line: String,
    /// mm or deg.
    pub unit: String,
    /// photos or reading.
    pub evidence: String,
    /// From the nominal to the nearer limit.
    pub tolerance: f64,
    /// 1 sigma; null where the photos won't determine it.
    pub standard_uncertainty: Option<f64>,
    /// Half the 95 % interval.
    pub expanded_uncertainty: Option<f64>,
    /// So far from the nominal a value may lie and still be proven.
    pub proven_within: Option<f64>,
    /// Whether any value could be proven to be within.
    pub can_decide: bool,
}

/// The fewest photos that can decide a check.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct LeastPhotos {
    /// Quantity's name.
    pub quantity: String,
    /// The datum of a distance.
    pub from: Option<String>,
    /// The target, where the sheet names one.
    pub target: Option<String>,
    /// The step, where the sheet names one.
    pub step: Option<String>,
    /// How many; null: not with as many as were tried.
    pub photos: Option<usize>,
    /// The most photos that were tried.
    pub tried: usize,
}

/// The bay of a plan.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PlanBay {
    /// Clear width, the vehicle in the middle.
    pub width_mm: f64,
    /// Clear length before the nose.
    pub ahead_mm: f64,
    /// Posts: x, y.
    pub posts_mm: Vec<[f64; 2]>,
    /// Nose before the rear axle.
    pub nose_mm: f64,
    /// The tail, negative.
    pub tail_mm: f64,
    /// Half of the vehicle's width.
    pub half_width_mm: f64,
    /// Wheelbase.
    pub wheelbase_mm: f64,
    /// The carriers where the sheet wants them.
    pub bodies: Vec<PlanBody>,
}

/// A carrier in the drawing.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PlanBody {
    /// Its name.
    pub name: String,
    /// Its role.
    pub role: String,
    /// Its origin.
    pub position_mm: [f64; 3],
    /// Direction of its x axis, left positive.
    pub heading_deg: f64,
    /// Half of the target's width; zero for others.
    pub half_width_mm: f64,
    /// Where the target is wanted, in words; empty for others.
    pub label: String,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub label_phrase: Option<Phrase>,
}

/// A set-up sheet explained and examined (`setup-check/1`).
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SetupCheckRecord {
    /// Always `setup-check/1`.
    pub format: String,
    /// The sheet's name.
    pub setup: String,
    /// Its title.
    pub title: String,
    /// Who says so.
    pub source: String,
    /// A sentence for each check, then for each waiver.
    pub words: Vec<String>,
    /// The same by key and figures, for other languages; as many.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub words_phrases: Vec<Phrase>,
    /// Quantities of a stand that are neither checked nor waived, in the trade's words.
    pub not_checked: Vec<String>,
    /// What contradicts itself.
    pub contradictions: Vec<String>,
    /// The same by key and figures, for other languages; as many.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub contradictions_phrases: Vec<Phrase>,
    /// What is unusual.
    pub questions: Vec<String>,
    /// The same by key and figures, for other languages; as many.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub questions_phrases: Vec<Phrase>,
    /// What each kit that fits the sheet can decide, the one with the fewest photos first.
    pub kits: Vec<PlanRecord>,
}
