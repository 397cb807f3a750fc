//! What besides the checks' own values is computed so that findings can judge
//! them: other datums for values that are far off, what the answers hang on,
//! and both as records.

use crate::folder::JobFolder;
use crate::job::opening::Looked;
use crate::measure::{Ask, Facts, measure};
use crate::pose::Scene;
use crate::quantity::Estimate;
use crate::record::{DetectableRecord, SensitivityRecord};
use crate::verdict::findings::{Compared, Detectable, PhotoFacts, PhotoProblem, alternative_asks};
use crate::verdict::{Assumption, Checked, Sensitivity, Verdict, body};
use crate::words::{Language, phrase};

/// A photo as the findings see it.
pub(in crate::job) fn photo_facts<'a>(photo: &'a Looked, problem: Option<PhotoProblem>) -> PhotoFacts<'a> {
    PhotoFacts {
        file: &photo.name,
        exif: &photo.exif,
        traces: Some(&photo.traces),
        sightings: &photo.sightings,
        grain: &photo.grain,
        coefficients: &photo.coefficients,
        problem,
        sha256: &photo.sha256,
        size_px: [photo.width, photo.height],
        light: Some(&photo.light),
        clearness: photo.clearness.as_ref(),
        mirrored: photo.mirrored.as_ref(),
        credentials: photo.credentials.as_ref(),
    }
}

/// The values that checks which are outside are tried against; nothing is
/// measured where all is well.
pub(in crate::job) fn elsewhere(
    facts: &Facts,
    scene: &Scene,
    asks: &[Ask],
    checks: &[Checked],
    readings: &[Compared],
) -> Vec<(Ask, Estimate)> {
    let doubtful = readings.iter().any(Compared::is_excluded);
    let mut wanted: Vec<Ask> = facts
        .setup
        .checks
        .iter()
        .zip(checks)
        .zip(asks)
        .filter(|((_, c), _)| c.verdict == Verdict::Outside || doubtful)
        .flat_map(|((check, c), ask)| alternative_asks(facts.setup, check, ask.target, c.line))
        .collect();
    wanted.sort();
    wanted.dedup();
    if wanted.is_empty() {
        return Vec::new();
    }
    let measured = measure(facts, scene, facts.setup.reference_line, &wanted, &[]);
    wanted.into_iter().zip(measured.answers).filter_map(|(ask, a)| Some((ask, a.ok()?.estimate))).collect()
}

/// The largest change of each check, as a record.
pub(in crate::job) fn sensitivity_records(
    folder: &JobFolder,
    photos: &[Looked],
    all: &[Sensitivity],
) -> Vec<SensitivityRecord> {
    let words = |a: &Assumption| match a {
        Assumption::WithoutCarrier(k) => phrase!("verdict-without-body", body = body(&folder.kit, *k)),
        Assumption::WithoutPhoto(j) => phrase!("verdict-without-photo", photo = &photos[*j].name),
        Assumption::OtherLensModel => phrase!("verdict-other-lens-model"),
    };
    let largest = |check: usize| {
        let of_check = all.iter().filter(move |s| s.ask == check);
        of_check.max_by(|a, b| a.change.abs().total_cmp(&b.change.abs()))
    };
    (0..folder.setup.checks.len())
        .filter_map(largest)
        .map(|s| SensitivityRecord {
            check: s.ask,
            assumption: words(&s.assumption).say(Language::English),
            assumption_phrase: Some(words(&s.assumption)),
            change: s.change,
            standard_uncertainty: (s.assumption != Assumption::OtherLensModel).then_some(s.u_change),
        })
        .collect()
}

/// What would have been found, as records; of where a stand stood before it was moved nobody asks any more.
pub(in crate::job) fn detectable_records(all: &[Detectable], earlier_stands: &[String]) -> Vec<DetectableRecord> {
    let now = |d: &&Detectable| d.carrier.as_ref().is_none_or(|name| !earlier_stands.contains(name));
    let record = |d: &Detectable| DetectableRecord {
        code: d.code.into(),
        carrier: d.carrier.clone(),
        size: d.size,
        unit: d.unit.into(),
        remedy: d.remedy.as_ref().map(|r| r.say(Language::English)),
        remedy_phrase: d.remedy.clone(),
    };
    all.iter().filter(now).map(record).collect()
}
