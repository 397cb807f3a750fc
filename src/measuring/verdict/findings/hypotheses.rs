//! The mistakes that a figure which is far off is tried against.
//!
//! Which mistakes are made and their sizes: common practice, no source.

use super::Case;
use crate::folder::Reading;
use crate::marker::Role;
use crate::measure::Ask;
use crate::quantity::{Estimate, Quantity, Unit};
use crate::setup::{Check, From, ReferenceLine};
use crate::verdict::words::figure;
use crate::words::{Phrase, phrase};

/// A mistake and what it leaves unexplained.
#[derive(Debug, Clone)]
pub(super) struct Hypothesis {
    /// What was done.
    pub(super) words: Phrase,
    /// What is left of the deviation, mm or degrees.
    pub(super) rest: f64,
    /// How far the mistake's own size is known, mm or degrees.
    pub(super) slack: f64,
}

/// Edges of a panel are known only from the markers that sit near them, mm.
const EDGE_MM: f64 = 15.0;
const MM_PER_INCH: f64 = 25.4;
const MM_PER_CM: f64 = 10.0;

/// What must be measured besides the checks themselves so that a check which
/// is outside can be tried: the other datums and lines.
pub fn asks(setup: &crate::setup::Setup, check: &Check, target: usize, line: ReferenceLine) -> Vec<Ask> {
    use Quantity as Q;
    let ask = |quantity, from, line| Ask { quantity, from, target, line };
    let mut asks = Vec::new();
    if matches!(check.quantity, Q::Distance | Q::Range) {
        let datums = setup.datums.iter().map(|d| From::Datum(d.name.clone()));
        let all = [From::Nose, From::FrontAxle, From::RearAxle].into_iter().chain(datums);
        asks.extend(all.map(|from| ask(check.quantity, Some(from), line)));
    }
    if matches!(check.quantity, Q::Yaw | Q::LateralOffset) {
        asks.extend(ReferenceLine::ALL.map(|l| ask(check.quantity, None, l)));
        asks.push(ask(Q::ThrustAngle, None, line));
    }
    if matches!(check.quantity, Q::Height | Q::HeightFromNose) {
        asks.extend([Q::Height, Q::HeightFromNose].map(|q| ask(q, None, line)));
    }
    if matches!(check.quantity, Q::LateralOffset | Q::LateralFromNose) {
        asks.extend([Q::LateralOffset, Q::LateralFromNose].map(|q| ask(q, None, line)));
    }
    asks
}

/// All mistakes that could have led to a check's value.
pub(super) fn of_check(case: &Case, check: &Check, line: ReferenceLine, value: &Estimate) -> Vec<Hypothesis> {
    let (value, nominal) = (value.value, check.nominal);
    let mut all = other_points(case, check, nominal);
    all.extend(other_lines(case, check, line, value, nominal));
    all.extend(signs_and_steps(case, check, value, nominal));
    all.extend(figures(value, nominal, check.quantity.unit()));
    all.extend(parts_of_the_stand(case, check, value, nominal));
    all
}

/// All mistakes that could have led to a reading.
pub(super) fn of_reading(case: &Case, reading: &Reading, photos: f64) -> Vec<Hypothesis> {
    let mut all = figures(reading.value, photos, reading.quantity.unit());
    if reading.quantity.unit() == Unit::Millimetre && photos.abs() > 1.0 {
        all.push(exact(phrase!("findings-mistake-cm-as-mm"), reading.value - photos / MM_PER_CM));
    }
    if reading.quantity == Quantity::Distance {
        for (ask, other) in case.elsewhere.iter().filter(|(a, _)| a.quantity == Quantity::Distance) {
            if ask.from != reading.from {
                let words = phrase!("findings-mistake-read-from", point = from_words(ask.from.as_ref()));
                all.push(exact(words, reading.value - other.value));
            }
        }
    }
    if reading.quantity.unit() == Unit::Degree || reading.quantity == Quantity::LateralOffset {
        all.push(exact(phrase!("findings-mistake-sign"), reading.value + photos));
    }
    all
}

fn exact(words: Phrase, rest: f64) -> Hypothesis {
    Hypothesis { words, rest, slack: 0.0 }
}

