//! How often each flaw is found and how often it is named without being there,
//! as a table: a small draw by default, hundreds of jobs with `--ignored`.

use std::collections::BTreeMap;

use rayon::prelude::*;

use super::bench::{job, judge, samples, sheet};
use super::planted::{FLAWS, Planted};
use super::{datums, phases, plain, sizes};

/// What is wanted of every flaw at its size.
const POWER: f64 = 0.95;

/// Wilson's interval (1927) of a share at 95 %.
pub(crate) fn interval(hits: usize, n: usize) -> (f64, f64) {
    let (p, n, z) = (hits as f64 / n as f64, n as f64, 1.96_f64);
    let middle = (p + z * z / (2.0 * n)) / (1.0 + z * z / n);
    let half = z / (1.0 + z * z / n) * (p * (1.0 - p) / n + z * z / (4.0 * n * n)).sqrt();
    (middle - half, middle + half)
}

#[test]
fn wilsons_interval_of_a_published_example() {
    // 8 of 10 at 95 %: .490 to .943 (the usual textbook example; computed by hand).
    let (low, high) = interval(8, 10);
    assert!((low - 0.490).abs() < 1e-3 && (high - 0.943).abs() < 1e-3, "{low} {high}");
}

/// A probability of .95 finds this many of so many or more, but for three standard deviations.
pub(crate) fn least(n: usize) -> usize {
    let n = n as f64;
    (POWER * n - 3.0 * (POWER * (1.0 - POWER) * n).sqrt()).floor().max(0.6 * n).ceil() as usize
}

/// In how many of `n` jobs a flaw is among the findings.
fn found(flaw: &Planted, n: u64) -> usize {
    let one = |seed: u64| {
        let judged = judge(&flaw.make(70_000 + seed), &sheet(), &job());
        if !judged.has(flaw.code) {
            let words: Vec<String> = judged
                .findings
                .iter()
                .map(|f| format!("{}: {}", f.code, crate::findings::bench::en(&f.message)))
                .collect();
            println!("   missed {} {seed}: {}", flaw.what, words.join(" | "));
        }
        usize::from(judged.has(flaw.code))
    };
    (0..n).into_par_iter().map(one).sum()
}

fn table(n: u64, plain_jobs: usize, alarms: &BTreeMap<&str, usize>) -> Vec<String> {
    let mut short = Vec::new();
    println!(
        "{:30} {:32} {:>10}  {:15} false alarms in {plain_jobs} plain jobs",
        "finding", "size", "found", "95 % interval"
    );
    for flaw in FLAWS {
        let hits = found(&flaw, n);
        let (low, high) = interval(hits, n as usize);
        let wrong = alarms.get(flaw.code).copied().unwrap_or(0);
        println!("{:30} {:32} {hits:4} of {n:3}  {low:.3} to {high:.3}  {wrong}", flaw.code, flaw.what);
        if hits < least(n as usize) {
            short.push(format!("{}: {hits} of {n}", flaw.what));
        }
    }
    short
}

#[test]
fn every_flaw_is_found() {
    let short = table(samples(3), 0, &BTreeMap::new());
    assert!(short.is_empty(), "{short:?}");
}

#[test]
#[ignore = "some ten minutes: 120 jobs for each flaw, 1,200 plain ones, and sizes at the edge of being found"]
fn every_flaw_is_found_in_hundreds_of_jobs() {
    let drawn = plain::draw(150);
    let share = drawn.share();
    let mut short = table(120, drawn.jobs, &drawn.by_code);
    println!("{:.2} % of {} plain jobs have any finding", 100.0 * share, drawn.jobs);
    println!("by code: {:?}", drawn.by_code);
    if share > plain::BUDGET {
        short.push(format!("{share:.4} of the plain jobs have a finding"));
    }
    short.extend(phases::table(120));
    short.extend(datums::table(120));
    short.extend(sizes::table(60));
    assert!(short.is_empty(), "{}", short.join("\n"));
}
