//! The record of one verified job.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::context::{Context, SheetRecord, Tool};
use super::doubt::{DetectableRecord, SensitivityRecord};
use super::inputs::{AttachmentRecord, InputRecord};
use super::moves::{FirstRecord, PositionRecord};
use crate::credentials::Credentials;
use crate::verdict::{Level, Verdict};
use crate::words::Phrase;

/// Everything that one verification found, and from which inputs (`result/1`).
/// Lengths in mm, angles in degrees, pixels on the stored grid; poses in the
/// vehicle frame.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct JobRecord {
    /// Always `result/1`.
    pub format: String,
    /// The program that measured.
    pub tool: Tool,
    /// The job's number.
    pub job: String,
    /// What the job was about.
    pub context: Context,
    /// The sheet's own words: title, source, waivers.
    pub sheet: SheetRecord,
    /// Every file that was read, with its digest.
    pub inputs: Vec<InputRecord>,
    /// The job's verdict.
    pub verdict: Verdict,
    /// One sentence that says why, for people.
    pub reason: String,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reason_phrase: Option<Phrase>,
    /// The sheet's reference line.
    pub reference_line: String,
    /// The checks in the sheet's order.
    pub checks: Vec<CheckRecord>,
    /// The same checks without the readings that were used, where any was.
    pub checks_without_readings: Option<Vec<CheckRecord>>,
    /// Every quantity that the photos determine.
    pub measured: BTreeMap<String, MeasuredRecord>,
    /// Where each carrier was.
    pub carriers: Vec<CarrierRecord>,
    /// Each photo and what was seen in it.
    pub photos: Vec<PhotoRecord>,
    /// Readings against the photos.
    pub readings: Vec<ReadingRecord>,
    /// Kept files.
    pub attachments: Vec<AttachmentRecord>,
    /// What is wrong or worth knowing, worst first.
    pub findings: Vec<FindingRecord>,
    /// What these photos would have shown: the size of each fault that is found with probability .95.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub detectable: Vec<DetectableRecord>,
    /// What the checks hang on, the largest change of each.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub sensitivity: Vec<SensitivityRecord>,
    /// How far stand and vehicle moved between before and after the calibration; empty where not photographed.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub phases: Vec<MovedRecord>,
    /// The body's height and pitch from arch readings, where all four were wanted and read.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ride_height: Option<RideHeightRecord>,
    /// Where one more photo would decide what is not proven, where any would.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub next_photo: Option<NextPhotoRecord>,
    /// Where the stand stood, the first position first, where it was photographed before and after moves.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub positions: Vec<PositionRecord>,
    /// The one thing to do first, where there is anything to do at the stand.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub first: Option<FirstRecord>,
    /// The attempts of the series that were verified together, this one included.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub attempts: Vec<AttemptRecord>,
}

impl JobRecord {
    /// Each photo's content credentials, in the photos' order.
    pub fn credentials(&self) -> impl Iterator<Item = Option<&Credentials>> {
        self.photos.iter().map(|photo| photo.credentials.as_ref())
    }

    /// Whether no camera took its photos, as the job or any of them says.
    pub fn is_rendered(&self) -> bool {
        self.context.rendered || self.photos.iter().any(|p| !p.rendered.is_empty())
    }

    /// A record from the bytes of `result.json`.
    ///
    /// # Errors
    /// They are no JSON, or of no record.
    pub fn from_json(bytes: &[u8]) -> serde_json::Result<Self> {
        serde_json::from_slice(bytes)
    }

    /// The bytes of `result.json`: what a report's digest is of, and what is
    /// sealed.
    ///
    /// # Errors
    /// None that a record can cause.
    pub fn to_json(&self) -> serde_json::Result<Vec<u8>> {
        let mut bytes = serde_json::to_vec_pretty(self)?;
        bytes.push(b'\n');
        Ok(bytes)
    }
}

/// The body against the sheet's arch heights.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct RideHeightRecord {
    /// Mean height over the wanted one, mm.
    pub height_mm: f64,
    /// 1 sigma.
    pub u_height_mm: f64,
    /// Pitch against the wanted attitude, nose down positive, degrees.
    pub pitch_deg: f64,
    /// 1 sigma.
    pub u_pitch_deg: f64,
    /// The same in words.
    pub words: Vec<String>,
    /// The same by keys and figures, for other languages.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub words_phrases: Vec<Phrase>,
}

/// One more photo that would decide checks.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct NextPhotoRecord {
    /// The camera, vehicle frame.
    pub position_mm: [f64; 3],
    /// What it looks at.
    pub look_at_mm: [f64; 3],
    /// The same in words.
    pub words: String,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub words_phrase: Option<Phrase>,
    /// The step that it has to show, where the sheet has several.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub step: Option<String>,
    /// Quantities that it would decide, if their values stay.
    pub decides: Vec<String>,
}

