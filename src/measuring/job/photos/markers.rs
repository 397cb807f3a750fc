//! The markers of one photo as plain values, for the command that shows them.

use std::path::Path;

use serde::Serialize;

use crate::detect::{Sighting, Sightings, find_markers};
use crate::marker::Dictionary;
use crate::photo::{self, Luma};

/// What was found in one photo, as the formats page has it.
#[derive(Debug, Serialize)]
pub struct PhotoMarkers {
    /// The photo as it was named.
    pub file: String,
    /// Stored pixels in a row.
    pub width_px: usize,
    /// Stored rows.
    pub height_px: usize,
    /// How far black edges lay inwards; already corrected.
    pub edge_offset_px: f64,
    /// Its standard uncertainty.
    pub u_edge_offset_px: f64,
    /// Blur, 1 sigma.
    pub blur_px: f64,
    /// How much the light was changed from place to place: standard deviation of the gain's logarithm over a marker.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub gain_spread: Option<f64>,
    /// The markers.
    pub markers: Vec<FoundMarker>,
}

/// One marker in a photo.
#[derive(Debug, Serialize)]
pub struct FoundMarker {
    /// Number in the family.
    pub id: u32,
    /// The family's name.
    pub family: &'static str,
    /// Repaired bits.
    pub wrong_bits: u32,
    /// Corners: top-left, top-right, bottom-right, bottom-left of the upright code.
    pub corners_px: [[f64; 2]; 4],
    /// Whether each corner could be measured.
    pub corner_valid: [bool; 4],
    /// Covariance of the eight coordinates.
    pub covariance_px2: [[f64; 8]; 8],
    /// Typical standard uncertainty of a corner coordinate.
    pub u_corner_px: f64,
    /// White minus black, display levels / 255.
    pub contrast: f64,
    /// Side without foreshortening.
    pub side_px: f64,
    /// Blur, 1 sigma.
    pub blur_px: f64,
    /// How far the print seems to be off a flat square, root mean square.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub warp_px: Option<f64>,
}

/// Finds the markers of one photo.
///
/// # Errors
/// Where the photo cannot be read or decoded.
pub fn photo_markers(path: &Path) -> Result<PhotoMarkers, photo::Error> {
    let photo = photo::read(path)?;
    let sightings = find_markers(&photo.luma, Dictionary::tag36h11());
    Ok(found(path.display().to_string(), &photo.luma, &sightings))
}

fn found(file: String, luma: &Luma, sightings: &Sightings) -> PhotoMarkers {
    PhotoMarkers {
        file,
        width_px: luma.width(),
        height_px: luma.height(),
        edge_offset_px: sightings.edge_offset_px,
        u_edge_offset_px: sightings.u_edge_offset_px,
        blur_px: sightings.blur_px,
        gain_spread: sightings.gain_spread,
        markers: sightings.markers.iter().map(marker).collect(),
    }
}

fn marker(sighting: &Sighting) -> FoundMarker {
    FoundMarker {
        id: sighting.id,
        family: Dictionary::tag36h11().name(),
        wrong_bits: sighting.wrong_bits,
        corners_px: sighting.corners_px.map(|c| [c.x, c.y]),
        corner_valid: sighting.corner_valid,
        covariance_px2: std::array::from_fn(|i| std::array::from_fn(|j| sighting.covariance_px2[(i, j)])),
        u_corner_px: sighting.u_corner_px(),
        contrast: sighting.contrast,
        side_px: sighting.side_px(),
        blur_px: sighting.blur_px,
        warp_px: sighting.warp_px,
    }
}
