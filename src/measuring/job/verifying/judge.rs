//! An opened job solved, measured and decided.

use super::solve::solve;
use crate::cores;
use crate::folder::JobFolder;
use crate::job::asking::{Questions, elsewhere, line_of, photo_facts};
use crate::job::moving::{first, track};
use crate::job::opening::Opened;
use crate::job::plan::{Standing, developed_plainly, next_station};
use crate::job::recording::{Parts, record};
use crate::marker::Role;
use crate::measure::{Facts, Measurement, measure};
use crate::pose::Scene;
use crate::quantity::with_uncertainty;
use crate::record::{CheckRecord, JobRecord, NextPhotoRecord};
use crate::setup::Check;
use crate::verdict::findings::{Case, Finding, PhotoFacts, Suspect, detectable, find, is_against_photos, suspects};
use crate::verdict::{
    Checked, StandSize, Verdict, after_the_moves, check, mark, more_evidence, plus_minus, sensitivity, sentences,
    settle,
};
use crate::words::{Language, Phrase, phrase};

/// Solves and decides.
pub(in crate::job) fn judge(mut opened: Opened) -> JobRecord {
    let _one = cores::UnderWay::begin();
    let mut assignment = opened.assignment.clone();
    let names: Vec<&str> = opened.photos.iter().map(|p| p.name.as_str()).collect();
    let solved = solve(&opened.problem(), &names, &mut assignment);
    opened.assignment = assignment;
    opened.name_untied();
    decide(&opened, solved)
}

fn decide(opened: &Opened, solved: Result<Scene, Phrase>) -> JobRecord {
    let Opened { folder, photos, assignment, .. } = opened;
    let problem = &opened.problem();
    let (kit, setup, job) = (&folder.kit, &folder.setup, &folder.job);
    let facts = Facts { kit, setup, vehicle: &job.vehicle };
    let questions = Questions::new(&opened.steps, setup, job);
    let line = setup.reference_line;
    let ask = |scene: &Scene, readings: &[_]| measure(&facts, scene, line, &questions.asks, readings);
    let scene = solved.as_ref().ok();
    let alone = scene.map(|s| ask(s, &[]));
    let readings = questions.compared(kit, setup, job, alone.as_ref());
    // What the photos exclude would bend every figure: it is named, and the figures are the others'.
    let used = questions.used(&readings);
    let with_readings = scene.filter(|_| !used.is_empty()).map(|s| ask(s, &used));
    let measurement = with_readings.as_ref().or(alone.as_ref());
    let checks = decide_all(opened, &questions, scene, measurement);
    let without = with_readings.is_some().then(|| decide_all(opened, &questions, scene, alone.as_ref()));
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
        unlisted: &folder.unlisted,
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
        let others: Vec<Finding> = findings.iter().filter(|f| !is_against_photos(f)).cloned().collect();
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
