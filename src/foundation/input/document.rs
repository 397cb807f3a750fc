//! A parsed input file that knows where each key stands.

use std::ops::Range;

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::error::{Error, Place, Problem};
use super::older::is_older_format;
use crate::words::{Phrase, phrase};

/// A TOML document of a known format.
#[derive(Debug)]
pub struct Document<'a> {
    file: String,
    text: &'a str,
    format: &'static str,
    pub(super) root: Spanned<DeTable<'a>>,
}

impl<'a> Document<'a> {
    /// Parses a text whose first key must be `format = "FORMAT"`; `format` is
    /// such as `kit/1`.
    ///
    /// # Errors
    /// Not TOML, or a file of another format or version.
    pub fn parse(text: &'a str, file: &str, format: &'static str) -> Result<Self, Error> {
        let root = DeTable::parse(text).map_err(|e| syntax_error(text, file, &e))?;
        let document = Document { file: file.to_owned(), text, format, root };
        document.check_format()?;
        Ok(document)
    }

    /// The name that messages use.
    pub fn file(&self) -> &str {
        &self.file
    }

    /// The place of a byte offset.
    pub(super) fn place_of_offset(&self, offset: usize) -> Place {
        Place::of_offset(self.text, offset)
    }

    /// The source of a value, shortened for messages.
    pub(super) fn excerpt(&self, span: Range<usize>) -> String {
        const LONGEST: usize = 60;
        let source = self.text.get(span).unwrap_or_default().split_whitespace().collect::<Vec<_>>().join(" ");
        if source.chars().count() <= LONGEST {
            return source;
        }
        source.chars().take(LONGEST).chain("...".chars()).collect()
    }

    /// Where a key stands, by its full path; where it is absent, the place of
    /// the nearest table above it.
    pub fn place(&self, key_path: &str) -> Option<Place> {
        let mut span = None;
        let mut table = Some(self.root.get_ref());
        for part in key_path.split('.') {
            let (name, index) = split_index(part);
            let (key, value) = table?.get_key_value(name).map(|(k, v)| (k.span(), v))?;
            let value = match index {
                Some(i) => value.get_ref().as_array().and_then(|a| a.get(i))?,
                None => value,
            };
            span = Some(if index.is_some() { value.span() } else { key });
            table = value.get_ref().as_table();
        }
        span.map(|s| self.place_of_offset(s.start))
    }

    /// Turns a problem that was found outside this document into an error at
    /// the place of its key.
    pub fn error(&self, problem: &Problem) -> Error {
        Error::new(&self.file, problem.problem.clone(), problem.remedy.clone())
            .at(self.place(&problem.key))
            .key_path(&problem.key)
    }

    /// The first key must be `format` with the right name and version.
    fn check_format(&self) -> Result<(), Error> {
        let wanted = self.format;
        let first = self.root.get_ref().iter().min_by_key(|(key, _)| key.span().start);
        let remedy = phrase!("doors-format-remedy", wanted = wanted);
        let Some((key, value)) = self.root.get_ref().get_key_value("format") else {
            let place = first.map_or(0, |(key, _)| key.span().start);
            return Err(self.format_error(place, phrase!("doors-format-not-stated"), remedy));
        };
        let DeValue::String(found) = value.get_ref() else {
            let problem = phrase!("doors-format-text", wanted = wanted);
            return Err(self.format_error(value.span().start, problem, remedy));
        };
        if found != wanted && !is_older_format(found, wanted, &self.file) {
            let (problem, remedy) = other_format(found, wanted);
            return Err(self.format_error(value.span().start, problem, remedy));
        }
        if first.is_some_and(|(k, _)| k.span() != key.span()) {
            return Err(self.format_error(key.span().start, phrase!("doors-format-not-first"), remedy));
        }
        Ok(())
    }

    fn format_error(&self, offset: usize, problem: Phrase, remedy: Phrase) -> Error {
        Error::new(&self.file, problem, remedy).at(Some(self.place_of_offset(offset))).key_path("format")
    }
}

