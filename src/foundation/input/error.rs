//! The one error of all input files.

use std::fmt;

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
/// Prints as `FILE, line L, column C: KEY: what is wrong; what to do`.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub struct Error {
    file: String,
    place: Option<Place>,
    key: Option<String>,
    problem: String,
    remedy: String,
}

impl Error {
    /// An error of a whole file.
    pub fn new(file: impl Into<String>, problem: impl Into<String>, remedy: impl Into<String>) -> Self {
        Error {
            file: printable(file.into()),
            place: None,
            key: None,
            problem: printable(problem.into()),
            remedy: printable(remedy.into()),
        }
    }

    /// The same error at a place.
    #[must_use]
    pub fn at(mut self, place: Option<Place>) -> Self {
        self.place = place;
        self
    }

    /// The same error at a key (full path, such as `carrier[2].marker[0].size_mm`).
    #[must_use]
    pub fn key_path(mut self, key: impl Into<String>) -> Self {
        let key = printable(key.into());
        self.key = (!key.is_empty()).then_some(key);
        self
    }

    /// The file as the user knows it.
    pub fn file(&self) -> &str {
        &self.file
    }

    /// Line and column, where the error has a place.
    pub fn place(&self) -> Option<Place> {
        self.place
    }

    /// The key's full path, counted from 0 in lists.
    pub fn key(&self) -> Option<&str> {
        self.key.as_deref()
    }

    /// What is wrong.
    pub fn problem(&self) -> &str {
        &self.problem
    }

    /// What to do about it.
    pub fn remedy(&self) -> &str {
        &self.remedy
    }
}

/// Messages quote files, and a hostile one must not command the terminal or
/// break the line: control characters and those that turn the writing
/// direction are shown as escapes.
fn printable(text: String) -> String {
    let turns = |c: char| matches!(c, '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}');
    if !text.chars().any(|c| c.is_control() || turns(c)) {
        return text;
    }
    let escaped = |c: char| if c.is_control() || turns(c) { c.escape_default().to_string() } else { c.to_string() };
    text.chars().map(escaped).collect()
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.file)?;
        if let Some(Place { line, column }) = self.place {
            write!(f, ", line {line}, column {column}")?;
        }
        if let Some(key) = &self.key {
            write!(f, ": {key}")?;
        }
        write!(f, ": {}; {}", self.problem, self.remedy)
    }
}

/// A mistake that shows only when several files are seen together: it knows
/// its key but not its line. [`super::Document::error`] finds the line.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// The key's full path.
    pub key: String,
    /// What is wrong.
    pub problem: String,
    /// What to do about it.
    pub remedy: String,
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
        let error = Error::new("a\u{1b}[31m.toml", "\"x\ny\" is no ä", "r\u{202e}").key_path("\u{7}k");
        assert_eq!(error.to_string(), "a\\u{1b}[31m.toml: \\u{7}k: \"x\\ny\" is no ä; r\\u{202e}");
    }

    #[test]
    fn an_error_reads_as_one_sentence() {
        let error = Error::new("kit.toml", "a size must be above 0 mm, not -1 mm", "measure the print")
            .at(Some(Place { line: 3, column: 11 }))
            .key_path("carrier[0].marker[1].size_mm");
        assert_eq!(
            error.to_string(),
            "kit.toml, line 3, column 11: carrier[0].marker[1].size_mm: \
             a size must be above 0 mm, not -1 mm; measure the print"
        );
    }
}
