//! Coverage by pipeline: the same bays developed as different phones would,
//! through detector, adjustment and verdict, against exact truth.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

mod bays;
mod tally;

use baywitness::folder::Models;
use baywitness::job::{Options, verify};
use baywitness::synth::{LinearPicture, Preset, Scene};

use crate::planned::number;
use bays::{developed, varied};
use tally::Tally;

/// Which presets: all of them, or those that `BAY_PHONE_ONLY` names.
fn chosen() -> Vec<Preset> {
    let only = std::env::var("BAY_PHONE_ONLY").unwrap_or_default();
    let named = |p: &Preset| only.is_empty() || only.split(',').any(|name| name == p.name());
    Preset::ALL.into_iter().filter(named).collect()
}

/// Whether the hand or the stabiliser changes what each pixel sees: then the light is traced anew.
fn traced_anew(preset: Preset) -> bool {
    matches!(preset, Preset::Rolling | Preset::Phone | Preset::Night)
}

fn job(scene: &Scene, light: &[LinearPicture], tally: &mut Tally) {
    let folder = tempfile::tempdir().unwrap();
    let truth = scene.stage_lit(folder.path(), light, &mut |_| ()).unwrap();
    let record = verify(folder.path(), &Options::new(Models::embedded())).unwrap();
    tally.add(scene, folder.path(), &truth, &record);
}

/// `BAY_PHONE_JOBS` (6) jobs from `BAY_PHONE_FROM` (0) on, each in every pipeline.
#[test]
#[ignore = "two to five minutes for each job: cargo test --test suite phones:: -- --ignored --nocapture"]
fn coverage_by_pipeline() {
    let (jobs, first) = (number("BAY_PHONE_JOBS", 6.0) as u64, number("BAY_PHONE_FROM", 0.0) as u64);
    let mut tallies: Vec<(Preset, Tally)> = chosen().into_iter().map(|p| (p, Tally::default())).collect();
    for seed in first..first + jobs {
        let scene = varied(seed);
        let photos = scene.photos().len();
        let shared: Vec<LinearPicture> = match tallies.iter().any(|(p, _)| !traced_anew(*p)) {
            true => (0..photos).map(|i| scene.render_linear(i).unwrap()).collect(),
            false => Vec::new(),
        };
        println!("job {seed}: {}", bays::told(&scene));
        for (preset, tally) in &mut tallies {
            let light = if traced_anew(*preset) { &[][..] } else { &shared[..] };
            job(&developed(&scene, *preset), light, tally);
            println!("  {:8} {}", preset.name(), tally.last());
        }
    }
    println!("\n{}", tally::table(&tallies));
    for (preset, tally) in &tallies {
        assert_eq!(tally.wrongly_within(), 0, "{}: a wrong set-up is called within", preset.name());
        assert!(tally.found_share() > 0.9, "{}: {:.3} of the markers", preset.name(), tally.found_share());
    }
}
