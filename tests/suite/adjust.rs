//! The adjustment against sampled truth.

#![cfg(test)]

use crate::sampled_bay::{Bay, sample};
use baywitness::pose::{Options, adjust};

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
