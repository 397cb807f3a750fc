//! The few keys of a result that statistics need, read without the rest.

use std::borrow::Cow;

use serde::{Deserialize, Deserializer};
use serde_json::value::RawValue;

use crate::verdict::{Level, Verdict};

/// One JSON object of an archive: a result, an error, a line of an audit, or
/// something else. Keys that are not here are skipped.
#[derive(Debug, Deserialize)]
pub struct Facts<'a> {
    /// `result/1`, `error/1`, ...
    #[serde(borrow, default)]
    pub format: Cow<'a, str>,
    /// The job's number.
    #[serde(borrow, default)]
    pub job: Cow<'a, str>,
    /// What the job was about.
    #[serde(borrow, default)]
    pub context: ContextFacts<'a>,
    /// The job's verdict.
    pub verdict: Option<Verdict>,
    /// The checks.
    #[serde(borrow, default)]
    pub checks: Vec<CheckFacts<'a>>,
    /// The findings.
    #[serde(borrow, default)]
    pub findings: Vec<FindingFacts<'a>>,
    /// The photos.
    #[serde(borrow, default)]
    pub photos: Vec<PhotoFacts<'a>>,
    /// Of an audit's line: the job's folder.
    #[serde(borrow)]
    pub path: Option<Cow<'a, str>>,
    /// Of an audit's line: the result, or the name of its file.
    #[serde(borrow)]
    pub result: Option<&'a RawValue>,
    /// Of an error.
    #[serde(borrow)]
    pub message: Option<Cow<'a, str>>,
}

/// See [`super::Context`].
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
pub struct ContextFacts<'a> {
    /// Set-up sheet's name.
    #[serde(borrow)]
    pub setup: Option<Cow<'a, str>>,
    /// Kit's name.
    #[serde(borrow, deserialize_with = "name_alone")]
    pub kit: Option<Cow<'a, str>>,
    /// The same in records of before 0.2, whose `kit` was something else.
    #[serde(borrow)]
    pub rig: Option<Cow<'a, str>>,
    /// Cameras used.
    #[serde(borrow)]
    pub cameras: Vec<Cow<'a, str>>,
    /// Vehicle in words.
    #[serde(borrow)]
    pub vehicle: Option<Cow<'a, str>>,
    /// Repair order.
    #[serde(borrow)]
    pub series: Option<Cow<'a, str>>,
    /// Attempt.
    pub attempt: Option<u32>,
    /// Bay.
    #[serde(borrow)]
    pub bay: Option<Cow<'a, str>>,
    /// Technician.
    #[serde(borrow)]
    pub technician: Option<Cow<'a, str>>,
    /// RFC 3339.
    #[serde(borrow)]
    pub taken: Option<Cow<'a, str>>,
}

/// See [`super::CheckRecord`].
#[derive(Debug, Deserialize)]
pub struct CheckFacts<'a> {
    /// Quantity's name.
    #[serde(borrow)]
    pub quantity: Cow<'a, str>,
    /// The target, where the sheet names one.
    #[serde(borrow, default)]
    pub target: Option<Cow<'a, str>>,
    /// The step, where the sheet names one.
    #[serde(borrow, default)]
    pub step: Option<Cow<'a, str>>,
    /// mm or deg.
    #[serde(borrow, default)]
    pub unit: Cow<'a, str>,
    /// Wanted.
    pub nominal: f64,
    /// Lower limit.
    #[serde(default)]
    pub lower: Option<f64>,
    /// Upper limit.
    #[serde(default)]
    pub upper: Option<f64>,
    /// Measured.
    #[serde(default)]
    pub value: Option<f64>,
    /// The check's verdict.
    pub verdict: Verdict,
}

/// See [`super::PhotoRecord`].
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
pub struct PhotoFacts<'a> {
    /// Its content credentials.
    #[serde(borrow)]
    pub credentials: Option<CredentialFacts<'a>>,
}

/// See [`super::Credentials`].
#[derive(Debug, Deserialize)]
pub struct CredentialFacts<'a> {
    /// The state's name.
    #[serde(borrow)]
    pub state: Cow<'a, str>,
}

/// See [`super::FindingRecord`].
#[derive(Debug, Deserialize)]
pub struct FindingFacts<'a> {
    /// The code.
    #[serde(borrow)]
    pub code: Cow<'a, str>,
    /// How much it weighs.
    pub level: Level,
}

impl ContextFacts<'_> {
    /// Kit's name, in whichever record.
    pub fn kit_name(&self) -> Option<&str> {
        self.rig.as_deref().or(self.kit.as_deref())
    }
}

/// A text; anything else is passed over.
fn name_alone<'de: 'a, 'a, D: Deserializer<'de>>(deserializer: D) -> Result<Option<Cow<'a, str>>, D::Error> {
    #[derive(Deserialize)]
    #[serde(untagged)]
    enum Found<'a> {
        Name(#[serde(borrow)] Cow<'a, str>),
        Other(serde::de::IgnoredAny),
    }
    Ok(match Found::deserialize(deserializer)? {
        Found::Name(name) => Some(name),
        Found::Other(_) => None,
    })
}
