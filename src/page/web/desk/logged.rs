//! A verdict in the log of attempts.

use crate::record::JobRecord;
use crate::transparency::{Appended, Attempt, Log, LogError};

/// Adds a job to the log of attempts.
pub(in crate::web) fn add(log: &Log, record: &JobRecord, json: &[u8]) -> Result<Appended, LogError> {
    let attempt = Attempt::of(record, json, "serve", time::OffsetDateTime::now_utc(), log.order_salt());
    log.append(&[attempt])
}
