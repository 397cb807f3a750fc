//! What stands out: the surest effect is named, taken out, and the rest is
//! looked at again, until nothing is left that chance does not explain.

use rayon::prelude::*;

use super::archive::{Archive, Factor};
use super::coding::Coding;
use super::outcomes::{Frequent, Outcome, frequent};
use super::shifts::{Candidate, Column, Sort};

/// Share of archives without any effect in which one may be named (Holm 1979).
pub(super) const ERROR_RATE: f64 = 0.025;
/// Smallest deviation that is worth a name, tolerances.
pub(super) const LEAST_SIZE: f64 = 0.1;
/// How many times as often as expected a finding must be.
const LEAST_TIMES: f64 = 1.3;
/// More effects than this are no longer told apart usefully.
const MOST_NAMED: usize = 60;
/// A change is preferred to a plain shift where both are about the same jobs.
const SAME_JOBS: f64 = 0.8;

/// A named effect.
pub(super) struct Named {
    /// The quantity's column; `None` for a finding.
    pub(super) column: Option<usize>,
    pub(super) factor: usize,
    pub(super) label: u32,
    pub(super) what: What,
    /// Holm's.
    pub(super) adjusted_p: f64,
    /// What it is not told apart from: another factor, and which of it.
    pub(super) together: Option<(usize, Option<u32>)>,
    /// Findings that go with it.
    pub(super) also: Vec<Outcome>,
    /// Jobs of the level.
    pub(super) jobs: Vec<usize>,
}

pub(super) enum What {
    Shift(Candidate),
    Change(Candidate, i64),
    Finding(Frequent),
}

/// All that was found, and what was tested.
pub(super) struct Explored {
    pub(super) columns: Vec<Column>,
    pub(super) named: Vec<Named>,
    /// Before anything was named: each quantity's shifts.
    pub(super) first: Vec<Vec<Candidate>>,
    pub(super) tests: usize,
    pub(super) jobs: usize,
}

/// Looks at the first attempts.
pub(super) fn explore(archive: &Archive) -> Explored {
    let first = &archive.first;
    let keys: Vec<u32> = (0..archive.keys.list.len() as u32).collect();
    let mut columns: Vec<Column> = keys.par_iter().map(|key| Column::new(archive, *key, first)).collect();
    columns.retain(|c| c.raw.len() >= super::coding::LEAST_JOBS);
    let mut open: Vec<Vec<Candidate>> = columns.par_iter().map(|c| c.candidates(archive)).collect();
    let before = open.clone();
    let mut coding = Coding::new(archive, first.clone());
    let findings = frequent(archive, &coding).len();
    let tests = open.iter().map(Vec::len).sum::<usize>() + findings;
    let mut named: Vec<Named> = Vec::new();
    while named.len() < MOST_NAMED {
        let left = (tests - named.len().min(tests)).max(1) as f64;
        let sure = |c: &Candidate| c.p * left <= ERROR_RATE && c.size.abs() >= LEAST_SIZE;
        let Some((column, chosen)) = choose(&columns, &open, sure) else { break };
        let adjusted_p = (chosen.p * left).min(1.0);
        named.push(name(&columns[column], column, &chosen, adjusted_p));
        if let Sort::Change(from) = chosen.sort {
            let label = columns[column].coding.levels[chosen.factor][chosen.level as usize].label.unwrap_or(0);
            // What changed is two levels from here on.
            let span = [from, next_change(&named, chosen.factor, label, from)];
            columns[column].coding.split(archive, chosen.factor, label, span);
            coding.split(archive, chosen.factor, label, span);
        } else {
            set_apart(&mut columns[column].coding, &chosen);
        }
        open[column] = columns[column].candidates(archive);
    }
    name_findings(archive, &coding, tests, &mut named);
    Explored { columns, named, first: before, tests, jobs: first.len() }
}

/// When the same person, bay, sheet or kit changed next, as far as is known.
fn next_change(named: &[Named], factor: usize, label: u32, from: i64) -> i64 {
    let own = named.iter().filter(|n| (n.factor, n.label) == (factor, label));
    let later = own.filter_map(|n| match n.what {
        What::Change(_, at) if at > from => Some(at),
        _ => None,
    });
    later.min().unwrap_or(i64::MAX)
}

