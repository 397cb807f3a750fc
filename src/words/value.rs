//! What is put into a message.

use fluent_bundle::FluentValue;
use fluent_bundle::types::{FluentNumber, FluentNumberOptions};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::{Language, Phrase, dates, phrase};

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

/// A value of a message's variable.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(untagged)]
pub enum Value {
    /// A number of things, for plurals.
    Count(u64),
    /// A number to show.
    Figure(Figure),
    /// A phrase within a phrase.
    Phrase(Phrase),
    /// A time (RFC 3339) or a date (year-month-day).
    Moment {
        /// It.
        moment: String,
    },
    /// Several: "a, b and c".
    All(Vec<Value>),
    /// A name as it is, or a word to select by.
    Text(String),
}

impl Value {
    /// A time (RFC 3339) or a date (year-month-day); anything else is shown as it is.
    pub fn moment(text: impl Into<String>) -> Self {
        Value::Moment { moment: text.into() }
    }

    /// With its texts changed.
    pub(crate) fn with_texts(self, change: &dyn Fn(&str) -> String) -> Self {
        match self {
            Value::Text(text) => Value::Text(change(&text)),
            Value::Phrase(phrase) => Value::Phrase(phrase.with_texts(change)),
            Value::All(values) => Value::All(values.into_iter().map(|v| v.with_texts(change)).collect()),
            plain => plain,
        }
    }

    /// A text of digits with a decimal point, as rounding gives it, with the language's decimal sign; any other text as it is.
    pub fn digits(text: &str) -> Self {
        Figure::of_digits(text).map_or_else(|| text.into(), Value::from)
    }

    /// As the message library takes it.
    pub(crate) fn resolve(&self, language: Language) -> FluentValue<'static> {
        match self {
            Value::Count(n) => FluentValue::from(*n as f64),
            Value::Figure(figure) => number(*figure),
            other => FluentValue::from(other.say(language)),
        }
    }

    /// As text.
    pub fn say(&self, language: Language) -> String {
        match self {
            Value::Count(n) => n.to_string(),
            Value::Figure(figure) => figure.say(language),
            Value::Phrase(phrase) => phrase.say(language),
            Value::Moment { moment } => dates::say(moment, language),
            Value::All(values) => listed(values, language),
            Value::Text(text) => text.clone(),
        }
    }
}

fn number(figure: Figure) -> FluentValue<'static> {
    let digits = Some(usize::from(figure.digits));
    let options = FluentNumberOptions {
        minimum_fraction_digits: digits,
        maximum_fraction_digits: digits,
        ..FluentNumberOptions::default()
    };
    FluentValue::Number(FluentNumber::new(figure.value, options))
}

/// "a", "a and b", "a, b and c".
fn listed(values: &[Value], language: Language) -> String {
    let texts: Vec<String> = values.iter().map(|v| v.say(language)).collect();
    match texts.split_last() {
        Some((last, [])) => last.clone(),
        Some((last, others)) => phrase!("list-and", others = others.join(", "), last = last.as_str()).say(language),
        None => String::new(),
    }
}

impl From<&str> for Value {
    fn from(text: &str) -> Self {
        Value::Text(text.to_owned())
    }
}

impl From<String> for Value {
    fn from(text: String) -> Self {
        Value::Text(text)
    }
}

impl From<&String> for Value {
    fn from(text: &String) -> Self {
        Value::Text(text.clone())
    }
}

impl From<usize> for Value {
    fn from(n: usize) -> Self {
        Value::Count(n as u64)
    }
}

impl From<u32> for Value {
    fn from(n: u32) -> Self {
        Value::Count(u64::from(n))
    }
}

impl From<u64> for Value {
    fn from(n: u64) -> Self {
        Value::Count(n)
    }
}

impl From<Figure> for Value {
    fn from(figure: Figure) -> Self {
        Value::Figure(figure)
    }
}

impl From<Phrase> for Value {
    fn from(phrase: Phrase) -> Self {
        Value::Phrase(phrase)
    }
}

impl<T: Into<Value>> From<Vec<T>> for Value {
    fn from(values: Vec<T>) -> Self {
        Value::All(values.into_iter().map(Into::into).collect())
    }
}
