//! `verify`, `check` and `audit` with `--cameras`, on a rendered job whose photos carry a sensor's pattern.

use std::path::Path;
use std::process::Output;

use baywitness::synth::{InsidesSpec, Strength};
use serde_json::Value;

use super::pattern;
use super::rendered::{Developed, Lit, STRENGTH};
use crate::program::program;
use crate::staged;

/// Size of the pictures, as a share of the sample camera's sides.
const SCALE: f64 = 0.3;

fn run(arguments: &[&str]) -> Output {
    program().args(arguments).output().unwrap()
}

fn said(out: &Output) -> String {
    String::from_utf8_lossy(&out.stdout).into_owned() + &String::from_utf8_lossy(&out.stderr)
}

/// A pattern of a rendered sensor, for a camera of that name.
fn keep(folder: &Path, lit: &Lit, sensor: u64, camera: &str) {
    // Two sensors in the same ten places would have the scene in common.
    let from = if sensor == 5 { 0 } else { 10 };
    let plain = Developed { insides: InsidesSpec::default(), quality: 92 };
    let photos: Vec<_> = (from..from + 10).map(|i| lit.shot(i, sensor, 77 * sensor + i as u64, &plain)).collect();
    let digest = pattern(camera, &photos).unwrap();
    std::fs::write(folder.join(format!("{camera}.pattern")), digest.to_bytes()).unwrap();
}

#[test]
fn a_jobs_photos_are_known_by_their_camera_and_by_another_one() {
    let dir = tempfile::tempdir().unwrap();
    let at = |name: &str| dir.path().join(name).display().to_string();
    let mut scene = staged::scene(SCALE);
    scene.spec.insides =
        InsidesSpec { pattern: Some(Strength::Fixed(STRENGTH)), sensor: Some(5), ..InsidesSpec::default() };
    scene.stage(Path::new(&at("archive/job")), &mut |_| ()).unwrap();
    let camera = scene.camera.name.clone();
    let lit = Lit::new(SCALE, 20);
    for (folder, own, other) in [("right", 5, 6), ("wrong", 6, 5)] {
        std::fs::create_dir(at(folder)).unwrap();
        keep(Path::new(&at(folder)), &lit, own, &camera);
        keep(Path::new(&at(folder)), &lit, other, "other");
    }
    let verified = |cameras: &str| said(&run(&["verify", &at("archive/job"), "--cameras", &at(cameras)]));
    let (right, wrong) = (verified("right"), verified("wrong"));
    assert_eq!(right.matches(&format!("this camera, {camera} (chance")).count(), 2, "{right}");
    assert_eq!(wrong.matches("another camera: it carries the pattern of other").count(), 2, "{wrong}");
    // A folder without the camera's pattern decides nothing.
    std::fs::create_dir(at("none")).unwrap();
    assert!(verified("none").contains("holds no sensor's pattern"));
    std::fs::copy(dir.path().join("right/other.pattern"), dir.path().join("none/other.pattern")).unwrap();
    assert_eq!(verified("none").matches("no pattern of that camera is known").count(), 2);

    let sealed = run(&["seal", &at("archive/job"), "--out", &at("evidence")]);
    assert!(sealed.status.success() || sealed.status.code() < Some(5), "{}", said(&sealed));
    let plain = run(&["check", &at("evidence")]);
    let checked = run(&["check", &at("evidence"), "--cameras", &at("wrong"), "--json", &at("check.json")]);
    assert_eq!(checked.status.code(), plain.status.code());
    let json: Value = serde_json::from_slice(&std::fs::read(at("check.json")).unwrap()).unwrap();
    let items: Vec<&Value> =
        json["checks"].as_array().unwrap().iter().filter(|i| i["what"] == "sensor pattern").collect();
    assert!(items.len() == 2 && items.iter().all(|i| i["outcome"] == "failed"), "{json}");

    let audited = |cameras: &str| {
        run(&["audit", &at("archive"), &at("evidence"), "--out", &at("out"), "--cameras", &at(cameras)])
    };
    let first = said(&audited("right"));
    assert!(first.contains("4 photos by the camera that they name, 0 by another one"), "{first}");
    let file = dir.path().join("out/cameras.jsonl");
    let whole = std::fs::read_to_string(&file).unwrap();
    // Broken off in its second line, it is gone on with; other patterns are looked at anew.
    std::fs::write(&file, &whole[..whole.len() - 40]).unwrap();
    audited("right");
    assert_eq!(std::fs::read_to_string(&file).unwrap(), whole);
    let other = said(&audited("wrong"));
    assert!(other.contains("0 photos by the camera that they name, 4 by another one"), "{other}");
}

#[test]
fn what_is_no_pattern_is_named_and_nothing_is_verified() {
    let dir = tempfile::tempdir().unwrap();
    std::fs::write(dir.path().join("a.pattern"), "no pattern").unwrap();
    let cameras = dir.path().display().to_string();
    let out = run(&["verify", "samples/good", "--cameras", &cameras]);
    assert_eq!(out.status.code(), Some(2));
    assert!(said(&out).contains("a.pattern"), "{}", said(&out));
}
