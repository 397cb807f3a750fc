//! Numbers as people read them: rounded by their uncertainty, with unit,
//! inches where the sheet is in inches, and never with a bare sign.

use super::side::{Side, side};
use crate::quantity::{Quantity, rounded, with_uncertainty};
use crate::record::{CheckRecord, OtherwiseRecord};

const MM_PER_INCH: f64 = 25.4;

/// A measured value ready to be shown.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Measured {
    /// The amount without sign: `12.3`.
    pub(super) amount: String,
    /// The uncertainty, to the same place.
    pub(super) uncertainty: Option<String>,
    /// `mm` or `deg`.
    pub(super) unit: String,
    /// What the sign means; `None` where it needs no words or the value is zero.
    pub(super) side: Option<Side>,
    /// The same in inches, with its uncertainty.
    pub(super) inches: Option<String>,
}

impl Measured {
    /// From a value and an uncertainty (standard or expanded: the caller's
    /// heading says which).
    pub(super) fn new(quantity: Option<Quantity>, unit: &str, value: f64, uncertainty: Option<f64>) -> Measured {
        let u = uncertainty.filter(|u| u.is_finite());
        let (shown, shown_u) = with_uncertainty(value, u.unwrap_or(0.0));
        let zero = shown.chars().all(|c| matches!(c, '0' | '.' | '-'));
        let amount = match quantity {
            Some(_) => shown.trim_start_matches('-').to_owned(),
            None => shown,
        };
        Measured {
            amount,
            uncertainty: u.map(|_| shown_u),
            unit: unit.to_owned(),
            side: quantity.filter(|_| !zero).and_then(|q| side(q, value > 0.0)),
            inches: None,
        }
    }

    /// A check's value with its expanded uncertainty.
    pub(super) fn of_check(check: &CheckRecord, quantity: Option<Quantity>) -> Option<Measured> {
        let value = check.value.filter(|v| v.is_finite())?;
        let measured = Measured::new(quantity, &check.unit, value, check.expanded_uncertainty);
        let inches = check.in_inches.then(|| inches_with_uncertainty(value, check.expanded_uncertainty));
        Some(Measured { inches, ..measured })
    }

    /// `12.3 ± 0.4 mm`.
    pub(super) fn amount_with_unit(&self) -> String {
        match &self.uncertainty {
            Some(u) => format!("{} ± {u} {}", self.amount, self.unit),
            None => format!("{} {}", self.amount, self.unit),
        }
    }

    /// `12.3 ± 0.4 mm left`.
    pub(super) fn short(&self) -> String {
        self.with(self.side.map(|s| s.short))
    }

    /// `12.3 ± 0.4 mm to the vehicle's left`.
    pub(super) fn long(&self) -> String {
        self.with(self.side.map(|s| s.long))
    }

    fn with(&self, words: Option<&str>) -> String {
        let inches = self.inches.as_ref().map_or_else(String::new, |inches| format!(" ({inches})"));
        let words = words.map_or_else(String::new, |words| format!(" {words}"));
        format!("{}{inches}{words}", self.amount_with_unit())
    }
}

fn inches_with_uncertainty(value_mm: f64, u_mm: Option<f64>) -> String {
    match u_mm {
        Some(u) => {
            let (value, u) = with_uncertainty(value_mm.abs() / MM_PER_INCH, u / MM_PER_INCH);
            format!("{value} ± {u} in")
        }
        None => format!("{} in", inches(value_mm)),
    }
}

/// Without trailing zeros, three places at most.
pub(super) fn plain(value: f64) -> String {
    let text = rounded(value, 3);
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
}

fn inches(value_mm: f64) -> String {
    plain(value_mm.abs() / MM_PER_INCH)
}

/// What a check that is not to be trusted would be, a line for each explanation.
pub(super) fn otherwise(check: &CheckRecord, quantity: Option<Quantity>) -> Vec<String> {
    let one = |o: &OtherwiseRecord| {
        let value = o.value.filter(|v| v.is_finite());
        let shown = value.map(|v| Measured::new(quantity, &check.unit, v, o.expanded_uncertainty).short());
        let shown = shown.unwrap_or_else(|| "no value".to_owned());
        let verdict = if o.value.is_some() { o.verdict.words() } else { "not determined" };
        format!("{}: {shown}, {verdict}", o.assuming)
    };
    check.otherwise.iter().map(one).collect()
}

/// What the sheet wants, in words: `1500 ± 10 mm`.
pub(super) fn wanted(check: &CheckRecord, quantity: Option<Quantity>) -> String {
    let mm = wanted_in(check, quantity, 1.0, &check.unit);
    if check.in_inches { format!("{mm} ({})", wanted_in(check, quantity, MM_PER_INCH, "in")) } else { mm }
}

