//! A sampled bay: exact corners through the lens, then noise. No rendering,
//! no detector: thousands of scenes in seconds.
#![allow(dead_code, reason = "each test file uses its own part")]
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "test support: a panic is the message")]

use baywitness::camera::{Lens, LensModel, PerPhoto, Profile, ReadOut};
use baywitness::geom::{self, Attitude, Pose, Vehicle};
use baywitness::marker::{Carrier, Kit, Marker, Role};
use baywitness::pose::{EDGE_SIDE_PX, PhotoView, Problem, View};
use baywitness::setup::{Decision, DecisionRule, Limits, ReferenceLine, Setup};
use nalgebra::{Matrix3, Point3, SMatrix, SVector, UnitQuaternion, Vector2, Vector3};
use rand::rngs::ChaCha8Rng;
use rand::{RngExt, SeedableRng};

/// A set-up sheet that checks nothing, for who asks quantities by themselves.
pub(crate) fn sheet(line: ReferenceLine) -> Setup {
    Setup {
        name: "sampled".into(),
        title: "Sampled".into(),
        source: "Invented.".into(),
        reference_line: line,
        decision: Decision { rule: DecisionRule::Guarded, conformance_probability: 0.95, photos_after_move: 2 },
        procedure: None,
        steps: Vec::new(),
        datums: Vec::new(),
        prerequisites: Vec::new(),
        checks: Vec::new(),
        waived: Vec::new(),
        limits: Limits::default(),
        credentials_required: false,
    }
}

/// A seeded standard normal sampler (Box-Muller).
pub(crate) struct Noise(ChaCha8Rng);

impl Noise {
    pub(crate) fn new(seed: u64) -> Self {
        Noise(ChaCha8Rng::seed_from_u64(seed))
    }

    pub(crate) fn uniform(&mut self) -> f64 {
        self.0.random::<f64>()
    }

    pub(crate) fn normal(&mut self) -> f64 {
        let (a, b) = (1.0 - self.uniform(), self.uniform());
        (-2.0 * a.ln()).sqrt() * (std::f64::consts::TAU * b).cos()
    }

    pub(crate) fn vector(&mut self, sigma: f64) -> Vector3<f64> {
        Vector3::new(self.normal(), self.normal(), self.normal()) * sigma
    }
}

/// What a sampled bay contains.
#[derive(Debug, Clone)]
pub(crate) struct Bay {
    pub(crate) front_plates: bool,
    pub(crate) floor_sheets: bool,
    /// A mark stands on the vehicle's nose.
    pub(crate) nose_mark: bool,
    pub(crate) four_photos: bool,
    pub(crate) kannala_brandt: bool,
    /// That many stations on an arc before the vehicle instead of the usual ones.
    pub(crate) stations: Option<usize>,
    /// Where further photos are taken from, behind the usual ones.
    pub(crate) further: Vec<Vector3<f64>>,
    /// The further photos are by one tripod: from one place, in one direction, with one focus.
    pub(crate) tripod: bool,
    pub(crate) noise_px: f64,
    pub(crate) u_layout_mm: f64,
    /// 1 sigma of how each sheet is turned about each axis, as stated and as it is, degrees.
    pub(crate) u_turn_deg: f64,
    pub(crate) turn_deg: f64,
    /// 1 sigma of how fast the hand turns about each axis while rows are read, deg/s; `None`: a camera that
    /// reads all at once and says so.
    pub(crate) tremor_deg_per_s: Option<f64>,
    pub(crate) u_scale: f64,
    /// Of the prints' width over their height, alike for all but for a tenth of it on each carrier, and as the kit file states it.
    pub(crate) u_aspect: f64,
    pub(crate) u_focal: f64,
    pub(crate) u_centre_px: f64,
    pub(crate) u_edge_px: f64,
    pub(crate) u_edge_by_size_px: f64,
    pub(crate) u_seating_mm: f64,
    pub(crate) u_seating_deg: f64,
    /// True noise of the corners over what the detector states.
    pub(crate) noise_over_stated: f64,
    /// Each edge offset is wrong by its own standard uncertainty, up or down, not by a normal draw.
    pub(crate) edge_off_by_sigma: bool,
    /// Each printed corner lies off its place by so much (1 sigma of each coordinate), in all photos alike.
    pub(crate) print_noise_mm: f64,
    /// One corner of each job is wrong by a pixel or two.
    pub(crate) wrong_corner: bool,
    /// Carriers keep this many markers.
    pub(crate) most_markers: usize,
    /// 1 sigma of each wheel's heading, degrees.
    pub(crate) toe_deg: f64,
}

