//! One flaw at a time, at the sizes that four photos must show.

use baywitness::camera::Lens;
use baywitness::geom::{self, Attitude, Pose, Vehicle, rad};
use baywitness::pose::View;
use nalgebra::{Vector3, Vector6};
use rayon::prelude::*;

use super::bench::{bay, job, judge, samples, sheet};
use super::common::{Bay, Flaw, Noise, Sample, camera, flawed};

pub(crate) type At = Pose<Vehicle, geom::Carrier>;

/// Each flaw is drawn in four jobs, times `BAYWITNESS_FINDING_SAMPLES`.
fn jobs() -> u64 {
    samples(4)
}

/// A probability of .95 finds this many of so many or more, but for three standard deviations.
fn least(jobs: u64) -> usize {
    let n = jobs as f64;
    (0.95 * n - 3.0 * (0.05 * 0.95 * n).sqrt()).floor().max(0.75 * n).ceil() as usize
}

/// In how many of the jobs the code is among the findings.
fn found(code: &str, make: impl Fn(u64) -> Sample + Sync) -> usize {
    let hits: Vec<bool> = (0..jobs())
        .into_par_iter()
        .map(|seed| {
            let judged = judge(&make(70_000 + seed), &sheet(), &job());
            let hit = judged.has(code);
            if !hit || seed == 0 {
                let words: Vec<String> = judged.findings.iter().map(|f| format!("{}: {}", f.code, f.message)).collect();
                println!("{code} seed {seed}: {}", words.join(" | "));
                println!("   {}", super::bench::suspected(&make(70_000 + seed)));
            }
            hit
        })
        .collect();
    hits.iter().filter(|h| **h).count()
}

fn assert_found(code: &str, flaw: &Flaw) {
    assert_found_in(code, &bay(), flaw);
}

fn assert_found_in(code: &str, bay: &Bay, flaw: &Flaw) {
    let n = found(code, |seed| flawed(bay, seed, flaw));
    println!("{code}: found in {n} of {}", jobs());
    assert!(n >= least(jobs()), "{code}: {n} of {}", jobs());
}

pub(crate) fn stepped(pose: At, mm: [f64; 3], degrees: [f64; 3]) -> At {
    let r = degrees.map(rad);
    pose.moved(&Vector6::new(mm[0], mm[1], mm[2], r[0], r[1], r[2]))
}

/// In the vehicle's frame.
pub(crate) fn shifted(pose: At, mm: [f64; 3]) -> At {
    Pose::new(pose.rotation(), pose.origin_mm() + Vector3::from(mm))
}

#[test]
fn a_stand_pushed_5_mm_between_photos() {
    let place = |photo: usize, name: &str, pose: At| {
        if photo >= 2 && name == "stand" { stepped(pose, [3.0, 4.0, 0.0], [0.0; 3]) } else { pose }
    };
    assert_found("stand-moved-between-photos", &Flaw { place: &place, ..Flaw::default() });
}

#[test]
fn a_stand_turned_a_fifth_of_a_degree_for_one_photo() {
    let place = |photo: usize, name: &str, pose: At| {
        if photo == 1 && name == "stand" { stepped(pose, [0.0; 3], [0.0, 0.0, 0.2]) } else { pose }
    };
    assert_found("stand-moved-between-photos", &Flaw { place: &place, ..Flaw::default() });
}

#[test]
fn a_vehicle_that_rolls_5_mm_between_photos() {
    let on_vehicle = |name: &str| name.starts_with("rear") || name.starts_with("front");
    let place = |photo: usize, name: &str, pose: At| {
        if photo >= 1 && on_vehicle(name) { shifted(pose, [5.0, 0.0, 0.0]) } else { pose }
    };
    assert_found("vehicle-moved-between-photos", &Flaw { place: &place, ..Flaw::default() });
    // The plates turn with their wheels: 5 mm on a radius of 310 mm.
    let place = |photo: usize, name: &str, pose: At| {
        if photo >= 2 && on_vehicle(name) {
            stepped(shifted(pose, [-5.0, 0.0, 0.0]), [0.0; 3], [0.0, (-5.0f64 / 310.0).to_degrees(), 0.0])
        } else {
            pose
        }
    };
    assert_found("vehicle-moved-between-photos", &Flaw { place: &place, ..Flaw::default() });
}

#[test]
fn a_plate_that_sits_one_degree_askew() {
    let place = |_: usize, name: &str, pose: At| {
        if name == "rear-left" { stepped(pose, [0.0; 3], [0.0, 0.0, 1.0]) } else { pose }
    };
    assert_found("plate-not-seated", &Flaw { place: &place, ..Flaw::default() });
}

