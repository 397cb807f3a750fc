//! Figures as tables show them, with the language's decimal sign.

use crate::words::{Figure, Language};

/// So many decimals.
pub(crate) fn fixed(value: f64, digits: u8, language: Language) -> String {
    Figure::fixed(value, digits).say(language)
}

/// The same with its sign, also where it is a plus.
pub(crate) fn signed(value: f64, digits: u8, language: Language) -> String {
    let text = fixed(value, digits, language);
    if text.starts_with('-') { text } else { format!("+{text}") }
}
