//! Rates by sampled corners: what two photos of one tripod are taken for.

use baywitness::geom::rad;
use baywitness::job::{Between, FALSE_MOTION, Frame, Seen, Tripod};
use baywitness::marker::Kit;
use baywitness::pose::PhotoView;
use nalgebra::{Vector2, Vector3, Vector6};

use crate::sampled_bay::{At, Bay, Flaw, Noise, correlated, flawed};

/// 12 MP, as the bay's camera has it.
const SIZE_PX: [usize; 2] = [4032, 3024];
const NOISE_PX: f64 = 0.03;
const U_EDGE_PX: f64 = 0.02;

/// A bay whose corners are exact: noise is added photo by photo, the bay's own errors are the same in all.
fn bay() -> Bay {
    Bay { noise_over_stated: 0.0, u_edge_px: 0.0, u_edge_by_size_px: 0.0, noise_px: NOISE_PX, ..Bay::default() }
}

/// Where each body is at a time.
type Place<'a> = &'a (dyn Fn(&str, At) -> At + Sync);

/// What the tripod's camera sees without noise; the seed decides bay and station.
fn exact(seed: u64, place: Place) -> (Kit, PhotoView) {
    let sample = flawed(&bay(), seed, &Flaw { place: &|_, name, pose| place(name, pose), ..Flaw::default() });
    let view = sample.photos.into_iter().next().unwrap();
    (sample.kit, view)
}

/// The same with the noise of one photo, as its covariances state it, the lens focused anew and the stabiliser at rest
/// elsewhere, as the bay's camera says.
fn noisy(view: &PhotoView, noise: &mut Noise) -> Frame {
    let (plain, mut view) = (bay(), view.clone());
    let middle = Vector2::new(SIZE_PX[0] as f64, SIZE_PX[1] as f64) / 2.0;
    let shift = plain.u_centre_px * Vector2::new(noise.normal(), noise.normal());
    let focal = 1.0 + plain.u_focal * noise.normal();
    for corner in view.views.iter_mut().flat_map(|v| &mut v.corners_px) {
        *corner = middle + shift + focal * (*corner - middle);
    }
    view.u_edge_offset_px = U_EDGE_PX;
    let edge = U_EDGE_PX * noise.normal();
    for v in &mut view.views {
        let (jitter, outward) = (correlated(NOISE_PX, noise), v.outward());
        for (i, outward) in outward.iter().enumerate() {
            v.corners_px[i] += outward * edge + jitter.fixed_rows::<2>(2 * i);
        }
    }
    Frame::of(SIZE_PX, view)
}

fn stays(_: &str, pose: At) -> At {
    pose
}

/// The stand moved along the vehicle's axes, mm, and turned about the vertical, degrees.
fn stand(mm: [f64; 3], yaw_deg: f64) -> impl Fn(&str, At) -> At + Sync {
    move |name, pose| {
        if name != "stand" {
            return pose;
        }
        // The stand's axes are the vehicle's but for its small errors.
        pose.moved(&Vector6::new(mm[0], mm[1], mm[2], 0.0, 0.0, rad(yaw_deg)))
    }
}

/// All that is on wheels, mm ahead.
fn rolled(mm: f64) -> impl Fn(&str, At) -> At + Sync {
    move |name, pose| {
        let on_wheel = ["rear-left", "rear-right", "front-left", "front-right"].contains(&name);
        if on_wheel { pose.moved(&Vector6::new(mm, 0.0, 0.0, 0.0, 0.0, 0.0)) } else { pose }
    }
}

/// Noise is drawn so often for each bay.
const PAIRS: u64 = 20;

/// How often two photos with such a step between them are taken for each thing.
fn shares(n: u64, place: Place) -> Vec<(Between, usize)> {
    let bays: Vec<(Kit, PhotoView, PhotoView)> = (0..n.div_ceil(PAIRS))
        .map(|seed| {
            let ((kit, before), (_, after)) = (exact(seed, &stays), exact(seed, place));
            (kit, before, after)
        })
        .collect();
    let mut found: Vec<(Between, usize)> = Vec::new();
    for i in 0..n {
        let mut noise = Noise::new(i ^ 0x7219_0000);
        let (kit, before, after) = &bays[(i % bays.len() as u64) as usize];
        let between = noisy(before, &mut noise).until(&noisy(after, &mut noise), kit);
        let between = if let Between::One(_) = between { Between::One(String::new()) } else { between };
        match found.iter_mut().find(|(b, _)| *b == between) {
            Some((_, count)) => *count += 1,
            None => found.push((between, 1)),
        }
    }
    found
}

fn share(found: &[(Between, usize)], wanted: &Between) -> f64 {
    let all: usize = found.iter().map(|(_, n)| n).sum();
    found.iter().find(|(b, _)| b == wanted).map_or(0, |(_, n)| *n) as f64 / all as f64
}

