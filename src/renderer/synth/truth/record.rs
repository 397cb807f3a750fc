//! `truth.json`.

use std::collections::BTreeMap;

use serde::Serialize;

use super::corners::SeenMarker;
use super::quantities::{Quantities, measured};
use crate::geom::{self, Attitude, Pose, Vehicle, World, deg};
use crate::marker::Kit;
use crate::setup::{ReferenceLine, Setup};
use crate::synth::place::{Line, Placement};
use crate::synth::view::View;

/// All that is true of a job (`truth/1`). Poses are in the job's vehicle
/// frame: origin on the floor below the midpoint of the rear hub datums as
/// they are in the first photo, x along the job's reference line.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Truth {
    /// `truth/1`.
    pub format: &'static str,
    /// The line that `measured` refers to.
    pub reference_line: &'static str,
    /// True values at the first photo, against the job's reference line.
    pub measured: Quantities,
    /// The same against each of the three lines.
    pub by_reference_line: BTreeMap<&'static str, Quantities>,
    /// Each carrier at the first photo, by name.
    pub carriers: BTreeMap<String, CarrierTruth>,
    /// The photos in the job's order.
    pub photos: Vec<PhotoTruth>,
}

/// A carrier's true pose.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CarrierTruth {
    /// Role in the kit.
    pub role: &'static str,
    /// Origin, mm.
    pub position_mm: [f64; 3],
    /// Rotation from carrier to vehicle.
    pub quaternion_wxyz: [f64; 4],
    /// Yaw, pitch and roll, degrees.
    pub yaw_pitch_roll_deg: [f64; 3],
}

/// A photo's true camera and markers.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PhotoTruth {
    /// Path in the job folder.
    pub file: String,
    /// Width and height of the stored grid.
    pub size_px: [u32; 2],
    /// True lens: model, focal lengths, principal point, distortion.
    pub lens: LensTruth,
    /// Camera's place, mm.
    pub position_mm: [f64; 3],
    /// Rotation from the camera (x right, y down, z ahead on the stored grid) to the vehicle.
    pub quaternion_wxyz: [f64; 4],
    /// How the camera turned while its rows were read; position and rotation are the middle row's, each corner is
    /// where its own row sees it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub turning: Option<TurningTruth>,
    /// True values at this photo, where stand or vehicle stood elsewhere than in the first.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub measured: Option<Quantities>,
    /// The markers that are seen at least in part.
    pub markers: Vec<MarkerTruth>,
}

/// A photo's true lens.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LensTruth {
    model: &'static str,
    focal_px: [f64; 2],
    centre_px: [f64; 2],
    distortion: Vec<f64>,
}

/// A hand's turn while rows are read.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct TurningTruth {
    /// About the stored grid's axes right, down and ahead, by the right-hand rule.
    rate_deg_s: [f64; 3],
    /// From the first row's moment to the last one's.
    readout_s: f64,
}

/// A marker in a photo.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct MarkerTruth {
    id: u32,
    carrier: Option<String>,
    corners_px: [[f64; 2]; 4],
    corners_visible: [bool; 4],
    visible: f64,
    side_px: f64,
    tilt_deg: f64,
}

/// One photo as staged.
pub(crate) struct Shown {
    /// Path in the job folder.
    pub(crate) file: String,
    /// The step that it shows.
    pub(crate) step: Option<String>,
    /// Its camera.
    pub(crate) view: View,
    /// The bay at that moment.
    pub(crate) placement: Placement,
    /// What it shows.
    pub(crate) markers: Vec<SeenMarker>,
}

