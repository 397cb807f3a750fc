//! The poses that one carrier may have in one photo.

use nalgebra::{Matrix6, Point2, Point3, Vector2, Vector6};

use super::ippe::plane_poses;
use super::views::{PhotoView, View};
use crate::camera::Lens;
use crate::geom::{Camera, Carrier, Pose};
use crate::marker;

/// A pose with its robust misfit, px^2 summed over corners.
#[derive(Debug, Clone, Copy)]
pub(super) struct Candidate {
    pub(super) camera_from_carrier: Pose<Camera, Carrier>,
    pub(super) misfit_px2: f64,
}

/// A corner in the carrier's frame and where it is seen.
#[derive(Debug, Clone, Copy)]
pub(super) struct Pair {
    pub(super) point_mm: Point3<f64>,
    pub(super) pixel: Vector2<f64>,
}

/// Residuals beyond this count less and less: a wrong corner must not win.
const ROBUST_PX: f64 = 3.0;
/// Markers of a carrier that propose poses.
const MOST_STARTS: usize = 3;
/// A pose has six unknowns, a corner two coordinates.
const LEAST_CORNERS: usize = 3;
/// Two solutions nearer than this are one, rad.
const SAME_RAD: f64 = 0.02;

/// All valid corners of a carrier in a photo.
pub(super) fn pairs(photo: &PhotoView, index: usize, carrier: &marker::Carrier) -> Vec<Pair> {
    photo
        .views
        .iter()
        .filter(|v| v.carrier == index)
        .flat_map(|v| {
            let corners = carrier.markers[v.marker].corners_mm();
            (0..4).filter(|i| v.valid[*i]).map(move |i| Pair { point_mm: corners[i], pixel: v.corners_px[i] })
        })
        .collect()
}

/// Every pose of a carrier that its corners allow, best first. A solid body
/// has one as a rule, a flat one two; which one is true is decided later.
pub(super) fn candidates(photo: &PhotoView, index: usize, carrier: &marker::Carrier, lens: &Lens) -> Vec<Candidate> {
    let pairs = pairs(photo, index, carrier);
    let mut starts = starts(photo, index);
    // Large markers start best; more than one, since one may be wrong.
    starts.sort_by(|a, b| b.side_px().total_cmp(&a.side_px()));
    let mut found: Vec<Candidate> = starts
        .into_iter()
        .take(MOST_STARTS)
        .flat_map(|view| marker_poses(view, carrier, lens))
        .filter_map(|start| refine(&start, &pairs, lens))
        .collect();
    found.sort_by(|a, b| a.misfit_px2.total_cmp(&b.misfit_px2));
    let mut distinct: Vec<Candidate> = Vec::new();
    for c in found {
        let same =
            |d: &Candidate| d.camera_from_carrier.rotation().angle_to(&c.camera_from_carrier.rotation()) < SAME_RAD;
        if !distinct.iter().any(same) {
            distinct.push(c);
        }
    }
    distinct.truncate(4);
    distinct
}

/// The views of a carrier that propose poses: whole ones, or where there is none, those with three corners. Where the fourth
/// is covered the detector has its place from the rest of the pattern, to some tenths of a pixel: near enough to start from,
/// and the three alone say what comes of it. With two corners a pose is no longer determined.
fn starts(photo: &PhotoView, index: usize) -> Vec<&View> {
    let of_carrier = |v: &&View| v.carrier == index;
    let most = photo.views.iter().filter(of_carrier).map(View::corners).max().unwrap_or(0).max(LEAST_CORNERS);
    photo.views.iter().filter(of_carrier).filter(|v| v.corners() == most).collect()
}

/// The carrier's poses that one marker alone suggests.
fn marker_poses(view: &View, carrier: &marker::Carrier, lens: &Lens) -> Vec<Pose<Camera, Carrier>> {
    let marker = &carrier.markers[view.marker];
    let [w, h] = marker.size_mm.map(|s| s / 2.0);
    let flat = [[-w, h], [w, h], [w, -h], [-w, -h]].map(Point2::from);
    let seen: Option<Vec<Point2<f64>>> =
        view.corners_px.iter().map(|p| lens.ray(p).map(|r| Point2::new(r.x, r.y))).collect();
    let Some(seen) = seen else { return Vec::new() };
    let marker_from_carrier = marker.carrier_from_marker().inverse();
    plane_poses(&flat, &seen).into_iter().map(|p| p * marker_from_carrier).collect()
}

