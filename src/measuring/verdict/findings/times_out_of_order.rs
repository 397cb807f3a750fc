//! The times of photos and calibration contradict each other.

use time::{Duration, OffsetDateTime, PrimitiveDateTime};

use super::other_day::of_another_day;
use super::{Case, Explanation, Finding, PhotoFacts, Rule};
use crate::folder::Phase;
use crate::photo::Exif;
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

/// Who photographed a set-up calibrates soon (common practice, no source).
const SOON: Duration = Duration::hours(4);

/// Satellites have no time zone: a local time is 14 h from theirs at most, and a phone may keep their last one for hours.
const SATELLITES: Duration = Duration::hours(26);

/// A photo's time and name.
type Taken<'a> = (OffsetDateTime, &'a str);

fn find(case: &Case) -> Vec<Finding> {
    let (before, after) = (times(case, false), times(case, true));
    let ran = case.job.calibration.as_ref().filter(|c| c.result != "not-run").and_then(|c| c.at);
    let wrong = [
        // Where the stand stands now would be proven by where it stood before.
        moves_exchanged(case),
        warned(apart(&before).or_else(|| apart_by_one_phone(case, false))),
        warned(apart(&after).or_else(|| apart_by_one_phone(case, true))),
        warned(not_when_the_job_says(case, &before)),
        warned(not_as_satellites_say(case)),
        ran.and_then(|at| ran_before(case, at, &before)),
        warned(ran.filter(|_| after.is_empty()).and_then(|at| ran_late(at, &before))),
        warned(ran.and_then(|at| not_yet_run(at, &after))),
        warned(phases_exchanged(&before, &after)),
    ];
    let finding = |(level, (message, file)): (Level, (Phrase, &str))| {
        Finding::new("times-out-of-order", level, message).in_photo(file)
    };
    wrong.into_iter().flatten().map(finding).collect()
}

/// Whether a photo is said to be from after the calibration.
fn is_after(case: &Case, file: &str) -> bool {
    case.job.photo_entries.iter().flatten().any(|e| e.file == file && e.phase == Some(Phase::After))
}

/// The known times of the photos from before or after the calibration, in order.
fn times<'a>(case: &Case<'a>, after: bool) -> Vec<Taken<'a>> {
    let photos = case.photos.iter().filter(|p| is_after(case, p.file) == after);
    let mut all: Vec<Taken> = photos.filter_map(|p| Some((p.exif.taken?, p.file))).collect();
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

/// A photo whose own time is not that of the satellites which it received.
fn not_as_satellites_say<'a>(case: &Case<'a>) -> Option<(Phrase, &'a str)> {
    case.photos.iter().find_map(|photo| {
        let satellites = photo.exif.satellites?;
        let gap = (local(photo.exif)? - written(satellites)).abs();
        let message = || phrase!("findings-not-as-satellites-say", photo = photo.file, gap = words(gap));
        (gap > SATELLITES).then(|| (message(), photo.file))
    })
}

/// Photos of one phone, whose clock needs no time zone to tell how far apart they are.
fn apart_by_one_phone<'a>(case: &Case<'a>, after: bool) -> Option<(Phrase, &'a str)> {
    // Those of another day are named as such.
    let other_day: Vec<&str> = of_another_day(case).into_iter().map(|((_, file), _)| file).collect();
    let photos = || case.photos.iter().filter(|p| is_after(case, p.file) == after && !other_day.contains(&p.file));
    let pairs = photos().flat_map(|later| photos().map(move |sooner| (later, sooner)));
    let gap = |(later, sooner): (&PhotoFacts, &PhotoFacts)| {
        one_phone(later, sooner).then(|| later_by(later.exif, sooner.exif)).flatten()
    };
    let gaps = pairs.filter_map(|(later, sooner)| Some((gap((later, sooner))?, later.file, sooner.file)));
    let (gap, last, first) = gaps.filter(|(gap, ..)| *gap > TOGETHER).max()?;
    Some((phrase!("findings-photos-apart", photo = last, gap = words(gap), first = first), last))
}

