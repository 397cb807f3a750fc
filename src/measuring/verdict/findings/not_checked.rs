//! What the sheet neither checks nor waives.

use super::{Case, Explanation, Finding, Rule};
use crate::quantity::Quantity;
use crate::setup::Setup;
use crate::verdict::Level;
use crate::words::{Phrase, phrase};

pub(super) const RULE: Rule = Rule {
    codes: &["not-checked"],
    title: "Not checked",
    rationale: "Six quantities place a stand; a sheet that is silent on one leaves it open, and a reader must know.",
    method: "Distance, centring, height, squareness, tilt, level against the sheet's checks and waivers. Exact.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "not-checked",
    level: Level::Note,
    title: "Not checked",
    meaning: "The set-up sheet says nothing about a quantity that places the stand.",
    cause: "The sheet was written for part of the job only.",
    look: "Compare the sheet with the maker's service information.",
    remedy: "Add a check to the sheet, or waive the quantity with a reason.",
}];

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
