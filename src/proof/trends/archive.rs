//! The jobs of an archive in columns: names as numbers, deviations in
//! tolerances.

use std::collections::{BTreeMap, HashMap, HashSet};
use std::hash::{DefaultHasher, Hash, Hasher};
use std::sync::Arc;

use time::OffsetDateTime;
use time::format_description::well_known::Rfc3339;

use crate::credentials::State;
use crate::record::{CredentialFacts, Facts, Level, PhotoFacts, ReadRecord, Verdict};

/// Names, each with its number.
#[derive(Debug, Default)]
pub(crate) struct Names {
    numbers: HashMap<String, u32>,
    pub(crate) list: Vec<String>,
}

impl Names {
    fn number(&mut self, name: &str) -> u32 {
        if let Some(number) = self.numbers.get(name) {
            return *number;
        }
        let number = self.list.len() as u32;
        self.list.push(name.to_owned());
        self.numbers.insert(name.to_owned(), number);
        number
    }
}

/// What jobs are grouped by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Factor {
    /// The person.
    Technician,
    /// The bay.
    Bay,
    /// The set-up sheet.
    Setup,
    /// The marker kit.
    Kit,
    /// The vehicle's description.
    Vehicle,
    /// The camera.
    Camera,
}

impl Factor {
    /// All of them; the first four are compared.
    pub const ALL: [Factor; 6] =
        [Factor::Technician, Factor::Bay, Factor::Setup, Factor::Kit, Factor::Vehicle, Factor::Camera];
    /// Those that are told apart from each other.
    pub(crate) const COMPARED: [Factor; 4] = [Factor::Technician, Factor::Bay, Factor::Setup, Factor::Kit];

    /// Its name in records.
    pub fn name(self) -> &'static str {
        ["technician", "bay", "setup", "kit", "vehicle", "camera"][self as usize]
    }
}

/// One check of a job.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Mark {
    /// Number of the quantity's key.
    pub(crate) key: u32,
    pub(crate) value: f64,
    pub(crate) nominal: f64,
    /// Half of the limits' width; NaN where there is no limit.
    pub(crate) half: f64,
    pub(crate) verdict: Verdict,
}

impl Mark {
    /// (value - nominal) / tolerance.
    pub(crate) fn deviation(&self) -> Option<f64> {
        let z = (self.value - self.nominal) / self.half;
        z.is_finite().then_some(z)
    }
}

/// What a job keeps of a [`Mark`]: key and limits are the same for many jobs and stand once.
#[derive(Debug, Clone, Copy)]
struct KeptMark {
    value: f64,
    limits: u32,
    verdict: Verdict,
}

/// Key, nominal and half width that marks of many jobs share.
#[derive(Debug, Clone, Copy)]
struct Limits {
    key: u32,
    nominal: f64,
    half: f64,
}

/// One job.
#[derive(Debug, Clone)]
pub(crate) struct Job {
    pub(crate) job: Box<str>,
    pub(crate) source: Arc<str>,
    pub(crate) folder: Option<Box<str>>,
    /// By [`Factor`].
    pub(crate) labels: [Option<u32>; 6],
    pub(crate) series: Option<u32>,
    pub(crate) attempt: Option<u32>,
    pub(crate) taken: Option<OffsetDateTime>,
    /// The same in seconds since 1970.
    pub(crate) seconds: Option<i64>,
    pub(crate) verdict: Verdict,
    marks: Box<[KeptMark]>,
    pub(crate) findings: Box<[u32]>,
}

impl Job {
    /// Weeks since a fixed Monday.
    pub(crate) fn week(&self) -> Option<i32> {
        self.taken.map(|t| t.date().to_julian_day().div_euclid(7))
    }
}

/// `2026-W30` of a week's number.
pub(crate) fn week_name(week: i32) -> String {
    let Ok(monday) = time::Date::from_julian_day(week * 7) else { return "unknown".to_owned() };
    let (year, number, _) = monday.to_iso_week_date();
    format!("{year}-W{number:02}")
}

/// All jobs.
#[derive(Debug, Default)]
pub(crate) struct Archive {
    pub(crate) jobs: Vec<Job>,
    pub(crate) names: [Names; 6],
    pub(crate) keys: Names,
    /// mm or deg, by key.
    pub(crate) units: Vec<String>,
    pub(crate) codes: Names,
    limits: Vec<Limits>,
    /// By key and the bits of the others.
    limit_numbers: HashMap<[u64; 3], u32>,
    /// Repair orders by a number of their names, which nobody asks for.
    series: HashMap<u64, u32>,
    seen: HashSet<u64>,
    pub(crate) read: ReadRecord,
    /// Photos by the state of their content credentials.
    pub(crate) credentials: BTreeMap<&'static str, usize>,
    /// Places of the first attempts, in the order of time; see [`Archive::close`].
    pub(crate) first: Vec<usize>,
}

