//! What becomes of a verified job: gathered for its evidence folder, measured
//! again, masked for others' eyes, audited with a whole archive, kept until due.

pub mod audit;
mod due;
mod redact;
mod remeasure;
mod seal;
mod sealed_report;
mod signed;
#[cfg(test)]
pub(crate) mod tests;

use crate::words::{Phrase, phrase};

pub use due::{Due, due};
pub use redact::{Area, RedactError, redact};
pub use remeasure::{AGREE_U, RemeasureError, Remeasured, differences, remeasure};
pub use seal::{GatherError, gather, sign_report};
pub use sealed_report::sealed_report;

/// The result in an evidence folder's payload.
const RESULT: &str = "result.json";
/// Who changed what of a job, as the technician's page notes it beside the job file.
pub const CHANGES: &str = "changes.jsonl";
/// Most folders above a job from which sealed files are taken.
const MOST_UP: usize = 8;

/// Where a job lies in an evidence folder's payload whose files come from up to
/// `up` folders above it: deep enough that they keep their place.
fn sealed_job(up: usize) -> String {
    format!("{}job", "at/".repeat(up.saturating_sub(1)))
}

/// Where the job of an evidence folder's payload lies; none where there is none.
pub fn find_sealed_job(payload: &std::path::Path) -> Option<String> {
    (0..=MOST_UP).map(sealed_job).find(|job| payload.join(job).join("job.toml").is_file())
}

/// Several one after the other, with semicolons: each may hold commas.
fn further(phrases: Vec<Phrase>) -> Phrase {
    let joined =
        phrases.into_iter().rev().reduce(|rest, first| phrase!("evidence-further", first = first, rest = rest));
    joined.unwrap_or_else(|| phrase!("evidence-nothing"))
}
