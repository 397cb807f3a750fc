//! The set-up sheet as data.

use time::Date;

use crate::quantity::Quantity;
use baywitness_words::{Language, Phrase, phrase};

/// A horizontal line through the midpoint of the rear hub datums.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ReferenceLine {
    /// Normal to the line through the rear hub datums.
    RearAxleNormal,
    /// Bisects the headings of the two rear wheel plates.
    ThrustLine,
    /// Through the midpoint of the front hub datums, else through a nose mark on the centreline.
    Centreline,
}

impl ReferenceLine {
    /// All lines.
    pub const ALL: [ReferenceLine; 3] =
        [ReferenceLine::RearAxleNormal, ReferenceLine::ThrustLine, ReferenceLine::Centreline];

    /// The name in files and records.
    pub fn name(self) -> &'static str {
        match self {
            ReferenceLine::RearAxleNormal => "rear_axle_normal",
            ReferenceLine::ThrustLine => "thrust_line",
            ReferenceLine::Centreline => "centreline",
        }
    }

    /// The words for people, in a reader's language.
    pub fn phrase(self) -> Phrase {
        phrase!("verdict-line", line = self.name())
    }

    /// The words for people, in English.
    pub fn trade_name(self) -> String {
        self.phrase().say(Language::English)
    }
}

/// The point that a distance is measured from.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum From {
    /// The nose mark or, where none is seen, the typed nose position.
    Nose,
    /// Midpoint of the front hub datums or, where none are seen, the typed wheelbase.
    FrontAxle,
    /// Midpoint of the rear hub datums.
    RearAxle,
    /// A datum of the set-up sheet.
    Datum(String),
}

impl From {
    /// The point of that name; any name that is not a standard one is a datum's.
    pub fn from_name(name: &str) -> Self {
        match name {
            "nose" => From::Nose,
            "front_axle" => From::FrontAxle,
            "rear_axle" => From::RearAxle,
            datum => From::Datum(datum.to_owned()),
        }
    }

    /// The name in files and records.
    pub fn name(&self) -> &str {
        match self {
            From::Nose => "nose",
            From::FrontAxle => "front_axle",
            From::RearAxle => "rear_axle",
            From::Datum(name) => name,
        }
    }
}

/// How a value and its uncertainty become a verdict.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DecisionRule {
    /// Guarded acceptance and rejection (JCGM 106).
    Guarded,
    /// The value against the limits, inclusive (simple acceptance).
    Simple,
    /// Binary with a guard band of one expanded uncertainty (ILAC-G8:2019).
    Binary,
    /// Pass, conditional pass, conditional fail, fail (ILAC-G8:2019).
    FourWay,
}

/// The decision rule of a sheet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Decision {
    /// Which rule.
    pub rule: DecisionRule,
    /// Least probability of conformance for the guarded rule.
    pub conformance_probability: f64,
    /// So many photos must show a stand where it stands after a move, before that is called within.
    pub photos_after_move: usize,
}

impl Decision {
    /// Two views that agree are the least proof.
    pub const PHOTOS_AFTER_MOVE: usize = 2;
    /// The least probability of conformance that a sheet may ask for. JCGM 106:2012, 7.4, leaves it to the parties; below
    /// this one, one value in five that is called within would not be.
    pub const LEAST_PROBABILITY: f64 = 0.8;
    /// From this probability on what is decided is called proven; it is the usual one (JCGM 106:2012, 7.2.2).
    pub const PROVEN: f64 = 0.95;

    /// Whether the guarded rule asks for less than what is called proven.
    pub fn is_likely_only(&self) -> bool {
        self.rule == DecisionRule::Guarded && self.conformance_probability < Self::PROVEN
    }
}

impl Default for Decision {
    /// The rule of a sheet that names none: guarded, .95.
    fn default() -> Self {
        Decision {
            rule: DecisionRule::Guarded,
            conformance_probability: 0.95,
            photos_after_move: Decision::PHOTOS_AFTER_MOVE,
        }
    }
}