/// Gauss-Newton with damping on robust reprojection errors. The robust width
/// follows the errors down, so that a rough start still feels every corner.
pub(super) fn refine(start: &Pose<Camera, Carrier>, pairs: &[Pair], lens: &Lens) -> Option<Candidate> {
    let mut pose = *start;
    for _ in 0..6 {
        let width = (2.0 * median_error(&pose, pairs, lens)?).max(ROBUST_PX);
        pose = descend(pose, pairs, lens, width)?;
        if width <= ROBUST_PX {
            break;
        }
    }
    Some(Candidate { camera_from_carrier: pose, misfit_px2: misfit(&pose, pairs, lens, ROBUST_PX)? })
}

fn descend(
    mut pose: Pose<Camera, Carrier>,
    pairs: &[Pair],
    lens: &Lens,
    width_px: f64,
) -> Option<Pose<Camera, Carrier>> {
    let mut current = misfit(&pose, pairs, lens, width_px)?;
    let mut damping = 1e-4;
    for _ in 0..20 {
        let Some((normal, right)) = equations(&pose, pairs, lens, width_px) else { break };
        let mut damped = normal;
        for i in 0..6 {
            damped[(i, i)] *= 1.0 + damping;
        }
        let Some(step) = damped.cholesky().map(|c| c.solve(&right)) else { break };
        let trial = pose.moved(&step);
        match misfit(&trial, pairs, lens, width_px) {
            Some(better) if better < current => {
                let gain = current - better;
                pose = trial;
                current = better;
                damping = (damping * 0.2).max(1e-9);
                if gain < 1e-6 * (1.0 + current) {
                    break;
                }
            }
            _ => {
                damping *= 10.0;
                if damping > 1e6 {
                    break;
                }
            }
        }
    }
    Some(pose)
}

fn median_error(pose: &Pose<Camera, Carrier>, pairs: &[Pair], lens: &Lens) -> Option<f64> {
    let mut errors: Vec<f64> = pairs
        .iter()
        .map(|pair| Some((pair.pixel - lens.project(&pose.point(&pair.point_mm).coords)?.pixel).norm()))
        .collect::<Option<_>>()?;
    errors.sort_by(f64::total_cmp);
    errors.get(errors.len() / 2).copied()
}

/// Geman-McClure misfit, px^2; `None` where a corner would lie behind the camera.
pub(super) fn misfit(pose: &Pose<Camera, Carrier>, pairs: &[Pair], lens: &Lens, width_px: f64) -> Option<f64> {
    pairs
        .iter()
        .map(|pair| {
            let p = lens.project(&pose.point(&pair.point_mm).coords)?;
            let e2 = (pair.pixel - p.pixel).norm_squared();
            Some(e2 / (1.0 + e2 / (width_px * width_px)))
        })
        .sum()
}

fn equations(
    pose: &Pose<Camera, Carrier>,
    pairs: &[Pair],
    lens: &Lens,
    width_px: f64,
) -> Option<(Matrix6<f64>, Vector6<f64>)> {
    let (mut normal, mut right) = (Matrix6::zeros(), Vector6::zeros());
    let rotation = pose.matrix();
    for pair in pairs {
        let p = lens.project(&pose.point(&pair.point_mm).coords)?;
        let error = pair.pixel - p.pixel;
        let by_point = p.d_point * rotation;
        let mut j = nalgebra::SMatrix::<f64, 2, 6>::zeros();
        j.fixed_view_mut::<2, 3>(0, 0).copy_from(&by_point);
        j.fixed_view_mut::<2, 3>(0, 3).copy_from(&(-by_point * pair.point_mm.coords.cross_matrix()));
        let w = (1.0 + error.norm_squared() / (width_px * width_px)).powi(-2);
        normal += j.transpose() * j * w;
        right += j.transpose() * error * w;
    }
    Some((normal, right))
}
