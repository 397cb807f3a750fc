//! One job from folder to record.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};

use rayon::prelude::*;

use super::Error;
use super::answers::{Questions, line_of};
use super::assign::Assignment;
use super::convert::{Parts, record};
use super::doubts::{elsewhere, photo_facts};
use super::moves::{first, track};
use super::opened::Opened;
use super::photo_look::looks;
use super::photo_memory::PhotoMemory;
use super::plan::{Standing, developed_plainly, next_station};
use super::series;
use crate::credentials::Source;
use crate::folder::{JobFolder, Models};
use crate::marker::Role;
use crate::measure::{Facts, Measurement, measure};
use crate::pose::{self, Problem, Scene, adjust};
use crate::quantity::with_uncertainty;
use crate::record::{AttemptRecord, CheckRecord, JobRecord, NextPhotoRecord, PhotoLook};
use crate::setup::Check;
use crate::verdict::findings::{Case, Finding, PhotoFacts, PhotoProblem, Suspect, detectable, find, suspects};
use crate::verdict::{
    Checked, StandSize, Verdict, after_the_moves, check, mark, more_evidence, plus_minus, sensitivity, sentences,
    settle,
};
use crate::words::{Language, Phrase, phrase};

/// How to verify.
#[derive(Debug, Clone)]
pub struct Options {
    /// Where set-up sheets, kits and cameras are found by name.
    pub models: Models,
    /// Where the photos' content credentials come from, and who is trusted.
    pub credentials: Source,
}

impl Options {
    /// With credentials from the photos, whose signers nobody vouches for.
    pub fn new(models: Models) -> Self {
        Options { models, credentials: Source::default() }
    }
}

/// Verifies the job in a folder.
///
/// # Errors
/// An input that cannot be read or decoded; everything else is a verdict.
pub fn verify(path: &Path, options: &Options) -> Result<JobRecord, Error> {
    verify_and(path, options, |_, _| ()).map(|(record, ())| record)
}

/// The same for who also wants something of the opened job: `take` gets its
/// folder and each photo's SHA-256 in the job's order, so that files and photos
/// are opened and read once.
///
/// # Errors
/// As [`verify`].
pub fn verify_and<T>(
    path: &Path,
    options: &Options,
    take: impl FnOnce(&JobFolder, &[&str]) -> T,
) -> Result<(JobRecord, T), Error> {
    fenced(path, || {
        let opened = Opened::read(path, options)?;
        let digests: Vec<&str> = opened.photos.iter().map(|photo| photo.sha256.as_str()).collect();
        let taken = take(&opened.folder, &digests);
        Ok((judge(opened), taken))
    })
}

/// Work on one job. A fault of the program there is that job's error: it ends
/// neither the other jobs nor the page.
fn fenced<T>(path: &Path, work: impl FnOnce() -> Result<T, Error>) -> Result<T, Error> {
    catch_unwind(AssertUnwindSafe(work)).unwrap_or_else(|_| Err(Error::Fault(path.to_path_buf())))
}

/// The same for a page that verifies after every photo: what was found in known
/// bytes is remembered (they are read and hashed again), and what each photo
/// shows on its own is told before anything is adjusted.
///
/// # Errors
/// As [`verify`].
pub fn verify_watching(
    path: &Path,
    options: &Options,
    memory: &PhotoMemory,
    told: &mut dyn FnMut(Vec<PhotoLook>),
) -> Result<JobRecord, Error> {
    fenced(path, || {
        let opened = Opened::read_with(path, options, |photos| memory.look(photos))?;
        told(looks(&opened));
        Ok(judge(opened))
    })
}

/// What became of earlier attempts beside a job that was just verified: each
/// one's own verdict, and whether anything moved since. Attempts that can't be
/// read are left out; empty where none can be compared.
pub fn attempts_beside(
    own: &Path,
    record: &JobRecord,
    earlier: &[PathBuf],
    options: &Options,
    memory: &PhotoMemory,
) -> Vec<AttemptRecord> {
    let read = |path: &Path| Opened::read_with(path, options, |photos| memory.look(photos)).ok();
    let opened: Vec<Option<Opened>> =
        std::iter::once(own).chain(earlier.iter().map(PathBuf::as_path)).map(read).collect();
    let jobs: Vec<Option<&Opened>> = opened.iter().map(Option::as_ref).collect();
    let others = jobs[1..].par_iter().map(|job| Some(judge((*job)?.clone())));
    let others: Vec<Option<JobRecord>> = others.collect();
    let alone: Vec<Option<&JobRecord>> =
        std::iter::once(Some(record)).chain(others.iter().map(Option::as_ref)).collect();
    let attempts = series::attempts(&jobs, 0);
    if attempts.len() < 2 {
        return Vec::new();
    }
    let beside = series::standing_alike(&jobs, &attempts, 0);
    attempt_records(&jobs, &alone, &attempts, &beside)
}

