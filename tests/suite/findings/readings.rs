//! Readings against the photos, and what the answers hang on.

use baywitness::camera::OtherModel;
use baywitness::folder::Reading;
use baywitness::measure::{Ask, Facts, UsedReading, measure};
use baywitness::pose::{Options, View, adjust};
use baywitness::quantity::{Estimate, Quantity as Q};
use baywitness::setup::{Evidence, From, ReferenceLine, Setup};
use baywitness::verdict::findings::Compared;
use baywitness::verdict::{Assumption, Level, Verdict};

use super::bench::{LINE, bay, job, judge, judge_readings, sheet};
use crate::sampled_bay::{Bay, Flaw, flawed, sample};

fn reading(value: f64, photo: f64, u: f64, used: bool) -> Compared {
    let (own, theirs) = (Estimate::known(value, u), Estimate::known(photo, 1.0));
    // ISO/IEC 17043, E_n: the difference over the root of the summed squares of both expanded uncertainties.
    let e = (value - photo) / own.expanded_uncertainty().hypot(theirs.expanded_uncertainty());
    let reading = Reading {
        quantity: Q::Distance,
        from: Some(From::RearAxle),
        target: None,
        step: None,
        value,
        u,
        instrument: None,
        use_in_adjustment: used,
    };
    Compared { reading, photo: Some(theirs), normalized_error: Some(e) }
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

/// The first in the file decided alone, whatever the second said.
#[test]
fn readings_of_one_thing_that_exclude_each_other_stop() {
    let sample = sample(&bay(), 11);
    let mut by_reading = sheet();
    by_reading.checks[0].evidence = Evidence::Reading;
    let unseen = |value: f64| Compared { photo: None, normalized_error: None, ..reading(value, 5000.0, 1.0, false) };
    let judged = |setup: &Setup, values: [f64; 2]| judge_readings(&sample, setup, &job(), &values.map(unseen));
    // Expanded 1.96 each, of their difference 2.77 mm.
    let apart = judged(&by_reading, [5000.0, 5002.9]);
    let told: Vec<_> = apart.findings.iter().filter(|f| f.code == "reading-disagrees").collect();
    assert_eq!(told.iter().map(|f| f.level).collect::<Vec<_>>(), [Level::Stop], "{told:?}");
    assert!(crate::findings::bench::en(&told[0].message).contains("5000.00 mm and 5002.90 mm"), "{told:?}");
    assert_eq!(apart.settled[0].verdict, Verdict::NotProven);
    // What agrees is nothing to tell of, nor what decides nothing.
    assert!(!judged(&by_reading, [5000.0, 5002.6]).has("reading-disagrees"));
    assert!(!judged(&sheet(), [5000.0, 5002.9]).has("reading-disagrees"));
}

/// Only of the step that it names is a reading against the photos one that decides.
#[test]
fn a_reading_of_another_step_decides_nothing() {
    let sample = sample(&bay(), 11);
    let mut setup = sheet();
    setup.steps = vec!["up".into(), "down".into()];
    setup.checks[0].step = Some("up".into());
    setup.checks[0].evidence = Evidence::Reading;
    let level = |step: Option<&str>| {
        let mut one = reading(5003.7, 5000.0, 1.5, false);
        one.reading.step = step.map(str::to_owned);
        let judged = judge_readings(&sample, &setup, &job(), &[one]);
        judged.findings.iter().find(|f| f.code == "reading-disagrees").unwrap().level
    };
    assert_eq!([level(Some("up")), level(Some("down")), level(None)], [Level::Stop, Level::Warn, Level::Warn]);
}

#[test]
fn a_reading_typed_again_and_again_is_told_once() {
    let twelve = vec![reading(5003.7, 5000.0, 1.5, false); 12];
    let judged = judge_readings(&sample(&bay(), 11), &sheet(), &job(), &twelve);
    assert_eq!(judged.findings.iter().filter(|f| f.code == "reading-disagrees").count(), 1);
}

/// The stop of a used reading does not hide what it was mistaken for.
#[test]
fn a_used_reading_in_centimetres_or_inches_is_named() {
    for (value, unit) in [(513.0, "cm were read as mm"), (201.97, "inches were read as mm")] {
        let judged = judge_readings(&sample(&bay(), 11), &sheet(), &job(), &[reading(value, 5130.0, 1.0, true)]);
        let named = judged.findings.iter().find(|f| f.code == "wrong-datum-suspected");
        let said = named.map(|f| crate::findings::bench::en(&f.message)).unwrap_or_default();
        assert!(said.contains(unit), "{:?}", judged.findings);
    }
}

#[test]
fn a_reading_from_another_axle_is_named() {
    let sample = sample(&bay(), 11);
    let judged = judge_readings(&sample, &sheet(), &job(), &[reading(2300.0, 5000.0, 10.0, false)]);
    let named = judged.findings.iter().find(|f| f.code == "wrong-datum-suspected");
    assert!(
        named.is_some_and(|f| crate::findings::bench::en(&f.message).contains("read from the front axle")),
        "{:?}",
        judged.findings
    );
}

/// A used reading changes value and uncertainty as the weighted mean of two
/// independent values does (GUM 4.1.4, F.1.2.4), and photos alone stay as they were.
#[test]
fn a_used_reading_is_a_weighted_mean() {
    let sample = sample(&Bay { four_photos: false, ..bay() }, 11);
    let problem = sample.problem();
    let scene = adjust(&problem, &Options::default()).unwrap();
    let (setup, job) = (sheet(), job());
    let facts = Facts { kit: &sample.kit, setup: &setup, vehicle: &job.vehicle };
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

/// Checks that what leaving something out was told to change is what a new
/// adjustment without it finds.
fn told_is_found(setup: &Setup, assumption: &Assumption, keep: impl Fn(usize, &View) -> bool) {
    let judged = judge(&sample(&bay(), 11), setup, &job());
    let mut fewer = sample(&bay(), 11);
    for (j, photo) in fewer.photos.iter_mut().enumerate() {
        photo.views.retain(|v| keep(j, v));
    }
    let without = judge(&fewer, setup, &job());
    for (i, (a, b)) in judged.checks.iter().zip(&without.checks).enumerate() {
        let (a, b) = (a.answer.as_ref().unwrap().estimate, b.answer.as_ref().unwrap().estimate);
        let told = judged.sensitivity.iter().find(|s| s.ask == i && s.assumption == *assumption).unwrap();
        let found = b.value - a.value;
        println!("{assumption:?} {i}: told {:.4}, found {found:.4}, u of the change {:.4}", told.change, told.u_change);
        assert!((told.change - found).abs() < 0.3 * b.standard_uncertainty, "{assumption:?}: {} {found}", told.change);
        // Hausman: the variance of the change is the difference of the variances.
        let u = (b.standard_uncertainty.powi(2) - a.standard_uncertainty.powi(2)).max(0.0).sqrt();
        assert!((told.u_change - u).abs() < 0.3 * b.standard_uncertainty, "{} against {u}", told.u_change);
    }
}

/// One Gauss-Newton step tells what a new adjustment without a photo or a carrier finds.
#[test]
fn leaving_out_is_told_without_adjusting_again() {
    told_is_found(&sheet(), &Assumption::WithoutPhoto(3), |j, _| j != 3);
    told_is_found(&sheet(), &Assumption::WithoutPhoto(0), |j, _| j != 0);
    let plain = sample(&bay(), 11);
    let floor = plain.carrier("floor-2");
    told_is_found(&sheet(), &Assumption::WithoutCarrier(floor), |_, v| v.carrier != floor);
    let plate = plain.carrier("front-left");
    let to_the_axle = Setup { reference_line: ReferenceLine::RearAxleNormal, ..sheet() };
    told_is_found(&to_the_axle, &Assumption::WithoutCarrier(plate), |_, v| v.carrier != plate);
}

/// Likewise the other lens model: corners moved by what it differs, adjusted again. (In a job in which no marker
/// lies where the models differ so much that it is left out.)
#[test]
fn the_other_lens_model_is_told_without_adjusting_again() {
    let plain = sample(&bay(), 12);
    let judged = judge(&plain, &sheet(), &job());
    let other = OtherModel::of(&plain.camera.lens, plain.camera.image_size_px).unwrap();
    let mut moved = sample(&bay(), 12);
    for corner in moved.photos.iter_mut().flat_map(|p| &mut p.views).flat_map(|v| &mut v.corners_px) {
        *corner -= other.difference_px(corner);
    }
    let otherwise = judge(&moved, &sheet(), &job());
    for (i, (a, b)) in judged.checks.iter().zip(&otherwise.checks).enumerate() {
        let (a, b) = (a.answer.as_ref().unwrap().estimate, b.answer.as_ref().unwrap().estimate);
        let told = judged.sensitivity.iter().find(|s| s.ask == i && s.assumption == Assumption::OtherLensModel);
        let told = told.unwrap_or_else(|| panic!("the other model misses by {} px", other.rms_px())).change;
        println!("{i}: told {told:.5}, found {:.5}", b.value - a.value);
        assert!((told - (b.value - a.value)).abs() < 0.1 * a.standard_uncertainty, "{told} {}", b.value - a.value);
    }
}

/// A change by the other lens model that is larger than the uncertainty is reported.
#[test]
fn answers_that_hang_on_the_lens_model_are_told() {
    let sharp = Bay {
        noise_px: 0.002,
        u_layout_mm: 0.005,
        u_scale: 1e-5,
        u_edge_px: 0.001,
        u_edge_by_size_px: 0.0005,
        u_seating_mm: 0.0,
        u_seating_deg: 0.0,
        ..bay()
    };
    let plain = sample(&sharp, 11);
    let values = judge(&plain, &sheet(), &job());
    let mut setup = sheet();
    // A sheet around the values with tolerances that these photos can just prove.
    for (check, c) in setup.checks.iter_mut().zip(&values.checks) {
        let e = c.answer.as_ref().unwrap().estimate;
        check.nominal = e.value;
        (check.lower, check.upper) =
            (Some(e.value - 2.5 * e.standard_uncertainty), Some(e.value + 2.5 * e.standard_uncertainty));
    }
    let judged = judge(&plain, &setup, &job());
    let by_model = judged.sensitivity.iter().filter(|s| s.assumption == Assumption::OtherLensModel);
    let largest = by_model
        .map(|s| s.change.abs() / judged.checks[s.ask].answer.as_ref().unwrap().estimate.expanded_uncertainty())
        .fold(0.0, f64::max);
    println!("the other model changes a value by {largest:.2} of its expanded uncertainty");
    let told = judged.findings.iter().any(|f| f.message.key == "findings-hangs-on-lens");
    assert_eq!(told, largest > 1.0, "{:?}", judged.findings);
    assert!(largest > 1.0);
}

/// A stand that was elsewhere in one photo makes the answers hang on that photo.
#[test]
fn answers_that_hang_on_one_photo_are_told() {
    let place = |photo: usize, name: &str, pose: super::planted::At| {
        if photo == 1 && name == "stand" { super::planted::shifted(pose, [8.0, 8.0, 0.0]) } else { pose }
    };
    let mut setup = sheet();
    for check in &mut setup.checks {
        let half = if check.quantity.unit() == baywitness::quantity::Unit::Degree { 0.4 } else { 12.0 };
        (check.lower, check.upper) = (Some(check.nominal - half), Some(check.nominal + half));
    }
    let judged = judge(&flawed(&bay(), 11, &Flaw { place: &place, ..Flaw::default() }), &setup, &job());
    assert!(judged.has("weak-geometry") && judged.has("stand-moved-between-photos"), "{:?}", judged.codes());
}
