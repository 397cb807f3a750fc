//! The scene file (`scene/1`): every key with its default, so that a few
//! lines are a whole bay.

use serde::Deserialize;

use super::bay_spec::{ClutterSpec, FloorSpec, LampSpec, OpeningSpec, RoomSpec};
use super::insides_spec::InsidesSpec;
use super::photo_spec::{PhotoSpec, Processing};
use super::stand_error::StandError;
use super::vehicle_spec::VehicleSpec;

/// A scene as written in its file. Unknown keys are errors.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SceneSpec {
    /// `scene/1`.
    pub format: String,
    /// Everything random follows from it.
    #[serde(default)]
    pub seed: u64,
    /// Camera file, relative to the scene file.
    pub camera: String,
    /// Marker kit, likewise.
    pub kit: String,
    /// Set-up sheet, likewise.
    pub setup: String,
    /// The lens that really took the photos, where it differs from the camera file.
    pub true_lens: Option<TrueLens>,
    /// Errors of the kit that nobody knows.
    #[serde(default)]
    pub kit_errors: KitErrors,
    /// The vehicle.
    #[serde(default)]
    pub vehicle: VehicleSpec,
    /// The target stand.
    #[serde(default)]
    pub stand: StandSpec,
    /// The floor and the sheets on it.
    #[serde(default)]
    pub floor: FloorSpec,
    /// Size and colours of the room.
    #[serde(default)]
    pub room: RoomSpec,
    /// Lamps; left out: three ceiling lamps.
    pub lamp: Option<Vec<LampSpec>>,
    /// Open doors and windows that light comes in by.
    #[serde(default)]
    pub opening: Vec<OpeningSpec>,
    /// Things that stand about; left out: the usual ones.
    pub clutter: Option<Vec<ClutterSpec>>,
    /// How the camera turns light into a picture; each photo may change it.
    #[serde(default)]
    pub processing: Processing,
    /// What the phone does besides: a preset, or key by key; left out: nothing.
    #[serde(default)]
    pub insides: InsidesSpec,
    /// The photos; left out: two from the front quarters.
    pub photo: Option<Vec<PhotoSpec>>,
    /// Carriers that are not where they should be.
    #[serde(default)]
    pub carrier: Vec<CarrierMistake>,
    /// Copies of markers that have no business in the bay.
    #[serde(default)]
    pub stray: Vec<Stray>,
    /// What each move of the stand changes, one after the other.
    #[serde(default, rename = "move")]
    pub moves: Vec<StandError>,
    /// Keys of the job file that the scene hands on as they are (job, technician,
    /// vehicle, prerequisites, reading, attachment, calibration, ...).
    #[serde(default)]
    pub job: toml::Table,
}

impl Default for SceneSpec {
    fn default() -> Self {
        SceneSpec {
            format: "scene/1".to_owned(),
            seed: 0,
            camera: "camera.toml".to_owned(),
            kit: "kit.toml".to_owned(),
            setup: "setup.toml".to_owned(),
            true_lens: None,
            kit_errors: KitErrors::default(),
            vehicle: VehicleSpec::default(),
            stand: StandSpec::default(),
            floor: FloorSpec::default(),
            room: RoomSpec::default(),
            lamp: None,
            opening: Vec::new(),
            clutter: None,
            processing: Processing::default(),
            insides: InsidesSpec::default(),
            photo: None,
            carrier: Vec::new(),
            stray: Vec::new(),
            moves: Vec::new(),
            job: toml::Table::new(),
        }
    }
}

/// A lens given in the scene itself.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TrueLens {
    /// Focal lengths, px.
    pub focal_px: [f64; 2],
    /// Principal point, px.
    pub centre_px: [f64; 2],
    /// Distortion in the camera file's model and order.
    pub distortion: Vec<f64>,
}

/// 1 sigma of what is drawn from the seed; left out: what the kit file states.
#[derive(Debug, Clone, PartialEq, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct KitErrors {
    /// Marker centres on their carriers, per coordinate, mm.
    pub layout_mm: Option<f64>,
    /// Common factor on all marker sizes.
    pub scale_relative: Option<f64>,
    /// Seating of wheel plates and other carriers, per axis, mm.
    pub seating_mm: Option<f64>,
    /// Seating about each axis, degrees.
    pub seating_deg: Option<f64>,
    /// Blotchy print: each corner of each marker, along right and up, mm; no file states it.
    pub print_noise_mm: f64,
    /// Waves in the print (a feed that wavers, paper that stretched): how far each point is off its place, along right
    /// and up, mm; no file states it.
    pub print_wave_mm: f64,
    /// Nothing is drawn: the kit is exactly as its file says.
    pub exact: bool,
}

/// The target stand: where the set-up sheet wants it, and by how much it is off.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct StandSpec {
    /// The carrier's name; left out: the first one of role target.
    pub carrier: Option<String>,
    /// Wanted distance before the nose, where the sheet states none, mm.
    pub distance_mm: f64,
    /// Wanted height of the aim point, where the sheet states none, mm.
    pub height_mm: f64,
    /// Deviation from what is wanted.
    pub error: StandError,
    /// Colour of the panel, linear RGB.
    pub colour: [f32; 3],
}

impl Default for StandSpec {
    fn default() -> Self {
        StandSpec {
            carrier: None,
            distance_mm: 1500.0,
            height_mm: 850.0,
            error: StandError::default(),
            colour: [0.42, 0.43, 0.44],
        }
    }
}

/// What is wrong with one carrier.
#[derive(Debug, Clone, PartialEq, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct CarrierMistake {
    /// Name in the kit.
    pub name: String,
    /// It is not in the bay.
    pub left_out: bool,
    /// It sits on what the named carrier marks (plates swapped), upside down where it is of the other side.
    pub mounted_on: Option<String>,
    /// Seated off, in its own frame, mm.
    pub off_mm: [f64; 3],
    /// Seated off, yaw, pitch and roll, degrees.
    pub off_deg: [f64; 3],
    /// Its markers were printed at this scale; their centres stay where they belong.
    pub print_scale: Option<f64>,
    /// Codes of markers that sit elsewhere on it than the kit file has them.
    pub displaced: Vec<u32>,
    /// By how much, in its own frame, mm.
    pub displaced_mm: [f64; 3],
    /// File names of the photos in which this is so; empty: in all.
    pub photos: Vec<String>,
}

/// A copy of a marker somewhere in the bay.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Stray {
    /// Code number.
    pub id: u32,
    /// Outer edge of its black border, mm.
    pub size_mm: f64,
    /// Centre in the design frame, mm.
    pub at_mm: [f64; 3],
    /// Direction that its face looks to, from x to the left, degrees.
    #[serde(default)]
    pub yaw_deg: f64,
}
