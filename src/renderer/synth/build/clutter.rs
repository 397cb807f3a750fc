//! What stands about in a bay.

use nalgebra::{Isometry3, Point3, Vector3};

use super::shapes::{bar, plain, upright};
use crate::synth::place::{Purpose, uniform};
use crate::synth::scene::{ClutterKind, ClutterSpec, SceneSpec};
use crate::synth::trace::{Colour, Gloss, Model, text_width};

/// Builds the scene's clutter, or the usual one.
pub(super) fn build(model: &mut Model, spec: &SceneSpec) {
    let usual;
    let things = match &spec.clutter {
        Some(things) => things,
        None => {
            usual = usual_clutter(spec);
            &usual
        }
    };
    for (index, thing) in things.iter().enumerate() {
        build_thing(model, thing, spec.seed, index as u64);
    }
}

fn thing(kind: ClutterKind, at_mm: [f64; 3], yaw_deg: f64) -> ClutterSpec {
    ClutterSpec { kind, at_mm, yaw_deg, size_mm: [0.0; 3], colour: None, text: String::new() }
}

fn usual_clutter(spec: &SceneSpec) -> Vec<ClutterSpec> {
    use ClutterKind as K;
    let room = &spec.room;
    let (left, right, back) = (room.sides_mm[0], -room.sides_mm[1], -room.behind_mm);
    let sign =
        |text: &str, at, yaw, size| ClutterSpec { text: text.to_owned(), size_mm: size, ..thing(K::Sign, at, yaw) };
    vec![
        thing(K::Shelf, [back + 300.0, right + 1200.0, 0.0], 0.0),
        thing(K::Tools, [back + 420.0, left - 1500.0, 0.0], 0.0),
        thing(K::Tyres, [300.0, left - 480.0, 0.0], 0.0),
        thing(K::Barrel, [1900.0, right + 450.0, 0.0], 0.0),
        thing(K::Box, [3300.0, right + 500.0, 0.0], 12.0),
        thing(K::Box, [4300.0, left - 420.0, 0.0], -8.0),
        thing(K::Stripes, [2600.0, right + 6.0, 1250.0], 90.0),
        thing(K::Checker, [1500.0, left - 6.0, 1350.0], -90.0),
        thing(K::Checker, [back + 6.0, 400.0, 1500.0], 0.0),
        sign("BAY 4/KEEP CLEAR", [back + 8.0, -700.0, 2350.0], 0.0, [12.0, 1500.0, 560.0]),
        sign("CALIBRATION/IN PROGRESS", [5200.0, left - 8.0, 1900.0], -90.0, [12.0, 1100.0, 420.0]),
        thing(K::Line, [2600.0, left - 1250.0, 0.0], 0.0),
        thing(K::Line, [2600.0, right + 1150.0, 0.0], 0.0),
        thing(K::Post, [4700.0, left - 130.0, 0.0], 0.0),
        thing(K::Post, [4700.0, right + 130.0, 0.0], 0.0),
    ]
}

/// The kind's own size where the scene gives none.
fn size_of(thing: &ClutterSpec) -> [f64; 3] {
    let own = match thing.kind {
        ClutterKind::Box => [520.0, 640.0, 560.0],
        ClutterKind::Shelf => [480.0, 1700.0, 1900.0],
        ClutterKind::Tyres => [640.0, 640.0, 820.0],
        ClutterKind::Tools => [480.0, 720.0, 980.0],
        ClutterKind::Barrel => [570.0, 570.0, 870.0],
        ClutterKind::Checker => [4.0, 1200.0, 200.0],
        ClutterKind::Stripes => [4.0, 2600.0, 220.0],
        ClutterKind::Sign => [10.0, 900.0, 400.0],
        ClutterKind::Line => [5200.0, 70.0, 1.0],
        ClutterKind::Post => [200.0, 200.0, 3500.0],
    };
    [0, 1, 2].map(|i| if thing.size_mm[i] > 0.0 { thing.size_mm[i] } else { own[i] })
}

fn build_thing(model: &mut Model, thing: &ClutterSpec, seed: u64, index: u64) {
    let size = size_of(thing);
    let pose = upright(thing.at_mm, thing.yaw_deg);
    let colour = |own: Colour| thing.colour.unwrap_or(own);
    match thing.kind {
        ClutterKind::Box => block(model, &pose, size, colour([0.30, 0.20, 0.11])),
        ClutterKind::Shelf => shelf(model, &pose, size, colour([0.10, 0.11, 0.13]), seed, index),
        ClutterKind::Tyres => tyres(model, &pose, size),
        ClutterKind::Tools => tools(model, &pose, size, colour([0.42, 0.03, 0.025])),
        ClutterKind::Barrel => barrel(model, &pose, size, colour([0.04, 0.12, 0.30])),
        ClutterKind::Checker => checker(model, &pose, size),
        ClutterKind::Stripes => stripes(model, &pose, size),
        ClutterKind::Sign => sign(model, &pose, size, colour([0.72, 0.50, 0.03]), &thing.text),
        ClutterKind::Line => {
            let paint = plain(model, colour([0.62, 0.44, 0.03]), Gloss::MATT);
            model.block(paint, &(pose * Isometry3::translation(0.0, 0.0, -0.7)), [0.5 * size[0], 0.5 * size[1], 0.4]);
        }
        ClutterKind::Post => block(model, &pose, size, colour([0.20, 0.20, 0.20])),
    }
}

