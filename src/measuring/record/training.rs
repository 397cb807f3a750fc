//! Records of practice: the gallery of mistakes, drills and their marks.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::types::JobRecord;

/// One mistake of the gallery, beside the same bay without it.
#[derive(Debug, Clone, PartialEq)]
pub struct GalleryEntry {
    /// The finding's code.
    pub code: String,
    /// The job with the mistake, verified.
    pub record: JobRecord,
    /// Codes that come along with it and why; usually none.
    pub companions: Vec<String>,
    /// Pictures, as paths from the page: the same view without and with it.
    pub pictures: Vec<[String; 2]>,
    /// The report of the job, as a path from the page.
    pub report: String,
}

/// A mistake of a drill, as hidden or as answered.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct DrillAnswer {
    /// The job.
    pub job: String,
    /// A finding's code, or `none`.
    pub finding: String,
    /// Which way to move, one of the drill's words; empty where the code says it.
    #[serde(rename = "move", default)]
    pub way: String,
    /// By how much, mm or degrees.
    #[serde(default)]
    pub size: Option<f64>,
}

/// A mistake with what was said of it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct MarkedAnswer {
    /// What is true.
    pub truth: DrillAnswer,
    /// What was answered, if the finding was named.
    pub answer: Option<DrillAnswer>,
    /// Whether the direction was right.
    pub way_right: bool,
    /// Whether the size was near enough.
    pub size_right: bool,
    /// How near it had to be.
    pub size_room: f64,
}

/// One job of a drill, marked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct JobMark {
    /// The job.
    pub job: String,
    /// Its mistakes; none where nothing was wrong.
    pub mistakes: Vec<MarkedAnswer>,
    /// Answers that name what is not there.
    pub wrong: Vec<DrillAnswer>,
    /// Whether anything was answered.
    pub answered: bool,
    /// Points won.
    pub points: f64,
    /// Points that could be won.
    pub of: f64,
}

/// A drill, marked: a line of the progress file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct DrillMark {
    /// Always `drill-mark/1`.
    pub format: String,
    /// The drill's own number: the beginning of its commitment.
    pub drill: String,
    /// Who practised.
    pub trainee: String,
    /// When it was marked, year-month-day.
    pub day: String,
    /// The level.
    pub level: u8,
    /// What it was drawn from: the same seed and level make the same jobs; absent before this was kept.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seed: Option<u64>,
    /// How often this drill, or one of its seed and level, was marked for this trainee before: then the answers were known.
    pub earlier: usize,
    /// Findings named, of those that there were.
    pub findings: [usize; 2],
    /// Directions right, of the findings named that have one.
    pub ways: [usize; 2],
    /// Sizes right, of the findings named that have one.
    pub sizes: [usize; 2],
    /// Answers that name what is not there.
    pub false_alarms: usize,
    /// Points won and points that could be won.
    pub points: [f64; 2],
    /// Each job.
    pub jobs: Vec<JobMark>,
}
