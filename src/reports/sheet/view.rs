//! Views of a carrier: what is seen from one side, in the carrier's millimetres.

use nalgebra::Vector3;

use crate::marker::{Carrier, Marker};
use crate::words::{Language, say};

use super::piece::{Piece, STRIP_MM, on_face};
use super::words;

/// Marker planes that differ less are one face, mm (directions: unit vectors).
const SAME: f64 = 1e-6;

/// One view; coordinates right and up from the datum.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct View {
    pub(super) title: String,
    pub(super) note: String,
    /// Outlines of the sheets as cut out, seen face on.
    pub(super) sheets: Vec<[[f64; 2]; 4]>,
    pub(super) squares: Vec<Square>,
    pub(super) edges: Vec<Edge>,
    /// Sheet centres, to be dimensioned.
    pub(super) points: Vec<[f64; 2]>,
    /// What a step to the right and up adds to the dimension.
    pub(super) signs: [f64; 2],
    /// Room on the paper for arrows and ids outside of the extent, mm.
    pub(super) pad_mm: [f64; 2],
    /// Lowest and highest corner, the datum included.
    pub(super) extent: [[f64; 2]; 2],
}

/// A marker seen face on.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Square {
    pub(super) id: u32,
    pub(super) centre: [f64; 2],
    pub(super) size: [f64; 2],
}

/// A sheet seen from its edge.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Edge {
    pub(super) ids: Vec<u32>,
    pub(super) ends: [[f64; 2]; 2],
    /// Where the printed face looks, unit vector on the view.
    pub(super) looks: [f64; 2],
}

/// The plan (unless everything lies flat), then each face from the front.
pub(super) fn views(carrier: &Carrier, pieces: &[Piece<'_>], language: Language) -> Vec<View> {
    let flat = carrier.markers.iter().all(|marker| marker.normal().z.abs() > 1.0 - SAME);
    let plan = (!flat).then(|| plan(pieces, language));
    let mut faces: Vec<Vec<&Piece<'_>>> = Vec::new();
    for piece in pieces {
        match faces.iter_mut().find(|face| same_face(face[0].first(), piece.first())) {
            Some(face) => face.push(piece),
            None => faces.push(vec![piece]),
        }
    }
    plan.into_iter().chain(faces.iter().map(|face| face_view(face, language))).collect()
}

fn same_face(a: &Marker, b: &Marker) -> bool {
    (a.right - b.right).norm() < SAME
        && (a.up - b.up).norm() < SAME
        && (a.centre_mm - b.centre_mm).dot(&a.normal()).abs() < SAME
}

fn face_view(face: &[&Piece<'_>], language: Language) -> View {
    let first = face[0].first();
    let depth = first.centre_mm.dot(&first.normal());
    let centres: Vec<[f64; 2]> = face.iter().map(|piece| on_face(first, piece.centre_mm)).collect();
    let squares = face.iter().zip(&centres).flat_map(|(piece, centre)| {
        piece.markers.iter().zip(&piece.offsets_mm).map(|(marker, offset)| Square {
            id: marker.id,
            centre: [centre[0] + offset[0], centre[1] + offset[1]],
            size: marker.size_mm,
        })
    });
    let mut view = View {
        title: say!(language, "print-view-looks", direction = words::direction(first.normal())),
        note: say!(
            language,
            "print-view-note",
            depth = words::mm(depth.abs()),
            side = if depth < 0.0 { "behind" } else { "front" },
            top = words::direction(first.up),
        ),
        sheets: face.iter().zip(&centres).map(|(piece, centre)| outline(piece, *centre)).collect(),
        squares: squares.collect(),
        edges: Vec::new(),
        points: centres,
        signs: [1.0; 2],
        pad_mm: [0.0; 2],
        extent: [[0.0; 2]; 2],
    };
    view.extent = extent(view.sheets.iter().flatten());
    view
}

/// The piece's cut edge around its centre: the strip lies below.
fn outline(piece: &Piece<'_>, [x, y]: [f64; 2]) -> [[f64; 2]; 4] {
    let [w, h] = piece.size_mm.map(|size| 0.5 * size);
    [[x - w, y + h], [x + w, y + h], [x + w, y - h - STRIP_MM], [x - w, y - h - STRIP_MM]]
}

/// Seen from above: forward is up on the page, the vehicle's right is right.
fn plan(pieces: &[Piece<'_>], language: Language) -> View {
    let seen = |v: Vector3<f64>| [-v.y, v.x];
    let mut edges: Vec<Edge> = Vec::new();
    let mut points = Vec::new();
    for piece in pieces.iter().filter(|piece| piece.first().normal().z.abs() < SAME) {
        let half = piece.first().right * (0.5 * piece.size_mm[0]);
        let ends = [seen(piece.centre_mm - half), seen(piece.centre_mm + half)];
        let ids = piece.markers.iter().map(|marker| marker.id);
        let twin = edges.iter_mut().find(|edge| (0..2).all(|end| near(edge.ends[end], ends[end])));
        match twin {
            Some(edge) => edge.ids.extend(ids),
            None => {
                edges.push(Edge { ids: ids.collect(), ends, looks: seen(piece.first().normal()) });
                points.push(seen(piece.centre_mm));
            }
        }
    }
    // Ids beside edges that look sideways need more room.
    let sideways = edges.iter().any(|edge| edge.looks[0].abs() > 0.5);
    View {
        title: say!(language, "print-view-plan"),
        note: say!(language, "print-view-plan-note"),
        sheets: Vec::new(),
        squares: Vec::new(),
        extent: extent(edges.iter().flat_map(|edge| &edge.ends)),
        edges,
        points,
        signs: [-1.0, 1.0],
        pad_mm: [if sideways { 19.0 } else { 9.5 }, 9.5],
    }
}

fn near(a: [f64; 2], b: [f64; 2]) -> bool {
    (a[0] - b[0]).hypot(a[1] - b[1]) < SAME
}

fn extent<'a>(points: impl Iterator<Item = &'a [f64; 2]>) -> [[f64; 2]; 2] {
    let mut extent = [[0.0f64; 2]; 2];
    for point in points {
        for axis in 0..2 {
            extent[0][axis] = extent[0][axis].min(point[axis]);
            extent[1][axis] = extent[1][axis].max(point[axis]);
        }
    }
    extent
}
