//! Rendered kits with hidden layout errors through the built program.

use std::path::Path;

use baywitness::marker::Kit;
use baywitness::synth::{PhotoSpec, Scene};
use nalgebra::Vector3;

use super::sampled::after_similarity;
use super::sampler::stations;

const HIDDEN_MM: f64 = 0.5;

/// The sample's bay with a badly glued kit, photographed from all sides.
fn scene(scale: f64, photos: usize) -> Scene {
    let mut scene = crate::staged::scene(scale);
    // The file says how badly: hidden errors are drawn from it.
    scene.kit.u_layout_mm = HIDDEN_MM;
    let photo = |(i, [eye, at]): (usize, &[Vector3<f64>; 2])| {
        PhotoSpec::new(&format!("s{i:02}.jpg"), (*eye).into(), (*at).into())
    };
    scene.spec.photo = Some(stations(photos).iter().enumerate().map(photo).collect());
    scene
}

fn run(arguments: &[&str]) -> (i32, String) {
    let output = crate::program::program().args(arguments).output().unwrap();
    let text = format!("{}{}", String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr));
    (output.status.code().unwrap(), text)
}

/// Surveys a staged scene; returns the largest error after the best
/// similarity and the share of centres inside their 95 % intervals.
fn judge(scene: &Scene, job: &Path) -> (f64, f64) {
    scene.stage(job, &mut |_| ()).unwrap();
    let path = |name: &str| job.join(name).display().to_string();
    let truth = scene.placement(0).unwrap();
    let (stand, on) = (&truth.carriers[0], |id: u32| truth.markers().find(|m| m.id == id).unwrap());
    let ids: Vec<u32> = stand.markers.iter().map(|m| m.id).collect();
    let length = |a: u32, b: u32| {
        let mm = (on(a).corners_mm()[0] - on(b).corners_mm()[1]).norm();
        format!("--length={a}:tl,{b}:tr={mm:.1}~0.2")
    };
    let photos: Vec<String> = scene.photos().iter().map(|p| path(&format!("photos/{}", p.file))).collect();
    let mut arguments: Vec<&str> = vec!["survey"];
    arguments.extend(photos.iter().map(String::as_str));
    let (kit, out, camera, report) = (path("kit.toml"), path("new.toml"), path("camera.toml"), path("report"));
    let lengths = [length(ids[0], ids[2]), length(ids[1], ids[3])];
    arguments.extend([
        "--kit",
        &kit,
        "--out",
        &out,
        "--camera",
        &camera,
        "--report",
        &report,
        &lengths[0],
        &lengths[1],
    ]);
    let (code, text) = run(&arguments);
    println!("{text}");
    assert_eq!(code, 0, "{text}");
    let found = Kit::read(Path::new(&out)).unwrap();
    let layout = found.layout.as_ref().unwrap();
    let (mut worst, mut inside, mut all) = (0.0_f64, 0u32, 0u32);
    for placed in &truth.carriers {
        let (mut places, mut truths) = (Vec::new(), Vec::new());
        for marker in &placed.markers {
            let Some(at) = layout.ids.iter().position(|id| *id == marker.id) else { continue };
            let (_, place) = found.marker(marker.id).unwrap();
            let truth = (placed.pose.inverse() * marker.pose).origin_mm();
            for axis in 0..3 {
                let u = layout.covariance[(6 * at + axis, 6 * at + axis)].sqrt();
                inside += u32::from((place.centre_mm[axis] - truth[axis]).abs() < 1.96 * u);
                all += 1;
            }
            places.push(place.centre_mm);
            truths.push(truth);
        }
        if places.len() > 2 {
            let rms = after_similarity(&places, &truths);
            println!("{}: {rms:.3} mm after the best similarity", scene.kit.carriers[placed.index].name);
            worst = worst.max(rms);
        }
    }
    (worst, f64::from(inside) / f64::from(all))
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_badly_glued_kit_is_put_right_and_verify_uses_it() {
    let folder = tempfile::tempdir().unwrap();
    let (worst, inside) = judge(&scene(0.3, 4), folder.path());
    // A third of the camera and of the photos of the guide.
    assert!(worst < 0.25, "{worst} mm");
    assert!(inside > 0.85, "{inside}");
    assert!(std::fs::read_to_string(folder.path().join("report/survey.html")).unwrap().contains("<svg"));
    // The surveyed kit in the job is used, and says nothing that contradicts the stated one.
    let before = yaw(folder.path());
    std::fs::remove_file(folder.path().join("kit.toml")).unwrap();
    std::fs::rename(folder.path().join("new.toml"), folder.path().join("kit.toml")).unwrap();
    let after = yaw(folder.path());
    println!("yaw {before:?} as glued, {after:?} as surveyed");
    assert!(
        (after[0] - before[0]).abs() < 3.0 * before[1].hypot(after[1]) && after[1] < 2.0 * before[1],
        "{after:?} {before:?}"
    );
    assert!(std::fs::read_to_string(folder.path().join("result.json")).unwrap().contains("new-layout.json"));
}

/// Yaw to the rear axle's normal and its standard uncertainty as `verify` states them.
fn yaw(job: &Path) -> [f64; 2] {
    let path = job.join("result.json");
    let (code, text) = run(&["verify", &job.display().to_string(), "--json", &path.display().to_string()]);
    assert_ne!(code, 2, "{text}");
    let json: serde_json::Value = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
    let yaw = &json["measured"]["yaw"];
    ["value", "standard_uncertainty"].map(|key| yaw[key].as_f64().unwrap())
}

#[test]
#[ignore = "a minute of rendering: the judged case, 12 photos of 12 MP"]
fn twelve_full_photos() {
    for seed in [11, 12] {
        let folder = tempfile::tempdir().unwrap();
        let (worst, inside) = judge(&scene(1.0, 12).with_seed(seed), folder.path());
        assert!(worst < 0.1, "{worst} mm");
        assert!(inside > 0.9, "{inside}");
    }
}
