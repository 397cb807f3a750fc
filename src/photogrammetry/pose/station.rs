//! Photos from one station: what a camera on a tripod is wrong by, it is wrong by in each of its photos.
//!
//! Taken for drawn anew, four such photos would seem to know their focal length twice as well as one does.

use crate::geom::{Camera, Pose, World, deg};

/// Photos of one camera nearer to each other than this are of one station, mm and degrees: a hand does not come back so well, and
/// shots that it takes at one go have one focus too.
const SAME_PLACE_MM: f64 = 30.0;
const SAME_DIRECTION_DEG: f64 = 0.3;

/// By photo the first one of its station, where that has more than one; of each photo its camera and where it was.
pub(super) fn stations(photos: &[(usize, Pose<Camera, World>)]) -> Vec<Option<usize>> {
    let together = |a: &(usize, Pose<Camera, World>), b: &(usize, Pose<Camera, World>)| {
        let from_other = a.1 * b.1.inverse();
        a.0 == b.0
            && from_other.origin_mm().norm() < SAME_PLACE_MM
            && deg(from_other.rotation().angle()) < SAME_DIRECTION_DEG
    };
    let first: Vec<Option<usize>> = photos.iter().map(|b| photos.iter().position(|a| together(a, b))).collect();
    first.iter().map(|station| station.filter(|_| first.iter().filter(|f| *f == station).count() > 1)).collect()
}

#[cfg(test)]
mod tests {
    use nalgebra::{UnitQuaternion, Vector3};

    use super::*;
    use crate::geom::rad;

    fn at(x_mm: f64, turned_deg: f64) -> Pose<Camera, World> {
        Pose::new(UnitQuaternion::from_euler_angles(0.0, rad(turned_deg), 0.0), Vector3::new(x_mm, 0.0, 5000.0))
    }

    #[test]
    fn one_camera_in_one_place_looking_one_way() {
        let photos = [(0, at(0.0, 0.0)), (0, at(900.0, 0.0)), (0, at(4.0, 0.02)), (1, at(0.0, 0.0)), (0, at(0.0, 2.0))];
        assert_eq!(stations(&photos), [Some(0), None, Some(0), None, None]);
        assert_eq!(stations(&photos[1..2]), [None]);
    }
}