fn from_words(from: Option<&From>) -> Phrase {
    match from {
        None | Some(From::Nose) => phrase!("findings-point-nose"),
        Some(From::FrontAxle) => phrase!("findings-point-front-axle"),
        Some(From::RearAxle) => phrase!("findings-point-rear-axle"),
        Some(From::Datum(name)) => phrase!("findings-point-datum", datum = name),
    }
}

fn other_points(case: &Case, check: &Check, nominal: f64) -> Vec<Hypothesis> {
    use Quantity as Q;
    let others = case.elsewhere.iter().filter_map(|(ask, e)| {
        let words = match (check.quantity, ask.quantity) {
            (Q::Distance, Q::Distance) | (Q::Range, Q::Range) if ask.from != check.from => {
                phrase!("findings-mistake-measured-from", point = from_words(ask.from.as_ref()))
            }
            (Q::Height, Q::HeightFromNose) => phrase!("findings-mistake-from-nose-height"),
            (Q::HeightFromNose, Q::Height) => phrase!("findings-mistake-from-floor"),
            (Q::LateralOffset, Q::LateralFromNose) => {
                phrase!("findings-mistake-on-nose")
            }
            (Q::LateralFromNose, Q::LateralOffset) => {
                phrase!("findings-mistake-on-line")
            }
            _ => return None,
        };
        Some(exact(words, e.value - nominal))
    });
    others.collect()
}

fn other_lines(case: &Case, check: &Check, line: ReferenceLine, value: f64, nominal: f64) -> Vec<Hypothesis> {
    let against = |wanted: ReferenceLine| {
        case.elsewhere.iter().find(|(a, _)| a.quantity == check.quantity && a.line == wanted).map(|(_, e)| e.value)
    };
    let mut all = Vec::new();
    if !matches!(check.quantity, Quantity::Yaw | Quantity::LateralOffset) {
        return all;
    }
    for other in ReferenceLine::ALL.into_iter().filter(|l| *l != line) {
        if let Some(v) = against(other) {
            let words = phrase!("findings-mistake-other-line", other = other.phrase(), line = line.phrase());
            all.push(exact(words, v - nominal));
        }
    }
    // The wrong sign of the thrust angle mirrors the line at the centreline.
    if let (ReferenceLine::ThrustLine, Some(centre)) = (line, against(ReferenceLine::Centreline)) {
        let words = phrase!("findings-mistake-thrust-sign");
        all.push(exact(words, 2.0 * centre - value - nominal));
    }
    all
}

fn signs_and_steps(case: &Case, check: &Check, value: f64, nominal: f64) -> Vec<Hypothesis> {
    use Quantity as Q;
    let mut all = Vec::new();
    let sideways = matches!(check.quantity, Q::LateralOffset | Q::LateralFromNose);
    let angle = matches!(check.quantity, Q::Yaw | Q::Pitch | Q::Roll);
    if nominal.abs() > 0.0 && sideways {
        all.push(exact(phrase!("findings-mistake-other-side"), value + nominal));
        all.push(exact(phrase!("findings-mistake-offset-left-out"), value));
    }
    if nominal.abs() > 0.0 && angle {
        all.push(exact(phrase!("findings-mistake-sign"), value + nominal));
        all.push(exact(phrase!("findings-mistake-left-at-zero"), value));
        if check.quantity == Q::Yaw && nominal.abs() > 5.0 {
            let words = phrase!("findings-mistake-other-angle");
            all.push(exact(words, value - nominal.signum() * (90.0 - nominal.abs())));
        }
    }
    let other_steps = case.setup.checks.iter().filter(|c| c.quantity == check.quantity && c.step != check.step);
    for other in other_steps {
        if let Some(step) = &other.step {
            all.push(exact(phrase!("findings-mistake-other-step", step = step), value - other.nominal));
        }
    }
    all
}

