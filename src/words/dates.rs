//! Times and dates in the language's order; English keeps the international one
//! (ISO 8601), which no reader takes for another day.

use time::format_description::well_known::Rfc3339;
use time::macros::format_description as shape;
use time::{Date, OffsetDateTime};

use crate::Language;

/// `2026-11-25 10:30 +01:00`, `25.11.2026 10:30 +01:00`; what is neither a time (RFC 3339) nor a date stays as it is.
pub(crate) fn say(text: &str, language: Language) -> String {
    time(text, language).or_else(|| date(text, language)).unwrap_or_else(|| text.to_owned())
}

fn time(text: &str, language: Language) -> Option<String> {
    let moment = OffsetDateTime::parse(text, &Rfc3339).ok()?;
    let day = day(moment.date(), language)?;
    let clock = shape!("[hour]:[minute] [offset_hour sign:mandatory]:[offset_minute]");
    Some(format!("{day} {}", moment.format(&clock).ok()?))
}

fn date(text: &str, language: Language) -> Option<String> {
    day(Date::parse(text, shape!("[year]-[month]-[day]")).ok()?, language)
}

fn day(date: Date, language: Language) -> Option<String> {
    match language {
        Language::English | Language::Pseudo => date.format(shape!("[year]-[month]-[day]")),
        Language::German => date.format(shape!("[day].[month].[year]")),
        Language::Spanish | Language::French => date.format(shape!("[day]/[month]/[year]")),
    }
    .ok()
}
