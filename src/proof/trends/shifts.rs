//! One quantity's deviations, and what each person, bay, sheet and kit adds to
//! them; the others' parts are taken out, so that a bay which is always off to
//! one side is not laid at the door of who works in it.

use std::collections::HashMap;

use super::archive::{Archive, Factor};
use super::coding::Coding;
use crate::num::{Additive, Shift, change_point, median};

/// Deviations further from the middle than this many robust standard deviations count as so far.
const CLIP: f64 = 6.0;
/// A level of which less than this share is left by the other factors is not told from them.
const LEAST_APART: f64 = 0.05;
/// Two levels that share so many of their jobs are one to the figures.
const TWINS: f64 = 0.8;
/// The set-up sheet's place among the compared factors.
pub(super) const SETUP: usize = Factor::Setup as usize;

/// The first attempts that check one quantity.
pub(super) struct Column {
    /// The quantity's number.
    pub(super) key: u32,
    pub(super) coding: Coding,
    /// Deviations, tolerances.
    pub(super) raw: Vec<f64>,
    /// Less their sheet's median, clipped: what people, bays and kits are compared by.
    values: Vec<f64>,
    /// Clipped only: what sheets are compared by.
    by_sheet: Vec<f64>,
}

/// Something that could be named.
#[derive(Debug, Clone)]
pub(super) struct Candidate {
    pub(super) factor: usize,
    pub(super) level: u32,
    pub(super) sort: Sort,
    pub(super) size: f64,
    pub(super) interval: [f64; 2],
    pub(super) p: f64,
    /// How surprising, in standard deviations.
    pub(super) score: f64,
    /// The level of another factor, or with `None` the whole factor, that it is not told apart from.
    pub(super) together: Option<(usize, Option<u32>)>,
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Sort {
    Shift,
    /// With the first second after the change.
    Change(i64),
}

impl Column {
    pub(super) fn new(archive: &Archive, key: u32, first: &[usize]) -> Self {
        let found = first.iter().filter_map(|job| {
            let mark = archive.marks(*job).find(|m| m.key == key)?;
            Some((*job, mark.deviation()?))
        });
        let (jobs, raw): (Vec<usize>, Vec<f64>) = found.unzip();
        let coding = Coding::new(archive, jobs);
        let mut by: HashMap<Option<u32>, Vec<f64>> = HashMap::new();
        let sheet = |i: usize| archive.jobs[coding.jobs[i]].labels[SETUP];
        for (i, z) in raw.iter().enumerate() {
            by.entry(sheet(i)).or_default().push(*z);
        }
        let medians: HashMap<Option<u32>, f64> = by.into_iter().map(|(s, v)| (s, median(v).unwrap_or(0.0))).collect();
        let plain: Vec<f64> = raw.iter().enumerate().map(|(i, z)| z - medians[&sheet(i)]).collect();
        let spread = 1.4826 * median(plain.iter().map(|z| z.abs())).unwrap_or(0.0);
        let reach = CLIP * spread.max(1e-6);
        let middle = median(raw.iter().copied()).unwrap_or(0.0);
        let by_sheet = raw.iter().map(|z| (z - middle).clamp(-reach, reach)).collect();
        let values = plain.iter().map(|z| z.clamp(-reach, reach)).collect();
        Column { key, coding, raw, values, by_sheet }
    }

    fn values_for(&self, factor: usize) -> &[f64] {
        if factor == SETUP { &self.by_sheet } else { &self.values }
    }

    /// Every test of this quantity.
    pub(super) fn candidates(&self, archive: &Archive) -> Vec<Candidate> {
        let mut all = Vec::new();
        for factor in 0..4 {
            all.extend(self.shifts(factor));
            all.extend(self.changes(archive, factor));
        }
        all
    }

    /// Each level of a factor against the others of it.
    fn shifts(&self, factor: usize) -> Vec<Candidate> {
        let others: Vec<usize> = (0..4).filter(|f| *f != factor).collect();
        let part = Part::new(self, factor, &others, &[factor]);
        let Some(model) = part.model() else { return Vec::new() };
        let rest = model.rest(&part.values);
        let levels = (0..self.coding.levels[factor].len()).filter(|l| self.coding.testable(factor, *l));
        let one = |level: usize| {
            let level = level as u32;
            let shift = model.shift(&rest, &part.codes, level)?;
            if shift.separable >= LEAST_APART {
                return Some(candidate(factor, level, &shift, None));
            }
            self.shift_of_both(factor, level)
        };
        levels.filter_map(one).collect()
    }

    /// A level that goes along with something of another factor: that factor is
    /// left in, and both are meant.
    fn shift_of_both(&self, factor: usize, level: u32) -> Option<Candidate> {
        let mut beside: Vec<(usize, u32, f64)> = (0..4)
            .filter(|f| *f != factor)
            .filter_map(|f| self.coding.twin(factor, level, f).map(|(l, share)| (f, l, share)))
            .collect();
        beside.sort_by(|a, b| b.2.total_cmp(&a.2));
        for (other, twin, share) in beside {
            let rest: Vec<usize> = (0..4).filter(|f| *f != factor && *f != other).collect();
            let part = Part::new(self, factor, &rest, &[factor, other]);
            let Some(shift) = part.model().and_then(|m| m.shift(&m.rest(&part.values), &part.codes, level)) else {
                continue;
            };
            if shift.separable >= LEAST_APART {
                let one = (share >= TWINS).then_some(twin);
                return Some(candidate(factor, level, &shift, Some((other, one))));
            }
        }
        None
    }

