//! Lenses: against OpenCV's values, central differences, and there and back.

#![allow(clippy::unwrap_used, reason = "a test may stop where its own helper fails")]

use crate::lens_table;
use baywitness::camera::{Lens, LensModel};
use nalgebra::{Vector2, Vector3};

/// A lens with the size of its grid.
fn lenses() -> [(&'static str, Lens, [f64; 2]); 7] {
    use LensModel::{BrownConrady, KannalaBrandt};
    let lens = |model, focal: f64, centre_px, distortion| Lens {
        model,
        focal_px: [focal, focal * 0.999],
        centre_px,
        distortion,
    };
    [
        (
            "phone",
            lens(BrownConrady, 3050.1, [2014.9, 1508.3], [0.081, -0.21, 0.0004, -0.0002, 0.12]),
            [4032.0, 3024.0],
        ),
        (
            "webcam",
            lens(BrownConrady, 532.8, [342.5, 233.9], [-0.2809, 0.025, 0.00122, -0.00014, 0.16]),
            [640.0, 480.0],
        ),
        ("barrel", lens(BrownConrady, 1300.0, [960.0, 540.0], [-0.24, 0.06, -0.001, 0.002, -0.006]), [1920.0, 1080.0]),
        ("cushion", lens(BrownConrady, 2500.0, [1990.0, 1500.0], [0.2, 0.4, 0.01, -0.008, -0.3]), [4000.0, 3000.0]),
        ("pinhole", lens(BrownConrady, 2000.0, [2000.0, 1500.0], [0.0; 5]), [4000.0, 3000.0]),
        ("wide", lens(KannalaBrandt, 2200.0, [2020.0, 1510.0], [0.03, -0.012, 0.004, -0.0007, 0.0]), [4032.0, 3024.0]),
        (
            "phone as fisheye",
            lens(KannalaBrandt, 3050.1, [2014.9, 1508.3], [0.41, 0.1, -0.3, 0.2, 0.0]),
            [4032.0, 3024.0],
        ),
    ]
}

/// Pixels over the frame and `margin` of its size beyond it.
fn grid(size: [f64; 2], margin: f64) -> impl Iterator<Item = Vector2<f64>> {
    const STEPS: i32 = 24;
    let place =
        move |i: i32, side: f64| (f64::from(i) / f64::from(STEPS) * (1.0 + 2.0 * margin) - margin) * (side - 1.0);
    (0..=STEPS).flat_map(move |i| (0..=STEPS).map(move |j| Vector2::new(place(i, size[0]), place(j, size[1]))))
}

#[test]
fn projection_and_derivatives_equal_opencv_s() {
    // Written by tests/suite/reference/lens.py --table (OpenCV 5.0.0).
    let table = serde_json::from_str(include_str!("../data/lens_table.json")).unwrap();
    let worst = lens_table::compare(&table);
    assert_eq!(worst.compared, 6 * 12);
    assert!(worst.pixel < 1e-9 && worst.derivative < 1e-9, "{worst:?}");
}

#[test]
fn every_pixel_of_the_frame_and_around_it_has_a_ray_that_leads_back() {
    for (name, lens, size) in lenses() {
        for pixel in grid(size, 0.2) {
            let ray = lens.ray(&pixel).unwrap_or_else(|| panic!("{name}: no ray at {pixel}"));
            let back = lens.project(&(ray * 2345.0)).unwrap_or_else(|| panic!("{name}: refused at {pixel}")).pixel;
            assert!((back - pixel).norm() < 1e-9, "{name}: {pixel} comes back as {back}");
        }
    }
}

#[test]
fn derivatives_equal_central_differences() {
    for (name, lens, size) in lenses() {
        for pixel in grid(size, 0.0) {
            let point: Vector3<f64> = lens.ray(&pixel).unwrap() * 1500.0;
            let found = lens.project(&point).unwrap();
            for axis in 0..3 {
                let mut step = Vector3::zeros();
                step[axis] = 0.01;
                let [ahead, behind] = [point + step, point - step].map(|p| lens.project(&p).unwrap().pixel);
                let numeric = (ahead - behind) / 0.02;
                assert!((numeric - found.d_point.column(axis)).norm() < 1e-6, "{name} point {axis} at {pixel}");
            }
            for parameter in 0..lens.model.parameters() {
                let changed = |sign: f64| {
                    let mut other = lens;
                    match parameter {
                        0..=1 => other.focal_px[parameter] += sign * 0.01,
                        2..=3 => other.centre_px[parameter - 2] += sign * 0.01,
                        _ => other.distortion[parameter - 4] += sign * 1e-6,
                    }
                    other.project(&point).unwrap().pixel
                };
                let step = if parameter < 4 { 0.02 } else { 2e-6 };
                let numeric = (changed(1.0) - changed(-1.0)) / step;
                let analytic = found.d_lens.column(parameter);
                assert!((numeric - analytic).norm() < 1e-5 * analytic.norm().max(1.0), "{name} parameter {parameter}");
            }
        }
    }
}

#[test]
fn rays_that_the_model_folds_over_are_refused() {
    // 1 + 3 k1 r^2 is zero at r = 1 / sqrt(0.9).
    let lens = Lens {
        model: LensModel::BrownConrady,
        focal_px: [1000.0, 1000.0],
        centre_px: [0.0, 0.0],
        distortion: [-0.3, 0.0, 0.0, 0.0, 0.0],
    };
    let turn = 1.0 / 0.9_f64.sqrt();
    assert!(lens.project(&Vector3::new(0.999 * turn, 0.0, 1.0)).is_some());
    assert!(lens.project(&Vector3::new(1.001 * turn, 0.0, 1.0)).is_none());
    let outermost = 1000.0 * turn * (1.0 - 0.3 * turn * turn);
    assert!(lens.ray(&Vector2::new(0.999 * outermost, 0.0)).is_some());
    assert!(lens.ray(&Vector2::new(1.001 * outermost, 0.0)).is_none());
    assert!(lens.project(&Vector3::new(0.0, 0.0, -1.0)).is_none());
    assert!(lens.project(&Vector3::new(f64::NAN, 0.0, 1.0)).is_none());
    assert!(lens.ray(&Vector2::new(f64::NAN, 0.0)).is_none());
    assert!(lens.ray(&Vector2::new(1e300, 0.0)).is_none());
}
