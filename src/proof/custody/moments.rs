//! What a result itself says of when its photos were taken and when its calibration ran: nothing that is said to have
//! been made of it can be older.

use std::path::Path;

use time::OffsetDateTime;
use time::format_description::well_known::Rfc3339;

use crate::evidence::read_result;
use crate::record::JobRecord;

/// What says so, where it is no photo.
const CALIBRATION: &str = "calibration";

/// The latest instant that a result knows with its offset from UTC, and what says so: a photo, by its file, or
/// `calibration`. `None` where nothing does: most cameras write the time of a wall, which is no instant.
pub fn latest(record: &JobRecord) -> Option<(OffsetDateTime, String)> {
    let read = |text: &str| OffsetDateTime::parse(text, &Rfc3339).ok();
    let photos = record.photos.iter().filter_map(|photo| Some((read(photo.taken.as_deref()?)?, photo.file.clone())));
    let ran = record.context.calibration.as_ref().and_then(|said| read(said.get("at")?.as_str()?));
    photos.chain(ran.map(|at| (at, CALIBRATION.to_owned()))).max()
}

/// The same of the result in an evidence folder's payload, where it can be read.
pub fn of_payload(payload: &Path) -> Option<(OffsetDateTime, String)> {
    let json = read_result(payload).ok()?;
    latest(&JobRecord::from_json(&json).ok()?)
}
