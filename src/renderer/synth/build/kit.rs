//! Carriers as boards with printed sheets on them.

use nalgebra::{Isometry3, Vector3};

use super::shapes::{bar, plain};
use super::stand;
use crate::marker::{CELLS, Carrier, Marker, Role};
use crate::synth::place::{PlacedCarrier, PlacedMarker, Placement};
use crate::synth::scene::{PhotoSpec, Scene};
use crate::synth::trace::{Gloss, Label, Model, Sheet, text_width};

const BOARD_COLOUR: [f32; 3] = [0.30, 0.31, 0.33];
const METAL: [f32; 3] = [0.16, 0.16, 0.17];
/// Boards lie behind their sheets by this, so that no misplaced sheet sinks in, mm.
const GAP_MM: f64 = 1.0;
const BOARD_MM: f64 = 4.0;

/// Markers of a carrier that share a plane.
struct Face<'a> {
    markers: Vec<&'a Marker>,
}

/// Builds all carriers and strays.
pub(super) fn build(model: &mut Model, scene: &Scene, _photo: &PhotoSpec, placement: &Placement) {
    let gap = GAP_MM + 4.0 * scene.spec.kit_errors.layout_mm.unwrap_or(scene.kit.u_layout_mm);
    for placed in &placement.carriers {
        let carrier = &scene.kit.carriers[placed.index];
        let body = model.body();
        for face in faces(carrier) {
            for marker in &face.markers {
                let papered = papered(marker, &face);
                if let Some(real) = placed.markers.iter().find(|m| m.id == marker.id) {
                    paper(model, body, real, marker, papered);
                }
            }
            // The stand's panel itself bears what looks away from the vehicle.
            let on_panel = carrier.role == Role::Target && face.markers[0].normal().x > 0.9;
            if carrier.role != Role::Floor && !on_panel {
                board(model, placed, &face, gap);
            }
        }
        if carrier.role.is_wheel() {
            clamp(model, placed, carrier);
        }
        if carrier.role == Role::Target {
            stand::build(model, &scene.spec, placed, carrier, gap);
        }
    }
    for stray in &placement.strays {
        let body = model.body();
        let cell = stray.size_mm[0] / CELLS as f64;
        let half = 0.5 * stray.size_mm[0] + cell;
        put(model, body, stray, [-half, -half, half, half], None);
    }
}

fn faces(carrier: &Carrier) -> Vec<Face<'_>> {
    let mut faces: Vec<Face<'_>> = Vec::new();
    for marker in &carrier.markers {
        let same = |face: &&mut Face<'_>| {
            let first = face.markers[0];
            first.normal().dot(&marker.normal()) > 0.999
                && (marker.centre_mm - first.centre_mm).dot(&first.normal()).abs() < 3.0
        };
        match faces.iter_mut().find(same) {
            Some(face) => face.markers.push(marker),
            None => faces.push(Face { markers: vec![marker] }),
        }
    }
    faces
}

/// The paper's left, bottom, right, top about a marker's centre and where its number fits.
fn papered(marker: &Marker, face: &Face<'_>) -> ([f64; 4], Option<Label>) {
    let cell = [0, 1].map(|i| marker.size_mm[i] / CELLS as f64);
    let gaps = gaps(marker, face);
    let mut edges = [0.0; 4];
    for (side, edge) in edges.iter_mut().enumerate() {
        let axis = side % 2;
        let margin = cell[axis].min(0.5 * gaps[side] - 0.25).max(0.0);
        *edge = (0.5 * marker.size_mm[axis] + margin) * if side < 2 { -1.0 } else { 1.0 };
    }
    let text = marker.id.to_string();
    let height = 0.75 * cell[1];
    let room = gaps[1] - 2.0 * cell[1];
    if room < 1.05 * height {
        return (edges, None);
    }
    let at_mm = [-0.5 * text_width(&text, height), edges[1] - height - 0.02 * cell[1]];
    edges[1] -= (1.25 * height).min(room);
    (edges, Some(Label { at_mm, height_mm: height, text }))
}

/// Free space to the neighbours' black borders: left, below, right, above.
fn gaps(marker: &Marker, face: &Face<'_>) -> [f64; 4] {
    let mut gaps = [f64::INFINITY; 4];
    for other in face.markers.iter().filter(|o| o.id != marker.id) {
        let d = other.centre_mm - marker.centre_mm;
        let offset = [d.dot(&marker.right), d.dot(&marker.up)];
        let half = |axis: &Vector3<f64>| {
            0.5 * (other.size_mm[0] * other.right.dot(axis).abs() + other.size_mm[1] * other.up.dot(axis).abs())
        };
        let reach = [0.5 * marker.size_mm[0] + half(&marker.right), 0.5 * marker.size_mm[1] + half(&marker.up)];
        for axis in 0..2 {
            let across = 1 - axis;
            let between = offset[axis].abs() - reach[axis];
            // Neighbours that pass by on the other axis, margins included, do not limit.
            let passes = offset[across].abs() - reach[across] > 0.3 * marker.size_mm[across];
            if between > 0.0 && !passes {
                let side = if offset[axis] < 0.0 { axis } else { axis + 2 };
                gaps[side] = gaps[side].min(between);
            }
        }
    }
    gaps
}

