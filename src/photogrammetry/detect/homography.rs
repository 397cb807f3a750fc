//! Plane perspective between a marker's cells and the photo.

use nalgebra::{Matrix3, SMatrix, SVector, Vector2, Vector3};

/// Maps cell coordinates (0 to 8 along each side of the black border, y down) to pixels.
#[derive(Debug, Clone)]
pub(super) struct Homography {
    pub(super) photo_from_cell: Matrix3<f64>,
}

/// Cell coordinates of the corners.
pub(super) const CORNERS: [(f64, f64); 4] = [(0.0, 0.0), (8.0, 0.0), (8.0, 8.0), (0.0, 8.0)];

impl Homography {
    pub(super) fn from_matrix(photo_from_cell: Matrix3<f64>) -> Option<Self> {
        let invertible = photo_from_cell.try_inverse()?.iter().all(|x| x.is_finite());
        invertible.then_some(Homography { photo_from_cell })
    }

    /// The homography that maps the marker's corners to four points.
    pub(super) fn from_corners(quad: &[Vector2<f64>; 4]) -> Option<Self> {
        let mut a = SMatrix::<f64, 8, 8>::zeros();
        let mut b = SVector::<f64, 8>::zeros();
        for (i, ((x, y), p)) in CORNERS.iter().zip(quad).enumerate() {
            a.set_row(
                2 * i,
                &SMatrix::<f64, 1, 8>::from([*x, *y, 1.0, 0.0, 0.0, 0.0, -x * p.x, -y * p.x].map(|v| [v])),
            );
            a.set_row(
                2 * i + 1,
                &SMatrix::<f64, 1, 8>::from([0.0, 0.0, 0.0, *x, *y, 1.0, -x * p.y, -y * p.y].map(|v| [v])),
            );
            b[2 * i] = p.x;
            b[2 * i + 1] = p.y;
        }
        let h = a.lu().solve(&b)?;
        Self::from_matrix(Matrix3::new(h[0], h[1], h[2], h[3], h[4], h[5], h[6], h[7], 1.0))
    }

    pub(super) fn to_photo(&self, x: f64, y: f64) -> Vector2<f64> {
        let p = self.photo_from_cell * Vector3::new(x, y, 1.0);
        Vector2::new(p.x / p.z, p.y / p.z)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn maps_corners_and_centre() {
        let quad = [(10.0, 20.0), (60.0, 25.0), (55.0, 80.0), (5.0, 61.0)].map(|(u, v)| Vector2::new(u, v));
        let h = Homography::from_corners(&quad).unwrap();
        for ((x, y), q) in CORNERS.iter().zip(&quad) {
            assert!((h.to_photo(*x, *y) - q).norm() < 1e-9);
        }
        // The diagonals cross in the middle of the pattern.
        let crossing =
            super::super::quad::intersection(quad[0], quad[2] - quad[0], quad[1], quad[3] - quad[1]).unwrap();
        assert!((h.to_photo(4.0, 4.0) - crossing).norm() < 1e-9);
    }

    #[test]
    fn three_points_on_a_line_are_none() {
        let quad = [(0.0, 0.0), (10.0, 0.0), (20.0, 0.0), (0.0, 10.0)].map(|(u, v)| Vector2::new(u, v));
        assert!(Homography::from_corners(&quad).is_none_or(|h| h.photo_from_cell.determinant().abs() < 1e-6));
    }
}
