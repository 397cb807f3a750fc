//! The one error of all input files.

use std::fmt;

use crate::words::{Language, Phrase, phrase};

/// A place in a text file, both numbers from 1; columns count characters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Place {
    /// Line.
    pub line: usize,
    /// Column.
    pub column: usize,
}

impl Place {
    /// The place of a byte offset in a text; past the end means the end.
    pub fn of_offset(text: &str, offset: usize) -> Place {
        let mut end = offset.min(text.len());
        while !text.is_char_boundary(end) {
            end -= 1;
        }
        let before = &text[..end];
        let line_start = before.rfind('\n').map_or(0, |at| at + 1);
        let line = before.bytes().filter(|b| *b == b'\n').count() + 1;
        Place { line, column: before[line_start..].chars().count() + 1 }
    }
}

/// What is wrong with an input file, where, and what to do about it.
///
/// Prints in English as `FILE, line L, column C: KEY: what is wrong; what to do`;
/// [`Error::say`] has the reader's language.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub struct Error(Box<Parts>);

/// Boxed, so that a `Result` stays small where all is well.
#[derive(Debug, Clone, PartialEq)]
struct Parts {
    file: String,
    place: Option<Place>,
    key: Option<String>,
    problem: Phrase,
    remedy: Phrase,
}

/// A text from outside the program (a parser, a system), as it came.
pub fn as_it_came(text: impl Into<String>) -> Phrase {
    phrase!("doors-said", text = text.into())
}

impl Error {
    /// An error of a whole file.
    pub fn new(file: impl Into<String>, problem: Phrase, remedy: Phrase) -> Self {
        Error(Box::new(Parts { file: printable(file.into()), place: None, key: None, problem, remedy }))
    }

    /// The same error at a place.
    #[must_use]
    pub fn at(mut self, place: Option<Place>) -> Self {
        self.0.place = place;
        self
    }

    /// The same error at a key (full path, such as `carrier[2].marker[0].size_mm`).
    #[must_use]
    pub fn key_path(mut self, key: impl Into<String>) -> Self {
        let key = printable(key.into());
        self.0.key = (!key.is_empty()).then_some(key);
        self
    }

    /// The file as the user knows it.
    pub fn file(&self) -> &str {
        &self.0.file
    }

    /// Line and column, where the error has a place.
    pub fn place(&self) -> Option<Place> {
        self.0.place
    }

    /// The key's full path, counted from 0 in lists.
    pub fn key(&self) -> Option<&str> {
        self.0.key.as_deref()
    }

    /// What is wrong.
    pub fn problem(&self) -> &Phrase {
        &self.0.problem
    }

    /// What to do about it.
    pub fn remedy(&self) -> &Phrase {
        &self.0.remedy
    }

    /// File, place, key, what is wrong and what to do, in a language; nothing in it commands a terminal.
    pub fn say(&self, language: Language) -> String {
        printable(self.phrase().say(language))
    }

    /// The same, not yet in any language.
    pub fn phrase(&self) -> Phrase {
        let Parts { file, place, key, problem, remedy } = &*self.0;
        let (problem, remedy) = (problem.clone(), remedy.clone());
        match (place, key) {
            (Some(Place { line, column }), Some(key)) => phrase!(
                "doors-at-place-and-key",
                file = file,
                line = *line,
                column = *column,
                key = key,
                problem = problem,
                remedy = remedy
            ),
            (Some(Place { line, column }), None) => phrase!(
                "doors-at-place",
                file = file,
                line = *line,
                column = *column,
                problem = problem,
                remedy = remedy
            ),
            (None, Some(key)) => phrase!("doors-at-key", file = file, key = key, problem = problem, remedy = remedy),
            (None, None) => phrase!("doors-of-file", file = file, problem = problem, remedy = remedy),
        }
    }

