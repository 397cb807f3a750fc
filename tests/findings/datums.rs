//! Figures that are far off and fit a well-known mistake; the sizes are common practice, no source.

use baywitness::quantity::Quantity as Q;
use baywitness::setup::{Check, Datum, From, ReferenceLine, Setup};
use baywitness::verdict::Verdict;

use super::bench::{Judged, a_check, bay, job, judge, sheet};
use super::common::{flawed, sample};

/// One check instead of the sheet's.
fn with(check: Check) -> Setup {
    Setup { checks: vec![check], ..sheet() }
}

fn told(judged: &Judged) -> &str {
    let finding = judged.findings.iter().find(|f| f.code == "wrong-datum-suspected");
    assert_eq!(judged.checks[0].verdict, Verdict::Outside, "named, never applied");
    finding.map_or("", |f| f.message.as_str())
}

/// The stand is 5000 mm before the rear axle, to some 10 mm; the sheet wants what the mistake makes of it.
fn says(check: Check, words: &str) {
    let judged = judge(&sample(&bay(), 11), &with(check), &job());
    let message = told(&judged);
    assert!(message.contains(words), "wanted {words:?}: {message:?} of {:?}", judged.findings);
}

#[test]
fn another_axle() {
    says(a_check(Q::Distance, Some(From::FrontAxle), 5000.0, 40.0), "measured from the rear axle");
}

#[test]
fn exchanged_digits() {
    let moved = |_: usize, name: &str, pose: super::flaws::At| {
        if name == "stand" { super::flaws::shifted(pose, [300.0, 0.0, 0.0]) } else { pose }
    };
    let sample = flawed(&bay(), 11, &super::common::Flaw { place: &moved, ..Default::default() });
    let judged = judge(&sample, &with(a_check(Q::Distance, Some(From::RearAxle), 3500.0, 20.0)), &job());
    assert!(told(&judged).contains("digits were exchanged (5300 for 3500)"), "{:?}", judged.findings);
}

#[test]
fn inches_for_millimetres() {
    says(a_check(Q::Height, None, 950.0 / 25.4, 20.0), "mm were read as inches");
}

#[test]
fn to_the_other_side_and_the_edge() {
    let aside = |mm: f64| {
        move |_: usize, name: &str, pose: super::flaws::At| {
            if name == "stand" { super::flaws::shifted(pose, [0.0, mm, 0.0]) } else { pose }
        }
    };
    let check = a_check(Q::LateralOffset, None, 250.0, 40.0);
    let place = aside(-250.0);
    let sample = flawed(&bay(), 11, &super::common::Flaw { place: &place, ..Default::default() });
    let judged = judge(&sample, &with(check.clone()), &job());
    assert!(told(&judged).contains("to the other side"), "{:?}", judged.findings);
    says(check, "its offset was left out");
    // The markers reach 760 mm to the side.
    let place = aside(-760.0);
    let sample = flawed(&bay(), 11, &super::common::Flaw { place: &place, ..Default::default() });
    let judged = judge(&sample, &with(a_check(Q::LateralOffset, None, 0.0, 20.0)), &job());
    assert!(told(&judged).contains("left edge of the stand"), "{:?}", judged.findings);
}

#[test]
fn a_tilt_the_wrong_way_and_that_of_another_step() {
    let tilted = |degrees: f64| {
        move |_: usize, name: &str, pose: super::flaws::At| {
            if name == "stand" { super::flaws::stepped(pose, [0.0; 3], [0.0, degrees, 0.0]) } else { pose }
        }
    };
    let place = tilted(-3.0);
    let sample = flawed(&bay(), 11, &super::common::Flaw { place: &place, ..Default::default() });
    let judged = judge(&sample, &with(a_check(Q::Pitch, None, 3.0, 0.8)), &job());
    assert!(told(&judged).contains("sign is reversed"), "{:?}", judged.findings);
    let place = tilted(4.0);
    let sample = flawed(&bay(), 11, &super::common::Flaw { place: &place, ..Default::default() });
    let step = |name: &str, nominal: f64| Check { step: Some(name.into()), ..a_check(Q::Pitch, None, nominal, 0.8) };
    let setup = Setup { checks: vec![step("level", 0.0), step("tilted", 4.0)], ..sheet() };
    assert!(told(&judge(&sample, &setup, &job())).contains("stood as in step tilted"));
}

#[test]
fn measured_to_the_mast_instead_of_the_face() {
    let mast = Datum { name: "the mast".into(), carrier: "stand".into(), offset_mm: [55.0, 0.0, 0.0], u_mm: 0.5 };
    let check = a_check(Q::Distance, Some(From::RearAxle), 5055.0, 20.0);
    let setup = Setup { datums: vec![mast], ..with(check) };
    let judged = judge(&sample(&bay(), 16), &setup, &job());
    assert!(
        told(&judged).contains("to the mast of the stand") || told(&judged).contains("a part of the stand"),
        "{:?}",
        judged.findings
    );
}

#[test]
fn set_to_another_line() {
    // Front plates shifted to the left turn the centreline; the axle's normal stays.
    let place = |_: usize, name: &str, pose: super::flaws::At| {
        if name.starts_with("front") { super::flaws::shifted(pose, [0.0, 140.0, 0.0]) } else { pose }
    };
    let sample = flawed(&bay(), 11, &super::common::Flaw { place: &place, ..Default::default() });
    let check = Check { reference_line: Some(ReferenceLine::Centreline), ..a_check(Q::Yaw, None, 0.0, 0.6) };
    let judged = judge(&sample, &with(check), &job());
    assert!(told(&judged).contains("was set to the"), "{:?}", judged.findings);
}

/// A stand that is off by a hand's breadth is not explained away.
#[test]
fn a_plain_misplacement_is_no_datum() {
    let judged = judge(&sample(&bay(), 11), &with(a_check(Q::Distance, Some(From::RearAxle), 4813.0, 15.0)), &job());
    assert_eq!(told(&judged), "");
}
