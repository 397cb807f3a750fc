//! What of an archive's jobs is held against the log: which photos each rests on, and what it says.

use std::collections::{BTreeMap, BTreeSet, HashMap, HashSet};

use super::alike::Alike;
use super::judged::Judged;
use super::logged_when::Latest;
use super::proven::{Proven, is_copy};
use super::sensors::Sensor;
use crate::custody::moments::latest;
use crate::record::JobRecord;
use crate::transparency::{Attempt, Commitments, OrderSalt, order_name, orders, photo_commitment};
use crate::verdict::Verdict;

/// A job of the archive.
pub(super) struct Kept {
    pub(super) path: String,
    pub(super) sealed: bool,
    pub(super) verdict: &'static str,
    pub(super) files: Commitments,
    /// Photos of places that the stand has left since, as the job says itself; its verdict is not about them.
    left: Vec<String>,
    /// Their names.
    left_files: BTreeSet<String>,
    sensor: Sensor,
    /// Which attempt it says that it is.
    attempt: Option<u32>,
    /// What an entry may have as its repair order; empty where the log's secret was not given.
    orders: Vec<String>,
    /// Whether its photos' digests are those of photos, or of the log; a masked copy's are as it states them.
    bound: bool,
    /// The entry of which a masked copy holds the proof.
    entry: Option<Vec<u8>>,
    /// Before when it cannot have been logged.
    pub(super) latest: Option<Latest>,
}

impl Kept {
    fn of(line: &Judged, record: &JobRecord, salt: Option<&OrderSalt>, proven: Option<Proven>) -> Self {
        let copy = is_copy(line);
        Kept {
            path: line.path.clone(),
            sealed: line.evidence.is_some(),
            verdict: record.verdict.name(),
            files: Commitments::of(record),
            left: left(record),
            left_files: left_files(record),
            sensor: Sensor::of(record),
            attempt: record.context.attempt,
            orders: salt.map_or(Vec::new(), |salt| orders(record, salt).to_vec()),
            bound: !copy,
            entry: proven.filter(|_| copy).map(|proven| proven.proof.entry),
            latest: latest(record),
        }
    }

    fn has(&self, photo: &String) -> bool {
        self.files.photos.binary_search(photo).is_ok()
    }

    /// Whether it is filed as an attempt was: as that one of its repair order, where the secret tells which that was. A
    /// number, or an order, that was typed only afterwards is no other one.
    fn is_filed_as(&self, attempt: &Attempt, by_order: bool) -> bool {
        attempt.attempt.is_none_or(|number| self.attempt == Some(number))
            && (!by_order || self.orders.is_empty() || self.orders.contains(&attempt.order))
    }

    /// Whether an attempt said something else about the same stand: about the very photos, or, where it said that the
    /// stand was outside, about any that this verdict rests on. What was open may have been settled by more photos.
    fn contradicts(&self, attempt: &Attempt) -> bool {
        let rests_on = |photo: &String| self.has(photo) && !self.left.contains(photo);
        let outside = attempt.verdict == Verdict::Outside.name();
        self.verdict != attempt.verdict
            && (self.files.photos == attempt.files.photos || outside && attempt.files.photos.iter().any(rests_on))
    }
}