/// The first photo of where the stand stands now, later than the calibration. Of a stand that was moved one phone's
/// photos from before and after the move tell that it was still being moved, or stood nobody knows where, when it ran.
fn ran_before<'a>(case: &Case<'a>, at: OffsetDateTime, photos: &[Taken<'a>]) -> Option<(Level, (Phrase, &'a str))> {
    let last = case.after_move.iter().max().copied().unwrap_or(0);
    let moves = |file: &str| {
        let mut photos = case.photos.iter().zip(case.after_move);
        photos.find(|(p, _)| p.file == file).map_or(last, |(_, moves)| *moves)
    };
    let (taken, file) = *photos.iter().find(|(_, file)| moves(file) == last).filter(|first| first.0 > at + CLOCKS)?;
    let gap = words(taken - at);
    if last == 0 {
        return Some((Level::Warn, (phrase!("findings-ran-before", gap = gap), file)));
    }
    let here = case.photos.iter().find(|p| p.file == file)?;
    let moved = case.photos.iter().any(|p| moves(p.file) < last && p.exif.taken.is_some() && one_phone(here, p));
    let level = if moved { Level::Stop } else { Level::Warn };
    Some((level, (phrase!("findings-ran-before-move", gap = gap, photo = file), file)))
}

/// So long after the last photo that shows the set-up nobody knows whether it still stood so.
fn ran_late<'a>(at: OffsetDateTime, photos: &[Taken<'a>]) -> Option<(Phrase, &'a str)> {
    let last = photos.last().filter(|last| at - last.0 > SOON)?;
    Some((phrase!("findings-ran-late", gap = words(at - last.0), photo = last.1), last.1))
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
        let stops = one_phone(later, sooner) && later_by(sooner.exif, later.exif)? > ALIKE;
        let warns = || Some(later.exif.taken? + CLOCKS < sooner.exif.taken?);
        if stops { Some(Level::Stop) } else { warns()?.then_some(Level::Warn) }
    };
    let wrong = pairs.filter(|((_, after), (_, before))| after > before);
    let wrong = wrong.filter_map(|((later, _), (sooner, _))| Some((level((later, sooner))?, later.file, sooner.file)));
    let (level, after, before) = wrong.min_by_key(|(level, ..)| *level)?;
    Some((level, (phrase!("findings-moves-exchanged", after = after, before = before), after)))
}

/// Whether one phone took both, as far as their records tell.
fn one_phone(one: &PhotoFacts, other: &PhotoFacts) -> bool {
    one.exif.model.is_some() && (&one.exif.make, &one.exif.model) == (&other.exif.make, &other.exif.model)
}

/// How much later the first was taken, by one phone's clock: as it was set then, where a record lacks the offset.
fn later_by(later: &Exif, sooner: &Exif) -> Option<Duration> {
    if let (Some(later), Some(sooner)) = (later.taken, sooner.taken) {
        return Some(later - sooner);
    }
    Some(local(later)? - local(sooner)?)
}

/// The time as the clock on the wall had it.
fn local(exif: &Exif) -> Option<PrimitiveDateTime> {
    exif.taken.map(written).or_else(|| exif.local_time())
}

fn written(time: OffsetDateTime) -> PrimitiveDateTime {
    PrimitiveDateTime::new(time.date(), time.time())
}

/// A wrong order of which somebody has to know.
fn warned(wrong: Option<(Phrase, &str)>) -> Option<(Level, (Phrase, &str))> {
    wrong.map(|wrong| (Level::Warn, wrong))
}

fn words(gap: Duration) -> Phrase {
    let figure = |n: i64| Figure::plain(n as f64);
    match gap.whole_minutes() {
        minutes if minutes < 120 => phrase!("findings-gap-minutes", n = figure(minutes)),
        minutes if minutes < 48 * 60 => phrase!("findings-gap-hours", n = figure(minutes / 60)),
        minutes => phrase!("findings-gap-days", n = figure(minutes / (24 * 60))),
    }
}
