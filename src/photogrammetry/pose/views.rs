//! The question: which photo shows which marker where.

use std::collections::BTreeSet;

use nalgebra::{SMatrix, Vector2};

use crate::camera::Profile;
use crate::detect::Sightings;
use crate::marker::Kit;

/// Everything that one adjustment sees.
#[derive(Debug, Clone)]
pub struct Problem<'a> {
    /// The marker kit.
    pub kit: &'a Kit,
    /// The cameras.
    pub cameras: Vec<&'a Profile>,
    /// The photos.
    pub photos: Vec<PhotoView>,
}

/// One photo's share of the question.
#[derive(Debug, Clone)]
pub struct PhotoView {
    /// Index among the cameras.
    pub camera: usize,
    /// The kit's markers in it.
    pub views: Vec<View>,
    /// 1 sigma of the edge offset that is left in the corners, px.
    pub u_edge_offset_px: f64,
    /// 1 sigma of the extra edge offset of a marker of [`EDGE_SIDE_PX`]; it
    /// falls with the marker's size.
    pub u_edge_by_size_px: f64,
}

/// The kit's codes that one of some photos shows twice. Two prints of them are about, and a photo that shows one does not say
/// which: where the wrong one alone is in view it would be measured as the kit's.
pub fn doubled<'a>(kit: &Kit, photos: impl IntoIterator<Item = &'a Sightings>) -> BTreeSet<u32> {
    let mut doubled = BTreeSet::new();
    for photo in photos {
        let mut once = BTreeSet::new();
        doubled.extend(photo.markers.iter().map(|m| m.id).filter(|id| !once.insert(*id)));
    }
    doubled.retain(|id| kit.marker(*id).is_some());
    doubled
}

/// The side at which [`PhotoView::u_edge_by_size_px`] is stated, px.
pub const EDGE_SIDE_PX: f64 = 50.0;

/// What is left of the size dependence in phone-like pictures: sharpening and
/// noise reduction reach over the neighbouring cell where cells are a few
/// pixels small, and shift its edges by about this much, px (from rendered
/// photos with sharpening and noise reduction unknown to the detector).
pub const U_EDGE_BY_SIZE_PX: f64 = 0.010;

/// One marker of the kit in one photo.
#[derive(Debug, Clone)]
pub struct View {
    /// The marker's id.
    pub id: u32,
    /// Index of its carrier in the kit.
    pub carrier: usize,
    /// Index of the marker on the carrier.
    pub marker: usize,
    /// Corners, px.
    pub corners_px: [Vector2<f64>; 4],
    /// Which corners take part.
    pub valid: [bool; 4],
    /// Joint covariance of the corners, px^2.
    pub covariance_px2: SMatrix<f64, 8, 8>,
}

impl PhotoView {
    /// The sightings that the kit knows, each id once. A code seen twice in
    /// one photo is left out: nobody can say which of the two is the kit's.
    /// Of several photos of one bay it is in doubt in the others too, see [`doubled`].
    pub fn from_sightings(kit: &Kit, camera: usize, sightings: &Sightings) -> Self {
        let once = |id: u32| sightings.markers.iter().filter(|m| m.id == id).count() == 1;
        let views = sightings
            .markers
            .iter()
            .filter(|m| once(m.id) && m.corner_valid.iter().filter(|v| **v).count() >= 2)
            .filter_map(|m| {
                let (carrier, marker) = kit.marker(m.id)?;
                let marker = kit.carriers[carrier].markers.iter().position(|x| x.id == marker.id)?;
                Some(View {
                    id: m.id,
                    carrier,
                    marker,
                    corners_px: m.corners_px,
                    valid: m.corner_valid,
                    covariance_px2: m.covariance_px2,
                })
            })
            .collect();
        PhotoView { camera, views, u_edge_offset_px: sightings.u_edge_offset_px, u_edge_by_size_px: U_EDGE_BY_SIZE_PX }
    }

    /// The same without some codes.
    #[must_use]
    pub fn without(mut self, codes: &BTreeSet<u32>) -> Self {
        self.views.retain(|v| !codes.contains(&v.id));
        self
    }

    /// Whether the photo shows a carrier.
    pub fn shows(&self, carrier: usize) -> bool {
        self.views.iter().any(|v| v.carrier == carrier)
    }
}

impl View {
    /// How many corners take part.
    pub fn corners(&self) -> usize {
        self.valid.iter().filter(|v| **v).count()
    }

    /// The longest edge, px: about the side without foreshortening.
    pub fn side_px(&self) -> f64 {
        let c = &self.corners_px;
        (0..4).map(|i| (c[(i + 1) % 4] - c[i]).norm()).fold(1.0, f64::max)
    }

    /// How far each corner moves, px, when all four edges move outwards by one
    /// pixel in the picture: the corner is where its two edges cross.
    pub fn outward(&self) -> [Vector2<f64>; 4] {
        let c = &self.corners_px;
        // Corners run clockwise as seen, v points down: the outward normal of
        // an edge (x, y) is (y, -x).
        let normal = |i: usize| {
            let e = c[(i + 1) % 4] - c[i];
            Vector2::new(e.y, -e.x).normalize()
        };
        std::array::from_fn(|i| {
            let (a, b) = (normal((i + 3) % 4), normal(i));
            (a + b) / (1.0 + a.dot(&b)).max(0.05)
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn corners_of_a_square_move_outwards_along_the_diagonals() {
        let view = View {
            id: 0,
            carrier: 0,
            marker: 0,
            corners_px: [[0.0, 0.0], [10.0, 0.0], [10.0, 10.0], [0.0, 10.0]].map(|[u, v]| Vector2::new(u, v)),
            valid: [true; 4],
            covariance_px2: SMatrix::identity(),
        };
        let expected = [[-1.0, -1.0], [1.0, -1.0], [1.0, 1.0], [-1.0, 1.0]];
        for (found, [u, v]) in view.outward().iter().zip(expected) {
            assert!((found - Vector2::new(u, v)).norm() < 1e-12, "{found}");
        }
    }
}
