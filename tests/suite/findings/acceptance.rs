//! How often a set-up that is truly outside of a limit is called within: the worst
//! that can happen. Without a flaw, with each flaw at its size and at half of it,
//! and with two flaws at once, each at a size drawn up to its own.
//!
//! One job's photos are decided on as 32 set-ups: with the truth on either limit of
//! each quantity in turn (the others in their middle), where a guarded decision
//! promises at most 1 - .95; and twenty times with all six scattered about their
//! middles by half a tolerance, which gives the consumer's risk of a shop that works
//! so (JCGM 106:2012, 9.3.2).
//!
//! The promise at a limit is kept without a flaw and with each flaw at the size that
//! photos must show. A smaller flaw may stay unseen and shift the figures: there it is
//! counted, not promised, and what is promised is the share of `within` among set-ups
//! that are truly outside. `BAYWITNESS_ACCEPTANCE_JOBS` sets how many jobs are drawn.

use baywitness::measure::Answer;
use baywitness::quantity::Quantity as Q;
use baywitness::setup::{From, Setup};
use baywitness::verdict::{Level, StandSize, Verdict, check};
use rayon::prelude::*;

use super::bench::{LINE, a_check, bay, job, judge, sheet};
use super::campaign::interval;
use super::defect::Defect;
use super::planted::FLAWS;
use crate::sampled_bay::{Bay, Noise};

/// What a guarded decision at .95 allows where the truth lies on a limit.
const PROMISE: f64 = 0.05;

/// What is checked, and half the width of what is tolerated: mm and degrees, as demonstration sheets have it.
const CHECKS: [(Q, f64); 6] =
    [(Q::Distance, 15.0), (Q::LateralOffset, 10.0), (Q::Height, 10.0), (Q::Yaw, 0.5), (Q::Pitch, 1.0), (Q::Roll, 1.0)];

/// Shares of a tolerance by which set-ups miss their middles, 1 sigma.
const SPREAD: f64 = 0.5;

/// Set-ups out of that spread for each job's photos.
const SCATTERED: usize = 20;

/// A sheet whose middles are these.
pub(super) fn sheet_of(nominal: [f64; 6]) -> Setup {
    let checks = CHECKS.iter().zip(nominal).map(|((quantity, tolerance), nominal)| {
        a_check(*quantity, (*quantity == Q::Distance).then_some(From::RearAxle), nominal, *tolerance)
    });
    Setup { checks: checks.collect(), ..sheet() }
}

/// The counts of one line of the table.
#[derive(Default)]
struct Row {
    jobs: usize,
    /// Jobs with a finding that forbids any `within`.
    stopped: usize,
    /// By quantity: set-ups with the truth on a limit of it that are called within.
    at_limit: [usize; 6],
    scattered: usize,
    outside: usize,
    within: usize,
    /// Of the scattered ones: truly outside, and called within.
    wrong: usize,
}

fn verdict(setup: &Setup, answers: &[Option<Answer>], levels: &[Level]) -> Verdict {
    let size = StandSize { half_width_mm: 760.0, half_height_mm: 245.0 };
    let one = |(c, answer): (_, &Option<Answer>)| match answer {
        Some(answer) => {
            check(c, LINE, &setup.decision, Ok(answer.clone()), &size, &baywitness::words::Phrase::new("")).verdict
        }
        None => Verdict::Retake,
    };
    let checks = setup.checks.iter().zip(answers).map(one);
    Verdict::of_checks(checks).limited_by(levels.iter().copied())
}