/// A box that stands on its place.
fn block(model: &mut Model, pose: &Isometry3<f64>, size: [f64; 3], colour: Colour) {
    let surface = plain(model, colour, Gloss::SATIN);
    model.block(surface, &(pose * Isometry3::translation(0.0, 0.0, 0.5 * size[2])), size.map(|s| 0.5 * s));
}

fn shelf(model: &mut Model, pose: &Isometry3<f64>, size: [f64; 3], colour: Colour, seed: u64, index: u64) {
    let steel = plain(model, colour, Gloss::SATIN);
    let [depth, width, height] = size;
    let at = |x: f64, y: f64, z: f64| (pose * Point3::new(x, y, z)).coords;
    for (x, y) in [(-0.5, -0.5), (0.5, -0.5), (-0.5, 0.5), (0.5, 0.5)] {
        bar(model, steel, at(x * depth, y * width, 0.0), at(x * depth, y * width, height), 40.0);
    }
    const BOX_COLOURS: [Colour; 6] = [
        [0.04, 0.07, 0.25],
        [0.36, 0.25, 0.13],
        [0.55, 0.40, 0.03],
        [0.55, 0.55, 0.53],
        [0.30, 0.04, 0.03],
        [0.16, 0.17, 0.18],
    ];
    let mut draw = 0;
    let mut random = || {
        draw += 1;
        uniform(seed, Purpose::Clutter, index, draw)
    };
    for level in 0..4 {
        let z = 120.0 + f64::from(level) * (height - 160.0) / 3.0;
        let board = pose * Isometry3::translation(0.0, 0.0, z);
        model.block(steel, &board, [0.5 * depth, 0.5 * width, 14.0]);
        let mut y = -0.5 * width + 40.0;
        while level < 3 && y < 0.5 * width - 200.0 {
            let (wide, high) = (110.0 + 190.0 * random(), 120.0 + 230.0 * random());
            let kind = (random() * 6.0) as usize % 6;
            let place = pose * Isometry3::translation(0.0, y + 0.5 * wide, z + 14.0);
            block(model, &place, [0.8 * depth, wide, high], BOX_COLOURS[kind]);
            y += wide + 15.0 + 90.0 * random();
        }
    }
}

/// A pose that turns the y axis upright, for turned bodies.
fn lying(pose: &Isometry3<f64>, z: f64) -> Isometry3<f64> {
    let turn = nalgebra::UnitQuaternion::from_axis_angle(&Vector3::x_axis(), std::f64::consts::FRAC_PI_2);
    pose * Isometry3::from_parts(nalgebra::Translation3::new(0.0, 0.0, z), turn)
}

fn tyres(model: &mut Model, pose: &Isometry3<f64>, size: [f64; 3]) {
    let rubber = plain(model, [0.02, 0.02, 0.021], Gloss { highlight: 0.05, sharpness: 8.0, mirror: 0.0 });
    let radius = 0.5 * size[0];
    let count = (size[2] / 205.0).round().max(1.0);
    let mut z = 0.0;
    while z < count * 205.0 - 1.0 {
        let ring = [
            [0.58, 8.0],
            [0.75, 0.0],
            [0.95, 20.0],
            [1.0, 45.0],
            [1.0, 155.0],
            [0.95, 180.0],
            [0.75, 200.0],
            [0.58, 192.0],
        ]
        .map(|[r, y]: [f64; 2]| [r * radius, y]);
        model.turned(rubber, &lying(pose, z), &ring, 48);
        z += 205.0;
    }
}

fn barrel(model: &mut Model, pose: &Isometry3<f64>, size: [f64; 3], colour: Colour) {
    let paint = plain(model, colour, Gloss::SATIN);
    let (r, h) = (0.5 * size[0], size[2]);
    let profile = [
        [0.97, 0.0],
        [1.0, 12.0],
        [0.97, 24.0],
        [0.97, 0.33 * h],
        [1.0, 0.33 * h + 14.0],
        [0.97, 0.33 * h + 28.0],
        [0.97, 0.66 * h],
        [1.0, 0.66 * h + 14.0],
        [0.97, 0.66 * h + 28.0],
        [0.97, h - 14.0],
        [1.0, h],
        [0.94, h],
        [0.94, h - 18.0],
        [0.0, h - 18.0],
    ]
    .map(|[share, y]: [f64; 2]| [share * r, y]);
    model.turned(paint, &lying(pose, 0.0), &profile, 48);
}