impl Default for Bay {
    fn default() -> Self {
        Bay {
            front_plates: true,
            floor_sheets: true,
            nose_mark: false,
            four_photos: false,
            kannala_brandt: false,
            stations: None,
            further: Vec::new(),
            tripod: false,
            noise_px: 0.03,
            u_layout_mm: 0.1,
            u_turn_deg: 0.0,
            turn_deg: 0.0,
            tremor_deg_per_s: None,
            u_scale: 3e-4,
            u_aspect: 0.0,
            u_focal: 0.002,
            u_centre_px: 5.0,
            u_edge_px: 0.02,
            u_edge_by_size_px: 0.01,
            u_seating_mm: 0.0,
            u_seating_deg: 0.0,
            noise_over_stated: 1.0,
            edge_off_by_sigma: false,
            print_noise_mm: 0.0,
            wrong_corner: false,
            most_markers: usize::MAX,
            toe_deg: 0.15,
        }
    }
}

/// One sampled job with its truth.
pub(crate) struct Sample {
    pub(crate) kit: Kit,
    pub(crate) camera: Profile,
    pub(crate) photos: Vec<PhotoView>,
    /// True poses of the bodies that the carriers mark (seating taken off).
    pub(crate) bodies: Vec<Pose<Vehicle, geom::Carrier>>,
    /// By photo, how often the stand had been moved; empty where it was not.
    pub(crate) after_move: Vec<u32>,
}

impl Sample {
    pub(crate) fn problem(&self) -> Problem<'_> {
        Problem { kit: &self.kit, cameras: vec![&self.camera], photos: self.photos.clone() }
    }

    pub(crate) fn carrier(&self, name: &str) -> usize {
        self.kit.carriers.iter().position(|c| c.name == name).unwrap()
    }
}

fn face(id: u32, size: f64, centre: [f64; 3], right: [f64; 3], up: [f64; 3]) -> Marker {
    Marker {
        id,
        size_mm: [size, size],
        centre_mm: Vector3::from(centre),
        right: Vector3::from(right),
        up: Vector3::from(up),
        u_centre_mm: None,
        u_turn_deg: None,
        u_size_mm: None,
    }
}

/// Seen from before the vehicle: right is +y, up is +z.
fn front(id: u32, size: f64, centre: [f64; 3]) -> Marker {
    face(id, size, centre, [0.0, 1.0, 0.0], [0.0, 0.0, 1.0])
}

/// On a side face that looks to the left (sign 1) or right (sign -1).
fn side(id: u32, size: f64, centre: [f64; 3], sign: f64) -> Marker {
    face(id, size, centre, [-sign, 0.0, 0.0], [0.0, 0.0, 1.0])
}

fn carrier(name: &str, role: Role, markers: Vec<Marker>, bay: &Bay) -> Carrier {
    let wheel = role.is_wheel();
    Carrier {
        name: name.into(),
        role,
        u_seating_mm: if wheel { bay.u_seating_mm } else { 0.0 },
        u_seating_deg: if wheel { [bay.u_seating_deg; 3] } else { [0.0; 3] },
        on_centreline: false,
        markers,
    }
}