/// The truth of a job.
pub(crate) fn truth(kit: &Kit, setup: &Setup, photos: &[Shown]) -> Truth {
    let Some(first) = photos.first().map(|p| &p.placement) else {
        return empty(setup);
    };
    let line = setup.reference_line;
    let vehicle_from_world = vehicle_from_world(&first.vehicle.line(line));
    let by_line = ReferenceLine::ALL.map(|l| (l.name(), measured(first, kit, setup, l)));
    let carriers = first.carriers.iter().map(|c| {
        let carrier = &kit.carriers[c.index];
        (carrier.name.clone(), carrier_truth(carrier.role.name(), &(vehicle_from_world * c.pose)))
    });
    let photo = |p: &Shown| {
        let moved = p.placement.vehicle != first.vehicle || p.placement.carriers != first.carriers;
        let own = moved.then(|| measured(&p.placement, kit, setup, line));
        photo_truth(kit, p, &vehicle_from_world, own)
    };
    Truth {
        format: "truth/1",
        reference_line: line.name(),
        measured: with_steps(kit, setup, line, photos),
        by_reference_line: by_line.into_iter().collect(),
        carriers: carriers.collect(),
        photos: photos.iter().map(photo).collect(),
    }
}

/// The quantities of the first photo, and under `KEY#STEP` those of the first
/// photo of each further step.
fn with_steps(kit: &Kit, setup: &Setup, line: ReferenceLine, photos: &[Shown]) -> Quantities {
    let of = |p: &Shown| measured(&p.placement, kit, setup, line);
    let mut all = photos.first().map(of).unwrap_or_default();
    for step in setup.steps.iter().skip(1) {
        let Some(photo) = photos.iter().find(|p| p.step.as_ref() == Some(step)) else { continue };
        all.extend(of(photo).into_iter().map(|(key, value)| (format!("{key}#{step}"), value)));
    }
    all
}

fn empty(setup: &Setup) -> Truth {
    Truth {
        format: "truth/1",
        reference_line: setup.reference_line.name(),
        measured: Quantities::new(),
        by_reference_line: BTreeMap::new(),
        carriers: BTreeMap::new(),
        photos: Vec::new(),
    }
}

fn vehicle_from_world(line: &Line) -> Pose<Vehicle, World> {
    let turn = Attitude { yaw_deg: deg(line.heading_rad), ..Attitude::default() }.rotation();
    Pose::<World, Vehicle>::new(turn, line.origin_mm.coords).inverse()
}

fn wxyz<A: geom::Frame, B: geom::Frame>(pose: &Pose<A, B>) -> [f64; 4] {
    let q = pose.rotation();
    [q.w, q.i, q.j, q.k]
}

fn carrier_truth(role: &'static str, pose: &Pose<Vehicle, geom::Carrier>) -> CarrierTruth {
    let attitude = Attitude::from_rotation(&pose.rotation());
    CarrierTruth {
        role,
        position_mm: pose.origin_mm().into(),
        quaternion_wxyz: wxyz(pose),
        yaw_pitch_roll_deg: [attitude.yaw_deg, attitude.pitch_deg, attitude.roll_deg],
    }
}

fn photo_truth(
    kit: &Kit,
    shown: &Shown,
    vehicle_from_world: &Pose<Vehicle, World>,
    measured: Option<Quantities>,
) -> PhotoTruth {
    let lens = &shown.view.lens;
    let vehicle_from_camera = *vehicle_from_world * shown.view.camera_from_world.inverse();
    let marker = |m: &SeenMarker| MarkerTruth {
        id: m.id,
        carrier: kit.marker(m.id).map(|(i, _)| kit.carriers[i].name.clone()),
        corners_px: m.corners_px,
        corners_visible: m.corners_visible,
        visible: m.visible,
        side_px: m.side_px,
        tilt_deg: m.tilt_deg,
    };
    PhotoTruth {
        file: shown.file.clone(),
        size_px: shown.view.size_px,
        lens: LensTruth {
            model: lens.model.name(),
            focal_px: lens.focal_px,
            centre_px: lens.centre_px,
            distortion: lens.distortion[..lens.model.coefficients()].to_vec(),
        },
        position_mm: vehicle_from_camera.origin_mm().into(),
        quaternion_wxyz: wxyz(&vehicle_from_camera),
        turning: shown
            .view
            .turning
            .map(|t| TurningTruth { rate_deg_s: t.rate_rad_s.map(f64::to_degrees).into(), readout_s: t.readout_s }),
        measured,
        markers: shown.markers.iter().map(marker).collect(),
    }
}
