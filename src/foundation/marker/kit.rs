//! Kits: carriers with the markers on them (`kit/1`).

use nalgebra::{DMatrix, Matrix3, Point3, Vector3};
use time::Date;

use crate::geom;
use crate::quantity::Quantity;

/// What a carrier marks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Role {
    /// The target stand.
    Target,
    /// Plate on the left rear wheel.
    RearLeftWheel,
    /// Plate on the right rear wheel.
    RearRightWheel,
    /// Plate on the left front wheel.
    FrontLeftWheel,
    /// Plate on the right front wheel.
    FrontRightWheel,
    /// Sheet on the floor.
    Floor,
    /// Mark on the vehicle's nose.
    Nose,
    /// Mark on the edge of the left rear wheel arch.
    RearLeftArch,
    /// Mark on the edge of the right rear wheel arch.
    RearRightArch,
    /// Mark on the edge of the left front wheel arch.
    FrontLeftArch,
    /// Mark on the edge of the right front wheel arch.
    FrontRightArch,
    /// The job's one-time card.
    Card,
}

impl Role {
    /// Every role, in the order of reports.
    pub const ALL: [Role; 12] = [
        Role::Target,
        Role::RearLeftWheel,
        Role::RearRightWheel,
        Role::FrontLeftWheel,
        Role::FrontRightWheel,
        Role::Floor,
        Role::Nose,
        Role::RearLeftArch,
        Role::RearRightArch,
        Role::FrontLeftArch,
        Role::FrontRightArch,
        Role::Card,
    ];

    /// The name in files.
    pub fn name(self) -> &'static str {
        match self {
            Role::Target => "target",
            Role::RearLeftWheel => "rear_left_wheel",
            Role::RearRightWheel => "rear_right_wheel",
            Role::FrontLeftWheel => "front_left_wheel",
            Role::FrontRightWheel => "front_right_wheel",
            Role::Floor => "floor",
            Role::Nose => "nose",
            Role::RearLeftArch => "rear_left_arch",
            Role::RearRightArch => "rear_right_arch",
            Role::FrontLeftArch => "front_left_arch",
            Role::FrontRightArch => "front_right_arch",
            Role::Card => "card",
        }
    }

    /// Whether the carrier sits on a wheel.
    pub fn is_wheel(self) -> bool {
        matches!(self, Role::RearLeftWheel | Role::RearRightWheel | Role::FrontLeftWheel | Role::FrontRightWheel)
    }

    /// Whether the carrier sits on the edge of a wheel arch, and so on the body.
    pub fn is_arch(self) -> bool {
        self.arch_wheel().is_some()
    }

    /// The wheel below an arch mark.
    pub fn arch_wheel(self) -> Option<Role> {
        match self {
            Role::RearLeftArch => Some(Role::RearLeftWheel),
            Role::RearRightArch => Some(Role::RearRightWheel),
            Role::FrontLeftArch => Some(Role::FrontLeftWheel),
            Role::FrontRightArch => Some(Role::FrontRightWheel),
            _ => None,
        }
    }

    /// The mark whose height above its wheel an arch height is.
    pub fn of_arch_height(quantity: Quantity) -> Option<Role> {
        match quantity {
            Quantity::ArchHeightRearLeft => Some(Role::RearLeftArch),
            Quantity::ArchHeightRearRight => Some(Role::RearRightArch),
            Quantity::ArchHeightFrontLeft => Some(Role::FrontLeftArch),
            Quantity::ArchHeightFrontRight => Some(Role::FrontRightArch),
            _ => None,
        }
    }

    /// Whether the carrier moves with the vehicle (a wheel plate, the nose or an arch mark).
    pub fn is_on_vehicle(self) -> bool {
        self.is_wheel() || self == Role::Nose || self.is_arch()
    }
}

/// A marker kit: every carrier of a job and how well it was made.
#[derive(Debug, Clone, PartialEq)]
pub struct Kit {
    /// Name in records.
    pub name: String,
    /// 1 sigma of each coordinate of each marker's centre on its carrier, mm.
    pub u_layout_mm: f64,
    /// 1 sigma of how each marker is turned on its carrier about each axis, degrees: glued askew, on a
    /// plate that is not quite flat.
    pub u_turn_deg: f64,
    /// 1 sigma of one common factor on all marker sizes.
    pub u_scale_relative: f64,
    /// 1 sigma of the prints' width over their height, alike for all but for a tenth of it on each carrier, relative: paper
    /// gives way across its grain and hardly along it, a printer's feed has another scale than its line, and a ruler reads no
    /// better.
    pub u_aspect_relative: f64,
    /// Serial number of the kit.
    pub serial: Option<String>,
    /// When the kit must be surveyed again.
    pub survey_due: Option<Date>,
    /// The carriers, in the file's order.
    pub carriers: Vec<Carrier>,
    /// Joint covariance from a survey; replaces `u_layout_mm` and `u_turn_deg`.
    pub layout: Option<Layout>,
}

