//! From the photos' free frame to the carrier's own.

use nalgebra::{DMatrix, Point3, Vector3};

use super::apart::Cluster;
use super::rigid::rigid;
use crate::geom::{self, Pose, World};
use crate::marker::{Carrier, Layout, Marker};
use crate::pose::BODY;

/// Rows of a marker's place: centre (mm) and rotation (rad) in carrier axes.
const PLACE: usize = 6;

/// A carrier's markers in its own frame.
#[derive(Debug, Clone)]
pub(super) struct Attached {
    /// Indices of the markers on the carrier, and in the cluster.
    pub(super) markers: Vec<usize>,
    pub(super) carrier_from_marker: Vec<Pose<geom::Carrier, geom::Marker>>,
    /// Found minus stated: centre, mm, and rotation, rad, in carrier axes.
    pub(super) moved: Vec<[Vector3<f64>; 2]>,
    /// From the cluster's unknowns to centre, rotation and relative size of
    /// each marker, the frame's own motion taken out.
    pub(super) to_places: DMatrix<f64>,
    /// How the frame moves places: [`BODY`] rows for each marker, six columns.
    gauge: DMatrix<f64>,
    /// How wrong places of the kit file move the frame: six rows, [`PLACE`] columns for each marker.
    by_stated: DMatrix<f64>,
    /// How the found places move it, likewise.
    by_found: DMatrix<f64>,
}

/// Lays the found shape on the kit file's. `None` where fewer than two of its
/// markers are in the cluster: one marker alone is its carrier.
pub(super) fn attach(carrier: &Carrier, cluster: &Cluster) -> Option<Attached> {
    let found: Vec<(usize, usize)> =
        carrier.markers.iter().enumerate().filter_map(|(m, marker)| Some((m, cluster.index(marker.id)?))).collect();
    if found.len() < 2 {
        return None;
    }
    let stated: Vec<Point3<f64>> = found.iter().flat_map(|(m, _)| carrier.markers[*m].corners_mm()).collect();
    let seen: Vec<Point3<f64>> =
        found.iter().flat_map(|(m, at)| corners(&carrier.markers[*m], &cluster.world_from_marker[*at])).collect();
    let carrier_from_world: Pose<geom::Carrier, World> = rigid(&stated, &seen)?;
    let places: Vec<_> = found.iter().map(|(_, at)| carrier_from_world * cluster.world_from_marker[*at]).collect();
    let moved = found.iter().zip(&places).map(|((m, _), place)| moved(&carrier.markers[*m], place)).collect();
    let Frame { gauge, by_stated, by_found } = frame(carrier, &found, &places)?;
    let mut turned = DMatrix::zeros(BODY * found.len(), cluster.covariance.nrows());
    for (k, ((_, at), place)) in found.iter().zip(&places).enumerate() {
        let turn = place.matrix();
        turned.view_mut((BODY * k, BODY * at), (3, 3)).copy_from(&turn);
        turned.view_mut((BODY * k + 3, BODY * at + 3), (3, 3)).copy_from(&turn);
        turned[(BODY * k + 6, BODY * at + 6)] = 1.0;
    }
    // S-transformation: what the fit follows is taken out.
    let mut places_only = DMatrix::zeros(PLACE * found.len(), turned.ncols());
    for k in 0..found.len() {
        places_only.rows_mut(PLACE * k, PLACE).copy_from(&turned.rows(BODY * k, PLACE));
    }
    let to_places = &turned - &gauge * (&by_found * places_only);
    let markers = found.iter().map(|(m, _)| *m).collect();
    Some(Attached { markers, carrier_from_marker: places, moved, to_places, gauge, by_stated, by_found })
}

impl Attached {
    /// 1 sigma of the kit file's own centres against each other, mm, the frame
    /// taken out as for the found ones.
    pub(super) fn u_stated_mm(&self, carrier: &Carrier, layout: Option<&Layout>, u_mm: f64) -> Vec<Vector3<f64>> {
        let n = self.markers.len();
        let stated = stated_covariance(carrier, &self.markers, layout, u_mm, 0.0);
        let mut gauge = DMatrix::zeros(PLACE * n, 6);
        for k in 0..n {
            gauge.rows_mut(PLACE * k, PLACE).copy_from(&self.gauge.rows(BODY * k, PLACE));
        }
        let shape = DMatrix::identity(PLACE * n, PLACE * n) - gauge * &self.by_found;
        let own = &shape * stated * shape.transpose();
        (0..n).map(|k| Vector3::from_fn(|i, _| own[(PLACE * k + i, PLACE * k + i)].max(0.0).sqrt())).collect()
    }

    /// What errors of the kit file's own places do to all markers through the frame.
    pub(super) fn of_frame(&self, carrier: &Carrier, layout: Option<&Layout>, u_mm: f64, u_rad: f64) -> DMatrix<f64> {
        let stated = stated_covariance(carrier, &self.markers, layout, u_mm, u_rad);
        let frame = &self.by_stated * stated * self.by_stated.transpose();
        &self.gauge * frame * self.gauge.transpose()
    }
}

fn corners(marker: &Marker, pose: &Pose<World, geom::Marker>) -> [Point3<f64>; 4] {
    let [x, y] = marker.size_mm.map(|s| s / 2.0);
    [[-x, y], [x, y], [x, -y], [-x, -y]].map(|[x, y]| pose.point(&Point3::new(x, y, 0.0)))
}

