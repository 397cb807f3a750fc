//! All bay jobs of an independent renderer against their truth (skipped where
//! `../shared/photos/bay` is absent). Prints |value - truth| / U for each
//! quantity of each job.

#![cfg(test)]
#![allow(clippy::print_stdout, reason = "the table is the point")]

use std::path::{Path, PathBuf};

use baywitness::folder::Models;
use baywitness::job;
use baywitness::num::student_quantile;
use baywitness::record::{JobRecord, Level, MeasuredRecord, Verdict};
use rayon::prelude::*;
use serde_json::Value;
use statrs::distribution::{Binomial, DiscreteCDF};

const QUANTITIES: [&str; 9] = [
    "distance_from_nose",
    "distance_from_rear_axle",
    "lateral_offset",
    "height",
    "yaw",
    "pitch",
    "roll",
    "side_range_difference",
    "rear_track",
];
/// Jobs whose photos contradict themselves or their files: never within.
const NEVER_WITHIN: [&str; 6] =
    ["bumped", "plate_misseated", "plates_swapped", "sheets_swapped", "print97", "other_camera"];
/// Jobs in which nothing is wrong but where the stand stands.
const PLAIN: [&str; 8] = ["good", "four", "yaw", "lateral", "distance", "height", "pitch", "roll"];

/// Findings about files that are not what they should be.
const ABOUT_FILES: [&str; 5] =
    ["photo-edited", "thumbnail-differs", "focal-length-contradicts", "photo-of-another-day", "markers-of-another-kit"];

struct Case {
    name: String,
    plain: bool,
    truth: Value,
    record: JobRecord,
    seconds: f64,
}

fn starts(name: &str, any: &[&str]) -> bool {
    any.iter().any(|p| name.starts_with(p))
}

fn bay() -> Option<PathBuf> {
    let bay = Path::new(env!("CARGO_MANIFEST_DIR")).join("../shared/photos/bay");
    if bay.is_dir() {
        return Some(bay);
    }
    println!("skipped: {} is not here", bay.display());
    None
}

fn cases(bay: &Path) -> Vec<Case> {
    let mut names: Vec<String> = std::fs::read_dir(bay.join("jobs"))
        .unwrap()
        .map(|e| e.unwrap().file_name().into_string().unwrap())
        .filter(|name| bay.join("jobs").join(name).join("job.toml").is_file())
        .collect();
    names.sort();
    let options = job::Options::new(Models::embedded());
    let verify = |name: String| {
        let truth = std::fs::read_to_string(bay.join("truth").join(&name).join("expected.json")).unwrap();
        let start = std::time::Instant::now();
        let record = job::verify(&bay.join("jobs").join(&name), &options).unwrap();
        let seconds = start.elapsed().as_secs_f64();
        Case { plain: starts(&name, &PLAIN), truth: serde_json::from_str(&truth).unwrap(), name, record, seconds }
    };
    names.into_par_iter().map(verify).collect()
}

/// Half the stated 95 % interval.
fn expanded(m: &MeasuredRecord) -> f64 {
    m.standard_uncertainty * student_quantile(0.975, m.degrees_of_freedom.unwrap_or(f64::INFINITY))
}

impl Case {
    fn codes(&self) -> Vec<&str> {
        self.record.findings.iter().map(|f| f.code.as_str()).collect()
    }

    fn wanted(&self) -> Vec<&str> {
        self.truth["expected_findings"].as_array().unwrap().iter().map(|v| v.as_str().unwrap()).collect()
    }

    /// Error over expanded uncertainty, where the photos determine the quantity.
    fn miss(&self, quantity: &str) -> Option<f64> {
        let found = self.record.measured.get(quantity)?;
        let truth = self.truth["measured_true"][quantity].as_f64()?;
        Some((found.value - truth) / expanded(found))
    }

    fn row(&self) -> String {
        let ratio = |q| self.miss(q).map_or("     -".to_owned(), |r| format!("{:6.2}", r.abs()));
        let ratios: String = QUANTITIES.iter().map(|q| ratio(q)).collect();
        let verdict = format!("{:?}", self.record.verdict).to_lowercase();
        let true_verdict = self.truth["true_verdict"].as_str().unwrap();
        format!("{:16} {verdict:9} {true_verdict:8}{ratios} {:5.1} s {:?}", self.name, self.seconds, self.codes())
    }

    /// What is wrong with the answer to this job.
    fn faults(&self) -> Vec<String> {
        let (name, verdict, codes) = (&self.name, self.record.verdict, self.codes());
        let truly_outside = self.truth["true_verdict"] == "outside";
        let mut faults = Vec::new();
        if verdict == Verdict::Within && (truly_outside || starts(name, &NEVER_WITHIN)) {
            faults.push(format!("{name}: within, though truly {}, {:?}", self.truth["true_verdict"], self.wanted()));
        }
        if self.plain && verdict == Verdict::Outside && !truly_outside {
            faults.push(format!("{name}: outside, though truly within"));
        }
        if self.plain && verdict == Verdict::Retake {
            faults.push(format!("{name}: retake, {codes:?}"));
        }
        // What is too near its limit to be decided may leave its finding out.
        let excused = self.plain && verdict == Verdict::NotProven;
        faults
            .extend(self.wanted().iter().filter(|w| !codes.contains(w) && !excused).map(|w| format!("{name}: no {w}")));
        let stops = self.record.findings.iter().filter(|f| matches!(f.level, Level::Stop | Level::Void));
        // Nothing about these photos' files is odd, and no job is told so.
        let odd = codes.iter().filter(|c| ABOUT_FILES.contains(c) && !self.wanted().contains(c));
        faults.extend(odd.map(|c| format!("{name}: {c}")));
        let stray = stops.filter(|f| self.plain && !self.wanted().contains(&f.code.as_str()));
        faults.extend(stray.map(|f| format!("{name}: {} on a plain job: {}", f.code, f.message)));
        faults
    }
}

#[test]
fn bay_jobs_agree_with_their_truth() {
    let Some(bay) = bay() else { return };
    let cases = cases(&bay);
    assert!(!cases.is_empty());
    println!("|value - truth| / U: {QUANTITIES:?}");
    for case in &cases {
        println!("{}", case.row());
    }
    let mut faults: Vec<String> = cases.iter().flat_map(Case::faults).collect();
    let misses: Vec<f64> =
        cases.iter().filter(|c| c.plain).flat_map(|c| QUANTITIES.iter().filter_map(|q| c.miss(q))).collect();
    for q in QUANTITIES {
        let own: Vec<f64> = cases.iter().filter(|c| c.plain).filter_map(|c| c.miss(q)).collect();
        let rms = (own.iter().map(|m| m * m).sum::<f64>() / own.len() as f64).sqrt();
        let worst = own.iter().fold(0.0_f64, |a, b| a.max(b.abs()));
        println!("{q:24} n {:2}, RMS(error / U) {rms:.2}, worst {worst:.2}", own.len());
    }
    let held = misses.iter().filter(|m| m.abs() <= 1.0).count() as u64;
    let n = misses.len() as u64;
    println!("{held} of {n} intervals of the plain jobs hold the truth");
    if Binomial::new(0.95, n).unwrap().cdf(held) < 0.01 {
        faults.push(format!("only {held} of {n} intervals hold: below the 1 % binomial bound of 95 %"));
    }
    assert!(faults.is_empty(), "{faults:#?}");
}
