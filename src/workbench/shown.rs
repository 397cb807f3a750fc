//! What several tools tell alike: figures of tables with the language's decimal sign, reasons one after the other.

use crate::words::{Figure, Language, Phrase, phrase};

/// So many decimals.
pub(crate) fn fixed(value: f64, digits: u8, language: Language) -> String {
    Figure::fixed(value, digits).say(language)
}

/// The same with its sign, also where it is a plus.
pub(crate) fn signed(value: f64, digits: u8, language: Language) -> String {
    let text = fixed(value, digits, language);
    if text.starts_with('-') { text } else { format!("+{text}") }
}

/// What is so, and then one by one why.
pub(crate) fn further(what: Phrase, why: Vec<Phrase>) -> Phrase {
    let rest = why.into_iter().rev().reduce(|rest, first| phrase!("fit-further", first = first, rest = rest));
    match rest {
        Some(rest) => phrase!("fit-further", first = what, rest = rest),
        None => what,
    }
}
