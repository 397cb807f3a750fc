//! Checked values of an archive's jobs, and how much likelier two jobs are one
//! set-up than two: both are written as a normal law of the difference.

use std::collections::BTreeMap;

use crate::num::median;

/// Values that a pair must share.
pub(super) const LEAST: usize = 4;

/// A checked value and how far a second set of photos would move it (1 sigma).
#[derive(Debug, Clone, Copy)]
pub(super) struct Value {
    /// Number of its check.
    pub(super) check: u32,
    pub(super) value: f64,
    pub(super) u: f64,
}

/// Jobs of one kit and one sheet; their values one behind the other, since an archive may have millions.
#[derive(Debug, Default)]
pub(super) struct Group {
    /// A job's number and where its values end.
    ends: Vec<(u32, u32)>,
    values: Vec<Value>,
}

impl Group {
    pub(super) fn push(&mut self, job: usize, values: impl IntoIterator<Item = Value>) {
        self.values.extend(values);
        self.ends.push((job as u32, self.values.len() as u32));
    }

    pub(super) fn len(&self) -> usize {
        self.ends.len()
    }

    pub(super) fn job(&self, n: usize) -> usize {
        self.ends[n].0 as usize
    }

    /// A job's values in the order of their checks.
    pub(super) fn of(&self, n: usize) -> &[Value] {
        let start = n.checked_sub(1).map_or(0, |before| self.ends[before].1);
        &self.values[start as usize..self.ends[n].1 as usize]
    }

    pub(super) fn value(&self, n: usize, check: u32) -> Option<&Value> {
        self.of(n).iter().find(|v| v.check == check)
    }
}

/// How a check's values lie in an archive.
#[derive(Debug, Clone, Copy)]
pub(super) struct Spread {
    pub(super) check: u32,
    /// Over the archive (1 sigma, by the median deviation, which a few copies do not move).
    pub(super) sigma: f64,
    /// Spread over u.
    pub(super) tells: f64,
}

/// The spreads of a group's checks.
pub(super) fn spreads(group: &Group) -> Vec<Spread> {
    let mut all: BTreeMap<u32, (Vec<f64>, Vec<f64>)> = BTreeMap::new();
    for v in &group.values {
        let of = all.entry(v.check).or_default();
        of.0.push(v.value);
        of.1.push(v.u);
    }
    let one = |(check, (values, us)): (u32, (Vec<f64>, Vec<f64>))| {
        let middle = median(values.iter().copied())?;
        // 1.4826: the median deviation of a normal law is 0.6745 of its sigma.
        let spread = 1.4826 * median(values.iter().map(|v| (v - middle).abs()))?;
        let u = median(us)?;
        // Photos alone spread that much.
        let sigma = spread.max(u);
        Some(Spread { check, sigma, tells: sigma / u })
    };
    all.into_iter().filter(|(_, v)| v.0.len() > 2).filter_map(one).collect()
}

/// The shared checks, where one set-up explains them that much better.
pub(super) fn same(a: &[Value], b: &[Value], spreads: &[Spread], wanted: f64) -> Option<Vec<u32>> {
    let mut odds = 0.0;
    let mut shared = Vec::new();
    for Spread { check, sigma, .. } in spreads {
        let of = |values: &[Value]| values.iter().find(|v| v.check == *check).copied();
        let (Some(p), Some(q)) = (of(a), of(b)) else { continue };
        let (difference, noise) = (p.value - q.value, p.u.hypot(q.u));
        let chance = (2.0 * sigma * sigma).max(noise * noise).sqrt();
        odds += (chance / noise).ln() - 0.5 * ((difference / noise).powi(2) - (difference / chance).powi(2));
        shared.push(*check);
    }
    (shared.len() >= LEAST && odds > wanted).then_some(shared)
}