/// Verifies several jobs. Attempts of one series in which nothing moved are
/// adjusted together, and each record lists the attempts.
///
/// # Errors
/// By job: an input that cannot be read or decoded.
pub fn verify_all<P: AsRef<Path> + Sync>(paths: &[P], options: &Options) -> Vec<Result<JobRecord, Error>> {
    let one = |path: &P| {
        let opened = Opened::read(path.as_ref(), options)?;
        let record = judge(opened.clone());
        Ok((opened, record))
    };
    let read: Vec<Result<(Opened, JobRecord), Error>> =
        paths.par_iter().map(|p| fenced(p.as_ref(), || one(p))).collect();
    let jobs: Vec<Option<&Opened>> = read.iter().map(|r| Some(&r.as_ref().ok()?.0)).collect();
    let alone: Vec<Option<&JobRecord>> = read.iter().map(|r| Some(&r.as_ref().ok()?.1)).collect();
    let with_others = |own: usize| fenced(paths[own].as_ref(), || Ok(in_series(&jobs, &alone, own)));
    let records: Vec<Result<Option<JobRecord>, Error>> = (0..jobs.len()).into_par_iter().map(with_others).collect();
    read.into_iter().zip(records).map(|(read, record)| Ok(record?.unwrap_or(read?.1))).collect()
}

/// The record of a job with further attempts; `None` where it has none, or could not be opened.
fn in_series(jobs: &[Option<&Opened>], alone: &[Option<&JobRecord>], own: usize) -> Option<JobRecord> {
    let attempts = series::attempts(jobs, own);
    if attempts.len() < 2 {
        return None;
    }
    let others = series::standing_alike(jobs, &attempts, own);
    let alike: Vec<&Opened> = others.iter().filter(|(_, why)| why.is_none()).filter_map(|(i, _)| jobs[*i]).collect();
    let mut record = if alike.is_empty() { alone[own]?.clone() } else { judge(series::joined(jobs[own]?, &alike)) };
    record.attempts = attempt_records(jobs, alone, &attempts, &others);
    Some(record)
}

/// The attempts in their order; `others` says of each but the own one why it stands apart.
fn attempt_records(
    jobs: &[Option<&Opened>],
    alone: &[Option<&JobRecord>],
    attempts: &[usize],
    others: &[(usize, Option<Phrase>)],
) -> Vec<AttemptRecord> {
    let one = |i: &usize| {
        let apart = others.iter().find(|(k, _)| k == i).map(|(_, why)| why);
        Some(series::attempt_record(jobs[*i]?, alone[*i]?, apart))
    };
    attempts.iter().filter_map(one).collect()
}

/// Solves and decides.
fn judge(mut opened: Opened) -> JobRecord {
    let mut assignment = opened.assignment.clone();
    let names: Vec<&str> = opened.photos.iter().map(|p| p.name.as_str()).collect();
    let solved = solve(&opened.problem(), &names, &mut assignment);
    opened.assignment = assignment;
    opened.name_untied();
    decide(&opened, solved)
}

/// The scene, or in words why there is none.
fn solve(problem: &Problem, names: &[&str], assignment: &mut Assignment) -> Result<Scene, Phrase> {
    let usable = assignment.photos.iter().filter(|p| p.is_ok()).count();
    if usable < LEAST_PHOTOS {
        return Err(match usable {
            0 => no_photo(assignment),
            _ => only_one(names, assignment),
        });
    }
    let scene = adjust(problem, &pose::Options::default()).map_err(|e| why_no_scene(&e))?;
    for (j, photo) in scene.photos.iter().enumerate() {
        if photo.is_none() && assignment.photos[j].is_ok() {
            assignment.photos[j] = Err(PhotoProblem::NotLinked);
        }
    }
    if scene.photos.iter().flatten().count() < LEAST_PHOTOS {
        return Err(phrase!("advice-not-linked"));
    }
    Ok(scene)
}

/// Why photos could not be adjusted.
pub(super) fn why_no_scene(error: &pose::Error) -> Phrase {
    match error {
        pose::Error::NothingSeen { photos } => phrase!("advice-nothing-seen", photos = *photos),
        pose::Error::NotSettled { .. } => phrase!("advice-not-settled"),
    }
}

