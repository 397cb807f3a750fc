//! Numbers as people read them: rounded by their uncertainty, with unit,
//! inches where the sheet is in inches, and never with a bare sign.

use super::side::{Side, side};
use crate::quantity::{Quantity, with_uncertainty};
use crate::record::{CheckRecord, OtherwiseRecord, told};
use crate::words::{Figure, Language, Phrase, Value, phrase, say};

const MM_PER_INCH: f64 = 25.4;

/// A measured value ready to be shown.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Measured {
    /// The amount's digits without sign: `12.3`.
    digits: String,
    /// Those of the uncertainty, to the same place.
    u_digits: Option<String>,
    /// `mm` or `deg`.
    unit: String,
    /// What the sign means; `None` where it needs no words or the value is zero.
    pub(super) side: Option<Side>,
    /// The same in inches, with its uncertainty.
    pub(super) inches: Option<String>,
    /// The language of both.
    language: Language,
}

impl Measured {
    /// From a value and an uncertainty (standard or expanded: the caller's
    /// heading says which).
    pub(super) fn new(
        quantity: Option<Quantity>,
        unit: &str,
        value: f64,
        uncertainty: Option<f64>,
        language: Language,
    ) -> Measured {
        let u = uncertainty.filter(|u| u.is_finite());
        let (shown, shown_u) = with_uncertainty(value, u.unwrap_or(0.0));
        let zero = is_zero(&shown);
        let digits = match quantity {
            Some(_) => shown.trim_start_matches('-').to_owned(),
            None => shown,
        };
        Measured {
            digits,
            u_digits: u.map(|_| shown_u),
            unit: unit.to_owned(),
            side: quantity.filter(|_| !zero).and_then(|q| side(q, value > 0.0)),
            inches: None,
            language,
        }
    }

    /// A check's value with its expanded uncertainty.
    pub(super) fn of_check(check: &CheckRecord, quantity: Option<Quantity>, language: Language) -> Option<Measured> {
        let value = check.value.filter(|v| v.is_finite())?;
        let measured = Measured::new(quantity, &check.unit, value, check.expanded_uncertainty, language);
        let inches = check.in_inches.then(|| inches_with_uncertainty(value, check.expanded_uncertainty, language));
        Some(Measured { inches, ..measured })
    }

    /// Whether it rounds to nothing.
    pub(super) fn is_zero(&self) -> bool {
        is_zero(&self.digits)
    }

    /// `12.3`.
    pub(super) fn amount(&self) -> String {
        Value::digits(&self.digits).say(self.language)
    }

    /// `0.4`, the uncertainty.
    pub(super) fn uncertainty(&self) -> Option<String> {
        self.u_digits.as_ref().map(|u| Value::digits(u).say(self.language))
    }

    /// `0.4 mm`, the uncertainty.
    pub(super) fn uncertainty_with_unit(&self) -> Option<String> {
        self.u_digits.as_ref().map(|u| amount(Value::digits(u), &self.unit).say(self.language))
    }

    /// `12.3 mm`.
    pub(super) fn bare_with_unit(&self) -> String {
        amount(Value::digits(&self.digits), &self.unit).say(self.language)
    }

    /// `12.3 ± 0.4 mm`.
    pub(super) fn amount_with_unit(&self) -> String {
        match &self.u_digits {
            Some(u) => amount_with_u(Value::digits(&self.digits), Value::digits(u), &self.unit).say(self.language),
            None => self.bare_with_unit(),
        }
    }

    /// `12.3 ± 0.4 mm left`.
    pub(super) fn short(&self) -> String {
        self.with(self.side.map(|s| s.short(self.language)))
    }

    /// `12.3 ± 0.4 mm to the vehicle's left`.
    pub(super) fn long(&self) -> String {
        self.with(self.side.map(|s| s.long(self.language)))
    }

