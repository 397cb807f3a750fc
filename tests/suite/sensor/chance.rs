//! How often a photo is said to be by a camera that did not take it.

use baywitness::pattern::{Digest, MATCH_PCE, Search, find};
use baywitness::photo::Luma;
use baywitness::synth::{InsidesSpec, Preset};
use rayon::prelude::*;

use super::real;
use super::rendered::{Developed, Lit};
use super::{grey, pattern, spread};
use crate::planned::number;

fn count(name: &str, mut energies: Vec<f64>) {
    let wrong = energies.iter().filter(|e| **e >= MATCH_PCE).count();
    let above = energies.iter().filter(|e| **e >= 40.0).count();
    println!(
        "{name}: {} pairs, {wrong} false, {above} above 40; lowest, middle, highest {:.1?}",
        energies.len(),
        spread(&mut energies)
    );
    assert_eq!(wrong, 0);
}

/// `BAYWITNESS_SENSORS` (72) rendered sensors, each one's pattern of eight photos against six photos of each of the others:
/// the same bay from other places, developed in three ways, which is all that they have in common. The pictures are small,
/// so that it takes minutes, and the patterns strong, so that these small ones have any.
#[test]
#[ignore = "some minutes: cargo test --features sensor-pattern --test suite sensor::chance -- --ignored --nocapture"]
fn false_ones_of_rendered_sensors() {
    let sensors = number("BAYWITNESS_SENSORS", 72.0) as u64;
    let mut lit = Lit::new(number("BAYWITNESS_SCALE", 0.066), 14);
    lit.strength = 0.03;
    let ways: Vec<Developed> = [(Preset::Plain, 92), (Preset::Mosaic, 85), (Preset::Halo, 75)]
        .map(|(preset, quality)| Developed { insides: InsidesSpec::preset(preset), quality })
        .to_vec();
    let way = |sensor: u64| &ways[sensor as usize % ways.len()];
    let shots = |sensor: u64| -> Vec<Luma> {
        (0..14).map(|i| lit.shot(i, sensor, 100 * sensor + i as u64, way(sensor))).collect()
    };
    let photos: Vec<Vec<Luma>> = (0..sensors).into_par_iter().map(shots).collect();
    let made: Vec<Option<Digest>> = photos.par_iter().map(|p| pattern("a", &p[..8]).ok()).collect();
    let known: Vec<(usize, &Digest)> = made.iter().enumerate().filter_map(|(i, d)| Some((i, d.as_ref()?))).collect();
    println!("{} of {sensors} sensors have a pattern", known.len());
    assert!(known.len() > 10);
    let pairs: Vec<(usize, &Digest, &Luma)> = known
        .iter()
        .flat_map(|(i, d)| photos.iter().enumerate().filter(move |(j, _)| j != i).map(move |(j, p)| (i, j, d, p)))
        .flat_map(|(i, _, d, photos)| photos[8..].iter().map(move |p| (*i, *d, p)))
        .collect();
    count("rendered", pairs.par_iter().map(|(_, d, p)| find(&grey(p), d, Search::Plain).pce).collect());
}

/// Real photos, mirrored and moved by whole blocks of JPEG, so that no shift brings pixels to their own, against the patterns of the
/// same phone: pixels that never met, behind the same lens, processing and compression. `BAYWITNESS_ROLLS` (30) of each.
#[test]
#[ignore = "some minutes, as false_ones_of_rendered_sensors"]
fn false_ones_of_a_real_sensor_moved_past_itself() {
    let (Some(room), Some(board)) = (real::photos("room"), real::photos("room/calibration")) else { return };
    let known = [pattern("a", &room).unwrap(), pattern("b", &board).unwrap()];
    let rolls = number("BAYWITNESS_ROLLS", 30.0) as usize;
    let moved = |photo: &Luma, n: usize| {
        let (width, height) = (photo.width(), photo.height());
        let (right, down) = (160 + 8 * (n * 7 % 62), 160 + 8 * (n * 5 % 36));
        let from = |i: usize| photo.at((i % width + right) % width, (i / width + down) % height);
        let rolled = Luma::new(width, height, (0..width * height).map(from).collect()).unwrap();
        // Always mirrored: photos that were only moved were found, by as much as they were moved, which was right.
        rolled.mirrored()
    };
    let all: Vec<&Luma> = room.iter().chain(&board).collect();
    let energies = (0..rolls * all.len()).into_par_iter().flat_map_iter(|k| {
        let photo = moved(all[k % all.len()], k / all.len());
        known.iter().map(|d| find(&grey(&photo), d, Search::Plain).pce).collect::<Vec<_>>()
    });
    count("real, moved", energies.collect());
}
