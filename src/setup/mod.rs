//! Set-up sheets: what the geometry must be (`setup/1`).

mod sheet;

pub use sheet::{
    Check, Datum, Decision, DecisionRule, Evidence, From, Limits, Prerequisite, Procedure, ReferenceLine, Setup, Waiver,
};
