//! Photos whose own date is not the job's.

use time::{Duration, PrimitiveDateTime};

use super::{Case, Explanation, Finding, Rule};
use crate::verdict::Level;
use crate::words::{Value, phrase};

pub(super) const RULE: Rule =
    Rule { name: "other-day", codes: &["photo-of-another-day"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("photo-of-another-day", Level::Warn)];

/// Nobody's clock is off by more without being of another day.
const APART: Duration = Duration::hours(14);

/// A photo's local time and name.
type Taken<'a> = (PrimitiveDateTime, &'a str);

fn find(case: &Case) -> Vec<Finding> {
    let finding = |((at, file), wanted): (Taken, PrimitiveDateTime)| {
        let [day, wanted] = [at.date(), wanted.date()].map(|d| Value::moment(d.to_string()));
        let message = match case.job.taken {
            Some(_) => phrase!("findings-other-day-than-job", photo = file, day = day, wanted = wanted),
            None => phrase!("findings-other-day-than-photo", photo = file, day = day, wanted = wanted),
        };
        Finding::new("photo-of-another-day", Level::Warn, message).in_photo(file)
    };
    of_another_day(case).into_iter().map(finding).collect()
}

/// The photos of another day, and the time that they should be near to.
pub(super) fn of_another_day<'a>(case: &Case<'a>) -> Vec<(Taken<'a>, PrimitiveDateTime)> {
    let local = |t: time::OffsetDateTime| PrimitiveDateTime::new(t.date(), t.time());
    let photos: Vec<Taken> = case.photos.iter().filter_map(|p| Some((p.exif.local_time()?, p.file))).collect();
    let Some(wanted) = case.job.taken.map(local).or(photos.first().map(|p| p.0)) else { return Vec::new() };
    let apart = |(at, _): &Taken| at.date() != wanted.date() && (*at - wanted).abs() > APART;
    photos.into_iter().filter(apart).map(|photo| (photo, wanted)).collect()
}
