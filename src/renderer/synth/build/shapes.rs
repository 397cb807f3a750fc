//! Shapes that several bodies are built of.

use nalgebra::{Isometry3, Rotation3, Translation3, UnitQuaternion, Vector3};

use crate::synth::trace::{Gloss, Model, Paint};

/// A bar with a square section between two points.
pub(super) fn bar(model: &mut Model, surface: u32, from: Vector3<f64>, to: Vector3<f64>, thickness: f64) {
    let along = to - from;
    let length = along.norm();
    if length < 1e-6 {
        return;
    }
    let turn = Rotation3::rotation_between(&Vector3::x(), &along)
        .unwrap_or_else(|| Rotation3::from_axis_angle(&Vector3::z_axis(), std::f64::consts::PI));
    let pose =
        Isometry3::from_parts(Translation3::from((from + to) * 0.5), UnitQuaternion::from_rotation_matrix(&turn));
    model.block(surface, &pose, [0.5 * length, 0.5 * thickness, 0.5 * thickness]);
}

/// A surface of one colour and a body of its own.
pub(super) fn plain(model: &mut Model, colour: [f32; 3], gloss: Gloss) -> u32 {
    model.new_surface(Paint::Plain(colour), gloss)
}

/// An upright pose on a place with a turn about z, degrees.
pub(super) fn upright(at: [f64; 3], yaw_deg: f64) -> Isometry3<f64> {
    Isometry3::from_parts(
        Translation3::new(at[0], at[1], at[2]),
        UnitQuaternion::from_axis_angle(&Vector3::z_axis(), yaw_deg.to_radians()),
    )
}
