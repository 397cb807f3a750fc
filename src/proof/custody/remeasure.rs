//! A sealed job measured again from its photos, and compared with what was recorded.

use std::path::Path;

use crate::folder::Models;
use crate::record::{CheckRecord, JobRecord};

use crate::job::{Error, Options, verify};

use super::{RESULT, find_sealed_job};

/// Two values agree where they differ by no more than this share of their
/// standard uncertainty: rounding and another processor, not another finding.
pub const AGREE_U: f64 = 0.01;

/// Why nothing could be compared.
#[derive(Debug, thiserror::Error)]
pub enum RemeasureError {
    /// The recorded result cannot be read.
    #[error("the recorded result {RESULT} cannot be read: {0}")]
    Result(String),
    /// There is no job in the folder.
    #[error("the folder holds no job")]
    NoJob,
    /// The job cannot be verified.
    #[error("the job in the folder cannot be measured: {0}")]
    Job(#[from] Error),
}

/// The outcome of measuring again.
#[derive(Debug)]
pub struct Remeasured {
    /// What the folder says.
    pub recorded: JobRecord,
    /// What the photos say now.
    pub now: JobRecord,
    /// In what they differ; empty where they agree.
    pub differences: Vec<String>,
}

/// Measures the job of an evidence folder's payload again.
///
/// # Errors
/// The result or the job cannot be read.
pub fn remeasure(payload: &Path) -> Result<Remeasured, RemeasureError> {
    let text = std::fs::read(payload.join(RESULT)).map_err(|e| RemeasureError::Result(e.to_string()))?;
    let recorded: JobRecord = serde_json::from_slice(&text).map_err(|e| RemeasureError::Result(e.to_string()))?;
    let job = payload.join(find_sealed_job(payload).ok_or(RemeasureError::NoJob)?);
    let shared = payload.join("models");
    let models = if shared.is_dir() { Models::in_folder(&shared).map_err(Error::from)? } else { Models::embedded() };
    let now = verify(&job, &Options { models })?;
    let differences = differences(&recorded, &now);
    Ok(Remeasured { recorded, now, differences })
}

/// In what two records of one job differ, in words.
pub fn differences(recorded: &JobRecord, now: &JobRecord) -> Vec<String> {
    let mut found = Vec::new();
    let mut same = |what: &str, a: &str, b: &str| {
        if a != b {
            found.push(format!("{what}: recorded {a}, now {b}"));
        }
    };
    same("job", &recorded.job, &now.job);
    same("verdict", recorded.verdict.name(), now.verdict.name());
    same("inputs", &digests(recorded), &digests(now));
    same("findings", &codes(recorded), &codes(now));
    same("checks", &checks(recorded), &checks(now));
    for (a, b) in recorded.checks.iter().zip(&now.checks) {
        same(&a.quantity, a.verdict.name(), b.verdict.name());
        let near = near(a.value.zip(a.standard_uncertainty), b.value.zip(b.standard_uncertainty));
        if !near {
            same(&a.quantity, &shown(a.value), &shown(b.value));
        }
    }
    let keys = |r: &JobRecord| r.measured.keys().cloned().collect::<Vec<_>>().join(" ");
    same("quantities", &keys(recorded), &keys(now));
    for (key, a) in &recorded.measured {
        let Some(b) = now.measured.get(key) else { continue };
        if !near(Some((a.value, a.standard_uncertainty)), Some((b.value, b.standard_uncertainty))) {
            same(key, &shown(Some(a.value)), &shown(Some(b.value)));
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

fn shown(value: Option<f64>) -> String {
    value.map_or("nothing".to_owned(), |v| v.to_string())
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
