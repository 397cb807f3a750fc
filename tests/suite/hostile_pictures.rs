//! Pictures made to take time: what a search for markers costs is bounded by the
//! size of a picture, whatever is drawn on it.
//!
//! The default run asks pictures of 3 megapixels against a plain one; with
//! `--ignored` they have as many as a photo may have, and the seconds are printed.

#![cfg(test)]
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "a test stops where its own helper fails, and tells")]

use std::time::{Duration, Instant};

use baywitness::detect::find_markers;
use baywitness::marker::Dictionary;
use baywitness::photo::{Luma, MAX_PIXELS};
use rand::rngs::ChaCha8Rng;
use rand::{RngExt, SeedableRng};

/// What a pixel of a hostile picture shows, by its place.
type Draw = fn(usize, usize) -> u8;

/// Squares, rings and grids at the sizes that a search takes for outlines.
const DRAWN: [(&str, Draw); 7] = [
    ("squares of 12 px", |u, v| if (u / 12 + v / 12) % 2 == 0 { 30 } else { 220 }),
    ("squares of 40 px", |u, v| if (u / 40 + v / 40) % 2 == 0 { 30 } else { 220 }),
    ("dark boxes 24 px apart", |u, v| if u % 24 < 16 && v % 24 < 16 { 30 } else { 220 }),
    ("boxes in boxes", |u, v| {
        let from_middle = (u % 200).abs_diff(100).max((v % 200).abs_diff(100));
        if from_middle / 5 % 2 == 0 { 30 } else { 220 }
    }),
    ("rings", |u, v| {
        let (x, y) = ((u % 300) as f64 - 150.0, (v % 300) as f64 - 150.0);
        if ((x.hypot(y) / 7.0) as usize).is_multiple_of(2) { 30 } else { 220 }
    }),
    ("frames with a grid inside", |u, v| {
        let (x, y) = (u % 60, v % 60);
        let frame = x < 48 && y < 48 && (x < 6 || y < 6 || x >= 42 || y >= 42);
        if frame || (x < 48 && y < 48 && (x / 6 + y / 6) % 2 == 0) { 30 } else { 220 }
    }),
    ("stripes", |u, v| if (u + v) / 9 % 2 == 0 { 30 } else { 220 }),
];

fn drawn(width: usize, height: usize, draw: impl FnMut(usize) -> u8) -> Luma {
    Luma::new(width, height, (0..width * height).map(draw).collect()).unwrap()
}

/// The least of `tries` times of a search.
fn seconds(luma: &Luma, tries: usize) -> Duration {
    let time = |_| {
        let clock = Instant::now();
        find_markers(luma, Dictionary::tag36h11());
        clock.elapsed()
    };
    (0..tries).map(time).min().unwrap()
}

/// Each hostile picture's time in units of that for soft noise, as a plain wall's.
fn ratios(width: usize, height: usize, tries: usize) -> Vec<(&'static str, f64, Duration)> {
    let mut random = ChaCha8Rng::seed_from_u64(11);
    let plain = seconds(&drawn(width, height, |i| 120 + (i % 7) as u8 + (i / width * 60 / height) as u8), tries);
    let mut asked: Vec<(&str, Luma)> =
        DRAWN.iter().map(|(name, draw)| (*name, drawn(width, height, |i| draw(i % width, i / width)))).collect();
    asked.push(("noise", drawn(width, height, |_| random.random())));
    asked
        .iter()
        .map(|(name, luma)| {
            let time = seconds(luma, tries);
            println!("{name}: {:.2} s, {:.1} times a plain one", time.as_secs_f64(), time.div_duration_f64(plain));
            (*name, time.div_duration_f64(plain), time)
        })
        .collect()
}

/// Beside other tests on two cores, hence the wide limit.
#[test]
fn a_search_ends_soon_whatever_is_drawn() {
    for (name, _, time) in ratios(2000, 1500, 1) {
        assert!(time < Duration::from_secs(20), "{name}: {time:?}");
    }
}

#[test]
#[ignore = "a minute: pictures as large as a photo may be"]
fn the_largest_hostile_picture_takes_no_minute() {
    let width = 8944;
    for (name, _, time) in ratios(width, MAX_PIXELS / width, 1) {
        assert!(time < Duration::from_secs(60), "{name}: {time:?}");
    }
}
