//! How far a large marker near the frame's edge can be trusted: the detector
//! does not know the lens, only that it bends.

use nalgebra::{Point2, Point3, Vector3};

use super::adjustment::Adjustment;
use super::seen::Seen;
use crate::pose::homography;

/// Part of the bend within a marker that the detector may get wrong (1 sigma;
/// from rendered photos of markers of 400 px and more in a frame's corners).
const U_BEND: f64 = 0.05;

/// Variance that the detector states over variance with the bend's error, for every element.
pub(super) fn trust(work: &Adjustment) -> Vec<Vec<f64>> {
    let one = |photo: usize, seen: &Seen| {
        let u = U_BEND * bend_px(work, photo, seen).unwrap_or(0.0);
        seen.u_px * seen.u_px / (seen.u_px * seen.u_px + u * u).max(1e-12)
    };
    work.photos.iter().enumerate().map(|(j, p)| p.seen.iter().map(|s| one(j, s)).collect()).collect()
}

/// How far the middles of a marker and of its edges lie from where a
/// projective map puts them that meets its corners, px.
fn bend_px(work: &Adjustment, photo: usize, seen: &Seen) -> Option<f64> {
    let corners = &work.target.spots[seen.spot].points_mm;
    if corners.len() != 4 {
        return None;
    }
    let own = &work.state.photos[photo];
    let lens = own.lens(&work.state.lens);
    let pixel = |p: &Point2<f64>| {
        let seen = lens.project(&own.camera_from_board.point(&Point3::new(p.x, p.y, 0.0)).coords)?;
        Some(Point2::from(seen.pixel))
    };
    let pixels = corners.iter().map(pixel).collect::<Option<Vec<_>>>()?;
    let map = homography(corners, &pixels)?;
    let middles = (0..4).map(|i| nalgebra::center(&corners[i], &corners[(i + 1) % 4]));
    let middles = middles.chain([nalgebra::center(&corners[0], &corners[2])]);
    let mut most = 0.0_f64;
    for middle in middles {
        let flat = map * Vector3::new(middle.x, middle.y, 1.0);
        most = most.max((Point2::new(flat.x / flat.z, flat.y / flat.z) - pixel(&middle)?).norm());
    }
    Some(most)
}
