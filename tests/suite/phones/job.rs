//! What one job of a pipeline shows.

use std::path::Path;

use baywitness::detect::find_markers;
use baywitness::marker::Dictionary;
use baywitness::record::{CheckRecord, FindingRecord, JobRecord, Level, MeasuredRecord, Verdict};
use baywitness::synth::{Scene, SeenMarker, Truth};
use nalgebra::Vector2;
use serde::{Deserialize, Serialize};
use statrs::distribution::{ContinuousCDF, StudentsT};

use crate::detect_support::{Score, TrueMarker, strays};

/// What is judged, by the record's names.
pub(super) const QUANTITIES: [&str; 6] = ["distance_from_nose", "lateral_offset", "height", "yaw", "pitch", "roll"];

const VERDICTS: [Verdict; 3] = [Verdict::Within, Verdict::Outside, Verdict::NotProven];

/// Whether a finding forbids to call anything within.
pub(super) fn is_serious(finding: &FindingRecord) -> bool {
    matches!(finding.level, Level::Stop | Level::Void)
}

/// One job's figures.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub(super) struct Job {
    pub(super) verdict: String,
    /// Checks that are within, outside and not proven.
    pub(super) checks: [usize; 3],
    /// Findings of level stop or void.
    pub(super) serious: Vec<String>,
    pub(super) wrongly_within: usize,
    pub(super) u95_distance_mm: Option<f64>,
    /// Error over standard uncertainty, and whether the 95 % interval holds.
    pub(super) errors: [Option<(f64, bool)>; 6],
    pub(super) strays: usize,
    pub(super) corners: Score,
}

impl Job {
    /// A job that was staged in a folder and verified.
    pub(super) fn of(scene: &Scene, folder: &Path, truth: &Truth, record: &JobRecord) -> Self {
        let (mut stray, mut corners) = (0, Score::default());
        for (index, photo) in scene.photos().iter().enumerate() {
            let luma = baywitness::photo::read(&folder.join("photos").join(&photo.file)).unwrap().luma;
            let found = find_markers(&luma, Dictionary::tag36h11());
            let markers: Vec<TrueMarker> = scene.corners(index).iter().map(true_marker).collect();
            corners.add(&markers, &found, |m| m.visible > 0.99 && m.side > 20.0 && m.facing > 0.34);
            stray += strays(&markers, &found).len();
        }
        let error = |key: &str| {
            let (measured, truth) = (record.measured.get(key)?, truth.measured.get(key)?);
            let error = measured.value - truth;
            Some((error / measured.standard_uncertainty, error.abs() <= half_width(measured)))
        };
        let serious = record.findings.iter().filter(|f| is_serious(f));
        let distance = record.checks.iter().find(|c| c.quantity == "distance");
        Job {
            verdict: record.verdict.name().to_owned(),
            checks: VERDICTS.map(|v| record.checks.iter().filter(|c| c.verdict == v).count()),
            serious: serious.map(|f| f.code.clone()).collect(),
            wrongly_within: record.checks.iter().filter(|c| wrongly_within(c, truth)).count(),
            u95_distance_mm: distance.and_then(|c| c.expanded_uncertainty),
            errors: QUANTITIES.map(error),
            strays: stray,
            corners,
        }
    }
}

impl std::fmt::Display for Job {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let z: Vec<String> = self.errors.iter().map(|e| e.map_or("-".into(), |(z, _)| format!("{z:+.1}"))).collect();
        write!(f, "{} {} {:?}; {}", self.verdict, z.join(" "), self.serious, self.corners)
    }
}

fn true_marker(seen: &SeenMarker) -> TrueMarker {
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
