//! Two ways to the same figures: the renderer's direct formulas against
//! adjustment and measurement fed with the renderer's exact corners. Neither
//! knows the other.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

use crate::synth_support::sample;
use baywitness::measure::{Ask, Facts, measure};
use baywitness::pose::{Options, PhotoView, Problem, View, adjust};
use baywitness::quantity::{Quantity, Unit};
use baywitness::setup::{From, ReferenceLine};
use baywitness::synth::{Scene, StandError};
use nalgebra::{SMatrix, Vector2};

/// A vehicle on which all lines and angles differ, and a stand off in everything.
fn scene() -> Scene {
    let mut scene = sample("good");
    scene.spec.kit_errors.exact = true;
    let v = &mut scene.spec.vehicle;
    v.rear_axle_skew_deg = 0.11;
    v.front_axle_skew_deg = -0.07;
    v.front_axle_shift_mm = 3.0;
    v.thrust_deg = -0.13;
    v.steering_deg = 0.4;
    v.nose_offset_mm = [0.0, 2.0, -1.0];
    scene.spec.stand.error = StandError {
        distance_mm: -14.0,
        lateral_mm: 9.0,
        height_mm: 4.0,
        yaw_deg: 0.7,
        pitch_deg: -0.9,
        roll_deg: 0.5,
    };
    let mut photos = scene.photos();
    for photo in &mut photos {
        photo.focal_factor = Some(1.0);
        photo.centre_shift_px = Some([0.0; 2]);
    }
    scene.spec.photo = Some(photos);
    scene
}

/// The photo's exact corners as sightings.
fn view(scene: &Scene, photo: usize) -> PhotoView {
    let views = scene.corners(photo).into_iter().filter(|m| m.visible > 0.999).map(|m| {
        let (carrier, _) = scene.kit.marker(m.id).unwrap();
        let marker = scene.kit.carriers[carrier].markers.iter().position(|k| k.id == m.id).unwrap();
        View {
            id: m.id,
            carrier,
            marker,
            corners_px: m.corners_px.map(Vector2::from),
            valid: [true; 4],
            covariance_px2: SMatrix::identity() * 1e-6,
        }
    });
    PhotoView { camera: 0, views: views.collect(), u_edge_offset_px: 1e-6, u_edge_by_size_px: 1e-6 }
}

#[test]
fn measuring_exact_corners_gives_the_scene_s_truth() {
    let scene = scene();
    let truth = scene.truth();
    let photos = (0..2).map(|i| view(&scene, i)).collect();
    let problem = Problem { kit: &scene.kit, cameras: vec![&scene.camera], photos };
    let solved = adjust(&problem, &Options::default()).unwrap();
    let facts = Facts { kit: &scene.kit, setup: &scene.setup, vehicle: &baywitness::folder::Vehicle::default() };
    let target = scene.kit.carriers.iter().position(|c| c.name == "stand").unwrap();
    let (mut compared, mut wrong) = (0, Vec::new());
    for line in ReferenceLine::ALL {
        let exact = &truth.by_reference_line[line.name()];
        for &quantity in Quantity::ALL {
            for from in [None, Some(From::Nose), Some(From::FrontAxle), Some(From::RearAxle)] {
                let ranges = matches!(quantity, Quantity::Distance | Quantity::Range);
                if ranges != from.is_some() {
                    continue;
                }
                let name = match &from {
                    Some(f) => format!("{}_from_{}", quantity.name(), f.name()),
                    None => quantity.name().to_owned(),
                };
                let Some(wanted) = exact.get(&name) else { continue };
                let ask = Ask { quantity, from: from.clone(), target, line };
                let Ok(answer) = &measure(&facts, &solved, line, &[ask], &[]).answers[0] else { continue };
                let miss = answer.estimate.value - wanted;
                let limit = if quantity.unit() == Unit::Degree { 1e-4 } else { 2e-3 };
                println!("{} {name}: {:.4} against {wanted:.4}", line.name(), answer.estimate.value);
                if miss.abs() >= limit {
                    wrong.push(format!("{} {name}: {} against {wanted}", line.name(), answer.estimate.value));
                }
                compared += 1;
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert!(compared > 90, "{compared}");
}
