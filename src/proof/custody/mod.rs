//! What becomes of a verified job: gathered for its evidence folder, measured
//! again, masked for others' eyes, audited with a whole archive, kept until due.

pub mod audit;
mod compared;
mod contents;
mod copies;
mod due;
mod masked_result;
pub mod moments;
mod order_page;
mod own_figures;
mod redact;
mod remeasure;
mod seal;
mod sealed_report;
mod signed;
#[cfg(test)]
pub(crate) mod tests;

use crate::words::{Phrase, phrase};

pub use crate::evidence::{ORDER_PAGE, find_sealed_job};
pub use compared::{AGREE_U, differences};
pub use copies::{MaskedCopy, look_at_masked};
pub use due::{Due, due};
pub use masked_result::{MASKED_AGREE_U, differences as masked_differences};
pub use order_page::order_page_again;
pub use redact::{Area, RedactError, redact};
pub use remeasure::{RemeasureError, Remeasured, remeasure};
pub use seal::{GatherError, gather, sign_report};
pub use sealed_report::{Reports, reports_again, sealed_report};

/// Who changed what of a job, as the technician's page notes it beside the job file.
pub const CHANGES: &str = "changes.jsonl";
/// How many phrases are said one by one.
const MOST_SAID: usize = 20;

/// Several one after the other, with semicolons: each may hold commas. Of many the first, and how many more there are.
pub fn further(mut phrases: Vec<Phrase>) -> Phrase {
    let more = phrases.len().saturating_sub(MOST_SAID);
    phrases.truncate(MOST_SAID);
    let joined =
        phrases.into_iter().rev().reduce(|rest, first| phrase!("evidence-further", first = first, rest = rest));
    let joined = joined.unwrap_or_else(|| phrase!("evidence-nothing"));
    if more == 0 { joined } else { phrase!("evidence-bad", files = joined, more = more) }
}
