//! What the detector returns.

use nalgebra::{SMatrix, Vector2};

/// One marker found in a photo.
#[derive(Debug, Clone, PartialEq)]
pub struct Sighting {
    /// Code number in the family.
    pub id: u32,
    /// Bits that had to be corrected.
    pub hamming: u32,
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
}

impl Sighting {
    /// Root mean square of the corners' standard deviations per coordinate, px.
    pub fn u_corner_px(&self) -> f64 {
        (self.covariance_px2.trace() / 8.0).max(0.0).sqrt()
    }

    /// Square root of the black square's area: the side without foreshortening, roughly, px.
    pub fn side_px(&self) -> f64 {
        let [a, b, c, d] = &self.corners_px;
        let (e, f) = (c - a, d - b);
        ((e.x * f.y - e.y * f.x).abs() / 2.0).sqrt()
    }
}
