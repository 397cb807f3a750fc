//! Why no PDF was made.

use crate::typeface::Damaged;
use crate::words::{Language, Phrase, phrase};

/// Why no PDF was made.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum PdfError {
    /// The built-in fonts.
    Fonts(#[from] Damaged),
    /// The page's own elements.
    Page {
        /// What the reader said.
        reason: String,
    },
    /// The file.
    Write {
        /// What the writer said.
        reason: String,
    },
}

impl PdfError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            PdfError::Fonts(damaged) => phrase!("report-no-pdf", why = damaged.phrase()),
            PdfError::Page { reason } => phrase!("report-no-pdf-of-page", why = reason),
            PdfError::Write { reason } => phrase!("report-no-pdf", why = reason),
        }
    }
}
