//! Archives of jobs: found, judged in parallel, each result kept as soon as it
//! is there, so that an audit that ends at any moment goes on where it was.

mod across;
mod alike;
mod attempts;
mod changes;
mod digest;
mod failed;
mod find;
mod gone;
mod heads;
mod judge;
mod judged;
mod kept;
mod ledger;
mod lines;
mod log_finding;
mod log_proofs;
mod logged_when;
mod proven;
mod run;
mod sensors;
#[cfg(test)]
mod tests;
mod trust;
mod unread;

pub use attempts::{LogAudit, LogOptions, audit_log, kept_checkpoint};
pub use failed::LedgerError;
pub use find::{Found, Sort, find};
pub use judge::judge;
pub use judged::{COPY, Change, Judged, Lead, NOT_MEASURED, Outcome, ReportSignature};
pub use ledger::{Ledger, WholeFile, each_outcome};
pub use lines::Lines;
pub use log_finding::LogFinding;
pub use proven::Proven;
pub use run::{Audit, Progress, Tally, audit};
pub use trust::Trust;
pub use unread::Unread;
