//! What the record says of the procedure around the photos: before and after
//! the calibration, the attempts of the series, the ride height, and where one
//! more photo would help. Sentences, the same for terminal and page.

use crate::quantity::rounded;
use crate::record::{AttemptRecord, JobRecord, MovedRecord};

/// A heading and its sentences; nothing where the record has none.
pub(super) fn sentences(record: &JobRecord) -> Vec<(&'static str, Vec<String>)> {
    let own = &record.job;
    let parts = [
        ("Before and after the calibration", record.phases.iter().map(moved).collect()),
        ("Attempts of this series", record.attempts.iter().map(|a| attempt(a, own)).collect()),
        ("Ride height", record.ride_height.iter().flat_map(|r| r.words.clone()).collect::<Vec<String>>()),
        (
            "One more photo",
            record.next_photo.iter().map(|n| format!("Would decide what is open: {}.", n.words)).collect(),
        ),
    ];
    parts.into_iter().filter(|(_, sentences)| !sentences.is_empty()).collect()
}

fn moved(m: &MovedRecord) -> String {
    let figures = format!(
        "{} +-{} mm and {} +-{} deg",
        rounded(m.moved_mm, 1),
        rounded(2.0 * m.u_mm, 1),
        rounded(m.moved_deg, 2),
        rounded(2.0 * m.u_deg, 2)
    );
    let word = if m.moved { "moved by" } else { "did not move beyond the uncertainty:" };
    format!("{} {word} {figures}.", m.body)
}

fn attempt(a: &AttemptRecord, own: &str) -> String {
    let number = a.attempt.map_or(String::new(), |n| format!("Attempt {n}, "));
    let alone = format!("by its own photos: {}", a.verdict_alone.words());
    let beside = match (&a.why_apart, a.job == own) {
        (_, true) => "this job".to_owned(),
        (None, false) => "adjusted together with this job, because nothing had moved".to_owned(),
        (Some(why), false) => format!("not adjusted together with this job: {why}"),
    };
    format!("{number}job {}, {} photos, {alone}; {beside}.", a.job, a.photos.len())
}
