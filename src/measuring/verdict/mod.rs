//! From measured quantities to a verdict: the decision rule, the words that
//! say which way to move, the ladder of verdicts, and one file for each known
//! misplacement or mistake.

mod check;
mod correction;
mod decision;
pub mod findings;
mod ladder;
mod sensitivity;

pub use check::{Checked, check};
pub use correction::{StandSize, correction};
pub use decision::{Decided, Grade, decide, widest_tolerated};
pub use findings::{Case, Finding, Rule, find};
pub use ladder::{Level, Verdict};
pub use sensitivity::{Assumption, Sensitivity, sensitivity};
