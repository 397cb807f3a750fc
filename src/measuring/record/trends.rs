//! The record of an archive's statistics (`trends/1`).

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::verdict::Verdict;
use crate::words::{Language, Phrase};

/// What an archive of results says together. Sizes of misplacements are
/// (value - nominal) / tolerance, "tolerances", where nothing else is said.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TrendsRecord {
    /// Always `trends/1`.
    pub format: String,
    /// The grouping that comes first in the page.
    pub by: String,
    /// First and last day, where jobs state their time.
    pub period: Option<[String; 2]>,
    /// What was read.
    pub read: ReadRecord,
    /// Whether people are named; else they are pseudonyms.
    pub names: bool,
    /// All jobs by verdict.
    pub verdicts: Vec<VerdictShare>,
    /// What stands out beyond chance, the surest first.
    pub effects: Vec<EffectRecord>,
    /// How that was decided.
    pub tests: TestsRecord,
    /// The chart of cumulative sums that changes are drawn in.
    pub weekly_chart: CusumRecord,
    /// How the stand was misplaced, the most frequent first.
    pub misplacements: Vec<MisplacementRecord>,
    /// Findings of any kind, the most frequent first.
    pub findings: Vec<FindingCount>,
    /// By technician, bay, setup, vehicle, kit, camera and week.
    pub groups: BTreeMap<String, Vec<GroupRecord>>,
    /// First attempts against last ones.
    pub attempts: AttemptsRecord,
    /// Single values over time, a chart for each quantity.
    pub charts: Vec<ChartRecord>,
    /// Capability by set-up sheet and quantity.
    pub capability: Vec<CapabilityRecord>,
    /// The jobs that the above points to, by their place in this list.
    pub jobs: Vec<JobPointer>,
}

/// What was read.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, Default)]
pub struct ReadRecord {
    /// Results counted.
    pub results: usize,
    /// Results that were there twice, counted once.
    pub copies: usize,
    /// Jobs that could not be judged when they were audited.
    pub errors: usize,
    /// Files or lines that cannot be read.
    pub unreadable: usize,
    /// The first of them in words.
    pub unreadable_words: Vec<String>,
    /// The same for any language, in their order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub unreadable_words_phrases: Vec<Phrase>,
    /// JSON that is no result.
    pub others: usize,
}

impl ReadRecord {
    /// What could not be read, in a language; in English where the record is of an older program.
    pub fn unreadable_in(&self, language: Language) -> Vec<String> {
        if self.unreadable_words_phrases.len() == self.unreadable_words.len() {
            self.unreadable_words_phrases.iter().map(|said| said.say(language)).collect()
        } else {
            self.unreadable_words.clone()
        }
    }
}

/// How many jobs ended with a verdict.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct VerdictShare {
    /// The verdict.
    pub verdict: Verdict,
    /// Jobs.
    pub count: usize,
    /// Their share.
    pub share: f64,
    /// Wilson's 95 % interval of the share.
    pub interval: [f64; 2],
}

/// How effects were told from chance.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TestsRecord {
    /// Tests made.
    pub count: usize,
    /// Share of archives without any effect in which one may be named.
    pub error_rate: f64,
    /// Least number of first attempts that a group is tested with.
    pub least_jobs: usize,
    /// Smallest effect that is named, tolerances.
    pub least_size: f64,
    /// First attempts that took part.
    pub jobs: usize,
}

/// The design of the weekly chart of cumulative sums.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CusumRecord {
    /// Standard deviations of a weekly mean.
    pub allowance: f64,
    /// Likewise: beyond it the chart signals.
    pub interval: f64,
    /// Mean number of weeks to a signal where nothing changed.
    pub run_length: f64,
    /// And where the mean is off by twice the allowance.
    pub run_length_shifted: f64,
}

/// Something that stands out beyond chance.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct EffectRecord {
    /// `shift` (always to one side), `change` (from some week on), `sheet` (the set-up
    /// sheet wants something else than everybody does) or `finding` (a finding more often than elsewhere).
    pub kind: String,
    /// technician, bay, setup or kit.
    pub factor: String,
    /// Which.
    pub name: String,
    /// The quantity, where it is about one; `yaw`, `distance@left-board#tilted`.
    pub quantity: Option<String>,
    /// The finding, where it is about one.
    pub code: Option<String>,
    /// Against the others, other factors taken out; after against before for a change: tolerances.
    /// For a finding: how many times as often as expected.
    pub size: f64,
    /// Its 95 % interval, where there is one.
    pub interval: Option<[f64; 2]>,
    /// The same in the quantity's unit, at the usual tolerance.
    pub amount: Option<f64>,
    /// mm or deg.
    pub unit: Option<String>,
    /// For a sheet: what it states, and what its jobs' values sit around.
    pub nominal: Option<[f64; 2]>,
    /// For a sheet: what kind of typing error would do that, if one is known.
    pub slip: Option<String>,
    /// The same for any language.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub slip_phrase: Option<Phrase>,
    /// For a change: the week from which on, `2026-W30`.
    pub since_week: Option<String>,
    /// What it cannot be told apart from, in words.
    pub together_with: Option<String>,
    /// The same for any language.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub together_phrase: Option<Phrase>,
    /// Jobs of it.
    pub jobs: usize,
    /// For a finding: seen and expected.
    pub counts: Option<[f64; 2]>,
    /// Holm's adjusted probability.
    pub adjusted_p: f64,
    /// Findings that are more frequent here too.
    pub also: Vec<String>,
    /// The same in a sentence.
    pub words: String,
    /// Means by week, where times are known.
    pub weeks: Vec<WeekMean>,
    /// Its jobs, the furthest off first.
    pub linked: Vec<usize>,
}

