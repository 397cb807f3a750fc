//! Floor, walls, ceiling and lamps.

use nalgebra::{Isometry3, Vector3};

use super::shapes::{plain, upright};
use crate::synth::place::floor_height_mm;
use crate::synth::scene::{LampSpec, OpeningSpec, SceneSpec};
use crate::synth::trace::{Gloss, Lamp, Model, Paint};

/// Radiance of a lamp of strength one, before exposure.
const LAMP_RADIANCE: f32 = 9.0;
/// Radiance of an opening of strength one, likewise: a sky that is darker than a lamp, and far larger.
const DAY_RADIANCE: f32 = 3.0;

fn lamps(spec: &SceneSpec) -> Vec<LampSpec> {
    spec.lamp.clone().unwrap_or_else(|| {
        let lamp = |x: f64, y: f64| LampSpec {
            at_mm: [x, y, spec.room.height_mm - 120.0],
            size_mm: [1300.0, 260.0],
            colour: [1.0, 0.98, 0.93],
        };
        vec![
            lamp(600.0, 1500.0),
            lamp(600.0, -1500.0),
            lamp(4600.0, 1900.0),
            lamp(4600.0, -1900.0),
            lamp(7600.0, 300.0),
        ]
    })
}

/// Builds the room.
pub(super) fn build(model: &mut Model, spec: &SceneSpec) {
    let room = &spec.room;
    let (back, ahead) = (-room.behind_mm, room.ahead_mm);
    let (left, right, top) = (room.sides_mm[0], -room.sides_mm[1], room.height_mm);
    let wall = Paint::Mottled { colour: room.wall, depth: 0.10, size_mm: 900.0, skirt: Some((1100.0, room.skirt)) };
    let long = Vector3::new(ahead - back, 0.0, 0.0);
    let wide = Vector3::new(0.0, left - right, 0.0);
    let high = Vector3::new(0.0, 0.0, top);
    for (origin, edges) in [
        (Vector3::new(back, right, 0.0), [wide, high]),
        (Vector3::new(ahead, right, 0.0), [wide, high]),
        (Vector3::new(back, left, 0.0), [long, high]),
        (Vector3::new(back, right, 0.0), [long, high]),
    ] {
        let surface = model.new_surface(wall.clone(), Gloss::MATT);
        model.quad(surface, origin, edges);
    }
    let ceiling = plain(model, [0.34, 0.34, 0.33], Gloss::MATT);
    model.quad(ceiling, Vector3::new(back, right, top), [long, wide]);
    let beam = plain(model, [0.07, 0.07, 0.08], Gloss::MATT);
    for x in [-400.0, 2600.0, 6400.0] {
        let pose = upright([x, 0.5 * (left + right), top - 130.0], 0.0);
        model.block(beam, &pose, [75.0, 0.5 * (left - right), 130.0]);
    }
    floor(model, spec, back, ahead, right, wide);
    for lamp in lamps(spec) {
        build_lamp(model, &lamp);
    }
    for opening in &spec.opening {
        build_opening(model, opening);
    }
}

/// The floor lies a little below the sheets on it.
fn floor(model: &mut Model, spec: &SceneSpec, back: f64, ahead: f64, right: f64, wide: Vector3<f64>) {
    const BELOW_MM: f64 = -1.0;
    let concrete = Paint::Mottled { colour: spec.floor.colour, depth: spec.floor.stains, size_mm: 700.0, skirt: None };
    let surface = model.new_surface(concrete, Gloss::MATT);
    let hinge = spec.floor.slope_from_x_mm.clamp(back, ahead);
    let at = |x: f64| Vector3::new(x, right, BELOW_MM + floor_height_mm(&spec.floor, x));
    for (from, to) in [(back, hinge), (hinge, ahead)] {
        if to - from > 1.0 {
            model.quad(surface, at(from), [at(to) - at(from), wide]);
        }
    }
}

fn build_lamp(model: &mut Model, lamp: &LampSpec) {
    let half = [Vector3::x() * (0.5 * lamp.size_mm[0]), Vector3::y() * (0.5 * lamp.size_mm[1])];
    let centre = Vector3::from(lamp.at_mm);
    let radiance = lamp.colour.map(|c| c * LAMP_RADIANCE);
    let glowing = model.new_surface(Paint::Lamp(radiance), Gloss::MATT);
    model.quad(glowing, centre - half[0] - half[1], half.map(|h| h * 2.0));
    let housing = plain(model, [0.3; 3], Gloss::MATT);
    let lid = centre + Vector3::z() * 25.0;
    model.block(housing, &upright([lid.x, lid.y, lid.z], 0.0), [half[0].x + 15.0, half[1].y + 15.0, 20.0]);
    let area_m2 = (lamp.size_mm[0] * lamp.size_mm[1] * 1e-6) as f32;
    // Over pi: reflectance times the sum of these is radiance.
    let power = radiance.map(|r| r * area_m2 / std::f32::consts::PI);
    model.lamps.push(Lamp { centre, half, towards: -Vector3::z(), power, large: false });
}

/// An open door: daylight as a surface that shines evenly (Lambert), with a frame about it.
fn build_opening(model: &mut Model, opening: &OpeningSpec) {
    let pose = upright(opening.at_mm, opening.facing_deg);
    let centre = Vector3::from(opening.at_mm);
    let half = [pose * Vector3::y() * (0.5 * opening.size_mm[0]), Vector3::z() * (0.5 * opening.size_mm[1])];
    let radiance = opening.colour.map(|c| c * DAY_RADIANCE);
    let glowing = model.new_surface(Paint::Lamp(radiance), Gloss::MATT);
    model.quad(glowing, centre - half[0] - half[1], half.map(|h| h * 2.0));
    let frame = plain(model, [0.10, 0.11, 0.12], Gloss::MATT);
    let [y, z] = opening.size_mm.map(|s| 0.5 * s);
    for (at, size) in [
        ([0.0, y + 40.0, 0.0], [30.0, 40.0, z + 80.0]),
        ([0.0, -y - 40.0, 0.0], [30.0, 40.0, z + 80.0]),
        ([0.0, 0.0, z + 40.0], [30.0, y, 40.0]),
    ] {
        model.block(frame, &(pose * Isometry3::translation(at[0], at[1], at[2])), size);
    }
    let area_m2 = (opening.size_mm[0] * opening.size_mm[1] * 1e-6) as f32;
    let power = radiance.map(|r| r * area_m2 / std::f32::consts::PI);
    model.lamps.push(Lamp { centre, half, towards: pose * Vector3::x(), power, large: true });
}
