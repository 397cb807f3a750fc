//! The best rigid motion between two sets of points.

use nalgebra::{Matrix3, Point3, Rotation3, UnitQuaternion, Vector3};

use crate::geom::{Frame, Pose};

/// The pose `a_from_b` that maps points of `B` onto their partners in `A`
/// with the least sum of squares (Kabsch 1976, through a singular value
/// decomposition). `None` without points.
pub(super) fn rigid<A: Frame, B: Frame>(in_a: &[Point3<f64>], in_b: &[Point3<f64>]) -> Option<Pose<A, B>> {
    if in_a.is_empty() || in_a.len() != in_b.len() {
        return None;
    }
    let mean = |points: &[Point3<f64>]| points.iter().map(|p| p.coords).sum::<Vector3<f64>>() / points.len() as f64;
    let (mean_a, mean_b) = (mean(in_a), mean(in_b));
    let cross: Matrix3<f64> =
        in_a.iter().zip(in_b).map(|(a, b)| (a.coords - mean_a) * (b.coords - mean_b).transpose()).sum();
    let svd = cross.svd(true, true);
    let (u, v_t) = (svd.u?, svd.v_t?);
    // A reflection is no rotation: turn the weakest direction round.
    let mut keep = Matrix3::identity();
    keep[(2, 2)] = (u * v_t).determinant().signum();
    let turn = UnitQuaternion::from_rotation_matrix(&Rotation3::from_matrix_unchecked(u * keep * v_t));
    Some(Pose::new(turn, mean_a - turn * mean_b))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::geom::{Carrier, World};

    #[test]
    fn a_known_motion_is_found_also_of_flat_points() {
        let truth: Pose<World, Carrier> =
            Pose::new(UnitQuaternion::from_euler_angles(0.4, -1.2, 2.5), Vector3::new(5.0, -3.0, 100.0));
        let flat = [[0.0, 0.0, 0.0], [200.0, 0.0, 0.0], [200.0, 90.0, 0.0], [0.0, 90.0, 0.0]].map(Point3::from);
        let moved = flat.map(|p| truth.point(&p));
        let found: Pose<World, Carrier> = rigid(&moved, &flat).unwrap();
        assert!(found.step_to(&truth).norm() < 1e-9);
    }
}
