use super::paper::Paper;

/// Why nothing was printed.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum Error {
    /// A marker and its white margin are larger than the printable area.
    #[error(
        "marker {id} of carrier `{carrier}` needs {needs_mm:.1?} mm with its white margin, but {paper} paper offers \
         {offers_mm:.1?} mm: {remedy}"
    )]
    MarkerTooLarge {
        /// The marker.
        id: u32,
        /// Its carrier.
        carrier: String,
        /// Width and height with one cell of white all round and the label, mm.
        needs_mm: [f64; 2],
        /// Width and height that the paper offers, mm.
        offers_mm: [f64; 2],
        /// The paper.
        paper: Paper,
        /// What to do.
        remedy: String,
    },
    /// A board is larger than the printable area.
    #[error(
        "the board needs {needs_mm:.1?} mm with its white margin, but {paper} paper offers {offers_mm:.1?} mm: {remedy}"
    )]
    BoardTooLarge {
        /// Width and height with white margin, mm.
        needs_mm: [f64; 2],
        /// Width and height that the paper offers in the better of its two positions, mm.
        offers_mm: [f64; 2],
        /// The paper.
        paper: Paper,
        /// What to do.
        remedy: String,
    },
    /// An id that the family lacks.
    #[error("marker {id} is not in family {family}, whose ids run from 0 to {last}: give it another id")]
    UnknownMarker {
        /// The id.
        id: u32,
        /// The family.
        family: &'static str,
        /// The largest id.
        last: usize,
    },
    /// A size that is not a positive number.
    #[error("{what} has size {value} mm: give its size in millimetres, above zero")]
    BadSize {
        /// The marker or board.
        what: String,
        /// The size.
        value: f64,
    },
    /// A kit without any marker.
    #[error("kit `{kit}` has no marker to print: add a [[carrier.marker]]")]
    NoMarkers {
        /// The kit.
        kit: String,
    },
    /// A ruler reading that can't be one.
    #[error(
        "the {direction} ruler reads {read_mm} mm instead of {nominal_mm} mm: more than {limit_percent} % off is a misreading or a \
         printer that scales to fit; print at 100 % and read both rulers again"
    )]
    Reading {
        /// `right` or `up`.
        direction: &'static str,
        /// What was read, mm.
        read_mm: f64,
        /// What the ruler measures in truth, mm.
        nominal_mm: f64,
        /// The largest deviation that is believed, percent.
        limit_percent: f64,
    },
    /// A paper that is not offered.
    #[error("unknown paper `{name}`: use a4, a3 or letter")]
    UnknownPaper {
        /// As typed.
        name: String,
    },
    /// The PDF could not be written.
    #[error("can't write the PDF: {reason}")]
    Pdf {
        /// What went wrong.
        reason: String,
    },
}

impl From<crate::typeface::Damaged> for Error {
    fn from(damaged: crate::typeface::Damaged) -> Error {
        Error::Pdf { reason: damaged.to_string() }
    }
}
