//! Coverage by pipeline: the same bays developed as different phones would,
//! through detector, adjustment and verdict, against exact truth.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

mod bays;
mod job;
mod kept;
mod tally;

use std::path::PathBuf;

use baywitness::folder::Models;
use baywitness::job::{Options, verify};
use baywitness::synth::{LinearPicture, Preset, Scene};

use crate::planned::number;
use bays::{developed, turns, varied};
use job::Job;
use kept::Kept;

/// Which presets: all of them, or those that `BAY_PHONE_ONLY` names.
fn chosen() -> Vec<Preset> {
    let only = std::env::var("BAY_PHONE_ONLY").unwrap_or_default();
    let named = |p: &Preset| only.is_empty() || only.split(',').any(|name| name == p.name());
    Preset::ALL.into_iter().filter(named).collect()
}

/// How far beyond the markers light is exact, px: beyond what blur, sharpening and noise reduction reach.
const BEYOND_PX: f64 = 40.0;

/// A scene's light, photo by photo.
fn light(scene: &Scene) -> Vec<LinearPicture> {
    (0..scene.photos().len()).map(|i| scene.render_linear_about_markers(i, BEYOND_PX).unwrap()).collect()
}

/// `BAY_PHONE_JOBS` (6) jobs from `BAY_PHONE_FROM` (0) on, each in every pipeline. With `BAY_PHONE_KEPT` jobs are kept
/// in that file, those of earlier runs are not done again, and all of them are counted. With `BAY_PHONE_WAVE_MM` prints lie in
/// such waves.
#[test]
#[ignore = "a quarter of a minute for each job: cargo test --test suite phones:: -- --ignored --nocapture"]
fn coverage_by_pipeline() {
    let (jobs, first) = (number("BAY_PHONE_JOBS", 6.0) as u64, number("BAY_PHONE_FROM", 0.0) as u64);
    let file = std::env::var_os("BAY_PHONE_KEPT").map(PathBuf::from);
    let mut kept = file.as_deref().map(Kept::read).unwrap_or_default();
    for seed in first..first + jobs {
        let wanted: Vec<Preset> = chosen().into_iter().filter(|p| !kept.has(*p, seed)).collect();
        let scene = varied(seed);
        println!("job {seed}: {}", bays::told(&scene));
        let mut lights: [Option<Vec<LinearPicture>>; 2] = [None, None];
        for preset in wanted {
            let scene = developed(&scene, preset);
            let light = lights[usize::from(turns(preset))].get_or_insert_with(|| light(&scene));
            let job = job(&scene, light);
            println!("  {:8} {job}", preset.name());
            kept.add(preset, seed, job);
        }
        if let Some(file) = &file {
            kept.write(file);
        }
    }
    let tallies = kept.tallies(&chosen());
    println!("\n{}", tally::table(&tallies));
    for (preset, tally) in &tallies {
        assert_eq!(tally.wrongly_within(), 0, "{}: a wrong set-up is called within", preset.name());
        assert!(tally.found_share() > 0.9, "{}: {:.3} of the markers", preset.name(), tally.found_share());
    }
}

fn job(scene: &Scene, light: &[LinearPicture]) -> Job {
    let folder = tempfile::tempdir().unwrap();
    let truth = scene.stage_lit(folder.path(), light, &mut |_| ()).unwrap();
    let record = verify(folder.path(), &Options::new(Models::embedded())).unwrap();
    for finding in record.findings.iter().filter(|f| job::is_serious(f)) {
        println!("  {}: {}", finding.code, finding.message);
    }
    Job::of(scene, folder.path(), &truth, &record)
}

/// About the markers nothing of the light is another one's than where all of it is exact, and a draft exposes alike.
#[test]
fn a_draft_is_exact_about_the_markers() {
    let mut scene = varied(1);
    scene.scale *= 0.4;
    let (all, draft) = (scene.render_linear(0).unwrap(), scene.render_linear_about_markers(0, 20.0).unwrap());
    let mut drafted = vec![true; all.rgb.len()];
    let seen = scene.corners(0);
    assert!(seen.len() > 5);
    for marker in &seen {
        let ends = |k: usize, n: usize| {
            let at = marker.corners_px.map(|c| c[k]);
            let (low, high) = (at.into_iter().fold(f64::INFINITY, f64::min), at.into_iter().fold(0.0, f64::max));
            ((low - 19.0).max(0.0) as usize).min(n)..((high + 19.0) as usize).min(n)
        };
        for v in ends(1, all.height) {
            for i in ends(0, all.width).map(|u| v * all.width + u) {
                drafted[i] = false;
                assert_eq!(all.rgb[i].map(f32::to_bits), draft.rgb[i].map(f32::to_bits), "pixel {} {v}", i % all.width);
            }
        }
    }
    let mean = |light: &LinearPicture| light.rgb.iter().map(|c| f64::from(c[1])).sum::<f64>() / light.rgb.len() as f64;
    assert!((mean(&draft) / mean(&all) - 1.0).abs() < 0.02, "{} {}", mean(&draft), mean(&all));
    assert!(drafted.iter().filter(|d| **d).count() * 2 > drafted.len(), "half the picture is spared");
}
