//! What is printed and where: the code table, rigs with their carriers, boards.
//! Not how a marker is found.

mod board;
mod dictionary;
mod rig;

pub use board::{Board, BoardKind};
pub use dictionary::{CELLS, CODE_CELLS, Dictionary, Match};
pub use rig::{Carrier, Layout, Marker, Rig, Role};
