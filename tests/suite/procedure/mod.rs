//! The procedure around the photos: steps, before and after, attempts, cards;
//! each staged by the renderer, right and wrong, and verified.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

mod arches;
mod attempts;
mod cards;
mod floor;
mod library;
mod phases;
mod steps;

use crate::staged;
use std::path::Path;

use baywitness::folder::Models;
use baywitness::job;
use baywitness::record::JobRecord;
use baywitness::synth::{PhotoSpec, Scene};

/// Size of the pictures against the sample camera's.
const SCALE: f64 = 0.36;

fn options() -> job::Options {
    job::Options::new(Models::embedded())
}

/// A photo's file and what is different in it.
type Shot<'a> = (&'a str, &'a dyn Fn(&mut PhotoSpec));

/// The staged bay with the two usual photos, named and changed as wanted.
fn scene(photos: &[Shot]) -> Scene {
    let mut scene = staged::scene(SCALE);
    scene.spec.job.remove("reading");
    let two = scene.photos();
    let one = |(i, (file, change)): (usize, &Shot)| {
        let mut photo = PhotoSpec { file: (*file).to_owned(), ..two[i % 2].clone() };
        // Nobody stands twice in the same place.
        photo.eye_mm[0] += 130.0 * (i / 2) as f64;
        photo.eye_mm[2] -= 60.0 * (i / 2) as f64;
        change(&mut photo);
        photo
    };
    scene.spec.photo = Some(photos.iter().enumerate().map(one).collect());
    scene
}

fn stage(scene: &Scene, folder: &Path) {
    scene.stage(folder, &mut |_| ()).unwrap();
}

/// Verifies a staged job again with something in its job file replaced.
fn verify_with(folder: &Path, from: &str, to: &str) -> JobRecord {
    let path = folder.join("job.toml");
    let text = std::fs::read_to_string(&path).unwrap();
    assert!(text.contains(from), "{text}");
    std::fs::write(&path, text.replace(from, to)).unwrap();
    let record = job::verify(folder, &options()).unwrap();
    std::fs::write(&path, text).unwrap();
    tell(&record);
    record
}

fn verify(scene: &Scene) -> JobRecord {
    let folder = tempfile::tempdir().unwrap();
    stage(scene, folder.path());
    let record = job::verify(folder.path(), &options()).unwrap();
    tell(&record);
    record
}

fn tell(record: &JobRecord) {
    println!("{}: {} ({})", record.job, record.verdict.words(), record.reason);
    for f in &record.findings {
        println!("  {} {:?}: {}", f.code, f.level, f.message);
    }
    for c in &record.checks {
        println!("  {} {:?}: {:?} u {:?} {:?}", c.quantity, c.step, c.value, c.standard_uncertainty, c.verdict);
    }
}

fn codes(record: &JobRecord) -> Vec<&str> {
    record.findings.iter().map(|f| f.code.as_str()).collect()
}
