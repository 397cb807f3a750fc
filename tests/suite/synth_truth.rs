//! The truth of a scene against figures computed by hand.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

use std::collections::BTreeMap;

use crate::synth_support::{bare, camera};
use baywitness::setup::ReferenceLine;
use baywitness::synth::{CarrierMistake, Scene, StandError, VehicleSpec};

fn scene(error: StandError, vehicle: VehicleSpec) -> Scene {
    let mut scene = bare(camera([0.0; 5]), [7250.0, 2800.0, 1640.0], [3600.0, 120.0, 600.0]);
    scene.spec.stand.error = error;
    scene.spec.vehicle = vehicle;
    scene
}

fn straight() -> VehicleSpec {
    VehicleSpec { rear_track_mm: 1600.0, nose_mm: [3500.0, 500.0], ..VehicleSpec::default() }
}

fn near(values: &BTreeMap<String, f64>, wanted: &[(&str, f64)]) {
    for (name, value) in wanted {
        let found = values.get(*name).unwrap_or_else(|| panic!("{name} is missing"));
        assert!((found - value).abs() < 1e-3, "{name}: {found} against {value}");
    }
}

#[test]
fn a_turned_stand_on_a_straight_vehicle() {
    let error =
        StandError { distance_mm: 10.0, lateral_mm: 5.0, height_mm: 3.0, yaw_deg: 1.0, ..StandError::default() };
    let truth = scene(error, straight()).truth();
    // Sheet: 1500 mm before the nose at 3500, height 820. Aim point (5010, 5, 823).
    // Side range left: 5010 + (5 - 800) tan 1 deg, right: 5010 + (5 + 800) tan 1 deg.
    near(
        &truth.measured,
        &[
            ("distance_from_nose", 1510.0),
            ("distance_from_rear_axle", 5010.0),
            ("distance_from_front_axle", 2370.0),
            ("range_from_rear_axle", 5010.0025),
            ("lateral_offset", 5.0),
            ("height", 823.0),
            ("height_from_nose", 323.0),
            ("yaw", 1.0),
            ("side_range_left", 4996.1232),
            ("side_range_right", 5024.0513),
            ("side_range_difference", -27.9281),
            ("wheelbase", 2640.0),
            ("rear_track", 1600.0),
            ("setback", 0.0),
        ],
    );
}

#[test]
fn equal_side_ranges_mean_square_to_the_rear_axle() {
    // Common practice, no source. The axle is skewed, the stand is square to it.
    let vehicle = VehicleSpec { rear_axle_skew_deg: 0.2, ..straight() };
    let mut scene = scene(StandError::default(), vehicle);
    scene.setup.reference_line = ReferenceLine::RearAxleNormal;
    near(&scene.truth().measured, &[("yaw", 0.0), ("side_range_difference", 0.0)]);
}

#[test]
fn a_stand_that_is_22_mm_too_near_is_seen_so() {
    // 1278 mm instead of 1300 mm (common practice, no source).
    let mut scene = scene(StandError { distance_mm: -22.0, ..StandError::default() }, straight());
    scene.setup.checks[0].nominal = 1300.0;
    near(&scene.truth().measured, &[("distance_from_nose", 1278.0)]);
}

