//! From measured quantities to a verdict: the decision rule, the words that
//! say which way to move, the ladder of verdicts, one file for each known
//! misplacement or mistake, and what such a finding leaves of the checks.

mod check;
mod correction;
mod decision;
pub mod findings;
mod ladder;
mod position;
mod sensitivity;
mod trust;
mod undetermined;
mod words;

pub use check::{Checked, Otherwise, check, more_evidence};
pub use correction::{StandSize, correction};
pub use decision::{Decided, Grade, Tolerance, decide, widest_tolerated};
pub use findings::{Case, Finding, Rule, find};
pub use ladder::{Level, Verdict};
pub use position::{Proof, Went, after_the_moves, later, leave_it};
pub use sensitivity::{Assumption, Sensitivity, sensitivity};
pub use trust::{mark, settle};
pub use words::body_label;
pub(crate) use words::{AFTER_MOVE, body, body_called, figure, plus_minus, sentences, with_unit};
