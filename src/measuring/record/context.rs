//! What a job was about, and its set-up sheet's own words.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::de::Error as _;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use crate::setup::Decision;
use crate::words::{Language, Phrase, Value, phrase};

/// The program that measured.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct Tool {
    /// `baywitness`.
    pub name: String,
    /// Its version.
    pub version: String,
    /// Of results and reports of one version, how often what they say has changed ([`Tool::EDITION`]); absent before that was counted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub edition: Option<u32>,
}

impl Tool {
    /// Grows with every change of what a job's result or its reports say while the version stays: what one edition made is made again
    /// to the byte by the same edition alone.
    pub const EDITION: u32 = 3;

    /// This program.
    pub fn this() -> Self {
        Tool { name: "baywitness".into(), version: env!("CARGO_PKG_VERSION").into(), edition: Some(Tool::EDITION) }
    }

    /// Whether both make the same of the same photos.
    pub fn is_like(&self, other: &Tool) -> bool {
        (&self.version, self.edition) == (&other.version, other.edition)
    }

    /// Version and edition, as build metadata of a version (Semantic Versioning 2.0.0, 10).
    pub fn words(&self) -> String {
        self.edition.map_or_else(|| self.version.clone(), |edition| format!("{}+{edition}", self.version))
    }
}

/// What the job was about.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, Default)]
#[serde(remote = "Self")]
pub struct Context {
    /// Set-up sheet's name.
    pub setup: String,
    /// Kit's name.
    pub kit: String,
    /// Cameras used, each once.
    pub cameras: Vec<String>,
    /// Vehicle in words.
    pub vehicle: Option<String>,
    /// Vehicle identification number.
    pub vin: Option<String>,
    /// Repair order.
    pub series: Option<String>,
    /// Attempt.
    pub attempt: Option<u32>,
    /// Bay.
    pub bay: Option<String>,
    /// Technician.
    pub technician: Option<String>,
    /// When the photos were taken, RFC 3339.
    pub taken: Option<String>,
    /// What the technician attests, by id.
    pub prerequisites: BTreeMap<String, serde_json::Value>,
    /// Whether everything that the sheet requires was answered.
    pub record_complete: bool,
    /// What the scan tool said, as typed.
    pub calibration: Option<BTreeMap<String, serde_json::Value>>,
    /// Which kit it was and when it must be surveyed, where its file says so.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kit_upkeep: Option<KitUpkeep>,
    /// What its report is to be read in, where the job says so.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub language: Option<Language>,
    /// Whether the job itself says that its photos were rendered.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub rendered: bool,
}

impl Serialize for Context {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        Context::serialize(self, serializer)
    }
}

impl<'de> Deserialize<'de> for Context {
    /// Before 0.2 the kit was called `rig`, and `kit` was its upkeep.
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let mut keys = serde_json::Map::deserialize(deserializer)?;
        if let Some(name) = keys.remove("rig")
            && let Some(upkeep) = keys.insert("kit".to_owned(), name)
        {
            keys.insert("kit_upkeep".to_owned(), upkeep);
        }
        Context::deserialize(serde_json::Value::Object(keys)).map_err(D::Error::custom)
    }
}

/// A marker kit's upkeep.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct KitUpkeep {
    /// Serial number.
    pub serial: Option<String>,
    /// When it must be surveyed again, year-month-day.
    pub survey_due: Option<String>,
    /// Whether that was past when the photos were taken; `None`: not checkable.
    pub survey_overdue: Option<bool>,
}

impl KitUpkeep {
    /// For people, in a reader's language; `None` where there is nothing to say.
    pub fn phrase(&self) -> Option<Phrase> {
        let serial = self.serial.as_ref().map(|s| phrase!("verdict-kit-serial", serial = s));
        let survey = self.survey_due.as_ref().map(|due| {
            let due = Value::moment(due);
            match self.survey_overdue {
                Some(true) => phrase!("verdict-kit-overdue", due = due),
                Some(false) => phrase!("verdict-kit-due", due = due),
                None => phrase!("verdict-kit-due-unknown", due = due),
            }
        });
        match (serial, survey) {
            (Some(serial), Some(survey)) => Some(phrase!("verdict-kit-both", serial = serial, survey = survey)),
            (one, other) => one.or(other),
        }
    }

    /// The same in English; empty where there is nothing to say.
    pub fn words(&self) -> String {
        self.phrase().map_or_else(String::new, |p| p.say(Language::English))
    }
}

/// The set-up sheet's own words.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, Default)]
pub struct SheetRecord {
    /// Title for people.
    pub title: String,
    /// Who says so.
    pub source: String,
    /// The decision rule's name.
    pub decision_rule: String,
    /// Least conformance probability of the guarded rule.
    pub conformance_probability: f64,
    /// The document behind it, one `key: value` a line.
    pub procedure: BTreeMap<String, String>,
    /// What it deliberately does not check.
    pub waived: Vec<WaiverRecord>,
    /// What it neither checks nor waives.
    pub not_checked: Vec<String>,
    /// Its prerequisites and the answers.
    pub prerequisites: Vec<PrerequisiteRecord>,
    /// Whether it requires content credentials of every photo that counts.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub credentials_required: bool,
}

impl SheetRecord {
    /// Where the rule asks for less than what is called proven: for how much, in percent.
    pub fn likely_only(&self) -> Option<f64> {
        let likely = self.decision_rule == "guarded" && self.conformance_probability < Decision::PROVEN;
        likely.then_some(self.conformance_probability * 100.0)
    }
}

/// One prerequisite of the sheet with the job's answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PrerequisiteRecord {
    /// Its id.
    pub id: String,
    /// What is attested.
    pub text: String,
    /// Whether an answer is required.
    pub required: bool,
    /// The answer: true, false, text, or null where none was given.
    pub answer: Option<serde_json::Value>,
}

/// A quantity that the sheet deliberately does not check.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct WaiverRecord {
    /// Which.
    pub quantity: String,
    /// Why.
    pub because: String,
}
