//! One set-up in two jobs: everything stood in both as it did in the other.
//!
//! Photos of one set-up differ by the noise of photos alone; what is common to
//! both (how the plates seat, where markers sit) cancels. Two set-ups differ by as
//! much as the archive's jobs do. For each value that a check asks for, both are
//! written as a normal law of the difference, and their likelihoods compared: a
//! pair is named where "the same set-up" is likelier by more than there are pairs
//! in the archive, times a hundred. Where the jobs of an archive scatter little,
//! or few values are checked, no pair can reach that: nothing is named then.

use std::collections::BTreeMap;

use rayon::prelude::*;

use super::alike::Tree;
use super::values::{Group, LEAST, Value, spreads};
use crate::quantity::Quantity;
use crate::record::{CheckRecord, JobRecord};
use crate::words::{self, Phrase, phrase};

/// Odds by which a named pair is likelier than a chance among all pairs.
const ODDS: f64 = 100.0;

/// Two jobs with one set-up.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Pair {
    /// The earlier and the later line.
    pub(super) jobs: [usize; 2],
    quantities: Vec<String>,
}

impl Pair {
    pub(super) fn message(&self) -> Phrase {
        let name =
            |q: &String| Quantity::from_name(q).map_or_else(|| q.replace('_', " ").into(), |q| q.phrase().into());
        let quantities: Vec<words::Value> = self.quantities.iter().map(name).collect();
        phrase!("evidence-set-up-of-another-job", quantities = quantities)
    }
}

#[derive(Default)]
pub(super) struct Index {
    /// By kit and sheet, since only their jobs compare.
    groups: BTreeMap<(String, String), Group>,
    /// Numbers of the checks by what tells them apart.
    checks: BTreeMap<String, u32>,
}

impl Index {
    pub(super) fn add(&mut self, job: usize, record: &JobRecord) {
        let found: BTreeMap<String, (f64, f64)> = record.checks.iter().filter_map(value).collect();
        if found.len() < LEAST {
            return;
        }
        let group = (record.context.kit.clone(), record.context.setup.clone());
        let checks = &mut self.checks;
        let values = found.into_iter().map(|(key, (value, u))| {
            let next = checks.len() as u32;
            Value { check: *checks.entry(key).or_insert(next), value, u }
        });
        let mut values: Vec<Value> = values.collect();
        values.sort_unstable_by_key(|v| v.check);
        self.groups.entry(group).or_default().push(job, values);
    }

    pub(super) fn pairs(self) -> Vec<Pair> {
        let mut names = vec![String::new(); self.checks.len()];
        for (key, n) in self.checks {
            key.split(' ').next().unwrap_or_default().clone_into(&mut names[n as usize]);
        }
        let pairs_of = |group: &Group| -> Vec<Pair> {
            let spreads = spreads(group);
            let wanted = (ODDS * group.len() as f64 * (group.len() as f64 - 1.0) / 2.0).ln();
            // In the order of the value that tells most, each job leads to the next one that is alike.
            let Some(best) = spreads.iter().max_by(|a, b| a.tells.total_cmp(&b.tells)) else { return Vec::new() };
            let tree = Tree::new(group, &spreads, best.check, wanted);
            let one = |a: usize| {
                let (b, checks) = tree.next_alike(a)?;
                let jobs = [group.job(tree.order(a)), group.job(tree.order(b))];
                let quantities = checks.iter().map(|c| names[*c as usize].clone()).collect();
                Some(Pair { jobs: [jobs[0].min(jobs[1]), jobs[0].max(jobs[1])], quantities })
            };
            (0..tree.len()).into_par_iter().filter_map(one).collect()
        };
        let mut found: Vec<Pair> = self.groups.values().flat_map(pairs_of).collect();
        found.sort_by_key(|p| p.jobs);
        found
    }
}

/// The value of a check, and the part of its uncertainty that photos bring.
fn value(check: &CheckRecord) -> Option<(String, (f64, f64))> {
    let of_photos = check.budget.iter().filter(|line| line.source.contains("photo"));
    let u = of_photos.map(|line| line.standard_uncertainty.powi(2)).sum::<f64>().sqrt();
    let key = format!("{} {:?} {:?} {:?}", check.quantity, check.from, check.target, check.step);
    let value = check.value.filter(|v| v.is_finite())?;
    (u > 0.0 && u.is_finite() && check.evidence == "photos").then_some((key, (value, u)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use rand::rngs::ChaCha8Rng;
    use rand::{Rng, RngExt, SeedableRng};

    fn normal(random: &mut impl Rng) -> f64 {
        crate::num::normal_quantile(random.random_range(1e-9..1.0 - 1e-9))
    }

    /// Jobs that scatter `spread` and are known to `u` (both by value), numbered from 0.
    fn archive(jobs: usize, u: &[f64], random: &mut impl Rng) -> Index {
        let mut index = Index::default();
        index.checks.extend((0..u.len() as u32).map(|k| (format!("value{k} None"), k)));
        let group = index.groups.entry(("kit".to_owned(), "sheet".to_owned())).or_default();
        for n in 0..jobs {
            let one =
                |(k, u): (usize, &f64)| Value { check: k as u32, value: normal(random) + u * normal(random), u: *u };
            group.push(n, u.iter().enumerate().map(one).collect::<Vec<_>>());
        }
        index
    }

    /// The last job photographed once more, as another job.
    fn repeat(index: &mut Index, random: &mut impl Rng) {
        for jobs in index.groups.values_mut() {
            // Its own value has one noise already: the second photos differ by both.
            let again = |v: &Value| Value { value: v.value + v.u * 2_f64.sqrt() * normal(random), ..*v };
            let again: Vec<Value> = jobs.of(jobs.len() - 1).iter().map(again).collect();
            jobs.push(jobs.len(), again);
        }
    }

    #[test]
    fn repeated_set_ups_are_named_and_others_are_not() {
        let mut random = ChaCha8Rng::seed_from_u64(3);
        // What photos alone bring to the values of samples/good, in spreads of 5 mm and .2 deg.
        let u = [0.023, 0.05, 0.02, 0.006, 0.017, 0.017];
        let (mut found, mut wrong) = (0, 0);
        for _ in 0..100 {
            let mut index = archive(300, &u, &mut random);
            repeat(&mut index, &mut random);
            let pairs = index.pairs();
            found += usize::from(pairs.iter().any(|p| p.jobs == [299, 300]));
            wrong += pairs.iter().filter(|p| p.jobs != [299, 300]).count();
        }
        assert!(found > 70, "{found} of 100 repeated set-ups were named");
        assert!(wrong <= 3, "{wrong} pairs named by chance in 100 archives");
        // Where photos know little, nothing can be told, and nothing is.
        let mut index = archive(300, &[0.7; 6], &mut random);
        repeat(&mut index, &mut random);
        assert_eq!(index.pairs(), Vec::new());
    }
}
