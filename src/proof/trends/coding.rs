//! First attempts with one quantity (or all of them), and each factor's levels
//! among them.

use std::collections::HashMap;

use super::archive::{Archive, Factor};

/// Fewest jobs that make a level of its own; the others are pooled and not tested.
pub(super) const LEAST_JOBS: usize = 8;
/// Most levels of a factor; beyond them the smallest are pooled.
const MOST_LEVELS: usize = 500;

/// A level of a factor.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Level {
    /// The name's number; `None` for those that state none and for the pooled ones.
    pub(super) label: Option<u32>,
    /// Named already: left out where others of its factor are compared.
    pub(super) apart: bool,
    /// Its jobs.
    pub(super) count: usize,
}

/// Codes of the compared factors for a list of jobs.
#[derive(Debug, Clone)]
pub(super) struct Coding {
    /// Places in the archive, in the order of time.
    pub(super) jobs: Vec<usize>,
    /// By [`Factor::COMPARED`]: each job's level.
    pub(super) codes: [Vec<u32>; 4],
    /// Likewise the levels.
    pub(super) levels: [Vec<Level>; 4],
}

impl Coding {
    pub(super) fn new(archive: &Archive, jobs: Vec<usize>) -> Self {
        let mut codes: [Vec<u32>; 4] = Default::default();
        let mut levels: [Vec<Level>; 4] = Default::default();
        for f in Factor::COMPARED {
            let i = f as usize;
            (codes[i], levels[i]) = code(archive, &jobs, f);
        }
        Coding { jobs, codes, levels }
    }

    /// Makes the jobs of a level in a span of time (seconds, the end not in it) a
    /// level of their own, which is apart.
    pub(super) fn split(&mut self, archive: &Archive, factor: usize, label: u32, span: [i64; 2]) {
        let after = self.levels[factor].len() as u32;
        let mut count = 0;
        for (job, code) in self.jobs.iter().zip(&mut self.codes[factor]) {
            let level = &mut self.levels[factor][*code as usize];
            if level.label == Some(label) && archive.jobs[*job].seconds.is_some_and(|s| s >= span[0] && s < span[1]) {
                level.count -= 1;
                *code = after;
                count += 1;
            }
        }
        self.levels[factor].push(Level { label: Some(label), apart: true, count });
    }

    /// Whether a level can be tested at all.
    pub(super) fn testable(&self, factor: usize, level: usize) -> bool {
        let l = &self.levels[factor][level];
        l.label.is_some() && !l.apart && l.count >= LEAST_JOBS
    }

    /// The level of another factor that goes along with this one most often, and
    /// the share of jobs in either that are in both.
    pub(super) fn twin(&self, factor: usize, level: u32, other: usize) -> Option<(u32, f64)> {
        let mut both: HashMap<u32, usize> = HashMap::new();
        for (a, b) in self.codes[factor].iter().zip(&self.codes[other]) {
            if *a == level {
                *both.entry(*b).or_default() += 1;
            }
        }
        let own = self.levels[factor][level as usize].count;
        let share = |b: u32, n: usize| {
            let all = self.levels[other][b as usize].count + own - n;
            (b, n as f64 / all.max(1) as f64)
        };
        both.into_iter().map(|(b, n)| share(b, n)).max_by(|a, b| a.1.total_cmp(&b.1))
    }
}

fn code(archive: &Archive, jobs: &[usize], factor: Factor) -> (Vec<u32>, Vec<Level>) {
    let mut counts: HashMap<Option<u32>, usize> = HashMap::new();
    for job in jobs {
        *counts.entry(archive.jobs[*job].labels[factor as usize]).or_default() += 1;
    }
    let mut large: Vec<(u32, usize)> =
        counts.iter().filter_map(|(label, n)| label.filter(|_| *n >= LEAST_JOBS).map(|l| (l, *n))).collect();
    large.sort_by_key(|(label, n)| (std::cmp::Reverse(*n), *label));
    large.truncate(MOST_LEVELS);
    let mut levels = vec![Level { label: None, apart: false, count: 0 }];
    let mut number: HashMap<u32, u32> = HashMap::new();
    for (label, _) in large {
        number.insert(label, levels.len() as u32);
        levels.push(Level { label: Some(label), apart: false, count: 0 });
    }
    let codes: Vec<u32> = jobs
        .iter()
        .map(|job| archive.jobs[*job].labels[factor as usize].and_then(|l| number.get(&l).copied()).unwrap_or(0))
        .collect();
    for c in &codes {
        levels[*c as usize].count += 1;
    }
    (codes, levels)
}
