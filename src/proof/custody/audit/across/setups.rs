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

use crate::num::median;
use crate::quantity::Quantity;
use crate::record::{CheckRecord, JobRecord};
use crate::words::{self, Phrase, phrase};

/// Odds by which a named pair is likelier than a chance among all pairs.
const ODDS: f64 = 100.0;
/// Values that a pair must share.
const LEAST: usize = 4;

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

/// A checked value and how far a second set of photos would move it (1 sigma).
struct Value {
    value: f64,
    u: f64,
}

/// A job's values by their check.
type Values = BTreeMap<String, Value>;

#[derive(Default)]
pub(super) struct Index {
    /// By kit and sheet, since only their jobs compare.
    groups: BTreeMap<(String, String), Vec<(usize, Values)>>,
}

impl Index {
    pub(super) fn add(&mut self, job: usize, record: &JobRecord) {
        let values: Values = record.checks.iter().filter_map(value).collect();
        if values.len() >= LEAST {
            let group = (record.context.kit.clone(), record.context.setup.clone());
            self.groups.entry(group).or_default().push((job, values));
        }
    }

    pub(super) fn pairs(mut self) -> Vec<Pair> {
        let mut found = Vec::new();
        for jobs in self.groups.values_mut() {
            let spreads = spreads(jobs);
            let wanted = (ODDS * jobs.len() as f64 * (jobs.len() as f64 - 1.0) / 2.0).ln();
            // In the order of the value that tells most, so that only neighbours are compared.
            let Some((best, _)) = spreads.iter().max_by(|a, b| a.1.1.total_cmp(&b.1.1)) else { continue };
            jobs.retain(|(_, values)| values.contains_key(best));
            jobs.sort_by(|a, b| a.1[best].value.total_cmp(&b.1[best].value));
            for (n, (a, values)) in jobs.iter().enumerate() {
                let here = &values[best];
                let near = jobs[n + 1..]
                    .iter()
                    .take_while(|(_, v)| v[best].value - here.value < 6.0 * (here.u.hypot(v[best].u)));
                for (b, others) in near {
                    if let Some(quantities) = same(values, others, &spreads, wanted) {
                        found.push(Pair { jobs: [*a.min(b), *a.max(b)], quantities });
                        // Of many alike, each leads to the next.
                        break;
                    }
                }
            }
        }
        found.sort_by_key(|p| p.jobs);
        found
    }
}

/// The value of a check, and the part of its uncertainty that photos bring.
fn value(check: &CheckRecord) -> Option<(String, Value)> {
    let of_photos = check.budget.iter().filter(|line| line.source.contains("photo"));
    let u = of_photos.map(|line| line.standard_uncertainty.powi(2)).sum::<f64>().sqrt();
    let key = format!("{} {:?} {:?} {:?}", check.quantity, check.from, check.target, check.step);
    (u > 0.0 && check.evidence == "photos").then_some((key, Value { value: check.value?, u }))
}

/// For each value its spread over the archive (1 sigma, by the median deviation,
/// which a few copies do not move) and spread over u.
fn spreads(jobs: &[(usize, Values)]) -> BTreeMap<String, (f64, f64)> {
    let mut all: BTreeMap<&String, Vec<&Value>> = BTreeMap::new();
    for (key, value) in jobs.iter().flat_map(|(_, values)| values) {
        all.entry(key).or_default().push(value);
    }
    let spread = |values: &[&Value]| {
        let middle = median(values.iter().map(|v| v.value))?;
        // 1.4826: the median deviation of a normal law is .6745 of its sigma.
        Some(1.4826 * median(values.iter().map(|v| (v.value - middle).abs()))?)
    };
    let one = |(key, values): (&String, Vec<&Value>)| {
        let u = median(values.iter().map(|v| v.u))?;
        // Photos alone spread that much.
        let spread = spread(&values)?.max(u);
        Some((key.clone(), (spread, spread / u)))
    };
    all.into_iter().filter(|(_, v)| v.len() > 2).filter_map(one).collect()
}

/// The shared values, where one set-up explains them that much better.
fn same(a: &Values, b: &Values, spreads: &BTreeMap<String, (f64, f64)>, wanted: f64) -> Option<Vec<String>> {
    let mut odds = 0.0;
    let mut shared = Vec::new();
    for (key, (spread, _)) in spreads {
        let (Some(p), Some(q)) = (a.get(key), b.get(key)) else { continue };
        let (difference, noise) = (p.value - q.value, p.u.hypot(q.u));
        let chance = (2.0 * spread * spread).max(noise * noise).sqrt();
        odds += (chance / noise).ln() - 0.5 * ((difference / noise).powi(2) - (difference / chance).powi(2));
        shared.push(key.split(' ').next().unwrap_or_default().to_owned());
    }
    (shared.len() >= LEAST && odds > wanted).then_some(shared)
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
        let group = index.groups.entry(("kit".to_owned(), "sheet".to_owned())).or_default();
        for n in 0..jobs {
            let one = |(k, u): (usize, &f64)| {
                (format!("value{k} None"), Value { value: normal(random) + u * normal(random), u: *u })
            };
            group.push((n, u.iter().enumerate().map(one).collect()));
        }
        index
    }

    /// The last job photographed once more, as another job.
    fn repeat(index: &mut Index, random: &mut impl Rng) {
        for jobs in index.groups.values_mut() {
            if let Some((n, last)) = jobs.last() {
                // Its own value has one noise already: the second photos differ by both.
                let one = |(k, v): (&String, &Value)| {
                    (k.clone(), Value { value: v.value + v.u * 2_f64.sqrt() * normal(random), u: v.u })
                };
                let again = (n + 1, last.iter().map(one).collect());
                jobs.push(again);
            }
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
