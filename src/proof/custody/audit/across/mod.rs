//! What only an archive shows: a photo that serves two jobs, a set-up that two
//! jobs share to within the noise of their photos, a file that one job has otherwise than its neighbours.
//!
//! These are leads for an auditor with their limits said, not proof of intent:
//! a folder that was copied, or a test of the camera, looks the same.

mod alike;
mod inputs;
mod numbers;
mod photos;
mod setups;
mod triples;
mod values;

use std::collections::BTreeMap;
use std::hash::RandomState;

use super::failed::LedgerError;
use super::judged::{Judged, Lead, Outcome};
use super::ledger::{Ledger, each_outcome};
use super::sensors::{Sensor, Vehicle, may_be_one};
use crate::record::{InputRecord, JobRecord};
use crate::words::{Language, Phrase};
use numbers::hashed;

/// Looks for leads over all lines of an audit, which begin at these places,
/// reading a few results at a time. What stays in memory of a job are numbers.
///
/// # Errors
/// A result cannot be read.
pub(super) fn leads(ledger: &Ledger, places: &[u64]) -> Result<BTreeMap<usize, Vec<Lead>>, LedgerError> {
    let mut jobs = Jobs::default();
    each_outcome(ledger, places.iter().map(|place| ledger.line(*place)), |n, _, outcome| jobs.add(n, &outcome))?;
    let mut found: BTreeMap<usize, Vec<Lead>> = BTreeMap::new();
    for Joined { code, jobs: [earlier, later], message } in jobs.pairs(|n| record(ledger, &ledger.line(places[n])?))? {
        let of_job = found.entry(later).or_default();
        // One of each kind leads to the next: the earliest.
        if of_job.iter().any(|l| l.code == code) {
            continue;
        }
        of_job.push(Lead {
            code: code.to_owned(),
            other: ledger.line(places[earlier])?.path,
            message: message.say(Language::English),
            message_phrase: Some(message),
        });
    }
    Ok(found)
}

/// A lead from the later of two jobs to the earlier one, or to one beside it.
pub(super) struct Joined {
    pub(super) code: &'static str,
    pub(super) jobs: [usize; 2],
    message: Phrase,
}

/// What is kept of an archive's jobs to find those that have something in common.
#[derive(Default)]
pub(super) struct Jobs {
    photos: photos::Index,
    inputs: inputs::Index,
    setups: setups::Index,
    identities: Vec<Identity>,
    numbers: RandomState,
}

impl Jobs {
    /// Jobs are added in their order.
    pub(super) fn add(&mut self, n: usize, outcome: &Outcome) {
        let identity = outcome.as_ref().map(|record| Identity::of(record, &self.numbers));
        self.identities.push(identity.unwrap_or_default());
        if let Ok(record) = outcome {
            self.photos.add(n, record);
            self.inputs.add(n, record, &self.numbers);
            self.setups.add(n, record);
        }
    }

    /// `read` gives a job's record again.
    pub(super) fn pairs<E>(self, read: impl Fn(usize) -> Result<Option<JobRecord>, E>) -> Result<Vec<Joined>, E> {
        let mut found = Vec::new();
        let both = |jobs: [usize; 2]| jobs.map(|n| &self.identities[n]);
        for pair in self.photos.pairs(&read)? {
            let [a, b] = both(pair.jobs);
            if !(a.is_same_job(b) || a.is_one_order(b) && are_two_sensors(pair.jobs, &read)?) {
                found.push(Joined { code: "photo-of-another-job", jobs: pair.jobs, message: pair.message() });
            }
        }
        for pair in self.setups.pairs() {
            let [a, b] = both(pair.jobs);
            // One vehicle that stays where it is may be photographed as often as one likes.
            if !a.is_same_job(b) && !a.is_same_vehicle(b) {
                found.push(Joined { code: "set-up-of-another-job", jobs: pair.jobs, message: pair.message() });
            }
        }
        let odd = self.inputs.odd().into_iter();
        found.extend(odd.map(|o| Joined { code: "file-unlike-neighbours", jobs: o.jobs, message: o.message() }));
        Ok(found)
    }
}

/// Whether two jobs are two sensors of one vehicle that were set up together: few share photos, so that their results are
/// read again.
fn are_two_sensors<E>(jobs: [usize; 2], read: impl Fn(usize) -> Result<Option<JobRecord>, E>) -> Result<bool, E> {
    let [a, b] = [read(jobs[0])?, read(jobs[1])?].map(|record| record.as_ref().map(Sensor::of));
    Ok(a.zip(b).is_some_and(|(a, b)| a.is_beside(&b)))
}

fn record(ledger: &Ledger, line: &Judged) -> Result<Option<JobRecord>, LedgerError> {
    Ok(ledger.outcome(line)?.ok().map(|record| *record))
}

/// What tells whether two folders are about the same thing: a number for each text,
/// by a function that nobody knows before the audit runs.
#[derive(Debug, Default)]
struct Identity {
    job: u64,
    /// 0 where there is none, as for vehicles.
    series: u64,
    vin: u64,
    vehicle: u64,
    photos: u64,
}

impl Identity {
    fn of(record: &JobRecord, numbers: &RandomState) -> Identity {
        let of = |text: &Option<String>| text.as_ref().map_or(0, |t| hashed(numbers, t));
        let vehicle = Vehicle::of(record);
        Identity {
            job: hashed(numbers, &record.job),
            series: of(&record.context.series),
            vin: of(&vehicle.vin),
            vehicle: of(&vehicle.words),
            photos: hashed(numbers, &InputRecord::of_photos(&record.inputs)),
        }
    }

    /// A job and its evidence folder, or a copy: what was typed since does not make it another one, but what was typed otherwise.
    fn is_same_job(&self, other: &Identity) -> bool {
        let one_order = self.series == 0 || other.series == 0 || self.series == other.series;
        self.job == other.job && self.photos == other.photos && one_order && self.may_be_one_vehicle(other)
    }

    fn is_one_order(&self, other: &Identity) -> bool {
        self.series != 0 && self.series == other.series
    }

    fn may_be_one_vehicle(&self, other: &Identity) -> bool {
        let known = |number: u64| Some(number).filter(|n| *n != 0);
        may_be_one([self.vin, other.vin].map(known), [self.vehicle, other.vehicle].map(known))
    }

    fn is_same_vehicle(&self, other: &Identity) -> bool {
        let by_number = self.vin != 0 && self.vin == other.vin;
        by_number || self.is_one_order(other) && self.may_be_one_vehicle(other)
    }
}