/// As many in the default run as it takes to see a chance of one in a hundred.
fn samples() -> u64 {
    std::env::var("BAYWITNESS_TRIPOD_SAMPLES").ok().and_then(|n| n.parse().ok()).unwrap_or(200)
}

#[test]
fn noise_is_rarely_taken_for_a_move() {
    let n = 10 * samples();
    let found = shares(n, &stays);
    let moved = 1.0 - share(&found, &Between::Rest);
    println!("nothing moved, {n} pairs: called moved {:.2} %, stated {:.2} %", 100.0 * moved, 100.0 * FALSE_MOTION);
    // Three standard deviations beside what is stated, and 1 % is the limit.
    let slack = 3.0 * (FALSE_MOTION / n as f64).sqrt();
    assert!(moved < (FALSE_MOTION + slack).min(0.01), "{found:?}");
}

#[test]
fn a_creeping_stand_is_told_by_two_photos() {
    let n = samples();
    // Millimetres along the vehicle's axes (ahead, left, up), degrees about the vertical, the share that must be told.
    let steps = [
        ("1 mm to the side", [0.0, 1.0, 0.0], 0.0, 0.99),
        ("1 mm up", [0.0, 0.0, 1.0], 0.0, 0.99),
        ("1 mm away", [1.0, 0.0, 0.0], 0.0, 0.99),
        ("0.3 mm to the side", [0.0, 0.3, 0.0], 0.0, 0.99),
        ("turned 0.05 deg", [0.0; 3], 0.05, 0.99),
        // Smaller than what matters, for the table.
        ("0.3 mm away", [0.3, 0.0, 0.0], 0.0, 0.0),
        ("0.1 mm to the side", [0.0, 0.1, 0.0], 0.0, 0.0),
        ("0.05 mm to the side", [0.0, 0.05, 0.0], 0.0, 0.0),
        ("turned 0.02 deg", [0.0; 3], 0.02, 0.0),
    ];
    for (what, mm, yaw, least) in steps {
        let told = share(&shares(n, &stand(mm, yaw)), &Between::Stand);
        println!("stand creeps {what} between two photos: told in {:.1} % of {n}", 100.0 * told);
        assert!(told >= least, "{what}: {told}");
    }
}

#[test]
fn a_vehicle_that_rolls_and_a_tripod_that_is_nudged_are_told_apart() {
    let n = samples();
    let found = shares(n, &rolled(2.0));
    println!("vehicle rolls 2 mm: {found:?}");
    assert!(share(&found, &Between::Vehicle) > 0.95, "{found:?}");
    // A tripod that goes one way is everything else that goes the other way.
    let all = |_: &str, pose: At| At::from_matrix(pose.matrix(), pose.origin_mm() + Vector3::new(0.0, 5.0, 0.0));
    let found = shares(n, &all);
    println!("tripod nudged 5 mm: {found:?}");
    assert!(share(&found, &Between::Tripod) > 0.95, "{found:?}");
    let kicked = |name: &str, pose: At| {
        if name == "floor-2" { pose.moved(&Vector6::new(2.0, 1.0, 0.0, 0.0, 0.0, 0.0)) } else { pose }
    };
    let found = shares(n, &kicked);
    println!("a sheet kicked 2 mm: {found:?}");
    assert!(share(&found, &Between::One(String::new())) > 0.95, "{found:?}");
}

/// A sitting: at rest, on the move, at rest elsewhere, and then standing for hundreds of photos.
#[test]
fn a_sitting_finds_each_place_once() {
    let (mut extra, mut missed, sittings) = (0, 0, 10);
    for seed in 0..sittings {
        let mut noise = Noise::new(seed ^ 0x51e9);
        let mut tripod = Tripod::default();
        let at = |mm: f64| exact(seed, &stand([0.0, mm, 0.0], 0.0));
        let (kit, first) = at(0.0);
        assert_eq!(tripod.next(noisy(&first, &mut noise), &kit), Seen::First);
        assert_eq!(tripod.next(noisy(&first, &mut noise), &kit), Seen::NewPlace);
        for mm in [3.0, 7.0, 12.0] {
            assert_eq!(tripod.next(noisy(&at(mm).1, &mut noise), &kit), Seen::Moves(Between::Stand));
        }
        let there = at(12.0).1;
        missed += usize::from(tripod.next(noisy(&there, &mut noise), &kit) != Seen::NewPlace);
        for _ in 0..200 {
            extra += usize::from(tripod.next(noisy(&there, &mut noise), &kit) == Seen::NewPlace);
        }
        // Creeps too slowly for two photos, and is found out all the same.
        let crept = (1..=40).filter(|k| {
            let view = at(12.0 + 0.05 * f64::from(*k)).1;
            tripod.next(noisy(&view, &mut noise), &kit) == Seen::NewPlace
        });
        assert!(crept.count() >= 1, "2 mm in forty photos went unseen");
    }
    println!("{sittings} sittings: places missed {missed}, places too many in {} photos {extra}", 200 * sittings);
    assert!(missed <= 1 && extra <= 2, "{missed} {extra}");
}
