//! The log's entry: one attempt, as commitments that tell nothing to whoever
//! does not have the job.
//!
//! An entry is public. A plain digest of `job.toml` would let anybody try vehicle
//! numbers, names and dates until one fits; of a sheet, which vehicle it was. So
//! each is hashed with a salt that only the photos give: the digests of the job's
//! photos, which sensor noise makes unguessable and which stand in no entry (there
//! stands a hash of each). Who has the photos or the result has the salt, with
//! nothing to keep and nothing to lose. The repair order is salted with the log's
//! own secret instead, so that an auditor who was given that can say to which order
//! an attempt belonged whose photos are gone. Verdict, number of photos, time and
//! number of the attempt stand plainly: they are about the workshop's work, and
//! without them nobody could say what was left out.

use base64::Engine;
use base64::engine::general_purpose::STANDARD_NO_PAD;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use time::OffsetDateTime;
use time::format_description::well_known::Rfc3339;

use super::tile::LONGEST;
use crate::record::{JobRecord, Verdict};
use crate::words::{Phrase, phrase};

/// What an entry says it is.
const FORMAT: &str = "attempt/1";

/// A log's secret, which salts repair orders.
pub type OrderSalt = [u8; 32];

/// One attempt (`attempt/1`), a JSON object without blanks, in this order of keys.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Attempt {
    format: String,
    /// When it was logged, RFC 3339, UTC, whole seconds.
    #[serde(with = "time::serde::rfc3339")]
    pub at: OffsetDateTime,
    /// Which command logged it: `verify`, `seal` or `serve`.
    pub by: String,
    /// The verdict's name.
    pub verdict: String,
    /// Which attempt of its repair order it was, where the job says so.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub attempt: Option<u32>,
    /// The repair order, else the job's number, salted with the log's secret.
    pub order: String,
    /// The job's files.
    #[serde(flatten)]
    pub files: Commitments,
    /// The result's bytes.
    pub result: String,
}

/// What an attempt rests on.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Commitments {
    /// Each photo, in rising order.
    pub photos: Vec<String>,
    /// `job.toml`.
    pub job: String,
    /// The set-up sheet.
    pub setup: String,
}

fn form(e: &serde_json::Error) -> Phrase {
    phrase!("evidence-attempt-form", format = FORMAT, why = e.to_string())
}

fn commitment(what: &str, salt: &[u8], text: &str) -> String {
    let digest = Sha256::new()
        .chain_update(format!("baywitness {FORMAT} {what}\n"))
        .chain_update(salt)
        .chain_update(text)
        .finalize();
    STANDARD_NO_PAD.encode(digest)
}

/// Digests of a job's files of one role, in rising order.
fn digests<'a>(record: &'a JobRecord, role: &str) -> Vec<&'a str> {
    let of_role = record.inputs.iter().filter(|i| i.role == role);
    let mut found: Vec<&str> = of_role.map(|i| i.sha256.as_str()).collect();
    found.sort_unstable();
    found
}

/// Known to who has all photos, or the result.
fn salt(record: &JobRecord) -> [u8; 32] {
    let photos = digests(record, "photo").join("\n");
    Sha256::new().chain_update(format!("baywitness {FORMAT} salt\n")).chain_update(photos).finalize().into()
}

impl Commitments {
    /// Of a job that was measured.
    pub fn of(record: &JobRecord) -> Self {
        let salt = salt(record);
        let one = |role: &str| commitment(role, &salt, &digests(record, role).join("\n"));
        let mut photos: Vec<String> = digests(record, "photo").into_iter().map(photo_commitment).collect();
        photos.sort_unstable();
        Commitments { photos, job: one("job"), setup: one("setup") }
    }
}

/// A photo by its SHA-256, as a log's entries have it.
pub fn photo_commitment(digest: &str) -> String {
    commitment("photo", &[], digest)
}

/// The repair order of a job, else its number, as a log's entries have it.
pub fn order(record: &JobRecord, secret: &OrderSalt) -> String {
    commitment("order", secret, order_name(record))
}

/// What entries may have as a job's repair order: its own number too, which stands there until somebody types the order.
pub fn orders(record: &JobRecord, secret: &OrderSalt) -> [String; 2] {
    [order_name(record), &record.job].map(|name| commitment("order", secret, name))
}

/// The repair order of a job, else its number.
pub fn order_name(record: &JobRecord) -> &str {
    record.context.series.as_deref().unwrap_or(&record.job)
}

impl Attempt {
    /// A verified job's; `result` are the bytes of its result.
    pub fn of(record: &JobRecord, result: &[u8], by: &str, at: OffsetDateTime, secret: &OrderSalt) -> Self {
        let at = at.to_offset(time::UtcOffset::UTC);
        Attempt {
            format: FORMAT.to_owned(),
            at: at.replace_nanosecond(0).unwrap_or(at),
            by: by.to_owned(),
            verdict: record.verdict.name().to_owned(),
            attempt: record.context.attempt,
            order: order(record, secret),
            files: Commitments::of(record),
            result: result_commitment(record, result),
        }
    }

    /// The entry's bytes.
    ///
    /// # Errors
    /// It has more photos than an entry of a log holds.
    pub fn bytes(&self) -> Result<Vec<u8>, Phrase> {
        let bytes = serde_json::to_vec(self).map_err(|e| form(&e))?;
        if bytes.len() > LONGEST {
            return Err(phrase!("evidence-attempt-photos", count = self.files.photos.len()));
        }
        Ok(bytes)
    }

    /// Reads an entry, in the spelling of [`Attempt::bytes`] alone.
    ///
    /// # Errors
    /// What is wrong.
    pub fn read(bytes: &[u8]) -> Result<Self, Phrase> {
        let read: Attempt = serde_json::from_slice(bytes).map_err(|e| form(&e))?;
        if read.format != FORMAT || read.bytes()? != bytes {
            return Err(phrase!("evidence-attempt-spelling", format = FORMAT));
        }
        Ok(read)
    }

    /// When it says that it was logged, seconds since 1970.
    pub fn seconds(&self) -> i64 {
        self.at.unix_timestamp()
    }

    /// The same for people.
    pub fn when(&self) -> String {
        self.at.format(&Rfc3339).unwrap_or_default()
    }

    /// In what it is not the entry of this job with this result; empty where it is.
    pub fn differs_from(&self, record: &JobRecord, result: &[u8]) -> Vec<Phrase> {
        let own = Commitments::of(record);
        [
            (self.files.photos != own.photos, "photos"),
            (self.files.job != own.job, "job"),
            (self.files.setup != own.setup, "setup"),
            (self.result != result_commitment(record, result), "result"),
            (Verdict::of_name(&self.verdict) != Some(record.verdict), "verdict"),
        ]
        .into_iter()
        .filter(|(differs, _)| *differs)
        .map(|(_, what)| phrase!("evidence-attempt-part", part = what))
        .collect()
    }
}

fn result_commitment(record: &JobRecord, result: &[u8]) -> String {
    commitment("result", &salt(record), &crate::input::hex(&Sha256::digest(result)))
}
