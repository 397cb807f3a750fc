//! What the detector returns.

use nalgebra::{SMatrix, Vector2};

/// One marker found in a photo.
#[derive(Debug, Clone, PartialEq)]
pub struct Sighting {
    /// Code number in the family.
    pub id: u32,
    /// Bits that had to be corrected.
    pub wrong_bits: u32,
    /// Outer corners of the black border on the stored grid, px: top-left,
    /// top-right, bottom-right, bottom-left of the upright code.
    pub corners_px: [Vector2<f64>; 4],
    /// Which corners may be used (a covered one may not).
    pub corner_valid: [bool; 4],
    /// Joint covariance over u0 v0 u1 v1 u2 v2 u3 v3, px^2, the marker's
    /// common error included.
    pub covariance_px2: SMatrix<f64, 8, 8>,
    /// White minus black, display levels / 255.
    pub contrast: f64,
    /// Standard deviation of the camera's blur at this marker, px.
    pub blur_px: f64,
    /// How far the print seems to be off a flat square (it curls, lies in waves, or was printed so), root mean square
    /// along rows and columns, px; `None` where nothing of that is seen.
    pub warp_px: Option<f64>,
}

/// All that was found in one photo.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Sightings {
    /// The markers, by id, then by position.
    pub markers: Vec<Sighting>,
    /// How far black edges were found to lie outwards of where they are
    /// printed, px, before the correction that `corners_px` already contain.
    pub edge_offset_px: f64,
    /// 1 sigma of what is left of the edge offset in `corners_px`, px, common
    /// to the photo's markers and not part of their covariances.
    pub u_edge_offset_px: f64,
    /// Median blur of the photo's markers, px (standard deviation).
    pub blur_px: f64,
    /// How much the photo's light was changed from place to place (local tone mapping): standard deviation of
    /// the gain's logarithm over a marker, median; `None` where nothing of that is seen.
    pub gain_spread: Option<f64>,
}

impl Sighting {
    /// Root mean square of the corners' standard deviations per coordinate, px.
    pub fn u_corner_px(&self) -> f64 {
        (self.covariance_px2.trace() / 8.0).max(0.0).sqrt()
    }

    /// The side of the black square without foreshortening, px: the larger of the two scales at
    /// which the marker is seen (a tilt shortens one direction only).
    pub fn side_px(&self) -> f64 {
        let [a, b, c, d] = &self.corners_px;
        let (right, down) = ((b - a + c - d) / 2.0, (d - a + c - b) / 2.0);
        let (sum, product) = (right.norm_squared() + down.norm_squared(), right.perp(&down));
        // Larger singular value of the matrix with these columns.
        ((sum + (sum * sum - 4.0 * product * product).max(0.0).sqrt()) / 2.0).sqrt()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn side_is_that_of_the_untilted_marker() {
        // 100 px, turned by 30 degrees, then shortened to half along u.
        let turn = nalgebra::Rotation2::new(30f64.to_radians());
        let corner = |x: f64, y: f64| (turn * Vector2::new(x, y)).component_mul(&Vector2::new(0.5, 1.0));
        let sighting = Sighting {
            id: 0,
            wrong_bits: 0,
            corners_px: [corner(0.0, 0.0), corner(100.0, 0.0), corner(100.0, 100.0), corner(0.0, 100.0)],
            corner_valid: [true; 4],
            covariance_px2: SMatrix::zeros(),
            contrast: 0.5,
            blur_px: 0.7,
            warp_px: None,
        };
        assert!((sighting.side_px() - 100.0).abs() < 1e-9);
    }
}
