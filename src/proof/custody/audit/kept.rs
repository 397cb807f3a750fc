//! What of an archive's jobs is held against the log: which photos each rests on, and what it says.

use std::collections::{BTreeSet, HashMap};

use super::judged::Judged;
use crate::record::JobRecord;
use crate::transparency::{Attempt, Commitments, OrderSalt, order, order_name, photo_commitment};
use crate::verdict::Verdict;

/// A job of the archive.
pub(super) struct Kept {
    pub(super) path: String,
    pub(super) sealed: bool,
    pub(super) verdict: &'static str,
    pub(super) files: Commitments,
    /// Photos of places that the stand has left since, as the job says itself; its verdict is not about them.
    left: Vec<String>,
    series: Option<String>,
    setup: String,
}

impl Kept {
    fn of(line: &Judged, record: &JobRecord) -> Self {
        Kept {
            path: line.path.clone(),
            sealed: line.evidence.is_some(),
            verdict: record.verdict.name(),
            files: Commitments::of(record),
            left: left(record),
            series: record.context.series.clone(),
            setup: record.context.setup.clone(),
        }
    }

    fn has(&self, photo: &String) -> bool {
        self.files.photos.binary_search(photo).is_ok()
    }

    /// Whether an attempt said something else about the same stand: about the very photos, or, where it said that the
    /// stand was outside, about any that this verdict rests on. What was open may have been settled by more photos.
    fn contradicts(&self, attempt: &Attempt) -> bool {
        let rests_on = |photo: &String| self.has(photo) && !self.left.contains(photo);
        let outside = attempt.verdict == Verdict::Outside.name();
        self.verdict != attempt.verdict
            && (self.files.photos == attempt.files.photos || outside && attempt.files.photos.iter().any(rests_on))
    }

    /// Whether two jobs are two sensors of one repair order that were set up together.
    fn shares_photos(&self, other: &Kept) -> bool {
        self.series.is_some() && self.series == other.series && self.setup != other.setup
    }
}

/// The photos of all positions but the last.
fn left(record: &JobRecord) -> Vec<String> {
    let Some((_, before)) = record.positions.split_last() else { return Vec::new() };
    let names: BTreeSet<&String> = before.iter().flat_map(|position| &position.photos).collect();
    let photos = record.inputs.iter().filter(|i| i.role == "photo" && names.contains(&i.file));
    photos.map(|i| photo_commitment(&i.sha256)).collect()
}

/// All jobs of an archive.
#[derive(Default)]
pub(super) struct Archive {
    pub(super) jobs: Vec<Kept>,
    by_photo: HashMap<String, Vec<usize>>,
    pub(super) orders: HashMap<String, String>,
}

impl Archive {
    pub(super) fn add(&mut self, line: &Judged, record: &JobRecord, salt: Option<&OrderSalt>) {
        let kept = Kept::of(line, record);
        for photo in &kept.files.photos {
            self.by_photo.entry(photo.clone()).or_default().push(self.jobs.len());
        }
        if let Some(salt) = salt {
            self.orders.insert(order(record, salt), order_name(record).to_owned());
        }
        self.jobs.push(kept);
    }

    /// Whether any job has a photo.
    pub(super) fn has(&self, photo: &str) -> bool {
        self.by_photo.contains_key(photo)
    }

    fn with(&self, photo: &String) -> &[usize] {
        self.by_photo.get(photo).map_or(&[], Vec::as_slice)
    }

    /// Whether one job has all photos of an attempt: scattered over several, the attempt is not there.
    pub(super) fn represents(&self, attempt: &Attempt) -> bool {
        let photos = &attempt.files.photos;
        // The photo in the fewest jobs: the others need be looked for in those alone.
        let Some(rarest) = photos.iter().min_by_key(|photo| self.with(photo).len()) else { return true };
        self.with(rarest).iter().any(|n| photos.iter().all(|photo| self.jobs[*n].has(photo)))
    }

