//! Printing: marker kits and camera boards as vector PDF at true size.
//!
//! A kit becomes one document: instructions with check rulers, then for each
//! carrier an assembly drawing and its sheets. Everything is drawn in
//! millimetres from the top left of the page, x right, y down; a marker's
//! `right` is always the page's x, so that one reading of the two rulers holds
//! for every sheet of a printing run. The same kit and options give the same
//! bytes.

mod assembly;
mod board_sheet;
mod canvas;
mod code;
mod correct;
mod cover;
mod dimension;
mod error;
mod leaf;
mod marks;
mod paper;
mod paper_name;
mod piece;
mod piece_sheet;
mod place;
mod ruler;
mod view;
mod words;

pub use correct::{RulerReading, corrected_board, corrected_kit};
pub use error::Error;
pub use paper::Paper;
pub use place::{Place, places_for_board, places_for_kit};
pub use ruler::RULER_MM;

use crate::marker::{Board, Kit};
use crate::typeface::Fonts;
use crate::words::{Language, say};
use canvas::Print;
use leaf::Leaf;
use piece::pieces;

/// How to print.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Options {
    /// The paper in the printer.
    pub paper: Paper,
    /// The language of what is written beside the markers.
    pub language: Language,
}

/// Prints a marker kit: instructions, and for each carrier its assembly
/// drawing and sheets.
///
/// # Errors
/// A marker that does not fit the paper, is not in the family or has no
/// sensible size; a kit without markers.
pub fn pdf_for_kit(kit: &Kit, options: &Options) -> Result<Vec<u8>, Error> {
    let Options { paper, language } = *options;
    let mut print = Print::new(&say!(language, "print-kit-title", kit = &kit.name), language)?;
    let leaves = leaves(kit, options, print.fonts())?;
    let count = leaves.len();
    let contents = cover::contents(kit, &leaves, language);
    for (index, leaf) in leaves.iter().enumerate() {
        let folio = words::folio(&kit.name, index + 1, count, language);
        print.page(paper.size_mm(), |canvas| match leaf {
            Leaf::Cover => cover::draw(canvas, paper, kit, &contents, &folio),
            Leaf::Assembly { carrier, drawing } => {
                assembly::draw(canvas, paper, &kit.carriers[*carrier], drawing, &folio);
            }
            Leaf::Sheet { carrier, piece } => {
                piece_sheet::draw(canvas, paper, &kit.carriers[*carrier], piece, &folio);
            }
        })?;
    }
    print.finish()
}

/// Prints a board for fitting a camera on one page.
///
/// # Errors
/// A board that does not fit the paper or needs ids that the family lacks.
pub fn pdf_for_board(board: &Board, options: &Options) -> Result<Vec<u8>, Error> {
    let layout = board_sheet::Layout::new(board, options.paper)?;
    let mut print = Print::new(&say!(options.language, "print-board-title"), options.language)?;
    print.page(layout.page_mm, |canvas| board_sheet::draw(canvas, board, &layout))?;
    print.finish()
}

fn leaves<'a>(kit: &'a Kit, options: &Options, fonts: &Fonts) -> Result<Vec<Leaf<'a>>, Error> {
    let Options { paper, language } = *options;
    let mut leaves = vec![Leaf::Cover];
    for (index, carrier) in kit.carriers.iter().enumerate().filter(|(_, c)| !c.markers.is_empty()) {
        let pieces = pieces(carrier, paper)?;
        let first_page = leaves.len() + 1;
        let drawings =
            assembly::drawings(carrier, &pieces, paper, first_page, &assembly::Lettering { fonts, language });
        leaves.extend(drawings.into_iter().map(|drawing| Leaf::Assembly { carrier: index, drawing }));
        leaves.extend(pieces.into_iter().map(|piece| Leaf::Sheet { carrier: index, piece }));
    }
    if leaves.len() == 1 {
        return Err(Error::NoMarkers { kit: kit.name.clone() });
    }
    Ok(leaves)
}
