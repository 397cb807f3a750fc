//! What is printed and where: the code table, kits with their carriers, boards.
//! Not how a marker is found.

mod board;
mod board_file;
mod dictionary;
mod layout_file;
mod kit;
mod kit_file;

pub use board::{Board, BoardKind};
pub use dictionary::{CELLS, CODE_CELLS, Dictionary, Match};
pub use layout_file::{MAX_LAYOUT_BYTES, read_layout};
pub use kit::{Carrier, Layout, Marker, Kit, Role};
pub use kit_file::{MOST_U_CENTRE_MM, MOST_U_TURN_DEG, KIT_FORMAT, KitFile, USUAL_U_TURN_DEG};
