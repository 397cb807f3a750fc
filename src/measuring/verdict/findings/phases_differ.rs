//! The stand or the vehicle stood elsewhere after the calibration than before it.

use super::{Case, Finding, Rule, Touches};
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["stand-moved-between-photos", "vehicle-moved-between-photos"],
    title: "Before and after differ",
    rationale: "Photos from before and after the calibration prove that nothing moved while it ran.",
    method: "One adjustment in which stand and plates have a pose for each phase over the same floor sheets; the \
             difference against its own covariance (Wald test), chance below 1e-4 and larger than 2.5 mm or 0.12 deg. \
             Where it is found, the checks are those of the photos from before.",
    touches: Touches::MovesOnly,
    find,
};

/// How far a body's two poses differ.
#[derive(Debug, Clone, PartialEq)]
pub struct Moved {
    /// The stand, else the vehicle.
    pub is_stand: bool,
    /// The carrier's name, or "vehicle".
    pub name: String,
    /// Distance between the two positions, mm.
    pub mm: f64,
    /// Angle between the two attitudes, degrees.
    pub degrees: f64,
    /// 1 sigma of the position's difference along its worst direction, mm.
    pub u_mm: f64,
    /// Likewise of the attitude, degrees.
    pub u_degrees: f64,
    /// Chance of such a difference where nothing moved.
    pub chance: f64,
}

/// Smaller moves are below what photos of a bay can tell from lens errors.
const LEAST_MM: f64 = 2.5;
const LEAST_DEG: f64 = 0.12;
const CHANCE: f64 = 1e-4;

impl Moved {
    /// Whether the body has moved.
    pub fn is_proven(&self) -> bool {
        self.chance < CHANCE && self.is_large()
    }

    /// Whether the difference is larger than what photos tell from lens errors.
    pub fn is_large(&self) -> bool {
        self.mm > LEAST_MM || self.degrees > LEAST_DEG
    }
}

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
