//! Compares lenses with OpenCV's values, as tests/suite/reference/lens.py writes them.

use baywitness::camera::{Lens, LensModel};
use nalgebra::Vector3;
use serde::Deserialize;
use serde_json::Value;

#[derive(Deserialize)]
struct Case {
    model: String,
    focal_px: [f64; 2],
    centre_px: [f64; 2],
    distortion: Vec<f64>,
    points_mm: Vec<[f64; 3]>,
    pixels: Vec<[f64; 2]>,
    d_point: Vec<[[f64; 3]; 2]>,
    d_lens: Vec<[[f64; 9]; 2]>,
}

/// How far ours are from OpenCV's at most.
#[derive(Debug, Default)]
pub(crate) struct Worst {
    /// Points compared; those that our lens refuses (folded over) are not.
    pub(crate) compared: usize,
    /// Pixel position, px.
    pub(crate) pixel: f64,
    /// Derivative, relative to the larger of itself and 1.
    pub(crate) derivative: f64,
}

impl Case {
    fn lens(&self) -> Lens {
        let model = [LensModel::BrownConrady, LensModel::KannalaBrandt].into_iter().find(|m| m.name() == self.model);
        let mut distortion = [0.0; 5];
        distortion[..self.distortion.len()].copy_from_slice(&self.distortion);
        Lens { model: model.unwrap(), focal_px: self.focal_px, centre_px: self.centre_px, distortion }
    }
}

/// Compares every point of an answer.
pub(crate) fn compare(answer: &Value) -> Worst {
    let cases: Vec<Case> = serde_json::from_value(answer["cases"].clone()).unwrap();
    let mut worst = Worst::default();
    for case in &cases {
        let lens = case.lens();
        for (i, point) in case.points_mm.iter().enumerate() {
            let Some(found) = lens.project(&Vector3::from(*point)) else { continue };
            worst.compared += 1;
            for axis in 0..2 {
                worst.pixel = worst.pixel.max((found.pixel[axis] - case.pixels[i][axis]).abs());
                let ours =
                    found.d_point.row(axis).iter().chain(found.d_lens.row(axis).iter()).copied().collect::<Vec<_>>();
                let theirs = case.d_point[i][axis].iter().chain(&case.d_lens[i][axis]);
                for (a, b) in ours.iter().zip(theirs) {
                    worst.derivative = worst.derivative.max((a - b).abs() / b.abs().max(1.0));
                }
            }
        }
    }
    worst
}
