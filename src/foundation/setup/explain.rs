//! A set-up sheet in words, check by check.

use crate::marker::Role;
use crate::quantity::{Quantity, Unit, rounded};

use super::check_file::MM_PER_INCH;
use super::sheet::{Check, Evidence, From, Setup};

impl Setup {
    /// What the sheet asks for, a sentence for each check, in its order; then
    /// what it leaves out on purpose.
    pub fn in_words(&self) -> Vec<String> {
        let mut words: Vec<String> = self.checks.iter().map(|c| self.check_in_words(c)).collect();
        words.extend(
            self.waived.iter().map(|w| format!("Not checked: {}, because {}", w.quantity.trade_name(), w.because)),
        );
        words
    }

    fn check_in_words(&self, check: &Check) -> String {
        let mut sentence = String::new();
        match (&check.step, self.steps.len()) {
            (Some(step), _) => sentence.push_str(&format!("In step {step}: ")),
            (None, 2..) if check.quantity.is_of_target() => sentence.push_str("In every step: "),
            _ => {}
        }
        let who = check.target.as_deref().unwrap_or("the target");
        let line = check.reference_line.unwrap_or(self.reference_line).trade_name();
        sentence.push_str(&what(check, who, line));
        sentence.push_str(&format!(" {}", wanted(check)));
        if check.evidence == Evidence::Reading || check.quantity.is_reading_only() {
            sentence.push_str("; a reading decides, not the photos");
        } else if Role::of_arch_height(check.quantity).is_some() {
            sentence.push_str("; the photos decide where the kit has a mark on that arch, else a reading");
        }
        if let Some(basis) = &check.tolerance_basis {
            sentence.push_str(&format!(" (tolerance: {basis})"));
        }
        sentence + "."
    }
}

fn from_words(from: Option<&From>) -> String {
    match from {
        None | Some(From::Nose) => "the nose".into(),
        Some(From::FrontAxle) => "the front axle".into(),
        Some(From::RearAxle) => "the rear axle".into(),
        Some(From::Datum(name)) => format!("the point \"{name}\""),
    }
}

fn what(check: &Check, who: &str, line: &str) -> String {
    use Quantity as Q;
    let from = from_words(check.from.as_ref());
    match check.quantity {
        Q::Distance => format!("The middle of {who} stands before {from}, measured along {line}, by"),
        Q::Range => format!("The middle of {who} is from {from}, in a straight horizontal line,"),
        Q::LateralOffset => format!("The middle of {who} lies beside {line} (left is positive) by"),
        Q::LateralFromNose => format!("The middle of {who} lies beside {from} (left is positive) by"),
        Q::Height => format!("The middle of {who} is above the floor by"),
        Q::HeightFromNose => format!("The middle of {who} is above {from} (below is negative) by"),
        Q::Yaw => {
            format!("{} is turned against {line} (to the vehicle's left is positive; 0 is square) by", capital(who))
        }
        Q::Pitch => format!("{} is tilted (top away from the vehicle is positive; 0 is plumb) by", capital(who)),
        Q::Roll => format!("{} is off level (vehicle's right side down is positive) by", capital(who)),
        Q::SideRangeDifference => "The side ranges to the rear wheels differ, left minus right, by".into(),
        other => format!("The {} is", other.trade_name()),
    }
}

fn capital(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |c| c.to_uppercase().chain(letters).collect())
}

/// The value with its limits, in the sheet's unit first.
fn wanted(check: &Check) -> String {
    let plain = |v: f64| match check.quantity.unit() {
        Unit::Millimetre if check.in_inches => format!("{} in ({} mm)", rounded(v / MM_PER_INCH, 3), rounded(v, 1)),
        Unit::Millimetre => format!("{} mm", trimmed(v)),
        Unit::Degree => format!("{} deg", trimmed(v)),
    };
    let limits = match (check.lower, check.upper) {
        (Some(l), Some(u)) => format!("from {} to {}", plain(l), plain(u)),
        (Some(l), None) => format!("at least {}", plain(l)),
        (None, Some(u)) => format!("at most {}", plain(u)),
        (None, None) => "without a limit".into(),
    };
    format!("{}: {limits}", plain(check.nominal))
}

fn trimmed(value: f64) -> String {
    let text = rounded(value, 2);
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}
