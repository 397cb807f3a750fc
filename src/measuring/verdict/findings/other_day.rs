//! Photos whose own date is not the job's.

use time::{Duration, PrimitiveDateTime};

use super::{Case, Explanation, Finding, Rule};
use crate::verdict::Level;

pub(super) const RULE: Rule =
    Rule { name: "other-day", codes: &["photo-of-another-day"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("photo-of-another-day", Level::Warn)];

/// Nobody's clock is off by more without being of another day.
const APART: Duration = Duration::hours(14);

fn find(case: &Case) -> Vec<Finding> {
    let local = |t: time::OffsetDateTime| PrimitiveDateTime::new(t.date(), t.time());
    let photos: Vec<(PrimitiveDateTime, &str)> =
        case.photos.iter().filter_map(|p| Some((p.exif.local_time()?, p.file))).collect();
    let Some(wanted) = case.job.taken.map(local).or(photos.first().map(|p| p.0)) else { return Vec::new() };
    let of_another_day =
        |(at, _): &&(PrimitiveDateTime, &str)| at.date() != wanted.date() && (*at - wanted).abs() > APART;
    let whose = if case.job.taken.is_some() { "the job" } else { "the job's first photo" };
    let finding = |(at, file): &(PrimitiveDateTime, &str)| {
        let message = format!(
            "{file} was taken on {} by its own record, {whose} on {}. Use photos of this job, or set the clock right.",
            at.date(),
            wanted.date()
        );
        Finding::new("photo-of-another-day", Level::Warn, message).in_photo(file)
    };
    photos.iter().filter(of_another_day).map(finding).collect()
}
