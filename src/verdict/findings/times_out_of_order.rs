//! The times of photos and calibration contradict each other.

use time::{Duration, OffsetDateTime};

use super::{Case, Explanation, Finding, Rule};
use crate::verdict::Level;

pub(super) const RULE: Rule = Rule {
    codes: &["times-out-of-order"],
    title: "Times out of order",
    rationale: "Photos prove where the stand stood when they were taken, not an hour later.",
    method: "Times that state their offset from UTC: photos of one job within an hour of each other and of the job's `taken`, and not \
             after the calibration. Exact, as far as clocks are; a time without an offset is not checkable and is left alone.",
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "times-out-of-order",
    level: Level::Warn,
    title: "Times out of order",
    meaning: "By their own clocks the photos, the job and the calibration do not follow each other as they should.",
    cause: "Photos of an earlier job were picked, the calibration ran before the photos were taken, or a device's clock is wrong.",
    look: "Compare the times on the report with the scan tool's protocol and the clock on the wall.",
    remedy: "Set the clocks right; if the photos are really of another time, take new ones.",
}];

/// A stand that is photographed does not wait longer than this.
const TOGETHER: Duration = Duration::HOUR;
/// Clocks of two devices.
const CLOCKS: Duration = Duration::minutes(5);

fn find(case: &Case) -> Vec<Finding> {
    let mut photos: Vec<(OffsetDateTime, &str)> =
        case.photos.iter().filter_map(|p| Some((p.exif.taken?, p.file))).collect();
    photos.sort();
    let (Some(first), Some(last)) = (photos.first(), photos.last()) else { return Vec::new() };
    let mut found = Vec::new();
    let mut say = |message: String, file: &str| {
        found.push(Finding::new("times-out-of-order", Level::Warn, message).in_photo(file));
    };
    if last.0 - first.0 > TOGETHER {
        let message = format!(
            "{} was taken {} after {}: the set-up may have changed in between.",
            last.1,
            words(last.0 - first.0),
            first.1
        );
        say(message, last.1);
    }
    if let Some(taken) = case.job.taken {
        let far = |p: &&(OffsetDateTime, &str)| (p.0 - taken).abs() > TOGETHER;
        if let Some(photo) = photos.iter().rev().find(far) {
            let message = format!(
                "The job says that its photos were taken {} {} {} was, by its own record.",
                words((photo.0 - taken).abs()),
                if photo.0 > taken { "before" } else { "after" },
                photo.1
            );
            say(message, photo.1);
        }
    }
    let ran = case.job.calibration.as_ref().filter(|c| c.result != "not-run").and_then(|c| c.at);
    if let Some(at) = ran.filter(|at| first.0 > *at + CLOCKS) {
        let message = format!(
            "The calibration ran {} before the first photo was taken: the photos do not show where the stand stood then.",
            words(first.0 - at)
        );
        say(message, first.1);
    }
    found
}

fn words(gap: Duration) -> String {
    match gap.whole_minutes() {
        minutes if minutes < 120 => format!("{minutes} min"),
        minutes if minutes < 48 * 60 => format!("{} h", minutes / 60),
        minutes => format!("{} days", minutes / (24 * 60)),
    }
}
