//! Boards for fitting a camera (`board/1`).

/// A flat board of known geometry.
#[derive(Debug, Clone, PartialEq)]
pub struct Board {
    /// What is printed on it.
    pub kind: BoardKind,
    /// 1 sigma of one common factor on all its lengths.
    pub u_scale_relative: f64,
}

/// The pattern of a board.
#[derive(Debug, Clone, PartialEq)]
pub enum BoardKind {
    /// A grid of markers; ids run left to right, top to bottom.
    Markers {
        /// Markers in a row.
        columns: u32,
        /// Rows.
        rows: u32,
        /// Id of the top-left marker.
        first_id: u32,
        /// Outer edge of each marker's black border, mm.
        size_mm: f64,
        /// Free space between neighbouring borders, mm.
        gap_mm: f64,
    },
    /// A chessboard.
    Chessboard {
        /// Inner corners across and down.
        inner_corners: [u32; 2],
        /// Edge of one square, mm.
        square_mm: f64,
    },
}