#[test]
fn each_reference_line_sees_the_same_stand_its_own_way() {
    let vehicle = VehicleSpec {
        rear_axle_skew_deg: 0.1,
        thrust_deg: -0.2,
        rear_toe_deg: [0.1, 0.3],
        front_axle_shift_mm: 4.607_674, // atan(4.607674 / 2640) = 0.1 deg
        ..straight()
    };
    let truth = scene(StandError::default(), vehicle).truth();
    let by = |line: ReferenceLine| &truth.by_reference_line[line.name()];
    // The stand is square to the centreline (0.1 deg); the thrust line is the mean of
    // -0.2 - 0.1 (left) and -0.2 + 0.3 (right) = -0.1 deg; the axle normal is 0.1 deg.
    near(by(ReferenceLine::Centreline), &[("yaw", 0.0), ("lateral_offset", 0.0)]);
    near(by(ReferenceLine::RearAxleNormal), &[("yaw", 0.0)]);
    // Aim point: 1500 mm before the nose along the line (nose 3500 mm, on the design axis):
    // along = 1500 + 3500 cos 0.1 deg; across the thrust line = along * sin 0.2 deg.
    near(by(ReferenceLine::ThrustLine), &[("yaw", 0.2), ("lateral_offset", 17.4532)]);
    near(
        &truth.measured,
        &[
            ("rear_toe_left", 0.4), // 0.1 - (-0.3)
            ("rear_toe_right", 0.0),
            ("thrust_angle", -0.2),
        ],
    );
}

#[test]
fn cambers_and_plumbs_keep_their_signs() {
    let vehicle = VehicleSpec {
        rear_camber_deg: [-1.5, -1.0],
        front_camber_deg: [-0.5, 0.25],
        rear_plumb_deg: [0.3, -0.2],
        steering_deg: 0.5,
        front_toe_deg: [0.1, 0.1],
        ..straight()
    };
    let truth = scene(StandError::default(), vehicle).truth();
    near(
        &truth.measured,
        &[
            ("camber_left", -1.5),
            ("camber_right", -1.0),
            ("camber_front_left", -0.5),
            ("camber_front_right", 0.25),
            ("plate_plumb_left", 0.3),
            ("plate_plumb_right", -0.2),
            ("steering_angle", 0.5),
            ("front_toe_left", -0.4),
            ("front_toe_right", 0.6),
        ],
    );
}

#[test]
fn a_stand_on_a_rising_floor_leans_towards_the_vehicle() {
    let mut scene = scene(StandError::default(), straight());
    scene.spec.floor.slope_deg = 0.4;
    scene.spec.floor.slope_from_x_mm = 4000.0;
    // Aim point 1000 mm beyond the hinge and 820 mm above: turned about the hinge by 0.4 deg.
    let (sin, cos) = 0.4f64.to_radians().sin_cos();
    near(
        &scene.truth().measured,
        &[
            ("pitch", -0.4),
            ("height", 820.0 * cos + 1000.0 * sin),
            ("distance_from_rear_axle", 4000.0 + 1000.0 * cos - 820.0 * sin),
        ],
    );
}

#[test]
fn a_stand_that_moved_is_told_per_photo() {
    let mut scene = scene(StandError::default(), straight());
    let mut photos = scene.photos();
    photos.push(photos[0].clone());
    photos[1].file = "b.jpg".to_owned();
    photos[1].stand_moved = StandError { lateral_mm: 12.0, yaw_deg: 0.4, ..StandError::default() };
    scene.spec.photo = Some(photos);
    let truth = scene.truth();
    near(&truth.measured, &[("lateral_offset", 0.0), ("yaw", 0.0)]);
    assert!(truth.photos[0].measured.is_none());
    near(truth.photos[1].measured.as_ref().unwrap(), &[("lateral_offset", 12.0), ("yaw", 0.4)]);
}

#[test]
fn a_vehicle_that_rolled_leaves_the_stand_where_it_was() {
    let mut scene = scene(StandError::default(), straight());
    let mut photos = scene.photos();
    photos.push(photos[0].clone());
    photos[1].file = "b.jpg".to_owned();
    photos[1].vehicle_rolled_mm = 15.0;
    scene.spec.photo = Some(photos);
    let truth = scene.truth();
    near(&truth.measured, &[("distance_from_nose", 1500.0)]);
    near(truth.photos[1].measured.as_ref().unwrap(), &[("distance_from_nose", 1485.0)]);
    let stand = |photo| scene.placement(photo).unwrap().carriers[0].pose.origin_mm();
    assert!((stand(0) - stand(1)).norm() < 1e-9);
}