/// Where an object was found.
#[derive(Debug, Clone)]
pub(crate) struct Found {
    pub(crate) source: Arc<str>,
    pub(crate) folder: Option<Box<str>>,
}

/// A result's facts on their own, before their names have numbers: made by any thread.
#[derive(Debug)]
pub(crate) struct Draft {
    found: Found,
    job: Box<str>,
    labels: [Option<String>; 6],
    series: Option<String>,
    attempt: Option<u32>,
    taken: Option<OffsetDateTime>,
    verdict: Verdict,
    marks: Vec<(String, String, Mark)>,
    findings: Vec<String>,
    /// States of the photos' content credentials; `none` for a photo without any.
    credentials: Vec<&'static str>,
    digest: u64,
}

impl Draft {
    pub(crate) fn new(found: Found, facts: &Facts, verdict: Verdict) -> Self {
        let context = &facts.context;
        let cameras = context.cameras.join(" + ");
        let said = [
            context.technician.as_deref(),
            context.bay.as_deref(),
            context.setup.as_deref(),
            context.kit_name(),
            context.vehicle.as_deref(),
            Some(cameras.as_str()),
        ];
        // Void figures can't be trusted: they count as a verdict, not as a value.
        let void = facts.findings.iter().any(|f| f.level == Level::Void);
        let checks = if void { &[][..] } else { &facts.checks[..] };
        let text = |t: Option<&str>| t.map(str::trim).filter(|t| !t.is_empty()).map(str::to_owned);
        Draft {
            found,
            job: facts.job.as_ref().into(),
            labels: said.map(text),
            series: text(context.series.as_deref()),
            attempt: context.attempt,
            taken: context.taken.as_deref().and_then(|t| OffsetDateTime::parse(t, &Rfc3339).ok()),
            verdict,
            marks: checks.iter().filter_map(mark).collect(),
            findings: facts.findings.iter().map(|f| f.code.to_string()).collect(),
            credentials: facts.photos.iter().map(credentials).collect(),
            digest: digest(facts),
        }
    }
}

/// A state by its name; one of a later version counts as none.
fn credentials(photo: &PhotoFacts) -> &'static str {
    let state = |c: &CredentialFacts| State::ALL.into_iter().find(|s| s.name() == c.state);
    photo.credentials.as_ref().and_then(state).map_or("none", State::name)
}

/// Key, unit and figures of a check that has a value.
fn mark(check: &crate::record::CheckFacts) -> Option<(String, String, Mark)> {
    let value = check.value.filter(|v| v.is_finite())?;
    let mut key = check.quantity.to_string();
    for (sign, part) in [('@', &check.target), ('#', &check.step)] {
        if let Some(part) = part {
            key.push(sign);
            key.push_str(part);
        }
    }
    let half = match (check.lower, check.upper) {
        (Some(lower), Some(upper)) => (upper - lower) / 2.0,
        (Some(one), None) | (None, Some(one)) => (one - check.nominal).abs(),
        (None, None) => f64::NAN,
    };
    let half = if half > 0.0 { half } else { f64::NAN };
    Some((key, check.unit.to_string(), Mark { key: 0, value, nominal: check.nominal, half, verdict: check.verdict }))
}

impl Archive {
    /// Adds a result.
    pub(crate) fn add(&mut self, draft: Draft) {
        if !self.seen.insert(draft.digest) {
            self.read.copies += 1;
            return;
        }
        self.read.results += 1;
        for state in draft.credentials {
            *self.credentials.entry(state).or_default() += 1;
        }
        let labels = std::array::from_fn(|i| draft.labels[i].as_ref().map(|text| self.names[i].number(text)));
        let marks = draft.marks.into_iter().map(|(key, unit, mark)| {
            let key = self.keys.number(&key);
            if self.units.len() <= key as usize {
                self.units.push(unit);
            }
            let bits = [u64::from(key), mark.nominal.to_bits(), mark.half.to_bits()];
            let next = self.limits.len() as u32;
            let limits = *self.limit_numbers.entry(bits).or_insert(next);
            if limits == next {
                self.limits.push(Limits { key, nominal: mark.nominal, half: mark.half });
            }
            KeptMark { value: mark.value, limits, verdict: mark.verdict }
        });
        let marks: Vec<KeptMark> = marks.collect();
        let orders = self.series.len() as u32;
        let mut series_of = |name: &String| *self.series.entry(number(name)).or_insert(orders);
        let series = draft.series.as_ref().map(&mut series_of);
        let mut findings: Vec<u32> = draft.findings.iter().map(|code| self.codes.number(code)).collect();
        findings.sort_unstable();
        findings.dedup();
        self.jobs.push(Job {
            job: draft.job,
            source: draft.found.source,
            folder: draft.found.folder,
            labels,
            series,
            attempt: draft.attempt,
            taken: draft.taken,
            seconds: draft.taken.map(OffsetDateTime::unix_timestamp),
            verdict: draft.verdict,
            marks: marks.into(),
            findings: findings.into(),
        });
    }

