//! What is printed and where: the code table, rigs with their carriers, boards.
//! Not how a marker is found.

mod board;
mod rig;

pub use board::{Board, BoardKind};
pub use rig::{Carrier, Layout, Marker, Rig, Role};