#[test]
fn a_plate_that_slips_between_photos() {
    let place = |photo: usize, name: &str, pose: At| {
        if photo >= 2 && name == "front-right" { stepped(pose, [0.0; 3], [0.0, 1.0, 0.0]) } else { pose }
    };
    assert_found("plate-not-seated", &Flaw { place: &place, ..Flaw::default() });
}

#[test]
fn prints_one_percent_off_on_one_carrier() {
    for who in ["stand", "rear-left"] {
        let print = |name: &str| if name == who { 0.99 } else { 1.0 };
        assert_found("print-scale-wrong", &Flaw { print: &print, ..Flaw::default() });
    }
}

#[test]
fn all_prints_two_percent_off() {
    assert_found("print-scale-wrong", &Flaw { print: &|_| 0.98, ..Flaw::default() });
}

#[test]
fn a_photo_zoomed_by_a_tenth() {
    let focal = |photo: usize| if photo == 2 { 1.1 } else { 1.0 };
    assert_found("photo-zoomed", &Flaw { focal: &focal, ..Flaw::default() });
}

#[test]
fn photos_of_another_camera() {
    let own: Lens = camera(&bay()).lens;
    let longer = Lens { focal_px: own.focal_px.map(|f| f * 1.06), ..own };
    assert_found("camera-mismatch", &Flaw { lens: Some(longer), ..Flaw::default() });
    let bent = Lens { distortion: [0.02, -0.1, 0.0, 0.0, 0.05], ..own };
    assert_found("camera-mismatch", &Flaw { lens: Some(bent), ..Flaw::default() });
}

/// The floor rises by 0.3 deg from 2.4 m before the stand on; sheets lie 3.4 m apart.
#[test]
fn a_floor_that_bends_by_three_tenths_of_a_degree() {
    let kink = 2600.0;
    let place = |_: usize, name: &str, pose: At| {
        let beyond = pose.origin_mm().x - kink;
        if beyond < 0.0 || !(name.starts_with("floor") || name == "stand") {
            return pose;
        }
        let rise = Attitude { pitch_deg: -0.3, ..Attitude::default() }.rotation();
        let lifted = pose.origin_mm() + Vector3::new(0.0, 0.0, beyond * rad(0.3).tan());
        Pose::new(rise * pose.rotation(), lifted)
    };
    let flaw = Flaw { place: &place, ..Flaw::default() };
    assert_found("floor-not-level", &flaw);
    // A sheet that lies on something 4 mm thick.
    let place = |_: usize, name: &str, pose: At| if name == "floor-2" { shifted(pose, [0.0, 0.0, 4.0]) } else { pose };
    assert_found("floor-not-level", &Flaw { place: &place, ..Flaw::default() });
}

#[test]
fn wheels_turned_by_half_a_degree() {
    let place = |_: usize, name: &str, pose: At| {
        if name.starts_with("front") { stepped(pose, [0.0; 3], [0.0, 0.0, 0.5]) } else { pose }
    };
    // Toe would add to the half degree.
    let straight = Bay { toe_deg: 0.0, ..bay() };
    assert_found_in("steering-not-straight", &straight, &Flaw { place: &place, ..Flaw::default() });
}

/// Gives each of two markers the other's place in all photos.
fn exchange(sample: &mut Sample, a: u32, b: u32) {
    let Sample { rig, photos, .. } = sample;
    for photo in photos {
        for view in &mut photo.views {
            let id = if view.id == a {
                b
            } else if view.id == b {
                a
            } else {
                continue;
            };
            rename(rig, view, id);
        }
    }
}

fn rename(rig: &baywitness::marker::Rig, view: &mut View, id: u32) {
    let (carrier, marker) = rig.marker(id).unwrap();
    view.id = id;
    view.carrier = carrier;
    view.marker = rig.carriers[carrier].markers.iter().position(|m| m.id == marker.id).unwrap();
}

#[test]
fn sheets_in_each_others_place() {
    let swapped = |a, b| {
        move |seed| {
            let mut sample = flawed(&bay(), seed, &Flaw::default());
            exchange(&mut sample, a, b);
            sample
        }
    };
    assert!(found("plates-swapped", swapped(0, 2)) >= least(jobs()));
    assert!(found("plates-swapped", swapped(10, 13)) >= least(jobs()));
}

#[test]
fn a_marker_sheet_mounted_upside_down() {
    let turned = |seed| {
        let mut sample = flawed(&bay(), seed, &Flaw::default());
        for view in sample.photos.iter_mut().flat_map(|p| &mut p.views).filter(|v| v.id == 1) {
            view.corners_px.rotate_left(2);
        }
        sample
    };
    assert!(found("plates-swapped", turned) >= least(jobs()));
}

