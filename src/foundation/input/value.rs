//! A value of an input file and what it may be read as.

use time::{Date, OffsetDateTime, UtcOffset};
use toml::Spanned;
use toml::de::DeValue;
use toml::value::{Datetime, Offset};

use super::document::Document;
use super::error::{Error, Place, is_unseen, turns_writing};
use super::nearest::did_you_mean;
use crate::words::{Figure, Phrase, phrase};

/// A value that knows its path and place.
#[derive(Debug, Clone)]
pub struct Value<'d> {
    pub(super) document: &'d Document<'d>,
    pub(super) path: String,
    pub(super) value: &'d Spanned<DeValue<'d>>,
}

impl<'d> Value<'d> {
    pub(super) fn new(document: &'d Document<'d>, path: String, value: &'d Spanned<DeValue<'d>>) -> Self {
        Value { document, path, value }
    }

    /// Its full path, such as `carrier[2].name`.
    pub fn path(&self) -> &str {
        &self.path
    }

    /// Where the value stands.
    pub fn place(&self) -> Place {
        self.document.place_of_offset(self.value.span().start)
    }

    /// An error at this value.
    pub fn error(&self, problem: Phrase, remedy: Phrase) -> Error {
        Error::new(self.document.file(), problem, remedy).at(Some(self.place())).key_path(&self.path)
    }

    /// The value's own text.
    fn found(&self) -> String {
        self.document.excerpt(self.value.span())
    }

    /// `wanted`: a word of the message `doors-kind`.
    pub(super) fn type_error(&self, wanted: &str, remedy: Phrase) -> Error {
        self.error(phrase!("doors-kind", wanted = wanted, found = self.found()), remedy)
    }

    /// Any text without control characters but line breaks, and without those that turn the direction of writing.
    ///
    /// # Errors
    /// Not a text, empty, too long or with such characters.
    pub fn text(&self) -> Result<String, Error> {
        const LONGEST: usize = 10_000;
        let DeValue::String(text) = self.value.get_ref() else {
            return Err(self.type_error("text", phrase!("doors-kind-text-remedy")));
        };
        if text.trim().is_empty() {
            return Err(self.error(phrase!("doors-empty"), phrase!("doors-empty-remedy")));
        }
        if text.len() > LONGEST {
            return Err(self.error(phrase!("doors-long", most = LONGEST), phrase!("doors-long-remedy")));
        }
        if text.chars().any(|c| c.is_control() && c != '\n' && c != '\t' && c != '\r') {
            return Err(self.error(phrase!("doors-control"), phrase!("doors-control-remedy")));
        }
        if text.chars().any(turns_writing) {
            return Err(self.error(phrase!("doors-turning"), phrase!("doors-turning-remedy")));
        }
        if text.chars().any(is_unseen) {
            return Err(self.error(phrase!("doors-unseen"), phrase!("doors-turning-remedy")));
        }
        Ok(text.to_string())
    }

    /// A text that serves as a name: one line, at most 120 characters, no
    /// blanks around it.
    ///
    /// # Errors
    /// As [`Value::text`], or no such name.
    pub fn name(&self) -> Result<String, Error> {
        let text = self.text()?;
        if text.chars().count() > 120 || text.chars().any(char::is_control) || text.trim() != text {
            return Err(self.error(phrase!("doors-no-name"), phrase!("doors-no-name-remedy")));
        }
        Ok(text)
    }

    /// One of several words; `what` they are is a word of the message `doors-no-such`.
    ///
    /// # Errors
    /// Names the nearest word.
    pub fn choice<T: Clone>(&self, what: &str, choices: &[(&str, T)]) -> Result<T, Error> {
        let text = self.text()?;
        choices.iter().find(|(name, _)| *name == text).map(|(_, value)| value.clone()).ok_or_else(|| {
            let shown: String = text.chars().take(60).collect();
            self.error(
                phrase!("doors-no-such", word = shown, what = what),
                did_you_mean(&text, choices.iter().map(|(n, _)| *n)),
            )
        })
    }

    /// `true` or `false`.
    ///
    /// # Errors
    /// Anything else.
    pub fn flag(&self) -> Result<bool, Error> {
        self.value.get_ref().as_bool().ok_or_else(|| self.type_error("flag", phrase!("doors-kind-flag-remedy")))
    }

    /// The flag or text of a value that may be either, as JSON.
    ///
    /// # Errors
    /// Anything else.
    pub fn flag_or_text(&self) -> Result<serde_json::Value, Error> {
        match self.value.get_ref() {
            DeValue::Boolean(flag) => Ok((*flag).into()),
            DeValue::String(_) => self.text().map(Into::into),
            _ => Err(self.type_error("flag-or-text", phrase!("doors-kind-flag-or-text-remedy"))),
        }
    }

    /// A finite number.
    ///
    /// # Errors
    /// Not a number, or infinite.
    pub fn number(&self) -> Result<f64, Error> {
        let number = match self.value.get_ref() {
            DeValue::Integer(i) => i64::from_str_radix(i.as_str(), i.radix()).ok().map(|i| i as f64),
            DeValue::Float(f) => f.as_str().parse::<f64>().ok(),
            _ => return Err(self.type_error("number", phrase!("doors-kind-number-remedy"))),
        };
        match number {
            Some(x) if x.is_finite() => Ok(x),
            _ => Err(self.type_error("finite", phrase!("doors-kind-finite-remedy"))),
        }
    }

