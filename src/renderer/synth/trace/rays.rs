//! The viewing ray of every pixel position, quickly: exact rays on a grid,
//! bicubic in between.

use nalgebra::{Vector2, Vector3};
use rayon::prelude::*;

use super::facet::Ray;
use crate::camera::Lens;
use crate::synth::turning::Turning;
use crate::synth::view::View;

/// Grid step, px. A lens bends so gently that cubic interpolation over eight
/// pixels is exact to 1e-6 px (tested).
const STEP: usize = 8;
/// Grid nodes outside of the picture on each side.
const APRON: usize = 2;

/// Rays of one view.
#[derive(Debug, Clone)]
pub(crate) struct Rays {
    columns: usize,
    rows: usize,
    nodes: Vec<[f64; 2]>,
    eye: Vector3<f64>,
    /// Camera axes in the design frame.
    axes: [Vector3<f64>; 3],
    turning: Option<Turning>,
}

impl Rays {
    /// Prepares the rays of a view. Where the lens model ends, rays point as
    /// the undistorted pixel's does, so that a picture has no holes.
    pub(crate) fn of(view: &View) -> Self {
        let nodes_for = |pixels: u32| pixels as usize / STEP + 2 + 2 * APRON;
        let (columns, rows) = (nodes_for(view.size_px[0]), nodes_for(view.size_px[1]));
        let position = |i: usize| ((i as f64) - APRON as f64) * STEP as f64 - 0.5;
        let nodes = (0..columns * rows)
            .into_par_iter()
            .map(|i| {
                let pixel = Vector2::new(position(i % columns), position(i / columns));
                view.lens.ray(&pixel).map_or_else(|| undistorted(&view.lens, &pixel), |r| [r.x, r.y])
            })
            .collect();
        let world_from_camera = view.camera_from_world.inverse();
        let axes = [Vector3::x(), Vector3::y(), Vector3::z()].map(|axis| world_from_camera.direction(&axis));
        Rays { columns, rows, nodes, eye: world_from_camera.origin_mm(), axes, turning: view.turning }
    }

    /// The ray of a pixel position; its direction has length one along the row's optical axis.
    pub(crate) fn at(&self, u: f64, v: f64) -> Ray {
        let [x, y] = self.flat(u, v);
        let direction = match &self.turning {
            None => self.axes[0] * x + self.axes[1] * y + self.axes[2],
            Some(turning) => {
                let then = turning.middle_from_row(v) * Vector3::new(x, y, 1.0);
                self.axes[0] * then.x + self.axes[1] * then.y + self.axes[2] * then.z
            }
        };
        Ray { origin: self.eye, direction }
    }

    /// The last position along u and v that has a ray.
    pub(crate) fn size(&self) -> [f64; 2] {
        [self.columns, self.rows].map(|n| ((n - 2 * APRON) * STEP) as f64 - 1.0)
    }

    /// Four planes through the eye about a rectangle of pixel positions, with
    /// normals outwards, a pixel wider than the rectangle: a lens bends its
    /// sides by far less over a few pixels.
    pub(crate) fn pyramid(&self, low: [f64; 2], high: [f64; 2]) -> (Vector3<f64>, [Vector3<f64>; 4]) {
        let [width, height] = self.size();
        let at = |u: f64, v: f64| self.at(u.clamp(-1.5, width), v.clamp(-1.5, height)).direction;
        let corners = [
            at(low[0] - 1.0, low[1] - 1.0),
            at(high[0] + 1.0, low[1] - 1.0),
            at(high[0] + 1.0, high[1] + 1.0),
            at(low[0] - 1.0, high[1] + 1.0),
        ];
        let middle: Vector3<f64> = corners.iter().sum();
        let planes = std::array::from_fn(|i| {
            let normal = corners[i].cross(&corners[(i + 1) % 4]);
            if normal.dot(&middle) > 0.0 { -normal } else { normal }
        });
        (self.eye, planes)
    }

    /// Width of one pixel at depth one.
    pub(crate) fn pixel_width(&self) -> f64 {
        let middle = self.nodes.len() / 2 / self.columns * self.columns + self.columns / 2;
        (self.nodes[middle + 1][0] - self.nodes[middle][0]).abs() / STEP as f64
    }

    fn flat(&self, u: f64, v: f64) -> [f64; 2] {
        let place = |p: f64| {
            let g = (p + 0.5) / STEP as f64 + APRON as f64;
            let base = g.floor();
            (base as usize, weights(g - base))
        };
        let ((i, wu), (j, wv)) = (place(u), place(v));
        let mut sum = [0.0; 2];
        for (dj, wv) in wv.iter().enumerate() {
            let row = (j + dj - 1) * self.columns + i - 1;
            let nodes = &self.nodes[row..row + 4];
            for (node, wu) in nodes.iter().zip(&wu) {
                sum[0] += wu * wv * node[0];
                sum[1] += wu * wv * node[1];
            }
        }
        sum
    }
}

/// Lagrange weights of four nodes at -1, 0, 1, 2.
fn weights(t: f64) -> [f64; 4] {
    let (a, b, c, d) = (t + 1.0, t, t - 1.0, t - 2.0);
    [-b * c * d / 6.0, a * c * d / 2.0, -a * b * d / 2.0, a * b * c / 6.0]
}

fn undistorted(lens: &Lens, pixel: &Vector2<f64>) -> [f64; 2] {
    [(pixel.x - lens.centre_px[0]) / lens.focal_px[0], (pixel.y - lens.centre_px[1]) / lens.focal_px[1]]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::camera::LensModel;
    use crate::geom::Pose;

    #[test]
    fn interpolated_rays_hit_their_pixel() {
        let brown = Lens {
            model: LensModel::BrownConrady,
            focal_px: [3050.0, 3049.0],
            centre_px: [2010.0, 1500.0],
            distortion: [0.09, -0.22, 0.0006, -0.0004, 0.13],
        };
        let fisheye = Lens {
            model: LensModel::KannalaBrandt,
            focal_px: [2200.0, 2200.0],
            distortion: [0.02, -0.01, 0.003, -0.001, 0.0],
            ..brown
        };
        for lens in [brown, fisheye] {
            let view = View { lens, camera_from_world: Pose::identity(), size_px: [4032, 3024], turning: None };
            let rays = Rays::of(&view);
            let mut worst = 0.0f64;
            for i in 0..400 {
                let pixel = Vector2::new(f64::from(i) * 10.079 - 0.4, f64::from((i * 7919) % 400) * 7.56 - 0.3);
                let back = lens.project(&rays.at(pixel.x, pixel.y).direction).unwrap().pixel;
                worst = worst.max((back - pixel).norm());
            }
            assert!(worst < 1e-5, "{worst}");
        }
    }
}
