//! One job from folder to record.

use std::path::Path;

use super::Error;
use super::answers::{Questions, line_of};
use super::assign::{Assignment, assign, views};
use super::convert::{Parts, record};
use super::doubts::{check_asks, elsewhere, photo_facts};
use super::look::{Looked, look};
use crate::folder::{JobFolder, Models};
use crate::marker::Role;
use crate::measure::{Answer, Facts, Undetermined, measure};
use crate::pose::{self, Problem, Scene, adjust};
use crate::record::JobRecord;
use crate::verdict::findings::{Case, PhotoFacts, PhotoProblem, Suspect, detectable, find, suspects};
use crate::verdict::{Checked, StandSize, check, sensitivity};

/// How to verify.
#[derive(Debug, Clone)]
pub struct Options {
    /// Where set-up sheets, rigs and cameras are found by name.
    pub models: Models,
}

/// Verifies the job in a folder.
///
/// # Errors
/// An input that cannot be read or decoded; everything else is a verdict.
pub fn verify(path: &Path, options: &Options) -> Result<JobRecord, Error> {
    let folder = JobFolder::open(path, &options.models)?;
    let photos = look(&folder.photos)?;
    let mut assignment = assign(&folder, &photos);
    let views = views(&folder, &photos, &mut assignment);
    let cameras = assignment.cameras.clone();
    let problem = Problem { rig: &folder.rig, cameras: cameras.iter().collect(), photos: views };
    let solved = solve(&problem, &mut assignment);
    Ok(judge(&folder, &photos, &assignment, &problem, solved))
}

/// The scene, or in words why there is none.
fn solve(problem: &Problem, assignment: &mut Assignment) -> Result<Scene, String> {
    let usable = assignment.photos.iter().filter(|p| p.is_ok()).count();
    if usable < LEAST_PHOTOS {
        return Err(match usable {
            0 => no_photo(assignment),
            _ => "only one photo can be measured, and nothing could contradict it: take at least one more from the other side".to_owned(),
        });
    }
    let scene = adjust(problem, &pose::Options::default()).map_err(|e| e.to_string())?;
    for (j, photo) in scene.photos.iter().enumerate() {
        if photo.is_none() && assignment.photos[j].is_ok() {
            assignment.photos[j] = Err(PhotoProblem::NotLinked);
        }
    }
    if scene.photos.iter().flatten().count() < LEAST_PHOTOS {
        return Err(
            "the photos share no carrier: take them so that each shows the stand and the wheel plates".to_owned()
        );
    }
    Ok(scene)
}

/// Why no photo at all can be measured: the first one's reason stands for all.
fn no_photo(assignment: &Assignment) -> String {
    match assignment.photos.iter().find_map(|p| p.as_ref().err()) {
        Some(problem) => format!("no photo can be measured; of the first one: {problem}"),
        None => "the job has no photo".to_owned(),
    }
}

/// Two views that agree are the least proof.
const LEAST_PHOTOS: usize = 2;

fn judge(
    folder: &JobFolder,
    photos: &[Looked],
    assignment: &Assignment,
    problem: &Problem,
    solved: Result<Scene, String>,
) -> JobRecord {
    let (rig, setup, job) = (&folder.rig, &folder.setup, &folder.job);
    let facts = Facts { rig, setup, vehicle: &job.vehicle };
    let questions = Questions::new(rig, setup, job);
    let used = questions.used(job);
    let line = setup.reference_line;
    let ask = |scene: &Scene, readings: &[_]| measure(&facts, scene, line, &questions.asks, readings);
    let scene = solved.as_ref().ok();
    let alone = scene.map(|s| ask(s, &[]));
    let with_readings = scene.filter(|_| !used.is_empty()).map(|s| ask(s, &used));
    let measurement = with_readings.as_ref().or(alone.as_ref());
    let checks = decide_all(folder, questions.checks(setup, job, measurement));
    let without = with_readings.is_some().then(|| decide_all(folder, questions.checks(setup, job, alone.as_ref())));
    let readings = questions.compared(job, alone.as_ref());
    let suspects: Vec<Suspect> = scene.map_or_else(Vec::new, |s| suspects(rig, problem, s));
    let photo_facts: Vec<PhotoFacts> =
        photos.iter().zip(&assignment.photos).map(|(p, a)| photo_facts(p, a.as_ref().err().cloned())).collect();
    let measured = measurement.map(|m| questions.measured(m)).unwrap_or_default();
    let asks = check_asks(folder, &questions.asks);
    let elsewhere = scene.map_or_else(Vec::new, |s| elsewhere(&facts, s, asks, &checks, &readings));
    let sensitivity = scene.map_or_else(Vec::new, |s| sensitivity(&facts, problem, s, asks));
    let case = Case {
        rig,
        setup,
        job,
        photos: &photo_facts,
        scene,
        problem: Some(problem),
        measurement,
        checks: &checks,
        line,
        suspects: &suspects,
        readings: &readings,
        measured: &measured,
        elsewhere: &elsewhere,
        sensitivity: &sensitivity,
    };
    let (findings, detectable) = (find(&case), detectable(&case));
    record(&Parts {
        folder,
        photos,
        assignment,
        problem,
        scene,
        why_no_scene: solved.as_ref().err().map(String::as_str),
        measurement,
        measured: measured.clone(),
        checks: &checks,
        without: without.as_deref(),
        readings: &readings,
        findings: &findings,
        detectable: &detectable,
        sensitivity: &sensitivity,
    })
}

fn decide_all(folder: &JobFolder, answers: Vec<Result<Answer, Undetermined>>) -> Vec<Checked> {
    let setup = &folder.setup;
    let size = stand_size(folder);
    setup
        .checks
        .iter()
        .zip(answers)
        .map(|(c, answer)| check(c, line_of(setup, c), &setup.decision, answer, &size))
        .collect()
}

/// How far the stand's markers reach from the aim point.
fn stand_size(folder: &JobFolder) -> StandSize {
    let corners = folder
        .rig
        .with_role(Role::Target)
        .take(1)
        .flat_map(|k| &folder.rig.carriers[k].markers)
        .flat_map(crate::marker::Marker::corners_mm);
    let reach = |v: [f64; 2], p: nalgebra::Point3<f64>| [v[0].max(p.y.abs()), v[1].max(p.z.abs())];
    let [half_width_mm, half_height_mm] = corners.fold([0.0, 0.0], reach);
    StandSize { half_width_mm, half_height_mm }
}