fn wanted_in(check: &CheckRecord, quantity: Option<Quantity>, divisor: f64, unit: &str) -> String {
    let show = |v: f64| with_side(quantity, v / divisor, unit);
    match (check.lower, check.upper) {
        (Some(lower), Some(upper)) if symmetric(check.nominal, lower, upper) => {
            let half = plain((upper - lower) / 2.0 / divisor);
            match side_of(quantity, check.nominal) {
                Some(side) => {
                    format!("{} {unit} {}, ± {half} {unit}", plain(check.nominal.abs() / divisor), side.short)
                }
                None => format!("{} ± {half} {unit}", bare(quantity, check.nominal / divisor)),
            }
        }
        (Some(lower), Some(upper)) => {
            format!("{}, from {} to {}", show(check.nominal), show(lower), show(upper))
        }
        (Some(lower), None) => format!("{}, at least {}", show(check.nominal), show(lower)),
        (None, Some(upper)) => format!("{}, at most {}", show(check.nominal), show(upper)),
        (None, None) => format!("{}, no limit", show(check.nominal)),
    }
}

fn symmetric(nominal: f64, lower: f64, upper: f64) -> bool {
    ((upper - nominal) - (nominal - lower)).abs() <= 1e-6 * (upper - lower).abs()
}

fn side_of(quantity: Option<Quantity>, value: f64) -> Option<Side> {
    quantity.filter(|_| value != 0.0).and_then(|q| side(q, value > 0.0))
}

fn bare(quantity: Option<Quantity>, value: f64) -> String {
    plain(if quantity.is_some() { value.abs() } else { value })
}

/// `5 mm left`, `1500 mm`, `0 deg`.
pub(super) fn with_side(quantity: Option<Quantity>, value: f64, unit: &str) -> String {
    let amount = bare(quantity, value);
    match side_of(quantity, value) {
        Some(side) => format!("{amount} {unit} {}", side.short),
        None => format!("{amount} {unit}"),
    }
}

/// A probability as a percentage, rounded down so that it never claims more
/// than was found.
pub(super) fn percent(probability: f64) -> String {
    let p = probability * 100.0;
    if !p.is_finite() {
        "unknown".into()
    } else if p >= 99.99 {
        "> 99.99 %".into()
    } else if p < 0.01 {
        "< 0.01 %".into()
    } else if p >= 99.0 {
        format!("{:.2} %", (p * 100.0).floor() / 100.0)
    } else {
        format!("{:.1} %", (p * 10.0).floor() / 10.0)
    }
}

/// `2026-11-25 10:30 +01:00` of an RFC 3339 time; anything else as it is.
pub(super) fn moment(rfc3339: &str) -> String {
    use time::format_description::well_known::Rfc3339;
    let shape = time::macros::format_description!(
        "[year]-[month]-[day] [hour]:[minute] [offset_hour sign:mandatory]:[offset_minute]"
    );
    time::OffsetDateTime::parse(rfc3339, &Rfc3339)
        .ok()
        .and_then(|moment| moment.format(&shape).ok())
        .unwrap_or_else(|| rfc3339.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn words(quantity: Quantity, value: f64, u: f64) -> String {
        Measured::new(Some(quantity), quantity.unit().symbol(), value, Some(u)).long()
    }

    #[test]
    fn signs_become_words() {
        assert_eq!(words(Quantity::LateralOffset, -12.34, 1.2), "12.3 ± 1.2 mm to the vehicle's right");
        assert_eq!(words(Quantity::Distance, 1278.2, 1.2), "1278.2 ± 1.2 mm");
        assert_eq!(words(Quantity::Yaw, -0.0001, 0.04), "0.000 ± 0.040 deg");
    }

    #[test]
    fn probabilities_never_claim_more_than_found() {
        assert_eq!(percent(0.94999), "94.9 %");
        assert_eq!(percent(0.99995), "> 99.99 %");
        assert_eq!(percent(0.9985), "99.85 %");
        assert_eq!(percent(0.0), "< 0.01 %");
        assert_eq!(percent(f64::NAN), "unknown");
    }

    #[test]
    fn moments_lose_their_t() {
        assert_eq!(moment("2026-11-25T10:30:00+01:00"), "2026-11-25 10:30 +01:00");
        assert_eq!(moment("2026-11-25T10:30:00Z"), "2026-11-25 10:30 +00:00");
        assert_eq!(moment("yesterday"), "yesterday");
    }

    #[test]
    fn plain_numbers_lose_their_tail() {
        assert_eq!(plain(1500.0), "1500");
        assert_eq!(plain(0.25), "0.25");
        assert_eq!(plain(-0.0), "0");
    }
}
