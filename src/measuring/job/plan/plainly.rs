//! What a job's photos would be worth had the phone not changed their light.

use super::next::predicted;
use crate::detect::{U_EDGE_OFFSET_PX, expected_covariance};
use crate::job::opening::Opened;
use crate::measure::Answer;
use crate::pose::Scene;

/// By check, its answers with the covariances of plainly developed photos; `None` where no photo's
/// light was changed.
pub(in crate::job) fn developed_plainly(opened: &Opened, scene: &Scene) -> Option<Vec<Vec<Option<Answer>>>> {
    let changed = |j: usize| opened.photos[j].sightings.gain_spread.is_some() && scene.photos[j].is_some();
    if !(0..opened.photos.len()).any(changed) {
        return None;
    }
    let mut problem = opened.problem();
    for (_, photo) in problem.photos.iter_mut().enumerate().filter(|(j, _)| changed(*j)) {
        photo.u_edge_offset_px = photo.u_edge_offset_px.min(U_EDGE_OFFSET_PX);
        for view in &mut photo.views {
            view.covariance_px2 = expected_covariance(&view.corners_px).unwrap_or(view.covariance_px2);
        }
    }
    let poses: Vec<_> = scene.photos.iter().map(|p| p.as_ref().map(|p| p.camera_from_world)).collect();
    predicted(opened, scene, &problem, &poses)
}