fn draw(of: &Bay, defect: &Defect, seed: u64) -> Row {
    let sample = defect.sample(of, seed);
    let truth = defect.truth(&sample);
    let mut chance = Noise::new(seed ^ 0xacce_0000);
    // Findings that forbid `within` don't depend on where the limits are.
    let judged = judge(&sample, &sheet_of(truth), &job());
    let levels: Vec<Level> =
        judged.findings.iter().map(|f| f.level).filter(|l| matches!(l, Level::Void | Level::Stop)).collect();
    let answers: Vec<Option<Answer>> = judged.checks.iter().map(|c| c.answer.clone()).collect();
    let is_within = |nominal: [f64; 6]| verdict(&sheet_of(nominal), &answers, &levels) == Verdict::Within;
    let mut row = Row { jobs: 1, stopped: usize::from(!levels.is_empty()), ..Row::default() };
    for (i, (_, tolerance)) in CHECKS.iter().enumerate() {
        for side in [-1.0, 1.0] {
            let mut nominal = truth;
            nominal[i] += side * tolerance;
            row.at_limit[i] += usize::from(is_within(nominal));
        }
    }
    for _ in 0..SCATTERED {
        let misses: [f64; 6] = std::array::from_fn(|_| SPREAD * chance.normal());
        let within = is_within(std::array::from_fn(|i| truth[i] - misses[i] * CHECKS[i].1));
        let outside = misses.iter().any(|m| m.abs() > 1.0);
        row.scattered += 1;
        row.outside += usize::from(outside);
        row.within += usize::from(within);
        row.wrong += usize::from(outside && within);
    }
    row
}

impl Row {
    fn plus(mut self, other: &Row) -> Self {
        self.jobs += other.jobs;
        self.stopped += other.stopped;
        for (n, m) in self.at_limit.iter_mut().zip(other.at_limit) {
            *n += m;
        }
        self.scattered += other.scattered;
        self.outside += other.outside;
        self.within += other.within;
        self.wrong += other.wrong;
        self
    }

    fn worst(&self) -> (usize, usize) {
        (0..6).map(|i| (self.at_limit[i], i)).max().unwrap()
    }

    fn print(&self, what: &str) {
        let share = |n: usize, of: usize| 100.0 * n as f64 / of.max(1) as f64;
        let limits: usize = self.at_limit.iter().sum();
        let (worst, i) = self.worst();
        let (low, high) = interval(worst, 2 * self.jobs.max(1));
        println!(
            "| {what} | {} | {:.1} % | {:.2} % | {} {:.1} % ({:.1} to {:.1}) | {} of {} | {:.2} % |",
            self.jobs,
            share(self.stopped, self.jobs),
            share(limits, 12 * self.jobs),
            CHECKS[i].0.name(),
            share(worst, 2 * self.jobs),
            100.0 * low.max(0.0),
            100.0 * high,
            self.wrong,
            self.outside,
            share(self.wrong, self.scattered),
        );
    }

    /// More within at a limit of any quantity than promised, beyond what chance explains.
    fn breaks_the_promise(&self) -> bool {
        beyond(self.worst().0, 2 * self.jobs)
    }
}

/// More than the promise by three and a half standard deviations of the count.
fn beyond(wrong: usize, of: usize) -> bool {
    let n = of as f64;
    wrong as f64 > PROMISE * n + 3.5 * (PROMISE * (1.0 - PROMISE) * n).sqrt()
}

fn row(jobs: usize, first: u64, one: impl Fn(u64) -> Row + Sync) -> Row {
    let seeds = (0..jobs as u64).into_par_iter().map(|i| one(first + i));
    seeds.reduce(Row::default, |a, b| a.plus(&b))
}

/// Plain bays: two and four photos, both lens models.
fn plain(seed: u64) -> Row {
    let (four_photos, kannala_brandt) = (seed.is_multiple_of(2), seed % 4 < 2);
    draw(&Bay { four_photos, kannala_brandt, ..bay() }, &Defect::default(), seed)
}

/// Two flaws, each at a size drawn up to its own.
fn two(a: usize, b: usize, seed: u64) -> Row {
    let mut chance = Noise::new(seed ^ 0x2_0000_0000);
    let mut one = |flaw: usize, salt: u64| (FLAWS[flaw].defect)(seed ^ salt, chance.uniform());
    let both = one(a, 0).and(one(b, 0x55));
    draw(&bay(), &both, seed)
}