#[test]
fn plates_and_panel_upside_down() {
    let over = |pose: At| stepped(pose, [0.0; 3], [180.0, 0.0, 0.0]);
    let one = |who: &'static str| move |_: usize, name: &str, pose: At| if name == who { over(pose) } else { pose };
    let mut noise = Noise::new(1);
    let seed = (noise.uniform() * 1000.0) as u64;
    for (who, code) in [("stand", "stand-not-level"), ("rear-left", "plate-not-seated")] {
        let place = one(who);
        let judged = judge(&flawed(&bay(), seed, &Flaw { place: &place, ..Flaw::default() }), &sheet(), &job());
        assert!(judged.has(code), "{who}: {:?}", judged.codes());
    }
}

/// Left and right plates on each other's wheel, upside down as they only mount.
#[test]
fn plates_on_each_others_wheel() {
    let mut sample = flawed(&bay(), 7, &Flaw::default());
    let (left, right) = (sample.carrier("rear-left"), sample.carrier("rear-right"));
    let bodies = [sample.bodies[left], sample.bodies[right]];
    let place = move |_: usize, name: &str, pose: At| match name {
        "rear-left" => stepped(bodies[1], [0.0; 3], [180.0, 0.0, 0.0]),
        "rear-right" => stepped(bodies[0], [0.0; 3], [180.0, 0.0, 0.0]),
        _ => pose,
    };
    sample = flawed(&bay(), 7, &Flaw { place: &place, ..Flaw::default() });
    let judged = judge(&sample, &sheet(), &job());
    assert!(judged.has("plates-swapped"), "{:?}", judged.codes());
    assert_eq!(judged.findings[0].code, "plates-swapped");
}

/// The size that a job states as found with .95 is: injected at just that size, it is found.
#[test]
fn stated_sizes_are_found() {
    let of = |judged: &super::bench::Judged, code: &str, unit: &str, carrier: Option<&str>| {
        let d = judged.detectable.iter().find(|d| d.code == code && d.unit == unit && d.carrier.as_deref() == carrier);
        d.unwrap_or_else(|| panic!("{code} {unit}")).size.unwrap()
    };
    let plain = judge(&flawed(&bay(), 70_000, &Flaw::default()), &sheet(), &job());
    for d in &plain.detectable {
        println!("{} {:?}: {:?} {} {:?}", d.code, d.carrier, d.size, d.unit, d.remedy);
    }
    let mm = of(&plain, "stand-moved-between-photos", "mm", Some("stand"));
    let place = |photo: usize, name: &str, pose: At| {
        if photo >= 2 && name == "stand" { shifted(pose, [mm, 0.0, 0.0]) } else { pose }
    };
    assert_found("stand-moved-between-photos", &Flaw { place: &place, ..Flaw::default() });
    let percent = of(&plain, "print-scale-wrong", "%", Some("stand"));
    let print = |name: &str| if name == "stand" { 1.0 + percent / 100.0 } else { 1.0 };
    assert_found("print-scale-wrong", &Flaw { print: &print, ..Flaw::default() });
    let percent = of(&plain, "photo-zoomed", "%", None);
    let focal = |photo: usize| if photo == 1 { 1.0 + percent / 100.0 } else { 1.0 };
    assert_found("photo-zoomed", &Flaw { focal: &focal, ..Flaw::default() });
    let steering = of(&plain, "steering-not-straight", "deg", None);
    let place = |_: usize, name: &str, pose: At| {
        if name.starts_with("front") { stepped(pose, [0.0; 3], [0.0, 0.0, steering]) } else { pose }
    };
    let straight = Bay { toe_deg: 0.0, ..bay() };
    assert_found_in("steering-not-straight", &straight, &Flaw { place: &place, ..Flaw::default() });
}

/// A stand that is the only common body of two photos: whether it moved can't be told.
#[test]
fn what_has_no_redundancy_is_not_checkable() {
    let mut sample = flawed(&Bay { four_photos: false, ..bay() }, 3, &Flaw::default());
    let stand = sample.carrier("stand");
    let rig = sample.rig.clone();
    for (j, side) in [(0, "left"), (1, "right")] {
        sample.photos[j].views.retain(|v| v.carrier == stand || rig.carriers[v.carrier].name.ends_with(side));
    }
    let judged = judge(&sample, &sheet(), &job());
    let moved = judged.detectable.iter().find(|d| d.code == "stand-moved-between-photos").unwrap();
    assert_eq!(moved.size, None, "{moved:?}");
    assert!(moved.remedy.as_ref().unwrap().contains("a.jpg and b.jpg"), "{moved:?}");
}