/// A wheel plate with two leaves; `sign` 1 on the left.
fn plate(name: &str, role: Role, first: u32, sign: f64, bay: &Bay) -> Carrier {
    let (h, s) = (100.0, 120.0);
    let markers = vec![
        front(first, s, [120.0, sign * 140.0, h]),
        front(first + 1, s, [120.0, sign * 290.0, h]),
        front(first + 2, s, [120.0, sign * 140.0, -h]),
        front(first + 3, s, [120.0, sign * 290.0, -h]),
        side(first + 4, s, [-40.0, sign * 60.0, h], sign),
        side(first + 5, s, [-40.0, sign * 60.0, -h], sign),
    ];
    carrier(name, role, markers, bay)
}

pub(crate) fn kit(bay: &Bay) -> Kit {
    let mut stand = Vec::new();
    for (i, (y, z)) in [(600.0, 170.0), (600.0, -170.0), (-600.0, 170.0), (-600.0, -170.0)].into_iter().enumerate() {
        stand.push(front(i as u32, 150.0, [60.0, y, z]));
    }
    stand.push(front(4, 150.0, [140.0, 230.0, 0.0]));
    stand.push(front(5, 150.0, [140.0, -230.0, 0.0]));
    for (i, (y, z)) in [(760.0, 110.0), (760.0, -110.0), (-760.0, 110.0), (-760.0, -110.0)].into_iter().enumerate() {
        stand.push(side(6 + i as u32, 120.0, [-30.0, y, z], f64::signum(y)));
    }
    let mut carriers = vec![
        carrier("stand", Role::Target, stand, bay),
        plate("rear-left", Role::RearLeftWheel, 10, 1.0, bay),
        plate("rear-right", Role::RearRightWheel, 20, -1.0, bay),
    ];
    if bay.front_plates {
        carriers.push(plate("front-left", Role::FrontLeftWheel, 30, 1.0, bay));
        carriers.push(plate("front-right", Role::FrontRightWheel, 40, -1.0, bay));
    }
    if bay.floor_sheets {
        for i in 0..4 {
            let sheet = face(50 + i, 160.0, [0.0; 3], [0.0, -1.0, 0.0], [1.0, 0.0, 0.0]);
            carriers.push(carrier(&format!("floor-{i}"), Role::Floor, vec![sheet], bay));
        }
    }
    if bay.nose_mark {
        let markers = [[0.0, 80.0, 0.0], [0.0, -80.0, 0.0], [40.0, 0.0, 120.0]];
        let nose = (60..).zip(markers).map(|(id, centre)| front(id, 90.0, centre)).collect();
        carriers.push(carrier("nose", Role::Nose, nose, bay));
    }
    for carrier in &mut carriers {
        carrier.markers.truncate(bay.most_markers);
    }
    Kit {
        name: "sampled".into(),
        u_layout_mm: bay.u_layout_mm,
        u_turn_deg: bay.u_turn_deg,
        u_scale_relative: bay.u_scale,
        u_aspect_relative: bay.u_aspect,
        serial: None,
        survey_due: None,
        carriers,
        layout: None,
    }
}

pub(crate) fn camera(bay: &Bay) -> Profile {
    let (model, distortion) = if bay.kannala_brandt {
        (LensModel::KannalaBrandt, [0.02, -0.01, 0.004, -0.001, 0.0])
    } else {
        (LensModel::BrownConrady, [0.08, -0.2, 0.0004, -0.0002, 0.11])
    };
    Profile {
        name: "sampled".into(),
        lens: Lens { model, focal_px: [3050.0, 3049.0], centre_px: [2015.0, 1508.0], distortion },
        image_size_px: [4032, 3024],
        u_noise_px: None,
        covariance: None,
        per_photo: PerPhoto { u_focal_relative: bay.u_focal, u_centre_px: bay.u_centre_px },
        read_out: match bay.tremor_deg_per_s {
            Some(_) => ReadOut::default(),
            None => ReadOut { read_out_ms: Some(0.0), u_turn_deg_per_s: None },
        },
        exif: None,
    }
}