/// A rigid body that bears markers. Its axes are parallel to the vehicle's
/// when the set-up is perfect; see the crate's conventions for the origins.
#[derive(Debug, Clone, PartialEq)]
pub struct Carrier {
    /// Name in records, unique in the kit.
    pub name: String,
    /// What it marks.
    pub role: Role,
    /// Repeatability of its seat, per axis, mm (1 sigma).
    pub u_seating_mm: f64,
    /// Repeatability of its seat about x, y, z, degrees (1 sigma).
    pub u_seating_deg: [f64; 3],
    /// A nose mark that marks the vehicle's plane of symmetry.
    pub on_centreline: bool,
    /// The printed markers.
    pub markers: Vec<Marker>,
}

/// One printed marker on its carrier.
#[derive(Debug, Clone, PartialEq)]
pub struct Marker {
    /// Code number in the family; unique in the kit.
    pub id: u32,
    /// Outer edge of the black border along right and up, mm.
    pub size_mm: [f64; 2],
    /// Centre in the carrier's frame, mm.
    pub centre_mm: Vector3<f64>,
    /// Unit vector to the right, as seen by someone looking at the printed face.
    pub right: Vector3<f64>,
    /// Unit vector upwards on the face, square to `right`.
    pub up: Vector3<f64>,
    /// 1 sigma of the centre's coordinates where surveyed, mm.
    pub u_centre_mm: Option<[f64; 3]>,
    /// 1 sigma of how it is turned about the carrier's axes where surveyed, degrees.
    pub u_turn_deg: Option<[f64; 3]>,
    /// 1 sigma of this marker's own size where surveyed, mm.
    pub u_size_mm: Option<f64>,
}

/// Joint covariance of surveyed marker positions (`layout/1`).
#[derive(Debug, Clone, PartialEq)]
pub struct Layout {
    /// The markers in the order of the covariance.
    pub ids: Vec<u32>,
    /// 6n x 6n over centre (mm) and rotation (rad) of each marker in its carrier.
    pub covariance: DMatrix<f64>,
    /// 7n x 7n, the same with each marker's relative size as seventh value:
    /// an error of scale moves centres and sizes together.
    pub with_sizes: Option<DMatrix<f64>>,
}

impl Layout {
    /// The covariance that says most.
    pub fn joint(&self) -> &DMatrix<f64> {
        self.with_sizes.as_ref().unwrap_or(&self.covariance)
    }

    /// Its rows for each marker.
    pub fn rows(&self) -> usize {
        if self.knows_sizes() { 7 } else { 6 }
    }

    /// Whether sizes are part of it.
    pub fn knows_sizes(&self) -> bool {
        self.with_sizes.is_some()
    }
}

impl Marker {
    /// Outward normal of the printed face, towards the viewer.
    pub fn normal(&self) -> Vector3<f64> {
        self.right.cross(&self.up)
    }

    /// The four outer corners of the black border in the carrier's frame, mm:
    /// top-left, top-right, bottom-right, bottom-left of the upright code.
    pub fn corners_mm(&self) -> [Point3<f64>; 4] {
        let right = self.right * (self.size_mm[0] / 2.0);
        let up = self.up * (self.size_mm[1] / 2.0);
        [-right + up, right + up, right - up, -right - up].map(|d| Point3::from(self.centre_mm + d))
    }

    /// Where the marker sits on its carrier.
    pub fn carrier_from_marker(&self) -> geom::Pose<geom::Carrier, geom::Marker> {
        geom::Pose::from_matrix(Matrix3::from_columns(&[self.right, self.up, self.normal()]), self.centre_mm)
    }
}

impl Carrier {
    /// Whether all markers look up: a mat or sheet that lies on the floor.
    pub fn lies_flat(&self) -> bool {
        self.markers.iter().all(|m| m.normal().z > 0.9)
    }
}

impl Kit {
    /// The carrier's index and marker of an id.
    pub fn marker(&self, id: u32) -> Option<(usize, &Marker)> {
        self.carriers.iter().enumerate().find_map(|(i, c)| c.markers.iter().find(|m| m.id == id).map(|m| (i, m)))
    }

    /// Indices of the carriers of a role.
    pub fn with_role(&self, role: Role) -> impl Iterator<Item = usize> + '_ {
        self.carriers.iter().enumerate().filter(move |(_, c)| c.role == role).map(|(i, _)| i)
    }
}
