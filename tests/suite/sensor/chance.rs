//! How often a photo is said to be by a camera that did not take it.

use baywitness::pattern::{Digest, MATCH_PCE, Search, find};
use baywitness::photo::Luma;
use baywitness::synth::{InsidesSpec, Preset};
use rayon::prelude::*;

use super::rendered::{Developed, Lit};
use super::real;
use super::{cut, grey, pattern, spread};
use crate::planned::number;

fn count(name: &str, mut energies: Vec<f64>) {
    let wrong = energies.iter().filter(|e| **e >= MATCH_PCE).count();
    let above = energies.iter().filter(|e| **e >= 40.0).count();
    println!("{name}: {} pairs, {wrong} false, {above} above 40; lowest, middle, highest {:.1?}", energies.len(), spread(&mut energies));
    assert_eq!(wrong, 0);
}

/// `BAYWITNESS_SENSORS` (60) rendered sensors, each one's pattern of eight photos against photos of all the others: the
/// same bay from the same places, developed in three ways, which is all that they have in common.
#[test]
#[ignore = "some minutes: cargo test --features sensor-pattern --test suite sensor::chance -- --ignored --nocapture"]
fn false_ones_of_rendered_sensors() {
    let sensors = number("BAYWITNESS_SENSORS", 60.0) as u64;
    let lit = Lit::new(number("BAYWITNESS_SCALE", 0.16), 8);
    let ways: Vec<Developed> = [(Preset::Plain, 92), (Preset::Mosaic, 85), (Preset::Halo, 75)]
        .map(|(preset, quality)| Developed { insides: InsidesSpec::preset(preset), quality })
        .to_vec();
    let way = |sensor: u64| &ways[sensor as usize % ways.len()];
    let shots = |sensor: u64| -> Vec<Luma> { (0..8).map(|i| lit.shot(i, sensor, 100 * sensor + i as u64, way(sensor))).collect() };
    let photos: Vec<Vec<Luma>> = (0..sensors).into_par_iter().map(shots).collect();
    let made: Vec<Option<Digest>> = photos.par_iter().map(|p| pattern("a", p).ok()).collect();
    let known: Vec<(usize, &Digest)> = made.iter().enumerate().filter_map(|(i, d)| Some((i, d.as_ref()?))).collect();
    println!("{} of {sensors} sensors have a pattern", known.len());
    assert!(known.len() > 10);
    let pairs: Vec<(usize, &Digest, &Luma)> = known
        .iter()
        .flat_map(|(i, d)| photos.iter().enumerate().filter(move |(j, _)| j != i).map(move |(j, p)| (i, j, d, p)))
        .flat_map(|(i, _, d, photos)| photos.iter().map(move |p| (*i, *d, p)))
        .collect();
    count("rendered", pairs.par_iter().map(|(_, d, p)| find(&grey(p), d, Search::Plain).pce).collect());
}

/// Parts of real photos against the pattern of other parts of the same sensor: pixels that never met, behind the same
/// processing and compression, as two phones of a kind would be. The parts begin where JPEG's blocks do.
#[test]
#[ignore = "some minutes, as false_ones_of_rendered_sensors"]
fn false_ones_between_parts_of_a_real_sensor() {
    let (Some(room), Some(board)) = (real::photos("room"), real::photos("room/calibration")) else { return };
    let all: Vec<&Luma> = room.iter().chain(&board).collect();
    let size = [200, 120];
    let places: Vec<[usize; 2]> = (0..5).flat_map(|v| (0..4).map(move |u| [u * 200, v * 120])).collect();
    let made: Vec<(usize, Digest)> = places
        .par_iter()
        .enumerate()
        .filter_map(|(i, place)| {
            let parts: Vec<Luma> = all.iter().map(|p| cut(p, *place, size)).collect();
            Some((i, pattern("a", &parts).ok()?))
        })
        .collect();
    println!("{} of {} parts have a pattern", made.len(), places.len());
    let pairs: Vec<(&Digest, [usize; 2], &Luma, bool)> = made
        .iter()
        .flat_map(|(i, d)| places.iter().enumerate().map(move |(j, place)| (d, *place, j == *i)))
        .flat_map(|(d, place, own)| all.iter().map(move |p| (d, place, *p, own)))
        .collect();
    let energy = |(d, place, photo, own): &(&Digest, [usize; 2], &Luma, bool)| {
        (find(&grey(&cut(photo, *place, size)), d, Search::Plain).pce, *own)
    };
    let energies: Vec<(f64, bool)> = pairs.par_iter().map(energy).collect();
    count("real parts", energies.iter().filter(|(_, own)| !own).map(|(e, _)| *e).collect());
}
