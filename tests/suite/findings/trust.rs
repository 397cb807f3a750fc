//! What checks are beside a finding that spoils their figures: nobody is sent the
//! wrong way, and what is truly outside stays so where no explanation saves it.

use baywitness::quantity::Quantity as Q;
use baywitness::record::Level;
use baywitness::setup::{From, ReferenceLine, Setup};
use baywitness::verdict::{Checked, Verdict};

use super::bench::{Judged, a_check, bay, job, judge, sheet};
use super::defect::Defect;
use super::planted::{FLAWS, shifted, stepped};
use crate::sampled_bay::{Bay, Sample};

/// Half of what is tolerated, as demonstration sheets have it.
const TOLERANCES: [(Q, f64); 6] =
    [(Q::Distance, 15.0), (Q::LateralOffset, 20.0), (Q::Height, 8.0), (Q::Yaw, 0.4), (Q::Pitch, 0.6), (Q::Roll, 0.6)];

fn sheet_of(line: ReferenceLine, wanted: [f64; 6]) -> Setup {
    let check = |((quantity, tolerance), wanted): (&(Q, f64), f64)| {
        a_check(*quantity, (*quantity == Q::Distance).then_some(From::RearAxle), wanted, *tolerance)
    };
    Setup { reference_line: line, checks: TOLERANCES.iter().zip(wanted).map(check).collect(), ..sheet() }
}

fn stopped(judged: &Judged) -> bool {
    judged.findings.iter().any(|f| f.level <= Level::Stop)
}

fn verdicts(checks: &[Checked]) -> Vec<Verdict> {
    checks.iter().map(|c| c.verdict).collect()
}

/// No order anywhere: not in a check, not in a finding that repeats one.
fn assert_nothing_is_ordered(judged: &Judged, what: &str) {
    for c in &judged.settled {
        assert!(c.move_by.is_none(), "{what}: {c:?}");
        let told = crate::findings::bench::en(&c.correction);
        assert!(!told.contains("the stand by") && !told.contains("Move the stand"), "{what}: {told}");
        assert!(!told.contains("the target by"), "{what}: {told}");
    }
    let orders =
        ["Turn the stand", "Move the stand", "Lower the target", "Raise the target", "Tilt the target", "Level the"];
    for f in &judged.findings {
        let told = crate::findings::bench::en(&f.message);
        assert!(!orders.iter().any(|order| told.contains(order)), "{what}: {told}");
    }
}

fn at(judged: &Judged, quantity: Q) -> &Checked {
    &judged.settled[TOLERANCES.iter().position(|(q, _)| *q == quantity).unwrap()]
}

/// A stand that stands right, one plate 1.3 deg off its wheel: by the thrust line it seems turned and off centre.
fn one_plate_askew() -> Defect {
    Defect::placed(|_, name, pose| if name == "rear-left" { stepped(pose, [0.0; 3], [0.0, 0.0, 1.3]) } else { pose })
}

#[test]
fn a_plate_that_is_not_flush_moves_no_stand() {
    let sample = one_plate_askew().usual(41);
    let truth = one_plate_askew().truth(&sample);
    let judged = judge(&sample, &sheet_of(ReferenceLine::ThrustLine, truth), &job());
    let raw = verdicts(&judged.checks);
    assert!(judged.has("plate-not-seated") && raw[1] == Verdict::Outside && raw[3] == Verdict::Outside, "{raw:?}");
    assert_nothing_is_ordered(&judged, "plate");
    for quantity in [Q::LateralOffset, Q::Yaw] {
        let c = at(&judged, quantity);
        assert_eq!((c.verdict, c.untrusted.as_slice()), (Verdict::NotProven, &["plate-not-seated"][..]));
        // Both plates may be the one: with either set free the truth is in reach.
        assert_eq!(c.otherwise.len(), 2, "{:?}", c.otherwise);
    }
    // The plates have no part in what stands over the sheets.
    for quantity in [Q::Height, Q::Pitch, Q::Roll] {
        let c = at(&judged, quantity);
        assert_eq!((c.verdict, c.untrusted.len()), (Verdict::Within, 0));
    }
}