    /// A number from `low` to `high`, both included; `unit` such as `mm`.
    ///
    /// # Errors
    /// Not a number, or outside: names both limits.
    pub fn within(&self, low: f64, high: f64, unit: &str) -> Result<f64, Error> {
        let x = self.number()?;
        if (low..=high).contains(&x) {
            return Ok(x);
        }
        let (low, high) = (Figure::plain(low), Figure::plain(high));
        Err(self.error(
            phrase!("doors-between", low = low, high = high, unit = unit_phrase(unit), found = self.found()),
            phrase!("doors-between-remedy"),
        ))
    }

    /// A number above zero, up to `high`.
    ///
    /// # Errors
    /// Not a number, zero, negative or absurdly large.
    pub fn positive(&self, high: f64, unit: &str) -> Result<f64, Error> {
        let x = self.number()?;
        if x > 0.0 && x <= high {
            return Ok(x);
        }
        let (unit, found, high) = (unit_phrase(unit), self.found(), Figure::plain(high));
        let (problem, remedy) = if x <= 0.0 {
            (phrase!("doors-above-zero", found = found, unit = unit), phrase!("doors-above-zero-remedy"))
        } else {
            (phrase!("doors-at-most", high = high, unit = unit, found = found), phrase!("doors-at-most-remedy"))
        };
        Err(self.error(problem, remedy))
    }

    /// A standard uncertainty: zero or more, up to `high`.
    ///
    /// # Errors
    /// Not a number, negative or absurdly large.
    pub fn uncertainty(&self, high: f64, unit: &str) -> Result<f64, Error> {
        let x = self.number()?;
        if (0.0..=high).contains(&x) {
            return Ok(x);
        }
        let high = Figure::plain(high);
        Err(self.error(
            phrase!("doors-uncertainty", high = high, unit = unit_phrase(unit), found = self.found()),
            phrase!("doors-uncertainty-remedy"),
        ))
    }

    /// A whole number from `low` to `high`.
    ///
    /// # Errors
    /// Not a whole number, or outside.
    pub fn whole(&self, low: u32, high: u32) -> Result<u32, Error> {
        let DeValue::Integer(i) = self.value.get_ref() else {
            return Err(self.type_error("whole", phrase!("doors-kind-whole-remedy")));
        };
        i64::from_str_radix(i.as_str(), i.radix())
            .ok()
            .and_then(|i| u32::try_from(i).ok())
            .filter(|i| (low..=high).contains(i))
            .ok_or_else(|| {
                self.error(
                    phrase!("doors-whole-between", low = low, high = high, found = self.found()),
                    phrase!("doors-whole-between-remedy"),
                )
            })
    }

    /// The items of a list.
    ///
    /// # Errors
    /// Not a list.
    pub fn items(&self) -> Result<Vec<Value<'d>>, Error> {
        let Some(array) = self.value.get_ref().as_array() else {
            return Err(self.type_error("list", phrase!("doors-kind-list-remedy")));
        };
        Ok(array
            .iter()
            .enumerate()
            .map(|(i, value)| Value::new(self.document, format!("{}[{i}]", self.path), value))
            .collect())
    }

    /// A list of exactly `N` values, each as `read` makes it.
    ///
    /// # Errors
    /// Not a list, another length, or what `read` finds wrong.
    pub fn array<const N: usize, T>(&self, read: impl FnMut(&Value<'d>) -> Result<T, Error>) -> Result<[T; N], Error> {
        let items = self.items()?;
        let found = items.len();
        let values = items.iter().map(read).collect::<Result<Vec<T>, Error>>()?;
        values.try_into().map_err(|_| {
            self.error(phrase!("doors-count", wanted = N, found = found), phrase!("doors-count-remedy", wanted = N))
        })
    }

    /// A point in time with its offset from UTC.
    ///
    /// # Errors
    /// Not a time, without offset, or impossible.
    pub fn time(&self) -> Result<OffsetDateTime, Error> {
        let (date, time, offset) = match self.value.get_ref() {
            DeValue::Datetime(Datetime { date: Some(date), time: Some(time), offset: Some(offset) }) => {
                (date, time, offset)
            }
            DeValue::Datetime(_) => {
                return Err(self.type_error("time-with-offset", phrase!("doors-kind-time-remedy")));
            }
            _ => return Err(self.type_error("time", phrase!("doors-kind-time-remedy"))),
        };
        let minutes = match offset {
            Offset::Z => 0,
            Offset::Custom { minutes } => *minutes,
        };
        calendar_date(date)
            .and_then(|d| {
                let clock = time::Time::from_hms_nano(
                    time.hour,
                    time.minute,
                    time.second.unwrap_or(0),
                    time.nanosecond.unwrap_or(0),
                );
                let offset = UtcOffset::from_whole_seconds(i32::from(minutes) * 60);
                Some(d.with_time(clock.ok()?).assume_offset(offset.ok()?))
            })
            .ok_or_else(|| self.type_error("existing-time", phrase!("doors-kind-time-remedy")))
    }

    /// A calendar date.
    ///
    /// # Errors
    /// Not a date alone, or impossible.
    pub fn date(&self) -> Result<Date, Error> {
        match self.value.get_ref() {
            DeValue::Datetime(Datetime { date: Some(date), time: None, offset: None }) => calendar_date(date),
            _ => None,
        }
        .ok_or_else(|| self.type_error("date", phrase!("doors-kind-date-remedy")))
    }
}

fn calendar_date(date: &toml::value::Date) -> Option<Date> {
    let month = time::Month::try_from(date.month).ok()?;
    Date::from_calendar_date(i32::from(date.year), month, date.day).ok()
}

/// A unit after its number, with the blank between them; nothing for a bare number.
fn unit_phrase(unit: &str) -> Phrase {
    let unit = if unit.is_empty() { "none".to_owned() } else { unit.replace('/', "-per-").replace(' ', "-") };
    phrase!("doors-unit", unit = unit)
}
