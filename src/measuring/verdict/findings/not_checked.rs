//! What the sheet neither checks nor waives.

use super::{Case, Explanation, Finding, Rule};
use crate::quantity::Quantity;
use crate::setup::Setup;
use crate::verdict::Level;
use crate::words::{Phrase, phrase};

pub(super) const RULE: Rule =
    Rule { name: "not-checked", codes: &["not-checked"], touches: super::Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("not-checked", Level::Note)];

/// The six quantities that place a target.
const SIX: [Quantity; 6] =
    [Quantity::Distance, Quantity::LateralOffset, Quantity::Height, Quantity::Yaw, Quantity::Pitch, Quantity::Roll];

/// Quantities of the six that a sheet neither checks nor waives.
pub fn not_checked(setup: &Setup) -> Vec<Quantity> {
    let named =
        |q: &Quantity| setup.checks.iter().any(|c| c.quantity == *q) || setup.waived.iter().any(|w| w.quantity == *q);
    SIX.into_iter().filter(|q| !named(q)).collect()
}

fn find(case: &Case) -> Vec<Finding> {
    let open: Vec<Phrase> = not_checked(case.setup).into_iter().map(Quantity::phrase).collect();
    if open.is_empty() {
        return Vec::new();
    }
    let message = phrase!("findings-not-checked", quantities = open);
    vec![Finding::new("not-checked", Level::Note, message)]
}
