//! What the photos could not have shown, and what the answers hang on.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::words::Phrase;

/// A fault and the least size of it that this job's photos would have shown.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct DetectableRecord {
    /// Code of the finding.
    pub code: String,
    /// The carrier or axle that it is about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub carrier: Option<String>,
    /// Size found with probability .95; null: not checkable with these photos.
    pub size: Option<f64>,
    /// mm, deg or %.
    pub unit: String,
    /// What would make it checkable.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub remedy: Option<String>,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub remedy_phrase: Option<Phrase>,
}

/// How far a check's value changes when something is left out or assumed otherwise.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SensitivityRecord {
    /// Index of the check in `checks`.
    pub check: usize,
    /// In words: "without photos/a.jpg", "with the other lens model".
    pub assumption: String,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub assumption_phrase: Option<Phrase>,
    /// Change of the value, in the check's unit.
    pub change: f64,
    /// 1 sigma of such a change where all is well; null for a model.
    pub standard_uncertainty: Option<f64>,
}
