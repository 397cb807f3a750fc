//! What one photo shows of the board.

use nalgebra::{DMatrix, Vector2};

use super::target::Target;
use crate::detect::Sightings;
use crate::photo::Exif;
use crate::pose::{U_EDGE_BY_SIZE_PX, View};

/// What is left in a corner that no detector can know, px (1 sigma): keeps a
/// covariance from claiming more than pixels can hold.
const LEAST_U_PX: f64 = 0.003;

/// A photo of the board.
#[derive(Debug, Clone, PartialEq)]
pub struct BoardPhoto {
    /// Path for messages.
    pub file: String,
    /// Width and height of the stored pixel grid.
    pub size_px: [u32; 2],
    /// The photo's own record.
    pub exif: Exif,
    /// Elements of the board that were found.
    pub(super) seen: Vec<Seen>,
    /// 1 sigma of the edge offset common to the photo, px.
    pub(super) u_edge_offset_px: f64,
    /// 1 sigma of the extra offset of a marker of [`crate::pose::EDGE_SIDE_PX`].
    pub(super) u_edge_by_size_px: f64,
}

/// One element of the board in one photo.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Seen {
    /// Index among the target's spots.
    pub(super) spot: usize,
    /// Which of the spot's points are used.
    pub(super) points: Vec<usize>,
    /// Where they were found, px.
    pub(super) found_px: Vec<Vector2<f64>>,
    /// How each moves when black grows by one pixel.
    pub(super) outward: Vec<Vector2<f64>>,
    /// Side of the marker, px.
    pub(super) side_px: f64,
    /// Whitening: unit variance = whitener * px.
    pub(super) whitener: DMatrix<f64>,
    /// Root mean square of the corners' standard deviations, px.
    pub(super) u_px: f64,
}

impl BoardPhoto {
    /// The board's markers among a photo's sightings, each id once.
    pub(super) fn of_markers(
        file: &str,
        size_px: [u32; 2],
        exif: Exif,
        target: &Target,
        sightings: &Sightings,
    ) -> BoardPhoto {
        let once = |id: u32| sightings.markers.iter().filter(|m| m.id == id).count() == 1;
        let seen = sightings
            .markers
            .iter()
            .filter(|m| once(m.id))
            .filter_map(|m| {
                let spot = target.spots.iter().position(|s| s.id == m.id)?;
                Seen::of_marker(&View {
                    id: m.id,
                    carrier: 0,
                    marker: spot,
                    corners_px: m.corners_px,
                    valid: m.corner_valid,
                    covariance_px2: m.covariance_px2,
                })
            })
            .collect();
        BoardPhoto {
            file: file.to_owned(),
            size_px,
            exif,
            seen,
            u_edge_offset_px: sightings.u_edge_offset_px,
            u_edge_by_size_px: U_EDGE_BY_SIZE_PX,
        }
    }

    /// All corners of a chessboard, or none.
    pub(super) fn of_corners(file: &str, size_px: [u32; 2], exif: Exif, corners: &[Vector2<f64>]) -> BoardPhoto {
        let seen = corners.iter().enumerate().map(|(spot, corner)| Seen::of_corner(spot, *corner)).collect();
        // Black grows on all sides of a chessboard corner alike: it stays where it is.
        BoardPhoto { file: file.to_owned(), size_px, exif, seen, u_edge_offset_px: 0.0, u_edge_by_size_px: 0.0 }
    }

    /// The found points, px: a marker's corners after another's, a
    /// chessboard's corners row by row from the top left as seen.
    pub fn found_px(&self) -> impl Iterator<Item = [f64; 2]> {
        self.seen.iter().flat_map(|s| &s.found_px).map(|p| [p.x, p.y])
    }

    /// Points that were found.
    pub(super) fn points(&self) -> usize {
        self.seen.iter().map(|s| s.points.len()).sum()
    }
}

/// What a chessboard corner is taken to be known to, px; the fit finds the true figure.
const U_SADDLE_PX: f64 = 0.1;

impl Seen {
    fn of_corner(spot: usize, corner: Vector2<f64>) -> Seen {
        Seen {
            spot,
            points: vec![0],
            found_px: vec![corner],
            outward: vec![Vector2::zeros()],
            side_px: crate::pose::EDGE_SIDE_PX,
            whitener: DMatrix::identity(2, 2) / U_SADDLE_PX,
            u_px: U_SADDLE_PX,
        }
    }

    fn of_marker(view: &View) -> Option<Seen> {
        let points: Vec<usize> = (0..4).filter(|i| view.valid[*i]).collect();
        let outward = view.outward();
        let rows: Vec<usize> = points.iter().flat_map(|i| [2 * i, 2 * i + 1]).collect();
        let covariance = DMatrix::from_fn(rows.len(), rows.len(), |i, j| view.covariance_px2[(rows[i], rows[j])]);
        Some(Seen {
            spot: view.marker,
            found_px: points.iter().map(|i| view.corners_px[*i]).collect(),
            outward: points.iter().map(|i| outward[*i]).collect(),
            side_px: view.side_px(),
            u_px: (covariance.trace() / rows.len().max(1) as f64).sqrt(),
            whitener: whitener(covariance)?,
            points,
        })
    }
}

/// The inverse of the covariance's Cholesky factor. `None` where it is no
/// covariance or has no rows.
fn whitener(mut covariance: DMatrix<f64>) -> Option<DMatrix<f64>> {
    let n = covariance.nrows();
    if n == 0 {
        return None;
    }
    for i in 0..n {
        covariance[(i, i)] += LEAST_U_PX * LEAST_U_PX;
    }
    let lower = covariance.cholesky()?.l();
    lower.solve_lower_triangular(&DMatrix::identity(n, n))
}
