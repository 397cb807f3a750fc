//! What the program carries with it, as text and bytes: nothing here reads or
//! judges them. The files lie beside this one, so that they can be looked at,
//! copied and changed; what they say is in `docs/formats`.

/// The code table of the printed markers: the published 36h11 family.
pub const TABLE_36H11: &str = include_str!("36h11.txt");

/// Set-up sheets by name.
pub const SETUPS: [(&str, &str); 9] = [
    ("demo-front-radar", include_str!("setups/demo-front-radar.toml")),
    ("radar-plate", include_str!("setups/radar-plate.toml")),
    ("radar-plate-two-tilts", include_str!("setups/radar-plate-two-tilts.toml")),
    ("corner-reflector", include_str!("setups/corner-reflector.toml")),
    ("camera-board", include_str!("setups/camera-board.toml")),
    ("camera-board-ride-height", include_str!("setups/camera-board-ride-height.toml")),
    ("camera-boards-two", include_str!("setups/camera-boards-two.toml")),
    ("surround-mats", include_str!("setups/surround-mats.toml")),
    ("radar-follows-sensor", include_str!("setups/radar-follows-sensor.toml")),
];

/// Marker kits by name.
pub const KITS: [(&str, &str); 7] = [
    ("two-boards", include_str!("kits/two-boards.toml")),
    ("reference", include_str!("kits/reference.toml")),
    ("mats", include_str!("kits/mats.toml")),
    ("demo-bay", include_str!("kits/demo-bay.toml")),
    ("bay-a4", include_str!("kits/bay-a4.toml")),
    ("bay-a4-arches", include_str!("kits/bay-a4-arches.toml")),
    ("bay-a3", include_str!("kits/bay-a3.toml")),
];

/// Cameras by name: an invented one, for demonstration.
pub const CAMERAS: [(&str, &str); 1] = [("demo-phone", include_str!("cameras/demo-phone.toml"))];

/// Boards to fit a camera with, by name.
pub const BOARDS: [(&str, &str); 2] =
    [("board-a4", include_str!("boards/board-a4.toml")), ("board-a3", include_str!("boards/board-a3.toml"))];

/// Noto Sans, regular weight (`fonts/README.md` says from where, under which licence).
pub const FONT_REGULAR: &[u8] = include_bytes!("fonts/NotoSans-Regular.ttf");
/// Noto Sans, bold.
pub const FONT_BOLD: &[u8] = include_bytes!("fonts/NotoSans-Bold.ttf");
