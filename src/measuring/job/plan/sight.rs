//! What a photo from a station will show.

use nalgebra::{Matrix3, Point3, Vector2, Vector3};

use super::bay::{ExpectedBay, Slab};
use crate::camera::Profile;
use crate::detect::{U_EDGE_OFFSET_PX, expected_covariance};
use crate::geom::{Camera, Pose, World};
use crate::marker::{Kit, Role};
use crate::pose::{PhotoView, U_EDGE_BY_SIZE_PX, View};

/// A marker must be at least so large across its narrow side, px:
/// one for each cell.
const LEAST_WIDTH_PX: f64 = 8.0;
/// And along its longer side.
const LEAST_SIDE_PX: f64 = 12.0;
/// Nearer than a phone focuses without moving its lens far, mm (common practice, no source).
const LEAST_DISTANCE_MM: f64 = 500.0;
/// Corners this near to the picture's edge are not counted on, px.
const MARGIN_PX: f64 = 6.0;
/// A paper seen flatter than this shines or curls, cosine (80 degrees).
const LEAST_COSINE: f64 = 0.17;

/// Where a person stands and looks, vehicle frame, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Station {
    pub(super) eye: Point3<f64>,
    pub(super) look_at: Point3<f64>,
}

impl Station {
    /// An upright picture.
    pub(super) fn camera_from_world(&self) -> Pose<Camera, World> {
        let ahead = (self.look_at - self.eye).try_normalize(1e-9).unwrap_or(-Vector3::x());
        let right = ahead.cross(&Vector3::z()).try_normalize(1e-9).unwrap_or(Vector3::y());
        let down = ahead.cross(&right);
        Pose::<World, Camera>::from_matrix(Matrix3::from_columns(&[right, down, ahead]), self.eye.coords).inverse()
    }
}

/// A face of a carrier: markers in one plane and the panel that bears them.
#[derive(Debug, Clone)]
struct Face {
    carrier: usize,
    markers: Vec<usize>,
    panel: Slab,
}

/// The bay prepared for looking at it.
#[derive(Debug, Clone)]
pub(super) struct Sight<'a> {
    kit: &'a Kit,
    bay: &'a ExpectedBay,
    faces: Vec<Face>,
    body: Vec<Slab>,
    /// Corner noise in units of what is expected of a plain photo.
    noise: f64,
}

impl<'a> Sight<'a> {
    pub(super) fn new(kit: &'a Kit, bay: &'a ExpectedBay, noise: f64) -> Self {
        let mut faces = Vec::new();
        for (k, carrier) in kit.carriers.iter().enumerate() {
            let Some(pose) = bay.carriers[k] else { continue };
            let mut left: Vec<usize> = (0..carrier.markers.len()).collect();
            while let Some(first) = left.first().copied() {
                let m = &carrier.markers[first];
                let same = |i: &usize| {
                    let o = &carrier.markers[*i];
                    o.normal().dot(&m.normal()) > 0.999 && (o.centre_mm - m.centre_mm).dot(&m.normal()).abs() < 3.0
                };
                let (own, rest): (Vec<usize>, Vec<usize>) = left.into_iter().partition(same);
                left = rest;
                faces.push(Face { carrier: k, panel: panel(carrier, &own, pose), markers: own });
            }
        }
        let mut body = bay.sizes.boxes();
        for k in kit.with_role(Role::Target) {
            if let Some(pose) = bay.carriers[k] {
                let o = pose.origin_mm();
                let (low, high) = (Point3::new(o.x - 30.0, o.y - 30.0, 0.0), Point3::new(o.x + 20.0, o.y + 30.0, o.z));
                body.push(Slab { pose: Pose::identity(), low, high });
            }
        }
        Sight { kit, bay, faces, body, noise }
    }

    /// What a photo shows: exact corners with the covariance that is to be expected.
    /// `bodies` says which carriers are there in it.
    pub(super) fn photo(&self, station: &Station, profile: &Profile, bodies: &dyn Fn(usize) -> bool) -> PhotoView {
        let camera_from_world = station.camera_from_world();
        let mut views = Vec::new();
        for (at, face) in self.faces.iter().enumerate().filter(|(_, f)| bodies(f.carrier)) {
            for m in &face.markers {
                if self.visible(station, at, *m, bodies) {
                    views.extend(self.view(profile, &camera_from_world, face.carrier, *m));
                }
            }
        }
        PhotoView { camera: 0, views, u_edge_offset_px: U_EDGE_OFFSET_PX, u_edge_by_size_px: U_EDGE_BY_SIZE_PX }
    }

