//! Photos whose own date is not the job's.

use time::{Duration, PrimitiveDateTime};

use super::{Case, Explanation, Finding, Rule};
use crate::verdict::Level;
use crate::words::{Value, phrase};

pub(super) const RULE: Rule = Rule {
    codes: &["photo-of-another-day"],
    title: "Photos of another day",
    rationale: "A photo of last week shows where the stand stood last week.",
    method: "For photos whose record states no offset from UTC: their local time against the job's, or else against the first \
             such photo's, both as written: more than 14 h apart and of another date. Times with an offset are compared to \
             the minute by `times-out-of-order`. A clock that is set wrong, or a phone that keeps the time of another \
             continent, looks the same; a clock that was set back on purpose is not seen.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "photo-of-another-day",
    level: Level::Warn,
    title: "Photo of another day",
    meaning: "By its own record the photo was taken on another day than the job. That is no proof that it was.",
    cause: "A photo of an earlier job was picked, the job was written days later, or the phone's date is wrong.",
    look: "Compare the date in the phone's gallery with the job's, and the vehicle in the photo with the job's.",
    remedy: "Use the photos of this job; set the phone's date right and let it record its time zone.",
}];

/// Nobody's clock is off by more without being of another day.
const APART: Duration = Duration::hours(14);

fn find(case: &Case) -> Vec<Finding> {
    let local = |t: time::OffsetDateTime| PrimitiveDateTime::new(t.date(), t.time());
    let photos: Vec<(PrimitiveDateTime, &str)> =
        case.photos.iter().filter_map(|p| Some((p.exif.local_time()?, p.file))).collect();
    let Some(wanted) = case.job.taken.map(local).or(photos.first().map(|p| p.0)) else { return Vec::new() };
    let of_another_day =
        |(at, _): &&(PrimitiveDateTime, &str)| at.date() != wanted.date() && (*at - wanted).abs() > APART;
    let finding = |(at, file): &(PrimitiveDateTime, &str)| {
        let [day, wanted] = [at.date(), wanted.date()].map(|d| Value::moment(d.to_string()));
        let message = match case.job.taken {
            Some(_) => phrase!("findings-other-day-than-job", photo = *file, day = day, wanted = wanted),
            None => phrase!("findings-other-day-than-photo", photo = *file, day = day, wanted = wanted),
        };
        Finding::new("photo-of-another-day", Level::Warn, message).in_photo(file)
    };
    photos.iter().filter(of_another_day).map(finding).collect()
}
