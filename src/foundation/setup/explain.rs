//! A set-up sheet in words, check by check.

use crate::marker::Role;
use crate::quantity::{Quantity, Unit, rounded};
use crate::words::{Figure, Phrase, phrase};

use super::check_file::MM_PER_INCH;
use super::sheet::{Check, Evidence, From, Setup};

impl Setup {
    /// What the sheet asks for, a sentence for each check, in its order; then
    /// what it leaves out on purpose, and what it asks of the photos' files.
    pub fn in_words(&self) -> Vec<Phrase> {
        let waived = self
            .waived
            .iter()
            .map(|w| phrase!("doors-asks-not", quantity = w.quantity.phrase(), because = w.because.as_str()));
        let credentials = self.credentials_required.then(|| phrase!("doors-asks-credentials"));
        self.checks.iter().map(|c| self.check_in_words(c)).chain(waived).chain(credentials).collect()
    }

    fn check_in_words(&self, check: &Check) -> Phrase {
        let (what, wanted) = (self.what(check), wanted(check));
        let decides = if check.evidence == Evidence::Reading || check.quantity.is_reading_only() {
            "reading"
        } else if Role::of_arch_height(check.quantity).is_some() {
            "either"
        } else {
            "photos"
        };
        let asked = match &check.tolerance_basis {
            None => phrase!("doors-asks", what = what, wanted = wanted, decides = decides),
            Some(basis) => phrase!("doors-asks-by", what = what, wanted = wanted, decides = decides, basis = basis),
        };
        match (&check.step, self.steps.len()) {
            (Some(step), _) => phrase!("doors-asks-in-step", step = step, asked = asked),
            (None, 2..) if check.quantity.is_of_target() => phrase!("doors-asks-in-every-step", asked = asked),
            _ => asked,
        }
    }

    /// What is checked, from where and along which line.
    fn what(&self, check: &Check) -> Phrase {
        use Quantity as Q;
        let which = if check.target.is_some() { "named" } else { "one" };
        let target = check.target.as_deref().unwrap_or_default();
        let line = check.reference_line.unwrap_or(self.reference_line).name();
        let (from, point) = match &check.from {
            None | Some(From::Nose) => ("nose", ""),
            Some(From::FrontAxle) => ("front_axle", ""),
            Some(From::RearAxle) => ("rear_axle", ""),
            Some(From::Datum(name)) => ("datum", name.as_str()),
        };
        match check.quantity {
            Q::Distance => {
                phrase!("doors-asks-distance", which = which, target = target, from = from, point = point, line = line)
            }
            Q::Range => phrase!("doors-asks-range", which = which, target = target, from = from, point = point),
            Q::LateralOffset => phrase!("doors-asks-lateral", which = which, target = target, line = line),
            Q::LateralFromNose => {
                phrase!("doors-asks-lateral-from", which = which, target = target, from = from, point = point)
            }
            Q::Height => phrase!("doors-asks-height", which = which, target = target),
            Q::HeightFromNose => {
                phrase!("doors-asks-height-from", which = which, target = target, from = from, point = point)
            }
            Q::Yaw => phrase!("doors-asks-yaw", which = which, target = target, line = line),
            Q::Pitch => phrase!("doors-asks-pitch", which = which, target = target),
            Q::Roll => phrase!("doors-asks-roll", which = which, target = target),
            Q::SideRangeDifference => phrase!("doors-asks-sides"),
            other => phrase!("doors-asks-other", quantity = other.phrase()),
        }
    }
}

/// The value with its limits, in the sheet's unit first.
fn wanted(check: &Check) -> Phrase {
    let plain = |v: f64| match check.quantity.unit() {
        Unit::Millimetre if check.in_inches => {
            phrase!("doors-value-inches", inches = Figure::fixed(v / MM_PER_INCH, 3), value = Figure::fixed(v, 1))
        }
        Unit::Millimetre => phrase!("doors-value-mm", value = trimmed(v)),
        Unit::Degree => phrase!("doors-value-degrees", value = trimmed(v)),
    };
    let nominal = plain(check.nominal);
    match (check.lower.map(plain), check.upper.map(plain)) {
        (Some(low), Some(high)) => phrase!("doors-wanted-both", nominal = nominal, low = low, high = high),
        (Some(low), None) => phrase!("doors-wanted-least", nominal = nominal, low = low),
        (None, Some(high)) => phrase!("doors-wanted-most", nominal = nominal, high = high),
        (None, None) => phrase!("doors-wanted-open", nominal = nominal),
    }
}

/// At most two decimals, without noughts at the end.
fn trimmed(value: f64) -> Figure {
    let text = rounded(value, 2);
    let text = text.trim_end_matches('0').trim_end_matches('.');
    Figure::of_digits(text).unwrap_or(Figure::plain(value))
}