/// Height of the hub datums above the floor, mm.
pub(crate) const HUB_MM: f64 = 320.0;

/// How far the nose is ahead of the rear axle, mm.
pub(crate) const NOSE_MM: f64 = 3550.0;

/// Where the true bodies are: rear hubs, front hubs, stand, floor sheets.
///
/// Without floor sheets the plates are plumb and the hubs level: that is what
/// then defines the floor, with no uncertainty but the seating's.
fn body_pose(name: &str, bay: &Bay, noise: &mut Noise) -> Pose<Vehicle, geom::Carrier> {
    let hub = |x: f64, y: f64, noise: &mut Noise| {
        if !bay.floor_sheets {
            let a = Attitude {
                yaw_deg: bay.toe_deg * noise.normal(),
                roll_deg: 0.5 * noise.normal(),
                ..Default::default()
            };
            return Pose::new(a.rotation(), Vector3::new(x + noise.normal(), y, HUB_MM));
        }
        let a = Attitude {
            yaw_deg: bay.toe_deg * noise.normal(),
            pitch_deg: 0.2 * noise.normal(),
            roll_deg: 0.5 * noise.normal(),
        };
        Pose::new(a.rotation(), Vector3::new(x + noise.normal(), y, HUB_MM + noise.normal()))
    };
    match name {
        "stand" => {
            let a = Attitude {
                yaw_deg: 0.3 * noise.normal(),
                pitch_deg: 0.3 * noise.normal(),
                roll_deg: 0.2 * noise.normal(),
            };
            Pose::new(a.rotation(), Vector3::new(5000.0, 0.0, 950.0) + noise.vector(8.0))
        }
        "rear-left" => hub(0.0, 860.0, noise),
        "rear-right" => hub(0.0, -860.0, noise),
        "front-left" => hub(2700.0, 855.0, noise),
        "front-right" => hub(2700.0, -855.0, noise),
        "nose" => Pose::new(Attitude::default().rotation(), Vector3::new(NOSE_MM, 0.0, 500.0)),
        sheet => {
            let i: usize = sheet.trim_start_matches("floor-").parse().unwrap();
            let (x, y) = [(900.0, 1500.0), (900.0, -1500.0), (4300.0, 1000.0), (4200.0, -1050.0)][i];
            let a = Attitude { yaw_deg: 8.0 * noise.normal(), ..Default::default() };
            Pose::new(a.rotation(), Vector3::new(x + 20.0 * noise.normal(), y + 20.0 * noise.normal(), 0.0))
        }
    }
}

/// Camera looking from `eye` at `at`, x right, y down.
pub(crate) fn look(eye: Vector3<f64>, at: Vector3<f64>) -> Pose<geom::Camera, Vehicle> {
    let z = (at - eye).normalize();
    let x = z.cross(&Vector3::z()).normalize();
    let y = z.cross(&x);
    let vehicle_from_camera: Pose<Vehicle, geom::Camera> = Pose::from_matrix(Matrix3::from_columns(&[x, y, z]), eye);
    vehicle_from_camera.inverse()
}

pub(crate) fn stations(bay: &Bay) -> Vec<(Vector3<f64>, Vector3<f64>)> {
    let at = Vector3::new(2600.0, 0.0, 500.0);
    if let Some(n) = bay.stations {
        let on_arc = |i: usize| {
            let angle = -0.6 + 1.2 * i as f64 / (n.max(2) - 1) as f64;
            Vector3::new(2600.0 + 5600.0 * angle.cos(), 5600.0 * angle.sin(), 1500.0)
        };
        return (0..n).map(|i| (on_arc(i), at)).collect();
    }
    let mut all = vec![(Vector3::new(7800.0, 2300.0, 1600.0), at), (Vector3::new(7800.0, -2300.0, 1600.0), at)];
    if bay.four_photos {
        all.push((Vector3::new(5800.0, 3600.0, 1500.0), at));
        all.push((Vector3::new(5800.0, -3600.0, 1500.0), at));
    }
    all.extend(bay.further.iter().map(|eye| (*eye, at)));
    all
}

