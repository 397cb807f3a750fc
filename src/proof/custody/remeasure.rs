//! A sealed job measured again from its photos, and compared with what was recorded.

use std::path::Path;
use std::sync::Arc;

use crate::credentials::Source;
use crate::folder::Models;
use crate::record::{CheckRecord, Credentials, JobRecord};

use crate::job::{Error, Options, verify};

use super::{RESULT, find_sealed_job, further, signed};
use crate::words::{Language, Phrase, Value, phrase};

/// Two values agree where they differ by no more than this share of their
/// standard uncertainty: rounding and another processor, not another finding.
pub const AGREE_U: f64 = 0.01;

/// Why nothing could be compared.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum RemeasureError {
    /// The recorded result cannot be read.
    Result(String),
    /// There is no job in the folder.
    NoJob,
    /// The job cannot be verified.
    Job(#[from] Error),
}

impl RemeasureError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            RemeasureError::Result(why) => phrase!("evidence-remeasure-result", file = RESULT, why = why),
            RemeasureError::NoJob => phrase!("evidence-remeasure-no-job"),
            RemeasureError::Job(e) => phrase!("evidence-remeasure-job", why = e.phrase()),
        }
    }
}

/// The outcome of measuring again.
#[derive(Debug)]
pub struct Remeasured {
    /// What the folder says.
    pub recorded: JobRecord,
    /// What the photos say now.
    pub now: JobRecord,
    /// In what they differ; empty where they agree.
    pub differences: Vec<Phrase>,
    /// By photo, the content credentials that its bytes bear today; empty where this program cannot read any.
    pub credentials: Vec<(String, Option<Credentials>)>,
}

impl Remeasured {
    /// All differences in one phrase.
    pub fn differing(&self) -> Phrase {
        further(self.differences.clone())
    }
}

/// Measures the job of an evidence folder's payload again.
///
/// Content credentials count as they were recorded, so that what was sealed is
/// found again whoever is trusted and whatever has expired today; that their
/// bytes are still those that were signed is looked at where the program can.
/// Where `credentials` names trust anchors, the new record is by those.
///
/// # Errors
/// The result or the job cannot be read.
pub fn remeasure(payload: &Path, credentials: &Source) -> Result<Remeasured, RemeasureError> {
    let text = std::fs::read(payload.join(RESULT)).map_err(|e| RemeasureError::Result(e.to_string()))?;
    let recorded = JobRecord::from_json(&text).map_err(|e| RemeasureError::Result(e.to_string()))?;
    let job = payload.join(find_sealed_job(payload).ok_or(RemeasureError::NoJob)?);
    let shared = payload.join("models");
    let models = if shared.is_dir() { Models::in_folder(&shared).map_err(Error::from)? } else { Models::embedded() };
    let before = signed::recorded(&recorded);
    let mut options = Options { models, credentials: Source::Recorded(Arc::new(before.clone())) };
    let mut now = verify(&job, &options)?;
    let found = signed::found(&job, &now, credentials).map_err(Error::from)?;
    let mut differences = differences(&recorded, &now);
    differences.extend(signed::differences(&before, &found));
    if let Source::Photos(Some(_)) = credentials {
        let today = signed::of_today(&before, &found);
        if today != before {
            options.credentials = Source::Recorded(Arc::new(today));
            now = verify(&job, &options)?;
        }
    }
    let found = found.into_iter().map(|f| (f.file, f.credentials)).collect();
    Ok(Remeasured { recorded, now, differences, credentials: found })
}

/// In what two records of one job differ.
pub fn differences(recorded: &JobRecord, now: &JobRecord) -> Vec<Phrase> {
    let mut found = Vec::new();
    let mut same = |what: Value, a: Value, b: Value| {
        if a != b {
            found.push(phrase!("evidence-difference", what = what, recorded = a, now = b));
        }
    };
    same(part("job"), (&recorded.job).into(), (&now.job).into());
    same(part("verdict"), recorded.verdict.name().into(), now.verdict.name().into());
    same(part("inputs"), digests(recorded).into(), digests(now).into());
    same(part("findings"), codes(recorded).into(), codes(now).into());
    same(part("checks"), checks(recorded).into(), checks(now).into());
    for (a, b) in recorded.checks.iter().zip(&now.checks) {
        same((&a.quantity).into(), a.verdict.name().into(), b.verdict.name().into());
        let near = near(a.value.zip(a.standard_uncertainty), b.value.zip(b.standard_uncertainty));
        if !near {
            same((&a.quantity).into(), shown(a.value), shown(b.value));
        }
    }
    let keys = |r: &JobRecord| r.measured.keys().cloned().collect::<Vec<_>>().join(" ");
    same(part("quantities"), keys(recorded).into(), keys(now).into());
    for (key, a) in &recorded.measured {
        let Some(b) = now.measured.get(key) else { continue };
        if !near(Some((a.value, a.standard_uncertainty)), Some((b.value, b.standard_uncertainty))) {
            same(key.into(), shown(Some(a.value)), shown(Some(b.value)));
        }
    }
    found
}

fn near(a: Option<(f64, f64)>, b: Option<(f64, f64)>) -> bool {
    match (a, b) {
        (Some((x, u)), Some((y, v))) => (x - y).abs() <= AGREE_U * u && (u - v).abs() <= AGREE_U * u,
        (a, b) => a.is_none() && b.is_none(),
    }
}

/// What differs, where it is no quantity.
fn part(what: &str) -> Value {
    phrase!("evidence-difference-what", what = what).into()
}

/// With all its digits.
fn shown(value: Option<f64>) -> Value {
    let Some(value) = value else { return phrase!("evidence-nothing").into() };
    Value::digits(&value.to_string())
}

fn digests(record: &JobRecord) -> String {
    let mut all: Vec<String> = record.inputs.iter().map(|i| format!("{} {} {}", i.role, i.file, i.sha256)).collect();
    all.sort();
    all.join(", ")
}

fn codes(record: &JobRecord) -> String {
    let mut all: Vec<&str> = record.findings.iter().map(|f| f.code.as_str()).collect();
    all.sort_unstable();
    all.join(" ")
}

fn checks(record: &JobRecord) -> String {
    let named = |c: &CheckRecord| format!("{} {:?} {:?} {:?}", c.quantity, c.from, c.target, c.step);
    record.checks.iter().map(named).collect::<Vec<_>>().join(", ")
}
