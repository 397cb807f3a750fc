//! Projection and derivatives against OpenCV, on random lenses and points.

use crate::lens_table;
use baywitness::camera::{Lens, LensModel};
use nalgebra::Vector3;
use rand::rngs::ChaCha8Rng;
use rand::{RngExt, SeedableRng};
use serde_json::{Value, json};

use super::harness::answer;

/// Largest deviations allowed, px and px relative to the derivative's size:
/// both sides compute in double precision.
const PIXEL_TOLERANCE: f64 = 1e-9;
const DERIVATIVE_TOLERANCE: f64 = 1e-9;

fn random_case(random: &mut ChaCha8Rng, model: LensModel) -> Value {
    let mut about = |centre: f64, half: f64| centre + half * random.random_range(-1.0..1.0);
    let (distortion, half) = match model {
        LensModel::BrownConrady => {
            (vec![about(0.0, 0.25), about(0.0, 0.1), about(0.0, 0.005), about(0.0, 0.005), about(0.0, 0.05)], 0.8)
        }
        LensModel::KannalaBrandt => {
            (vec![about(0.0, 0.1), about(0.0, 0.03), about(0.0, 0.01), about(0.0, 0.002), 0.0], 3.0)
        }
    };
    let points: Vec<[f64; 3]> = (0..40)
        .map(|_| {
            let depth = about(3000.0, 2800.0);
            [depth * about(0.0, half), depth * about(0.0, half), depth]
        })
        .collect();
    json!({
        "model": model.name(),
        "focal_px": [about(2500.0, 1500.0), about(2500.0, 1500.0)],
        "centre_px": [about(2000.0, 50.0), about(1500.0, 50.0)],
        "distortion": distortion,
        "points_mm": points,
    })
}

#[test]
fn projection_and_derivatives_agree_with_opencv() {
    let mut random = ChaCha8Rng::seed_from_u64(7);
    let cases: Vec<Value> = (0..60)
        .map(|i| random_case(&mut random, if i % 2 == 0 { LensModel::BrownConrady } else { LensModel::KannalaBrandt }))
        .collect();
    let Some(answer) = answer("lens.py", &["cv2", "numpy"], &json!({ "cases": cases })) else { return };
    let worst = lens_table::compare(&answer);
    println!("OpenCV {}: {worst:?}", answer["opencv"]);
    assert!(worst.compared > 2000, "{worst:?}");
    assert!(worst.pixel < PIXEL_TOLERANCE && worst.derivative < DERIVATIVE_TOLERANCE, "{worst:?}");
}

/// The inverse leads back through OpenCV's own projection.
#[test]
fn rays_lead_back_to_their_pixels_in_opencv() {
    let lenses = [
        (LensModel::BrownConrady, [0.081, -0.21, 0.0004, -0.0002, 0.12], 3050.0),
        (LensModel::BrownConrady, [-0.24, 0.06, -0.001, 0.002, -0.006], 2600.0),
        (LensModel::KannalaBrandt, [0.03, -0.012, 0.004, -0.0007, 0.0], 2200.0),
    ];
    let mut cases = Vec::new();
    let mut wanted = Vec::new();
    for (model, distortion, focal) in lenses {
        let lens = Lens { model, focal_px: [focal, focal], centre_px: [2015.0, 1508.0], distortion };
        let pixels: Vec<[f64; 2]> = (0..=8)
            .flat_map(|i| (0..=6).map(move |j| [f64::from(i) * 4031.0 / 8.0, f64::from(j) * 3023.0 / 6.0]))
            .collect();
        let points: Vec<[f64; 3]> = pixels
            .iter()
            .map(|p| {
                let ray: Vector3<f64> = lens.ray(&(*p).into()).unwrap() * 1000.0;
                [ray.x, ray.y, ray.z]
            })
            .collect();
        cases.push(json!({ "model": model.name(), "focal_px": lens.focal_px, "centre_px": lens.centre_px,
                           "distortion": distortion, "points_mm": points }));
        wanted.push(pixels);
    }
    let Some(answer) = answer("lens.py", &["cv2", "numpy"], &json!({ "cases": cases })) else { return };
    let mut worst = 0.0_f64;
    for (case, pixels) in answer["cases"].as_array().unwrap().iter().zip(&wanted) {
        let found: Vec<[f64; 2]> = serde_json::from_value(case["pixels"].clone()).unwrap();
        for (a, b) in found.iter().zip(pixels) {
            worst = worst.max((a[0] - b[0]).abs()).max((a[1] - b[1]).abs());
        }
    }
    println!("largest miss {worst:.1e} px");
    assert!(worst < PIXEL_TOLERANCE, "{worst}");
}