/// A carrier's pose in the vehicle's frame.
pub(crate) type At = Pose<Vehicle, geom::Carrier>;

/// What is wrong with a bay, which no file admits to.
pub(crate) struct Flaw<'a> {
    /// Where a carrier stands in a photo.
    pub(crate) place: &'a (dyn Fn(usize, &str, At) -> At + Sync),
    /// Size of a carrier's prints against the kit file.
    pub(crate) print: &'a (dyn Fn(&str) -> f64 + Sync),
    /// Focal length of a photo against the camera's.
    pub(crate) focal: &'a (dyn Fn(usize) -> f64 + Sync),
    /// The lens that really took a photo, of the one that the camera file states.
    pub(crate) lens: &'a (dyn Fn(usize, Lens) -> Lens + Sync),
}

impl Default for Flaw<'_> {
    fn default() -> Self {
        Flaw { place: &|_, _, pose| pose, print: &|_| 1.0, focal: &|_| 1.0, lens: &|_, lens| lens }
    }
}

/// Draws one job: every error that the kit and camera files admit to.
pub(crate) fn sample(bay: &Bay, seed: u64) -> Sample {
    flawed(bay, seed, &Flaw::default())
}

/// Where a carrier really sits on its body.
fn seated(c: &Carrier, body: &At, noise: &mut Noise) -> At {
    let t = noise.vector(c.u_seating_mm);
    let r = noise.vector(geom::rad(c.u_seating_deg[0]));
    body.moved(&nalgebra::Vector6::new(t.x, t.y, t.z, r.x, r.y, r.z))
}

/// How a photo was taken: from where, and what is the camera's own in it.
#[derive(Clone)]
struct Taken {
    eye: Vector3<f64>,
    camera_from_vehicle: Pose<geom::Camera, Vehicle>,
    focal: f64,
    centre_px: [f64; 2],
    edge: f64,
    by_size: f64,
}

impl Taken {
    fn draw(bay: &Bay, eye: Vector3<f64>, at: Vector3<f64>, noise: &mut Noise) -> Self {
        let eye = eye + noise.vector(100.0);
        Taken {
            eye,
            camera_from_vehicle: look(eye, at + noise.vector(100.0)),
            focal: bay.u_focal * noise.normal(),
            centre_px: [0, 1].map(|_| bay.u_centre_px * noise.normal()),
            edge: bay.u_edge_px * edge_draw(bay, noise),
            by_size: bay.u_edge_by_size_px * noise.normal(),
        }
    }
}

/// Where the corners of each carrier's markers were printed and glued, each about its place.
fn printed(bay: &Bay, kit: &Kit, flaw: &Flaw, seed: u64, noise: &mut Noise) -> Vec<Vec<[Point3<f64>; 4]>> {
    let stretch = 1.0 + bay.u_scale * noise.normal();
    let mut paper = Noise::new(seed ^ 0x9a9e_4000);
    let common = paper.normal();
    kit.carriers
        .iter()
        .map(|c| {
            let aspect = bay.u_aspect * (common + 0.1 * paper.normal());
            let one = |m: &Marker, noise: &mut Noise| {
                let shift = noise.vector(bay.u_layout_mm);
                let stretch = stretch * (flaw.print)(&c.name);
                m.corners_mm().map(|p| {
                    let arm = p.coords - m.centre_mm;
                    let wider = (m.right * m.right.dot(&arm) - m.up * m.up.dot(&arm)) * (0.5 * aspect);
                    Point3::from(m.centre_mm + shift + arm * stretch + wider)
                })
            };
            c.markers.iter().map(|m| one(m, noise)).collect()
        })
        .collect()
}