    /// A job's checks that have a value.
    pub(crate) fn marks(&self, job: usize) -> impl Iterator<Item = Mark> {
        self.jobs[job].marks.iter().map(|kept| {
            let Limits { key, nominal, half } = self.limits[kept.limits as usize];
            Mark { key, value: kept.value, nominal, half, verdict: kept.verdict }
        })
    }

    pub(crate) fn name(&self, factor: Factor, label: u32) -> &str {
        &self.names[factor as usize].list[label as usize]
    }

    /// Finds the first attempts, once everything is added: of each repair order the
    /// one with the lowest number or the earliest.
    pub(crate) fn close(&mut self) {
        self.first = self.ends_of_series(|a, b| a < b);
    }

    /// Likewise the last attempts.
    pub(crate) fn last_attempts(&self) -> Vec<usize> {
        self.ends_of_series(|a, b| a > b)
    }

    fn ends_of_series(&self, better: impl Fn(Order, Order) -> bool) -> Vec<usize> {
        let mut best: HashMap<u32, usize> = HashMap::new();
        let mut kept = Vec::new();
        for (i, job) in self.jobs.iter().enumerate() {
            match job.series {
                None => kept.push(i),
                Some(series) => {
                    let place = best.entry(series).or_insert(i);
                    if better(order(job), order(&self.jobs[*place])) {
                        *place = i;
                    }
                }
            }
        }
        kept.extend(best.into_values());
        kept.sort_by_key(|i| (self.jobs[*i].seconds, *i));
        kept
    }
}

type Order = (u32, i64);

fn order(job: &Job) -> Order {
    (job.attempt.unwrap_or(1), job.seconds.unwrap_or(0))
}

fn number(name: &str) -> u64 {
    let mut hasher = DefaultHasher::new();
    name.hash(&mut hasher);
    hasher.finish()
}

/// Two results of the same job, time and figures are copies.
fn digest(facts: &Facts) -> u64 {
    let mut hasher = DefaultHasher::new();
    let context = &facts.context;
    (&facts.job, &context.series, context.attempt, &context.taken, &context.technician).hash(&mut hasher);
    (&context.bay, &context.setup, context.kit_name(), facts.findings.len()).hash(&mut hasher);
    for check in &facts.checks {
        (&check.quantity, check.value.map(f64::to_bits), check.nominal.to_bits()).hash(&mut hasher);
    }
    hasher.finish()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn add(archive: &mut Archive, text: &str) {
        let facts: Facts = serde_json::from_str(text).unwrap();
        let found = Found { source: "a.json".into(), folder: None };
        archive.add(Draft::new(found, &facts, facts.verdict.unwrap()));
    }

    fn result(job: &str, series: &str, attempt: u32, yaw: f64) -> String {
        format!(
            r#"{{"format":"result/1","job":"{job}","verdict":"within","context":{{"series":"{series}","attempt":{attempt},"taken":"2026-07-20T10:00:00+02:00"}},
            "checks":[{{"quantity":"yaw","unit":"deg","nominal":0.0,"lower":-0.5,"upper":0.5,"value":{yaw},"verdict":"within"}}],"findings":[]}}"#
        )
    }

    #[test]
    fn copies_count_once_and_first_attempts_are_the_lowest_numbers() {
        let mut archive = Archive::default();
        for (job, attempt, yaw) in [("B", 2, 0.1), ("A", 1, 0.4), ("A", 1, 0.4), ("C", 3, 0.0)] {
            add(&mut archive, &result(job, "R", attempt, yaw));
        }
        archive.close();
        assert_eq!((archive.read.results, archive.read.copies), (3, 1));
        let job = |i: &usize| archive.jobs[*i].job.to_string();
        assert_eq!(archive.first.iter().map(job).collect::<Vec<_>>(), ["A"]);
        assert_eq!(archive.last_attempts().iter().map(job).collect::<Vec<_>>(), ["C"]);
        assert!((archive.marks(1).next().unwrap().deviation().unwrap() - 0.8).abs() < 1e-12);
        // 20 July 2026 is the Monday of ISO week 30.
        assert_eq!(week_name(archive.jobs[0].week().unwrap()), "2026-W30");
    }
}