/// How far a body's poses before and after the calibration differ.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct MovedRecord {
    /// The stand's carrier, or "vehicle".
    pub body: String,
    /// Distance between the positions, mm.
    pub moved_mm: f64,
    /// Angle between the attitudes, degrees.
    pub moved_deg: f64,
    /// 1 sigma along the worst direction, mm.
    pub u_mm: f64,
    /// 1 sigma about the worst direction, degrees.
    pub u_deg: f64,
    /// Chance of such a difference where nothing moved.
    pub chance: f64,
    /// Whether it has moved beyond doubt.
    pub moved: bool,
}

/// One attempt of a series.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct AttemptRecord {
    /// The job's number.
    pub job: String,
    /// Number of the attempt.
    pub attempt: Option<u32>,
    /// When it was taken, RFC 3339.
    pub taken: Option<String>,
    /// What its own photos say.
    pub verdict_alone: Verdict,
    /// Whether its photos are adjusted together with this job's: nothing had moved.
    pub together: bool,
    /// Why not, where they are not.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub why_apart: Option<String>,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub why_apart_phrase: Option<Phrase>,
    /// Its photos.
    pub photos: Vec<AttemptPhoto>,
}

/// A photo of an attempt.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct AttemptPhoto {
    /// Path in its job folder.
    pub file: String,
    /// SHA-256 of the bytes, lower-case hex.
    pub sha256: String,
}

/// One check of the sheet.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CheckRecord {
    /// Quantity's name.
    pub quantity: String,
    /// The datum of a distance.
    pub from: Option<String>,
    /// The target, where the sheet names one.
    pub target: Option<String>,
    /// The step, where the sheet names one.
    pub step: Option<String>,
    /// The line it refers to.
    pub reference_line: String,
    /// mm or deg.
    pub unit: String,
    /// Wanted.
    pub nominal: f64,
    /// Lower limit.
    pub lower: Option<f64>,
    /// Upper limit.
    pub upper: Option<f64>,
    /// Whose tolerance it is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tolerance_basis: Option<String>,
    /// Whether the sheet states it in inches.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub in_inches: bool,
    /// photos or reading.
    pub evidence: String,
    /// Measured value; null where the photos don't determine it.
    pub value: Option<f64>,
    /// 1 sigma.
    pub standard_uncertainty: Option<f64>,
    /// Effective degrees of freedom; null where infinite.
    pub degrees_of_freedom: Option<f64>,
    /// Student factor for 95 %.
    pub coverage_factor: Option<f64>,
    /// Half the 95 % interval.
    pub expanded_uncertainty: Option<f64>,
    /// Probability that the true value lies within the limits; null where the figure is not to be trusted.
    pub conformance_probability: Option<f64>,
    /// This check's verdict.
    pub verdict: Verdict,
    /// Whether any value could be within at this uncertainty.
    pub can_decide: bool,
    /// Grade under the binary and four-way rules.
    pub grade: Option<String>,
    /// Nominal minus value; null where no move is ordered because a finding has to be settled first.
    #[serde(rename = "move")]
    pub move_by: Option<f64>,
    /// What to do at the stand, in words.
    pub correction: String,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub correction_phrase: Option<Phrase>,
    /// Why it is not determined or not decided, in words.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reason: Option<String>,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reason_phrase: Option<Phrase>,
    /// Codes of the findings that forbid to trust this check's figure while they stand; it is never `within` then.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub untrusted: Vec<String>,
    /// Where its figure is outside and not to be trusted: what it would be under each explanation that those findings leave open.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub otherwise: Vec<OtherwiseRecord>,
    /// Uncertainty budget, largest share first.
    #[serde(default)]
    pub budget: Vec<BudgetLine>,
}

/// A check's value with one suspected thing set free.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct OtherwiseRecord {
    /// What is taken for unknown, in words.
    pub assuming: String,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub assuming_phrase: Option<Phrase>,
    /// The value; null where the photos then don't determine it.
    pub value: Option<f64>,
    /// Half the 95 % interval.
    pub expanded_uncertainty: Option<f64>,
    /// The check's verdict with it.
    pub verdict: Verdict,
}

/// One source of a check's uncertainty.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct BudgetLine {
    /// The source in words.
    pub source: String,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub source_phrase: Option<Phrase>,
    /// Its contribution to the standard uncertainty, in the check's unit.
    pub standard_uncertainty: f64,
    /// Its share of the variance, 0 to 1.
    pub share: f64,
}

/// A measured quantity.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct MeasuredRecord {
    /// mm or deg.
    pub unit: String,
    /// Best estimate.
    pub value: f64,
    /// 1 sigma.
    pub standard_uncertainty: f64,
    /// Effective degrees of freedom; null where infinite.
    pub degrees_of_freedom: Option<f64>,
}

/// Where a carrier was, in the vehicle frame.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CarrierRecord {
    /// Its name.
    pub name: String,
    /// Its role.
    pub role: String,
    /// Its origin, mm.
    pub position_mm: [f64; 3],
    /// Its rotation.
    pub quaternion_wxyz: [f64; 4],
    /// 1 sigma.
    pub standard_uncertainty: CarrierUncertainty,
    /// Corners of its markers in the vehicle frame, mm, each marker's four in
    /// order, for drawings.
    #[serde(default)]
    pub markers_mm: Vec<[[f64; 3]; 4]>,
}

