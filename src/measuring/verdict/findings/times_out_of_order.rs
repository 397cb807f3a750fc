//! The times of photos and calibration contradict each other.

use time::{Duration, OffsetDateTime};

use super::{Case, Explanation, Finding, PhotoFacts, Rule};
use crate::folder::Phase;
use crate::verdict::Level;
use crate::words::{Figure, Phrase, phrase};

pub(super) const RULE: Rule =
    Rule { name: "times-out-of-order", codes: &["times-out-of-order"], touches: super::Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("times-out-of-order", Level::Warn)];

/// A stand that is photographed does not wait longer than this.
const TOGETHER: Duration = Duration::HOUR;
/// Clocks of two devices.
const CLOCKS: Duration = Duration::minutes(5);

/// Clocks of two devices of one make and model, which may seem one.
const ALIKE: Duration = Duration::MINUTE;

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
    let finding = |level: Level, (message, file): (Phrase, &str)| {
        Finding::new("times-out-of-order", level, message).in_photo(file)
    };
    let by_clocks = wrong.into_iter().flatten().map(|wrong| finding(Level::Warn, wrong));
    // Where the stand stands now would be proven by where it stood before.
    moves_exchanged(case).map(|(level, wrong)| finding(level, wrong)).into_iter().chain(by_clocks).collect()
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

/// A photo said to be from after a move of the stand that was taken before one from before that move. One phone's clock tells
/// which was first however wrong it is; clocks of two phones as far as they agree.
fn moves_exchanged<'a>(case: &Case<'a>) -> Option<(Level, (Phrase, &'a str))> {
    let photos = || case.photos.iter().zip(case.after_move);
    let pairs = photos().flat_map(|later| photos().map(move |sooner| (later, sooner)));
    let level = |(later, sooner): (&PhotoFacts, &PhotoFacts)| {
        let one_phone = later.exif.model.is_some()
            && (&later.exif.make, &later.exif.model) == (&sooner.exif.make, &sooner.exif.model);
        let stops = one_phone && later.exif.local_time()? + ALIKE < sooner.exif.local_time()?;
        let warns = || Some(later.exif.taken? + CLOCKS < sooner.exif.taken?);
        if stops { Some(Level::Stop) } else { warns()?.then_some(Level::Warn) }
    };
    let wrong = pairs.filter(|((_, after), (_, before))| after > before);
    let wrong = wrong.filter_map(|((later, _), (sooner, _))| Some((level((later, sooner))?, later.file, sooner.file)));
    let (level, after, before) = wrong.min_by_key(|(level, ..)| *level)?;
    Some((level, (phrase!("findings-moves-exchanged", after = after, before = before), after)))
}

fn words(gap: Duration) -> Phrase {
    let figure = |n: i64| Figure::plain(n as f64);
    match gap.whole_minutes() {
        minutes if minutes < 120 => phrase!("findings-gap-minutes", n = figure(minutes)),
        minutes if minutes < 48 * 60 => phrase!("findings-gap-hours", n = figure(minutes / 60)),
        minutes => phrase!("findings-gap-days", n = figure(minutes / (24 * 60))),
    }
}
