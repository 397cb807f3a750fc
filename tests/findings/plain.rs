//! Plain jobs: all findings together are wrong in 2 % of them at most.

use std::collections::BTreeMap;

use rayon::prelude::*;

use super::bench::{bay, job, judge, samples, sheet};
use super::common::{Bay, sample};

/// The budget for all findings together.
const BUDGET: f64 = 0.02;

/// The share of jobs with any finding, and by code.
fn false_alarms(name: &str, bay: &Bay, n: u64) -> f64 {
    let codes: Vec<Vec<&str>> = (0..n)
        .into_par_iter()
        .map(|seed| {
            let judged = judge(&sample(bay, 40_000 + seed), &sheet(), &job());
            // A sheet that is in no photo is no false alarm.
            let codes: Vec<&str> = judged.codes().into_iter().filter(|c| *c != "carrier-not-seen").collect();
            for f in judged.findings.iter().filter(|f| codes.contains(&f.code)) {
                println!("{name} {seed}: {} {}", f.code, f.message);
            }
            codes
        })
        .collect();
    let mut by_code: BTreeMap<&str, usize> = BTreeMap::new();
    for code in codes.iter().flatten() {
        *by_code.entry(code).or_default() += 1;
    }
    let share = codes.iter().filter(|c| !c.is_empty()).count() as f64 / n as f64;
    println!("{name}: {share:.4} of {n} plain jobs have a finding: {by_code:?}");
    share
}

/// Limit at three standard deviations of the count.
fn limit(n: u64) -> f64 {
    BUDGET + 3.0 * (BUDGET * (1.0 - BUDGET) / n as f64).sqrt()
}

/// 200 jobs, most of them with two photos; `BAYWITNESS_FINDING_SAMPLES=10` draws ten times as many.
#[test]
fn plain_bays_raise_no_alarm() {
    let (of_four, of_two) = (samples(50), samples(150));
    let four = false_alarms("four photos", &bay(), of_four);
    let two = false_alarms("two photos", &Bay { four_photos: false, ..bay() }, of_two);
    let share = (four * of_four as f64 + two * of_two as f64) / (of_four + of_two) as f64;
    assert!(share <= limit(of_four + of_two), "{share}");
}
