//! The marker kit in the bay: each carrier's pose and each marker as printed.

use nalgebra::{Point3, UnitQuaternion, Vector3};

use super::draw::{self, Purpose};
use super::stand::{Asked, on_floor, stand_pose};
use super::vehicle::{Vehicle, wheel_index};
use crate::geom::{self, Attitude, Pose, World, rad};
use crate::marker::{Carrier, Marker, Role};
use crate::synth::scene::{CarrierMistake, PhotoSpec, Scene};
use crate::synth::waves::Waves;

/// One carrier as it is.
#[derive(Debug, Clone, PartialEq)]
pub struct PlacedCarrier {
    /// Position in the kit.
    pub index: usize,
    /// Design frame from carrier.
    pub pose: Pose<World, geom::Carrier>,
    /// Its markers.
    pub markers: Vec<PlacedMarker>,
}

/// One marker as printed and mounted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlacedMarker {
    /// Code number.
    pub id: u32,
    /// True size along right and up, mm.
    pub size_mm: [f64; 2],
    /// Design frame from marker.
    pub pose: Pose<World, geom::Marker>,
    /// How far each corner is off its place in the print, along right and up, mm; what is between moves in proportion.
    pub blotch_mm: [[f64; 2]; 4],
    /// Waves in the print, which its corners as given here do not follow.
    pub waves: Waves,
}

impl PlacedMarker {
    /// The four outer corners of the black border, design frame, mm.
    pub fn corners_mm(&self) -> [Point3<f64>; 4] {
        let [x, y] = self.size_mm.map(|s| 0.5 * s);
        let square = [[-x, y], [x, y], [x, -y], [-x, -y]];
        std::array::from_fn(|i| {
            let [x, y] = [0, 1].map(|k| square[i][k] + self.blotch_mm[i][k]);
            self.pose.point(&Point3::new(x, y, 0.0))
        })
    }

    /// Direction that the printed face looks to.
    pub fn normal(&self) -> Vector3<f64> {
        self.pose.direction(&Vector3::z())
    }
}

/// The bay at the moment of one photo.
#[derive(Debug, Clone, PartialEq)]
pub struct Placement {
    /// The vehicle.
    pub vehicle: Vehicle,
    /// The carriers that are there, in the kit's order.
    pub carriers: Vec<PlacedCarrier>,
    /// Markers that have no business there.
    pub strays: Vec<PlacedMarker>,
}

impl Placement {
    /// The bay at the moment of a photo.
    pub(crate) fn of(scene: &Scene, photo: &PhotoSpec) -> Self {
        let vehicle = Vehicle::of(&scene.spec.vehicle, photo.vehicle_rolled_mm);
        let mut carriers = Vec::new();
        for (index, carrier) in scene.kit.carriers.iter().enumerate() {
            let mistake = mistake_of(scene, &carrier.name, photo);
            if mistake.left_out {
                continue;
            }
            let Some(seat) = seat(scene, photo, &vehicle, index, &mistake) else { continue };
            let pose = seat * seating(scene, index, carrier) * knocked(&mistake);
            let markers = carrier.markers.iter().map(|m| printed(scene, carrier, m, &pose, &mistake)).collect();
            carriers.push(PlacedCarrier { index, pose, markers });
        }
        Placement { vehicle, carriers, strays: strays(scene) }
    }

    /// The first carrier of a role.
    pub fn with_role<'a>(&'a self, kit: &'a crate::marker::Kit, role: Role) -> Option<&'a PlacedCarrier> {
        self.carriers.iter().find(|c| kit.carriers[c.index].role == role)
    }

    /// Every marker that is there.
    pub fn markers(&self) -> impl Iterator<Item = &PlacedMarker> {
        self.carriers.iter().flat_map(|c| &c.markers).chain(&self.strays)
    }
}

/// What is wrong with a carrier in a photo, all entries together.
pub(crate) fn mistake_of(scene: &Scene, name: &str, photo: &PhotoSpec) -> CarrierMistake {
    let holds = |m: &&CarrierMistake| m.name == name && (m.photos.is_empty() || m.photos.contains(&photo.file));
    let mut sum = CarrierMistake::default();
    for m in scene.spec.carrier.iter().filter(holds) {
        sum.left_out |= m.left_out;
        sum.mounted_on = m.mounted_on.clone().or(sum.mounted_on);
        sum.print_scale = m.print_scale.or(sum.print_scale);
        if !m.displaced.is_empty() {
            sum.displaced.clone_from(&m.displaced);
            sum.displaced_mm = m.displaced_mm;
        }
        for i in 0..3 {
            sum.off_mm[i] += m.off_mm[i];
            sum.off_deg[i] += m.off_deg[i];
        }
    }
    sum
}

