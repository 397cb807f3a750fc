//! The one-time card in the photos.

use baywitness::marker::{Carrier, Marker, Role};
use baywitness::record::Verdict;
use baywitness::synth::Scene;
use nalgebra::Vector3;

use super::{codes, job, options, scene, stage, verify_with};

/// A card with the code 512-540-571 stands on the vehicle's bonnet.
fn with_card() -> Scene {
    let mut scene = scene(&[("a.jpg", &|_| ()), ("b.jpg", &|_| ())]);
    let marker = |(i, id): (usize, u32)| Marker {
        id,
        size_mm: [140.0; 2],
        centre_mm: Vector3::new(0.0, 185.0 * (1.0 - i as f64), 0.0),
        right: Vector3::y(),
        up: Vector3::z(),
        u_centre_mm: None,
        u_turn_deg: None,
        u_size_mm: None,
    };
    scene.kit.carriers.push(Carrier {
        name: "card".into(),
        role: Role::Card,
        u_seating_mm: 0.0,
        u_seating_deg: [0.0; 3],
        on_centreline: false,
        markers: [512, 540, 571].into_iter().enumerate().map(marker).collect(),
    });
    scene.spec.job.insert("card".into(), vec![512_i64, 540, 571].into());
    scene
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn the_job_s_own_card_is_seen_and_another_one_is_told() {
    let folder = tempfile::tempdir().unwrap();
    stage(&with_card(), folder.path());
    let own = job::verify(folder.path(), &options()).unwrap();
    assert_eq!(own.verdict, Verdict::Within, "{:?}", codes(&own));
    assert!(!codes(&own).iter().any(|c| c.starts_with("card-")));

    let other = verify_with(folder.path(), "571", "570");
    assert_eq!(other.verdict, Verdict::NotProven);
    assert!(codes(&other).contains(&"card-of-another-job") && codes(&other).contains(&"card-not-seen"));
}
