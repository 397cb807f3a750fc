//! A message with its values, not yet in any language: data alone, what records keep.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::Figure;

/// A message's key and what is put into it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Phrase {
    /// The message's key.
    pub key: String,
    /// Its figures, names and phrases, by variable.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub with: BTreeMap<String, Value>,
}

impl Phrase {
    /// A message without values; `key` may name an attribute: `code.title`.
    pub fn new(key: impl Into<String>) -> Self {
        Phrase { key: key.into(), with: BTreeMap::new() }
    }

    /// With one more value.
    #[must_use]
    pub fn with(mut self, name: &str, value: impl Into<Value>) -> Self {
        self.with.insert(name.to_owned(), value.into());
        self
    }

    /// With its texts and those of the phrases in it changed: a folder's path left out of file names.
    #[must_use]
    pub fn with_texts(self, change: &dyn Fn(&str) -> String) -> Self {
        let with = self.with.into_iter().map(|(name, value)| (name, value.with_texts(change))).collect();
        Phrase { key: self.key, with }
    }
}

/// A value of a message's variable.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(untagged)]
pub enum Value {
    /// Several: "a, b and c". Read first: a list of one text would be taken for a phrase's fields.
    All(Vec<Value>),
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

#[cfg(test)]
mod tests {
    use super::*;

    /// What a record keeps is what is read from it: a list of one name is no phrase.
    #[test]
    fn values_are_read_as_they_were_kept() {
        let name = || Value::from("photos/b.jpg");
        let phrase = Phrase::new("key").with("photo", name());
        let values = [
            Value::All(vec![name()]),
            Value::All(vec![name(), name()]),
            Value::All(vec![Value::Count(2)]),
            Value::All(vec![phrase.clone().into(), name()]),
            phrase.into(),
            Value::moment("2026-02-03"),
            Value::digits("1.50"),
            name(),
        ];
        for value in values {
            let kept = serde_json::to_string(&value).unwrap();
            assert_eq!(serde_json::from_str::<Value>(&kept).unwrap(), value, "{kept}");
        }
    }
}
