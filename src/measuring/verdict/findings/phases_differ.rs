//! The stand or the vehicle stood elsewhere after the calibration than before it.

use super::{Case, Finding, Moved, Rule, Touches};
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    name: "phases-differ",
    codes: &["stand-moved-between-photos", "vehicle-moved-between-photos"],
    touches: Touches::MovesOnly,
    find,
};

fn find(case: &Case) -> Vec<Finding> {
    let words = |m: &Moved| {
        let code = if m.is_stand { "stand-moved-between-photos" } else { "vehicle-moved-between-photos" };
        let body = match case.kit.carriers.iter().position(|c| m.is_stand && c.name == m.name) {
            Some(k) => case.body_first(k),
            None => phrase!("verdict-body-first", role = if m.is_stand { "target" } else { "vehicle" }),
        };
        let (mm, degrees) = (figure(m.mm, 0), figure(m.degrees, 2));
        let message = phrase!("findings-phases-differ", body = body, mm = mm, degrees = degrees);
        let finding = Finding::new(code, Level::Stop, message);
        if m.is_stand { finding.on_carrier(&m.name) } else { finding }
    };
    case.phases.iter().filter(|m| m.is_proven()).map(words).collect()
}
