//! What a look at one photo of 12 megapixels costs.

use std::time::Instant;

use baywitness::pattern::{Search, find};
use baywitness::photo::Luma;

use super::{grey, pattern};

/// Grey noise about a slope, 12 MP.
fn photo(seed: u64, pattern_of: u64) -> Luma {
    let (width, height) = (4032, 3024);
    let mix = |mut z: u64| {
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        (((z ^ (z >> 31)) >> 40) as f32 / (1u64 << 24) as f32 - 0.5) * 3.46
    };
    let value = |i: usize| {
        let light = 100.0 + 120.0 * (i % width) as f32 / width as f32;
        let gain = 1.0 + 0.006 * mix((i as u64).wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ pattern_of);
        let noise = 2.0 * mix((i as u64).wrapping_mul(0xD1B5_4A32_D192_ED03) ^ (seed << 40));
        (light * gain + noise).round().clamp(0.0, 255.0) as u8
    };
    Luma::new(width, height, (0..width * height).map(value).collect()).unwrap()
}

#[test]
#[ignore = "a figure of time: cargo test --features sensor-pattern --test suite sensor::speed -- --ignored --nocapture"]
fn seconds_for_twelve_megapixels() {
    let photos: Vec<Luma> = (0..8).map(|i| photo(i, 1)).collect();
    let start = Instant::now();
    let digest = pattern("a", &photos).unwrap();
    println!("pattern of eight: {:.2} s, {} bytes", start.elapsed().as_secs_f64(), digest.to_bytes().len());
    assert!(digest.to_bytes().len() <= 1_000_000);
    let time = |name: &str, photo: &Luma, search| {
        let start = Instant::now();
        let found = find(&grey(photo), &digest, search);
        println!("{name}: {:.2} s, energy {:.0}", start.elapsed().as_secs_f64(), found.pce);
        found
    };
    assert!(time("own", &photo(20, 1), Search::Plain).pce > 100.0);
    let stranger = photo(21, 2);
    assert!(time("stranger", &stranger, Search::Plain).pce < 100.0);
    assert!(time("stranger, scaled", &stranger, Search::Scaled).pce < 100.0);
    let part = super::cut(&photos[0], [100, 300], [3000, 2500]);
    assert!(time("cropped", &part, Search::Plain).pce > 100.0);
    let part = super::cut(&stranger, [100, 300], [3000, 2500]);
    assert!(time("stranger, cropped", &part, Search::Plain).pce < 100.0);
}