/// Draws one job with a flaw; the bodies are those of the plain one.
pub(crate) fn flawed(bay: &Bay, seed: u64, flaw: &Flaw) -> Sample {
    let mut noise = Noise::new(seed);
    let kit = kit(bay);
    let camera = camera(bay);
    let bodies: Vec<_> = kit.carriers.iter().map(|c| body_pose(&c.name, bay, &mut noise)).collect();
    let seated: Vec<_> = kit.carriers.iter().zip(&bodies).map(|(c, body)| seated(c, body, &mut noise)).collect();
    let printed = printed(bay, &kit, flaw, seed, &mut noise);
    let printed = askew(bay, &kit, printed, seed);
    let printed = blotchy(bay, &kit, printed, seed);
    let first_further = stations(bay).len().saturating_sub(bay.further.len());
    let mut on_tripod: Option<Taken> = None;
    let mut photos: Vec<PhotoView> = stations(bay)
        .into_iter()
        .enumerate()
        .map(|(photo, (eye, at))| {
            let named = kit.carriers.iter().zip(&seated);
            let seated: Vec<_> = named.map(|(c, pose)| (flaw.place)(photo, &c.name, *pose)).collect();
            let again = on_tripod.clone().filter(|_| bay.tripod && photo > first_further);
            let taken = again.unwrap_or_else(|| Taken::draw(bay, eye, at, &mut noise));
            on_tripod = Some(taken.clone());
            let Taken { eye, camera_from_vehicle, focal, centre_px, edge, by_size } = taken;
            let mut lens = (flaw.lens)(photo, camera.lens);
            let f = (flaw.focal)(photo) + focal;
            lens.focal_px = lens.focal_px.map(|x| x * f);
            lens.centre_px = [0, 1].map(|i| lens.centre_px[i] + centre_px[i]);
            let turn = turn(bay, seed, photo);
            let mut views = Vec::new();
            for (k, c) in kit.carriers.iter().enumerate() {
                for (m, marker) in c.markers.iter().enumerate() {
                    let eye_in_carrier = seated[k].inverse().point(&Point3::from(eye));
                    let facing = (eye_in_carrier.coords - marker.centre_mm).normalize().dot(&marker.normal());
                    if facing < 0.25 {
                        continue;
                    }
                    let corners: Option<Vec<Vector2<f64>>> = printed[k][m]
                        .iter()
                        .map(|p| rows(&lens, &camera_from_vehicle.point(&seated[k].point(p)).coords, &turn))
                        .collect();
                    let Some(corners) = corners else { continue };
                    let inside = |p: &Vector2<f64>| p.x > 5.0 && p.y > 5.0 && p.x < 4026.0 && p.y < 3018.0;
                    if !corners.iter().all(inside) {
                        continue;
                    }
                    let mut view = View {
                        id: marker.id,
                        carrier: k,
                        marker: m,
                        corners_px: [corners[0], corners[1], corners[2], corners[3]],
                        valid: [true; 4],
                        covariance_px2: covariance(bay.noise_px),
                    };
                    let (outward, side) = (view.outward(), view.side_px());
                    let jitter = correlated(bay.noise_px * bay.noise_over_stated, &mut noise);
                    for (i, outward) in outward.iter().enumerate() {
                        view.corners_px[i] +=
                            outward * (edge + by_size * EDGE_SIDE_PX / side) + jitter.fixed_rows::<2>(2 * i);
                    }
                    views.push(view);
                }
            }
            PhotoView { camera: 0, views, u_edge_offset_px: bay.u_edge_px, u_edge_by_size_px: bay.u_edge_by_size_px }
        })
        .collect();
    if bay.wrong_corner {
        move_one_corner(&mut photos, &mut noise);
    }
    Sample { kit, camera, photos, bodies, after_move: Vec::new() }
}

