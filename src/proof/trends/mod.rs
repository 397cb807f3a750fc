//! What an archive of results says together: which mistakes happen, where,
//! with whom, since when, and what of it is more than chance.
//!
//! Only [`crate::record`] is read. People, bays, set-up sheets and marker kits
//! are told apart by one additive model for each quantity; what stands out is
//! named one by one, the surest first (`explore`), with Holm's correction for
//! everything that was tested, so that of archives without any effect at most
//! one in forty has one named.

mod archive;
mod coding;
#[cfg(feature = "parquet")]
mod columns;
mod effects;
mod explore;
mod groups;
mod outcomes;
mod people;
mod pointers;
mod read;
mod shifts;
mod split;
mod tables;
#[cfg(test)]
mod tests;

use std::collections::HashMap;
use std::path::{Path, PathBuf};

pub use archive::Factor;
pub use people::PeopleKey;
pub use read::Error;

use crate::record::{TestsRecord, TrendsRecord};
use archive::Archive;

/// What is wanted.
#[derive(Debug)]
pub struct Options<'a> {
    /// The grouping that comes first.
    pub by: Factor,
    /// The folder that the page will lie in: links start there.
    pub out: &'a Path,
    /// Folders to look for the jobs' reports in.
    pub reports: &'a [PathBuf],
    /// The key of people's pseudonyms; `None` shows names.
    pub people: Option<&'a PeopleKey>,
}

/// Reads results and says what they say together, and each job in a row.
///
/// # Errors
/// A named path cannot be read, or there is no result at all.
pub fn trends(paths: &[PathBuf], options: &Options) -> Result<Trends, Error> {
    let archive = read::read(paths)?;
    let aliases: HashMap<String, String> = options
        .people
        .map(|key| people::pseudonyms(&archive.names[Factor::Technician as usize].list, key))
        .unwrap_or_default();
    let call = |factor: Factor, label: u32| call(&archive, &aliases, factor, label);
    let explored = explore::explore(&archive);
    let mut pointers = pointers::Pointers::new(&archive, options.out, options.reports);
    let days: Vec<time::Date> = archive.jobs.iter().filter_map(|j| j.taken.map(time::OffsetDateTime::date)).collect();
    let record = TrendsRecord {
        format: "trends/1".into(),
        by: options.by.name().into(),
        period: days.iter().min().zip(days.iter().max()).map(|(a, b)| [a.to_string(), b.to_string()]),
        read: archive.read.clone(),
        names: options.people.is_none(),
        verdicts: groups::verdicts(&archive),
        effects: effects::effects(&archive, &explored, &mut pointers, &call),
        tests: TestsRecord {
            count: explored.tests,
            error_rate: explore::ERROR_RATE,
            least_jobs: coding::LEAST_JOBS,
            least_size: explore::LEAST_SIZE,
            jobs: explored.jobs,
        },
        weekly_chart: effects::weekly_chart(),
        misplacements: tables::misplacements(&archive, &mut pointers),
        findings: tables::findings(&archive, &mut pointers),
        credentials: credentials(&archive),
        groups: groups::groups(&archive, &explored, &mut pointers, &call),
        attempts: tables::attempts(&archive),
        charts: tables::charts(&archive, &mut pointers),
        capability: tables::capabilities(&archive),
        jobs: pointers.list(),
    };
    Ok(Trends { record, archive, aliases })
}

/// What somebody or something is called.
fn call(archive: &Archive, aliases: &HashMap<String, String>, factor: Factor, label: u32) -> String {
    let name = archive.name(factor, label);
    match (factor, aliases.get(name)) {
        (Factor::Technician, Some(alias)) => alias.clone(),
        _ => name.to_owned(),
    }
}

/// Photos by state; nothing where no photo has any credentials.
fn credentials(archive: &archive::Archive) -> std::collections::BTreeMap<String, usize> {
    let any = archive.credentials.keys().any(|state| *state != "none");
    let counted = archive.credentials.iter().filter(|_| any);
    counted.map(|(state, n)| ((*state).to_owned(), *n)).collect()
}

/// The statistics, and what they are made from.
#[derive(Debug)]
pub struct Trends {
    /// The statistics.
    pub record: TrendsRecord,
    archive: Archive,
    /// What people are called instead, by their names.
    aliases: HashMap<String, String>,
}

/// Columns of the rows.
pub const COLUMNS: [&str; 12] = [
    "job",
    "taken",
    "verdict",
    "technician",
    "bay",
    "setup",
    "kit",
    "vehicle",
    "camera",
    "attempt",
    "outside",
    "result",
];

impl Trends {
    /// One row for each job, under [`COLUMNS`]; made as they are asked for.
    pub fn rows(&self) -> impl Iterator<Item = [String; 12]> {
        (0..self.archive.jobs.len()).map(|n| self.row(n))
    }

    fn row(&self, n: usize) -> [String; 12] {
        let (archive, job) = (&self.archive, &self.archive.jobs[n]);
        let label = |f: Factor| job.labels[f as usize].map_or(String::new(), |l| call(archive, &self.aliases, f, l));
        let outside = archive.marks(n).filter(|m| m.verdict == crate::record::Verdict::Outside).map(|m| {
            let z = m.deviation().map_or(String::new(), |z| format!("={z:.2}"));
            format!("{}{z}", archive.keys.list[m.key as usize])
        });
        [
            job.job.to_string(),
            job.taken.map_or(String::new(), |t| t.date().to_string()),
            job.verdict.name().to_owned(),
            label(Factor::Technician),
            label(Factor::Bay),
            label(Factor::Setup),
            label(Factor::Kit),
            label(Factor::Vehicle),
            label(Factor::Camera),
            job.attempt.map_or(String::new(), |a| a.to_string()),
            outside.collect::<Vec<_>>().join(" "),
            job.source.to_string(),
        ]
    }
}
