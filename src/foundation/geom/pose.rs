//! Rigid transformations whose frames are checked by the compiler.

use std::marker::PhantomData;
use std::ops::Mul;

use nalgebra::{Isometry3, Matrix3, Point3, Rotation3, Translation3, UnitQuaternion, Vector3, Vector6};

use super::frame::Frame;

/// The pose `a_from_b`: maps coordinates in frame `B` to frame `A`.
///
/// ```
/// use baywitness_foundation::geom::{Camera, Carrier, Pose, World};
/// let world_from_carrier: Pose<World, Carrier> = Pose::identity();
/// let camera_from_world: Pose<Camera, World> = Pose::identity();
/// let camera_from_carrier: Pose<Camera, Carrier> = camera_from_world * world_from_carrier;
/// ```
///
/// A wrong chain does not compile:
///
/// ```compile_fail
/// use baywitness_foundation::geom::{Camera, Carrier, Pose, World};
/// let world_from_carrier: Pose<World, Carrier> = Pose::identity();
/// let camera_from_world: Pose<Camera, World> = Pose::identity();
/// let wrong = world_from_carrier * camera_from_world;
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pose<A: Frame, B: Frame> {
    isometry: Isometry3<f64>,
    frames: PhantomData<(A, B)>,
}

impl<A: Frame, B: Frame> Pose<A, B> {
    /// From the rotation `a_from_b` and the position of `B`'s origin in `A`, mm.
    pub fn new(rotation: UnitQuaternion<f64>, origin_mm: Vector3<f64>) -> Self {
        Self::from_isometry(Isometry3::from_parts(Translation3::from(origin_mm), rotation))
    }

    /// From a nalgebra isometry that maps `B` to `A`.
    pub fn from_isometry(isometry: Isometry3<f64>) -> Self {
        Pose { isometry, frames: PhantomData }
    }

    /// From a rotation matrix (columns: `B`'s axes in `A`) and `B`'s origin in `A`, mm.
    ///
    /// The matrix is taken as orthonormal; the nearest quaternion is kept.
    pub fn from_matrix(rotation: Matrix3<f64>, origin_mm: Vector3<f64>) -> Self {
        Self::new(UnitQuaternion::from_rotation_matrix(&Rotation3::from_matrix_unchecked(rotation)), origin_mm)
    }

    /// The pose that leaves coordinates as they are.
    pub fn identity() -> Self {
        Self::from_isometry(Isometry3::identity())
    }

    /// `b_from_a`.
    pub fn inverse(&self) -> Pose<B, A> {
        Pose::from_isometry(self.isometry.inverse())
    }

    /// Rotation `a_from_b`.
    pub fn rotation(&self) -> UnitQuaternion<f64> {
        self.isometry.rotation
    }

    /// Rotation as a matrix; its columns are `B`'s axes in `A`.
    pub fn matrix(&self) -> Matrix3<f64> {
        self.isometry.rotation.to_rotation_matrix().into_inner()
    }

    /// Position of `B`'s origin in `A`, mm.
    pub fn origin_mm(&self) -> Vector3<f64> {
        self.isometry.translation.vector
    }

    /// The same map as a nalgebra isometry.
    pub fn isometry(&self) -> &Isometry3<f64> {
        &self.isometry
    }

    /// Maps a point, mm.
    pub fn point(&self, in_b_mm: &Point3<f64>) -> Point3<f64> {
        self.isometry * in_b_mm
    }

    /// Maps a direction (rotation only).
    pub fn direction(&self, in_b: &Vector3<f64>) -> Vector3<f64> {
        self.isometry.rotation * in_b
    }

    /// Moves the pose by a small step `[tx, ty, tz, rx, ry, rz]`, both parts
    /// expressed in `B`: the origin by `t` (mm) along `B`'s axes and the
    /// rotation by `r` (rad) about them, `R <- R exp(r)`.
    ///
    /// Every covariance of a pose in this crate is over this step.
    pub fn moved(&self, step: &Vector6<f64>) -> Self {
        let t = Vector3::new(step[0], step[1], step[2]);
        let r = UnitQuaternion::from_scaled_axis(Vector3::new(step[3], step[4], step[5]));
        Self::new(self.isometry.rotation * r, self.origin_mm() + self.isometry.rotation * t)
    }

    /// The step that [`Pose::moved`] needs to get from `self` to `other`.
    pub fn step_to(&self, other: &Self) -> Vector6<f64> {
        let inverse = self.isometry.rotation.inverse();
        let t = inverse * (other.origin_mm() - self.origin_mm());
        let r = (inverse * other.isometry.rotation).scaled_axis();
        Vector6::new(t.x, t.y, t.z, r.x, r.y, r.z)
    }
}

impl<A: Frame, B: Frame, C: Frame> Mul<Pose<B, C>> for Pose<A, B> {
    type Output = Pose<A, C>;

    fn mul(self, rhs: Pose<B, C>) -> Pose<A, C> {
        Pose::from_isometry(self.isometry * rhs.isometry)
    }
}

#[cfg(test)]
mod tests {
    use super::super::frame::{Carrier, World};
    use super::*;

    #[test]
    fn step_to_undoes_moved() {
        let pose: Pose<World, Carrier> =
            Pose::new(UnitQuaternion::from_euler_angles(0.3, -0.2, 2.0), Vector3::new(10.0, -4.0, 7.0));
        let step = Vector6::new(1.0, 2.0, -3.0, 0.01, -0.2, 0.3);
        let back = pose.step_to(&pose.moved(&step));
        assert!((back - step).norm() < 1e-12, "{back}");
    }

    #[test]
    fn inverse_undoes_the_map() {
        let pose: Pose<World, Carrier> =
            Pose::new(UnitQuaternion::from_euler_angles(0.3, -0.2, 2.0), Vector3::new(10.0, -4.0, 7.0));
        let p = Point3::new(1.0, 2.0, 3.0);
        assert!((pose.inverse().point(&pose.point(&p)) - p).norm() < 1e-12);
    }
}
