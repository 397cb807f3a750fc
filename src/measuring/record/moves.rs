//! Where a stand stood before each of its moves and where it stands now.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::verdict::Verdict;
use crate::words::Phrase;

/// One position of the stand.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PositionRecord {
    /// How often the stand had been moved; 0 is where it stood first.
    pub after_move: u32,
    /// The photos that were taken of it.
    pub photos: Vec<String>,
    /// Those of them that prove where it stands: stand and vehicle are measured in each.
    pub proven_by: Vec<String>,
    /// When the last of its photos was taken, by the photo's own record.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub taken: Option<String>,
    /// The targets' aim points, vehicle frame.
    pub aims: Vec<AimRecord>,
    /// The checks of the stand there.
    pub figures: Vec<PositionFigure>,
    /// What the turns of the screws before this position gave.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub turned: Vec<TurnedRecord>,
}

/// A target's place, for the drawing.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct AimRecord {
    /// The target's name in the kit.
    pub target: String,
    /// The step, where the sheet has several.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub step: Option<String>,
    /// Vehicle frame, mm.
    pub position_mm: [f64; 3],
    /// Its heading against the vehicle's x axis, left positive, degrees.
    pub heading_deg: f64,
}

/// One check of the stand in one position.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PositionFigure {
    /// Index of the check in `checks`.
    pub check: usize,
    /// The value, mm or degrees; null where the photos don't determine it.
    pub value: Option<f64>,
    /// 1 sigma.
    pub standard_uncertainty: Option<f64>,
    /// Half the 95 % interval.
    pub expanded_uncertainty: Option<f64>,
    /// What the figure alone would be; how many photos prove it and what findings say is left out of it.
    pub verdict: Verdict,
    /// What was asked before the move that led here: nominal less the value there; null where nothing was.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub asked: Option<f64>,
    /// How far it went since the position before.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub moved: Option<f64>,
    /// 1 sigma of that: less than of two figures that nothing ties.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub u_moved: Option<f64>,
    /// Half the 95 % interval of that.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub expanded_u_moved: Option<f64>,
    /// Asked and moved in words: "asked 24 mm, moved 19 mm: 5 mm more".
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub words: Option<String>,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub words_phrase: Option<Phrase>,
}

/// What a screw gave.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TurnedRecord {
    /// The screw's name.
    pub screw: String,
    /// Turns, clockwise positive.
    pub turns: f64,
    /// What one turn is by the stand file, mm or degrees.
    pub stated_per_turn: f64,
    /// What one turn gave, and 1 sigma of it; null where the photos don't tell.
    pub per_turn: Option<f64>,
    /// 1 sigma.
    pub u_per_turn: Option<f64>,
    /// The same in words.
    pub words: String,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub words_phrase: Option<Phrase>,
}

/// The one thing to do first.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct FirstRecord {
    /// Index of the check in `checks` that it is about; null where a photo is what is wanted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub check: Option<usize>,
    /// What to do.
    pub words: String,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub words_phrase: Option<Phrase>,
    /// The same by a screw of the stand, where one does it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub screw: Option<String>,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub screw_phrase: Option<Phrase>,
    /// How the last move went, where there was one that was asked for it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub last_move: Option<String>,
    /// The same by key and figures, for other languages.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub last_move_phrase: Option<Phrase>,
}
