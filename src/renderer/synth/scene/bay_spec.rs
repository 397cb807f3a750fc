//! The bay of a scene: floor, room, lamps and what stands about.

use serde::Deserialize;

/// The floor and the sheets on it.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct FloorSpec {
    /// The floor rises by this angle beyond `slope_from_x_mm`, degrees.
    pub slope_deg: f64,
    /// Where the rise begins, mm before the rear axle.
    pub slope_from_x_mm: f64,
    /// Where each sheet lies, in the kit's order of floor carriers: x, y (mm) and turn (degrees);
    /// sheets beyond the list lie on default places.
    pub sheets: Vec<[f64; 3]>,
    /// Colour of the concrete, linear RGB.
    pub colour: [f32; 3],
    /// Relative depth of its stains.
    pub stains: f32,
}

impl Default for FloorSpec {
    fn default() -> Self {
        FloorSpec {
            slope_deg: 0.0,
            slope_from_x_mm: 3800.0,
            sheets: Vec::new(),
            colour: [0.27, 0.27, 0.26],
            stains: 0.6,
        }
    }
}

/// Size and colours of the room.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct RoomSpec {
    /// Wall behind the vehicle, mm behind the rear axle.
    pub behind_mm: f64,
    /// Wall before the vehicle, mm before the rear axle.
    pub ahead_mm: f64,
    /// Walls to the left and to the right of the centreline, mm.
    pub sides_mm: [f64; 2],
    /// Ceiling, mm.
    pub height_mm: f64,
    /// Colour of the walls, linear RGB.
    pub wall: [f32; 3],
    /// Colour of the walls' lower part.
    pub skirt: [f32; 3],
    /// Light that comes from everywhere, against the lamps (1: middling).
    pub ambient: f32,
}

impl Default for RoomSpec {
    fn default() -> Self {
        RoomSpec {
            behind_mm: 2800.0,
            ahead_mm: 10_500.0,
            sides_mm: [4200.0, 4000.0],
            height_mm: 3500.0,
            wall: [0.52, 0.52, 0.48],
            skirt: [0.13, 0.18, 0.17],
            ambient: 1.0,
        }
    }
}

/// A rectangular lamp that shines downwards.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LampSpec {
    /// Centre, mm.
    pub at_mm: [f64; 3],
    /// Along x and y, mm.
    #[serde(default = "lamp_size")]
    pub size_mm: [f64; 2],
    /// Colour and strength, linear RGB (1: middling).
    #[serde(default = "lamp_colour")]
    pub colour: [f32; 3],
}

/// An upright luminous rectangle: an open door or a window, by which light comes in.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct OpeningSpec {
    /// Centre, mm.
    pub at_mm: [f64; 3],
    /// Width and height, mm.
    #[serde(default = "opening_size")]
    pub size_mm: [f64; 2],
    /// Where its light goes, from x to the left: -90 comes in from the vehicle's left, degrees.
    pub facing_deg: f64,
    /// Colour and strength, linear RGB (1: an overcast day).
    #[serde(default = "opening_colour")]
    pub colour: [f32; 3],
}

fn opening_size() -> [f64; 2] {
    [3000.0, 2600.0]
}

/// Daylight is bluer than the lamps.
fn opening_colour() -> [f32; 3] {
    [0.93, 1.0, 1.12]
}

fn lamp_size() -> [f64; 2] {
    [1300.0, 260.0]
}

fn lamp_colour() -> [f32; 3] {
    [1.0, 0.98, 0.93]
}

/// What kind of thing stands about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum ClutterKind {
    /// A plain box.
    Box,
    /// A rack with boxes.
    Shelf,
    /// A pile of tyres.
    Tyres,
    /// A chest with drawers.
    Tools,
    /// A barrel.
    Barrel,
    /// Black and white squares on a wall.
    Checker,
    /// Slanted stripes on a wall.
    Stripes,
    /// A sign with text on a wall.
    Sign,
    /// A line painted on the floor.
    Line,
    /// A post from floor to ceiling.
    Post,
}

/// One thing that stands about. Wall things face `yaw_deg`.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ClutterSpec {
    /// What it is.
    pub kind: ClutterKind,
    /// Centre of its foot (of its face, for what hangs on a wall), mm.
    pub at_mm: [f64; 3],
    /// Turn about z; 0 looks forward along x, degrees.
    #[serde(default)]
    pub yaw_deg: f64,
    /// Depth, width and height, mm; zero: the kind's own.
    #[serde(default)]
    pub size_mm: [f64; 3],
    /// Colour, linear RGB; left out: the kind's own.
    pub colour: Option<[f32; 3]>,
    /// Text of a sign, lines separated by `/`.
    #[serde(default)]
    pub text: String,
}