    /// Directions to look in that may hold most: towards the middle of what can be seen.
    pub(super) fn aims(&self, eye: Point3<f64>, bodies: &dyn Fn(usize) -> bool) -> Vec<Point3<f64>> {
        let probe = Station { eye, look_at: Point3::origin() };
        let mut seen: Vec<Point3<f64>> = Vec::new();
        for (at, face) in self.faces.iter().enumerate().filter(|(_, f)| bodies(f.carrier)) {
            let Some(pose) = self.bay.carriers[face.carrier] else { continue };
            let markers = &self.kit.carriers[face.carrier].markers;
            let here = face.markers.iter().filter(|m| self.visible(&probe, at, **m, bodies));
            seen.extend(here.map(|m| pose.point(&Point3::from(markers[*m].centre_mm))));
        }
        let bearing = |p: &Point3<f64>| {
            let d = p - eye;
            [d.y.atan2(-d.x), d.z.atan2(d.xy().norm())]
        };
        let mut bearings: Vec<[f64; 2]> = seen.iter().map(bearing).collect();
        if bearings.is_empty() {
            return Vec::new();
        }
        bearings.sort_by(|a, b| a[0].total_cmp(&b[0]));
        let (low, high) = bearings.iter().fold((f64::MAX, f64::MIN), |(l, h), b| (l.min(b[1]), h.max(b[1])));
        let up = f64::midpoint(low, high);
        let (left, right) = (bearings[0][0], bearings[bearings.len() - 1][0]);
        [
            f64::midpoint(left, right),
            bearings[bearings.len() / 2][0],
            left + 0.35 * (right - left),
            left + 0.65 * (right - left),
        ]
        .map(|b| eye + Vector3::new(-b.cos() * up.cos(), b.sin() * up.cos(), up.sin()) * 3000.0)
        .to_vec()
    }

    fn visible(&self, station: &Station, at: usize, marker: usize, bodies: &dyn Fn(usize) -> bool) -> bool {
        let face = &self.faces[at];
        let Some(pose) = self.bay.carriers[face.carrier] else { return false };
        let m = &self.kit.carriers[face.carrier].markers[marker];
        let centre = pose.point(&Point3::from(m.centre_mm));
        let towards = station.eye - centre;
        let distance = towards.norm();
        if distance < LEAST_DISTANCE_MM || pose.direction(&m.normal()).dot(&towards) / distance < LEAST_COSINE {
            return false;
        }
        let mut points = m.corners_mm().map(|c| pose.point(&c)).to_vec();
        points.push(centre);
        points.iter().all(|p| {
            // The own sheet does not hide it: stop short of it.
            let end = p + (station.eye - p) * (2.0 / distance);
            let panels =
                self.faces.iter().enumerate().filter(|(i, f)| *i != at && bodies(f.carrier)).map(|(_, f)| &f.panel);
            !self.body.iter().chain(panels).any(|s| s.cuts(&station.eye, &end))
        })
    }

    fn view(&self, profile: &Profile, camera_from_world: &Pose<Camera, World>, k: usize, m: usize) -> Option<View> {
        let marker = &self.kit.carriers[k].markers[m];
        let camera_from_carrier = *camera_from_world * self.bay.carriers[k]?;
        let mut corners_px = [Vector2::zeros(); 4];
        for (pixel, corner) in corners_px.iter_mut().zip(marker.corners_mm()) {
            *pixel = profile.lens.project(&camera_from_carrier.point(&corner).coords)?.pixel;
            let inside = |v: f64, n: u32| v >= MARGIN_PX && v <= f64::from(n) - MARGIN_PX;
            if !inside(pixel.x, profile.image_size_px[0]) || !inside(pixel.y, profile.image_size_px[1]) {
                return None;
            }
        }
        let edges = [0, 1, 2, 3].map(|i| (corners_px[(i + 1) % 4] - corners_px[i]).norm());
        let longest = edges.iter().fold(0.0f64, |a, b| a.max(*b));
        let area = 0.5 * (0..4).map(|i| corners_px[i].perp(&corners_px[(i + 1) % 4])).sum::<f64>().abs();
        if longest < LEAST_SIDE_PX || area / longest < LEAST_WIDTH_PX {
            return None;
        }
        Some(View {
            id: marker.id,
            carrier: k,
            marker: m,
            corners_px,
            valid: [true; 4],
            covariance_px2: expected_covariance(&corners_px)? * self.noise.powi(2),
        })
    }
}

/// The board behind the markers of a face.
fn panel(carrier: &crate::marker::Carrier, own: &[usize], pose: Pose<World, crate::geom::Carrier>) -> Slab {
    let first = &carrier.markers[own[0]];
    let face = Pose::<crate::geom::Carrier, crate::geom::Carrier>::from_matrix(
        Matrix3::from_columns(&[first.right, first.up, first.normal()]),
        first.centre_mm,
    );
    let inverse = face.inverse();
    let (mut low, mut high) = (Point3::new(f64::MAX, f64::MAX, -4.0), Point3::new(f64::MIN, f64::MIN, -1.0));
    for corner in own.iter().flat_map(|m| carrier.markers[*m].corners_mm()) {
        let p = inverse.point(&corner);
        for i in 0..2 {
            low[i] = low[i].min(p[i] - 0.12 * first.size_mm[0]);
            high[i] = high[i].max(p[i] + 0.12 * first.size_mm[0]);
        }
    }
    Slab { pose: pose * face, low, high }
}