/// Where the carrier belongs (or was mistakenly put), before seating.
fn seat(
    scene: &Scene,
    photo: &PhotoSpec,
    vehicle: &Vehicle,
    index: usize,
    mistake: &CarrierMistake,
) -> Option<Pose<World, geom::Carrier>> {
    let own = scene.kit.carriers[index].role;
    let marked = match &mistake.mounted_on {
        Some(name) => scene.kit.carriers.iter().position(|c| c.name == *name)?,
        None => index,
    };
    let pose = true_pose(scene, photo, vehicle, marked)?;
    let left = |role| wheel_index(role).map(|i| i % 2 == 0);
    match (left(own), left(scene.kit.carriers[marked].role)) {
        (Some(a), Some(b)) if a != b => {
            let upside_down = UnitQuaternion::from_scaled_axis(Vector3::x() * std::f64::consts::PI);
            Some(pose * Pose::new(upside_down, Vector3::zeros()))
        }
        _ => Some(pose),
    }
}

/// Where a carrier of a role belongs.
fn true_pose(scene: &Scene, photo: &PhotoSpec, vehicle: &Vehicle, index: usize) -> Option<Pose<World, geom::Carrier>> {
    let carrier = &scene.kit.carriers[index];
    let spec = &scene.spec;
    match carrier.role {
        Role::Nose => Some(Pose::new(UnitQuaternion::identity(), vehicle.nose_mm.coords)),
        Role::Floor => {
            let position = scene.kit.with_role(Role::Floor).position(|i| i == index)?;
            Some(on_floor(&spec.floor, &sheet_place(&spec.floor.sheets, position)))
        }
        Role::Card => {
            // Upright on the bonnet.
            let above = 0.6 * spec.vehicle.height_mm + 80.0;
            Some(Pose::new(UnitQuaternion::identity(), Vector3::new(spec.vehicle.nose_mm[0] - 700.0, 0.0, above)))
        }
        Role::Target => {
            let moves = spec.moves.iter().take(photo.after_move as usize);
            let error = moves.fold(spec.stand.error, |sum, step| sum.plus(step)).plus(&photo.stand_moved);
            // The stand was set up before the vehicle rolled: it stays where it is.
            let vehicle = &Vehicle::of(&spec.vehicle, 0.0);
            let pose_of = |name: &str| {
                let other = scene.kit.carriers.iter().position(|c| c.name == name)?;
                // A datum on the target itself would have to be known before the target is placed.
                (scene.kit.carriers[other].role != Role::Target).then(|| true_pose(scene, photo, vehicle, other))?
            };
            let asked = Asked { carrier: &carrier.name, step: photo.step.as_deref(), error };
            let mut stand = spec.stand.clone();
            if carrier.lies_flat() {
                stand.height_mm = 0.0;
            }
            Some(stand_pose(&stand, &scene.setup, vehicle, &spec.floor, &asked, pose_of))
        }
        Role::RearLeftArch => Some(arch_pose(scene, vehicle, 0)),
        Role::RearRightArch => Some(arch_pose(scene, vehicle, 1)),
        Role::FrontLeftArch => Some(arch_pose(scene, vehicle, 2)),
        Role::FrontRightArch => Some(arch_pose(scene, vehicle, 3)),
        wheel => wheel_index(wheel).map(|i| vehicle.wheels[i].plate_pose()),
    }
}

/// A mark on an arch's edge, at the body's side.
fn arch_pose(scene: &Scene, vehicle: &Vehicle, wheel: usize) -> Pose<World, geom::Carrier> {
    let below = &vehicle.wheels[wheel];
    let y = 0.5 * scene.spec.vehicle.width_mm * if below.left { 1.0 } else { -1.0 };
    Pose::new(UnitQuaternion::identity(), Vector3::new(below.hub_mm.x, y, vehicle.arches_mm[wheel]))
}

/// Default places of floor sheets: about the space between vehicle and stand.
const SHEETS: [[f64; 3]; 6] = [
    [4300.0, 1250.0, 4.0],
    [4250.0, -1300.0, -7.0],
    [5700.0, 900.0, 12.0],
    [5750.0, -950.0, -3.0],
    [2700.0, 1750.0, 9.0],
    [2650.0, -1800.0, 5.0],
];

