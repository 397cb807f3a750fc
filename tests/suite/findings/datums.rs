//! Figures that are far off and fit a well-known mistake; the sizes are common practice, no source.
//!
//! A stand is set to the wrong figure with as much care as to the right one: the
//! sampled stands scatter by 8 mm and 0.3 deg, and the tolerances are made for that.

use baywitness::quantity::Quantity as Q;
use baywitness::setup::{Check, Datum, From, ReferenceLine, Setup};
use baywitness::verdict::Verdict;
use rayon::prelude::*;

use super::bench::{Judged, a_check, bay, job, judge, samples, sheet};
use super::campaign::least;
use super::planted::{At, shifted, stepped};
use crate::sampled_bay::{Bay, Flaw, Sample, flawed, sample};

/// One check instead of the sheet's.
fn with(check: Check) -> Setup {
    Setup { checks: vec![check], ..sheet() }
}

fn told(judged: &Judged) -> String {
    let finding = judged.findings.iter().find(|f| f.code == "wrong-datum-suspected");
    assert_eq!(judged.checks[0].verdict, Verdict::Outside, "named, never applied");
    finding.map_or_else(String::new, |f| crate::findings::bench::en(&f.message))
}

/// A mistake: how the bay stands, what the sheet wants, what is said.
struct Mistake {
    words: &'static str,
    bay: fn(u64) -> Sample,
    sheet: fn() -> Setup,
}

fn plain(seed: u64) -> Sample {
    sample(&bay(), seed)
}

/// The stand is 5000 mm before the rear axle, to some 10 mm; with a step of its own.
fn stand(seed: u64, mm: [f64; 3], degrees: [f64; 3]) -> Sample {
    let place = |_: usize, name: &str, pose: At| {
        if name == "stand" { stepped(shifted(pose, mm), [0.0; 3], degrees) } else { pose }
    };
    flawed(&bay(), seed, &Flaw { place: &place, ..Flaw::default() })
}

/// Both rear wheels point 0.8 deg to the left; the stand was set to their mirror image.
fn thrust_mirrored(seed: u64) -> Sample {
    let place = |_: usize, name: &str, pose: At| match name {
        "rear-left" | "rear-right" => stepped(pose, [0.0; 3], [0.0, 0.0, 0.8]),
        "stand" => stepped(shifted(pose, [0.0, -5000.0 * 0.8_f64.to_radians(), 0.0]), [0.0; 3], [0.0, 0.0, -0.8]),
        _ => pose,
    };
    flawed(&bay(), seed, &Flaw { place: &place, ..Flaw::default() })
}

/// Front plates shifted to the left turn the centreline; the axle's normal stays, and the rear wheels point along the
/// centreline, as any vehicle's do.
fn front_shifted(seed: u64) -> Sample {
    let turned = (220.0_f64 / 2700.0).atan().to_degrees();
    let place = |_: usize, name: &str, pose: At| match name {
        "front-left" | "front-right" => shifted(pose, [0.0, 220.0, 0.0]),
        "rear-left" | "rear-right" => stepped(pose, [0.0; 3], [0.0, 0.0, turned]),
        _ => pose,
    };
    flawed(&bay(), seed, &Flaw { place: &place, ..Flaw::default() })
}

fn in_step(name: &str, nominal: f64) -> Check {
    Check { step: Some(name.into()), ..a_check(Q::Pitch, None, nominal, 1.9) }
}

fn against(line: ReferenceLine, check: Check) -> Setup {
    with(Check { reference_line: Some(line), ..check })
}

fn mast() -> Setup {
    let mast = Datum { name: "the mast".into(), carrier: "stand".into(), offset_mm: [155.0, 0.0, 0.0], u_mm: 0.5 };
    Setup { datums: vec![mast], ..with(a_check(Q::Distance, Some(From::RearAxle), 5155.0, 50.0)) }
}