    fn with(&self, side: Option<String>) -> String {
        let amount = match &self.inches {
            Some(inches) => {
                say!(self.language, "report-with-inches", amount = self.amount_with_unit(), inches = inches)
            }
            None => self.amount_with_unit(),
        };
        match side {
            Some(side) => say!(self.language, "report-to-side", amount = amount, side = side),
            None => amount,
        }
    }
}

fn is_zero(digits: &str) -> bool {
    digits.chars().all(|c| matches!(c, '0' | '.' | '-'))
}

/// `12.3 mm`.
pub(super) fn amount(value: impl Into<Value>, unit: &str) -> Phrase {
    phrase!("report-amount", value = value, unit = unit)
}

/// `12.3 ± 0.4 mm`.
pub(super) fn amount_with_u(value: impl Into<Value>, u: impl Into<Value>, unit: &str) -> Phrase {
    phrase!("report-amount-with-u", value = value, u = u, unit = unit)
}

fn inches_with_uncertainty(value_mm: f64, u_mm: Option<f64>, language: Language) -> String {
    match u_mm {
        Some(u) => {
            let (value, u) = with_uncertainty(value_mm.abs() / MM_PER_INCH, u / MM_PER_INCH);
            amount_with_u(Value::digits(&value), Value::digits(&u), "in").say(language)
        }
        None => amount(Figure::plain(value_mm.abs() / MM_PER_INCH), "in").say(language),
    }
}

/// What a check that is not to be trusted would be, a line for each explanation.
pub(super) fn otherwise(check: &CheckRecord, quantity: Option<Quantity>, language: Language) -> Vec<String> {
    let one = |o: &OtherwiseRecord| {
        let value = o.value.filter(|v| v.is_finite());
        let shown = value.map(|v| Measured::new(quantity, &check.unit, v, o.expanded_uncertainty, language).short());
        let shown = shown.unwrap_or_else(|| say!(language, "report-no-value"));
        let verdict = if o.value.is_some() { o.verdict.phrase() } else { phrase!("report-not-determined") };
        let assuming = told(o.assuming_phrase.as_ref(), &o.assuming, language);
        say!(language, "report-otherwise", assuming = assuming, value = shown, verdict = verdict)
    };
    check.otherwise.iter().map(one).collect()
}

/// What the sheet wants, in words: `1500 ± 10 mm`.
pub(super) fn wanted(check: &CheckRecord, quantity: Option<Quantity>, language: Language) -> String {
    let mm = wanted_in(check, quantity, 1.0, &check.unit, language);
    if check.in_inches {
        let inches = wanted_in(check, quantity, MM_PER_INCH, "in", language);
        say!(language, "report-with-inches", amount = mm, inches = inches)
    } else {
        mm.say(language)
    }
}

/// The same with degrees spelled out.
pub(super) fn wanted_plainly(check: &CheckRecord, quantity: Option<Quantity>, language: Language) -> String {
    wanted_in(check, quantity, 1.0, plain_unit(&check.unit), language).say(language)
}

/// The unit in everybody's words.
pub(super) fn plain_unit(unit: &str) -> &str {
    if unit == "deg" { "degrees" } else { unit }
}

fn wanted_in(check: &CheckRecord, quantity: Option<Quantity>, divisor: f64, unit: &str, language: Language) -> Phrase {
    let show = |v: f64| with_side(quantity, v / divisor, unit, language);
    let nominal = show(check.nominal);
    match (check.lower, check.upper) {
        (Some(lower), Some(upper)) if symmetric(check.nominal, lower, upper) => {
            let half = Figure::plain((upper - lower) / 2.0 / divisor);
            match side_of(quantity, check.nominal) {
                Some(_) => phrase!("report-required-side", nominal = nominal, half = amount(half, unit)),
                None => amount_with_u(bare(quantity, check.nominal / divisor), half, unit),
            }
        }
        (Some(lower), Some(upper)) => {
            phrase!("report-required-range", nominal = nominal, lower = show(lower), upper = show(upper))
        }
        (Some(lower), None) => phrase!("report-required-least", nominal = nominal, lower = show(lower)),
        (None, Some(upper)) => phrase!("report-required-most", nominal = nominal, upper = show(upper)),
        (None, None) => phrase!("report-required-open", nominal = nominal),
    }
}

