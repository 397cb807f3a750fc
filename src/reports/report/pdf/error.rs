//! Why no PDF was made.

use crate::typeface::Damaged;

/// Why no PDF was made.
#[derive(Debug, thiserror::Error)]
pub enum PdfError {
    /// The built-in fonts.
    #[error("cannot write the PDF report: {0}")]
    Fonts(#[from] Damaged),
    /// The page's own elements.
    #[error("cannot write the PDF report: its page is not well-formed: {reason}")]
    Page {
        /// What the reader said.
        reason: String,
    },
    /// The file.
    #[error("cannot write the PDF report: {reason}")]
    Write {
        /// What the writer said.
        reason: String,
    },
}
