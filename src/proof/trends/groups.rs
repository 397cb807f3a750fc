//! Jobs by person, bay, sheet, vehicle, kit, camera and week.

use std::collections::{BTreeMap, HashMap};

use super::archive::{Archive, Factor, week_name};
use super::coding::LEAST_JOBS;
use super::explore::{Explored, stands_out};
use super::pointers::Pointers;
use super::shifts::Sort;
use crate::num::{share_limits, wilson};
use crate::record::{GroupRecord, TendencyRecord, Verdict, VerdictShare};

/// Confidence of every interval that is shown.
pub(super) const CONFIDENCE: f64 = 0.95;
/// Jobs listed for one group.
pub(super) const MOST_LINKED: usize = 30;
/// Groups with fewer jobs are said to be small.
const SMALL: usize = 20;
/// Groups listed of one kind; the smallest are left out of the record.
const MOST_GROUPS: usize = 300;

const LADDER: [Verdict; 4] = [Verdict::Within, Verdict::Outside, Verdict::NotProven, Verdict::Retake];

/// All jobs by verdict.
pub(super) fn verdicts(archive: &Archive) -> Vec<VerdictShare> {
    let of = archive.jobs.len();
    let one = |verdict: Verdict| {
        let count = archive.jobs.iter().filter(|j| j.verdict == verdict).count();
        let share = count as f64 / of.max(1) as f64;
        VerdictShare { verdict, count, share, interval: wilson(count, of, CONFIDENCE) }
    };
    LADDER.map(one).into()
}

/// Every grouping by its name; `names` gives what people are called.
pub(super) fn groups(
    archive: &Archive,
    explored: &Explored,
    pointers: &mut Pointers,
    names: &dyn Fn(Factor, u32) -> String,
) -> BTreeMap<String, Vec<GroupRecord>> {
    let mut all = BTreeMap::new();
    for factor in Factor::ALL {
        let mut by: HashMap<u32, Vec<usize>> = HashMap::new();
        for (i, job) in archive.jobs.iter().enumerate() {
            if let Some(label) = job.labels[factor as usize] {
                by.entry(label).or_default().push(i);
            }
        }
        let mut labels: Vec<(u32, Vec<usize>)> = by.into_iter().collect();
        labels.sort_by_key(|(label, jobs)| (std::cmp::Reverse(jobs.len()), *label));
        labels.truncate(MOST_GROUPS);
        let mut list: Vec<GroupRecord> = labels
            .into_iter()
            .map(|(label, jobs)| GroupRecord {
                stands_out: stands_out(&explored.named, factor, label),
                tendencies: tendencies(archive, explored, factor, label),
                ..group(archive, names(factor, label), jobs, pointers)
            })
            .collect();
        // By name, never by a share: nobody is ranked by what chance explains.
        list.sort_by_key(|g| natural(&g.name));
        all.insert(factor.name().to_owned(), list);
    }
    all.insert("week".to_owned(), weeks(archive, pointers));
    all
}

/// Digits compared by their value: bay 2 before bay 10.
fn natural(name: &str) -> Vec<(bool, u64, String)> {
    let mut parts: Vec<(bool, u64, String)> = Vec::new();
    for c in name.chars() {
        let digit = c.to_digit(10).map(u64::from);
        match (parts.last_mut(), digit) {
            (Some((true, value, _)), Some(d)) => *value = value.saturating_mul(10).saturating_add(d),
            (_, Some(d)) => parts.push((true, d, String::new())),
            (Some((false, _, text)), None) => text.extend(c.to_lowercase()),
            (_, None) => parts.push((false, 0, c.to_lowercase().collect())),
        }
    }
    parts
}

fn group(archive: &Archive, name: String, mut jobs: Vec<usize>, pointers: &mut Pointers) -> GroupRecord {
    let count = |verdict: Verdict| jobs.iter().filter(|j| archive.jobs[**j].verdict == verdict).count();
    let verdicts = LADDER.map(count);
    let of = jobs.len();
    jobs.sort_by_key(|j| {
        let job = &archive.jobs[*j];
        (job.verdict != Verdict::Outside, std::cmp::Reverse(job.seconds), *j)
    });
    GroupRecord {
        name,
        jobs: of,
        verdicts,
        outside: verdicts[1] as f64 / of.max(1) as f64,
        interval: wilson(verdicts[1], of, CONFIDENCE),
        limits: None,
        small: of < SMALL,
        stands_out: false,
        tendencies: Vec::new(),
        linked: pointers.all(jobs, MOST_LINKED),
    }
}

/// The first comparison's shifts of one level, by quantity.
fn tendencies(archive: &Archive, explored: &Explored, factor: Factor, label: u32) -> Vec<TendencyRecord> {
    let mut list = Vec::new();
    for (column, candidates) in explored.columns.iter().zip(&explored.first) {
        let levels = &column.coding.levels;
        let own = candidates.iter().find(|c| {
            c.sort == Sort::Shift
                && c.factor == factor as usize
                && levels[c.factor][c.level as usize].label == Some(label)
                && c.together.is_none()
        });
        if let Some(c) = own {
            list.push(TendencyRecord {
                quantity: archive.keys.list[column.key as usize].clone(),
                shift: c.size,
                interval: c.interval,
                jobs: levels[c.factor][c.level as usize].count,
            });
        }
    }
    list
}

/// By week, with the limits of a chart of shares.
fn weeks(archive: &Archive, pointers: &mut Pointers) -> Vec<GroupRecord> {
    let mut by: BTreeMap<i32, Vec<usize>> = BTreeMap::new();
    for (i, job) in archive.jobs.iter().enumerate() {
        if let Some(week) = job.week() {
            by.entry(week).or_default().push(i);
        }
    }
    let (outside, all) = by.values().flatten().fold((0usize, 0usize), |(outside, all), j| {
        (outside + usize::from(archive.jobs[*j].verdict == Verdict::Outside), all + 1)
    });
    let mean = outside as f64 / all.max(1) as f64;
    let one = |(week, jobs): (i32, Vec<usize>)| {
        let limits = share_limits(mean, jobs.len());
        let limits = (jobs.len() >= LEAST_JOBS).then_some([limits.lower, limits.upper]);
        GroupRecord { limits, ..group(archive, week_name(week), jobs, pointers) }
    };
    by.into_iter().map(one).collect()
}

#[cfg(test)]
mod tests {
    use super::natural;

    #[test]
    fn bay_two_comes_before_bay_ten() {
        let mut bays = ["Bay 10", "bay 2", "Bay 1"];
        bays.sort_by_key(|b| natural(b));
        assert_eq!(bays, ["Bay 1", "bay 2", "Bay 10"]);
    }
}
