//! A number with as many decimals as are shown.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::Language;

/// A number with as many decimals as are shown.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Figure {
    /// The number.
    pub value: f64,
    /// Decimals that are shown.
    pub digits: u8,
}

impl Figure {
    /// So many decimals, whatever they are.
    pub fn fixed(value: f64, digits: u8) -> Self {
        Figure { value, digits }
    }

    /// As many decimals as it has, three at most.
    pub fn plain(value: f64) -> Self {
        let shown = |digits: u8| format!("{value:.*}", usize::from(digits)).parse::<f64>();
        let thousandths = format!("{value:.3}").parse::<f64>();
        let digits = (0..3).find(|digits| shown(*digits) == thousandths).unwrap_or(3);
        Figure { value, digits }
    }

    /// A text of digits with a decimal point, as rounding gives it: `12.50`.
    pub fn of_digits(text: &str) -> Option<Self> {
        let value = text.parse::<f64>().ok().filter(|v| v.is_finite())?;
        let digits = text.split_once('.').map_or(0, |(_, decimals)| decimals.len());
        Some(Figure { value, digits: u8::try_from(digits).ok()? })
    }

    /// With the language's decimal sign; never `-0`.
    pub fn say(self, language: Language) -> String {
        let text = format!("{:.*}", usize::from(self.digits), self.value);
        let zero = text.chars().all(|c| matches!(c, '0' | '.' | '-'));
        let text = if zero { text.trim_start_matches('-') } else { &text };
        if language.has_decimal_comma() { text.replace('.', ",") } else { text.to_owned() }
    }
}