/// 1 sigma of a carrier's pose.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CarrierUncertainty {
    /// Of the origin along the vehicle's axes, mm.
    pub position_mm: [f64; 3],
    /// Of the rotation about its own axes, degrees.
    pub rotation_deg: [f64; 3],
}

/// One photo.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PhotoRecord {
    /// Path as the job names it.
    pub file: String,
    /// The step that it shows.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub step: Option<String>,
    /// before or after the calibration.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub phase: Option<String>,
    /// Camera profile used.
    pub camera: Option<String>,
    /// Why the photo was not used, if it was not.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unused_because: Option<String>,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unused_because_phrase: Option<Phrase>,
    /// Stored width, px.
    pub width_px: u32,
    /// Stored height, px.
    pub height_px: u32,
    /// EXIF orientation, 1 to 8.
    pub orientation: u8,
    /// When it was taken, RFC 3339, where the photo says so with its offset.
    #[serde(default)]
    pub taken: Option<String>,
    /// What its camera signed about its bytes (C2PA), where the file carries that and the program could read it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub credentials: Option<Credentials>,
    /// Kinds of private things that the photo's own record holds (position,
    /// serial numbers, ...), which are not copied from there.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub private: Vec<String>,
    /// Their names and values, where somebody asked for them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub private_values: Vec<[String; 2]>,
    /// Where it says that this program rendered it: `record` (Exif), `picture` (the mark in its pixels); empty: nowhere.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rendered: Vec<String>,
    /// Root mean square of the residuals per coordinate, px.
    pub rms_px: Option<f64>,
    /// Focal lengths of this photo, px.
    pub focal_px: Option<[f64; 2]>,
    /// Principal point of this photo, px.
    #[serde(default)]
    pub centre_px: Option<[f64; 2]>,
    /// Edge offset in all: found by the detector plus the adjustment's rest, px.
    pub edge_offset_px: f64,
    /// Median blur, px.
    #[serde(default)]
    pub blur_px: f64,
    /// How much noisier its corners are than is expected of a plainly developed photo (standard
    /// uncertainties, median of the markers, with what the adjustment found).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub noise_ratio: Option<f64>,
    /// How far the hand turned while rows were read, 1 sigma, in units of what the camera file states, as the job's photos leave it possible.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub turn_ratio: Option<f64>,
    /// How much its light was changed from place to place: standard deviation of the gain's logarithm over a marker;
    /// absent where nothing of that was seen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gain_spread: Option<f64>,
    /// Camera position in the vehicle frame, mm.
    #[serde(default)]
    pub position_mm: Option<[f64; 3]>,
    /// Viewing direction in the vehicle frame, unit vector.
    #[serde(default)]
    pub direction: Option<[f64; 3]>,
    /// Solved carriers reprojected, for drawing.
    #[serde(default)]
    pub outlines: Vec<Outline>,
    /// The markers that were found.
    pub markers: Vec<MarkerRecord>,
}

/// A solved carrier drawn into a photo.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Outline {
    /// The carrier.
    pub carrier: String,
    /// Polylines on the stored grid, px: the carrier's outline and its axes
    /// cross at the origin (for a target: the aim point).
    pub lines_px: Vec<Vec<[f64; 2]>>,
}

/// One marker in one photo.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct MarkerRecord {
    /// Code number.
    pub id: u32,
    /// The carrier that bears it; null where the kit does not know the id.
    pub carrier: Option<String>,
    /// Corners, corrected for the edge offset, px.
    pub corners_px: [[f64; 2]; 4],
    /// Root mean square of its residuals per coordinate, px.
    pub residual_px: Option<f64>,
    /// Found minus reprojected, per corner, px.
    #[serde(default)]
    pub residuals_px: Option<[[f64; 2]; 4]>,
    /// Whether it took part.
    pub used: bool,
    /// Which corners took part.
    #[serde(default)]
    pub corners_used: [bool; 4],
}

/// A reading against the photos.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ReadingRecord {
    /// Quantity's name.
    pub quantity: String,
    /// The datum of a distance.
    pub from: Option<String>,
    /// mm or deg.
    pub unit: String,
    /// The reading.
    pub value: f64,
    /// 1 sigma.
    pub standard_uncertainty: f64,
    /// The instrument.
    #[serde(default)]
    pub instrument: Option<String>,
    /// What the photos say; null where they don't.
    pub photo_value: Option<f64>,
    /// 1 sigma.
    pub photo_standard_uncertainty: Option<f64>,
    /// E_n after ISO/IEC 17043: difference over the root of summed squared expanded uncertainties.
    pub normalized_error: Option<f64>,
    /// Whether |E_n| <= 1; null where not comparable.
    pub agrees: Option<bool>,
    /// Whether it was to enter the adjustment; it did where `agrees` is true.
    pub used: bool,
}

/// What is wrong or worth knowing.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct FindingRecord {
    /// One of the formats page's codes.
    pub code: String,
    /// How much it weighs.
    pub level: Level,
    /// The carrier it is about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub carrier: Option<String>,
    /// The photo it is about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub photo: Option<String>,
    /// What, why and the remedy, in words.
    pub message: String,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub message_phrase: Option<Phrase>,
}
