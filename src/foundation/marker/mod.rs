//! What is printed and where: the code table, rigs with their carriers, boards.
//! Not how a marker is found.

mod board;
mod board_file;
mod dictionary;
mod layout_file;
mod rig;
mod rig_file;

pub use board::{Board, BoardKind};
pub use dictionary::{CELLS, CODE_CELLS, Dictionary, Match};
pub use layout_file::{MAX_LAYOUT_BYTES, read_layout};
pub use rig::{Carrier, Layout, Marker, Rig, Role};
pub use rig_file::{MOST_U_CENTRE_MM, MOST_U_TURN_DEG, RIG_FORMAT, RigFile, USUAL_U_TURN_DEG};