/// The surest candidate; where a change explains the same jobs, the change.
fn choose(
    columns: &[Column],
    open: &[Vec<Candidate>],
    sure: impl Fn(&Candidate) -> bool,
) -> Option<(usize, Candidate)> {
    let all = open.iter().enumerate().flat_map(|(i, list)| list.iter().map(move |c| (i, c)));
    let (column, best) = all.filter(|(_, c)| sure(c)).max_by(|a, b| surprise(a.1).total_cmp(&surprise(b.1)))?;
    if best.sort == Sort::Shift {
        let coding = &columns[column].coding;
        let changes = open[column].iter().filter(|c| c.sort != Sort::Shift && sure(c));
        let same = |c: &&Candidate| {
            (c.factor, c.level) == (best.factor, best.level)
                || coding.twin(best.factor, best.level, c.factor).is_some_and(|(l, s)| l == c.level && s >= SAME_JOBS)
        };
        if let Some(change) = changes.filter(same).max_by(|a, b| surprise(a).total_cmp(&surprise(b))) {
            return Some((column, change.clone()));
        }
    }
    Some((column, best.clone()))
}

/// Twice the negative logarithm of the probability, also where that is too small for a number.
fn surprise(c: &Candidate) -> f64 {
    if c.p > 1e-290 { -2.0 * c.p.ln() } else { c.score.powi(2).max(1300.0) }
}

fn name(column: &Column, place: usize, c: &Candidate, adjusted_p: f64) -> Named {
    let coding = &column.coding;
    let own = coding.jobs.iter().zip(&coding.codes[c.factor]).filter(|(_, code)| **code == c.level);
    let label_of = |factor: usize, level: u32| coding.levels[factor][level as usize].label;
    let twin = |f: usize| coding.twin(c.factor, c.level, f).filter(|(_, share)| *share >= SAME_JOBS);
    let beside =
        (0..4).filter(|f| *f != c.factor).find_map(|f| twin(f).and_then(|(l, _)| Some((f, Some(label_of(f, l)?)))));
    let together = c.together.map(|(f, level)| (f, level.and_then(|l| label_of(f, l)))).or(beside);
    Named {
        column: Some(place),
        factor: c.factor,
        label: label_of(c.factor, c.level).unwrap_or(0),
        what: match c.sort {
            Sort::Shift => What::Shift(c.clone()),
            Sort::Change(from) => What::Change(c.clone(), from),
        },
        adjusted_p,
        together,
        also: Vec::new(),
        jobs: own.map(|(job, _)| *job).collect(),
    }
}

fn set_apart(coding: &mut Coding, c: &Candidate) {
    coding.levels[c.factor][c.level as usize].apart = true;
    if let Some((other, Some(twin))) = c.together {
        coding.levels[other][twin as usize].apart = true;
    }
}

/// Findings that are too frequent: they go with an effect that is named for the
/// same person, bay, sheet or kit already, or are named themselves.
fn name_findings(archive: &Archive, coding: &Coding, tests: usize, named: &mut Vec<Named>) {
    let mut list = frequent(archive, coding);
    list.sort_by(|a, b| a.p.total_cmp(&b.p));
    for f in list {
        let left = (tests - named.len().min(tests)).max(1) as f64;
        if f.p * left > ERROR_RATE || (f.seen as f64) < LEAST_TIMES * f.expected {
            continue;
        }
        let Some(label) = coding.levels[f.factor][f.level as usize].label else { continue };
        if let Some(known) = named.iter_mut().find(|n| {
            let subject = (n.factor, n.label) == (f.factor, label);
            subject || n.together == Some((f.factor, Some(label)))
        }) {
            if !known.also.contains(&f.outcome) {
                known.also.push(f.outcome);
            }
            continue;
        }
        let own = coding.jobs.iter().zip(&coding.codes[f.factor]).filter(|(_, code)| **code == f.level);
        let shows = |job: &usize| f.outcome.shows(archive, *job);
        let twin = f.together.map(|other| {
            let level = coding.twin(f.factor, f.level, other).filter(|(_, s)| *s >= SAME_JOBS);
            (other, level.and_then(|(l, _)| coding.levels[other][l as usize].label))
        });
        named.push(Named {
            column: None,
            factor: f.factor,
            label,
            adjusted_p: (f.p * left).min(1.0),
            together: twin,
            also: Vec::new(),
            jobs: own.map(|(job, _)| *job).filter(shows).collect(),
            what: What::Finding(f),
        });
    }
}

/// Whether an effect is named for a level of a factor.
pub(super) fn stands_out(named: &[Named], factor: Factor, label: u32) -> bool {
    named
        .iter()
        .any(|n| (n.factor, n.label) == (factor as usize, label) || n.together == Some((factor as usize, Some(label))))
}