#[test]
fn a_stand_that_is_outside_whichever_plate_is_askew_stays_outside() {
    let turned = || {
        Defect::placed(|_, name, pose| if name == "stand" { stepped(pose, [0.0; 3], [0.0, 0.0, 3.0]) } else { pose })
    };
    let sample = turned().and(one_plate_askew()).usual(41);
    let truth = one_plate_askew().truth(&one_plate_askew().usual(41));
    let judged = judge(&sample, &sheet_of(ReferenceLine::ThrustLine, truth), &job());
    let yaw = at(&judged, Q::Yaw);
    assert_eq!((yaw.verdict, yaw.otherwise.len()), (Verdict::Outside, 2), "{yaw:?}");
    // With the plate that is askew set free the line is true; by that plate alone it is off by all of it.
    let off = |n: usize| (yaw.otherwise[n].estimate.unwrap().value - truth[3] - 3.0).abs();
    let u = yaw.otherwise[0].estimate.unwrap().standard_uncertainty;
    assert!(off(0) < 3.0 * u && off(1) < 1.3 + 3.0 * u, "{truth:?} {:?}", yaw.otherwise);
    assert_nothing_is_ordered(&judged, "turned, and a plate");
    assert!(judged.has("stand-turned"), "{:?}", judged.codes());
}

#[test]
fn prints_at_97_percent_lower_no_target() {
    let small = || Defect { print: Box::new(|_| 0.97), ..Defect::default() };
    let sample = small().usual(43);
    let truth = small().truth(&sample);
    let judged = judge(&sample, &sheet_of(ReferenceLine::Centreline, truth), &job());
    let raw = verdicts(&judged.checks);
    assert!(judged.has("print-scale-wrong") && raw.contains(&Verdict::Outside), "{raw:?}");
    assert_nothing_is_ordered(&judged, "prints");
    for c in &judged.settled {
        assert_eq!((c.verdict, c.untrusted.as_slice()), (Verdict::NotProven, &["print-scale-wrong"][..]));
    }
    // A stand that is 150 mm too far is so at any size of the prints, and both figures are said.
    let far = Defect::placed(|_, name, pose| if name == "stand" { shifted(pose, [150.0, 0.0, 0.0]) } else { pose });
    let judged = judge(&far.and(small()).usual(43), &sheet_of(ReferenceLine::Centreline, truth), &job());
    let distance = at(&judged, Q::Distance);
    assert_eq!(distance.verdict, Verdict::Outside, "{distance:?}");
    let freed = distance
        .otherwise
        .iter()
        .find(|o| crate::findings::bench::en(&o.assuming).contains("size"))
        .unwrap()
        .estimate
        .unwrap();
    assert!((freed.value - truth[0] - 150.0).abs() < 3.0 * freed.standard_uncertainty.max(1.0), "{freed:?} {truth:?}");
    assert_nothing_is_ordered(&judged, "far, and prints");
}

#[test]
fn a_floor_that_bends_leaves_no_height_within() {
    let flaw = FLAWS.iter().find(|f| f.what.starts_with("the floor bends")).unwrap();
    let sample = flaw.make(3);
    let plain = judge(&sample, &sheet(), &job());
    let measured: Vec<f64> = plain.checks.iter().map(|c| c.answer.as_ref().unwrap().estimate.value).collect();
    // Wanted is what is measured: by the figures everything is within.
    let judged = judge(&sample, &sheet_of(ReferenceLine::Centreline, measured.try_into().unwrap()), &job());
    assert!(judged.has("floor-not-level") && at(&judged, Q::Height).verdict != Verdict::Within);
    assert_eq!(verdicts(&judged.checks)[2], Verdict::Within);
    assert_eq!(at(&judged, Q::Height).untrusted, ["floor-not-level"]);
}

