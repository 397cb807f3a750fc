//! A corner that tape, a hose or a boot covers in every photo: the three others do.

use baywitness::pose::{Options, adjust};
use baywitness::setup::ReferenceLine;
use nalgebra::{Vector2, Vector3};
use rayon::prelude::*;

use super::{draws, table};
use crate::sampled_bay::{Bay, Sample, sample};

/// How far off its place the detector's fit of the rest of the pattern has a covered corner, px in u and in v: more than on
/// rendered photos with a tape, a hose or a boot on it (14 corners, at most 0.2 px).
const FITTED_PX: f64 = 0.5;
/// The least share of 95 % intervals that hold the truth: fewer of a hundred, in which those of one job go together, are no chance.
const LEAST_HELD: f64 = 0.8;

/// A corner of a carrier's markers is covered in all photos.
fn cover(job: &mut Sample, carrier: usize, corner: usize) {
    for view in job.photos.iter_mut().flat_map(|photo| &mut photo.views).filter(|view| view.carrier == carrier) {
        view.valid[corner] = false;
        view.corners_px[corner] += Vector2::new(FITTED_PX, -FITTED_PX);
    }
}

/// By bay, carrier and corner: the job settles with the carrier in it, and its figures are as good as they say.
fn hold(cases: &[(&Bay, &str, usize)], change: impl Fn(&mut Sample, usize) + Sync) {
    let one = |(at, (bay, name, corner)): (usize, &(&Bay, &str, usize))| {
        let seed = 9000 + at as u64;
        let mut job = sample(bay, seed);
        let carrier = job.carrier(name);
        change(&mut job, carrier);
        cover(&mut job, carrier, *corner);
        let scene = adjust(&job.problem(), &Options::default()).unwrap();
        assert!(scene.knows(carrier), "{name} without corner {corner}, seed {seed}");
        assert!(scene.photos.iter().all(Option::is_some), "{name} without corner {corner}, seed {seed}");
        draws::of(bay, &job, ReferenceLine::Centreline, seed).quantities
    };
    let drawn: Vec<_> = cases.par_iter().enumerate().flat_map_iter(one).collect();
    let held = drawn.iter().filter(|q| q.held).count();
    let worst = drawn.iter().map(|q| q.error_over_u.abs()).fold(0.0, f64::max);
    println!("{held} of {} intervals hold the truth, worst error {worst:.1} u", drawn.len());
    assert!(worst < table::GROSS, "off by {worst:.1} u");
    assert!(held as f64 >= LEAST_HELD * drawn.len() as f64, "{held} of {}", drawn.len());
}

#[test]
fn a_sheet_with_a_covered_corner_keeps_the_job() {
    let two = Bay::default();
    // The sheets beside the vehicle are in the view of who stands beside it.
    let further = [1.0, -1.0].map(|side| Vector3::new(4600.0, side * 4200.0, 1900.0)).to_vec();
    let six = Bay { four_photos: true, further, ..Bay::default() };
    let sheets = [(&six, "floor-0"), (&six, "floor-1"), (&two, "floor-2"), (&two, "floor-3")];
    let cases: Vec<_> = sheets.iter().flat_map(|(bay, name)| (0..4).map(move |corner| (*bay, *name, corner))).collect();
    hold(&cases, |_, _| ());
}

#[test]
fn a_plate_with_a_covered_corner_on_each_marker_keeps_the_job() {
    let bay = Bay::default();
    let cases: Vec<_> =
        ["rear-left", "front-right"].iter().flat_map(|name| (0..8).map(|i| (&bay, *name, i % 4))).collect();
    hold(&cases, |_, _| ());
}

/// Of a plate one marker alone is in view, as of a nose mark, and it does not lie on the floor.
#[test]
fn a_lone_marker_with_a_covered_corner_keeps_the_job() {
    let bay = Bay::default();
    let cases: Vec<_> = (0..16).map(|i| (&bay, "front-left", i % 4)).collect();
    hold(&cases, |job, carrier| {
        for photo in &mut job.photos {
            photo.views.retain(|view| view.carrier != carrier || view.marker == 0);
        }
    });
}