#[test]
fn swapped_plates_sit_upside_down_on_the_other_side() {
    let mut scene = scene(StandError::default(), straight());
    let swap = |name: &str, on: &str| CarrierMistake {
        name: name.to_owned(),
        mounted_on: Some(on.to_owned()),
        ..CarrierMistake::default()
    };
    scene.spec.carrier = vec![swap("rear-left", "rear-right"), swap("rear-right", "rear-left")];
    let placement = scene.placement(0).unwrap();
    let plate = |name: &str| placement.carriers.iter().find(|c| scene.kit.carriers[c.index].name == name).unwrap();
    let left = plate("rear-left");
    assert!((left.pose.origin_mm().y + 800.0).abs() < 1e-9, "it sits on the right wheel");
    assert!(left.pose.direction(&nalgebra::Vector3::z()).z < -0.99, "upside down");
    // Its side leaf still looks outwards: to the right.
    let outward = left.markers.iter().find(|m| m.id == 24).unwrap();
    assert!(outward.normal().y < -0.99);
}

#[test]
fn mistakes_of_carriers_change_what_is_there() {
    let mut scene = scene(StandError::default(), straight());
    let mistake = |name: &str| CarrierMistake { name: name.to_owned(), ..CarrierMistake::default() };
    scene.spec.carrier = vec![
        CarrierMistake { left_out: true, ..mistake("nose") },
        CarrierMistake { print_scale: Some(0.97), ..mistake("stand") },
        CarrierMistake { off_mm: [0.0, 4.0, 0.0], off_deg: [1.0, 0.0, 0.0], ..mistake("front-left") },
    ];
    let placement = scene.placement(0).unwrap();
    assert!(placement.markers().all(|m| m.id != 70));
    assert!((placement.markers().find(|m| m.id == 0).unwrap().size_mm[0] - 145.5).abs() < 1e-9);
    let plate = placement.carriers.iter().find(|c| scene.kit.carriers[c.index].name == "front-left").unwrap();
    let wheel = &placement.vehicle.wheels[2];
    assert!((plate.pose.origin_mm() - wheel.plate_pose().origin_mm()).norm() > 3.99);
    let turned = plate.pose.rotation().angle_to(&wheel.plate_pose().rotation()).to_degrees();
    assert!((turned - 1.0).abs() < 1e-9);
    // The wheel itself did not move: the truth of the vehicle stays.
    near(&scene.truth().measured, &[("rear_track", 1600.0)]);
}

#[test]
fn hidden_errors_have_the_spread_that_the_kit_states() {
    let mut scene = scene(StandError::default(), straight());
    let exact = scene.placement(0).unwrap();
    scene.spec.kit_errors.exact = false;
    let (mut layout, mut scale, mut seat) = (Vec::new(), Vec::new(), Vec::new());
    for seed in 0..300 {
        let drawn = scene.clone().with_seed(seed).placement(0).unwrap();
        let marker = |p: &baywitness::synth::Placement, id: u32| *p.markers().find(|m| m.id == id).unwrap();
        // Relative to the carrier, so that seating does not enter.
        let of = |p: &baywitness::synth::Placement| {
            p.carriers[0].pose.inverse().point(&nalgebra::Point3::from(marker(p, 3).pose.origin_mm()))
        };
        layout.push((of(&drawn) - of(&exact)).y);
        scale.push(marker(&drawn, 0).size_mm[0] / 150.0 - 1.0);
        seat.push((drawn.carriers[1].pose.origin_mm() - exact.carriers[1].pose.origin_mm()).x);
    }
    let sd = |v: &[f64]| (v.iter().map(|x| x * x).sum::<f64>() / v.len() as f64).sqrt();
    // 300 draws: relative standard error of an sd is 4 %.
    for (name, values, stated) in [("layout", layout, 0.15), ("scale", scale, 0.0003), ("seating", seat, 0.3)] {
        assert!((sd(&values) / stated - 1.0).abs() < 0.15, "{name}: {} against {stated}", sd(&values));
    }
}
