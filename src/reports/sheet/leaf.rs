//! A page that is still to be drawn.

use super::assembly;
use super::piece::Piece;

/// A page that is still to be drawn.
pub(super) enum Leaf<'a> {
    Cover,
    Assembly { carrier: usize, drawing: assembly::Drawing<'a> },
    Sheet { carrier: usize, piece: Piece<'a> },
}
