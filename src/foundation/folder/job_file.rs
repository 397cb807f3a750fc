//! The job file as data.

use std::collections::BTreeMap;

use time::{Date, OffsetDateTime};

use crate::marker::{Kit, Role};
use crate::quantity::{Estimate, Quantity};
use crate::setup::{Check, From, Setup};
use crate::words::Language;

/// One job: which sheet, kit and camera, which photos, what was typed.
#[derive(Debug, Clone, PartialEq)]
pub struct JobFile {
    /// The job's number.
    pub job: String,
    /// Set-up sheet: a path relative to the job folder or a name among the models.
    pub setup: String,
    /// Kit, likewise.
    pub kit: String,
    /// Camera, likewise; absent: chosen per photo by EXIF.
    pub camera: Option<String>,
    /// The stand's screws (`stand/1`), likewise; absent: advice is in mm and degrees.
    pub stand: Option<String>,
    /// Photos relative to the job folder; absent: every picture in `photos/`.
    pub photos: Option<Vec<String>>,
    /// What each photo belongs to, where the job says so instead of `photos`.
    pub photo_entries: Option<Vec<PhotoEntry>>,
    /// What was done at the stand, move by move.
    pub moves: Vec<MoveEntry>,
    /// Repair order that attempts and sensors of one vehicle share.
    pub series: Option<String>,
    /// Number of the attempt.
    pub attempt: Option<u32>,
    /// The one-time code that the job's card shows in the photos: marker ids; empty: no card.
    pub card: Vec<u32>,
    /// Who did it.
    pub technician: Option<String>,
    /// Where.
    pub bay: Option<String>,
    /// When the photos were taken.
    pub taken: Option<OffsetDateTime>,
    /// How long the job must be kept.
    pub keep_until: Option<Date>,
    /// What its report is to be read in.
    pub language: Option<Language>,
    /// Whether the job itself says that its photos were rendered: a sample, a drill, a bay of a scene file.
    pub rendered: bool,
    /// What is known of the vehicle.
    pub vehicle: Vehicle,
    /// What the technician attests, by id, as JSON values: true, false or text.
    pub prerequisites: BTreeMap<String, serde_json::Value>,
    /// Instrument readings.
    pub readings: Vec<Reading>,
    /// Files that are kept with the job.
    pub attachments: Vec<Attachment>,
    /// What the scan tool said.
    pub calibration: Option<Calibration>,
}

/// One `[[photo]]` of a job.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PhotoEntry {
    /// Relative to the job folder.
    pub file: String,
    /// The set-up sheet's step that it shows.
    pub step: Option<String>,
    /// Whether it was taken before or after the calibration ran.
    pub phase: Option<Phase>,
    /// How often the stand had been moved when it was taken.
    pub after_move: u32,
}

impl PhotoEntry {
    /// A photo of which nothing is said.
    pub fn plain(file: impl Into<String>) -> Self {
        PhotoEntry { file: file.into(), step: None, phase: None, after_move: 0 }
    }
}

/// What was done in one move of the stand.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct MoveEntry {
    /// Turns of the stand file's screws, clockwise positive, by the screw's name.
    pub turned: BTreeMap<String, f64>,
}

/// When a photo was taken, seen from the calibration.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Phase {
    /// Before the calibration ran.
    Before,
    /// After it ran.
    After,
}

impl Phase {
    /// Both phases.
    pub const ALL: [Phase; 2] = [Phase::Before, Phase::After];

    /// The name in files and records.
    pub fn name(self) -> &'static str {
        match self {
            Phase::Before => "before",
            Phase::After => "after",
        }
    }
}

