//! What the tests of printed sheets share.

use std::path::{Path, PathBuf};
use std::process::Command;

use baywitness::marker::{Carrier, Kit, Marker, Role};
use baywitness::photo::Luma;
use nalgebra::Vector3;

/// A folder for files to be looked at: kept where `BAYWITNESS_KEEP` names a folder.
pub(crate) fn scratch(name: &str) -> (PathBuf, Option<tempfile::TempDir>) {
    match std::env::var_os("BAYWITNESS_KEEP") {
        Some(kept) => {
            let dir = PathBuf::from(kept).join(name);
            std::fs::create_dir_all(&dir).unwrap();
            (dir, None)
        }
        None => {
            let dir = tempfile::tempdir().unwrap();
            (dir.path().to_owned(), Some(dir))
        }
    }
}

fn skip(what: &str) {
    assert!(std::env::var("BAYWITNESS_REFERENCE").as_deref() != Ok("required"), "{what} is required here");
    println!("skipped: {what} is not installed");
}

/// Whether a program is installed.
pub(crate) fn have(program: &str) -> bool {
    let installed = Command::new(program).arg("--version").output().is_ok();
    if !installed && program != "qpdf" {
        skip(program);
    }
    installed
}

/// What a program prints; it must succeed.
pub(crate) fn run(program: &str, arguments: &[&str]) -> String {
    let output = Command::new(program).args(arguments).output().unwrap();
    assert!(output.status.success(), "{program}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}

/// Writes a PDF; returns its path.
pub(crate) fn print(dir: &Path, name: &str, pdf: &[u8]) -> String {
    let path = dir.join(format!("{name}.pdf"));
    std::fs::write(&path, pdf).unwrap();
    path.display().to_string()
}

/// A marker as the AprilTag library found it.
pub(crate) struct Tag {
    pub(crate) picture: usize,
    pub(crate) id: u32,
    pub(crate) hamming: u32,
    pub(crate) corners_px: [[f64; 2]; 4],
}

/// Runs the AprilTag library (pupil-apriltags of the Python that `BAYWITNESS_PYTHON` names).
pub(crate) fn april_tags(pictures: &[String]) -> Option<Vec<Tag>> {
    let python = std::env::var("BAYWITNESS_PYTHON").unwrap_or_else(|_| "python3".into());
    let there = Command::new(&python).args(["-c", "import numpy, PIL, pupil_apriltags"]).output();
    if !there.is_ok_and(|output| output.status.success()) {
        skip("pupil-apriltags");
        return None;
    }
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/suite/sheet/find_markers.py");
    let arguments: Vec<&str> = std::iter::once(script).chain(pictures.iter().map(String::as_str)).collect();
    Some(run(&python, &arguments).lines().map(tag).collect())
}

fn tag(line: &str) -> Tag {
    let fields: Vec<&str> = line.split_whitespace().collect();
    let number = |i: usize| fields[i].parse::<f64>().unwrap();
    Tag {
        picture: fields[0].parse().unwrap(),
        id: fields[1].parse().unwrap(),
        hamming: fields[2].parse().unwrap(),
        corners_px: std::array::from_fn(|i| [number(3 + 2 * i), number(4 + 2 * i)]),
    }
}

/// Width and grey levels of a picture as poppler writes it.
fn pgm(file: &str) -> (usize, Vec<u8>) {
    let bytes = std::fs::read(file).unwrap();
    let mut fields = bytes.splitn(4, |byte| byte.is_ascii_whitespace());
    assert_eq!(fields.next().unwrap(), b"P5");
    let mut number = || std::str::from_utf8(fields.next().unwrap()).unwrap().parse::<usize>().unwrap();
    let (width, height) = (number(), number());
    (width, bytes[bytes.len() - width * height..].to_vec())
}

/// A page for our own detector.
pub(crate) fn luma(file: &str) -> Luma {
    let (width, pixels) = pgm(file);
    Luma::new(width, pixels.len() / width, pixels).unwrap()
}

/// A page as poppler draws it, black 1 and white 0.
pub(crate) struct Grey {
    width: usize,
    dark: Vec<f64>,
    mm_per_px: f64,
}

impl Grey {
    pub(crate) fn page(pdf: &str, dir: &Path, page: usize, dpi: u32) -> Self {
        let stem = dir.join(format!("page-{page}-{dpi}")).display().to_string();
        let (page, dots) = (page.to_string(), dpi.to_string());
        run("pdftoppm", &["-r", &dots, "-gray", "-singlefile", "-f", &page, "-l", &page, pdf, &stem]);
        let (width, pixels) = pgm(&format!("{stem}.pgm"));
        let dark = pixels.iter().map(|grey| 1.0 - f64::from(*grey) / 255.0).collect();
        Grey { width, dark, mm_per_px: 25.4 / f64::from(dpi) }
    }

    fn px(&self, mm: f64) -> usize {
        (mm / self.mm_per_px).round() as usize
    }

    fn dark(&self, x: usize, y: usize) -> f64 {
        self.dark[y * self.width + x]
    }

    /// x of the edge near `at` (mm) from the dark area within a third of a cell beside it, averaged over half a cell.
    pub(crate) fn upright_edge(&self, at: [f64; 2], cell: [f64; 2], black_left: bool) -> f64 {
        let columns = self.px(at[0] - cell[0] / 3.0)..self.px(at[0] + cell[0] / 3.0);
        let rows = self.px(at[1] - cell[1] / 4.0)..self.px(at[1] + cell[1] / 4.0);
        let sum: f64 = rows.clone().map(|y| columns.clone().map(|x| self.dark(x, y)).sum::<f64>()).sum();
        self.edge(columns, sum / rows.len() as f64, black_left)
    }

    /// y of the edge near `at` likewise.
    pub(crate) fn lying_edge(&self, at: [f64; 2], cell: [f64; 2], black_above: bool) -> f64 {
        let columns = self.px(at[0] - cell[0] / 4.0)..self.px(at[0] + cell[0] / 4.0);
        let rows = self.px(at[1] - cell[1] / 3.0)..self.px(at[1] + cell[1] / 3.0);
        let sum: f64 = rows.clone().map(|y| columns.clone().map(|x| self.dark(x, y)).sum::<f64>()).sum();
        self.edge(rows, sum / columns.len() as f64, black_above)
    }

    fn edge(&self, span: std::ops::Range<usize>, dark_px: f64, black_first: bool) -> f64 {
        let at = if black_first { span.start as f64 + dark_px } else { span.end as f64 - dark_px };
        at * self.mm_per_px
    }

    /// x of the middle of an upright dark line within 1 mm of `at`.
    pub(crate) fn dark_line_x(&self, at: [f64; 2]) -> f64 {
        let y = self.px(at[1]);
        self.middle((self.px(at[0] - 1.0)..self.px(at[0] + 1.0)).map(|x| (x, self.dark(x, y))))
    }

    /// y of the middle of a lying dark line within 1 mm of `at`.
    pub(crate) fn dark_line_y(&self, at: [f64; 2]) -> f64 {
        let x = self.px(at[0]);
        self.middle((self.px(at[1] - 1.0)..self.px(at[1] + 1.0)).map(|y| (y, self.dark(x, y))))
    }

    fn middle(&self, line: impl Iterator<Item = (usize, f64)>) -> f64 {
        let (sum, weight) =
            line.fold((0.0, 0.0), |(sum, weight), (at, dark)| (sum + dark * (at as f64 + 0.5), weight + dark));
        assert!(weight > 1.0, "no line there");
        sum / weight * self.mm_per_px
    }
}

fn marker(id: u32, size_mm: [f64; 2], centre: [f64; 3], right: Vector3<f64>, up: Vector3<f64>) -> Marker {
    Marker { id, size_mm, centre_mm: centre.into(), right, up, u_centre_mm: None, u_turn_deg: None, u_size_mm: None }
}

fn carrier(name: &str, role: Role, markers: Vec<Marker>) -> Carrier {
    Carrier { name: name.into(), role, u_seating_mm: 0.0, u_seating_deg: [0.0; 3], on_centreline: false, markers }
}

/// An invented kit with what sheets must cope with: sizes that differ along right and up,
/// markers that share a sheet, turned faces, a wide marker, a tiny one.
pub(crate) fn demo_kit() -> Kit {
    let (x, y, z) = (Vector3::x(), Vector3::y(), Vector3::z());
    let turned = Vector3::new(0.5, 0.75f64.sqrt(), 0.0);
    let stand = vec![
        marker(0, [150.0, 149.4], [60.0, 640.0, 165.0], y, z),
        marker(1, [150.0; 2], [60.0, 640.0, -165.0], y, z),
        marker(2, [150.0; 2], [140.0, 240.0, 0.0], y, z),
        marker(3, [120.0; 2], [-25.0, 775.0, 110.0], -x, z),
        marker(4, [120.0; 2], [-25.0, -775.0, 110.0], x, z),
    ];
    let plate = vec![
        marker(10, [90.0, 90.5], [126.0, 139.0, 60.0], y, z),
        marker(11, [90.0, 90.5], [126.0, 139.0, -60.0], y, z),
        marker(12, [120.0; 2], [-40.0, 60.0, 0.0], turned, z),
    ];
    Kit {
        name: "demo-kit".into(),
        u_layout_mm: 0.3,
        u_turn_deg: 0.03,
        u_scale_relative: 0.0005,
        u_aspect_relative: 0.002,
        serial: Some("K-7".into()),
        survey_due: None,
        carriers: vec![
            carrier("stand", Role::Target, stand),
            carrier("rear-left", Role::RearLeftWheel, plate),
            carrier("floor-1", Role::Floor, vec![marker(30, [160.0; 2], [0.0; 3], -y, x)]),
            carrier("nose", Role::Nose, vec![marker(40, [30.0; 2], [0.0; 3], y, z)]),
        ],
        layout: None,
    }
}
