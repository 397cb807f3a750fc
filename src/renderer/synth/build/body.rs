//! An invented small car: a lower body and a cabin, each a skin through
//! sections, with windows, lamps and gaps projected onto it.

use nalgebra::{Isometry3, Point3, Vector3};

use super::shapes::{plain, upright};
use crate::synth::place::Vehicle;
use crate::synth::scene::VehicleSpec;
use crate::synth::trace::{Colour, Decorated, From, Gloss, Model, Paint, Shape, Trim};

const DARK: Colour = [0.012, 0.012, 0.014];
const GLASS: Colour = [0.010, 0.014, 0.015];
const CHROME: Colour = [0.45, 0.46, 0.48];
const LAMP: Colour = [0.62, 0.66, 0.70];

/// Main lines of the body, mm; x before the rear axle.
struct Lines {
    tail: f64,
    nose: f64,
    wheelbase: f64,
    height: f64,
    half_width: f64,
    /// Distances as shares of a 3.5 m nose, so that other sizes keep the shape.
    unit: f64,
}

impl Lines {
    fn of(spec: &VehicleSpec) -> Self {
        Lines {
            tail: -spec.rear_overhang_mm,
            // The foremost point is the mark's place; the skin ends just behind it.
            nose: spec.nose_mm[0] - 6.0,
            wheelbase: spec.wheelbase_mm,
            height: spec.height_mm,
            half_width: 0.5 * spec.width_mm,
            unit: spec.nose_mm[0] / 3500.0,
        }
    }

    fn before_nose(&self, mm: f64) -> f64 {
        self.nose - mm * self.unit
    }

    fn deck(&self, x: f64) -> f64 {
        let h = self.height;
        smooth(
            &[
                [self.tail, 0.60 * h],
                [self.tail + 90.0, 0.645 * h],
                [0.0, 0.648 * h],
                [0.5 * self.wheelbase, 0.64 * h],
                [0.80 * self.wheelbase, 0.655 * h],
                [self.before_nose(700.0), 0.60 * h],
                [self.before_nose(190.0), 0.51 * h],
                [self.before_nose(50.0), 0.46 * h],
                [self.nose, 0.415 * h],
            ],
            x,
        )
    }

    fn sill(&self, x: f64) -> f64 {
        let h = self.height;
        smooth(
            &[
                [self.tail, 0.27 * h],
                [self.tail + 160.0, 0.17 * h],
                [0.0, 0.135 * h],
                [self.wheelbase, 0.13 * h],
                [self.before_nose(200.0), 0.135 * h],
                [self.nose, 0.185 * h],
            ],
            x,
        )
    }

    fn side(&self, x: f64) -> f64 {
        let share = smooth(
            &[
                [self.tail, 0.80],
                [self.tail + 140.0, 0.93],
                [0.0, 0.995],
                [0.5 * self.wheelbase, 1.0],
                [self.wheelbase, 0.995],
                [self.before_nose(420.0), 0.95],
                [self.before_nose(190.0), 0.87],
                [self.before_nose(60.0), 0.74],
                [self.nose, 0.60],
            ],
            x,
        );
        share * self.half_width
    }

    fn roof(&self, x: f64) -> f64 {
        let h = self.height;
        smooth(
            &[
                [self.tail + 40.0, 0.63 * h],
                [-0.13 * self.wheelbase, 0.945 * h],
                [0.05 * self.wheelbase, 0.985 * h],
                [0.25 * self.wheelbase, h],
                [0.40 * self.wheelbase, 0.988 * h],
                [0.49 * self.wheelbase, 0.955 * h],
                [0.84 * self.wheelbase, 0.645 * h],
            ],
            x,
        )
    }

    /// Half width of the cabin at a height.
    fn cabin_side(&self, z: f64) -> f64 {
        let share = ((z / self.height - 0.63) / 0.37).clamp(0.0, 1.0);
        self.half_width * (0.925 - 0.22 * share)
    }

