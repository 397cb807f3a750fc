//! Which markers a photo shows, and exactly where.

use nalgebra::{Point3, Vector2, Vector3};

use crate::marker::CELLS;
use crate::synth::place::PlacedMarker;
use crate::synth::trace::{Model, Ray};
use crate::synth::view::View;

/// A marker in a photo.
#[derive(Debug, Clone, PartialEq)]
pub struct SeenMarker {
    /// Code number.
    pub id: u32,
    /// Corners on the stored grid (pixel centres are whole numbers): top-left,
    /// top-right, bottom-right, bottom-left of the upright code.
    pub corners_px: [[f64; 2]; 4],
    /// Which of them nothing hides and the picture holds.
    pub corners_visible: [bool; 4],
    /// Share of the marker's area that is seen.
    pub visible: f64,
    /// Side without foreshortening, px.
    pub side_px: f64,
    /// Angle between the face's normal and the line of sight, degrees.
    pub tilt_deg: f64,
}

/// The markers that a view shows at least in part.
pub(crate) fn seen<'a>(model: &Model, view: &View, markers: impl Iterator<Item = &'a PlacedMarker>) -> Vec<SeenMarker> {
    markers.filter_map(|marker| see(model, view, marker)).collect()
}

fn see(model: &Model, view: &View, marker: &PlacedMarker) -> Option<SeenMarker> {
    let eye = view.eye_mm();
    let centre = marker.pose.origin_mm();
    let towards = eye - centre;
    let cosine = marker.normal().dot(&towards) / towards.norm();
    if cosine <= 0.0 {
        return None;
    }
    let corners_mm = marker.corners_mm();
    let mut corners_px = [[0.0; 2]; 4];
    for (pixel, corner) in corners_px.iter_mut().zip(&corners_mm) {
        let p = view.project(corner)?;
        *pixel = [p.x, p.y];
    }
    let clear = |point: &Point3<f64>, pixel: &Vector2<f64>| view.contains(pixel) && !hidden(model, &eye, point);
    let corners_visible = std::array::from_fn(|i| clear(&corners_mm[i], &Vector2::from(corners_px[i])));
    let points = cell_centres(marker);
    let shown = points.iter().filter(|p| view.project(p).is_some_and(|pixel| clear(p, &pixel))).count();
    if shown == 0 {
        return None;
    }
    let depth = view.camera_from_world.point(&Point3::from(centre)).z;
    Some(SeenMarker {
        id: marker.id,
        corners_px,
        corners_visible,
        visible: shown as f64 / points.len() as f64,
        side_px: (marker.size_mm[0] * marker.size_mm[1] * view.lens.focal_px[0] * view.lens.focal_px[1]).sqrt() / depth,
        tilt_deg: cosine.clamp(-1.0, 1.0).acos().to_degrees(),
    })
}

fn hidden(model: &Model, eye: &Vector3<f64>, point: &Point3<f64>) -> bool {
    let direction = point.coords - eye;
    // The marker's own sheet does not hide it: stop short of it.
    let before = 1.0 - 0.3 / direction.norm();
    model.blocked(&Ray { origin: *eye, direction }, 0.0, before)
}

fn cell_centres(marker: &PlacedMarker) -> Vec<Point3<f64>> {
    let at = |i: usize, size: f64| ((i as f64 + 0.5) / CELLS as f64 - 0.5) * size;
    (0..CELLS * CELLS)
        .map(|i| {
            marker.pose.point(&Point3::new(at(i % CELLS, marker.size_mm[0]), at(i / CELLS, marker.size_mm[1]), 0.0))
        })
        .collect()
}
