//! What no misfit of the photos shows, being the same in all of them: a plate off its hub, a nose mark ahead of the nose,
//! wheels that do not stand alike. What is known of the vehicle contradicts it.

use baywitness::folder::JobFile;
use baywitness::marker::Role;
use baywitness::quantity::Quantity as Q;
use baywitness::record::Level;
use baywitness::verdict::{Checked, Verdict};
use rayon::prelude::*;

use super::bench::{Judged, bay, en, job, judge, samples, sheet};
use super::planted::{At, shifted, stepped};
use crate::sampled_bay::{Bay, Flaw, HUB_MM, NOSE_MM, Noise, Sample, flawed, sample};

const SIZES: &str = "vehicle-sizes-disagree";
const PLATE: &str = "plate-not-seated";
const FLOOR: &str = "floor-not-level";

/// The rear hubs lie 2 x 860 mm apart, the front ones 2 x 855.
const TRACKS_MM: [f64; 2] = [1720.0, 1710.0];

fn marked() -> Bay {
    Bay { nose_mark: true, ..bay() }
}

/// Bodies that stand elsewhere in all photos.
fn placed(bay: &Bay, seed: u64, place: &(dyn Fn(&str, At) -> At + Sync)) -> Sample {
    let place = |_: usize, name: &str, pose: At| place(name, pose);
    flawed(bay, seed, &Flaw { place: &place, ..Flaw::default() })
}

/// Some bodies shifted in the vehicle's axes, in all photos.
fn off(seed: u64, who: &'static [&'static str], mm: [f64; 3]) -> Sample {
    placed(&marked(), seed, &|name, pose| if who.contains(&name) { shifted(pose, mm) } else { pose })
}

/// All sizes typed, each wrong by as much as is said of it.
fn typed(seed: u64) -> JobFile {
    let mut chance = Noise::new(seed ^ 0x7e9e_0000);
    let mut job = job();
    let v = &mut job.vehicle;
    let mut about = |size: f64| Some(size + 3.0 * chance.normal());
    (v.wheelbase_mm, v.nose_from_rear_axle_mm) = (about(2700.0), about(NOSE_MM));
    (v.rear_track_mm, v.front_track_mm) = (about(TRACKS_MM[0]), about(TRACKS_MM[1]));
    v.floor_below_hub_mm = about(HUB_MM);
    job
}

fn exactly_typed() -> JobFile {
    let mut job = job();
    let v = &mut job.vehicle;
    (v.wheelbase_mm, v.nose_from_rear_axle_mm) = (Some(2700.0), Some(NOSE_MM));
    (v.rear_track_mm, v.front_track_mm) = (Some(TRACKS_MM[0]), Some(TRACKS_MM[1]));
    job
}

/// A job in which nobody typed any size.
fn untyped() -> JobFile {
    let mut job = job();
    (job.vehicle.wheelbase_mm, job.vehicle.floor_below_hub_mm) = (None, None);
    job
}

fn message(judged: &Judged, code: &str) -> Vec<(Level, String, Option<String>)> {
    let own = judged.findings.iter().filter(|f| f.code == code);
    own.map(|f| (f.level, en(&f.message), f.carrier.clone())).collect()
}

fn at(judged: &Judged, quantity: Q) -> &Checked {
    let i = sheet().checks.iter().position(|c| c.quantity == quantity).unwrap();
    &judged.settled[i]
}

#[test]
fn plain_vehicles_contradict_nothing() {
    let wrong: Vec<String> = (0..samples(48))
        .into_par_iter()
        .flat_map_iter(|seed| {
            let bay = Bay { four_photos: seed % 2 == 0, kannala_brandt: seed % 4 < 2, ..marked() };
            let judged = judge(&sample(&bay, 52_000 + seed), &sheet(), &typed(seed));
            // Sheets and total toe have alarms of their own, which are counted elsewhere.
            let own = |(level, told, _): &(Level, String, _)| {
                told.contains("were typed")
                    || told.contains(" apart")
                    || told.contains(" aside")
                    || *level == Level::Warn
            };
            let all = [SIZES, PLATE, FLOOR].iter().flat_map(|code| message(&judged, code));
            let all: Vec<String> = all.filter(own).map(|m| m.1).collect();
            all.into_iter().map(move |m| format!("{seed}: {m}"))
        })
        .collect();
    assert_eq!(wrong, Vec::<String>::new());
}

