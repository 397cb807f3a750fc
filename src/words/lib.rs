//! Every text that people read: message files (Project Fluent) by language and
//! room, `en/report.ftl` and its like, carried by the program.
//!
//! A [`Phrase`] is a message's key with its figures and names: what records
//! keep, so that a report can be made in any language from any record. A
//! sentence is one message; nothing is put together from halves. Numbers have
//! their places given by whoever rounds and get the language's decimal sign
//! here; JSON never does.
//!
//! ```text
//! say!(language, "sheet-off-plane", sheet = name, off = Figure::fixed(mm, 0))
//! ```
//!
//! English is the reference: a key or a variable that another language lacks,
//! or that nobody uses, fails `tests/suite/words`. A language is a folder, a
//! line in [`Language`] and a column in `files.rs`.

#[macro_use]
mod macros;

mod dates;
mod figure;
mod files;
mod held;
mod language;
mod lexicon;
mod phrase;
mod pseudo;
mod saying;

pub use figure::Figure;
pub use held::kept_together;
pub use language::{Language, Wish};
pub use phrase::{Phrase, Value};

/// The texts of one language's message files, with their names, for tests.
pub fn sources(language: Language) -> impl Iterator<Item = (&'static str, &'static str)> {
    files::of(language).iter().copied()
}