fn tools(model: &mut Model, pose: &Isometry3<f64>, size: [f64; 3], colour: Colour) {
    let [depth, width, height] = size;
    block(model, &(pose * Isometry3::translation(0.0, 0.0, 90.0)), [depth, width, height - 90.0], colour);
    let dark = plain(model, [0.03; 3], Gloss::SATIN);
    let metal = plain(model, [0.45, 0.45, 0.46], Gloss::SATIN);
    for drawer in 0..6 {
        let z = 150.0 + f64::from(drawer) * (height - 190.0) / 6.0;
        let gap = pose * Isometry3::translation(0.5 * depth, 0.0, z);
        model.block(dark, &gap, [3.0, 0.48 * width, 3.0]);
        let handle = pose * Isometry3::translation(0.5 * depth + 12.0, 0.0, z + 95.0);
        model.block(metal, &handle, [9.0, 0.36 * width, 9.0]);
    }
    for (x, y) in [(-0.4, -0.4), (0.4, -0.4), (-0.4, 0.4), (0.4, 0.4)] {
        let caster = pose * Isometry3::translation(x * depth, y * width, 45.0);
        model.block(dark, &caster, [35.0, 20.0, 45.0]);
    }
}

fn checker(model: &mut Model, pose: &Isometry3<f64>, size: [f64; 3]) {
    let inks = [[0.75, 0.75, 0.73], [0.03; 3]].map(|c| plain(model, c, Gloss::MATT));
    let square = 0.5 * size[2];
    let columns = (size[1] / square).round() as i32;
    for column in 0..columns {
        for row in 0..2 {
            let y = (f64::from(column) + 0.5) * square - 0.5 * size[1];
            let z = (f64::from(row) + 0.5) * square;
            let place = pose * Isometry3::translation(0.0, y, z);
            model.block(inks[((column + row) % 2) as usize], &place, [0.5 * size[0], 0.5 * square, 0.5 * square]);
        }
    }
}

fn stripes(model: &mut Model, pose: &Isometry3<f64>, size: [f64; 3]) {
    let inks = [[0.70, 0.50, 0.03], [0.03; 3]].map(|c| plain(model, c, Gloss::MATT));
    let width = 0.6 * size[2];
    let count = ((size[1] - size[2]) / width).floor() as i32;
    for i in 0..count {
        let y = f64::from(i) * width - 0.5 * size[1];
        let origin = (pose * Point3::new(2.0, y, 0.0)).coords;
        let edges = [Vector3::new(0.0, width, 0.0), Vector3::new(0.0, size[2], size[2])].map(|e| pose * e);
        model.quad(inks[(i % 2) as usize], origin, edges);
    }
}

/// A sign on a wall: text of dots on a plate; `/` starts a new line.
fn sign(model: &mut Model, pose: &Isometry3<f64>, size: [f64; 3], colour: Colour, text: &str) {
    let [depth, width, height] = size;
    block(model, pose, [0.5 * depth, width, height], colour);
    let lines: Vec<&str> = text.split('/').collect();
    let longest = lines.iter().map(|l| text_width(l, 1.0)).fold(0.0, f64::max).max(1e-6);
    let letter = (0.86 * width / longest).min(0.62 * height / lines.len() as f64);
    let ink = plain(model, [0.02; 3], Gloss::MATT);
    for (i, line) in lines.iter().enumerate() {
        let top = height * (1.0 - (i as f64 + 0.5) / lines.len() as f64) + 0.5 * letter;
        let left = -0.5 * text_width(line, letter);
        write(model, ink, &(pose * Isometry3::translation(0.5 * depth, 0.0, 0.0)), line, letter, [left, top]);
    }
}

/// Letters as small quads; `left` and `top` are where the viewer's first letter begins.
fn write(model: &mut Model, ink: u32, pose: &Isometry3<f64>, line: &str, letter: f64, [left, top]: [f64; 2]) {
    let dot = letter / 7.0;
    for [column, row] in crate::synth::trace::text_dots(line) {
        // Looking at the face, the viewer's right is the board's +y.
        let (y, z) = (left + column as f64 * dot, top - (row as f64 + 1.0) * dot);
        let origin = (pose * Point3::new(1.0, y, z)).coords;
        model.quad(ink, origin, [Vector3::new(0.0, dot, 0.0), Vector3::new(0.0, 0.0, dot)].map(|e| pose * e));
    }
}
