//! Archives of jobs: found, judged in parallel, each result kept as soon as it
//! is there, so that an audit that ends at any moment goes on where it was.

mod across;
mod attempts;
mod changes;
mod digest;
mod find;
mod judge;
mod ledger;
mod run;

pub use across::Lead;
pub use attempts::{LogAudit, LogFinding, LogOptions, audit_log, kept_checkpoint};
pub use changes::{Change, Outcome};
pub use find::{Found, Sort, find};
pub use judge::{Judged, judge};
pub use ledger::{Ledger, LedgerError, WholeFile};
pub use run::{Audit, Progress, audit, each_outcome};