/// Which photos can't be measured besides the one that can, and why.
fn only_one(names: &[&str], assignment: &Assignment) -> Phrase {
    let not = names.iter().zip(&assignment.photos).filter_map(|(name, p)| Some((name, p.as_ref().err()?)));
    let not: Vec<Phrase> =
        not.map(|(name, why)| phrase!("advice-photo-cannot", photo = *name, why = why.phrase())).collect();
    if not.is_empty() {
        return phrase!("advice-one-photo");
    }
    sentences(phrase!("advice-one-photo-because"), not)
}

/// Why no photo at all can be measured: the first one's reason stands for all.
fn no_photo(assignment: &Assignment) -> Phrase {
    match assignment.photos.iter().find_map(|p| p.as_ref().err()) {
        Some(problem) => phrase!("advice-no-usable-photo", why = problem.phrase()),
        None => phrase!("advice-no-photo"),
    }
}

/// Two views that agree are the least proof.
const LEAST_PHOTOS: usize = 2;

fn decide(opened: &Opened, solved: Result<Scene, Phrase>) -> JobRecord {
    let Opened { folder, photos, assignment, .. } = opened;
    let problem = &opened.problem();
    let (kit, setup, job) = (&folder.kit, &folder.setup, &folder.job);
    let facts = Facts { kit, setup, vehicle: &job.vehicle };
    let questions = Questions::new(&opened.steps, setup, job);
    let used = questions.used(job);
    let line = setup.reference_line;
    let ask = |scene: &Scene, readings: &[_]| measure(&facts, scene, line, &questions.asks, readings);
    let scene = solved.as_ref().ok();
    let alone = scene.map(|s| ask(s, &[]));
    let with_readings = scene.filter(|_| !used.is_empty()).map(|s| ask(s, &used));
    let measurement = with_readings.as_ref().or(alone.as_ref());
    let checks = decide_all(opened, &questions, scene, measurement);
    let without = with_readings.is_some().then(|| decide_all(opened, &questions, scene, alone.as_ref()));
    let readings = questions.compared(job, alone.as_ref());
    let after_move = opened.after_moves();
    let suspects: Vec<Suspect> = scene.map_or_else(Vec::new, |s| suspects(kit, problem, s, &after_move));
    let photo_facts: Vec<PhotoFacts> =
        photos.iter().zip(&assignment.photos).map(|(p, a)| photo_facts(p, a.as_ref().err().cloned())).collect();
    let measured = measurement.map(|m| questions.measured(m)).unwrap_or_default();
    let asks = &questions.first_asks();
    let elsewhere = scene.map_or_else(Vec::new, |s| elsewhere(&facts, s, asks, &checks, &readings));
    let sensitivity = scene.map_or_else(Vec::new, |s| sensitivity(&facts, problem, s, asks));
    let case = Case {
        kit,
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
        phases: &opened.phases,
        after_move: &after_move,
    };
    let detectable = detectable(&case);
    let (findings, settled) = settle(&case, find(&case), &questions.asks_of_checks(), &used);
    let without = without.map(|checks| {
        let others: Vec<Finding> = findings.iter().filter(|f| f.code != "reading-disagrees").cloned().collect();
        mark(&case, &others, &checks)
    });
    let mut record = record(&Parts {
        folder,
        photos,
        assignment,
        problem,
        scene,
        why_no_scene: solved.as_ref().err(),
        measurement,
        measured: measured.clone(),
        checks: &settled,
        without: without.as_deref(),
        readings: &readings,
        findings: &findings,
        detectable: &detectable,
        sensitivity: &sensitivity,
        phases: &opened.phases,
        earlier_stands: &opened.earlier_stands(),
    });
    if let (Some(scene), Some(measurement)) = (scene, measurement) {
        let answers = questions.checks(kit, setup, job, Some(measurement));
        advise(&mut record, opened, scene, measurement, Standing { checks: &settled, answers: &answers });
        record.positions = track(opened, scene, &used);
        record.first = first(opened, &settled, &record.positions);
    }
    record
}

/// Says what would decide what is not proven: photos with their light left alone, one more photo.
fn advise(record: &mut JobRecord, opened: &Opened, scene: &Scene, measurement: &Measurement, now: Standing) {
    for (i, words) in plainly_in_words(opened, scene, now) {
        append(&mut record.checks[i], words);
    }
    let Some(next) = next_station(opened, scene, measurement, now) else { return };
    let words = next.phrase();
    for i in &next.decides {
        append(&mut record.checks[*i], phrase!("advice-one-more-photo", where = words.clone()));
    }
    record.next_photo = Some(NextPhotoRecord {
        position_mm: next.position_mm,
        look_at_mm: next.look_at_mm,
        step: next.step.clone(),
        decides: next.decides.iter().map(|i| record.checks[*i].quantity.clone()).collect(),
        words: words.say(Language::English),
        words_phrase: Some(words),
    });
}

