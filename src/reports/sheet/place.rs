//! Where each marker stands on the pages, for whoever checks a print.

use crate::marker::{Board, BoardKind, Kit};

use super::board_sheet::Layout;
use super::{Error, Leaf, Options, leaves, piece_sheet};
use crate::typeface::Fonts;

/// A marker on a printed page.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    /// The page, counted from 1.
    pub page: usize,
    /// The marker.
    pub id: u32,
    /// Its centre from the top left of the page, x right, y down, mm.
    pub centre_mm: [f64; 2],
    /// Outer edge of the black border along x and y, mm.
    pub size_mm: [f64; 2],
}

/// Where [`super::pdf_for_kit`] prints each marker.
///
/// # Errors
/// As for printing.
pub fn places_for_kit(kit: &Kit, options: &Options) -> Result<Vec<Place>, Error> {
    let paper = options.paper;
    let mut places = Vec::new();
    for (index, leaf) in leaves(kit, options, &Fonts::new()?)?.iter().enumerate() {
        let Leaf::Sheet { piece, .. } = leaf else { continue };
        for (marker, centre_mm) in piece.markers.iter().zip(piece_sheet::centres_mm(piece, paper)) {
            places.push(Place { page: index + 1, id: marker.id, centre_mm, size_mm: marker.size_mm });
        }
    }
    Ok(places)
}

/// Where [`super::pdf_for_board`] prints each marker; a chessboard has none.
///
/// # Errors
/// As for printing.
pub fn places_for_board(board: &Board, options: &Options) -> Result<Vec<Place>, Error> {
    let start = Layout::new(board, options.paper)?.pattern_mm();
    let BoardKind::Markers { columns, rows, first_id, size_mm, gap_mm } = board.kind else { return Ok(Vec::new()) };
    let place = |i: u32| {
        let steps = [i % columns, i / columns].map(f64::from);
        let centre_mm = [0, 1].map(|axis| start[axis] + steps[axis] * (size_mm + gap_mm) + size_mm / 2.0);
        Place { page: 1, id: first_id + i, centre_mm, size_mm: [size_mm; 2] }
    };
    Ok((0..columns * rows).map(place).collect())
}