/// Each flaw that photos can show, with the stand where it should be.
#[test]
fn no_flaw_sends_a_right_stand_away() {
    let (mut wrong, mut orders, mut jobs) = (Vec::new(), 0, 0);
    for flaw in &FLAWS {
        let defect = (flaw.defect)(70, 1.0);
        let sample = defect.usual(70);
        let judged = judge(&sample, &sheet_of(ReferenceLine::Centreline, defect.truth(&sample)), &job());
        if !stopped(&judged) || flaw.what.starts_with("the stand upside down") {
            continue;
        }
        jobs += 1;
        orders += usize::from(verdicts(&judged.checks).contains(&Verdict::Outside));
        assert_nothing_is_ordered(&judged, flaw.what);
        if verdicts(&judged.settled).contains(&Verdict::Outside) {
            let outside = judged.settled.iter().zip(TOLERANCES).filter(|(c, _)| c.verdict == Verdict::Outside);
            let told: Vec<String> = outside.map(|(c, (q, _))| format!("{} {:?}", q.name(), c.otherwise)).collect();
            wrong.push(format!("{}: {}", flaw.what, told.join("; ")));
        }
    }
    println!("{orders} of {jobs} stopped jobs are outside by their figures alone; beside the finding {}", wrong.len());
    assert!(orders > 0, "the figures alone would have misled: {orders} of {jobs}");
    // A stand that truly moved was outside in some photos, and may be so in all that are left.
    wrong.retain(|w| !w.starts_with("stand"));
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// The same jobs with the stand turned by three tolerances: how many are still told as outside.
#[test]
#[ignore = "a minute; prints how many stands that are truly outside stay outside beside each flaw"]
fn what_is_truly_outside_beside_a_flaw() {
    println!("| flaw | stopped | outside by the figures | outside still | within |");
    println!("|---|---|---|---|---|");
    for flaw in &FLAWS {
        let (mut stops, mut raw, mut still, mut within) = (0, 0, 0, 0);
        for seed in 0..20 {
            let defect = (flaw.defect)(500 + seed, 1.0);
            let sample = defect.usual(500 + seed);
            let mut wanted = defect.truth(&sample);
            wanted[3] += 1.2;
            let judged = judge(&sample, &sheet_of(ReferenceLine::Centreline, wanted), &job());
            if !stopped(&judged) {
                continue;
            }
            stops += 1;
            raw += usize::from(judged.checks[3].verdict == Verdict::Outside);
            still += usize::from(judged.settled[3].verdict == Verdict::Outside);
            within += usize::from(judged.settled[3].verdict == Verdict::Within);
        }
        println!("| {} | {stops} | {raw} | {still} | {within} |", flaw.what);
        assert_eq!(within, 0, "{}", flaw.what);
    }
}

/// A sheet that no photos could prove.
fn hopeless(sample: &Sample, line: ReferenceLine) -> Judged {
    let mut setup = Setup { reference_line: line, ..sheet() };
    let measured = judge(sample, &setup, &job()).checks;
    for (check, c) in setup.checks.iter_mut().zip(measured) {
        let Some(answer) = c.answer else { continue };
        check.nominal = answer.estimate.value;
        (check.lower, check.upper) = (Some(check.nominal - 1e-3), Some(check.nominal + 1e-3));
    }
    judge(sample, &setup, &job())
}

#[test]
fn plates_that_are_fitted_are_not_asked_for() {
    let four = hopeless(&crate::sampled_bay::sample(&bay(), 5), ReferenceLine::Centreline);
    let two =
        hopeless(&crate::sampled_bay::sample(&Bay { front_plates: false, ..bay() }, 5), ReferenceLine::RearAxleNormal);
    let said = |judged: &Judged| -> Vec<String> {
        let reasons = judged.checks.iter().filter_map(|c| c.reason.as_ref().map(crate::findings::bench::en));
        reasons
            .chain(
                judged
                    .findings
                    .iter()
                    .filter(|f| f.code == "weak-geometry")
                    .map(|f| crate::findings::bench::en(&f.message)),
            )
            .collect()
    };
    // Plates whose line the sheet's does not need are of use only where there are none yet.
    assert!(said(&four).len() > 3 && said(&four).iter().all(|s| !s.contains("all four wheels")), "{:?}", said(&four));
    let line = |j: &Judged| said(j).iter().any(|s| s.contains("or plates on all four wheels"));
    assert!(line(&two), "{:?}", said(&two));
}
