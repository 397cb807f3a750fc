//! What is printed and where: the code table, kits with their carriers, boards.
//! Not how a marker is found.

mod board;
mod board_file;
mod dictionary;
mod kit;
mod kit_file;
mod layout_file;

pub use board::{Board, BoardKind};
pub use dictionary::{CELLS, CODE_CELLS, Dictionary, Match};
pub use kit::{Carrier, Kit, Layout, Marker, Role};
pub use kit_file::{KIT_FORMAT, KitFile, MOST_U_CENTRE_MM, MOST_U_TURN_DEG, USUAL_U_TURN_DEG};
pub use layout_file::{MAX_LAYOUT_BYTES, read_layout};