    fn lower_section(&self, x: f64) -> Vec<[f64; 2]> {
        let (low, high, w) = (self.sill(x), self.deck(x), self.side(x));
        let h = high - low;
        vec![
            [0.80 * w, low],
            [0.93 * w, low + 0.03 * h],
            [0.978 * w, low + 0.14 * h],
            [0.995 * w, low + 0.30 * h],
            [w, low + 0.46 * h],
            [0.997 * w, low + 0.60 * h],
            [0.975 * w, low + 0.80 * h],
            [0.945 * w, low + 0.92 * h],
            [0.88 * w, high],
            [0.72 * w, high + 10.0],
            [0.40 * w, high + 18.0],
            [0.0, high + 22.0],
        ]
    }

    fn cabin_section(&self, x: f64) -> Vec<[f64; 2]> {
        let belt = 0.62 * self.height;
        let top = self.roof(x).max(belt + 4.0);
        let at = |share: f64| {
            let z = belt + (top - belt) * share;
            [self.cabin_side(z), z]
        };
        let edge = at(1.0)[0];
        vec![
            at(0.0),
            at(0.3),
            at(0.6),
            at(0.85),
            at(0.96),
            [edge - 24.0, top],
            [0.7 * edge, top + 8.0],
            [0.35 * edge, top + 14.0],
            [0.0, top + 16.0],
        ]
    }
}

/// Linear through the points, rounded over 120 mm.
fn smooth(points: &[[f64; 2]], x: f64) -> f64 {
    let linear = |x: f64| {
        let next = points.partition_point(|p| p[0] < x).clamp(1, points.len() - 1);
        let ([x0, y0], [x1, y1]) = (points[next - 1], points[next]);
        y0 + (y1 - y0) * ((x - x0) / (x1 - x0)).clamp(0.0, 1.0)
    };
    let taps = [-60.0, -30.0, 0.0, 30.0, 60.0];
    taps.iter().map(|d| linear(x + d)).sum::<f64>() / taps.len() as f64
}

/// Builds the body; wheels are built apart.
pub(super) fn build(model: &mut Model, spec: &VehicleSpec, vehicle: &Vehicle) {
    let lines = Lines::of(spec);
    let pose = upright([vehicle.rolled_mm, 0.0, 0.0], 0.0);
    let body = model.body();
    let decorated =
        |shapes| Paint::Decorated(Box::new(Decorated { local_from_world: pose.inverse(), base: spec.colour, shapes }));
    let lower = model.surface(body, decorated(lower_shapes(&lines)), Gloss::LACQUER);
    let cabin = model.surface(body, decorated(cabin_shapes(&lines)), Gloss::LACQUER);
    skin(model, lower, &pose, &stations(lines.tail, lines.nose, 64), |x| lines.lower_section(x));
    let end = 0.84 * lines.wheelbase;
    skin(model, cabin, &pose, &stations(lines.tail + 40.0, end, 48), |x| lines.cabin_section(x));
    for x in [lines.tail, lines.nose] {
        cap(model, lower, &pose, x, &lines.lower_section(x));
    }
    model.trim(lower);
    arches(model, spec, vehicle);
    inside(model, &lines, &pose);
    mirrors(model, &lines, &pose, spec.colour);
}

fn stations(from: f64, to: f64, count: usize) -> Vec<f64> {
    // Denser at both ends, where the shape bends most.
    let ease = |t: f64| 0.5 - 0.5 * (std::f64::consts::PI * t).cos();
    (0..=count).map(|i| from + (to - from) * ease(i as f64 / count as f64)).collect()
}

fn skin(
    model: &mut Model,
    surface: u32,
    pose: &Isometry3<f64>,
    stations: &[f64],
    section: impl Fn(f64) -> Vec<[f64; 2]>,
) {
    let sections: Vec<Vec<Vector3<f64>>> = stations
        .iter()
        .map(|&x| {
            let left = section(x);
            let mirrored = left.iter().rev().skip(1).map(|[y, z]| [-y, *z]);
            let ring = left.iter().copied().chain(mirrored);
            ring.map(|[y, z]| (pose * Point3::new(x, y, z)).coords).collect()
        })
        .collect();
    model.loft(surface, &sections);
}

