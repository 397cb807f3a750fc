//! A value of an input file and what it may be read as.

use time::{Date, OffsetDateTime, UtcOffset};
use toml::Spanned;
use toml::de::DeValue;
use toml::value::{Datetime, Offset};

use super::document::Document;
use super::error::{Error, Place};
use super::nearest::did_you_mean;
use super::table::Table;

/// A value that knows its path and place.
#[derive(Debug, Clone)]
pub struct Value<'d> {
    document: &'d Document<'d>,
    path: String,
    value: &'d Spanned<DeValue<'d>>,
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
    pub fn error(&self, problem: impl Into<String>, remedy: impl Into<String>) -> Error {
        Error::new(self.document.file(), problem, remedy).at(Some(self.place())).key_path(&self.path)
    }

    fn type_error(&self, wanted: &str, remedy: &str) -> Error {
        let found = self.document.excerpt(self.value.span());
        self.error(format!("must be {wanted}, not {found}"), remedy)
    }

    /// Any text without control characters but line breaks.
    ///
    /// # Errors
    /// Not a text, empty, too long or with control characters.
    pub fn text(&self) -> Result<String, Error> {
        const LONGEST: usize = 10_000;
        let DeValue::String(text) = self.value.get_ref() else {
            return Err(self.type_error("a text", "write it in quotation marks"));
        };
        if text.trim().is_empty() {
            return Err(self.error("is empty", "fill it in or leave the key out"));
        }
        if text.len() > LONGEST {
            return Err(self.error(format!("is longer than {LONGEST} bytes"), "shorten it"));
        }
        if text.chars().any(|c| c.is_control() && c != '\n' && c != '\t' && c != '\r') {
            return Err(self.error("has control characters", "remove them"));
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
            return Err(self.error(
                "is not a name: one line of up to 120 characters without blanks around it",
                "shorten or trim it",
            ));
        }
        Ok(text)
    }

    /// One of several words.
    ///
    /// # Errors
    /// Names the nearest word.
    pub fn choice<T: Clone>(&self, what: &str, choices: &[(&str, T)]) -> Result<T, Error> {
        let text = self.text()?;
        choices.iter().find(|(name, _)| *name == text).map(|(_, value)| value.clone()).ok_or_else(|| {
            let shown: String = text.chars().take(60).collect();
            self.error(format!("\"{shown}\" is no {what}"), did_you_mean(&text, choices.iter().map(|(n, _)| *n)))
        })
    }

    /// `true` or `false`.
    ///
    /// # Errors
    /// Anything else.
    pub fn flag(&self) -> Result<bool, Error> {
        self.value
            .get_ref()
            .as_bool()
            .ok_or_else(|| self.type_error("true or false", "write it without quotation marks"))
    }

    /// The flag or text of a value that may be either, as JSON.
    ///
    /// # Errors
    /// Anything else.
    pub fn flag_or_text(&self) -> Result<serde_json::Value, Error> {
        match self.value.get_ref() {
            DeValue::Boolean(flag) => Ok((*flag).into()),
            DeValue::String(_) => self.text().map(Into::into),
            _ => Err(self.type_error("true, false or a text", "write true, false or a text in quotation marks")),
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
            _ => return Err(self.type_error("a number", "write a number without quotation marks or unit")),
        };
        match number {
            Some(x) if x.is_finite() => Ok(x),
            _ => Err(self.type_error("a finite number", "write a plain number instead")),
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
        let found = self.document.excerpt(self.value.span());
        Err(self.error(
            format!("must lie between {low} and {high}{}, not {found}", blank_before(unit)),
            "check the unit, the decimal point and the sign",
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
        let found = self.document.excerpt(self.value.span());
        let unit = blank_before(unit);
        let (problem, remedy) = if x <= 0.0 {
            (format!("must be above zero, not {found}{unit}"), "check the sign and the decimal point")
        } else {
            (format!("must be at most {high}{unit}, not {found}"), "check the unit and the decimal point")
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
        let found = self.document.excerpt(self.value.span());
        Err(self.error(
            format!("a standard uncertainty must lie between 0 and {high}{}, not {found}", blank_before(unit)),
            "state one standard deviation (1 sigma) in the unit of the key's name",
        ))
    }

    /// A whole number from `low` to `high`.
    ///
    /// # Errors
    /// Not a whole number, or outside.
    pub fn whole(&self, low: u32, high: u32) -> Result<u32, Error> {
        let DeValue::Integer(i) = self.value.get_ref() else {
            return Err(self.type_error("a whole number", "write it without a decimal point or quotation marks"));
        };
        i64::from_str_radix(i.as_str(), i.radix())
            .ok()
            .and_then(|i| u32::try_from(i).ok())
            .filter(|i| (low..=high).contains(i))
            .ok_or_else(|| {
                let wanted = format!("a whole number from {low} to {high}");
                self.type_error(&wanted, "check the number")
            })
    }

    /// The items of a list.
    ///
    /// # Errors
    /// Not a list.
    pub fn items(&self) -> Result<Vec<Value<'d>>, Error> {
        let Some(array) = self.value.get_ref().as_array() else {
            return Err(self.type_error("a list", "write it in square brackets"));
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
            self.error(
                format!("must have {N} values, not {found}"),
                format!("write {N} values in square brackets, with commas between them"),
            )
        })
    }

    /// A table.
    ///
    /// # Errors
    /// Anything else.
    pub fn table(&self) -> Result<Table<'d>, Error> {
        match self.value.get_ref() {
            DeValue::Table(entries) => Ok(Table::new(self.document, self.path.clone(), entries, self.value.span())),
            _ => Err(self.type_error("a table", &format!("write its keys below a line [{}]", self.path))),
        }
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
                return Err(self.type_error("a date and time with its offset from UTC", TIME_EXAMPLE));
            }
            _ => return Err(self.type_error("a date and time", TIME_EXAMPLE)),
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
            .ok_or_else(|| self.type_error("a time that exists", TIME_EXAMPLE))
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
        .ok_or_else(|| self.type_error("a date", "write it like 2026-11-25, without quotation marks or time"))
    }
}

const TIME_EXAMPLE: &str = "write it like 2026-11-25T10:30:00+01:00 (or with Z for UTC), without quotation marks";

fn calendar_date(date: &toml::value::Date) -> Option<Date> {
    let month = time::Month::try_from(date.month).ok()?;
    Date::from_calendar_date(i32::from(date.year), month, date.day).ok()
}

fn blank_before(unit: &str) -> String {
    if unit.is_empty() { String::new() } else { format!(" {unit}") }
}
