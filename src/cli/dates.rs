//! Dates as they are typed.

use super::output;
use crate::words::say;

/// A date as typed: year-month-day.
pub(super) fn date(text: &str) -> Result<time::Date, String> {
    let shape = time::macros::format_description!("[year]-[month]-[day]");
    time::Date::parse(text, shape).map_err(|_| say!(output::language(), "cli-no-date", text = text))
}