/// What decides a check.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Evidence {
    /// The photos.
    Photos,
    /// The job's reading.
    Reading,
}

/// One wanted value with its limits.
#[derive(Debug, Clone, PartialEq)]
pub struct Check {
    /// What is checked.
    pub quantity: Quantity,
    /// The datum of a distance.
    pub from: Option<From>,
    /// Wanted value, mm or degrees.
    pub nominal: f64,
    /// Lower limit, if any, mm or degrees.
    pub lower: Option<f64>,
    /// Upper limit, if any, mm or degrees.
    pub upper: Option<f64>,
    /// Whose tolerance it is.
    pub tolerance_basis: Option<String>,
    /// The sheet states the lengths in inches: reports show both.
    pub in_inches: bool,
    /// Which carrier of role target, where there are several.
    pub target: Option<String>,
    /// Its own reference line, else the sheet's.
    pub reference_line: Option<ReferenceLine>,
    /// The step it belongs to.
    pub step: Option<String>,
    /// What decides it.
    pub evidence: Evidence,
}

impl Check {
    /// The steps in which it holds: of a sheet without steps, and for what no step changes, the one without a name.
    pub fn held_in<'a>(&'a self, steps: &'a [String]) -> Vec<Option<&'a str>> {
        match &self.step {
            Some(step) => vec![Some(step)],
            None if self.quantity.is_of_target() && !steps.is_empty() => {
                steps.iter().map(|s| Some(s.as_str())).collect()
            }
            None => vec![None],
        }
    }
}

/// A point to measure from, given on a carrier.
#[derive(Debug, Clone, PartialEq)]
pub struct Datum {
    /// Its name.
    pub name: String,
    /// The carrier that bears it.
    pub carrier: String,
    /// Position in the carrier's frame, mm.
    pub offset_mm: [f64; 3],
    /// 1 sigma per coordinate, mm.
    pub u_mm: f64,
}

/// Something that must be so before the photos are worth anything.
#[derive(Debug, Clone, PartialEq)]
pub struct Prerequisite {
    /// The key in the job file.
    pub id: String,
    /// What the technician attests.
    pub text: String,
    /// Whether the record is incomplete without it.
    pub required: bool,
}

/// A quantity that is deliberately not checked.
#[derive(Debug, Clone, PartialEq)]
pub struct Waiver {
    /// Which quantity.
    pub quantity: Quantity,
    /// Why.
    pub because: String,
}

/// Which document the sheet follows.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Procedure {
    /// Title or number of the document.
    pub document: Option<String>,
    /// Its revision.
    pub revision: Option<String>,
    /// When it was looked up.
    pub opened: Option<Date>,
    /// Which vehicles and sensors it covers.
    pub applies_to: Option<String>,
}

/// Limits of the bay itself.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Limits {
    /// Greatest slope of the floor, degrees.
    pub floor_slope_deg: Option<f64>,
    /// Greatest unevenness, mm per m.
    pub floor_flatness_mm_per_m: Option<f64>,
    /// Least free space before the vehicle, mm.
    pub free_ahead_mm: Option<f64>,
}

/// A set-up sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct Setup {
    /// Short name in records.
    pub name: String,
    /// Title for people.
    pub title: String,
    /// Who says so: shown on every report.
    pub source: String,
    /// The line that offsets and yaw refer to.
    pub reference_line: ReferenceLine,
    /// The decision rule.
    pub decision: Decision,
    /// The document behind the sheet.
    pub procedure: Option<Procedure>,
    /// Positions that are photographed one after the other; empty: one position.
    pub steps: Vec<String>,
    /// Extra points to measure from.
    pub datums: Vec<Datum>,
    /// What must be attested.
    pub prerequisites: Vec<Prerequisite>,
    /// The checks, in the sheet's order.
    pub checks: Vec<Check>,
    /// What is deliberately not checked.
    pub waived: Vec<Waiver>,
    /// Limits of the bay.
    pub limits: Limits,
    /// Whether every photo that counts must bear content credentials (C2PA) of a trusted signer.
    pub credentials_required: bool,
}
