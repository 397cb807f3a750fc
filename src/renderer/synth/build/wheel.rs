//! A wheel: tyre and rim, turned about the axle.

use nalgebra::{Isometry3, UnitQuaternion, Vector3};

use super::shapes::plain;
use crate::synth::place::Wheel;
use crate::synth::trace::{Gloss, Model, Paint, Rim};

const RUBBER: [f32; 3] = [0.022, 0.022, 0.023];

/// Builds a wheel whose outer face's plane holds the hub datum.
pub(super) fn build(model: &mut Model, wheel: &Wheel, radius: f64) {
    // The profile points outwards along +y: turn the right wheels about.
    let about = if wheel.left { 0.0 } else { std::f64::consts::PI };
    let outwards = UnitQuaternion::from_axis_angle(&Vector3::z_axis(), about);
    let pose = wheel.pose().isometry() * Isometry3::from_parts(nalgebra::Translation3::identity(), outwards);
    let tyre = plain(model, RUBBER, Gloss { highlight: 0.05, sharpness: 8.0, mirror: 0.0 });
    let rubber: Vec<[f64; 2]> = [
        [0.63, -14.0],
        [0.65, -5.0],
        [0.70, -1.0],
        [0.78, 0.0],
        [0.88, -5.0],
        [0.95, -16.0],
        [0.985, -30.0],
        [1.0, -48.0],
        [1.0, -165.0],
        [0.985, -185.0],
        [0.93, -202.0],
        [0.63, -208.0],
    ]
    .map(|[r, y]| [r * radius, y])
    .to_vec();
    model.turned(tyre, &pose, &rubber, 72);
    let rim = Rim { local_from_world: pose.inverse(), radius_mm: 0.64 * radius, spokes: 5, metal: [0.42, 0.43, 0.45] };
    let rim = model.new_surface(Paint::Rim(Box::new(rim)), Gloss::MATT);
    model.turned(rim, &pose, &[[0.0, -26.0], [0.2 * radius, -24.0], [0.64 * radius, -10.0]], 48);
    let dark = plain(model, [0.01; 3], Gloss::MATT);
    model.turned(dark, &pose, &[[0.0, -60.0], [0.64 * radius, -60.0], [0.64 * radius, -10.0]], 32);
}