/// Typed facts of the vehicle; uncertainties are 1 sigma and always present
/// (default 3 mm).
#[derive(Debug, Clone, PartialEq)]
pub struct Vehicle {
    /// Words that tell which vehicle it was.
    pub description: Option<String>,
    /// Vehicle identification number.
    pub vin: Option<String>,
    /// Wheelbase, mm.
    pub wheelbase_mm: Option<f64>,
    /// Nose before the rear axle, mm.
    pub nose_from_rear_axle_mm: Option<f64>,
    /// Hub datum above the floor, mm.
    pub floor_below_hub_mm: Option<f64>,
    /// Between the rear hub datums, mm.
    pub rear_track_mm: Option<f64>,
    /// Between the front hub datums, mm.
    pub front_track_mm: Option<f64>,
    /// 1 sigma of the wheelbase, mm.
    pub u_wheelbase_mm: f64,
    /// 1 sigma of the nose position, mm.
    pub u_nose_from_rear_axle_mm: f64,
    /// 1 sigma of the hub height, mm.
    pub u_floor_below_hub_mm: f64,
    /// 1 sigma of the rear track, mm.
    pub u_rear_track_mm: f64,
    /// 1 sigma of the front track, mm.
    pub u_front_track_mm: f64,
}

/// A value read by an instrument.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// What was read.
    pub quantity: Quantity,
    /// The datum of a distance.
    pub from: Option<From>,
    /// The target, where the kit has several.
    pub target: Option<String>,
    /// The step, where the sheet has several.
    pub step: Option<String>,
    /// The reading, mm or degrees.
    pub value: f64,
    /// 1 sigma: as typed, else by instrument.
    pub u: f64,
    /// The instrument.
    pub instrument: Option<String>,
    /// Whether it enters the adjustment.
    pub use_in_adjustment: bool,
}

impl Reading {
    /// The value as an estimate.
    pub fn estimate(&self) -> Estimate {
        Estimate::known(self.value, self.u)
    }

    /// Whether two are of one thing.
    pub fn is_of_the_same(&self, other: &Reading) -> bool {
        self.quantity == other.quantity
            && self.from == other.from
            && self.target == other.target
            && self.step == other.step
    }

    /// Of readings of one thing the two that exclude each other most, with their |E_n|; `None` where all agree.
    pub fn farthest_apart<'a>(set: &[&'a Reading]) -> Option<(&'a Reading, &'a Reading, f64)> {
        let pairs = set.iter().enumerate().flat_map(|(i, a)| set[i + 1..].iter().map(move |b| (*a, *b)));
        let with_error = pairs.filter_map(|(a, b)| Some((a, b, a.estimate().normalized_error(&b.estimate())?.abs())));
        with_error.filter(|(.., error)| *error > 1.0).max_by(|a, b| a.2.total_cmp(&b.2))
    }

    /// Whether it is plain of which target and in which step it is.
    pub fn is_of_one(&self, setup: &Setup, kit: &Kit) -> bool {
        let one_target = self.target.is_some() || kit.with_role(Role::Target).count() == 1;
        let one_step = self.step.is_some() || setup.steps.len() <= 1;
        !self.quantity.is_of_target() || (one_target && one_step)
    }

    /// Whether it is of what a check asks in a step (of those that it holds in). What names no target or no
    /// step is of the stand only where there is one target, and one step.
    pub fn is_of(&self, check: &Check, step: Option<&str>, setup: &Setup, kit: &Kit) -> bool {
        if self.quantity != check.quantity || self.from != check.from {
            return false;
        }
        if !check.quantity.is_of_target() {
            return true;
        }
        let mut targets = kit.with_role(Role::Target).map(|k| kit.carriers[k].name.as_str());
        let only_target = targets.next().filter(|_| targets.next().is_none());
        let only_step = setup.steps.first().map(String::as_str).filter(|_| setup.steps.len() == 1);
        let target = self.target.as_deref().or(only_target);
        target.is_some()
            && target == check.target.as_deref().or(only_target)
            && self.step.as_deref().or(only_step) == step.or(only_step)
    }
}

/// A file that is kept with the job.
#[derive(Debug, Clone, PartialEq)]
pub struct Attachment {
    /// Path relative to the job folder.
    pub file: String,
    /// scan-before, scan-after, alignment, procedure, overview-photo or other.
    pub kind: String,
}

/// The outcome of the calibration itself.
#[derive(Debug, Clone, PartialEq)]
pub struct Calibration {
    /// successful, failed or not-run.
    pub result: String,
    /// When.
    pub at: Option<OffsetDateTime>,
    /// Misalignment that the control unit reports, degrees.
    pub reported_azimuth_deg: Option<f64>,
    /// Likewise, up and down.
    pub reported_elevation_deg: Option<f64>,
}
