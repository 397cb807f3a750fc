//! The message files, a line for each room of texts.

use crate::Language;

/// Name and text of each file of a language.
pub(crate) fn of(language: Language) -> &'static [(&'static str, &'static str)] {
    match language {
        Language::English | Language::Pseudo => ENGLISH,
        Language::German => GERMAN,
        Language::Spanish => SPANISH,
        Language::French => FRENCH,
    }
}

/// The file in which a key stands: the key's first word names it.
pub(crate) fn room_of(key: &str) -> &str {
    match key.split('-').next().unwrap_or(key) {
        "list" => "common",
        "finding" => "explain",
        "verify" => "report",
        room => room,
    }
}

macro_rules! files {
    ($($room:literal)*) => {
        static ENGLISH: &[(&str, &str)] = &[$(($room, include_str!(concat!("en/", $room, ".ftl")))),*];
        static GERMAN: &[(&str, &str)] = &[$(($room, include_str!(concat!("de/", $room, ".ftl")))),*];
        static SPANISH: &[(&str, &str)] = &[$(($room, include_str!(concat!("es/", $room, ".ftl")))),*];
        static FRENCH: &[(&str, &str)] = &[$(($room, include_str!(concat!("fr/", $room, ".ftl")))),*];
    };
}

files! {
    "common"
    "verdict"
    "findings"
    "explain"
    "advice"
    "moves"
    "report"
    "customer"
    "page"
    "plan"
    "print"
    "training"
    "help"
    "cli"
    "doors"
    "evidence"
    "trends"
    "fit"
    "bay"
    "pattern"
}
