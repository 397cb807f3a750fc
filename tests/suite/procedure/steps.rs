//! A panel photographed level and then tilted.

use baywitness::folder::JobFile;
use baywitness::quantity::Quantity;
use baywitness::record::Verdict;
use baywitness::synth::{PhotoSpec, Scene, StandError};

use crate::program::program;

use super::{codes, job, options, scene, stage, verify, verify_with};

/// The sample's sheet with two steps: pitch 0, then pitch 2 degrees.
fn in_two_steps(tilted_wrong_deg: f64) -> Scene {
    let mut scene = scene(&[
        ("a.jpg", &|p| p.step = Some("level".into())),
        ("b.jpg", &|p| p.step = Some("level".into())),
        ("c.jpg", &|p| p.step = Some("tilted".into())),
        ("d.jpg", &|p| {
            p.step = Some("tilted".into());
            p.stand_moved.pitch_deg = 0.0;
        }),
    ]);
    scene.setup.steps = vec!["level".into(), "tilted".into()];
    let at = scene.setup.checks.iter().position(|c| c.quantity == Quantity::Pitch).unwrap();
    let mut tilted = scene.setup.checks[at].clone();
    scene.setup.checks[at].step = Some("level".into());
    tilted.step = Some("tilted".into());
    tilted.nominal += 2.0;
    tilted.lower = tilted.lower.map(|l| l + 2.0);
    tilted.upper = tilted.upper.map(|l| l + 2.0);
    scene.setup.checks.push(tilted);
    for photo in scene.spec.photo.iter_mut().flatten().skip(2) {
        photo.stand_moved.pitch_deg = tilted_wrong_deg;
    }
    scene
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn each_step_has_its_own_stand() {
    let scene = in_two_steps(0.0);
    let folder = tempfile::tempdir().unwrap();
    stage(&scene, folder.path());
    let record = job::verify(folder.path(), &options()).unwrap();
    assert_eq!(record.verdict, Verdict::Within, "{:?}", record.reason);
    let truth = scene.truth();
    for key in ["pitch", "pitch#tilted", "yaw", "yaw#tilted", "distance_from_nose#tilted"] {
        let (found, exact) = (&record.measured[key], truth.measured[key]);
        let sigmas = (found.value - exact) / found.standard_uncertainty;
        assert!(sigmas.abs() < 4.0, "{key}: {} against {exact}, {sigmas:.1} sigmas", found.value);
    }
    assert!((record.measured["pitch#tilted"].value - record.measured["pitch"].value - 2.0).abs() < 0.2);
    assert!(record.carriers.iter().any(|c| c.name == "stand (tilted)"));

    // Photos of no step cannot stand for one.
    let record = verify_with(folder.path(), "step = \"tilted\"\n", "");
    assert_eq!(record.verdict, Verdict::Retake);
    let tilted = record.checks.iter().find(|c| c.step.as_deref() == Some("tilted")).unwrap();
    assert_eq!(tilted.value, None);
    // No card in the photos of a job that has one.
    let record = verify_with(folder.path(), "job = ", "card = [512, 540]\njob = ");
    assert_eq!(record.verdict, Verdict::NotProven);
    assert!(codes(&record).contains(&"card-not-seen") && !codes(&record).contains(&"card-of-another-job"));
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_tilt_left_from_the_step_before_is_outside_in_its_step_only() {
    let record = verify(&in_two_steps(-2.0));
    let verdict = |step: &str| {
        record.checks.iter().find(|c| c.quantity == "pitch" && c.step.as_deref() == Some(step)).unwrap().verdict
    };
    assert_eq!((verdict("level"), verdict("tilted")), (Verdict::Within, Verdict::Outside));
    assert_eq!(record.verdict, Verdict::Outside);
}

/// One photo of the second step proves nothing, least a tilt whose tolerance is a
/// little too tight for it: the advice says which step the next photo has to
/// show, and from where; taken from there, it proves it.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn the_next_photo_is_of_the_step_that_is_open() {
    let mut scene = in_two_steps(0.0);
    scene.spec.photo.as_mut().unwrap().pop();
    let folder = tempfile::tempdir().unwrap();
    stage(&scene, folder.path());
    let record = job::verify(folder.path(), &options()).unwrap();
    let of_tilt = |step: &Option<String>| step.as_deref() == Some("tilted");
    let found = record.checks.iter().find(|c| of_tilt(&c.step)).unwrap();
    let (value, u) = (found.value.unwrap(), found.standard_uncertainty.unwrap());
    for check in scene.setup.checks.iter_mut().filter(|c| of_tilt(&c.step)) {
        // Proving takes 1.645 u of room (JCGM 106, one limit in reach).
        let most = (value - check.nominal).abs() + 1.5 * u;
        (check.lower, check.upper) = (Some(check.nominal - most), Some(check.nominal + most));
    }
    std::fs::write(folder.path().join("setup.toml"), scene.setup.to_toml()).unwrap();
    let record = job::verify(folder.path(), &options()).unwrap();
    assert_eq!(record.verdict, Verdict::NotProven, "{:?}", record.reason);
    let next = record.next_photo.expect("a photo that would decide it");
    assert_eq!(next.step.as_deref(), Some("tilted"), "{next:?}");
    assert!(next.words.contains("as in step tilted") && next.decides.contains(&"pitch".to_owned()), "{next:?}");

    let mut photo = PhotoSpec::new("next.jpg", next.position_mm, next.look_at_mm);
    photo.step = next.step;
    scene.spec.photo.as_mut().unwrap().push(photo);
    let record = verify(&scene);
    let then = record.checks.iter().find(|c| of_tilt(&c.step)).unwrap();
    // Its place is the best for all checks of the step, none of which one photo alone proves.
    assert!(then.standard_uncertainty.unwrap() < 0.8 * u, "{then:?} after {u}");
    assert_eq!(then.verdict, Verdict::Within, "{then:?}");
}

/// The stand is moved once and photographed in each step, one photo each, by the commands.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_move_is_photographed_step_by_step() {
    let mut scene = in_two_steps(0.0);
    scene.spec.moves = vec![StandError::from([0.0, -5.0, 0.0, 0.0, 0.0, 0.0])];
    let photos = scene.spec.photo.as_mut().unwrap();
    for (of, file) in [(0, "e.jpg"), (2, "f.jpg")] {
        let mut photo = PhotoSpec { file: file.into(), after_move: 1, ..photos[of].clone() };
        photo.eye_mm[0] += 150.0;
        photos.push(photo);
    }
    let folder = tempfile::tempdir().unwrap();
    let job_folder = folder.path().join("job");
    stage(&scene, &job_folder);
    for file in ["e.jpg", "f.jpg"] {
        std::fs::rename(job_folder.join("photos").join(file), folder.path().join(file)).unwrap();
    }
    let path = job_folder.join("job.toml");
    let read = || JobFile::from_toml(&std::fs::read_to_string(&path).unwrap(), "job.toml").unwrap();
    let mut file = read();
    file.photo_entries.as_mut().unwrap().retain(|e| e.after_move == 0);
    std::fs::write(&path, file.to_toml()).unwrap();
    let run = |more: &[&str]| {
        let out = program().arg("verify").args(more).arg(&job_folder).output().unwrap();
        (out.status.code().unwrap(), String::from_utf8(out.stderr).unwrap())
    };
    let [level, tilted] = ["e.jpg", "f.jpg"].map(|f| folder.path().join(f).display().to_string());
    let (code, said) = run(&["--moved", &level]);
    assert!(code == 2 && said.contains("--step \"level\", --step \"tilted\""), "{said}");
    let (code, said) = run(&["--moved", &level, "--step", "lvel"]);
    assert!(code == 2 && said.contains("is no step of the set-up sheet"), "{said}");
    assert_ne!(run(&["--moved", &level, "--step", "level"]).0, 2);
    let half = job::verify(&job_folder, &options()).unwrap();
    assert_ne!(half.verdict, Verdict::Within, "the other step is not known there yet");
    assert_ne!(run(&["--more", &tilted, "--step", "tilted"]).0, 2);
    let steps: Vec<_> = read().photo_entries.unwrap().into_iter().map(|e| (e.step.unwrap(), e.after_move)).collect();
    let wanted = [("level", 0), ("level", 0), ("tilted", 0), ("tilted", 0), ("level", 1), ("tilted", 1)];
    assert_eq!(steps, wanted.map(|(s, n)| (s.to_owned(), n)));
    let record = job::verify(&job_folder, &options()).unwrap();
    let (before, after) = (&record.positions[0], &record.positions[1]);
    assert_eq!(after.aims.len(), 2);
    for (b, a) in before.aims.iter().zip(&after.aims) {
        let moved = a.position_mm[1] - b.position_mm[1];
        assert!((moved + 5.0).abs() < 2.0, "{:?} went {moved} mm", a.step);
    }
}
