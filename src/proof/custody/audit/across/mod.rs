//! What only an archive shows: a photo that serves two jobs, a set-up that two
//! jobs share to within the noise of their photos.
//!
//! These are leads for an auditor with their limits said, not proof of intent:
//! a folder that was copied, or a test of the camera, looks the same.

mod photos;
mod setups;

use std::collections::BTreeMap;

use super::judged::{Judged, Lead};
use super::ledger::{Ledger, LedgerError, each_outcome};
use crate::record::JobRecord;
use crate::words::{Language, Phrase};

/// Looks for leads over all lines of an audit, reading one result at a time.
/// What stays in memory is some hundred bytes for each photo.
///
/// # Errors
/// A result cannot be read.
pub(super) fn leads(ledger: &Ledger, lines: &[Judged]) -> Result<BTreeMap<usize, Vec<Lead>>, LedgerError> {
    let (mut photos, mut setups) = (photos::Index::default(), setups::Index::default());
    let mut jobs: Vec<Identity> = Vec::with_capacity(lines.len());
    each_outcome(ledger, lines, |n, _, outcome| {
        jobs.push(outcome.as_ref().map_or_else(|_| Identity::default(), |record| Identity::of(record)));
        if let Ok(record) = &outcome {
            photos.add(n, record);
            setups.add(n, record);
        }
    })?;
    let mut found: BTreeMap<usize, Vec<Lead>> = BTreeMap::new();
    let mut join = |code: &str, earlier: usize, later: usize, message: Phrase| {
        let lead = Lead {
            code: code.to_owned(),
            other: lines[earlier].path.clone(),
            message: message.say(Language::English),
            message_phrase: Some(message),
        };
        let of_job = found.entry(later).or_default();
        // One of each kind leads to the next: the earliest.
        if !of_job.iter().any(|l| l.code == lead.code) {
            of_job.push(lead);
        }
    };
    for pair in photos.pairs(|n| record(ledger, &lines[n]))? {
        if !jobs[pair.jobs[0]].is_same_job(&jobs[pair.jobs[1]])
            && !jobs[pair.jobs[0]].shares_photos(&jobs[pair.jobs[1]])
        {
            join("photo-of-another-job", pair.jobs[0], pair.jobs[1], pair.message());
        }
    }
    for pair in setups.pairs() {
        let (a, b) = (&jobs[pair.jobs[0]], &jobs[pair.jobs[1]]);
        // One vehicle that stays where it is may be photographed as often as one likes.
        if !a.is_same_job(b) && !a.is_same_vehicle(b) {
            join("set-up-of-another-job", pair.jobs[0], pair.jobs[1], pair.message());
        }
    }
    Ok(found)
}

fn record(ledger: &Ledger, line: &Judged) -> Result<Option<JobRecord>, LedgerError> {
    Ok(ledger.outcome(line)?.ok().map(|record| *record))
}

/// What tells whether two folders are about the same thing.
#[derive(Debug, Default)]
struct Identity {
    job: String,
    setup: String,
    series: Option<String>,
    vin: Option<String>,
    photos: Vec<String>,
}

impl Identity {
    fn of(record: &JobRecord) -> Identity {
        let mut photos: Vec<String> =
            record.inputs.iter().filter(|i| i.role == "photo").map(|i| i.sha256.clone()).collect();
        photos.sort();
        Identity {
            job: record.job.clone(),
            setup: record.context.setup.clone(),
            series: record.context.series.clone(),
            vin: record.context.vin.clone(),
            photos,
        }
    }

    /// A job and its evidence folder, or a copy.
    fn is_same_job(&self, other: &Identity) -> bool {
        self.job == other.job && self.photos == other.photos
    }

    /// Two sensors of one repair order that were set up together.
    fn shares_photos(&self, other: &Identity) -> bool {
        self.series.is_some() && self.series == other.series && self.setup != other.setup
    }

    fn is_same_vehicle(&self, other: &Identity) -> bool {
        let same = |a: &Option<String>, b: &Option<String>| a.is_some() && a == b;
        same(&self.series, &other.series) || same(&self.vin, &other.vin)
    }
}
