//! The target stand: a panel, a mast with a collar, a base with four feet.

use nalgebra::{Isometry3, Point3, Vector3};

use super::shapes::{bar, plain, upright};
use crate::geom::Attitude;
use crate::marker::Carrier;
use crate::synth::place::{PlacedCarrier, floor_height_mm};
use crate::synth::scene::SceneSpec;
use crate::synth::trace::{Gloss, Model};

/// Builds what bears the target's markers. The target face, through the aim
/// point, looks towards the vehicle.
pub(super) fn build(model: &mut Model, spec: &SceneSpec, placed: &PlacedCarrier, carrier: &Carrier, gap: f64) {
    let facing = carrier.markers.iter().filter(|m| m.normal().x > 0.9);
    let (mut half_y, mut half_z, mut face_x) = (250.0f64, 150.0f64, f64::INFINITY);
    for marker in facing {
        half_y = half_y.max(marker.centre_mm.y.abs() + 0.7 * marker.size_mm[0]);
        half_z = half_z.max(marker.centre_mm.z.abs() + 0.7 * marker.size_mm[1] + 12.0);
        face_x = face_x.min(marker.centre_mm.x);
    }
    if !face_x.is_finite() {
        // A mat: its sheets lie on the floor, nothing holds it.
        return;
    }
    let thickness = (face_x - gap).clamp(6.0, 60.0);
    let panel = plain(model, spec.stand.colour, Gloss::SATIN);
    let pose = placed.pose.isometry() * Isometry3::translation(0.5 * thickness, 0.0, 0.0);
    model.block(panel, &pose, [0.5 * thickness, half_y, half_z]);
    struts(model, placed, carrier, half_y);
    mast(model, spec, placed, thickness, half_z);
}

/// What holds the boards that do not lie on the panel (both ends).
fn struts(model: &mut Model, placed: &PlacedCarrier, carrier: &Carrier, half_y: f64) {
    let metal = plain(model, [0.10, 0.10, 0.11], Gloss::SATIN);
    for marker in carrier.markers.iter().filter(|m| m.normal().x <= 0.9) {
        let behind = marker.centre_mm - marker.normal() * 9.0;
        let inner = Vector3::new(8.0, marker.centre_mm.y.signum() * (half_y - 20.0), marker.centre_mm.z);
        let [a, b] = [behind, inner].map(|p| placed.pose.point(&Point3::from(p)).coords);
        bar(model, metal, a, b, 12.0);
    }
}

fn mast(model: &mut Model, spec: &SceneSpec, placed: &PlacedCarrier, thickness: f64, half_z: f64) {
    let steel = plain(model, [0.055, 0.057, 0.06], Gloss::SATIN);
    let accent = plain(model, [0.55, 0.16, 0.02], Gloss::SATIN);
    let top = placed.pose.point(&Point3::new(thickness + 32.0, 0.0, -half_z + 70.0)).coords;
    let floor = floor_height_mm(&spec.floor, top.x);
    let foot = Vector3::new(top.x, top.y, floor + 90.0);
    bar(model, steel, foot, top, 46.0);
    let collar_z = floor + 0.62 * (top.z - floor);
    model.block(accent, &upright([top.x, top.y, collar_z], 0.0), [38.0, 38.0, 45.0]);
    let yaw = Attitude::from_rotation(&placed.pose.rotation()).yaw_deg;
    let base = upright([top.x, top.y, floor], yaw);
    let on_base = |x: f64, y: f64, z: f64| (base * Point3::new(x, y, z)).coords;
    bar(model, steel, on_base(-330.0, 0.0, 75.0), on_base(330.0, 0.0, 75.0), 50.0);
    bar(model, steel, on_base(0.0, -440.0, 75.0), on_base(0.0, 440.0, 75.0), 50.0);
    for (x, y) in [(-310.0, 0.0), (310.0, 0.0), (0.0, -420.0), (0.0, 420.0)] {
        bar(model, accent, on_base(x, y, 2.0), on_base(x, y, 52.0), 34.0);
    }
    // Levelling wheels at both ends of the cross beam.
    for y in [-300.0, 300.0] {
        bar(model, steel, on_base(0.0, y, 100.0), on_base(0.0, y, 150.0), 18.0);
    }
}
