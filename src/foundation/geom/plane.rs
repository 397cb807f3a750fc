//! A plane with a side.

use nalgebra::{Point3, Unit, Vector3};

/// The plane `normal . p = offset_mm`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plane {
    /// Unit normal; the positive side is "above".
    pub normal: Unit<Vector3<f64>>,
    /// Distance of the plane from the origin along the normal, mm.
    pub offset_mm: f64,
}

impl Plane {
    /// The plane through a point with a normal of any length but zero.
    pub fn through(point_mm: &Point3<f64>, normal: &Vector3<f64>) -> Self {
        let normal = Unit::new_normalize(*normal);
        Plane { offset_mm: normal.dot(&point_mm.coords), normal }
    }

    /// Signed distance of a point, mm; positive on the normal's side.
    pub fn height_of_mm(&self, point_mm: &Point3<f64>) -> f64 {
        self.normal.dot(&point_mm.coords) - self.offset_mm
    }

    /// The foot of the perpendicular from a point.
    pub fn foot_of(&self, point_mm: &Point3<f64>) -> Point3<f64> {
        point_mm - self.normal.into_inner() * self.height_of_mm(point_mm)
    }

    /// The part of a direction that lies in the plane (not normalised).
    pub fn along(&self, direction: &Vector3<f64>) -> Vector3<f64> {
        direction - self.normal.into_inner() * self.normal.dot(direction)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn foot_lies_in_the_plane() {
        let plane = Plane::through(&Point3::new(1.0, 2.0, 3.0), &Vector3::new(0.1, -0.2, 4.0));
        let foot = plane.foot_of(&Point3::new(-7.0, 5.0, 11.0));
        assert!(plane.height_of_mm(&foot).abs() < 1e-12);
    }
}
