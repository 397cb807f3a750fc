use super::paper::Paper;
use crate::words::{Figure, Language, Phrase, Value, phrase};

/// Why nothing was printed.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum Error {
    /// A marker and its white margin are larger than the printable area.
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
        remedy: Phrase,
    },
    /// A board is larger than the printable area.
    BoardTooLarge {
        /// Width and height with white margin, mm.
        needs_mm: [f64; 2],
        /// Width and height that the paper offers in the better of its two positions, mm.
        offers_mm: [f64; 2],
        /// The paper.
        paper: Paper,
        /// What to do.
        remedy: Phrase,
    },
    /// An id that the family lacks.
    UnknownMarker {
        /// The id.
        id: u32,
        /// The family.
        family: &'static str,
        /// The largest id.
        last: usize,
    },
    /// A size that is not a positive number.
    BadSize {
        /// The marker or board.
        what: Phrase,
        /// The size.
        value: f64,
    },
    /// A kit without any marker.
    NoMarkers {
        /// The kit.
        kit: String,
    },
    /// A ruler reading that can't be one.
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
    UnknownPaper {
        /// As typed.
        name: String,
    },
    /// The PDF could not be written.
    Pdf {
        /// What went wrong.
        reason: Value,
    },
}

impl Error {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        let size = |mm: &[f64; 2]| {
            let [width, height] = mm.map(|side| Figure::fixed(side, 1));
            phrase!("print-two-sides", width = width, height = height)
        };
        match self {
            Error::MarkerTooLarge { id, carrier, needs_mm, offers_mm, paper, remedy } => phrase!(
                "print-marker-too-large",
                id = *id,
                holder = carrier,
                needs = size(needs_mm),
                offers = size(offers_mm),
                paper = paper.name(),
                remedy = remedy.clone(),
            ),
            Error::BoardTooLarge { needs_mm, offers_mm, paper, remedy } => phrase!(
                "print-board-too-large",
                needs = size(needs_mm),
                offers = size(offers_mm),
                paper = paper.name(),
                remedy = remedy.clone(),
            ),
            Error::UnknownMarker { id, family, last } => {
                phrase!("print-unknown-marker", id = *id, family = *family, last = *last)
            }
            Error::BadSize { what, value } => {
                phrase!("print-bad-size", what = what.clone(), size = Figure::plain(*value))
            }
            Error::NoMarkers { kit } => phrase!("print-no-markers", kit = kit),
            Error::Reading { direction, read_mm, nominal_mm, limit_percent } => phrase!(
                "print-reading-off",
                direction = *direction,
                read = Figure::plain(*read_mm),
                nominal = Figure::plain(*nominal_mm),
                limit = Figure::plain(*limit_percent),
            ),
            Error::UnknownPaper { name } => phrase!("print-unknown-paper", name = name),
            Error::Pdf { reason } => phrase!("print-no-pdf", why = reason.clone()),
        }
    }
}

impl From<crate::typeface::Damaged> for Error {
    fn from(damaged: crate::typeface::Damaged) -> Error {
        Error::Pdf { reason: damaged.phrase().into() }
    }
}
