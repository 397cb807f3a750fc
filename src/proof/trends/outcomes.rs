//! Findings that are made more often with one person, in one bay, with one
//! sheet or kit than the others let expect: like is compared with like, in
//! strata of all other factors.

use std::collections::HashMap;

use super::archive::{Archive, Factor};
use super::coding::Coding;
use crate::num::{Stratum, excess};
use crate::record::Verdict;

/// Findings that are made less often are not compared.
const LEAST_HITS: usize = 10;
/// Codes that say that a check of the stand is outside, besides stand-turned, -tilted, -too-...
const STAND: [&str; 2] = ["stand-off-centre", "stand-not-level"];

/// What is counted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Outcome {
    /// A finding, by its code's number.
    Code(u32),
    /// A check of a quantity that is outside, by the quantity's number.
    Outside(u32),
}

impl Outcome {
    pub(super) fn shows(self, archive: &Archive, job: usize) -> bool {
        match self {
            Outcome::Code(code) => archive.jobs[job].findings.binary_search(&code).is_ok(),
            Outcome::Outside(key) => archive.marks(job).any(|m| m.key == key && m.verdict == Verdict::Outside),
        }
    }
}

/// An outcome that could be named for a level.
#[derive(Debug, Clone)]
pub(super) struct Frequent {
    pub(super) outcome: Outcome,
    pub(super) factor: usize,
    pub(super) level: u32,
    pub(super) seen: usize,
    pub(super) expected: f64,
    pub(super) p: f64,
    /// The factor that had to be left out: it goes along with the level.
    pub(super) together: Option<usize>,
}

/// Jobs in strata of some factors, and each level's number of jobs in each.
struct Strata {
    of_job: Vec<u32>,
    sizes: Vec<usize>,
    /// By level: stratum and own jobs.
    own: Vec<Vec<(u32, usize)>>,
}

impl Strata {
    fn new(coding: &Coding, factor: usize, others: &[usize]) -> Self {
        let mut numbers: HashMap<[u32; 3], u32> = HashMap::new();
        let mut sizes = Vec::new();
        let mut own: HashMap<(u32, u32), usize> = HashMap::new();
        let of_job = (0..coding.jobs.len())
            .map(|i| {
                let mut key = [0; 3];
                for (slot, f) in key.iter_mut().zip(others) {
                    *slot = coding.codes[*f][i];
                }
                let number = *numbers.entry(key).or_insert_with(|| {
                    sizes.push(0);
                    sizes.len() as u32 - 1
                });
                sizes[number as usize] += 1;
                *own.entry((coding.codes[factor][i], number)).or_default() += 1;
                number
            })
            .collect();
        let mut by_level = vec![Vec::new(); coding.levels[factor].len()];
        for ((level, stratum), count) in own {
            by_level[level as usize].push((stratum, count));
        }
        by_level.iter_mut().for_each(|strata| strata.sort_unstable());
        Strata { of_job, sizes, own: by_level }
    }

    /// Hits by stratum.
    fn hits(&self, shows: &[bool]) -> Vec<usize> {
        let mut hits = vec![0; self.sizes.len()];
        for (stratum, show) in self.of_job.iter().zip(shows) {
            hits[*stratum as usize] += usize::from(*show);
        }
        hits
    }

    fn tables(&self, level: usize, hits: &[usize]) -> Vec<Stratum> {
        let one =
            |(s, own): &(u32, usize)| Stratum { size: self.sizes[*s as usize], hits: hits[*s as usize], own: *own };
        self.own[level].iter().map(one).collect()
    }
}

/// Every test of every finding that is frequent enough.
pub(super) fn frequent(archive: &Archive, coding: &Coding) -> Vec<Frequent> {
    // A misplaced stand is counted by its check.
    let counted = |name: &str| name != "not-checked" && !name.starts_with("stand-t") && !STAND.contains(&name);
    let codes = (0..archive.codes.list.len()).filter(|c| counted(&archive.codes.list[*c]));
    let codes = codes.map(|c| Outcome::Code(c as u32));
    let outcomes = codes.chain((0..archive.keys.list.len()).map(|k| Outcome::Outside(k as u32)));
    let shows: Vec<(Outcome, Vec<bool>)> = outcomes
        .map(|o| (o, coding.jobs.iter().map(|j| o.shows(archive, *j)).collect::<Vec<_>>()))
        .filter(|(_, shows)| shows.iter().filter(|s| **s).count() >= LEAST_HITS)
        .collect();
    let mut found = Vec::new();
    for factor in Factor::COMPARED.map(|f| f as usize) {
        let others: Vec<usize> = (0..4).filter(|f| *f != factor).collect();
        let whole = Strata::new(coding, factor, &others);
        let mut fewer: HashMap<usize, Strata> = HashMap::new();
        for (outcome, shows) in &shows {
            let hits = whole.hits(shows);
            for level in (0..coding.levels[factor].len()).filter(|l| coding.testable(factor, *l)) {
                let own = coding.codes[factor].iter().zip(shows).filter(|(c, s)| **c == level as u32 && **s);
                let seen = own.count();
                let make = |e: crate::num::Excess, together| Frequent {
                    outcome: *outcome,
                    factor,
                    level: level as u32,
                    seen,
                    expected: e.expected,
                    p: e.p_value,
                    together,
                };
                if let Some(e) = excess(&whole.tables(level, &hits), seen) {
                    found.push(make(e, None));
                    continue;
                }
                let beside = others.iter().filter_map(|f| coding.twin(factor, level as u32, *f).map(|(_, s)| (*f, s)));
                let Some((twin, _)) = beside.max_by(|a, b| a.1.total_cmp(&b.1)) else { continue };
                let rest: Vec<usize> = others.iter().copied().filter(|f| *f != twin).collect();
                let strata = fewer.entry(twin).or_insert_with(|| Strata::new(coding, factor, &rest));
                if let Some(e) = excess(&strata.tables(level, &strata.hits(shows)), seen) {
                    found.push(make(e, Some(twin)));
                }
            }
        }
    }
    found
}
