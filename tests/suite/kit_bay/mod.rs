//! A middling car in a bay of 4 m with a kit on it, sampled: exact corners through the lens,
//! then every error that the kit file admits to. Bodies, sheets and the target hide what is
//! behind them.

use crate::sampled_bay::Noise;
use baywitness::camera::{Lens, LensModel, PerPhoto, Profile, ReadOut};
use baywitness::geom::{self, Pose, Vehicle};
use baywitness::marker::{Carrier, Kit, Marker, Role};
use baywitness::pose::{PhotoView, Problem, View};
use nalgebra::{Matrix3, Point3, SMatrix, Vector2, Vector3, Vector6};

/// Corner noise of a marker of [`CLEAR_PX`] or more, px; smaller ones are noisier in proportion.
pub(crate) const NOISE_PX: f64 = 0.03;
const CLEAR_PX: f64 = 50.0;
/// What a detector is trusted to find: side in px and tilt.
const LEAST_SIDE_PX: f64 = 20.0;
const MOST_TILT_DEG: f64 = 70.0;
const U_EDGE_PX: f64 = 0.02;
const IMAGE_PX: [f64; 2] = [4032.0, 3024.0];

/// Where a photo is taken from, and what it is aimed at.
pub(crate) type Station = [[f64; 3]; 2];

/// The middling car (invented): hub datums, nose, and where the stand's aim point belongs.
pub(crate) const WHEELBASE_MM: f64 = 2700.0;
const HALF_TRACK_MM: f64 = 860.0;
const HUB_HEIGHT_MM: f64 = 315.0;
const NOSE_MM: [f64; 3] = [3560.0, 0.0, 550.0];
const AIM_MM: [f64; 3] = [5060.0, 0.0, 750.0];
/// Arch edges above the wheels' centres: front, rear.
pub(crate) const ARCHES_MM: [f64; 2] = [371.0, 377.0];
const ARCH_Y_MM: f64 = 890.0;
/// Floor sheets in the order of the kit file.
const FLOOR_MM: [[f64; 2]; 4] = [[4300.0, 1000.0], [4300.0, -1000.0], [5600.0, 700.0], [5600.0, -700.0]];

/// One sampled job.
pub(crate) struct Sample {
    pub(crate) kit: Kit,
    camera: Profile,
    photos: Vec<PhotoView>,
}

impl Sample {
    /// The same corners, and a camera that is known to read all rows at once.
    pub(crate) fn at_once(mut self) -> Self {
        self.camera.read_out.read_out_ms = Some(0.0);
        self
    }

    pub(crate) fn problem(&self) -> Problem<'_> {
        Problem { kit: &self.kit, cameras: vec![&self.camera], photos: self.photos.clone() }
    }
}

/// A parallelogram that hides what is behind it.
struct Screen {
    corner: Vector3<f64>,
    sides: [Vector3<f64>; 2],
}

impl Screen {
    /// Whether it cuts the sight line somewhere before its far end.
    fn hides(&self, eye: &Vector3<f64>, point: &Vector3<f64>) -> bool {
        let ray = point - eye;
        let Some(inverse) = Matrix3::from_columns(&[self.sides[0], self.sides[1], -ray]).try_inverse() else {
            return false;
        };
        let [a, b, t] = (inverse * (eye - self.corner)).into();
        (0.0..=1.0).contains(&a) && (0.0..=1.0).contains(&b) && (0.0..0.999).contains(&t)
    }
}

pub(crate) fn camera() -> Profile {
    let distortion = [0.08, -0.2, 0.0004, -0.0002, 0.11];
    Profile {
        name: "sampled".into(),
        lens: Lens {
            model: LensModel::BrownConrady,
            focal_px: [3050.0, 3049.0],
            centre_px: [2015.0, 1508.0],
            distortion,
        },
        image_size_px: [4032, 3024],
        u_noise_px: None,
        covariance: None,
        per_photo: PerPhoto { u_focal_relative: 0.002, u_centre_px: 5.0 },
        read_out: ReadOut::default(),
        exif: None,
    }
}

fn body(carrier: &Carrier, floor_sheet: &mut usize) -> Vector3<f64> {
    match carrier.role {
        Role::Target => AIM_MM.into(),
        Role::RearLeftWheel => Vector3::new(0.0, HALF_TRACK_MM, HUB_HEIGHT_MM),
        Role::RearRightWheel => Vector3::new(0.0, -HALF_TRACK_MM, HUB_HEIGHT_MM),
        Role::FrontLeftWheel => Vector3::new(WHEELBASE_MM, HALF_TRACK_MM, HUB_HEIGHT_MM),
        Role::FrontRightWheel => Vector3::new(WHEELBASE_MM, -HALF_TRACK_MM, HUB_HEIGHT_MM),
        Role::Floor => {
            *floor_sheet += 1;
            let [x, y] = FLOOR_MM[*floor_sheet - 1];
            Vector3::new(x, y, 0.0)
        }
        arch if arch.is_arch() => {
            let front = matches!(arch, Role::FrontLeftArch | Role::FrontRightArch);
            let left = matches!(arch, Role::FrontLeftArch | Role::RearLeftArch);
            let (x, above) = if front { (WHEELBASE_MM, ARCHES_MM[0]) } else { (0.0, ARCHES_MM[1]) };
            Vector3::new(x, if left { ARCH_Y_MM } else { -ARCH_Y_MM }, HUB_HEIGHT_MM + above)
        }
        _ => NOSE_MM.into(),
    }
}