/// Found minus stated, in carrier axes.
fn moved(marker: &Marker, place: &Pose<geom::Carrier, geom::Marker>) -> [Vector3<f64>; 2] {
    let stated = marker.carrier_from_marker();
    let turn = place.rotation() * stated.rotation().inverse();
    [place.origin_mm() - marker.centre_mm, turn.scaled_axis()]
}

/// How places and frame move each other.
struct Frame {
    gauge: DMatrix<f64>,
    by_stated: DMatrix<f64>,
    by_found: DMatrix<f64>,
}

/// How a motion of the frame (shift, turn about its origin) moves every
/// marker's place, and how the least-squares fit over corners follows places.
///
/// The fit makes `sum |s - q|^2` small over stated corners `s` and found ones
/// `q`, so that `sum (s - q) = 0` and `sum s x q = 0`. The derivatives of these
/// two give the motion (shift `t`, turn `w`) for changes of either: `sum ds =
/// sum (t + w x q)` and `sum q x ds = sum s x (t + w x q)`; for `dq`, `-dq` and
/// `-s x dq` on the left. Exact however far stated and found are apart: taking
/// one for the other would claim a frame that a rough file does not give.
fn frame(carrier: &Carrier, found: &[(usize, usize)], places: &[Pose<geom::Carrier, geom::Marker>]) -> Option<Frame> {
    let n = found.len();
    let mut gauge = DMatrix::zeros(BODY * n, 6);
    let mut normal = DMatrix::<f64>::zeros(6, 6);
    let mut by_stated = DMatrix::<f64>::zeros(6, PLACE * n);
    let mut by_found = by_stated.clone();
    for (k, ((m, _), place)) in found.iter().zip(places).enumerate() {
        let marker = &carrier.markers[*m];
        let stated = marker.carrier_from_marker();
        gauge.view_mut((BODY * k, 0), (3, 6)).copy_from(&moves(&place.origin_mm()).transpose());
        gauge.view_mut((BODY * k + 3, 3), (3, 3)).fill_with_identity();
        let [x, y] = marker.size_mm.map(|s| s / 2.0);
        for (x, y) in [(-x, y), (x, y), (x, -y), (-x, -y)] {
            let corner = Vector3::new(x, y, 0.0);
            let at =
                |p: &Pose<geom::Carrier, geom::Marker>| (p.origin_mm() + p.direction(&corner), p.direction(&corner));
            let ((s, arm_s), (q, arm_q)) = (at(&stated), at(place));
            normal += moves(&s) * moves(&q).transpose();
            let mut own = by_stated.columns_mut(PLACE * k, PLACE);
            own += moves(&q) * by_place(&arm_s);
            let mut own = by_found.columns_mut(PLACE * k, PLACE);
            own += moves(&s) * by_place(&arm_q);
        }
    }
    // Two markers with four corners each determine a rigid motion, unless the
    // file has them where no turn of the found ones is better than another.
    let lu = normal.lu();
    Some(Frame { gauge, by_stated: lu.solve(&by_stated)?, by_found: lu.solve(&by_found)? })
}

/// How a corner moves with its marker's place: centre, then turn about it.
fn by_place(arm: &Vector3<f64>) -> DMatrix<f64> {
    let mut by_place = DMatrix::zeros(3, PLACE);
    by_place.view_mut((0, 0), (3, 3)).fill_with_identity();
    by_place.view_mut((0, 3), (3, 3)).copy_from(&-arm.cross_matrix());
    by_place
}

/// Sums over a point's change: shift, and moment about the origin.
fn moves(point: &Vector3<f64>) -> DMatrix<f64> {
    let mut moves = DMatrix::zeros(6, 3);
    moves.view_mut((0, 0), (3, 3)).fill_with_identity();
    moves.view_mut((3, 0), (3, 3)).copy_from(&point.cross_matrix());
    moves
}

/// What the kit file knows of its places: an earlier survey's covariance where
/// that has all of them, else independent centres and rotations.
fn stated_covariance(
    carrier: &Carrier,
    markers: &[usize],
    layout: Option<&Layout>,
    u_mm: f64,
    u_rad: f64,
) -> DMatrix<f64> {
    let n = markers.len();
    let earlier = layout.and_then(|l| {
        let at = |m: &usize| l.ids.iter().position(|id| *id == carrier.markers[*m].id);
        Some((l, markers.iter().map(at).collect::<Option<Vec<usize>>>()?))
    });
    if let Some((layout, at)) = earlier {
        let row = |i: usize| PLACE * at[i / PLACE] + i % PLACE;
        return DMatrix::from_fn(PLACE * n, PLACE * n, |i, j| layout.covariance[(row(i), row(j))]);
    }
    let mut covariance = DMatrix::zeros(PLACE * n, PLACE * n);
    for (k, m) in markers.iter().enumerate() {
        let centre = carrier.markers[*m].u_centre_mm.unwrap_or([u_mm; 3]);
        for axis in 0..3 {
            covariance[(PLACE * k + axis, PLACE * k + axis)] = centre[axis] * centre[axis];
            covariance[(PLACE * k + 3 + axis, PLACE * k + 3 + axis)] = u_rad * u_rad;
        }
    }
    covariance
}
