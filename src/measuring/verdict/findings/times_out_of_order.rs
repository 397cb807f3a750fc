//! The times of photos and calibration contradict each other.

use time::{Duration, OffsetDateTime};

use super::{Case, Explanation, Finding, Rule};
use crate::folder::Phase;
use crate::verdict::Level;
use crate::words::{Figure, Phrase, phrase};

pub(super) const RULE: Rule = Rule {
    codes: &["times-out-of-order"],
    title: "Times out of order",
    rationale: "Photos prove where the stand stood when they were taken, not an hour later.",
    method: "Times that state their offset from UTC: photos of one job (of each phase, where it has two) within an hour of each other, those from \
             before within an hour of the job's `taken` and not after the calibration, those from after it not before it, and all from before earlier than all from after. \
             Exact, as far as clocks are; a time without an offset is not checkable and is left alone.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "times-out-of-order",
    level: Level::Warn,
    title: "Times out of order",
    meaning: "By their own clocks the photos, the job and the calibration do not follow each other as they should.",
    cause: "Photos of an earlier job were picked, the calibration ran before the photos were taken, or a device's clock is wrong.",
    look: "Compare the times on the report with the scan report and the clock on the wall.",
    remedy: "Set the clocks right; if the photos are really of another time, take new ones.",
}];

/// A stand that is photographed does not wait longer than this.
const TOGETHER: Duration = Duration::HOUR;
/// Clocks of two devices.
const CLOCKS: Duration = Duration::minutes(5);

/// A photo's time and name.
type Taken<'a> = (OffsetDateTime, &'a str);

fn find(case: &Case) -> Vec<Finding> {
    let after = times(case, |phase| phase == Some(Phase::After));
    let before = times(case, |phase| phase != Some(Phase::After));
    let ran = case.job.calibration.as_ref().filter(|c| c.result != "not-run").and_then(|c| c.at);
    let wrong = [
        apart(&before),
        apart(&after),
        not_when_the_job_says(case, &before),
        ran.and_then(|at| ran_before(at, &before)),
        ran.and_then(|at| not_yet_run(at, &after)),
        phases_exchanged(&before, &after),
    ];
    let finding =
        |(message, file): (Phrase, &str)| Finding::new("times-out-of-order", Level::Warn, message).in_photo(file);
    wrong.into_iter().flatten().map(finding).collect()
}

/// The known times of the photos of some phase, in order.
fn times<'a>(case: &'a Case, of: impl Fn(Option<Phase>) -> bool) -> Vec<Taken<'a>> {
    let phase = |file: &str| {
        let mut entries = case.job.photo_entries.iter().flatten();
        entries.find(|e| e.file == file).and_then(|e| e.phase)
    };
    let mut all: Vec<Taken> =
        case.photos.iter().filter(|p| of(phase(p.file))).filter_map(|p| Some((p.exif.taken?, p.file))).collect();
    all.sort();
    all
}

fn apart<'a>(photos: &[Taken<'a>]) -> Option<(Phrase, &'a str)> {
    let (first, last) = (photos.first()?, photos.last()?);
    let gap = last.0 - first.0;
    let message = || phrase!("findings-photos-apart", photo = last.1, gap = words(gap), first = first.1);
    (gap > TOGETHER).then(|| (message(), last.1))
}

fn not_when_the_job_says<'a>(case: &Case, photos: &[Taken<'a>]) -> Option<(Phrase, &'a str)> {
    let taken = case.job.taken?;
    let photo = photos.iter().rev().find(|p| (p.0 - taken).abs() > TOGETHER)?;
    let way = if photo.0 > taken { "before" } else { "after" };
    let gap = words((photo.0 - taken).abs());
    Some((phrase!("findings-not-when-job-says", way = way, gap = gap, photo = photo.1), photo.1))
}

fn ran_before<'a>(at: OffsetDateTime, photos: &[Taken<'a>]) -> Option<(Phrase, &'a str)> {
    let first = photos.first().filter(|first| first.0 > at + CLOCKS)?;
    Some((phrase!("findings-ran-before", gap = words(first.0 - at)), first.1))
}

fn not_yet_run<'a>(at: OffsetDateTime, photos: &[Taken<'a>]) -> Option<(Phrase, &'a str)> {
    let first = photos.first().filter(|first| first.0 + CLOCKS < at)?;
    Some((phrase!("findings-not-yet-run", photo = first.1, gap = words(at - first.0)), first.1))
}

fn phases_exchanged<'a>(before: &[Taken<'a>], after: &[Taken<'a>]) -> Option<(Phrase, &'a str)> {
    let (last, first) = (before.last()?, after.first()?);
    let message = || phrase!("findings-phases-exchanged", after = first.1, before = last.1);
    (first.0 < last.0).then(|| (message(), first.1))
}

fn words(gap: Duration) -> Phrase {
    let figure = |n: i64| Figure::plain(n as f64);
    match gap.whole_minutes() {
        minutes if minutes < 120 => phrase!("findings-gap-minutes", n = figure(minutes)),
        minutes if minutes < 48 * 60 => phrase!("findings-gap-hours", n = figure(minutes / 60)),
        minutes => phrase!("findings-gap-days", n = figure(minutes / (24 * 60))),
    }
}