/// Closes the skin at an end with a flat face.
fn cap(model: &mut Model, surface: u32, pose: &Isometry3<f64>, x: f64, left: &[[f64; 2]]) {
    let at = |[y, z]: [f64; 2]| (pose * Point3::new(x, y, z)).coords;
    for pair in left.windows(2) {
        let mirror = |[y, z]: [f64; 2]| [-y, z];
        let [a, b] = [pair[0], pair[1]];
        model.triangle(surface, [at(a), at(b), at(mirror(b))], None);
        model.triangle(surface, [at(a), at(mirror(b)), at(mirror(a))], None);
    }
}

fn arches(model: &mut Model, spec: &VehicleSpec, vehicle: &Vehicle) {
    for wheel in &vehicle.wheels {
        let out = if wheel.left { Vector3::y() } else { -Vector3::y() };
        let centre = Vector3::new(wheel.hub_mm.x, 0.0, spec.hub_height_mm + 14.0);
        model.trims.push(Trim { centre, axis: out, radius_mm: spec.hub_height_mm + 42.0, from_mm: 400.0 });
    }
}

/// What is dark below the skin, and the floor of the body.
fn inside(model: &mut Model, lines: &Lines, pose: &Isometry3<f64>) {
    let dark = plain(model, DARK, Gloss::MATT);
    let low = lines.sill(0.5 * lines.wheelbase) + 10.0;
    let cowl = 0.78 * lines.wheelbase;
    for (back, front, high) in
        [(lines.tail + 120.0, cowl, 0.60 * lines.height), (cowl, lines.nose - 220.0, 0.43 * lines.height)]
    {
        let middle = pose * Isometry3::translation(0.5 * (back + front), 0.0, 0.5 * (low + high));
        model.block(dark, &middle, [0.5 * (front - back), lines.half_width - 275.0, 0.5 * (high - low)]);
    }
}

fn mirrors(model: &mut Model, lines: &Lines, pose: &Isometry3<f64>, colour: Colour) {
    let paint = plain(model, colour, Gloss::LACQUER);
    let dark = plain(model, DARK, Gloss::SATIN);
    for side in [-1.0, 1.0] {
        let x = 0.685 * lines.wheelbase;
        let y = side * (lines.half_width + 85.0);
        let z = 0.69 * lines.height;
        let shell: Vec<[f64; 2]> =
            [[0.0, -95.0], [38.0, -90.0], [58.0, -70.0], [66.0, 0.0], [60.0, 62.0], [40.0, 88.0], [0.0, 96.0]].to_vec();
        model.turned(paint, &(pose * Isometry3::translation(x, y, z)), &shell, 28);
        let arm = pose * Isometry3::translation(x, side * (lines.half_width - 20.0), z - 34.0);
        model.block(dark, &arm, [22.0, 60.0, 14.0]);
    }
}

fn shape(from: From, colour: Colour, gloss: Gloss, polygon: &[[f64; 2]]) -> Shape {
    Shape { from, polygon: polygon.to_vec(), colour, gloss }
}

fn rectangle(low: [f64; 2], high: [f64; 2]) -> [[f64; 2]; 4] {
    [low, [high[0], low[1]], high, [low[0], high[1]]]
}