    /// The jobs that say something else than an attempt about the stand of its photos.
    pub(super) fn contradicting(&self, attempt: &Attempt) -> Vec<&Kept> {
        let sharing: BTreeSet<usize> =
            attempt.files.photos.iter().flat_map(|photo| self.with(photo)).copied().collect();
        let sharing: Vec<&Kept> = sharing.into_iter().map(|n| &self.jobs[n]).collect();
        // The attempt as it was: another sensor's job of that order may say something else of the same photos.
        let own = sharing.iter().find(|job| job.files == attempt.files && job.verdict == attempt.verdict).copied();
        let other_sensor = |job: &Kept| own.is_some_and(|own| own.shares_photos(job));
        sharing.into_iter().filter(|job| job.contradicts(attempt) && !other_sensor(job)).collect()
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;
    use time::macros::datetime;

    use super::super::tests::COMMON;
    use super::*;

    /// A job of one repair order whose photos have these digests.
    fn job(setup: &str, verdict: Verdict, photos: &[&str]) -> JobRecord {
        let mut record = COMMON.clone();
        (record.job, record.verdict) = (setup.to_owned(), verdict);
        (record.context.setup, record.context.series) = (setup.to_owned(), Some("R-7".to_owned()));
        let mut input = record.inputs[0].clone();
        record.inputs = photos
            .iter()
            .map(|photo| {
                (input.file, input.sha256) = (format!("photos/{photo}.jpg"), (*photo).to_owned());
                input.clone()
            })
            .collect();
        let (mut sheet, sha256) = (record.inputs[0].clone(), setup.to_owned());
        (sheet.role, sheet.sha256) = ("setup".to_owned(), sha256);
        record.inputs.push(sheet);
        record
    }

    fn archive(jobs: &[&JobRecord]) -> Archive {
        let mut archive = Archive::default();
        for record in jobs {
            let line = json!({ "path": record.job, "exit": 0, "verdict": null, "result": "", "digest": "" });
            archive.add(&serde_json::from_value(line).unwrap(), record, None);
        }
        archive
    }

    fn attempt(record: &JobRecord) -> Attempt {
        Attempt::of(record, b"", "verify", datetime!(2026-05-01 08:00 UTC), &[0; 32])
    }

    fn contradicting(jobs: &[&JobRecord], tried: &JobRecord) -> Vec<String> {
        archive(jobs).contradicting(&attempt(tried)).iter().map(|kept| kept.path.clone()).collect()
    }

    #[test]
    fn a_stand_that_was_moved_and_a_second_sensor_contradict_nothing() {
        let outside = job("radar", Verdict::Outside, &["a", "b"]);
        let mut moved = job("radar", Verdict::Within, &["a", "b", "c", "d"]);
        assert_eq!(contradicting(&[&moved], &outside), ["radar"], "the same stand, and more photos of it");
        let position = |after_move: u32, photos: [&str; 2]| {
            let photos = photos.map(|photo| format!("photos/{photo}.jpg"));
            json!({ "after_move": after_move, "photos": photos, "proven_by": [], "aims": [], "figures": [] })
        };
        let positions = [position(0, ["a", "b"]), position(1, ["c", "d"])];
        moved.positions = positions.map(|p| serde_json::from_value(p).unwrap()).to_vec();
        assert!(contradicting(&[&moved], &outside).is_empty(), "what was outside was moved");
        assert!(archive(&[&moved]).represents(&attempt(&outside)));
        let camera = job("camera", Verdict::Within, &["a", "b"]);
        assert!(contradicting(&[&outside, &camera], &outside).is_empty(), "another sensor, and both are there");
        assert_eq!(contradicting(&[&camera], &outside), ["camera"], "the attempt itself is not there");
        let twin = job("radar", Verdict::Within, &["a", "b"]);
        assert_eq!(contradicting(&[&outside, &camera, &twin], &outside), ["radar"], "every job is looked at");
        let open = job("radar", Verdict::NotProven, &["a", "b"]);
        assert!(contradicting(&[&moved], &open).is_empty(), "what was open may be settled by more photos");
    }

    #[test]
    fn an_attempt_is_there_where_one_job_has_all_its_photos() {
        let tried = attempt(&job("radar", Verdict::Outside, &["a", "b"]));
        let (one, other) = (job("x", Verdict::Retake, &["a", "c"]), job("y", Verdict::Retake, &["b"]));
        assert!(!archive(&[&one, &other]).represents(&tried));
        assert!(archive(&[&one, &job("z", Verdict::Retake, &["c", "b", "a"])]).represents(&tried));
        assert!(!archive(&[]).represents(&tried));
    }
}
