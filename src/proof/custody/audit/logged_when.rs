//! Entries' and witnesses' times against those of the photos and the calibration that were logged: what vouches for something
//! cannot be older than it. One of the two clocks is false then, and the log's or a witness's is what should have shown that
//! of the other.

use time::OffsetDateTime;
use time::format_description::well_known::Rfc3339;

use crate::words::{Phrase, phrase};

/// The latest instant that a result knows, and what says so.
pub(super) type Latest = (OffsetDateTime, String);

/// Clocks of phones and of the machines that log and sign agree within so much, seconds: an hour, which summer time is
/// (common practice, no source). What is ahead by less is a clock that nobody set.
const CLOCKS_S: i64 = 3600;

/// Whoever logs a job later than this did not log it as it was done, seconds: a day (common practice, no source).
const LATE_S: i64 = 24 * 3600;

/// Whether a time, seconds since 1970, is earlier than what it is a time for.
pub(super) fn too_early(seconds: i64, latest: &Latest) -> bool {
    latest.0.unix_timestamp().saturating_sub(seconds) > CLOCKS_S
}

/// Whether a time is that of an afterthought.
pub(super) fn late(seconds: i64, latest: &Latest) -> bool {
    seconds.saturating_sub(latest.0.unix_timestamp()) > LATE_S
}

fn shown(at: OffsetDateTime) -> String {
    at.format(&Rfc3339).unwrap_or_default()
}

/// That an entry with this number and time, of the log or as a witness saw it, is older than what was logged.
pub(super) fn before_taken((entry, seconds): (u64, i64), witness: Option<&str>, latest: &Latest) -> Phrase {
    let when = OffsetDateTime::from_unix_timestamp(seconds).map_or(seconds.to_string(), shown);
    // As `moments` names what is no photo.
    let what = if latest.1 == "calibration" { "calibration" } else { "photo" };
    phrase!(
        "evidence-logged-before-taken",
        entry = entry,
        by = if witness.is_some() { "witness" } else { "log" },
        witness = witness.unwrap_or_default(),
        when = when,
        what = what,
        photo = &latest.1,
        taken = shown(latest.0),
    )
}

/// That a folder was logged long after its photos and calibration.
pub(super) fn after_the_day(path: &str, entry: u64, when: String, latest: &Latest) -> Phrase {
    phrase!("evidence-logged-late", path = path, entry = entry, when = when, taken = shown(latest.0))
}

#[cfg(test)]
mod tests {
    use time::macros::datetime;

    use super::*;
    use crate::words::Language;

    #[test]
    fn what_vouches_is_no_older_than_what_it_vouches_for() {
        let taken = (datetime!(2027-03-01 10:00 +1), "photos/a.jpg".to_owned());
        let at = |seconds: i64| datetime!(2027-03-01 09:00 UTC).unix_timestamp() + seconds;
        assert!(too_early(at(-3601), &taken) && !too_early(at(-3600), &taken) && !too_early(at(9_999_999), &taken));
        assert!(late(at(86_401), &taken) && !late(at(86_400), &taken) && !late(at(-301), &taken));
        assert!(!too_early(i64::MAX, &taken) && too_early(i64::MIN, &taken) && !late(i64::MIN, &taken));
        let said = before_taken((7, at(-3600)), None, &taken).say(Language::English);
        assert!(said.contains("entry 7 was logged at 2027-03-01T08:00:00Z"), "{said}");
        assert!(said.contains("photos/a.jpg was taken at 2027-03-01T10:00:00+01:00"), "{said}");
        let said = before_taken((7, i64::MAX), Some("w.example"), &(taken.0, "calibration".to_owned()));
        assert!(said.say(Language::English).contains("the calibration"));
    }
}
