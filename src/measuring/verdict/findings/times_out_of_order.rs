//! The times of photos and calibration contradict each other.

use time::{Duration, OffsetDateTime};

use super::{Case, Explanation, Finding, Rule};
use crate::folder::Phase;
use crate::verdict::Level;

pub(super) const RULE: Rule =
    Rule { name: "times-out-of-order", codes: &["times-out-of-order"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("times-out-of-order", Level::Warn)];

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
        |(message, file): (String, &str)| Finding::new("times-out-of-order", Level::Warn, message).in_photo(file);
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

fn apart<'a>(photos: &[Taken<'a>]) -> Option<(String, &'a str)> {
    let (first, last) = (photos.first()?, photos.last()?);
    let gap = last.0 - first.0;
    let message =
        || format!("{} was taken {} after {}: the set-up may have changed in between.", last.1, words(gap), first.1);
    (gap > TOGETHER).then(|| (message(), last.1))
}

fn not_when_the_job_says<'a>(case: &Case, photos: &[Taken<'a>]) -> Option<(String, &'a str)> {
    let taken = case.job.taken?;
    let photo = photos.iter().rev().find(|p| (p.0 - taken).abs() > TOGETHER)?;
    let message = format!(
        "The job says that its photos were taken {} {} {} was, by its own record.",
        words((photo.0 - taken).abs()),
        if photo.0 > taken { "before" } else { "after" },
        photo.1
    );
    Some((message, photo.1))
}

fn ran_before<'a>(at: OffsetDateTime, photos: &[Taken<'a>]) -> Option<(String, &'a str)> {
    let first = photos.first().filter(|first| first.0 > at + CLOCKS)?;
    let message = format!(
        "The calibration ran {} before the first photo was taken: the photos do not show where the stand stood then.",
        words(first.0 - at)
    );
    Some((message, first.1))
}

fn not_yet_run<'a>(at: OffsetDateTime, photos: &[Taken<'a>]) -> Option<(String, &'a str)> {
    let first = photos.first().filter(|first| first.0 + CLOCKS < at)?;
    let message = format!(
        "{} is listed as taken after the calibration, but was taken {} before it ran: it does not show where the stand stood afterwards.",
        first.1,
        words(at - first.0)
    );
    Some((message, first.1))
}

fn phases_exchanged<'a>(before: &[Taken<'a>], after: &[Taken<'a>]) -> Option<(String, &'a str)> {
    let (last, first) = (before.last()?, after.first()?);
    let message = || {
        format!(
            "{} is listed as taken after the calibration and {} as taken before it, but the other way round by their own records.",
            first.1, last.1
        )
    };
    (first.0 < last.0).then(|| (message(), first.1))
}

fn words(gap: Duration) -> String {
    match gap.whole_minutes() {
        minutes if minutes < 120 => format!("{minutes} min"),
        minutes if minutes < 48 * 60 => format!("{} h", minutes / 60),
        minutes => format!("{} days", minutes / (24 * 60)),
    }
}