/// Tells another kind of file apart from another version of the right kind.
fn other_format(found: &str, wanted: &str) -> (Phrase, Phrase) {
    let kind = |format: &str| format.split('/').next().unwrap_or_default().to_owned();
    let shown: String = found.chars().take(40).collect();
    if kind(found) == kind(wanted) {
        return (
            phrase!("doors-format-version", found = shown, wanted = wanted),
            phrase!("doors-format-version-remedy"),
        );
    }
    (
        phrase!("doors-format-other", found = shown, wanted = wanted),
        phrase!("doors-format-other-remedy", kind = kind(wanted), wanted = wanted),
    )
}

/// `marker[3]` to `marker` and 3.
fn split_index(part: &str) -> (&str, Option<usize>) {
    part.strip_suffix(']')
        .and_then(|p| p.split_once('['))
        .and_then(|(name, index)| Some((name, Some(index.parse().ok()?))))
        .unwrap_or((part, None))
}

fn syntax_error(text: &str, file: &str, e: &toml::de::Error) -> Error {
    let offset = e.span().map_or(0, |s| s.start);
    let key = key_of_line(text, offset).unwrap_or_default();
    let remedy = if e.message().contains("duplicate key") {
        phrase!("doors-key-twice-remedy")
    } else {
        phrase!("doors-no-toml-remedy")
    };
    Error::new(file, phrase!("doors-no-toml", why = e.message()), remedy)
        .at(Some(Place::of_offset(text, offset)))
        .key_path(key)
}

/// The key that the line of an offset sets, where it can be told.
fn key_of_line(text: &str, offset: usize) -> Option<&str> {
    let start = text.get(..offset)?.rfind('\n').map_or(0, |at| at + 1);
    let line = text[start..].lines().next()?;
    let key = line.split_once('=')?.0.trim();
    let is_key =
        key.len() <= 60 && !key.is_empty() && key.chars().all(|c| c.is_ascii_alphanumeric() || "_-.".contains(c));
    is_key.then_some(key)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn message(text: &str) -> String {
        Document::parse(text, "kit.toml", "kit/1").unwrap_err().to_string()
    }

    #[test]
    fn the_format_comes_first_and_each_mistake_has_its_message() {
        assert!(Document::parse("format = \"kit/1\"\nname = \"x\"\n", "kit.toml", "kit/1").is_ok());
        let absent = message("name = \"x\"\n");
        assert!(absent.contains("line 1") && absent.contains("not stated"), "{absent}");
        let empty = message("");
        assert!(empty.contains("not stated"), "{empty}");
        let late = message("name = \"x\"\nformat = \"kit/1\"\n");
        assert!(late.contains("line 2") && late.contains("not the first key"), "{late}");
        let other = message("format = \"setup/1\"\n");
        assert!(other.contains("\"setup/1\" file, but a \"kit/1\" file"), "{other}");
        let newer = message("format = \"kit/2\"\n");
        assert!(newer.contains("version") && newer.contains("newer baywitness"), "{newer}");
        let number = message("format = 1\n");
        assert!(number.contains("must be a text"), "{number}");
    }

    #[test]
    fn syntax_errors_have_line_and_key() {
        let text = "format = \"kit/1\"\nu_layout_mm = 0,3\n";
        let error = Document::parse(text, "kit.toml", "kit/1").unwrap_err();
        assert_eq!(error.place().unwrap().line, 2, "{error}");
        assert_eq!(error.key(), Some("u_layout_mm"));
        let twice = message("format = \"kit/1\"\nname = \"a\"\nname = \"b\"\n");
        assert!(twice.contains("line 3") && twice.contains("keep one of the two"), "{twice}");
    }

    #[test]
    fn places_are_found_by_path() {
        let text = "format = \"kit/1\"\n[[carrier]]\nname = \"a\"\n[[carrier]]\nname = \"b\"\nlist = [1,\n 2]\n";
        let document = Document::parse(text, "kit.toml", "kit/1").unwrap();
        assert_eq!(document.place("carrier[1].name"), Some(Place { line: 5, column: 1 }));
        assert_eq!(document.place("carrier[1].list[1]"), Some(Place { line: 7, column: 2 }));
        assert_eq!(document.place("carrier[1]"), Some(Place { line: 4, column: 1 }));
        assert_eq!(document.place("carrier[2].name"), None);
    }

    #[test]
    fn deep_nesting_is_an_error_not_a_crash() {
        let text = format!("format = \"kit/1\"\na = {}{}", "[".repeat(100_000), "]".repeat(100_000));
        assert!(message(&text).contains("not valid TOML"));
    }
}
