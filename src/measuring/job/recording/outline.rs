//! Solved carriers drawn back into a photo.

use nalgebra::{Point3, Vector3};

use crate::geom::{Camera, Carrier, Pose};
use crate::marker::{self, Role};
use crate::pose::{Scene, SolvedPhoto};
use crate::record::Outline;

/// Arms of the cross at a carrier's origin, mm.
const CROSS_MM: f64 = 60.0;

/// Lines of every solved carrier that the photo was adjusted with.
pub(in crate::job) fn outlines(kit: &marker::Kit, scene: &Scene, photo: &SolvedPhoto) -> Vec<Outline> {
    let seen = |c: &marker::Carrier| c.markers.iter().any(|m| photo.views.iter().any(|v| v.id == m.id));
    kit.carriers
        .iter()
        .enumerate()
        .filter(|(_, c)| seen(c))
        .filter_map(|(k, c)| {
            let camera_from_carrier = photo.camera_from_world * scene.carriers[k]?;
            let lines = lines_mm(c).iter().filter_map(|l| projected(photo, &camera_from_carrier, l)).collect();
            Some(Outline { carrier: c.name.clone(), lines_px: lines })
        })
        .collect()
}

/// Borders of the markers and, except on the floor, a cross at the origin and
/// the frame around the face.
fn lines_mm(carrier: &marker::Carrier) -> Vec<Vec<Point3<f64>>> {
    let mut lines: Vec<Vec<Point3<f64>>> = carrier
        .markers
        .iter()
        .map(|m| {
            let [a, b, c, d] = m.corners_mm();
            vec![a, b, c, d, a]
        })
        .collect();
    if carrier.role == Role::Floor {
        return lines;
    }
    for axis in [Vector3::y(), Vector3::z()] {
        let arm = axis * CROSS_MM;
        lines.push(vec![Point3::from(-arm), Point3::from(arm)]);
    }
    if carrier.role == Role::Target {
        let reach = |axis: usize| {
            let corners = carrier.markers.iter().flat_map(marker::Marker::corners_mm);
            corners.map(|c| c[axis].abs()).fold(0.0, f64::max)
        };
        let (y, z) = (reach(1), reach(2));
        let corner = |sy: f64, sz: f64| Point3::new(0.0, sy * y, sz * z);
        lines.push(vec![corner(1.0, 1.0), corner(-1.0, 1.0), corner(-1.0, -1.0), corner(1.0, -1.0), corner(1.0, 1.0)]);
    }
    lines
}

fn projected(
    photo: &SolvedPhoto,
    camera_from_carrier: &Pose<Camera, Carrier>,
    line: &[Point3<f64>],
) -> Option<Vec<[f64; 2]>> {
    line.iter()
        .map(|p| {
            let pixel = photo.lens.project(&camera_from_carrier.point(p).coords)?.pixel;
            Some([pixel.x, pixel.y])
        })
        .collect()
}
