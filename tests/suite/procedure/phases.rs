//! Photos from before and after the calibration.

use baywitness::record::Verdict;
use baywitness::synth::{PhotoSpec, Scene};

use super::{codes, scene, verify};

fn before_and_after(change: &dyn Fn(&mut PhotoSpec)) -> Scene {
    let before = |p: &mut PhotoSpec| p.phase = Some("before".into());
    let after = |p: &mut PhotoSpec| {
        p.phase = Some("after".into());
        change(p);
    };
    scene(&[("a.jpg", &before), ("b.jpg", &before), ("c.jpg", &after), ("d.jpg", &after)])
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn nothing_moved_and_all_photos_count() {
    let record = verify(&before_and_after(&|_| ()));
    assert_eq!(record.verdict, Verdict::Within, "{:?}", codes(&record));
    assert_eq!(record.phases.len(), 2);
    assert!(record.phases.iter().all(|m| !m.moved && m.moved_mm < 4.0 * m.u_mm.max(0.3)), "{:?}", record.phases);
    assert!(record.photos.iter().all(|p| p.unused_because.is_none()));
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn what_moved_meanwhile_is_told_apart() {
    let record = verify(&before_and_after(&|p| {
        p.stand_moved.lateral_mm = 9.0;
        p.vehicle_rolled_mm = 12.0;
    }));
    assert_eq!(record.verdict, Verdict::NotProven, "{:?}", codes(&record));
    for (code, body, mm) in
        [("stand-moved-between-photos", "stand", 9.0), ("vehicle-moved-between-photos", "vehicle", 12.0)]
    {
        assert!(codes(&record).contains(&code), "{:?}", codes(&record));
        let moved = record.phases.iter().find(|m| m.body == body).unwrap();
        assert!((moved.moved_mm - mm).abs() < 4.0 * moved.u_mm, "{moved:?}");
    }
    // The values are those from before.
    let distance = record.checks.iter().find(|c| c.quantity == "distance").unwrap();
    assert!((distance.value.unwrap() - 1500.0).abs() < 5.0, "{:?}", distance.value);
    assert_eq!(record.photos.iter().filter(|p| p.unused_because.is_some()).count(), 2);
}
