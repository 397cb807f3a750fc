//! Misplacements, findings, attempts, charts and capability.

use std::collections::HashMap;

use super::archive::{Archive, Factor};
use super::coding::LEAST_JOBS;
use super::groups::{CONFIDENCE, MOST_LINKED};
use super::pointers::Pointers;
use crate::num::{capability, individuals_chart, wilson};
use crate::record::{AttemptsRecord, CapabilityRecord, ChartRecord, FindingCount, MisplacementRecord, Verdict};

/// Values of one chart.
const CHARTED: usize = 100;
/// Rows of the capability table: those with the most jobs.
const MOST_CAPABILITY: usize = 400;

/// Deviation in tolerances, in the unit, and whose it is.
type Case = (f64, f64, usize);

/// Checks that are outside, by quantity and direction, the most frequent first.
pub(super) fn misplacements(archive: &Archive, pointers: &mut Pointers) -> Vec<MisplacementRecord> {
    let keys = archive.keys.list.len();
    let mut of = vec![0usize; keys];
    let mut outside: HashMap<(u32, bool), Vec<Case>> = HashMap::new();
    for i in 0..archive.jobs.len() {
        for mark in archive.marks(i) {
            of[mark.key as usize] += 1;
            if let (Verdict::Outside, Some(z)) = (mark.verdict, mark.deviation()) {
                let amount = mark.value - mark.nominal;
                outside.entry((mark.key, z > 0.0)).or_default().push((z.abs(), amount.abs(), i));
            }
        }
    }
    let mut list: Vec<MisplacementRecord> = outside
        .into_iter()
        .map(|((key, too_much), mut cases)| {
            cases.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.2.cmp(&b.2)));
            let at = |share: f64| ((cases.len() - 1) as f64 * share).round() as usize;
            let count = cases.len();
            MisplacementRecord {
                quantity: archive.keys.list[key as usize].clone(),
                too_much,
                count,
                share: count as f64 / of[key as usize] as f64,
                interval: wilson(count, of[key as usize], CONFIDENCE),
                median: cases[at(0.5)].0,
                ninth: cases[at(0.1)].0,
                amounts: [cases[at(0.5)].1, cases[at(0.1)].1],
                unit: archive.units[key as usize].clone(),
                linked: pointers.all(cases.iter().map(|c| c.2), MOST_LINKED),
            }
        })
        .collect();
    list.sort_by(|a, b| b.count.cmp(&a.count).then(a.quantity.cmp(&b.quantity)));
    list
}

/// Findings by how many jobs have them.
pub(super) fn findings(archive: &Archive, pointers: &mut Pointers) -> Vec<FindingCount> {
    let mut jobs: Vec<Vec<usize>> = vec![Vec::new(); archive.codes.list.len()];
    for (i, job) in archive.jobs.iter().enumerate() {
        job.findings.iter().for_each(|code| jobs[*code as usize].push(i));
    }
    let of = archive.jobs.len();
    let mut list: Vec<FindingCount> = jobs
        .into_iter()
        .enumerate()
        .map(|(code, jobs)| FindingCount {
            code: archive.codes.list[code].clone(),
            count: jobs.len(),
            share: jobs.len() as f64 / of.max(1) as f64,
            interval: wilson(jobs.len(), of, CONFIDENCE),
            linked: pointers.all(jobs, MOST_LINKED),
        })
        .collect();
    list.sort_by(|a, b| b.count.cmp(&a.count).then(a.code.cmp(&b.code)));
    list
}

fn largest(archive: &Archive, job: usize) -> Option<f64> {
    archive.marks(job).filter_map(|m| m.deviation()).map(f64::abs).max_by(f64::total_cmp)
}