/// Where an attempt is.
pub(super) enum Holding<'a> {
    /// One job has all its photos, and is filed as it was.
    Whole,
    /// All its photos are in jobs that are filed as another attempt, or for another repair order.
    Refiled(&'a Kept),
    /// A masked copy alone says that it has them.
    Stated(&'a Kept),
    /// No job has all of them.
    Nowhere,
}

/// The photos of all positions but the last.
fn left(record: &JobRecord) -> Vec<String> {
    let names = left_files(record);
    let photos = record.inputs.iter().filter(|i| i.role == "photo" && names.contains(&i.file));
    photos.map(|i| photo_commitment(&i.sha256)).collect()
}

fn left_files(record: &JobRecord) -> BTreeSet<String> {
    let before = record.positions.split_last().map_or(&[][..], |(_, before)| before);
    before.iter().flat_map(|position| position.photos.iter().cloned()).collect()
}

/// All jobs of an archive.
#[derive(Default)]
pub(super) struct Archive {
    pub(super) jobs: Vec<Kept>,
    by_photo: HashMap<String, Vec<usize>>,
    /// Photos that jobs share otherwise than byte for byte.
    alike: Vec<Alike>,
    pub(super) orders: HashMap<String, String>,
    /// All that entries may have as the repair order of one of these jobs.
    filed: HashSet<String>,
    /// The first entry that the log's secret is known to have salted; none where there is no such one.
    secret_from: Option<u64>,
}

impl Archive {
    pub(super) fn add(&mut self, line: &Judged, record: &JobRecord, salt: Option<&OrderSalt>, proven: Option<Proven>) {
        let kept = Kept::of(line, record, salt, proven);
        for photo in &kept.files.photos {
            self.by_photo.entry(photo.clone()).or_default().push(self.jobs.len());
        }
        if let Some(order) = kept.orders.first() {
            self.orders.insert(order.clone(), order_name(record).to_owned());
        }
        self.filed.extend(kept.orders.iter().cloned());
        self.alike.extend(Alike::of(line));
        self.jobs.push(kept);
    }

    /// Looks from which entry on the secret that was given is the log's: a log's secret may have been replaced, and the one
    /// that was given may be another log's. Nobody is accused of another order by entries that it does not tell. Whether it
    /// tells of any.
    pub(super) fn try_secret(&mut self, attempts: &BTreeMap<u64, Attempt>) -> bool {
        self.secret_from = attempts.iter().find(|(_, attempt)| self.filed.contains(&attempt.order)).map(|(n, _)| *n);
        self.secret_from.is_some()
    }

    /// Masked copies count once the log has the entry of which they hold the proof.
    pub(super) fn bind(&mut self, logged: impl Fn(&Vec<u8>) -> bool) {
        for job in self.jobs.iter_mut().filter(|job| !job.bound) {
            job.bound = job.entry.as_ref().is_some_and(&logged);
        }
    }

    /// Whether any job has a photo.
    pub(super) fn has(&self, photo: &String) -> bool {
        self.with(photo).iter().any(|n| self.jobs[*n].bound)
    }

    fn with(&self, photo: &String) -> &[usize] {
        self.by_photo.get(photo).map_or(&[], Vec::as_slice)
    }

    /// Where an attempt is. One job has to have all its photos: scattered over several, it is not there.
    pub(super) fn holding(&self, n: u64, attempt: &Attempt) -> Holding<'_> {
        let photos = &attempt.files.photos;
        // The photo in the fewest jobs: the others need be looked for in those alone.
        let Some(rarest) = photos.iter().min_by_key(|photo| self.with(photo).len()) else { return Holding::Whole };
        let jobs = self.with(rarest).iter().map(|n| &self.jobs[*n]);
        let all: Vec<&Kept> = jobs.filter(|job| photos.iter().all(|photo| job.has(photo))).collect();
        let by_order = self.secret_from.is_some_and(|from| from <= n);
        let first = |bound: bool, filed: bool| {
            all.iter().copied().find(|job| job.bound == bound && job.is_filed_as(attempt, by_order) == filed)
        };
        match (first(true, true), first(true, false), first(false, true)) {
            (Some(_), ..) => Holding::Whole,
            (None, Some(job), _) => Holding::Refiled(job),
            (None, None, Some(copy)) => Holding::Stated(copy),
            (None, None, None) => Holding::Nowhere,
        }
    }

    /// The jobs that say something else than an attempt about the stand of its photos.
    pub(super) fn contradicting(&self, attempt: &Attempt) -> Vec<&Kept> {
        let sharing: BTreeSet<usize> =
            attempt.files.photos.iter().flat_map(|photo| self.with(photo)).copied().collect();
        let sharing: Vec<&Kept> = sharing.into_iter().map(|n| &self.jobs[n]).collect();
        // The attempt as it was: another sensor's job of that order may say something else of the same photos.
        let is_it = |job: &Kept| job.bound && job.files == attempt.files && job.verdict == attempt.verdict;
        let own = sharing.iter().copied().find(|job| is_it(job));
        let other_sensor = |job: &Kept| own.is_some_and(|own| own.sensor.is_beside(&job.sensor));
        let mut found: Vec<&Kept> =
            sharing.into_iter().filter(|job| job.contradicts(attempt) && !other_sensor(job)).collect();
        // Of photos that were saved again the log knows nothing, but the attempt's own job has the ones that it knows.
        if let Some(own) = own.filter(|own| own.verdict == Verdict::Outside.name()) {
            for job in self.within_by_alike(own).filter(|job| !other_sensor(job)) {
                if !found.iter().any(|known| known.path == job.path) {
                    found.push(job);
                }
            }
        }
        found
    }

    /// Jobs that are within by a photo that another job has too, saved again, of where their stand stands at last.
    fn within_by_alike<'a>(&'a self, own: &'a Kept) -> impl Iterator<Item = &'a Kept> {
        self.alike.iter().filter_map(|alike| alike.beside(&own.path)).filter_map(|(path, photo)| {
            let job = self.jobs.iter().find(|job| job.path == path)?;
            (job.verdict == Verdict::Within.name() && !job.left_files.contains(photo)).then_some(job)
        })
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;
    use time::macros::datetime;

    use super::super::tests::by_sheet;
    use super::*;
    use crate::words::phrase;

    /// A job of one repair order whose photos have these digests; a camera's target stands elsewhere than a radar's.
    fn job(setup: &str, verdict: Verdict, photos: &[&str]) -> JobRecord {
        let mut record = by_sheet(setup, if setup == "camera" { 900.0 } else { 0.0 });
        (record.job, record.verdict) = (setup.to_owned(), verdict);
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
        archive_with(jobs, &[])
    }

    /// The later jobs of some pairs have a photo of the earlier ones, `bytes` or `view`.
    fn archive_with(jobs: &[&JobRecord], pairs: &[(&str, &str, [&str; 2], &str)]) -> Archive {
        let mut archive = Archive::default();
        for record in jobs {
            let own = pairs.iter().filter(|(later, ..)| *later == record.job);
            let leads = own.map(|(_, earlier, [photo, other], how)| {
                let said = phrase!("evidence-photo-of-another-job", photo = *photo, other = *other, how = *how);
                json!({ "code": "photo-of-another-job", "other": earlier, "message": "", "message_phrase": said })
            });
            let leads: Vec<_> = leads.collect();
            let line = json!({
                "path": record.job, "exit": 0, "verdict": null, "result": "", "digest": "", "across": leads,
            });
            archive.add(&serde_json::from_value(line).unwrap(), record, Some(&[0; 32]), None);
        }
        archive.secret_from = Some(0);
        archive
    }

    fn is_whole(jobs: &[&JobRecord], tried: &JobRecord) -> bool {
        matches!(archive(jobs).holding(0, &attempt(tried)), Holding::Whole)
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
        assert!(is_whole(&[&moved], &outside));
        let camera = job("camera", Verdict::Within, &["a", "b"]);
        assert!(contradicting(&[&outside, &camera], &outside).is_empty(), "another sensor, and both are there");
        assert_eq!(contradicting(&[&camera], &outside), ["camera"], "the attempt itself is not there");
        let renamed = job("renamed", Verdict::Within, &["a", "b"]);
        assert_eq!(contradicting(&[&outside, &renamed], &outside), ["renamed"], "the same place by another name");
        let mut for_another = camera.clone();
        for_another.context.vehicle = Some("another".to_owned());
        assert_eq!(contradicting(&[&outside, &for_another], &outside), ["camera"], "another vehicle");
        let twin = job("radar", Verdict::Within, &["a", "b"]);
        assert_eq!(contradicting(&[&outside, &camera, &twin], &outside), ["radar"], "every job is looked at");
        let open = job("radar", Verdict::NotProven, &["a", "b"]);
        assert!(contradicting(&[&moved], &open).is_empty(), "what was open may be settled by more photos");
    }

    /// One byte behind a photo makes it another one for the log, and not for whoever compares its markers.
    #[test]
    fn a_verdict_restated_by_photos_that_were_saved_again_is_named() {
        let outside = job("radar", Verdict::Outside, &["a", "b"]);
        let tried = attempt(&outside);
        let named = |again: &JobRecord, photos: [&str; 2], how: &str| -> Vec<Vec<String>> {
            let ways = [
                (again.job.as_str(), "radar", photos, how),
                ("radar", again.job.as_str(), [photos[1], photos[0]], how),
            ];
            let paths = ways.map(|way| {
                let archive = archive_with(&[&outside, again], &[way]);
                archive.contradicting(&tried).iter().map(|kept| kept.path.clone()).collect()
            });
            paths.to_vec()
        };
        let photo = ["photos/a0.jpg", "photos/a.jpg"];
        let again = |setup: &str, verdict: Verdict| job(setup, verdict, &["a0", "b0"]);
        let wide = again("wide", Verdict::Within);
        assert_eq!(named(&wide, photo, "view"), [["wide"], ["wide"]]);
        assert!(archive(&[&outside, &wide]).contradicting(&tried).is_empty(), "without the lead nothing joins them");
        // Another sensor's job, one that says nothing better, and photos of where the stand stood before it was moved.
        let nothing: [Vec<String>; 2] = [vec![], vec![]];
        assert_eq!(named(&again("camera", Verdict::Within), photo, "view"), nothing);
        assert_eq!(named(&again("wide", Verdict::NotProven), photo, "view"), nothing);
        let mut moved = job("wide", Verdict::Within, &["a0", "c"]);
        let position = |after_move: u32, photo: &str| json!({ "after_move": after_move, "photos": [photo], "proven_by": [], "aims": [], "figures": [] });
        let positions = [position(0, "photos/a0.jpg"), position(1, "photos/c.jpg")];
        moved.positions = positions.map(|p| serde_json::from_value(p).unwrap()).to_vec();
        assert_eq!(named(&moved, photo, "view"), nothing);
        assert_eq!(named(&moved, ["photos/c.jpg", "photos/a.jpg"], "view"), [["wide"], ["wide"]]);
    }

    #[test]
    fn an_attempt_is_there_where_one_job_has_all_its_photos() {
        let tried = job("radar", Verdict::Outside, &["a", "b"]);
        let (one, other) = (job("x", Verdict::Retake, &["a", "c"]), job("y", Verdict::Retake, &["b"]));
        assert!(!is_whole(&[&one, &other], &tried));
        assert!(is_whole(&[&one, &job("z", Verdict::Retake, &["c", "b", "a"])], &tried));
        assert!(!is_whole(&[], &tried));
    }

    #[test]
    fn an_attempt_is_filed_as_it_was_logged() {
        let tried = job("radar", Verdict::Outside, &["a", "b"]);
        let other = |change: fn(&mut JobRecord)| {
            let mut record = tried.clone();
            change(&mut record);
            record
        };
        let refiled =
            |jobs: &[&JobRecord], tried| matches!(archive(jobs).holding(0, &attempt(tried)), Holding::Refiled(_));
        let (number, order) =
            (other(|r| r.context.attempt = Some(2)), other(|r| r.context.series = Some("R-8".to_owned())));
        assert!(refiled(&[&number], &tried) && refiled(&[&order, &number], &tried));
        assert!(is_whole(&[&order, &tried], &tried));
        assert!(refiled(&[&other(|r| r.context.attempt = None)], &tried));
        // What was typed afterwards, before it was sealed.
        let bare = other(|r| (r.context.series, r.context.attempt) = (None, None));
        assert!(is_whole(&[&tried], &bare) && refiled(&[&bare], &tried));
        let corrected = other(|r| r.context.vehicle = Some("corrected".to_owned()));
        assert!(is_whole(&[&corrected], &tried));
    }
}