/// A week's mean deviation, other factors taken out.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct WeekMean {
    /// `2026-W30`.
    pub week: String,
    /// Tolerances.
    pub mean: f64,
    /// Jobs.
    pub count: usize,
    /// Upper and lower cumulative sum of the weekly means, standardised; null before there is any.
    pub sums: [f64; 2],
}

/// One kind of misplacement.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct MisplacementRecord {
    /// The quantity.
    pub quantity: String,
    /// Whether the value is above the wanted one.
    pub too_much: bool,
    /// Checks that are outside that way.
    pub count: usize,
    /// Share of the jobs that check this quantity.
    pub share: f64,
    /// Wilson's 95 % interval.
    pub interval: [f64; 2],
    /// Median of the deviation, tolerances.
    pub median: f64,
    /// Nine of ten are smaller, tolerances.
    pub ninth: f64,
    /// The same two in the unit.
    pub amounts: [f64; 2],
    /// mm or deg.
    pub unit: String,
    /// Its jobs, the furthest off first.
    pub linked: Vec<usize>,
}

/// How often a finding was made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct FindingCount {
    /// The code.
    pub code: String,
    /// Jobs that have it.
    pub count: usize,
    /// Their share of all jobs.
    pub share: f64,
    /// Wilson's 95 % interval.
    pub interval: [f64; 2],
    /// Some of them.
    pub linked: Vec<usize>,
}

/// One technician, bay, week, ...
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct GroupRecord {
    /// Its name.
    pub name: String,
    /// All jobs.
    pub jobs: usize,
    /// Within, outside, not proven, retake.
    pub verdicts: [usize; 4],
    /// Share outside.
    pub outside: f64,
    /// Wilson's 95 % interval.
    pub interval: [f64; 2],
    /// For weeks: control limits of the outside share (three standard deviations).
    pub limits: Option<[f64; 2]>,
    /// Too few jobs to say anything about.
    pub small: bool,
    /// Whether an effect is named for it.
    pub stands_out: bool,
    /// Its mean deviation against the others, other factors taken out.
    pub tendencies: Vec<TendencyRecord>,
    /// Its jobs: outside first, then the latest.
    pub linked: Vec<usize>,
}

/// A group's mean deviation in one quantity.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct TendencyRecord {
    /// The quantity.
    pub quantity: String,
    /// Against the others, tolerances.
    pub shift: f64,
    /// 95 % interval, not adjusted for the number of groups.
    pub interval: [f64; 2],
    /// First attempts.
    pub jobs: usize,
}

/// First attempts against last ones of the same repair order.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, Default)]
pub struct AttemptsRecord {
    /// Repair orders with more than one attempt.
    pub series: usize,
    /// Within at the first attempt.
    pub first_within: usize,
    /// Within at the last attempt.
    pub last_within: usize,
    /// Mean of the largest deviation at the first attempt, tolerances.
    pub first_size: Option<f64>,
    /// At the last.
    pub last_size: Option<f64>,
    /// All repair orders and jobs without one: within at the first attempt.
    pub all_first_within: usize,
    /// How many there are.
    pub all_first: usize,
}

/// Individuals and moving ranges of one quantity, the latest first attempts.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ChartRecord {
    /// The quantity.
    pub quantity: String,
    /// Jobs with it in all.
    pub of: usize,
    /// The values, tolerances, in the order of time.
    pub values: Vec<f64>,
    /// Whose they are.
    pub linked: Vec<usize>,
    /// Centre, lower and upper limit of the values.
    pub limits: [f64; 3],
    /// Centre and upper limit of the moving ranges.
    pub range_limits: [f64; 2],
}

/// Capability of one quantity under one sheet, first attempts.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CapabilityRecord {
    /// The set-up sheet.
    pub setup: String,
    /// The quantity.
    pub quantity: String,
    /// Jobs.
    pub jobs: usize,
    /// Mean, tolerances.
    pub mean: f64,
    /// Standard deviation, tolerances.
    pub deviation: f64,
    /// Width of the limits over six standard deviations, and its 95 % interval.
    pub potential: [f64; 3],
    /// Nearer limit over three standard deviations, and its 95 % interval.
    pub actual: [f64; 3],
}

/// A job that something points to.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct JobPointer {
    /// The job's number.
    pub job: String,
    /// Its verdict.
    pub verdict: Verdict,
    /// When it was taken.
    pub taken: Option<String>,
    /// The result's file.
    pub result: String,
    /// Its report with the annotated photos, where one was found.
    pub report: Option<String>,
    /// Its folder, where the audit says so.
    pub folder: Option<String>,
}
