//! Set-up sheets: what the geometry must be (`setup/1`).

mod against_kit;
mod check_file;
mod doubts;
mod explain;
mod file;
mod sheet;
mod stand_file;
mod write;

pub use check_file::{read_from, read_quantity, unknown_from};
pub use doubts::Doubt;
pub use sheet::{
    Check, Datum, Decision, DecisionRule, Evidence, From, Limits, Prerequisite, Procedure, ReferenceLine, Setup, Waiver,
};
pub use stand_file::{Screw, Stand};
