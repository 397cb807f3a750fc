//! The adjustment against sampled truth.

#![cfg(test)]

use std::collections::BTreeSet;

use crate::findings::bench::sightings;
use crate::sampled_bay::{Bay, Flaw, flawed, sample};
use baywitness::geom::Pose;
use baywitness::pose::{Error, Options, PhotoView, Unsettled, adjust, astray, doubled};
use nalgebra::{Matrix3, Vector3};

#[test]
fn poses_of_a_sampled_bay_are_found() {
    for seed in 0..20 {
        let job = sample(&Bay::default(), seed);
        let scene = adjust(&job.problem(), &Options::default()).unwrap();
        assert!(scene.on_floor);
        let stand = scene.carriers[0].unwrap();
        let rear = scene.carriers[1].unwrap();
        let found = stand.inverse() * rear;
        let truth = job.bodies[0].inverse() * job.bodies[1];
        let miss = truth.step_to(&found);
        println!(
            "seed {seed} s2 {:.2} dof {:.0} miss {:.2} mm {:.4} deg",
            scene.variance,
            scene.degrees_of_freedom,
            miss.fixed_rows::<3>(0).norm(),
            miss.fixed_rows::<3>(3).norm().to_degrees()
        );
        assert!(miss.fixed_rows::<3>(0).norm() < 30.0, "seed {seed}: {miss}");
    }
}

/// Photos that show the stand and nothing else: no panic, and poses against it.
#[test]
fn a_stand_alone_is_a_scene() {
    let mut job = sample(&Bay { floor_sheets: false, front_plates: false, ..Bay::default() }, 1);
    for photo in &mut job.photos {
        photo.views.retain(|v| v.carrier == 0);
    }
    let scene = adjust(&job.problem(), &Options::default()).unwrap();
    assert!(scene.carriers[0].is_some() && scene.carriers[1].is_none());
    assert!(scene.photos.iter().all(Option::is_some));
}

/// Two of a sheet's corners in each photo are no start: it is as a sheet that nobody sees, and all else is as without it.
#[test]
fn a_carrier_without_a_pose_takes_no_part() {
    let (mut covered, mut away) = (sample(&Bay::default(), 9100), sample(&Bay::default(), 9100));
    let sheet = covered.carrier("floor-2");
    for view in covered.photos.iter_mut().flat_map(|photo| &mut photo.views).filter(|view| view.carrier == sheet) {
        view.valid = [true, false, true, false];
    }
    assert!(covered.photos.iter().all(|photo| photo.shows(sheet)));
    for photo in &mut away.photos {
        photo.views.retain(|view| view.carrier != sheet);
    }
    let problem = covered.problem();
    let scene = adjust(&problem, &Options::default()).unwrap();
    let without = adjust(&away.problem(), &Options::default()).unwrap();
    assert!(scene.carriers[sheet].is_none() && !scene.knows(sheet));
    for (solved, photo) in scene.photos.iter().zip(&problem.photos) {
        let solved = solved.as_ref().unwrap();
        assert_eq!(solved.views.len(), photo.views.len());
        for (view, seen) in solved.views.iter().zip(&photo.views).filter(|(_, seen)| seen.carrier == sheet) {
            assert_eq!((view.id, view.used), (seen.id, [false; 4]));
        }
    }
    assert!((scene.degrees_of_freedom - without.degrees_of_freedom).abs() < 1e-3);
    let u = |scene: &baywitness::pose::Scene, row: usize| scene.factor.row(row).norm();
    for k in (0..scene.carriers.len()).filter(|k| *k != sheet) {
        let (Some(a), Some(b)) = (scene.carriers[k], without.carriers[k]) else {
            assert_eq!(scene.carriers[k].is_some(), without.carriers[k].is_some(), "carrier {k}");
            continue;
        };
        let step = a.step_to(&b);
        assert!(step.fixed_rows::<3>(0).norm() < 0.05 && step.fixed_rows::<3>(3).norm() < 2e-5, "carrier {k}: {step}");
        for row in 6 * k..6 * k + 6 {
            let (a, b) = (u(&scene, row), u(&without, row));
            assert!((a - b).abs() <= 0.01 * b + 1e-9, "row {row}: {a} against {b}");
        }
    }
}

/// A spare print of a sheet hangs behind one photographer, in the view of two others who don't see the sheet.
#[test]
fn a_print_that_keeps_photos_from_settling_is_named() {
    let behind = Vector3::new(1500.0, -3000.0, 1800.0);
    let bay = Bay { four_photos: true, further: vec![behind], ..Bay::default() };
    // Upright, turned to photos 0 and 2.
    let normal = Vector3::new(0.62, 0.784, 0.0).normalize();
    let on_wall = Matrix3::from_columns(&[Vector3::z(), normal.cross(&Vector3::z()), normal]);
    let spare = Pose::from_matrix(on_wall, Vector3::new(900.0, -4500.0, 1200.0));
    let place = |photo: usize, name: &str, pose| if name == "floor-2" && photo < 4 { spare } else { pose };
    let job = flawed(&bay, 9200, &Flaw { place: &place, ..Flaw::default() });
    let sheet = job.carrier("floor-2");
    let shown: Vec<usize> = (0..5).filter(|j| job.photos[*j].shows(sheet)).collect();
    assert_eq!(shown, [0, 2, 4]);
    let problem = job.problem();
    let options = Options::default();
    let unsettled = Error::NotSettled { photos: 5, why: Unsettled::FirstSolution };
    assert_eq!(adjust(&problem, &options).map(|_| ()), Err(unsettled));
    assert_eq!(astray(&problem, &options), Some(sheet));
    // Of photos that settle without any one of their sheets none is named.
    let plain = sample(&Bay::default(), 9200);
    assert_eq!(astray(&plain.problem(), &options), None);
}

/// One photo shows two prints of a code: the other photo's print of it is in doubt as well.
#[test]
fn a_code_that_one_photo_shows_twice_takes_part_in_none() {
    let job = sample(&Bay::default(), 9300);
    let mut seen: Vec<_> = job.photos.iter().map(sightings).collect();
    let views = |seen: &[baywitness::detect::Sightings]| -> Vec<BTreeSet<u32>> {
        let twice = doubled(&job.kit, seen);
        let of = |s| PhotoView::from_sightings(&job.kit, 0, s).without(&twice);
        seen.iter().map(|s| of(s).views.iter().map(|view| view.id).collect()).collect()
    };
    let before = views(&seen);
    assert!(doubled(&job.kit, &seen).is_empty() && before.iter().all(|ids| ids.contains(&52)));
    let twice = |id: u32, of: u32| {
        let mut other = seen[0].markers.iter().find(|m| m.id == of).unwrap().clone();
        other.id = id;
        other.corners_px.iter_mut().for_each(|c| c.x += 300.0);
        other
    };
    // A code of no kit is nobody's concern.
    let spare = [twice(52, 52), twice(583, 52), twice(583, 53)];
    seen[0].markers.extend(spare);
    assert_eq!(doubled(&job.kit, &seen), BTreeSet::from([52]));
    for (after, mut before) in views(&seen).into_iter().zip(before) {
        before.remove(&52);
        assert_eq!(after, before);
    }
}
