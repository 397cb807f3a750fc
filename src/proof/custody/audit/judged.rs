//! What an audit says of one folder: a line of `audit.jsonl`.

use serde::{Deserialize, Serialize};

use crate::record::JobRecord;
use crate::verdict::Verdict;
use crate::words::Phrase;

/// What the state of a masked copy begins with.
pub const COPY: &str = "masked copy, ";
/// What it ends with where its photos could not be measured again.
pub const NOT_MEASURED: &str = ", unmeasured";

/// What became of one folder: a line of `audit.jsonl`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Judged {
    /// Its path, as it was found.
    pub path: String,
    /// The exit code that `verify` gives, 2 where it cannot be read or was altered.
    pub exit: u8,
    /// The verdict; none where there is none.
    pub verdict: Option<Verdict>,
    /// The result, `result/1` or `error/1`; in an audit the name of its file.
    pub result: serde_json::Value,
    /// Over everything that was read: another digest, another job.
    pub digest: String,
    /// For evidence folders: `intact and signed`, `intact, signer unknown`, ...; of masked copies between
    /// [`COPY`] and, where it applies, [`NOT_MEASURED`].
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub evidence: Option<String>,
    /// Who signed, of those listed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub signer: Option<String>,
    /// For evidence folders with a report: what the signature of its PDF says.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub report: Option<ReportSignature>,
    /// The version of the program that judged it.
    #[serde(default)]
    pub version: String,
    /// What the last recomputation changed of the earlier result.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub changed: Vec<Change>,
    /// What joins it with earlier folders of the archive.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub across: Vec<Lead>,
}

/// What the signature of a sealed PDF report says.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct ReportSignature {
    /// `holds`, `broken` or `none`.
    pub state: String,
    /// Who signed, as the certificate names them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub signer: Option<String>,
    /// Whether that certificate is one of those that were given; none where none were.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub listed: Option<bool>,
}

/// One difference between two results of a job.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Change {
    /// `verdict`, `findings`, or a quantity with what tells its checks apart.
    pub what: String,
    /// What the earlier result says.
    pub earlier: String,
    /// What the new one says.
    pub now: String,
    /// How far a value moved, in standard uncertainties of the earlier one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub in_u: Option<f64>,
}

/// The outcome of a folder: its record, or why there is none.
pub type Outcome = Result<Box<JobRecord>, String>;

/// A lead that joins a folder with an earlier one of the archive.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Lead {
    /// `photo-of-another-job` or `set-up-of-another-job`.
    pub code: String,
    /// The other folder's path.
    pub other: String,
    /// What coincides, what that can mean and what to do.
    pub message: String,
    /// The same for any language; none in audits by earlier versions.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub message_phrase: Option<Phrase>,
}
