//! Attempts of one series.

use baywitness::job;
use baywitness::record::JobRecord;
use baywitness::synth::{PhotoSpec, Scene};

use super::{options, scene, stage, tell};

fn attempt(number: i64, change: &dyn Fn(&mut PhotoSpec)) -> Scene {
    let mut scene = scene(&[("a.jpg", change), ("b.jpg", change)]);
    for photo in scene.spec.photo.iter_mut().flatten() {
        photo.eye_mm[0] += 90.0 * number as f64;
    }
    scene.spec.job.insert("job".into(), format!("TRY-{number}").into());
    scene.spec.job.insert("attempt".into(), number.into());
    scene
}

fn verify_both(paths: &[std::path::PathBuf]) -> Vec<JobRecord> {
    let records: Vec<_> = job::verify_all(paths, &options()).into_iter().map(Result::unwrap).collect();
    records.iter().for_each(tell);
    records
}

fn u(record: &JobRecord) -> f64 {
    record.measured["distance_from_rear_axle"].standard_uncertainty
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn attempts_without_a_move_are_adjusted_together() {
    let folder = tempfile::tempdir().unwrap();
    let paths = [1, 2, 3].map(|n| folder.path().join(format!("try-{n}")));
    stage(&attempt(1, &|_| ()), &paths[0]);
    stage(&attempt(2, &|_| ()), &paths[1]);
    stage(&attempt(3, &|p| p.stand_moved.lateral_mm = 8.0), &paths[2]);

    let alone = job::verify(&paths[1], &options()).unwrap();
    assert!(alone.attempts.is_empty(), "one job alone lists no attempts");
    let records = verify_both(&paths[..2]);
    for record in &records {
        assert_eq!(record.attempts.iter().map(|a| a.attempt).collect::<Vec<_>>(), [Some(1), Some(2)]);
        assert!(record.attempts.iter().all(|a| a.together), "{:?}", record.attempts);
        assert_eq!(record.photos.len(), 2, "a record has its own photos only");
    }
    println!("u {} alone, {} together", u(&alone), u(&records[1]));
    assert!(u(&records[1]) < 0.95 * u(&alone));
    // The same photos give the same answer, whichever attempt is asked.
    let value = |i: usize| records[i].measured["yaw"].value;
    assert!((value(0) - value(1)).abs() < 1e-6);

    // A stand that was corrected in between stands alone.
    let records = verify_both(&[paths[1].clone(), paths[2].clone()]);
    for record in &records {
        let other = record.attempts.iter().find(|a| a.job != record.job).unwrap();
        assert!(!other.together && other.why_apart.as_ref().unwrap().contains("stand"), "{other:?}");
    }
}
