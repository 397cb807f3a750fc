//! What a pipeline's jobs add up to.

use std::path::Path;

use baywitness::detect::find_markers;
use baywitness::marker::Dictionary;
use baywitness::record::{CheckRecord, JobRecord, Level, MeasuredRecord, Verdict};
use baywitness::synth::{Preset, Scene, Truth};
use nalgebra::Vector2;
use statrs::distribution::{ContinuousCDF, StudentsT};

use crate::detect_support::{Score, TrueMarker, strays};

/// What is judged, by the record's names.
const QUANTITIES: [&str; 6] = ["distance_from_nose", "lateral_offset", "height", "yaw", "pitch", "roll"];

const VERDICTS: [Verdict; 3] = [Verdict::Within, Verdict::Outside, Verdict::NotProven];

/// One job's figures.
struct Job {
    verdict: Verdict,
    /// Checks that are within, outside and not proven.
    checks: [usize; 3],
    /// Findings of level stop or void.
    serious: Vec<String>,
    wrongly_within: usize,
    u95_distance_mm: Option<f64>,
    /// Error over standard uncertainty, and whether the 95 % interval holds.
    errors: [Option<(f64, bool)>; 6],
    strays: usize,
}

/// All jobs of a pipeline.
#[derive(Default)]
pub(super) struct Tally {
    corners: Score,
    jobs: Vec<Job>,
}

impl Tally {
    /// Adds a job that was staged in a folder and verified.
    pub(super) fn add(&mut self, scene: &Scene, folder: &Path, truth: &Truth, record: &JobRecord) {
        let mut stray = 0;
        for (index, photo) in scene.photos().iter().enumerate() {
            let luma = baywitness::photo::read(&folder.join("photos").join(&photo.file)).unwrap().luma;
            let found = find_markers(&luma, Dictionary::tag36h11());
            let markers: Vec<TrueMarker> = scene.corners(index).iter().map(true_marker).collect();
            self.corners.add(&markers, &found, |m| m.visible > 0.99 && m.side > 20.0 && m.facing > 0.34);
            stray += strays(&markers, &found).len();
        }
        let error = |key: &str| {
            let (measured, truth) = (record.measured.get(key)?, truth.measured.get(key)?);
            let error = measured.value - truth;
            Some((error / measured.standard_uncertainty, error.abs() <= half_width(measured)))
        };
        let serious = record.findings.iter().filter(|f| matches!(f.level, Level::Stop | Level::Void));
        self.jobs.push(Job {
            verdict: record.verdict,
            checks: VERDICTS.map(|v| record.checks.iter().filter(|c| c.verdict == v).count()),
            serious: serious.map(|f| f.code.clone()).collect(),
            wrongly_within: record.checks.iter().filter(|c| wrongly_within(c, truth)).count(),
            u95_distance_mm: record
                .checks
                .iter()
                .find(|c| c.quantity == "distance")
                .and_then(|c| c.expanded_uncertainty),
            errors: QUANTITIES.map(error),
            strays: stray,
        });
    }

    pub(super) fn wrongly_within(&self) -> usize {
        self.jobs.iter().map(|j| j.wrongly_within).sum()
    }

    pub(super) fn found_share(&self) -> f64 {
        self.corners.found as f64 / self.corners.shown.max(1) as f64
    }

    /// The last job in a line, with the corners of all so far.
    pub(super) fn last(&self) -> String {
        let Some(job) = self.jobs.last() else { return String::new() };
        let z: Vec<String> = job.errors.iter().map(|e| e.map_or("-".into(), |(z, _)| format!("{z:+.1}"))).collect();
        format!("{} {} {:?}; so far {}", job.verdict.name(), z.join(" "), job.serious, self.corners)
    }

    fn quantity(&self, index: usize) -> (usize, usize, f64) {
        let all: Vec<(f64, bool)> = self.jobs.iter().filter_map(|j| j.errors[index]).collect();
        let rms = (all.iter().map(|(z, _)| z * z).sum::<f64>() / all.len().max(1) as f64).sqrt();
        (all.iter().filter(|(_, holds)| *holds).count(), all.len(), rms)
    }

