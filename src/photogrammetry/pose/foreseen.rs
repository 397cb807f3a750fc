//! Which markers a photo should show, now that everything's pose is known.

use nalgebra::{Point3, Vector2};

use super::scene::Scene;
use crate::marker::{Kit, Marker};

/// The least side of a marker that is sure to be found, px.
const FINDABLE_PX: f64 = 24.0;
/// The least cosine between the line of sight and a marker's normal.
const FACING: f64 = 0.35;

/// A marker that a photo should show.
#[derive(Debug, Clone, Copy)]
pub struct Foreseen<'a> {
    /// Index of its carrier in the kit.
    pub carrier: usize,
    /// The marker.
    pub marker: &'a Marker,
    /// Where its corners should be, px.
    pub corners_px: [Vector2<f64>; 4],
}

impl Scene {
    /// The markers of carriers whose pose is known that lie in the picture of
    /// photo `j`, face the camera and are large enough; what stands before them
    /// is not known. `size_px` is the picture's width and height.
    pub fn foreseen<'a>(&self, kit: &'a Kit, j: usize, size_px: [f64; 2]) -> Vec<Foreseen<'a>> {
        let Some(solved) = self.photos[j].as_ref() else { return Vec::new() };
        let [width, height] = size_px;
        let inside = |p: &Vector2<f64>| p.x > 0.0 && p.y > 0.0 && p.x < width && p.y < height;
        let mut foreseen = Vec::new();
        for (k, carrier) in kit.carriers.iter().enumerate() {
            let Some(pose) = self.carriers[k].filter(|_| self.knows(k)) else { continue };
            let camera_from_carrier = solved.camera_from_world * pose;
            let eye = camera_from_carrier.inverse().point(&Point3::origin()).coords;
            for marker in &carrier.markers {
                let facing = (eye - marker.centre_mm).normalize().dot(&marker.normal());
                let project = |p| Some(solved.lens.project(&camera_from_carrier.point(&p).coords)?.pixel);
                let [Some(a), Some(b), Some(c), Some(d)] = marker.corners_mm().map(project) else { continue };
                let corners_px = [a, b, c, d];
                let side =
                    (0..4).map(|i| (corners_px[(i + 1) % 4] - corners_px[i]).norm()).fold(f64::INFINITY, f64::min);
                if facing > FACING && side > FINDABLE_PX && corners_px.iter().all(inside) {
                    foreseen.push(Foreseen { carrier: k, marker, corners_px });
                }
            }
        }
        foreseen
    }
}