fn paper(
    model: &mut Model,
    body: u32,
    real: &PlacedMarker,
    marker: &Marker,
    (edges, label): ([f64; 4], Option<Label>),
) {
    // A print of another scale is smaller as a whole.
    let scale = [0, 1].map(|i| real.size_mm[i] / marker.size_mm[i]);
    let edges = [0, 1, 2, 3].map(|i| edges[i] * scale[i % 2]);
    let label = label.map(|l| Label {
        at_mm: [0, 1].map(|i| l.at_mm[i] * scale[i]),
        height_mm: l.height_mm * scale[1],
        text: l.text,
    });
    put(model, body, real, edges, label);
}

fn put(model: &mut Model, body: u32, real: &PlacedMarker, paper_mm: [f64; 4], label: Option<Label>) {
    let [left, bottom, right, top] = paper_mm;
    let corner = real.pose.point(&nalgebra::Point3::new(left, bottom, 0.0)).coords;
    let edges = [Vector3::x() * (right - left), Vector3::y() * (top - bottom)].map(|e| real.pose.direction(&e));
    model.paper(
        body,
        Sheet::new(real.id, real.size_mm, paper_mm, label).blotchy(real.blotch_mm).wavy(real.waves),
        corner,
        edges,
    );
}

/// Outline of a face's papers in its first marker's axes: low and high corners.
fn outline(face: &Face<'_>) -> ([f64; 2], [f64; 2]) {
    let first = face.markers[0];
    let (mut low, mut high) = ([f64::INFINITY; 2], [f64::NEG_INFINITY; 2]);
    for marker in &face.markers {
        let d = marker.centre_mm - first.centre_mm;
        let reach = 0.5 * marker.size_mm[0].max(marker.size_mm[1]) * (1.0 + 2.0 / CELLS as f64) + 14.0;
        for (i, axis) in [first.right, first.up].iter().enumerate() {
            low[i] = low[i].min(d.dot(axis) - reach);
            high[i] = high[i].max(d.dot(axis) + reach);
        }
    }
    (low, high)
}

fn board(model: &mut Model, placed: &PlacedCarrier, face: &Face<'_>, gap: f64) {
    let first = face.markers[0];
    let (low, high) = outline(face);
    let surface = plain(model, BOARD_COLOUR, Gloss::SATIN);
    let middle = [0, 1].map(|i| 0.5 * (low[i] + high[i]));
    let depth = gap + 0.5 * BOARD_MM;
    let frame = placed.pose.isometry() * first.carrier_from_marker().isometry();
    let pose = frame * Isometry3::translation(middle[0], middle[1], -depth);
    model.block(surface, &pose, [0.5 * (high[0] - low[0]), 0.5 * (high[1] - low[1]), 0.5 * BOARD_MM]);
}

/// The clamp between a wheel and its plate: a tube on the axle, three claws,
/// a strut to each leaf.
fn clamp(model: &mut Model, placed: &PlacedCarrier, carrier: &Carrier) {
    let metal = plain(model, METAL, Gloss::SATIN);
    let side = if matches!(carrier.role, Role::RearLeftWheel | Role::FrontLeftWheel) { 1.0 } else { -1.0 };
    let at = |x: f64, y: f64, z: f64| placed.pose.point(&nalgebra::Point3::new(x, y * side, z)).coords;
    bar(model, metal, at(0.0, -20.0, 0.0), at(0.0, 38.0, 0.0), 46.0);
    for turn in [90.0f64, 210.0, 330.0] {
        let (sin, cos) = turn.to_radians().sin_cos();
        bar(model, metal, at(0.0, 12.0, 0.0), at(205.0 * cos, 12.0, 205.0 * sin), 20.0);
        bar(model, metal, at(205.0 * cos, 20.0, 205.0 * sin), at(205.0 * cos, -14.0, 205.0 * sin), 26.0);
    }
    // Struts only to leaves whose back looks to the hub, so that none crosses a printed face.
    let mut backs = faces(carrier);
    backs.retain(|face| face.markers[0].normal().dot(&face.markers[0].centre_mm) > 0.0);
    for face in backs {
        let (low, high) = outline(&face);
        let first = face.markers[0];
        let middle = first.centre_mm + first.right * (0.5 * (low[0] + high[0])) + first.up * (0.5 * (low[1] + high[1]))
            - first.normal() * 12.0;
        let end = placed.pose.point(&nalgebra::Point3::from(middle)).coords;
        bar(model, metal, at(0.0, 34.0, 0.0), end, 14.0);
    }
}