/// Both rear plates 30 mm behind their hubs: the stand seems 30 mm farther away.
#[test]
fn a_wheelbase_that_is_not_the_typed_one() {
    for seed in 0..samples(3) {
        let sample = off(seed, &["rear-left", "rear-right"], [-30.0, 0.0, 0.0]);
        let judged = judge(&sample, &sheet(), &exactly_typed());
        let said = message(&judged, SIZES);
        assert!(said.iter().any(|m| m.0 == Level::Stop && m.1.contains("wheelbase of 27")), "{seed}: {said:?}");
        let distance = at(&judged, Q::Distance);
        assert_eq!((distance.verdict, distance.untrusted.as_slice()), (Verdict::NotProven, &[SIZES][..]));
        // What is measured across the centreline or over the sheets hangs on nothing that lies farther ahead.
        for quantity in [Q::LateralOffset, Q::Height, Q::Yaw, Q::Pitch, Q::Roll] {
            assert!(at(&judged, quantity).untrusted.is_empty(), "{quantity:?}");
        }
        assert!(!judge(&sample, &sheet(), &untyped()).has(SIZES), "nothing was typed");
    }
}

/// One plate 60 mm ahead of its hub takes the axle's middle along by half.
#[test]
fn one_plate_ahead_of_its_hub() {
    for seed in 0..samples(3) {
        let judged = judge(&off(seed, &["rear-left"], [60.0, 0.0, 0.0]), &sheet(), &exactly_typed());
        let said = message(&judged, SIZES);
        assert!(said.iter().any(|m| m.1.contains("wheelbase of 26")), "{seed}: {said:?}");
        assert!(
            said.iter().any(|m| m.1.contains("nose mark 35") && m.2.as_deref() == Some("nose")),
            "{seed}: {said:?}"
        );
    }
}

/// The mark 25 mm ahead of the nose, and the stand set to it.
#[test]
fn a_nose_mark_ahead_of_the_nose() {
    for seed in 0..samples(3) {
        let judged = judge(&off(seed, &["nose", "stand"], [25.0, 0.0, 0.0]), &sheet(), &exactly_typed());
        let said = message(&judged, SIZES);
        let [(Level::Stop, told, Some(name))] = said.as_slice() else { panic!("{seed}: {said:?}") };
        assert_eq!(name, "nose");
        assert!(told.contains("nose mark 357") && told.contains("3550 mm were typed"), "{told}");
        assert_eq!(at(&judged, Q::Distance).verdict, Verdict::NotProven);
        assert_eq!(at(&judged, Q::Height).verdict, Verdict::Within);
    }
}

/// A plate 30 mm outside of its hub is no wonder by itself; by a typed track it is.
#[test]
fn a_track_that_is_not_the_typed_one() {
    for (who, which) in [("rear-left", "rear track of 17"), ("front-left", "front track of 17")] {
        let aside = |name: &str, pose| if name == who { shifted(pose, [0.0, 30.0, 0.0]) } else { pose };
        let sample = placed(&marked(), 7, &aside);
        let said = message(&judge(&sample, &sheet(), &exactly_typed()), SIZES);
        assert!(matches!(said.as_slice(), [(Level::Stop, told, None)] if told.contains(which)), "{said:?}");
        let without = judge(&sample, &sheet(), &untyped());
        assert!(!without.has(SIZES) && !without.has(PLATE), "{:?}", without.codes());
    }
}

/// A rear plate 150 mm outside of its hub: by the photos alone, no vehicle is so.
#[test]
fn a_plate_far_outside_of_its_hub() {
    for seed in 0..samples(3) {
        let judged = judge(&off(seed, &["rear-left"], [0.0, 150.0, 0.0]), &sheet(), &untyped());
        let said = message(&judged, PLATE);
        assert!(said.iter().any(|m| m.0 == Level::Stop && m.1.contains("mm apart")), "{seed}: {said:?}");
        for quantity in [Q::Distance, Q::LateralOffset, Q::Yaw] {
            assert_ne!(at(&judged, quantity).verdict, Verdict::Within, "{seed}: {quantity:?}");
        }
        assert_eq!(at(&judged, Q::Height).verdict, Verdict::Within, "no plate has a part in it");
    }
    // An axle that is 80 mm wider than the other is somebody's.
    let wider = placed(&marked(), 3, &|name, pose| match name {
        "rear-left" => shifted(pose, [0.0, 35.0, 0.0]),
        "rear-right" => shifted(pose, [0.0, -35.0, 0.0]),
        _ => pose,
    });
    let judged = judge(&wider, &sheet(), &untyped());
    assert!(!judged.has(PLATE) && !judged.has(SIZES), "{:?}", judged.codes());
}