const MISTAKES: [Mistake; 13] = [
    Mistake {
        words: "measured from the rear axle",
        bay: plain,
        sheet: || with(a_check(Q::Distance, Some(From::FrontAxle), 5000.0, 40.0)),
    },
    Mistake {
        words: "digits were exchanged (1530 for 1350)",
        bay: |seed| stand(seed, [-3470.0 + 2700.0, 0.0, 0.0], [0.0; 3]),
        sheet: || with(a_check(Q::Distance, Some(From::FrontAxle), 1350.0, 50.0)),
    },
    Mistake {
        words: "mm were read as inches",
        bay: plain,
        sheet: || with(a_check(Q::Height, None, 950.0 / 25.4, 50.0)),
    },
    Mistake {
        words: "to the other side",
        bay: |seed| stand(seed, [0.0, -250.0, 0.0], [0.0; 3]),
        sheet: || with(a_check(Q::LateralOffset, None, 250.0, 40.0)),
    },
    Mistake {
        words: "its offset was left out",
        bay: plain,
        sheet: || with(a_check(Q::LateralOffset, None, 250.0, 40.0)),
    },
    // The markers reach 760 mm to the side.
    Mistake {
        words: "left edge of the stand",
        bay: |seed| stand(seed, [0.0, -760.0, 0.0], [0.0; 3]),
        sheet: || with(a_check(Q::LateralOffset, None, 0.0, 50.0)),
    },
    Mistake {
        words: "sign is reversed",
        bay: |seed| stand(seed, [0.0; 3], [0.0, -5.0, 0.0]),
        sheet: || with(a_check(Q::Pitch, None, 5.0, 1.9)),
    },
    Mistake { words: "it was left at zero", bay: plain, sheet: || with(a_check(Q::Pitch, None, 5.0, 1.9)) },
    Mistake {
        words: "stood as in step tilted",
        bay: |seed| stand(seed, [0.0; 3], [0.0, 5.0, 0.0]),
        sheet: || Setup { checks: vec![in_step("level", 0.0), in_step("tilted", 5.0)], ..sheet() },
    },
    Mistake { words: "to the mast of the stand", bay: plain, sheet: mast },
    Mistake {
        words: "was set to the",
        bay: front_shifted,
        sheet: || against(ReferenceLine::Centreline, a_check(Q::Yaw, None, 0.0, 1.9)),
    },
    Mistake {
        words: "the thrust angle was taken with the wrong sign",
        bay: thrust_mirrored,
        sheet: || against(ReferenceLine::ThrustLine, a_check(Q::LateralOffset, None, 0.0, 50.0)),
    },
    Mistake {
        words: "taken from the other line",
        bay: |seed| stand(seed, [0.0; 3], [0.0, 0.0, 30.0]),
        sheet: || with(a_check(Q::Yaw, None, 60.0, 2.0)),
    },
];

/// In how many of `n` jobs each mistake is named.
pub(crate) fn table(n: u64) -> Vec<String> {
    let mut short = Vec::new();
    for mistake in &MISTAKES {
        let one = |seed: u64| {
            let judged = judge(&(mistake.bay)(76_000 + seed), &(mistake.sheet)(), &job());
            let hit = told(&judged).contains(mistake.words);
            if !hit {
                println!("   {} {seed}: {:?} of {:?}", mistake.words, told(&judged), judged.codes());
            }
            usize::from(hit)
        };
        let hits: usize = (0..n).into_par_iter().map(one).sum();
        println!("wrong-datum-suspected: {:50} {hits:4} of {n}", mistake.words);
        if hits < least(n as usize) {
            short.push(format!("{}: {hits} of {n}", mistake.words));
        }
    }
    short
}

#[test]
fn well_known_mistakes_are_named() {
    let short = table(samples(2));
    assert!(short.is_empty(), "{short:?}");
}

/// A stand that is off by a hand's breadth is not explained away.
#[test]
fn a_plain_misplacement_is_no_datum() {
    let judged = judge(&sample(&bay(), 11), &with(a_check(Q::Distance, Some(From::RearAxle), 4813.0, 15.0)), &job());
    assert_eq!(told(&judged), "");
}

/// A sensor 150 mm behind the nose mark, in the vehicle's directions: paper on a bumper that slopes does not tell where it is.
#[test]
fn a_point_beside_a_leaning_mark_is_not_measured_from() {
    let with_nose = Bay { nose_mark: true, ..bay() };
    let judged = |lean_deg: f64, behind_mm: f64| {
        let place = |_: usize, name: &str, pose: At| {
            if name == "nose" { stepped(pose, [0.0; 3], [0.0, lean_deg, 0.0]) } else { pose }
        };
        let offset_mm = [-behind_mm, 0.0, 0.0];
        let sensor = Datum { name: "the sensor".into(), carrier: "nose".into(), offset_mm, u_mm: 0.5 };
        let check = a_check(Q::Distance, Some(From::Datum("the sensor".into())), 1500.0, 400.0);
        let setup = Setup { datums: vec![sensor], ..with(check) };
        judge(&flawed(&with_nose, 5, &Flaw { place: &place, ..Flaw::default() }), &setup, &job())
    };
    let leaning = judged(6.0, 150.0);
    assert_eq!(leaning.checks[0].verdict, Verdict::Retake);
    let reason = super::bench::en(leaning.checks[0].reason.as_ref().unwrap());
    assert!(reason.contains("Askew against the vehicle"), "{reason}");
    assert!(judged(6.0, 10.0).checks[0].answer.is_some(), "a millimetre astray");
    assert!(judged(0.3, 150.0).checks[0].answer.is_some(), "paper is never quite upright");
}
