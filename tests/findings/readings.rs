//! Readings against the photos, and what the answers hang on.

use baywitness::measure::{Ask, Facts, UsedReading, measure};
use baywitness::pose::{Options, adjust};
use baywitness::quantity::{Estimate, Quantity as Q};
use baywitness::setup::From;
use baywitness::verdict::Level;
use baywitness::verdict::findings::Compared;

use super::bench::{LINE, bay, job, judge, judge_readings, sheet};
use super::common::{Bay, Flaw, flawed, sample};

fn reading(value: f64, photo: f64, u: f64, used: bool) -> Compared {
    let (own, theirs) = (Estimate::known(value, u), Estimate::known(photo, 1.0));
    // ISO/IEC 17043, E_n: the difference over the root of the summed squares of both expanded uncertainties.
    let e = (value - photo) / own.expanded_uncertainty().hypot(theirs.expanded_uncertainty());
    Compared {
        quantity: Q::Distance,
        from: Some(From::RearAxle),
        value,
        u,
        photo: Some(theirs),
        normalized_error: Some(e),
        used,
    }
}

#[test]
fn a_reading_that_disagrees_stops_only_where_it_is_used() {
    let sample = sample(&bay(), 11);
    let levels = |reading: Compared| -> Vec<Level> {
        let judged = judge_readings(&sample, &sheet(), &job(), &[reading]);
        judged.findings.iter().filter(|f| f.code == "reading-disagrees").map(|f| f.level).collect()
    };
    // 1.96 * hypot(1.5, 1) = 3.53 mm.
    assert!(levels(reading(5003.4, 5000.0, 1.5, false)).is_empty());
    assert_eq!(levels(reading(5003.7, 5000.0, 1.5, false)), [Level::Warn]);
    assert_eq!(levels(reading(4996.3, 5000.0, 1.5, true)), [Level::Stop]);
}

#[test]
fn a_reading_from_another_axle_is_named() {
    let sample = sample(&bay(), 11);
    let judged = judge_readings(&sample, &sheet(), &job(), &[reading(2300.0, 5000.0, 10.0, false)]);
    let named = judged.findings.iter().find(|f| f.code == "wrong-datum-suspected");
    assert!(named.is_some_and(|f| f.message.contains("read from the front axle")), "{:?}", judged.findings);
}

/// A used reading changes value and uncertainty as the weighted mean of two
/// independent values does (GUM 4.1.4, F.1.2.4), and photos alone stay as they were.
#[test]
fn a_used_reading_is_a_weighted_mean() {
    let sample = sample(&Bay { four_photos: false, ..bay() }, 11);
    let problem = sample.problem();
    let scene = adjust(&problem, &Options::default()).unwrap();
    let (setup, job) = (sheet(), job());
    let facts = Facts { rig: &sample.rig, setup: &setup, vehicle: &job.vehicle };
    for (quantity, from, u) in [
        (Q::Distance, Some(From::RearAxle), 1.5),
        (Q::Height, None, 0.5),
        (Q::ThrustAngle, None, 0.04),
        (Q::SideRangeDifference, None, 1.0),
        (Q::SideRangeLeft, None, 1.0),
    ] {
        let ask = Ask { quantity, from, target: 0, line: LINE };
        let estimate = |readings: &[UsedReading]| {
            measure(&facts, &scene, LINE, std::slice::from_ref(&ask), readings).answers[0].clone().unwrap().estimate
        };
        let alone = estimate(&[]);
        let value = alone.value + 0.7 * alone.standard_uncertainty;
        let with = estimate(&[UsedReading { ask: ask.clone(), value, u, index: 0 }]);
        let (w, v) = (u.powi(-2), alone.standard_uncertainty.powi(-2));
        let mean = (w * value + v * alone.value) / (w + v);
        let u_mean = (w + v).sqrt().recip();
        assert!((with.value - mean).abs() < 0.02 * u_mean, "{quantity:?}: {} against {mean}", with.value);
        assert!(
            (with.standard_uncertainty / u_mean - 1.0).abs() < 0.01,
            "{quantity:?}: {} {u_mean}",
            with.standard_uncertainty
        );
    }
}

/// One Gauss-Newton step tells what a new adjustment without the photo finds.
#[test]
fn leaving_a_photo_out_is_told_without_adjusting_again() {
    let plain = sample(&bay(), 11);
    let judged = judge(&plain, &sheet(), &job());
    let mut fewer = sample(&bay(), 11);
    fewer.photos[3].views.clear();
    let without = judge(&fewer, &sheet(), &job());
    let mut worst: f64 = 0.0;
    for (i, (a, b)) in judged.checks.iter().zip(&without.checks).enumerate() {
        let (a, b) = (a.answer.as_ref().unwrap().estimate, b.answer.as_ref().unwrap().estimate);
        let told = judged
            .sensitivity
            .iter()
            .find(|s| s.ask == i && s.assumption == baywitness::verdict::Assumption::WithoutPhoto(3))
            .unwrap();
        let miss = (told.change - (b.value - a.value)) / b.standard_uncertainty;
        println!(
            "check {i}: told {:.4}, found {:.4}, u of the change {:.4}",
            told.change,
            b.value - a.value,
            told.u_change
        );
        worst = worst.max(miss.abs());
        // Hausman: the variance of the change is the difference of the variances.
        let u = (b.standard_uncertainty.powi(2) - a.standard_uncertainty.powi(2)).max(0.0).sqrt();
        assert!((told.u_change - u).abs() < 0.3 * b.standard_uncertainty, "{} against {u}", told.u_change);
    }
    assert!(worst < 0.3, "{worst} standard uncertainties");
}

/// A stand that was elsewhere in one photo makes the answers hang on that photo.
#[test]
fn answers_that_hang_on_one_photo_are_told() {
    let place = |photo: usize, name: &str, pose: super::flaws::At| {
        if photo == 1 && name == "stand" { super::flaws::shifted(pose, [8.0, 8.0, 0.0]) } else { pose }
    };
    let mut setup = sheet();
    for check in &mut setup.checks {
        let half = if check.quantity.unit() == baywitness::quantity::Unit::Degree { 0.4 } else { 12.0 };
        (check.lower, check.upper) = (Some(check.nominal - half), Some(check.nominal + half));
    }
    let judged = judge(&flawed(&bay(), 11, &Flaw { place: &place, ..Flaw::default() }), &setup, &job());
    assert!(judged.has("weak-geometry") && judged.has("stand-moved-between-photos"), "{:?}", judged.codes());
}
