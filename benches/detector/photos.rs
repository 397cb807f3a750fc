//! The photos that the bench renders.

use std::path::{Path, PathBuf};

use crate::detect_support::TrueMarker;
use crate::detect_support::render::{Camera, Kind, Trouble, render};

/// Sides without foreshortening, px.
pub(crate) const SIDES: [f64; 8] = [16.0, 20.0, 25.0, 32.0, 45.0, 70.0, 100.0, 200.0];
/// Tilts, degrees.
pub(crate) const TILTS: [(f64, f64); 4] = [(0.0, 30.0), (30.0, 45.0), (45.0, 60.0), (60.0, 70.0)];

/// What a photo is for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Group {
    /// Markers of one side and a range of tilt (its index).
    Grid(usize),
    /// The same, 40 grey levels of contrast, tilt to 45 degrees.
    Faint,
    Troubled(Trouble),
    /// No markers, much that resembles them.
    Clutter,
    /// 12 MP.
    Speed,
    /// Other sizes and codings, the same angular size of markers.
    Other(&'static str),
}

pub(crate) struct Shot {
    pub(crate) file: PathBuf,
    pub(crate) group: Group,
    pub(crate) side: f64,
    pub(crate) pixels: usize,
    pub(crate) markers: Vec<TrueMarker>,
    /// Standard deviation of the noise at edges as stored, grey levels.
    pub(crate) noise: f64,
}

/// A photo to be rendered.
struct Plan {
    group: Group,
    kind: Kind,
    size: (usize, usize),
}

/// Renders the photos of those groups that are wanted: each the same whichever others are.
pub(crate) fn render_all(folder: &Path, camera: Camera, quick: bool, wanted: impl Fn(Group) -> bool) -> Vec<Shot> {
    let plans = plans(camera, quick);
    let shot = |(i, plan): (usize, &Plan)| {
        let rendered = render(&plan.kind, plan.size.0, plan.size.1, 7000 + i as u64);
        let file = folder.join(format!("{camera:?}-{i}.jpg"));
        std::fs::write(&file, &rendered.jpeg).unwrap();
        let pixels = plan.size.0 * plan.size.1;
        Shot {
            file,
            group: plan.group,
            side: plan.kind.side.0,
            pixels,
            markers: rendered.markers,
            noise: rendered.noise,
        }
    };
    plans.iter().enumerate().filter(|(_, plan)| wanted(plan.group)).map(shot).collect()
}

fn plans(camera: Camera, quick: bool) -> Vec<Plan> {
    const SMALL: (usize, usize) = (1600, 1200);
    let base = Kind { camera, most: 60, ..Kind::default() };
    let mut plans = Vec::new();
    let mut add = |group, kind, size| plans.push(Plan { group, kind, size });
    for side in SIDES {
        for (i, tilt) in TILTS.into_iter().enumerate() {
            add(Group::Grid(i), Kind { side: (side, side), tilt, ..base }, SMALL);
        }
        if side <= 45.0 {
            add(Group::Faint, Kind { side: (side, side), contrast: (40.0, 40.0), ..base }, SMALL);
        }
    }
    for trouble in [Trouble::DarkMargin, Trouble::Shadow, Trouble::Glare, Trouble::CoveredCorner] {
        for side in [25.0, 45.0, 100.0] {
            let kind = Kind { side: (side, side), trouble, contrast: (100.0, 160.0), ..base };
            add(Group::Troubled(trouble), kind, SMALL);
        }
    }
    for _ in 0..if quick { 10 } else { 100 } {
        let none = Kind { side: (40.0, 40.0), most: 0, clutter: true, ..base };
        add(Group::Clutter, none, (1008, 756));
    }
    let mixed = Kind { side: (40.0, 130.0), tilt: (0.0, 60.0), most: 25, ..base };
    for _ in 0..if quick { 1 } else { 3 } {
        add(Group::Speed, mixed, (4032, 3024));
    }
    // The same field of view: markers grow with the number of pixels along a side.
    let scaled = |factor: f64, progressive: bool| Kind {
        side: (40.0 * factor, 90.0 * factor),
        tilt: (0.0, 60.0),
        most: 25,
        progressive,
        ..base
    };
    add(Group::Other("2 MP"), scaled(1632.0 / 4032.0, false), (1632, 1224));
    add(Group::Other("portrait 12 MP"), scaled(1.0, false), (3024, 4032));
    add(Group::Other("progressive 12 MP"), scaled(1.0, true), (4032, 3024));
    if !quick && camera == Camera::Phone {
        add(Group::Other("48 MP"), scaled(8064.0 / 4032.0, false), (8064, 6048));
    }
    plans
}