/// Bodywork as upright and level panels: sides, front, bonnet; the target's face.
fn bodywork() -> Vec<Screen> {
    let rectangle =
        |corner: [f64; 3], a: [f64; 3], b: [f64; 3]| Screen { corner: corner.into(), sides: [a.into(), b.into()] };
    let mut screens = Vec::new();
    for side in [-1.0, 1.0] {
        screens.push(rectangle([-850.0, side * 850.0, 180.0], [3950.0, 0.0, 0.0], [0.0, 0.0, 600.0]));
        screens.push(rectangle([-700.0, side * 700.0, 780.0], [3000.0, 0.0, 0.0], [0.0, 0.0, 650.0]));
    }
    screens.push(rectangle([3100.0, -850.0, 180.0], [0.0, 1700.0, 0.0], [0.0, 0.0, 600.0]));
    screens.push(rectangle([3550.0, -600.0, 180.0], [0.0, 1200.0, 0.0], [0.0, 0.0, 520.0]));
    screens.push(rectangle([2300.0, -700.0, 780.0], [-500.0, 0.0, 650.0], [0.0, 1400.0, 0.0]));
    screens.push(rectangle([AIM_MM[0], -280.0, AIM_MM[2] - 280.0], [0.0, 560.0, 0.0], [0.0, 0.0, 560.0]));
    screens
}

/// The sheet around a marker, with its white margin.
fn sheet(marker: &Marker, at: &Pose<Vehicle, geom::Carrier>) -> Screen {
    let [right, up] = [marker.right * marker.size_mm[0] * 1.25, marker.up * marker.size_mm[1] * 1.25];
    let corner = at.point(&Point3::from(marker.centre_mm - 0.5 * (right + up))).coords;
    Screen { corner, sides: [at.direction(&right), at.direction(&up)] }
}

/// Camera looking from `eye` at `at`, x right, y down.
fn look(eye: Vector3<f64>, at: Vector3<f64>) -> Pose<geom::Camera, Vehicle> {
    let z = (at - eye).normalize();
    let x = z.cross(&Vector3::z()).normalize();
    let vehicle_from_camera: Pose<Vehicle, geom::Camera> =
        Pose::from_matrix(Matrix3::from_columns(&[x, z.cross(&x), z]), eye);
    vehicle_from_camera.inverse()
}

/// Draws one job at the usual corner noise.
pub(crate) fn sample(kit: &Kit, stations: &[Station], seed: u64) -> Sample {
    sample_at(NOISE_PX, kit, stations, seed)
}

/// Draws one job whose clear corners have this noise, px.
pub(crate) fn sample_at(noise_px: f64, kit: &Kit, stations: &[Station], seed: u64) -> Sample {
    let mut noise = Noise::new(seed);
    let camera = camera();
    let mut floor_sheet = 0;
    let seated: Vec<Pose<Vehicle, geom::Carrier>> = kit
        .carriers
        .iter()
        .map(|carrier| {
            let rough = noise.vector(if carrier.role == Role::Floor { 0.0 } else { 0.002 });
            let step = noise.vector(carrier.u_seating_mm);
            let turn = Vector3::from(carrier.u_seating_deg.map(geom::rad)).component_mul(&noise.vector(1.0)) + rough;
            let origin = body(carrier, &mut floor_sheet);
            Pose::new(Default::default(), origin).moved(&Vector6::new(step.x, step.y, step.z, turn.x, turn.y, turn.z))
        })
        .collect();
    let stretch = 1.0 + kit.u_scale_relative * noise.normal();
    let mut paper = Noise::new(seed ^ 0x9a9e_4000);
    let common = paper.normal();
    let mut screens = bodywork();
    for (carrier, at) in kit.carriers.iter().zip(&seated) {
        screens.extend(carrier.markers.iter().map(|marker| sheet(marker, at)));
    }
    let printed: Vec<Vec<[Vector3<f64>; 4]>> = kit
        .carriers
        .iter()
        .zip(&seated)
        .map(|(carrier, at)| {
            let aspect = kit.u_aspect_relative * (common + 0.1 * paper.normal());
            let corners = |marker: &Marker| {
                let shift = noise.vector(kit.u_layout_mm);
                let turn = noise.vector(geom::rad(kit.u_turn_deg));
                marker.corners_mm().map(|p| {
                    let arm = p.coords - marker.centre_mm;
                    let wider =
                        (marker.right * marker.right.dot(&arm) - marker.up * marker.up.dot(&arm)) * (0.5 * aspect);
                    let placed = marker.centre_mm + shift + arm * stretch + turn.cross(&arm) + wider;
                    at.point(&Point3::from(placed)).coords
                })
            };
            carrier.markers.iter().map(corners).collect()
        })
        .collect();
    let photos = stations
        .iter()
        .map(|station| photo(kit, &camera, (station, noise_px), &printed, &screens, &mut noise))
        .collect();
    Sample { kit: kit.clone(), camera, photos }
}