    fn median_u95(&self) -> f64 {
        let mut all: Vec<f64> = self.jobs.iter().filter_map(|j| j.u95_distance_mm).collect();
        all.sort_by(f64::total_cmp);
        all.get(all.len() / 2).copied().unwrap_or(f64::NAN)
    }

    /// Checks of all jobs that are within, outside and not proven.
    fn checks(&self) -> String {
        [0, 1, 2].map(|i| self.jobs.iter().map(|j| j.checks[i]).sum::<usize>().to_string()).join(", ")
    }
}

fn true_marker(seen: &baywitness::synth::SeenMarker) -> TrueMarker {
    TrueMarker {
        id: seen.id,
        corners: seen.corners_px.map(|[u, v]| Vector2::new(u, v)),
        visible: seen.visible,
        side: seen.side_px,
        facing: seen.tilt_deg.to_radians().cos(),
        contrast: f64::NAN,
    }
}

/// Half of a 95 % interval.
fn half_width(measured: &MeasuredRecord) -> f64 {
    let factor = match measured.degrees_of_freedom {
        Some(n) if n < 1e6 => StudentsT::new(0.0, 1.0, n).unwrap().inverse_cdf(0.975),
        _ => 1.96,
    };
    factor * measured.standard_uncertainty
}

/// Said to be within while the truth is outside.
fn wrongly_within(check: &CheckRecord, truth: &Truth) -> bool {
    let key = check.from.as_ref().map_or(check.quantity.clone(), |from| format!("{}_from_{from}", check.quantity));
    let exact = *truth.measured.get(&key).unwrap_or_else(|| panic!("the truth has no {key}"));
    let outside = check.lower.is_some_and(|l| exact < l) || check.upper.is_some_and(|u| exact > u);
    check.verdict == Verdict::Within && outside
}

/// The pipelines as a table.
pub(super) fn table(tallies: &[(Preset, Tally)]) -> String {
    let mut text = String::from(
        "| pipeline | markers found | strays | corner RMS px | corner error / u | outward px | U95 distance mm | stop or void | \
         checks within, outside, not_proven | wrongly within |\n|---|---|---|---|---|---|---|---|---|---|\n",
    );
    for (preset, t) in tallies {
        let stopped = t.jobs.iter().filter(|j| !j.serious.is_empty()).count();
        text += &format!(
            "| {} | {} of {} | {} | {:.4} | {:.2} | {:+.4} | {:.2} | {stopped} of {} | {} | {} |\n",
            preset.name(),
            t.corners.found,
            t.corners.shown,
            t.jobs.iter().map(|j| j.strays).sum::<usize>(),
            t.corners.rms(),
            t.corners.normalized(),
            t.corners.outward(),
            t.median_u95(),
            t.jobs.len(),
            t.checks(),
            t.wrongly_within(),
        );
    }
    text += &format!(
        "\n95 % intervals that hold, and RMS(error / u):\n\n| pipeline | {} | all |\n",
        QUANTITIES.join(" | ")
    );
    text += &format!("|---{}|\n", "|---".repeat(QUANTITIES.len() + 1));
    for (preset, t) in tallies {
        let each: Vec<_> = (0..QUANTITIES.len()).map(|q| t.quantity(q)).collect();
        let cells: Vec<String> = each.iter().map(|(held, n, rms)| format!("{held} of {n}, {rms:.2}")).collect();
        let held: usize = each.iter().map(|e| e.0).sum();
        let n: usize = each.iter().map(|e| e.1).sum();
        let square: f64 = each.iter().map(|e| e.2 * e.2 * e.1 as f64).sum();
        let rms = (square / n.max(1) as f64).sqrt();
        text += &format!("| {} | {} | {held} of {n}, {rms:.2} |\n", preset.name(), cells.join(" | "));
    }
    text
}
