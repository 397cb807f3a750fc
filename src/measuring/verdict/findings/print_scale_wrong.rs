//! Markers were printed at another size than the kit file says.

use super::suspects::{LEVEL, Suspect};
use super::{Case, Explanation, Finding, Rule, Touches};
use crate::marker::Role;
use crate::num::normal_quantile;
use crate::pose::Extra;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "print-scale-wrong", codes: &["print-scale-wrong"], touches: Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("print-scale-wrong", Level::Stop)];

/// Less than what paper does with the weather is of no interest, relative: on all carriers alike, and on one against the others,
/// where it moves what that one marks.
pub(super) const LEAST: f64 = 0.003;
pub(super) const LEAST_OF_ONE: f64 = 0.0015;

/// What careful printing and corners of small markers found alike a hundredth of a pixel outward or inward in all photos look
/// like, relative: photos that only tell this much more surely are no sign of a fault of one carrier's.
pub(super) const CAREFUL: f64 = 0.0005;

fn find(case: &Case) -> Vec<Finding> {
    let Some(suspect) = case.culprit(|e| matches!(e, Extra::Scale { .. })) else { return Vec::new() };
    let Extra::Scale { carriers } = &suspect.extra else { return Vec::new() };
    let factor = suspect.test.estimate[0];
    let prints = case.prints(carriers);
    let least = if prints == Prints::All { LEAST } else { surely_beyond_careful(suspect) };
    if factor.abs() < least {
        return Vec::new();
    }
    let (size, percent) = (if factor < 0.0 { "smaller" } else { "larger" }, figure(100.0 * factor.abs(), 1));
    let finding =
        |message| Finding::new("print-scale-wrong", Level::Stop, case.with_rivals(message)).leaving(case.open());
    vec![match prints {
        Prints::Of(one) => {
            let message = phrase!("findings-print-scale", size = size, percent = percent, body = case.body(one));
            finding(message).on_carrier(&case.kit.carriers[one].name)
        }
        Prints::Kind(kind) => {
            finding(phrase!("findings-print-scale-kind", size = size, percent = percent, kind = kind))
        }
        Prints::All => finding(phrase!("findings-print-scales", size = size, percent = percent)),
    }]
}

/// Which prints may have another size.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Prints {
    /// Those of one carrier, by index in the kit.
    Of(usize),
    /// All floor sheets, or all wheel plates, as messages select them.
    Kind(&'static str),
    /// All that are seen.
    All,
}

impl Case<'_> {
    /// What to call the prints of some carriers.
    pub(super) fn prints(&self, carriers: &[usize]) -> Prints {
        let all = |is_of: fn(&Role) -> bool| carriers.iter().all(|k| is_of(&self.kit.carriers[*k].role));
        match carriers {
            [one] => Prints::Of(*one),
            _ if all(|role| *role == Role::Floor) => Prints::Kind("floor"),
            _ if all(|role| role.is_wheel()) => Prints::Kind("plates"),
            _ => Prints::All,
        }
    }
}

/// The size from which one carrier's prints are unlikely to be as careful work leaves them.
fn surely_beyond_careful(suspect: &Suspect) -> f64 {
    let u = suspect.test.covariance[(0, 0)].max(0.0).sqrt();
    LEAST_OF_ONE.max(CAREFUL + normal_quantile(1.0 - LEVEL / 2.0) * u)
}