    /// Each level of a factor against itself over time.
    fn changes(&self, archive: &Archive, factor: usize) -> Vec<Candidate> {
        let part = Part::new(self, factor, &[0, 1, 2, 3], &[]);
        let Some(rest) = part.model().map(|m| m.rest(&part.values)) else { return Vec::new() };
        let mut by_level: Vec<Vec<(f64, i64)>> = vec![Vec::new(); self.coding.levels[factor].len()];
        for (i, job) in self.coding.jobs.iter().enumerate() {
            if let Some(seconds) = archive.jobs[*job].seconds {
                by_level[self.coding.codes[factor][i] as usize].push((rest[i], seconds));
            }
        }
        let levels = by_level.iter().enumerate().filter(|(l, _)| self.coding.levels[factor][*l].label.is_some());
        levels.filter_map(|(level, series)| change(factor, level as u32, series)).collect()
    }

    /// The deviations less all factors' parts but this level's change, by job.
    pub(super) fn rest_for(&self, factor: usize) -> Vec<f64> {
        let others: Vec<usize> = (0..4).filter(|f| *f != factor).collect();
        let model = Additive::new(others.iter().map(|f| self.factor(*f)).collect(), self.raw.len());
        model.map_or_else(Vec::new, |m| m.rest(self.values_for(factor)))
    }

    fn factor(&self, f: usize) -> crate::num::Factor<'_> {
        crate::num::Factor { codes: &self.coding.codes[f], levels: self.coding.levels[f].len() }
    }
}

/// Fewest jobs on either side of a change.
const LEAST_SIDE: usize = 8;

fn change(factor: usize, level: u32, series: &[(f64, i64)]) -> Option<Candidate> {
    let values: Vec<f64> = series.iter().map(|(v, _)| *v).collect();
    let found = change_point(&values)?;
    let (n, before) = (values.len(), found.before);
    if before < LEAST_SIDE || n - before < LEAST_SIDE {
        // It counts as a test that found nothing.
        return Some(Candidate { p: 1.0, score: 0.0, ..blank(factor, level, Sort::Change(0)) });
    }
    let size = found.means[1] - found.means[0];
    let spread: f64 =
        values.iter().enumerate().map(|(i, v)| (v - found.means[usize::from(i >= before)]).powi(2)).sum::<f64>()
            / (n - 2) as f64;
    let half = 1.96 * (spread * (1.0 / before as f64 + 1.0 / (n - before) as f64)).sqrt();
    Some(Candidate {
        size,
        interval: [size - half, size + half],
        p: found.p_value,
        // 2 exp(-2 D^2) against the normal's exp(-z^2 / 2).
        score: 2.0 * found.statistic,
        ..blank(factor, level, Sort::Change(series[before].1))
    })
}

fn blank(factor: usize, level: u32, sort: Sort) -> Candidate {
    Candidate { factor, level, sort, size: 0.0, interval: [0.0; 2], p: 1.0, score: 0.0, together: None }
}

fn candidate(factor: usize, level: u32, shift: &Shift, together: Option<(usize, Option<u32>)>) -> Candidate {
    let half = crate::num::student_quantile(0.975, shift.degrees_of_freedom) * shift.standard_error;
    Candidate {
        size: shift.value,
        interval: [shift.value - half, shift.value + half],
        p: shift.p_value(),
        score: if shift.standard_error > 0.0 { shift.score().abs() } else { 0.0 },
        together,
        ..blank(factor, level, Sort::Shift)
    }
}

/// The jobs that take part in one comparison.
struct Part {
    codes: Vec<u32>,
    others: Vec<Vec<u32>>,
    sizes: Vec<usize>,
    values: Vec<f64>,
}

impl Part {
    /// Levels that stand apart in the factors `fair` are left out.
    fn new(column: &Column, factor: usize, others: &[usize], fair: &[usize]) -> Self {
        let coding = &column.coding;
        let apart = |i: usize| fair.iter().any(|f| coding.levels[*f][coding.codes[*f][i] as usize].apart);
        let kept: Vec<usize> = (0..coding.jobs.len()).filter(|i| !apart(*i)).collect();
        let pick = |f: usize| kept.iter().map(|i| coding.codes[f][*i]).collect::<Vec<u32>>();
        let values = column.values_for(factor);
        Part {
            codes: pick(factor),
            others: others.iter().map(|f| pick(*f)).collect(),
            sizes: others.iter().map(|f| coding.levels[*f].len()).collect(),
            values: kept.iter().map(|i| values[*i]).collect(),
        }
    }

    fn model(&self) -> Option<Additive<'_>> {
        let factors = self.others.iter().zip(&self.sizes);
        let factors = factors.map(|(codes, levels)| crate::num::Factor { codes, levels: *levels });
        Additive::new(factors.collect(), self.codes.len())
    }
}