fn lower_shapes(l: &Lines) -> Vec<Shape> {
    let (h, w, wb) = (l.height, l.half_width, l.wheelbase);
    let satin = |from, colour, polygon: &[[f64; 2]]| shape(from, colour, Gloss::SATIN, polygon);
    let mut shapes = vec![
        // Dark sill and bumper edge all round.
        satin(From::Side, DARK, &rectangle([l.tail, 0.0], [l.nose, 0.165 * h])),
        satin(From::Front, DARK, &rectangle([0.0, 0.0], [w, 0.178 * h])),
        // Air intake, grille with slats, number plate (blank), lamps.
        satin(From::Front, DARK, &[[0.0, 0.195 * h], [0.56 * w, 0.195 * h], [0.50 * w, 0.262 * h], [0.0, 0.262 * h]]),
        satin(From::Front, DARK, &[[0.0, 0.365 * h], [0.46 * w, 0.365 * h], [0.50 * w, 0.425 * h], [0.0, 0.425 * h]]),
        satin(From::Front, CHROME, &rectangle([0.0, 0.381 * h], [0.455 * w, 0.386 * h])),
        satin(From::Front, CHROME, &rectangle([0.0, 0.402 * h], [0.465 * w, 0.407 * h])),
        satin(From::Front, [0.7, 0.7, 0.68], &rectangle([0.0, 0.288 * h], [258.0, 0.288 * h + 110.0])),
        shape(
            From::Front,
            LAMP,
            Gloss::GLASS,
            &[[0.56 * w, 0.375 * h], [0.90 * w, 0.395 * h], [0.93 * w, 0.455 * h], [0.60 * w, 0.43 * h]],
        ),
        shape(
            From::Front,
            [0.05, 0.05, 0.06],
            Gloss::GLASS,
            &[[0.64 * w, 0.385 * h], [0.73 * w, 0.39 * h], [0.74 * w, 0.43 * h], [0.66 * w, 0.42 * h]],
        ),
        satin(From::Front, [0.5, 0.22, 0.02], &rectangle([0.66 * w, 0.225 * h], [0.80 * w, 0.25 * h])),
        // Bonnet gaps.
        satin(From::Above, DARK, &rectangle([0.80 * wb, 0.80 * w], [l.before_nose(230.0), 0.806 * w])),
        satin(From::Above, DARK, &rectangle([l.before_nose(236.0), 0.0], [l.before_nose(230.0), 0.806 * w])),
        // Rear lamps reach round the corner.
        shape(
            From::Side,
            [0.25, 0.01, 0.01],
            Gloss::GLASS,
            &rectangle([l.tail - 10.0, 0.50 * h], [l.tail + 170.0, 0.60 * h]),
        ),
    ];
    // Doors: gaps at both edges and along the sill, a handle each.
    for (front, back) in [(0.735 * wb, 0.40 * wb), (0.395 * wb, 0.11 * wb)] {
        for x in [front, back] {
            shapes.push(satin(From::Side, DARK, &rectangle([x - 3.0, 0.19 * h], [x + 3.0, 0.655 * h])));
        }
        shapes.push(satin(From::Side, DARK, &rectangle([back, 0.186 * h], [front, 0.19 * h])));
        let handle = rectangle([back + 70.0, 0.555 * h], [back + 235.0, 0.573 * h]);
        shapes.push(shape(From::Side, CHROME, Gloss::LACQUER, &handle));
    }
    shapes
}

fn cabin_shapes(l: &Lines) -> Vec<Shape> {
    let (h, wb) = (l.height, l.wheelbase);
    let glass = |from, polygon: &[[f64; 2]]| shape(from, GLASS, Gloss::GLASS, polygon);
    let (low, high) = (0.668 * h, 0.945 * h);
    let inner = |z: f64| l.cabin_side(z) - 62.0;
    vec![
        glass(From::Front, &[[0.0, low], [inner(low), low], [inner(high), high], [0.0, high]]),
        glass(From::Rear, &[[0.0, 0.70 * h], [inner(low) - 40.0, 0.70 * h], [inner(high), 0.93 * h], [0.0, 0.93 * h]]),
        glass(
            From::Side,
            &[[0.41 * wb, 0.665 * h], [0.735 * wb, 0.665 * h], [0.505 * wb, 0.915 * h], [0.41 * wb, 0.925 * h]],
        ),
        glass(
            From::Side,
            &[[0.06 * wb, 0.665 * h], [0.385 * wb, 0.665 * h], [0.385 * wb, 0.925 * h], [0.02 * wb, 0.915 * h]],
        ),
        glass(
            From::Side,
            &[[-0.10 * wb, 0.70 * h], [0.035 * wb, 0.675 * h], [0.0, 0.905 * h], [-0.075 * wb, 0.88 * h]],
        ),
    ]
}
