//! Plain jobs: all findings together are wrong in 2 % of them at most.

use std::collections::BTreeMap;

use baywitness::setup::{ReferenceLine, Setup};
use rayon::prelude::*;

use super::bench::{bay, job, judge, samples, sheet};
use crate::sampled_bay::{Bay, sample};

/// The budget for all findings together.
pub(crate) const BUDGET: f64 = 0.02;

/// Plain jobs and what was wrongly found in them.
pub(crate) struct Drawn {
    pub(crate) jobs: usize,
    pub(crate) with_any: usize,
    pub(crate) by_code: BTreeMap<&'static str, usize>,
}

impl Drawn {
    pub(crate) fn share(&self) -> f64 {
        self.with_any as f64 / self.jobs as f64
    }
}

/// Two and four photos, plates on two and four wheels, both lens models.
fn bays() -> Vec<(String, Bay, Setup)> {
    let mut all = Vec::new();
    for four_photos in [false, true] {
        for front_plates in [false, true] {
            for kannala_brandt in [false, true] {
                let bay = Bay { four_photos, front_plates, kannala_brandt, ..bay() };
                let reference_line =
                    if front_plates { ReferenceLine::Centreline } else { ReferenceLine::RearAxleNormal };
                let name = format!(
                    "{} photos, {} plates, {}",
                    if four_photos { 4 } else { 2 },
                    if front_plates { 4 } else { 2 },
                    if kannala_brandt { "Kannala-Brandt" } else { "Brown-Conrady" }
                );
                all.push((name, bay, Setup { reference_line, ..wide_sheet(front_plates) }));
            }
        }
    }
    all
}

/// With two plates two photos prove less: a sheet that they can prove, so that
/// its weakness is no finding.
fn wide_sheet(front_plates: bool) -> Setup {
    let mut sheet = sheet();
    for check in sheet.checks.iter_mut().filter(|_| !front_plates) {
        let (lower, upper) = (check.lower.unwrap(), check.upper.unwrap());
        let middle = f64::midpoint(lower, upper);
        (check.lower, check.upper) = (Some(middle + 4.0 * (lower - middle)), Some(middle + 4.0 * (upper - middle)));
    }
    sheet
}

/// So many jobs of each bay.
pub(crate) fn draw(each: u64) -> Drawn {
    let mut drawn = Drawn { jobs: 0, with_any: 0, by_code: BTreeMap::new() };
    for (name, bay, sheet) in bays() {
        let codes: Vec<Vec<&'static str>> = (0..each)
            .into_par_iter()
            .map(|seed| {
                let judged = judge(&sample(&bay, 40_000 + seed), &sheet, &job());
                // A sheet that is in no photo is no false alarm.
                let codes: Vec<&str> = judged.codes().into_iter().filter(|c| *c != "carrier-not-seen").collect();
                for f in judged.findings.iter().filter(|f| codes.contains(&f.code)) {
                    println!("{name} {seed}: {} {}", f.code, crate::findings::bench::en(&f.message));
                }
                codes
            })
            .collect();
        let wrong = codes.iter().filter(|c| !c.is_empty()).count();
        println!("{name}: {wrong} of {each} plain jobs have a finding");
        drawn.jobs += codes.len();
        drawn.with_any += wrong;
        for code in codes.into_iter().flatten() {
            *drawn.by_code.entry(code).or_default() += 1;
        }
    }
    drawn
}

/// Limit at three standard deviations of the count.
fn limit(n: usize) -> f64 {
    BUDGET + 3.0 * (BUDGET * (1.0 - BUDGET) / n as f64).sqrt()
}

/// 200 jobs; `BAYWITNESS_FINDING_SAMPLES=10` draws ten times as many.
#[test]
fn plain_bays_raise_no_alarm() {
    let drawn = draw(samples(12));
    println!("{:.4} of {} plain jobs have a finding: {:?}", drawn.share(), drawn.jobs, drawn.by_code);
    assert!(drawn.share() <= limit(drawn.jobs), "{}: {:?}", drawn.share(), drawn.by_code);
}
