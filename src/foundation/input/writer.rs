//! Writing input files: keys in the order in which people read them.

use nalgebra::DMatrix;
use time::{Date, OffsetDateTime, UtcOffset};
use toml::value::{Datetime, Offset};

/// Builds the text of a TOML file, starting with its format.
#[derive(Debug, Clone)]
pub struct Writer {
    text: String,
}

impl Writer {
    /// A text that begins with `format = "FORMAT"`.
    pub fn new(format: &str) -> Self {
        let mut writer = Writer { text: String::new() };
        writer.key("format", format);
        writer
    }

    /// `key = value`.
    pub fn key(&mut self, key: &str, value: impl Into<toml::Value>) {
        let value: toml::Value = value.into();
        self.text.push_str(&format!("{} = {value}\n", quoted_key(key)));
    }

    /// `key = value` where there is a value.
    pub fn maybe(&mut self, key: &str, value: Option<impl Into<toml::Value>>) {
        if let Some(value) = value {
            self.key(key, value);
        }
    }

    /// A list of numbers.
    pub fn numbers(&mut self, key: &str, values: &[f64]) {
        self.key(key, values.to_vec());
    }

    /// A matrix, a row a line.
    pub fn matrix(&mut self, key: &str, matrix: &DMatrix<f64>) {
        self.text.push_str(&format!("{key} = [\n"));
        for row in matrix.row_iter() {
            let values: Vec<f64> = row.iter().copied().collect();
            self.text.push_str(&format!("  {},\n", toml::Value::from(values)));
        }
        self.text.push_str("]\n");
    }

    /// Begins a table.
    pub fn table(&mut self, path: &str) {
        self.text.push_str(&format!("\n[{path}]\n"));
    }

    /// Begins one of a list of tables.
    pub fn item(&mut self, path: &str) {
        self.text.push_str(&format!("\n[[{path}]]\n"));
    }

    /// The text.
    pub fn finish(self) -> String {
        self.text
    }

    /// A date as a TOML value.
    pub fn date(date: Date) -> Datetime {
        Datetime { date: Some(date_part(date)), time: None, offset: None }
    }

    /// A time as a TOML value; an offset of broken minutes, which TOML cannot
    /// state, becomes UTC.
    pub fn time(time: OffsetDateTime) -> Datetime {
        let whole_minutes = time.offset().whole_seconds() % 60 == 0;
        let time = if whole_minutes { time } else { time.to_offset(UtcOffset::UTC) };
        Datetime {
            date: Some(date_part(time.date())),
            time: Some(toml::value::Time {
                hour: time.hour(),
                minute: time.minute(),
                second: Some(time.second()),
                nanosecond: (time.nanosecond() > 0).then(|| time.nanosecond()),
            }),
            offset: Some(Offset::Custom { minutes: time.offset().whole_minutes() }),
        }
    }
}

fn date_part(date: Date) -> toml::value::Date {
    // TOML has the years 0 to 9999, which are also all that readers accept.
    let year = date.year().clamp(0, 9999) as u16;
    toml::value::Date { year, month: u8::from(date.month()), day: date.day() }
}

/// Keys that the user names (prerequisites) may need quotation marks. A JSON
/// string without control characters is a TOML basic string.
fn quoted_key(key: &str) -> String {
    let bare = !key.is_empty() && key.chars().all(|c| c.is_ascii_alphanumeric() || c == '_' || c == '-');
    if bare {
        return key.to_owned();
    }
    let plain: String = key.chars().filter(|c| !c.is_control()).collect();
    serde_json::Value::from(plain).to_string()
}

#[cfg(test)]
mod tests {
    use super::*;
    use time::macros::{date, datetime};

    #[test]
    fn what_is_written_is_plain_toml() {
        let mut w = Writer::new("kit/1");
        w.key("name", "a \"b\" \\ c");
        w.key("two words", 1.0);
        w.numbers("list", &[1.0, 0.1, -1e-9]);
        w.maybe("none", None::<f64>);
        w.key("due", Writer::date(date!(2027 - 05 - 01)));
        w.key("at", Writer::time(datetime!(2026-11-25 10:30:00 +01:00)));
        w.item("carrier");
        w.key("on", true);
        let text = w.finish();
        let table: toml::Table = toml::from_str(&text).unwrap();
        assert!(text.starts_with("format = \"kit/1\"\nname = "), "{text}");
        assert_eq!(table["name"].as_str(), Some("a \"b\" \\ c"));
        assert_eq!(table["list"][1].as_float(), Some(0.1));
        assert!(text.contains("due = 2027-05-01\nat = 2026-11-25T10:30:00+01:00\n"), "{text}");
        assert_eq!(table["carrier"][0]["on"].as_bool(), Some(true));
    }
}