/// Sheets glued askew; of a draw of its own, so that the others stay what they are.
fn askew(bay: &Bay, kit: &Kit, mut printed: Vec<Vec<[Point3<f64>; 4]>>, seed: u64) -> Vec<Vec<[Point3<f64>; 4]>> {
    let mut noise = Noise::new(seed ^ 0x7c15_0000);
    for (carrier, corners) in kit.carriers.iter().zip(&mut printed) {
        for (_, corners) in carrier.markers.iter().zip(corners) {
            let rotation = UnitQuaternion::from_scaled_axis(noise.vector(geom::rad(bay.turn_deg)));
            let centre = nalgebra::center(&corners[0], &corners[2]);
            for corner in corners {
                *corner = centre + rotation * (*corner - centre);
            }
        }
    }
    printed
}

/// From the first row to the last, s: what phones are taken to need.
const READ_OUT_S: f64 = 0.02;
/// The sensor's rows.
const ROWS: f64 = 3024.0;

/// How far the hand turns during the read-out, rad; of a draw of its own.
fn turn(bay: &Bay, seed: u64, photo: usize) -> Vector3<f64> {
    let mut noise = Noise::new((seed ^ 0x4e11_0000) + 1_000_000 * photo as u64);
    noise.vector(geom::rad(bay.tremor_deg_per_s.unwrap_or(0.0) * READ_OUT_S))
}

/// Where a point of the camera's frame is seen: a row shows what is there when it is read.
fn rows(lens: &Lens, point: &Vector3<f64>, turn: &Vector3<f64>) -> Option<Vector2<f64>> {
    let mut pixel = lens.project(point)?.pixel;
    for _ in 0..6 {
        let moment = (pixel.y - (ROWS - 1.0) / 2.0) / ROWS;
        pixel = lens.project(&(UnitQuaternion::from_scaled_axis(turn * moment) * point))?.pixel;
    }
    Some(pixel)
}

/// Corners off their places in the print; of a draw of its own, so that the others stay what they are.
fn blotchy(bay: &Bay, kit: &Kit, mut printed: Vec<Vec<[Point3<f64>; 4]>>, seed: u64) -> Vec<Vec<[Point3<f64>; 4]>> {
    let mut noise = Noise::new(!seed);
    for (carrier, corners) in kit.carriers.iter().zip(&mut printed) {
        for (marker, corners) in carrier.markers.iter().zip(corners) {
            for corner in corners {
                let (right, up) = (bay.print_noise_mm * noise.normal(), bay.print_noise_mm * noise.normal());
                *corner += marker.right * right + marker.up * up;
            }
        }
    }
    printed
}

/// An edge offset in units of its standard uncertainty.
fn edge_draw(bay: &Bay, noise: &mut Noise) -> f64 {
    let draw = noise.normal();
    if bay.edge_off_by_sigma { draw.signum() } else { draw }
}

/// Independent corner noise plus a common shift of half its size.
fn covariance(noise_px: f64) -> SMatrix<f64, 8, 8> {
    let v = noise_px * noise_px;
    SMatrix::from_fn(|i, j| (if i == j { v } else { 0.0 }) + if i % 2 == j % 2 { v / 4.0 } else { 0.0 })
}

/// Noise of a marker's corners as [`Bay::noise_px`] states it: a part of each corner's own, and one in common.
pub(crate) fn correlated(noise_px: f64, noise: &mut Noise) -> SVector<f64, 8> {
    let common = [0.5 * noise_px * noise.normal(), 0.5 * noise_px * noise.normal()];
    SVector::from_fn(|i, _| noise_px * noise.normal() + common[i % 2])
}

/// A blunder: one corner of one marker in one of the first two photos.
fn move_one_corner(photos: &mut [PhotoView], noise: &mut Noise) {
    let photo = &mut photos[(2.0 * noise.uniform()) as usize];
    let view = (noise.uniform() * photo.views.len() as f64) as usize;
    let angle = noise.uniform() * std::f64::consts::TAU;
    let shift = Vector2::new(angle.cos(), angle.sin()) * (1.0 + noise.uniform());
    photo.views[view].corners_px[(4.0 * noise.uniform()) as usize] += shift;
}