/// Both rear wheels aside: by 0.5 deg they may be, by 1.6 deg no road vehicle's are.
#[test]
fn rear_wheels_that_point_aside() {
    let aside = |seed: u64, degrees: f64| {
        let turn = [0.0, 0.0, degrees];
        let sample = placed(&marked(), seed, &|name, pose| {
            if name.starts_with("rear") { stepped(pose, [0.0; 3], turn) } else { pose }
        });
        judge(&sample, &sheet(), &untyped())
    };
    for seed in 0..samples(3) {
        let said = message(&aside(seed, 1.6), PLATE);
        assert!(said.iter().any(|m| m.0 == Level::Stop && m.1.contains("deg aside")), "{seed}: {said:?}");
        assert!(!aside(seed, 0.5).has(PLATE), "{seed}");
    }
}

/// A kit file whose roles of front and rear are exchanged: both plates of an axle point backwards, one by 179.9 and one
/// by -179.9 deg, which is 0.2 apart, and no toe of 359.8.
#[test]
fn plates_that_point_backwards_have_no_toe_of_360_degrees() {
    for seed in 0..samples(8) {
        let mut sample = sample(&bay(), seed);
        for carrier in &mut sample.kit.carriers {
            carrier.role = match carrier.role {
                Role::RearLeftWheel => Role::FrontLeftWheel,
                Role::RearRightWheel => Role::FrontRightWheel,
                Role::FrontLeftWheel => Role::RearLeftWheel,
                Role::FrontRightWheel => Role::RearRightWheel,
                other => other,
            };
        }
        let judged = judge(&sample, &sheet(), &untyped());
        assert!(judged.has("plates-swapped"), "{seed}: {:?}", judged.codes());
        assert_eq!(message(&judged, PLATE), [], "{seed}");
        assert!(!judged.has(SIZES), "{seed}");
    }
}

/// Tyres, blocks and turn plates: named with what stands lower, and silent below what an honest bay has.
#[test]
fn wheels_that_do_not_stand_alike() {
    let raised = |seed: u64, who: &'static [&'static str], mm: f64| {
        message(&judge(&off(seed, who, [0.0, 0.0, mm]), &sheet(), &untyped()), FLOOR)
    };
    for seed in 0..samples(2) {
        for (who, mm, told) in [
            (&["rear-left"][..], -35.0, "The left rear hub stands 3"),
            (&["rear-right"], -35.0, "The right rear hub stands 3"),
            (&["front-left"], 80.0, "The right front hub stands "),
            (&["front-right"], 80.0, "The left front hub stands "),
            (&["front-left", "front-right"], 55.0, "The rear hubs stand 5"),
            (&["front-left", "front-right"], -55.0, "The front hubs stand 5"),
        ] {
            let said = raised(seed, who, mm);
            assert!(matches!(said.as_slice(), [(Level::Warn, m, None)] if m.starts_with(told)), "{told}: {said:?}");
        }
        assert_eq!(raised(seed, &["rear-left"], 8.0), [], "{seed}");
        assert_eq!(raised(seed, &["front-left", "front-right"], 30.0), [], "{seed}: tyres of two sizes");
    }
}

/// What a plate must be off its hub by is stated where something is typed; else what it takes.
#[test]
fn what_a_plate_off_its_hub_takes_is_stated() {
    let stated = |job: &JobFile, carrier: &str| {
        let judged = judge(&sample(&marked(), 5), &sheet(), job);
        let own = judged.detectable.iter().find(|d| d.code == SIZES && d.carrier.as_deref() == Some(carrier)).unwrap();
        (own.size, own.remedy.as_ref().map(en))
    };
    let (size, remedy) = stated(&exactly_typed(), "rear axle");
    assert!(size.is_some_and(|mm| (20.0..50.0).contains(&mm)) && remedy.is_none(), "{size:?}");
    let (size, _) = stated(&exactly_typed(), "nose");
    assert!(size.is_some_and(|mm| (10.0..30.0).contains(&mm)), "{size:?}");
    // With the wheelbase alone what is off to the side is told from the other axle.
    let (size, _) = stated(&job(), "rear axle");
    assert!(size.is_some_and(|mm| (100.0..120.0).contains(&mm)), "{size:?}");
    let (size, remedy) = stated(&untyped(), "rear axle");
    assert!(size.is_none() && remedy.unwrap().contains("no further photo shows"));
    let (size, remedy) = stated(&untyped(), "nose");
    assert!(size.is_none() && remedy.unwrap().contains("from the rear axle, typed"));
}
