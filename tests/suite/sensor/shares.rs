//! How many photos are known again, by what the phone does to them.

use baywitness::pattern::{Digest, MATCH_PCE, Search, find};
use baywitness::photo::Luma;
use baywitness::synth::{Denoise, InsidesSpec, Preset, Strength};
use rayon::prelude::*;

use super::rendered::{Developed, Lit};
use super::{grey, pattern, spread};
use crate::planned::number;

fn fixed(value: f64) -> Option<Strength> {
    Some(Strength::Fixed(value))
}

fn like(preset: Preset) -> Developed {
    Developed { insides: InsidesSpec::preset(preset), quality: 92 }
}

fn with(change: impl FnOnce(&mut InsidesSpec)) -> Developed {
    let mut insides = InsidesSpec { mosaic: Some(true), ..InsidesSpec::default() };
    change(&mut insides);
    Developed { insides, quality: 92 }
}

/// Name, what the photos undergo, and how far the picture is moved on the sensor.
fn conditions() -> Vec<(String, Developed, [usize; 2])> {
    let mut all = vec![("mosaic, JPEG 92".to_owned(), with(|_| ()), [0, 0])];
    for factor in [2.0, 4.0, 8.0] {
        let name = format!("noise of {}x the ISO", factor * factor);
        all.push((name, with(|i| i.noise = fixed(factor)), [0, 0]));
    }
    for quality in [85, 75, 60] {
        all.push((format!("JPEG {quality}"), with(|i| i.jpeg_quality = fixed(f64::from(quality))), [0, 0]));
    }
    all.push((
        "local tone mapping".to_owned(),
        with(|i| (i.tone_compression, i.tone_detail) = (fixed(0.55), fixed(1.25))),
        [0, 0],
    ));
    let denoise =
        |kind, reach| with(move |i| (i.noise, i.denoise, i.denoise_reach) = (fixed(2.0), Some(kind), fixed(reach)));
    all.push(("bilateral filter, 4x the ISO".to_owned(), denoise(Denoise::Bilateral, 0.04), [0, 0]));
    all.push(("non-local means, 4x the ISO".to_owned(), denoise(Denoise::NonLocalMeans, 0.03), [0, 0]));
    for frames in [2.0, 4.0, 8.0] {
        let merged = with(|i| (i.frames, i.frame_drift_px) = (fixed(frames), fixed(12.0)));
        all.push((format!("{frames} frames merged, hand moves 12 px"), merged, [0, 0]));
    }
    all.push(("stabilised: moved 37, 22 px".to_owned(), with(|_| ()), [37, 22]));
    for preset in [Preset::Halo, Preset::Phone, Preset::Night] {
        let mut developed = like(preset);
        developed.insides.frame_drift_px = fixed(12.0);
        developed.insides.jpeg_quality = fixed(if preset == Preset::Halo { 92.0 } else { 86.0 });
        all.push((format!("preset {}", preset.name()), developed, [0, 0]));
    }
    all
}

fn energies(photos: &[Luma], digest: &Digest) -> Vec<f64> {
    photos.par_iter().map(|p| find(&grey(p), digest, Search::Plain).pce).collect()
}

/// `BAYWITNESS_SENSORS` (4) sensors, each with a pattern of 12 photos as the first condition makes them and one of photos
/// as the condition makes them; eight photos more of each, of other places.
#[test]
#[ignore = "some twenty minutes: cargo test --features sensor-pattern --test suite sensor::shares -- --ignored --nocapture"]
fn right_ones_by_condition() {
    let sensors = number("BAYWITNESS_SENSORS", 4.0) as u64;
    let lit = Lit::new(number("BAYWITNESS_SCALE", 0.5), 20);
    let all = conditions();
    let photos = |sensor: u64, developed: &Developed, moved: [usize; 2], from: usize, to: usize| -> Vec<Luma> {
        let draw = |i: usize| 1000 * sensor + i as u64;
        (from..to).into_par_iter().map(|i| lit.moved_shot(i, sensor, draw(i), developed, moved)).collect()
    };
    let plain: Vec<_> = (0..sensors).map(|s| pattern("a", &photos(s, &all[0].1, [0, 0], 0, 12)).unwrap()).collect();
    println!("patterns of plain photos: {:?}", plain.iter().map(|d| (d.shown, d.median_pce)).collect::<Vec<_>>());
    for (name, developed, moved) in &all {
        let (mut by_plain, mut by_own, mut made) = (Vec::new(), Vec::new(), 0);
        for sensor in 0..sensors {
            let own = pattern("a", &photos(sensor, developed, [0, 0], 0, 12));
            made += usize::from(own.is_ok());
            let tried = photos(sensor, developed, *moved, 12, 20);
            by_plain.extend(energies(&tried, &plain[sensor as usize]));
            by_own.extend(own.map_or_else(|_| vec![0.0; tried.len()], |own| energies(&tried, &own)));
        }
        let told = |energies: &mut Vec<f64>| {
            let shown = energies.iter().filter(|e| **e >= MATCH_PCE).count();
            format!("{shown:3} of {} (middle {:5.0})", energies.len(), spread(energies)[1])
        };
        println!("{name:38} {} | {made} made, {}", told(&mut by_plain), told(&mut by_own));
        if name == &all[0].0 {
            assert!(by_plain.iter().all(|e| *e >= MATCH_PCE));
        }
    }
}
