//! A sensor's pattern against SciPy's Wiener filter and NumPy's Fourier transforms; its file is decoded there anew.

use base64::Engine;
use base64::prelude::BASE64_STANDARD;
use baywitness::pattern::{Error, Estimate, Grey, Search, filtered, find};
use serde_json::{Value, json};

use super::harness::answer;

const WIDTH: usize = 420;
const HEIGHT: usize = 290;

/// A number in -0.5..0.5 that looks random and is the same everywhere (SplitMix64's mixing, Steele et al. 2014).
fn scattered(i: usize, seed: u64) -> f64 {
    let mut z = (i as u64).wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ seed.wrapping_mul(0xD1B5_4A32_D192_ED03);
    z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64 - 0.5
}

/// Slopes, a dark stripe and a burnt one, the sensor's gain, noise; the sensor moved by (right, down).
fn photo(n: u64, [right, down]: [usize; 2]) -> Vec<u8> {
    let value = |i: usize| {
        let (u, v) = (i % WIDTH, i / WIDTH);
        let stripe = if (100..130).contains(&(u + 7 * n as usize % 50)) { -90.0 } else { 0.0 };
        let scene = 90.0 + 0.3 * u as f64 + 40.0 * ((v as f64 + 9.0 * n as f64) / 30.0).sin() + stripe;
        let gain = 1.0 + 0.03 * scattered((v + down) * 1000 + u + right, 99);
        (scene * gain + 5.0 * scattered(i, n)).round().clamp(0.0, 255.0) as u8
    };
    (0..WIDTH * HEIGHT).map(value).collect()
}

fn grey(pixels: &[u8]) -> Grey<'_> {
    Grey { width: WIDTH, height: HEIGHT, pixels }
}

#[test]
fn noise_pattern_file_and_energy_agree_with_scipy_and_numpy() {
    let photos: Vec<Vec<u8>> = (1..9).map(|n| photo(n, [0, 0])).collect();
    let mut estimate = Estimate::default();
    photos.iter().for_each(|p| estimate.add(&grey(p), "photo").unwrap());
    let again = |look: &mut dyn FnMut(&Grey<'_>)| {
        photos.iter().for_each(|p| look(&grey(p)));
        Ok::<(), Error>(())
    };
    let digest = estimate.digest("camera", again).unwrap();
    for (n, moved) in [(20, [0, 0]), (21, [6, 11])] {
        let pixels = photo(n, moved);
        let file = BASE64_STANDARD.encode(digest.to_bytes());
        let asked = json!({ "width": WIDTH, "height": HEIGHT, "pixels": pixels, "noise": 3.0, "file": file });
        let Some(answer) = answer("sensor.py", &["numpy", "scipy", "tomllib"], &asked) else { return };
        let theirs: Vec<f64> = answer["noise"].as_array().unwrap().iter().filter_map(Value::as_f64).collect();
        let ours = filtered(&grey(&pixels)).values;
        let worst = ours.iter().zip(&theirs).map(|(a, b)| (f64::from(*a) - b).abs()).fold(0.0, f64::max);
        let found = find(&grey(&pixels), &digest, Search::Plain);
        println!("noise differs by at most {worst:.1e}; energy {:.2} and {}", found.pce, answer["energy"]);
        assert!(ours.len() == theirs.len() && worst < 1e-4, "{worst}");
        let energy = answer["energy"].as_f64().unwrap();
        assert!((found.pce / energy - 1.0).abs() < 1e-3 && energy > 60.0, "{} {energy}", found.pce);
        assert_eq!(json!(found.shift_px), answer["shift"]);
        // The sensor's pixel that is `moved` away lies at this photo's first one.
        assert_eq!(found.shift_px, moved.map(|m| -(m as i32)));
    }
}
