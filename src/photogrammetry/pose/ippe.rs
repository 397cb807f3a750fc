//! Both poses of a flat body from its homography: infinitesimal plane-based
//! pose estimation (Collins and Bartoli, IJCV 2014).

use nalgebra::{Matrix2, Matrix3, Point2, Rotation3, UnitQuaternion, Vector2, Vector3};

use super::homography::homography;
use crate::geom::{Camera, Marker, Pose};

/// The two poses of a plane whose points `flat_mm` (z = 0, centred near the
/// origin) are seen along the rays `seen` (on the plane z = 1), better one
/// first. Empty for degenerate points.
pub fn plane_poses(flat_mm: &[Point2<f64>], seen: &[Point2<f64>]) -> Vec<Pose<Camera, Marker>> {
    let Some(h) = homography(flat_mm, seen) else { return Vec::new() };
    // The map's value and derivative at the plane's origin.
    let v = Vector2::new(h[(0, 2)], h[(1, 2)]);
    let jacobian = Matrix2::new(
        h[(0, 0)] - h[(2, 0)] * v.x,
        h[(0, 1)] - h[(2, 1)] * v.x,
        h[(1, 0)] - h[(2, 0)] * v.y,
        h[(1, 1)] - h[(2, 1)] * v.y,
    );
    let Some(rotations) = rotations(&v, &jacobian) else { return Vec::new() };
    let mut poses: Vec<(f64, Pose<Camera, Marker>)> = rotations
        .into_iter()
        .filter_map(|r| {
            let t = translation(&r, flat_mm, seen)?;
            let pose = Pose::from_matrix(r, t);
            Some((misfit(&pose, flat_mm, seen)?, pose))
        })
        .collect();
    poses.sort_by(|a, b| a.0.total_cmp(&b.0));
    poses.into_iter().map(|(_, p)| p).collect()
}

/// The two rotations that a first-order map at one point allows.
fn rotations(v: &Vector2<f64>, jacobian: &Matrix2<f64>) -> Option<[Matrix3<f64>; 2]> {
    // Turns the optical axis to the viewing ray of the origin.
    let ray = Vector3::new(v.x, v.y, 1.0);
    let to_ray = UnitQuaternion::rotation_between(&Vector3::z(), &ray)?.to_rotation_matrix().into_inner();
    let b = Matrix2::new(
        to_ray[(0, 0)] - v.x * to_ray[(2, 0)],
        to_ray[(0, 1)] - v.x * to_ray[(2, 1)],
        to_ray[(1, 0)] - v.y * to_ray[(2, 0)],
        to_ray[(1, 1)] - v.y * to_ray[(2, 1)],
    );
    let a = b.try_inverse()? * jacobian;
    // The larger singular value of A is the inverse depth.
    let gamma = a.svd(false, false).singular_values.max();
    if gamma.is_nan() || gamma <= 1e-15 {
        return None;
    }
    let upper = a / gamma;
    // Completes the 2x2 block to a rotation: the columns' third components
    // are determined up to one common sign.
    let rest = Matrix2::identity() - upper.transpose() * upper;
    let c0 = rest[(0, 0)].max(0.0).sqrt();
    let c1 = rest[(1, 1)].max(0.0).sqrt() * if rest[(0, 1)] < 0.0 { -1.0 } else { 1.0 };
    let complete = |sign: f64| {
        let x = Vector3::new(upper[(0, 0)], upper[(1, 0)], sign * c0);
        let y = Vector3::new(upper[(0, 1)], upper[(1, 1)], sign * c1);
        let rotation = Matrix3::from_columns(&[x, y, x.cross(&y)]);
        to_ray * Rotation3::from_matrix(&rotation).into_inner()
    };
    Some([complete(1.0), complete(-1.0)])
}

/// The translation that fits best for a given rotation (linear least squares).
fn translation(rotation: &Matrix3<f64>, flat: &[Point2<f64>], seen: &[Point2<f64>]) -> Option<Vector3<f64>> {
    let (mut normal, mut right) = (Matrix3::zeros(), Vector3::zeros());
    for (p, q) in flat.iter().zip(seen) {
        let turned = rotation * Vector3::new(p.x, p.y, 0.0);
        for (row, wanted) in [
            (Vector3::new(1.0, 0.0, -q.x), q.x * turned.z - turned.x),
            (Vector3::new(0.0, 1.0, -q.y), q.y * turned.z - turned.y),
        ] {
            normal += row * row.transpose();
            right += row * wanted;
        }
    }
    let t = normal.cholesky()?.solve(&right);
    (t.z > 0.0).then_some(t)
}

/// Sum of squared distances on the plane z = 1; `None` behind the camera.
fn misfit(pose: &Pose<Camera, Marker>, flat: &[Point2<f64>], seen: &[Point2<f64>]) -> Option<f64> {
    flat.iter()
        .zip(seen)
        .map(|(p, q)| {
            let c = pose.point(&nalgebra::Point3::new(p.x, p.y, 0.0));
            (c.z > 1e-9).then(|| (Point2::new(c.x / c.z, c.y / c.z) - q).norm_squared())
        })
        .sum()
}

#[cfg(test)]
mod tests {
    use super::*;
    use nalgebra::Point3;

    #[test]
    fn the_true_pose_is_among_the_two_at_many_tilts() {
        let flat = [[-60.0, 60.0], [60.0, 60.0], [60.0, -60.0], [-60.0, -60.0]].map(Point2::from);
        for tilt in [0.0_f64, 5.0, 30.0, 60.0, 75.0] {
            for turn in [0.0_f64, 40.0, 200.0] {
                let rotation = UnitQuaternion::from_euler_angles(std::f64::consts::PI, tilt.to_radians(), 0.0)
                    * UnitQuaternion::from_euler_angles(0.0, 0.0, turn.to_radians());
                let truth: Pose<Camera, Marker> = Pose::new(rotation, Vector3::new(300.0, -200.0, 4000.0));
                let seen: Vec<_> = flat
                    .iter()
                    .map(|p| truth.point(&Point3::new(p.x, p.y, 0.0)))
                    .map(|c| Point2::new(c.x / c.z, c.y / c.z))
                    .collect();
                let poses = plane_poses(&flat, &seen);
                let best = poses.iter().map(|p| p.rotation().angle_to(&truth.rotation())).fold(9.0, f64::min);
                assert!(best < 1e-5, "tilt {tilt}, turn {turn}: {best} rad off");
            }
        }
    }
}