/// What happens to a figure on its way from paper to tape.
fn figures(value: f64, nominal: f64, unit: Unit) -> Vec<Hypothesis> {
    let mut all = Vec::new();
    if unit == Unit::Millimetre && nominal.abs() > 1.0 {
        all.push(exact(phrase!("findings-mistake-mm-as-inches"), value - nominal * MM_PER_INCH));
        all.push(exact(phrase!("findings-mistake-inches-as-mm"), value - nominal / MM_PER_INCH));
    }
    for swapped in exchanged_digits(nominal) {
        let words = phrase!("findings-mistake-digits", swapped = figure(swapped, 0), nominal = figure(nominal, 0));
        all.push(exact(words, value - swapped));
    }
    all
}

/// A whole number with two neighbouring digits exchanged, every way.
fn exchanged_digits(nominal: f64) -> Vec<f64> {
    let digits: Vec<u8> = format!("{:.0}", nominal.abs()).into_bytes();
    let mut all: Vec<f64> = Vec::new();
    for i in 0..digits.len().saturating_sub(1) {
        let mut other = digits.clone();
        other.swap(i, i + 1);
        let value: Option<f64> = String::from_utf8(other).ok().and_then(|t| t.parse().ok());
        if let Some(value) = value.filter(|v: &f64| (v - nominal.abs()).abs() > 0.5) {
            all.push(value * nominal.signum());
        }
    }
    all
}

/// Measured to another part of the stand than its aim point.
fn parts_of_the_stand(case: &Case, check: &Check, value: f64, nominal: f64) -> Vec<Hypothesis> {
    use Quantity as Q;
    let Some(target) = case.target(check.target.as_deref()) else { return Vec::new() };
    let carrier = &case.kit.carriers[target];
    let mut all = Vec::new();
    let mut part = |words: Phrase, offset: f64, slack: f64| {
        all.push(Hypothesis { words, rest: value + offset - nominal, slack });
    };
    let axis = match check.quantity {
        Q::Distance | Q::Range => 0,
        Q::LateralOffset | Q::LateralFromNose => 1,
        Q::Height | Q::HeightFromNose => 2,
        _ => return all,
    };
    for datum in case.setup.datums.iter().filter(|d| d.carrier == carrier.name) {
        part(phrase!("findings-mistake-to-part", point = &datum.name), datum.offset_mm[axis], 0.0);
    }
    if axis == 0 {
        let mut planes: Vec<f64> = carrier.markers.iter().map(|m| m.centre_mm.x).filter(|x| x.abs() > 5.0).collect();
        planes.sort_by(f64::total_cmp);
        planes.dedup_by(|a, b| (*a - *b).abs() < 5.0);
        for x in planes {
            let words = phrase!(
                "findings-mistake-plane",
                where = if x > 0.0 { "behind" } else { "front" },
                mm = figure(x.abs(), 0)
            );
            part(words, x, 0.0);
        }
        return all;
    }
    let reach = carrier.markers.iter().flat_map(crate::marker::Marker::corners_mm).map(|p| p[axis]);
    let (least, most) = reach.fold((0.0, 0.0), |(a, b): (f64, f64), x| (a.min(x), b.max(x)));
    for (edge, side) in
        [(most, if axis == 1 { "left" } else { "upper" }), (least, if axis == 1 { "right" } else { "lower" })]
    {
        part(phrase!("findings-mistake-edge", edge = side), edge, EDGE_MM);
    }
    all
}

impl Case<'_> {
    /// Index of a target by name, else the first.
    pub(super) fn target(&self, name: Option<&str>) -> Option<usize> {
        let named = name.and_then(|n| self.kit.carriers.iter().position(|c| c.name == n));
        named.or_else(|| self.kit.with_role(Role::Target).next())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn digits_are_exchanged_in_every_way() {
        assert_eq!(exchanged_digits(1350.0), vec![3150.0, 1530.0, 1305.0]);
        assert_eq!(exchanged_digits(-12.0), vec![-21.0]);
        assert!(exchanged_digits(1100.0).iter().all(|v| (*v - 1010.0).abs() < 1e-9));
    }

    #[test]
    fn a_metre_and_a_half_in_inches() {
        let all = figures(59.06, 1500.0, Unit::Millimetre);
        assert!(all.iter().any(|h| h.words.key == "findings-mistake-inches-as-mm" && h.rest.abs() < 0.01));
    }
}