fn symmetric(nominal: f64, lower: f64, upper: f64) -> bool {
    ((upper - nominal) - (nominal - lower)).abs() <= 1e-6 * (upper - lower).abs()
}

fn side_of(quantity: Option<Quantity>, value: f64) -> Option<Side> {
    quantity.filter(|_| value != 0.0).and_then(|q| side(q, value > 0.0))
}

fn bare(quantity: Option<Quantity>, value: f64) -> Figure {
    Figure::plain(if quantity.is_some() { value.abs() } else { value })
}

/// `5 mm left`, `1500 mm`, `0 deg`.
fn with_side(quantity: Option<Quantity>, value: f64, unit: &str, language: Language) -> String {
    let amount = amount(bare(quantity, value), unit);
    match side_of(quantity, value) {
        Some(side) => say!(language, "report-to-side", amount = amount, side = side.short(language)),
        None => amount.say(language),
    }
}

/// A probability as a percentage, rounded down so that it never claims more
/// than was found.
pub(super) fn percent(probability: f64) -> Phrase {
    let p = probability * 100.0;
    let (bound, shown) = if !p.is_finite() {
        ("unknown", Figure::fixed(0.0, 0))
    } else if p >= 99.99 {
        ("above", Figure::fixed(99.99, 2))
    } else if p < 0.01 {
        ("below", Figure::fixed(0.01, 2))
    } else if p >= 99.0 {
        ("exact", Figure::fixed((p * 100.0).floor() / 100.0, 2))
    } else {
        ("exact", Figure::fixed((p * 10.0).floor() / 10.0, 1))
    };
    phrase!("report-probability", bound = bound, percent = shown)
}

/// `2026-11-25 10:30 +01:00` of an RFC 3339 time, `25.11.2026 10:30 +01:00` in German; anything else as it is.
pub(super) fn moment(rfc3339: &str, language: Language) -> String {
    Value::moment(rfc3339).say(language)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn words(quantity: Quantity, value: f64, u: f64, language: Language) -> String {
        Measured::new(Some(quantity), quantity.unit().symbol(), value, Some(u), language).long()
    }

    #[test]
    fn signs_become_words() {
        let english = |quantity, value, u| words(quantity, value, u, Language::English);
        assert_eq!(english(Quantity::LateralOffset, -12.34, 1.2), "12.3 ± 1.2 mm to the vehicle's right");
        assert_eq!(english(Quantity::Distance, 1278.2, 1.2), "1278.2 ± 1.2 mm");
        assert_eq!(english(Quantity::Yaw, -0.0001, 0.04), "0.000 ± 0.040 deg");
        let german = words(Quantity::LateralOffset, -12.34, 1.2, Language::German);
        assert_eq!(german, "12,3 ± 1,2 mm zur rechten Fahrzeugseite");
        assert_eq!(words(Quantity::Yaw, -0.0001, 0.04, Language::French), "0,000° ± 0,040°");
    }

    #[test]
    fn probabilities_never_claim_more_than_found() {
        let percent = |p| percent(p).say(Language::English);
        assert_eq!(percent(0.94999), "94.9 %");
        assert_eq!(percent(0.99995), "> 99.99 %");
        assert_eq!(percent(0.9985), "99.85 %");
        assert_eq!(percent(0.0), "< 0.01 %");
        assert_eq!(percent(f64::NAN), "unknown");
    }

    #[test]
    fn moments_lose_their_t() {
        let moment = |text| moment(text, Language::English);
        assert_eq!(moment("2026-11-25T10:30:00+01:00"), "2026-11-25 10:30 +01:00");
        assert_eq!(moment("2026-11-25T10:30:00Z"), "2026-11-25 10:30 +00:00");
        assert_eq!(moment("yesterday"), "yesterday");
    }
}