/// The table of so many jobs in all; what breaks the promise.
fn campaign(jobs: usize) -> Vec<String> {
    println!(
        "| flaw | jobs | stopped | within at a limit | worst quantity | within of truly outside | consumer's risk |"
    );
    println!("|---|---|---|---|---|---|---|");
    let start = std::time::Instant::now();
    let mut broken = Vec::new();
    let mut told = |what: &str, row: Row, promised: bool| {
        row.print(what);
        if promised && row.breaks_the_promise() {
            let (worst, i) = row.worst();
            broken.push(format!("{what}: {worst} of {} within with {} on a limit", 2 * row.jobs, CHECKS[i].0.name()));
        }
        // Twenty set-ups of the same photos are not twenty independent ones.
        if beyond(row.wrong / 5, row.outside / 5) {
            broken.push(format!("{what}: {} of {} truly outside within", row.wrong, row.outside));
        }
    };
    told("none", row(jobs / 5, 300_000, plain), true);
    let each = (jobs / 80).max(2);
    for (n, flaw) in FLAWS.iter().enumerate() {
        let at =
            |part: f64| row(each, 310_000 + 10_000 * n as u64, |seed| draw(&bay(), &(flaw.defect)(seed, part), seed));
        told(flaw.what, at(1.0), true);
        if flaw.graded {
            told(&format!("{}: half of it", flaw.what), at(0.5), false);
        }
    }
    let pairs: Vec<(usize, usize)> = (0..FLAWS.len()).flat_map(|a| (a + 1..FLAWS.len()).map(move |b| (a, b))).collect();
    let rest = jobs.saturating_sub(jobs / 5 + each * 33).max(pairs.len());
    let drawn: Vec<(usize, usize, Row)> = (0..rest)
        .into_par_iter()
        .map(|i| {
            let (a, b) = pairs[i % pairs.len()];
            (a, b, two(a, b, 900_000 + i as u64))
        })
        .collect();
    told("two flaws, each up to its size", drawn.iter().fold(Row::default(), |all, (_, _, r)| all.plus(r)), false);
    for (n, flaw) in FLAWS.iter().enumerate() {
        let with = drawn.iter().filter(|(a, b, _)| *a == n || *b == n);
        told(
            &format!("two, one of them: {}", flaw.what),
            with.fold(Row::default(), |all, (_, _, r)| all.plus(r)),
            false,
        );
    }
    println!("{jobs} jobs in {:.0} s", start.elapsed().as_secs_f64());
    broken
}

/// Without a flaw, where the promise is exact, and every flaw once at its size.
#[test]
fn a_truth_on_a_limit_is_rarely_called_within() {
    let plain = row(30, 300_000, plain);
    plain.print("none");
    assert!(!plain.breaks_the_promise(), "{:?} of {}", plain.at_limit, plain.jobs);
    // Near the limit there must be something to decide at all.
    assert!(
        plain.within * 2 > plain.scattered && plain.outside * 10 > plain.scattered,
        "{} {}",
        plain.within,
        plain.outside
    );
    let flawed = FLAWS
        .iter()
        .enumerate()
        .map(|(n, flaw)| row(1, 310_000 + 10_000 * n as u64, |seed| draw(&bay(), &(flaw.defect)(seed, 1.0), seed)));
    let flawed = flawed.fold(Row::default(), |all, row| all.plus(&row));
    flawed.print("each flaw once");
    assert!(!flawed.breaks_the_promise(), "{:?} of {}", flawed.at_limit, flawed.jobs);
}

#[test]
#[ignore = "some quarter of an hour: 6,000 jobs, 192,000 set-ups"]
fn false_acceptance_of_thousands_of_jobs() {
    let jobs = std::env::var("BAYWITNESS_ACCEPTANCE_JOBS").ok().and_then(|n| n.parse().ok()).unwrap_or(6000);
    let broken = campaign(jobs);
    assert!(broken.is_empty(), "{}", broken.join("\n"));
}

/// A larger draw of plain bays alone, other ones than the table's, quantity by quantity.
#[test]
#[ignore = "some minutes: 10,000 plain jobs, 320,000 set-ups"]
fn plain_bays_by_the_ten_thousand() {
    let all = row(10_000, 2_000_000, plain);
    all.print("none");
    for ((quantity, _), wrong) in CHECKS.iter().zip(all.at_limit) {
        let (low, high) = interval(wrong, 2 * all.jobs);
        let share = 100.0 * wrong as f64 / (2 * all.jobs) as f64;
        println!("{}: {share:.2} % ({:.2} to {:.2})", quantity.name(), 100.0 * low, 100.0 * high);
    }
    assert!(!all.breaks_the_promise(), "{:?} of {}", all.at_limit, all.jobs);
}