fn sheet_place(given: &[[f64; 3]], position: usize) -> Pose<World, geom::Carrier> {
    let [x, y, turn_deg] = match given.get(position) {
        Some(place) => *place,
        None => SHEETS[position % SHEETS.len()],
    };
    Pose::new(UnitQuaternion::from_scaled_axis(Vector3::z() * rad(turn_deg)), Vector3::new(x, y, 0.0))
}

/// How the carrier really seats, in its own frame. A floor sheet lies on the floor.
fn seating(scene: &Scene, index: usize, carrier: &Carrier) -> Pose<geom::Carrier, geom::Carrier> {
    let kit = &scene.spec.kit_errors;
    if kit.exact || carrier.role == Role::Floor {
        return Pose::identity();
    }
    let mm = kit.seating_mm.unwrap_or(carrier.u_seating_mm);
    let turn = kit.seating_deg.map_or(carrier.u_seating_deg, |d| [d; 3]).map(rad);
    let draw = |first, sigma| draw::normal3(scene.spec.seed, Purpose::Seating, index as u64, first, sigma);
    Pose::new(UnitQuaternion::from_scaled_axis(draw(3, turn)), draw(0, [mm; 3]))
}

fn knocked(mistake: &CarrierMistake) -> Pose<geom::Carrier, geom::Carrier> {
    let [yaw_deg, pitch_deg, roll_deg] = mistake.off_deg;
    Pose::new(Attitude { yaw_deg, pitch_deg, roll_deg }.rotation(), Vector3::from(mistake.off_mm))
}

/// A marker as it was printed and glued on.
fn printed(
    scene: &Scene,
    carrier: &Carrier,
    marker: &Marker,
    pose: &Pose<World, geom::Carrier>,
    mistake: &CarrierMistake,
) -> PlacedMarker {
    let kit = &scene.spec.kit_errors;
    let seed = scene.spec.seed;
    let on = if kit.exact { 0.0 } else { 1.0 };
    let u_layout = match (kit.layout_mm, marker.u_centre_mm) {
        (Some(u), _) => [u; 3],
        (None, Some(u)) => u,
        (None, None) => [scene.kit.u_layout_mm; 3],
    };
    let mut off = draw::normal3(seed, Purpose::Layout, u64::from(marker.id), 0, u_layout) * on;
    if carrier.role == Role::Floor {
        off.z = 0.0;
    }
    let common = kit.scale_relative.unwrap_or(scene.kit.u_scale_relative) * draw::normal(seed, Purpose::Scale, 0, 0);
    let own = marker.u_size_mm.unwrap_or(0.0) * draw::normal(seed, Purpose::Layout, u64::from(marker.id), 4);
    let scale = (1.0 + on * common) * mistake.print_scale.unwrap_or(1.0);
    let mut placed = marker.carrier_from_marker();
    if mistake.displaced.contains(&marker.id) {
        off += Vector3::from(mistake.displaced_mm);
    }
    placed = Pose::new(placed.rotation(), placed.origin_mm() + off);
    let blotch = |i: usize, k: usize| {
        on * kit.print_noise_mm * draw::normal(seed, Purpose::Print, u64::from(marker.id), (2 * i + k) as u64)
    };
    PlacedMarker {
        id: marker.id,
        size_mm: marker.size_mm.map(|s| s * scale + on * own),
        pose: *pose * placed,
        blotch_mm: std::array::from_fn(|i| std::array::from_fn(|k| blotch(i, k))),
        waves: waves(scene, marker.id),
    }
}

/// What wavers in a marker's print.
fn waves(scene: &Scene, id: u32) -> Waves {
    let (kit, seed) = (&scene.spec.kit_errors, scene.spec.seed);
    if kit.exact || kit.print_wave_mm == 0.0 {
        return Waves::default();
    }
    let even = |k| draw::uniform(seed, Purpose::Wave, u64::from(id), k);
    Waves::drawn(kit.print_wave_mm, even, |k| draw::normal(seed, Purpose::Wave, u64::from(id), k))
}

fn strays(scene: &Scene) -> Vec<PlacedMarker> {
    let place = |s: &crate::synth::scene::Stray| {
        let turn = UnitQuaternion::from_scaled_axis(Vector3::z() * rad(s.yaw_deg));
        let (right, up) = (turn * Vector3::y(), Vector3::z());
        let matrix = nalgebra::Matrix3::from_columns(&[right, up, right.cross(&up)]);
        let pose = Pose::from_matrix(matrix, Vector3::from(s.at_mm));
        PlacedMarker { id: s.id, size_mm: [s.size_mm; 2], pose, blotch_mm: [[0.0; 2]; 4], waves: Waves::default() }
    };
    scene.spec.stray.iter().map(place).collect()
}