fn photo(
    kit: &Kit,
    camera: &Profile,
    ([eye, at], noise_px): (&Station, f64),
    printed: &[Vec<[Vector3<f64>; 4]>],
    screens: &[Screen],
    noise: &mut Noise,
) -> PhotoView {
    // Nobody stands exactly where the plan says.
    let eye = Vector3::from(*eye) + noise.vector(30.0);
    let camera_from_vehicle = look(eye, Vector3::from(*at) + noise.vector(30.0));
    let mut lens = camera.lens;
    let focal = 1.0 + camera.per_photo.u_focal_relative * noise.normal();
    lens.focal_px = lens.focal_px.map(|f| f * focal);
    lens.centre_px = lens.centre_px.map(|c| c + camera.per_photo.u_centre_px * noise.normal());
    let edge = U_EDGE_PX * noise.normal();
    let mut views = Vec::new();
    for (k, carrier) in kit.carriers.iter().enumerate() {
        for (m, marker) in carrier.markers.iter().enumerate() {
            let Some(mut view) = sight(&printed[k][m], &eye, &camera_from_vehicle, &lens, screens) else { continue };
            view.covariance_px2 *= (noise_px / NOISE_PX).powi(2);
            (view.id, view.carrier, view.marker) = (marker.id, k, m);
            let outward = view.outward();
            // The diagonal holds own noise and the common part: v + v / 4.
            let sigma = (view.covariance_px2[(0, 0)] / 1.25).sqrt();
            let common = [0.5 * sigma * noise.normal(), 0.5 * sigma * noise.normal()];
            for (corner, out) in view.corners_px.iter_mut().zip(outward) {
                *corner +=
                    out * edge + Vector2::new(sigma * noise.normal() + common[0], sigma * noise.normal() + common[1]);
            }
            views.push(view);
        }
    }
    PhotoView { camera: 0, views, u_edge_offset_px: U_EDGE_PX, u_edge_by_size_px: 0.0 }
}

/// The marker as seen, without noise; `None` where it is hidden, too small, too tilted or outside.
fn sight(
    corners: &[Vector3<f64>; 4],
    eye: &Vector3<f64>,
    camera_from_vehicle: &Pose<geom::Camera, Vehicle>,
    lens: &Lens,
    screens: &[Screen],
) -> Option<View> {
    let centre = 0.25 * (corners[0] + corners[1] + corners[2] + corners[3]);
    let normal = (corners[1] - corners[0]).cross(&(corners[0] - corners[3])).normalize();
    let tilt = (eye - centre).normalize().dot(&normal).clamp(-1.0, 1.0).acos().to_degrees();
    let hidden = |point: &Vector3<f64>| screens.iter().any(|screen| screen.hides(eye, point));
    if tilt > MOST_TILT_DEG || corners.iter().chain([&centre]).any(hidden) {
        return None;
    }
    let mut pixels = [Vector2::zeros(); 4];
    for (pixel, corner) in pixels.iter_mut().zip(corners) {
        *pixel = lens.project(&camera_from_vehicle.point(&Point3::from(*corner)).coords)?.pixel;
        if !(0..2).all(|axis| (10.0..IMAGE_PX[axis] - 10.0).contains(&pixel[axis])) {
            return None;
        }
    }
    let side = (0..4).map(|i| (pixels[(i + 1) % 4] - pixels[i]).norm()).fold(f64::INFINITY, f64::min);
    if side < LEAST_SIDE_PX {
        return None;
    }
    let sigma = NOISE_PX * (CLEAR_PX / side).max(1.0);
    let covariance = covariance(sigma);
    Some(View { id: 0, carrier: 0, marker: 0, corners_px: pixels, valid: [true; 4], covariance_px2: covariance })
}

/// Independent corner noise plus a common shift of half its size.
fn covariance(sigma: f64) -> SMatrix<f64, 8, 8> {
    let v = sigma * sigma;
    SMatrix::from_fn(|i, j| (if i == j { v } else { 0.0 }) + if i % 2 == j % 2 { v / 4.0 } else { 0.0 })
}