/// One more sentence of a check's reason.
fn append(check: &mut CheckRecord, more: Phrase) {
    let reason = match check.reason_phrase.take() {
        Some(before) => sentences(before, [more]),
        None => more,
    };
    check.reason = Some(reason.say(Language::English));
    check.reason_phrase = Some(reason);
}

/// By not proven check, what its expanded uncertainty would be had the phone not changed the photos' light.
fn plainly_in_words(opened: &Opened, scene: &Scene, now: Standing) -> Vec<(usize, Phrase)> {
    let not_proven = |i: &usize| now.checks[*i].verdict == crate::record::Verdict::NotProven;
    let open: Vec<usize> = (0..now.checks.len()).filter(not_proven).collect();
    let Some(answers) = (!open.is_empty()).then(|| developed_plainly(opened, scene)).flatten() else {
        return Vec::new();
    };
    let words = |i: usize| {
        let worst =
            answers[i].iter().map(|a| Some(a.as_ref()?.estimate.expanded_uncertainty())).collect::<Option<Vec<_>>>()?;
        let u = worst.into_iter().reduce(f64::max)?;
        let before = now.checks[i].answer.as_ref()?.estimate.expanded_uncertainty();
        let unit = opened.folder.setup.checks[i].quantity.unit();
        let (u, before) = with_uncertainty(u, before);
        let (then, now) = (plus_minus(&u, unit), plus_minus(&before, unit));
        Some((i, phrase!("advice-light-changed", uncertainty = then, now = now)))
    };
    open.into_iter().filter_map(words).collect()
}

/// Each check; one that holds in every step is that of its worst step.
fn decide_all(
    opened: &Opened,
    questions: &Questions,
    scene: Option<&Scene>,
    measurement: Option<&Measurement>,
) -> Vec<Checked> {
    let folder = &opened.folder;
    let setup = &folder.setup;
    let size = stand_size(folder);
    let answers = questions.checks(&folder.kit, setup, &folder.job, measurement);
    let more = more_evidence(&folder.kit, scene);
    let mut all: Vec<Checked> = setup
        .checks
        .iter()
        .zip(answers)
        .zip(questions.asks_of_checks())
        .filter_map(|((c, answers), asks)| {
            let all = answers.into_iter().map(|a| check(c, line_of(setup, c), &setup.decision, a, &size, &more));
            let worst =
                all.min_by(|a, b| standing(a).partial_cmp(&standing(b)).unwrap_or(std::cmp::Ordering::Equal))?;
            Some(opened.of_last_position(worst, c, &asks, scene))
        })
        .collect();
    let of_stand = |(check, c): (&Check, &Checked)| check.quantity.is_of_target() && c.verdict == Verdict::Outside;
    if setup.checks.iter().zip(&all).any(of_stand) {
        after_the_moves(&mut all, setup.decision.photos_after_move);
    }
    all
}

/// Orders decisions from bad to good: outside, retake, not proven, within.
fn standing(checked: &Checked) -> (usize, f64) {
    use crate::record::Verdict as V;
    let rank = [V::Outside, V::Retake, V::NotProven, V::Within].iter().position(|v| *v == checked.verdict);
    (rank.unwrap_or(0), checked.decided.map_or(0.0, |d| d.conformance_probability))
}

/// How far the stand's markers reach from the aim point.
fn stand_size(folder: &JobFolder) -> StandSize {
    let corners = folder
        .kit
        .with_role(Role::Target)
        .take(1)
        .flat_map(|k| &folder.kit.carriers[k].markers)
        .flat_map(crate::marker::Marker::corners_mm);
    let reach = |v: [f64; 2], p: nalgebra::Point3<f64>| [v[0].max(p.y.abs()), v[1].max(p.z.abs())];
    let [half_width_mm, half_height_mm] = corners.fold([0.0, 0.0], reach);
    StandSize { half_width_mm, half_height_mm }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_fault_in_one_job_is_that_jobs_error() {
        let names: Vec<&str> = Vec::new();
        let ended = fenced(Path::new("bay/7"), || Ok(names[usize::from(names.is_empty()) + 3]));
        let told = ended.unwrap_err().to_string();
        assert!(told.contains("bay/7"), "{told}");
        assert!(fenced(Path::new("bay/8"), || Ok(5)).is_ok_and(|n| n == 5));
    }
}