/// First attempts against last ones.
pub(super) fn attempts(archive: &Archive) -> AttemptsRecord {
    let (first, last) = (&archive.first, archive.last_attempts());
    let by_series = |jobs: &[usize]| -> HashMap<u32, usize> {
        jobs.iter().filter_map(|j| archive.jobs[*j].series.map(|s| (s, *j))).collect()
    };
    let last = by_series(&last);
    let mut pairs: Vec<(usize, usize)> = by_series(first)
        .into_iter()
        .filter_map(|(s, a)| last.get(&s).map(|b| (a, *b)))
        .filter(|(a, b)| a != b)
        .collect();
    pairs.sort_unstable();
    let within = |j: usize| archive.jobs[j].verdict == Verdict::Within;
    let mean = |jobs: Vec<usize>| {
        let sizes: Vec<f64> = jobs.iter().filter_map(|j| largest(archive, *j)).collect();
        (!sizes.is_empty()).then(|| sizes.iter().sum::<f64>() / sizes.len() as f64)
    };
    AttemptsRecord {
        series: pairs.len(),
        first_within: pairs.iter().filter(|(a, _)| within(*a)).count(),
        last_within: pairs.iter().filter(|(_, b)| within(*b)).count(),
        first_size: mean(pairs.iter().map(|p| p.0).collect()),
        last_size: mean(pairs.iter().map(|p| p.1).collect()),
        all_first_within: first.iter().filter(|j| within(**j)).count(),
        all_first: first.len(),
    }
}

/// A chart of single values for each quantity: the latest first attempts.
pub(super) fn charts(archive: &Archive, pointers: &mut Pointers) -> Vec<ChartRecord> {
    let mut by_key: Vec<Vec<(usize, f64)>> = vec![Vec::new(); archive.keys.list.len()];
    for job in archive.first.iter().copied() {
        for mark in archive.marks(job) {
            if let Some(z) = mark.deviation() {
                by_key[mark.key as usize].push((job, z));
            }
        }
    }
    let mut list = Vec::new();
    for (key, all) in by_key.iter().enumerate() {
        let latest = &all[all.len().saturating_sub(CHARTED)..];
        let values: Vec<f64> = latest.iter().map(|(_, z)| *z).collect();
        let Some(chart) = individuals_chart(&values) else { continue };
        list.push(ChartRecord {
            quantity: archive.keys.list[key].clone(),
            of: all.len(),
            values,
            linked: pointers.all(latest.iter().map(|(job, _)| *job), CHARTED),
            limits: [chart.values.centre, chart.values.lower, chart.values.upper],
            range_limits: [chart.ranges.centre, chart.ranges.upper],
        });
    }
    list
}

/// Capability by sheet and quantity, in tolerances: the limits are -1 and 1.
pub(super) fn capabilities(archive: &Archive) -> Vec<CapabilityRecord> {
    let mut sums: HashMap<(u32, u32), (usize, f64, f64)> = HashMap::new();
    for job in archive.first.iter().copied() {
        let Some(setup) = archive.jobs[job].labels[Factor::Setup as usize] else { continue };
        for mark in archive.marks(job) {
            if let Some(z) = mark.deviation() {
                let (n, sum, squares) = sums.entry((setup, mark.key)).or_default();
                *n += 1;
                *sum += z;
                *squares += z * z;
            }
        }
    }
    let mut list: Vec<CapabilityRecord> = sums
        .into_iter()
        .filter(|(_, (n, ..))| *n >= LEAST_JOBS)
        .filter_map(|((setup, key), (jobs, sum, squares))| {
            let mean = sum / jobs as f64;
            let deviation = ((squares - sum * mean).max(0.0) / (jobs - 1) as f64).sqrt();
            let c = capability(jobs, mean, deviation, [-1.0, 1.0], CONFIDENCE)?;
            Some(CapabilityRecord {
                setup: archive.name(Factor::Setup, setup).to_owned(),
                quantity: archive.keys.list[key as usize].clone(),
                jobs,
                mean,
                deviation,
                potential: [c.potential, c.potential_interval[0], c.potential_interval[1]],
                actual: [c.actual, c.actual_interval[0], c.actual_interval[1]],
            })
        })
        .collect();
    list.sort_by(|a, b| b.jobs.cmp(&a.jobs).then(a.setup.cmp(&b.setup)).then(a.quantity.cmp(&b.quantity)));
    list.truncate(MOST_CAPABILITY);
    list
}