    /// The same without the file and the place in it, for readers who see neither.
    pub fn without_file(&self) -> Phrase {
        let Parts { key, problem, remedy, .. } = &*self.0;
        match key {
            Some(key) => Problem { key: key.clone(), problem: problem.clone(), remedy: remedy.clone() }.phrase(),
            None => phrase!("doors-without-file", problem = problem.clone(), remedy = remedy.clone()),
        }
    }
}

/// Messages quote files, and a hostile one must not command the terminal or
/// break the line: control characters and those that turn the writing
/// direction are shown as escapes.
pub fn printable(text: String) -> String {
    let turns = |c: char| matches!(c, '\u{200e}' | '\u{200f}') || turns_writing(c) || is_unseen(c);
    if !text.chars().any(|c| c.is_control() || turns(c)) {
        return text;
    }
    let escaped = |c: char| if c.is_control() || turns(c) { c.escape_default().to_string() } else { c.to_string() };
    text.chars().map(escaped).collect()
}

/// Whether a character turns the direction of all writing that follows (Unicode: embeddings, overrides and isolates), so
/// that a line can be shown as another one than it is. The marks U+200E and U+200F turn nothing but themselves.
pub fn turns_writing(c: char) -> bool {
    matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

/// Whether a character shows nothing and yet makes another text of it, or ends a line that no reader of lines sees ended
/// (Unicode: zero width space, word joiner, byte order mark, line and paragraph separator, tags). What joins letters of
/// some scripts, U+200C and U+200D, is none of them.
pub fn is_unseen(c: char) -> bool {
    matches!(c, '\u{200b}' | '\u{2028}' | '\u{2029}' | '\u{2060}' | '\u{feff}' | '\u{e0000}'..='\u{e007f}')
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.say(Language::English))
    }
}

/// A mistake that shows only when several files are seen together: it knows
/// its key but not its line. [`super::Document::error`] finds the line.
#[derive(Debug, Clone, PartialEq)]
pub struct Problem {
    /// The key's full path.
    pub key: String,
    /// What is wrong.
    pub problem: Phrase,
    /// What to do about it.
    pub remedy: Phrase,
}

impl Problem {
    /// Key, what is wrong and what to do.
    pub fn phrase(&self) -> Phrase {
        let (problem, remedy) = (self.problem.clone(), self.remedy.clone());
        phrase!("doors-key-without-file", key = &self.key, problem = problem, remedy = remedy)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn places_count_characters_from_one() {
        let text = "a = 1\nü = 2\n";
        assert_eq!(Place::of_offset(text, 0), Place { line: 1, column: 1 });
        assert_eq!(Place::of_offset(text, 6), Place { line: 2, column: 1 });
        // "ü" takes two bytes: byte 7 lies within it and byte 8 after it.
        assert_eq!(Place::of_offset(text, 7), Place { line: 2, column: 1 });
        assert_eq!(Place::of_offset(text, 8), Place { line: 2, column: 2 });
        assert_eq!(Place::of_offset(text, 99), Place { line: 3, column: 1 });
    }

    #[test]
    fn quoted_files_cannot_command_the_terminal() {
        let error =
            Error::new("a\u{1b}[31m.toml", as_it_came("\"x\ny\" is no ä"), as_it_came("r\u{202e}")).key_path("\u{7}k");
        assert_eq!(error.to_string(), "a\\u{1b}[31m.toml: \\u{7}k: \"x\\ny\" is no ä; r\\u{202e}");
    }

    #[test]
    fn an_error_reads_as_one_sentence() {
        let error =
            Error::new("kit.toml", as_it_came("a size must be above 0 mm, not -1 mm"), as_it_came("measure the print"))
                .at(Some(Place { line: 3, column: 11 }))
                .key_path("carrier[0].marker[1].size_mm");
        assert_eq!(
            error.to_string(),
            "kit.toml, line 3, column 11: carrier[0].marker[1].size_mm: \
             a size must be above 0 mm, not -1 mm; measure the print"
        );
    }
}
